//! Whole interviews on the pure machine.

use std::collections::BTreeSet;

use super::machine::{Input, Kind, Machine};
use super::steps::{self, Label, Suggestion};
use super::*;
use crate::plan;

/// A keeper that remembers every state.
#[derive(Default)]
struct Kept(Vec<Draft>);

impl Keep for Kept {
    fn keep(&mut self, draft: &Draft) -> std::io::Result<()> {
        self.0.push(draft.clone());
        Ok(())
    }
}

fn answers(text: &str) -> (Outcome, Kept, String) {
    let words = Words::english();
    let mut said = Vec::new();
    let mut kept = Kept::default();
    let outcome = run(
        &mut lines::Lines::new(text.as_bytes(), &mut said),
        &mut kept,
        &words,
        Draft::new("test"),
    )
    .unwrap();
    assert_eq!(words.faults(), Vec::<String>::new());
    (outcome, kept, String::from_utf8(said).unwrap())
}
