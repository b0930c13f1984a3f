//! `mend`: finds the cheapest changes that clear a plan, and writes the changed plan to a new file.

use std::fmt::Write as _;
use std::path::Path;

use tallywatt::plan::store;
use tallywatt::words::wrapping;
use tallywatt::{mend, report};

use super::args::{Format, Mend};
use super::failure::{Failure, Kind};
use super::reader::Reader;
use super::{Done, check, command, prints, width};

pub(super) fn run(arguments: &Mend, reader: &Reader) -> Result<Done, Failure> {
    let (text, plan) = prints::load_text(&arguments.plan, &reader.words)?;
    let words = &*reader.of_plan(&plan);
    let unwritten = |error| prints::stored(&error, Kind::CannotWrite, words);
    // Checked before the slow search, and again when the file is written.
    arguments.into.as_deref().map_or(Ok(()), store::is_free).map_err(unwritten)?;
    let (report, mended) = mend::advised(&plan, arguments.warnings);

    let mut wrote = None;
    // A plan that did not change is already in its file.
    let changed = !mended.steps.is_empty();
    if let Some(into) = arguments.into.as_ref().filter(|_| changed) {
        let text = prints::changed(&text, &plan, &mended.plan);
        // A plan that cannot be read back would be this program's own fault, and is better found here.
        prints::read(&text, into, words)?;
        store::write_new(into, text.as_bytes()).map_err(unwritten)?;
        wrote = Some(into.display().to_string());
    }

    let output = match arguments.format {
        Format::Json => check::told(&report, &text, true, words)?,
        Format::Text => {
            let width = width();
            let mut output = words.repairs(&report, width);
            let mut say = |text: &str| {
                let _ = writeln!(output, "\n{}", textwrap::fill(text, wrapping(width)));
            };
            match (wrote, &arguments.into) {
                (Some(path), _) => {
                    let folder = prints::folder_for(Path::new(&path));
                    let print = command(&["tallywatt", "print", &path, "--into", &folder]);
                    let values = [("path", path.into()), ("command", print.into())];
                    say(&words.with("mend-wrote", values));
                }
                (None, Some(into)) => {
                    let path = into.display().to_string();
                    say(&words.with("mend-kept", [("path", path.into())]));
                }
                (None, None) if changed => {
                    let path = arguments.plan.display().to_string();
                    let new = arguments.plan.with_extension("mended.toml");
                    let new = new.display().to_string();
                    let mend = command(&["tallywatt", "mend", &path, "--into", &new]);
                    say(&words.with("mend-try", [("command", mend.into())]));
                }
                (None, None) => {}
            }
            if changed {
                say(&words.by_hand(&mended.effect));
            }
            say(&words.text("check-defer"));
            output
        }
    };
    Ok(Done {
        output,
        status: if mended.effect.after.clear() {
            check::status(mended.report.worst())
        } else {
            check::status(Some(report::Signal::Danger))
        },
    })
}
