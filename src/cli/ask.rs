//! The interview.

use tallywatt::words::Words;

use super::Done;
use super::failure::{Failure, Kind};

pub(super) fn interview(words: &Words) -> Result<Done, Failure> {
    Err(Failure::text(Kind::Usage, words.text("cli-about")))
}
