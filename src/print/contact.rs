//! The contact sheet: all pages in one image, to look over before using paper.

use typst::foundations::{Content, Smart};
use typst::layout::{Abs, Axes, Frame, FrameItem, GroupItem, Point, Ratio, Sides, Size, Transform};
use typst::visualize::{Color, FixedStroke, Geometry, Paint};
use typst_layout::Page;

/// The space for one page, in points.
const ROOM: Axes<f64> = Axes { x: 200.0, y: 260.0 };
const GAP: f64 = 16.0;
/// The most pages in a row.
const COLUMNS: usize = 5;

/// Returns a page with all of these on it, row by row, each scaled down to its space. None is enlarged.
pub(super) fn sheet(pages: &[Page]) -> Page {
    let columns = COLUMNS.min(pages.len()).max(1);
    let rows = pages.len().div_ceil(columns);
    #[allow(clippy::cast_precision_loss)] // a few dozen pages
    let along = |count: usize, room: f64| Abs::pt(GAP + count as f64 * (room + GAP));
    let mut frame = Frame::hard(Size::new(along(columns, ROOM.x), along(rows, ROOM.y)));
    for (index, page) in pages.iter().enumerate() {
        let size = page.frame.size();
        let scale = (ROOM.x / size.x.to_pt()).min(ROOM.y / size.y.to_pt()).min(1.0);
        let mut whole = Frame::hard(size);
        whole.push(
            Point::zero(),
            FrameItem::Shape(
                Geometry::Rect(size)
                    .filled_and_stroked(Color::WHITE, FixedStroke::from_pair(Color::BLACK, Abs::pt(0.5 / scale))),
                typst::syntax::Span::detached(),
            ),
        );
        whole.push_frame(Point::zero(), page.frame.clone());
        let mut group = GroupItem::new(whole);
        group.transform = Transform::scale(Ratio::new(scale), Ratio::new(scale));
        frame.push(Point::new(along(index % columns, ROOM.x), along(index / columns, ROOM.y)), FrameItem::Group(group));
    }
    Page {
        frame,
        bleed: Sides::default(),
        fill: Smart::Custom(Some(Paint::Solid(Color::from_u8(225, 225, 225, 255)))),
        numbering: None,
        supplement: Content::empty(),
        number: 1,
    }
}
