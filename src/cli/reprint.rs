//! `reprint`: lists the prints of one plan that another plan makes outdated.

use tallywatt::judge;
use tallywatt::print;
use tallywatt::words::wrapping;

use super::args::Reprint;
use super::failure::{Failure, Kind};
use super::reader::Reader;
use super::{Done, learned, prints, width};

pub(super) fn run(arguments: &Reprint, reader: &Reader) -> Result<Done, Failure> {
    let old = prints::load(&arguments.old, &reader.words)?;
    let new = prints::load(&arguments.new, &reader.words)?;
    let words = &*reader.of_plan(&new);
    let (before, now) = (judge::build(&old), judge::build(&new));
    let outdated = print::outdated((&old, &before), (&new, &now), words)
        .map_err(|error| Failure::text(Kind::CannotWrite, error.in_words(words)))?;
    let text = learned::again(&outdated, words);
    Ok(Done::saying(textwrap::fill(&text, wrapping(width())) + "\n"))
}
