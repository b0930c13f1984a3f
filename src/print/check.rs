//! The last look at a laid-out document, before it becomes paper: nothing beyond its page,
//! nothing without a glyph, nothing that the template could not fit.

use typst::foundations::{Label, Selector, Value};
use typst::introspection::{Introspector, MetadataElem};
use typst::layout::{Frame, FrameItem, Point, Size, Transform};
use typst::text::TextItem;
use typst::utils::PicoStr;
use typst_layout::PagedDocument;

use super::error::Misfit;
use super::{Document, PrintError};

/// Layout is in floating point; a thousandth of an inch is no cut.
const SLACK_PT: f64 = 0.072;

/// Checks the whole document.
pub(super) fn check(document: Document, paged: &PagedDocument) -> Result<(), PrintError> {
    let misfits = misfits(paged);
    if !misfits.is_empty() {
        return Err(PrintError::TooLong { document, misfits });
    }
    for (index, page) in paged.pages().iter().enumerate() {
        let walk = Walk {
            document,
            page: index + 1,
            size: page.frame.size(),
        };
        walk.frame(&page.frame, Transform::identity())?;
    }
    Ok(())
}

/// What the templates' fitting left behind: `metadata((text: .., percent: ..)) <misfit>`.
fn misfits(paged: &PagedDocument) -> Vec<Misfit> {
    let Some(label) = Label::new(PicoStr::intern("misfit")) else {
        return Vec::new();
    };
    let mut misfits = Vec::new();
    for element in paged.introspector().query(&Selector::Label(label)) {
        let Some(Value::Dict(dict)) = element
            .to_packed::<MetadataElem>()
            .map(|metadata| metadata.value.clone())
        else {
            continue;
        };
        let text = match dict.get("text") {
            Ok(Value::Str(text)) => text.to_string(),
            _ => String::new(),
        };
        let percent = match dict.get("percent") {
            Ok(Value::Int(percent)) => u32::try_from(*percent).unwrap_or_default(),
            _ => 0,
        };
        let misfit = Misfit { text, percent };
        if !misfits.contains(&misfit) {
            misfits.push(misfit);
        }
    }
    misfits
}

struct Walk {
    document: Document,
    page: usize,
    size: Size,
}

impl Walk {
    fn frame(&self, frame: &Frame, transform: Transform) -> Result<(), PrintError> {
        for (position, item) in frame.items() {
            let here = transform.pre_concat(Transform::translate(position.x, position.y));
            match item {
                FrameItem::Group(group) => {
                    self.frame(&group.frame, here.pre_concat(group.transform))?;
                }
                FrameItem::Text(text) => self.text(text, here)?,
                _ => {}
            }
        }
        Ok(())
    }

    fn text(&self, text: &TextItem, transform: Transform) -> Result<(), PrintError> {
        let missing: String = text
            .glyphs
            .iter()
            .filter(|glyph| glyph.id == 0)
            .filter_map(|glyph| text.text.get(glyph.range()))
            .collect();
        if !missing.is_empty() {
            return Err(PrintError::NoGlyph {
                text: text.text.to_string(),
                characters: missing,
            });
        }
        if text.text.trim().is_empty() {
            return Ok(());
        }
        let bounds = text.bbox();
        let corners = [
            Point::new(bounds.min.x, bounds.min.y),
            Point::new(bounds.max.x, bounds.max.y),
        ];
        for corner in corners {
            // The frame's y runs down, and so does that of the box.
            let at = corner.transform(transform);
            let (x, y) = (at.x.to_pt(), at.y.to_pt());
            let (width, height) = (self.size.x.to_pt(), self.size.y.to_pt());
            let inside =
                x >= -SLACK_PT && y >= -SLACK_PT && x <= width + SLACK_PT && y <= height + SLACK_PT;
            if !inside {
                return Err(PrintError::OffPage {
                    document: self.document,
                    text: text.text.to_string(),
                    page: self.page,
                });
            }
        }
        Ok(())
    }
}
