//! A receptacle shape and its usual breaker as one answer.

use super::{Item, Label};
use crate::interview::draft::{Draft, Said};
use crate::plan::problem::Value;
use crate::quantity::Quantity;
use crate::tables::shape::{Circuit, Configuration, Receptacle};

fn shapes(two_legs: bool) -> impl Iterator<Item = Receptacle> {
    Configuration::ALL
        .into_iter()
        // No generator is built with an ungrounded receptacle.
        .filter(|c| c.grounded())
        .filter(move |c| two_legs || c.circuit() == Circuit::OneLeg)
        .map(Receptacle)
}

/// Returns each shape with its usual breaker, then each shape with another breaker.
///
/// The usual case takes one answer, and the other case is not forgotten.
pub(super) fn shape_items(two_legs: bool) -> Vec<Item> {
    let usual = |shape| face_item(shape, with_breaker(shape), "pick-face-usual");
    let other = |shape: Receptacle| face_item(shape, shape.to_string(), "pick-face-other");
    let others = shapes(two_legs).map(other);
    shapes(two_legs).map(usual).chain(others).collect()
}

/// Builds the item for a shape, described by what it looks like.
pub(super) fn face_item(shape: Receptacle, value: String, word: &str) -> Item {
    let values = vec![
        ("shape", Value::word(format!("face-{shape}"))),
        ("code", shape.to_string().into()),
        ("amps", shape.0.rating().amount().to_string().into()),
    ];
    Item::new(value, Label::Word(word.into(), values)).found_by(format!("face-{shape}.also"))
}

/// Returns the answer for a shape with its usual breaker.
fn with_breaker(shape: Receptacle) -> String {
    format!("{shape} {}", usual_breaker(shape))
}

/// Returns the usual breaker of a shape, with its unit.
fn usual_breaker(shape: Receptacle) -> String {
    format!("{} A", shape.0.rating().amount())
}

/// Returns the key of an outlet's breaker, given the key of its shape.
pub(in crate::interview) fn breaker_key(face_key: &str) -> Option<String> {
    face_key.strip_suffix(".face").map(|part| format!("{part}.breaker"))
}

/// Splits an answer into a shape and its breaker.
pub(in crate::interview) fn split_face(value: &str) -> Option<(&str, &str)> {
    value.split_once(' ')
}

/// Whether the outlet with this shape key has the usual breaker of its shape.
pub(super) fn has_usual_breaker(draft: &Draft, face_key: &str) -> bool {
    let shape = draft.text(face_key).and_then(Receptacle::named);
    let breaker = breaker_key(face_key);
    let breaker = breaker.as_deref().and_then(|key| draft.text(key));
    matches!((shape, breaker), (Some(shape), Some(breaker)) if breaker == usual_breaker(shape))
}

/// Returns the shape and its breaker as one answer, if the breaker is the usual one.
pub(in crate::interview) fn face_said(draft: &Draft, face_key: &str) -> Option<Said> {
    let shape = draft.text(face_key).and_then(Receptacle::named)?;
    has_usual_breaker(draft, face_key).then(|| Said::is(with_breaker(shape)))
}
