//! The kinds of value that a plan has.

use std::marker::PhantomData;

#[cfg(test)]
use proptest::collection::vec;
#[cfg(test)]
use proptest::prelude::*;
#[cfg(test)]
use proptest::sample::select;

use super::bounds::{Bounds, Whole};
use super::read::{Field, ProblemKind, Type};
use super::row::{Kind, Part};
use super::write::{natural, quoted};
use super::{Answer, Choice, Id, Span};
use crate::quantity::{Quantity, Wire};
#[cfg(test)]
use crate::tables::shape::Configuration;
use crate::tables::shape::{Plug, Receptacle};

/// A quantity: a number and its unit.
impl<Q: Quantity + Sync + 'static> Kind for Bounds<Q> {
    type Value = Q;

    fn read(&self, field: &Field<'_>) -> Option<Q> {
        field.quantity(self)
    }

    fn text(&self, value: &Q) -> String {
        natural(*value, self.round)
    }

    fn typed(&self, text: &str) -> Option<Q> {
        Bounds::read(self, text).ok()
    }

    #[cfg(test)]
    fn any(&self) -> BoxedStrategy<Q> {
        let (least, most) = (self.least.count(), self.most.count());
        // Most of those with two readings are at the lower end.
        let near = most.min(least + 1_000_000);
        let any = prop_oneof![4 => least..=most, 1 => least..=near];
        any.prop_map(Q::from_count).boxed()
    }
}

/// How many.
impl Kind for Whole {
    type Value = u8;

    fn read(&self, field: &Field<'_>) -> Option<u8> {
        field.whole(*self)
    }

    fn text(&self, value: &u8) -> String {
        value.to_string()
    }

    fn typed(&self, text: &str) -> Option<u8> {
        let count = text.trim().parse().ok();
        count.filter(|count| self.hold(*count))
    }

    fn toml(&self, value: &u8) -> String {
        value.to_string()
    }

    #[cfg(test)]
    fn any(&self) -> BoxedStrategy<u8> {
        (self.least..=self.most).boxed()
    }
}

/// One of a few words.
impl<C: Choice + Sync> Kind for &'static [(C, &'static str)] {
    type Value = C;

    fn read(&self, field: &Field<'_>) -> Option<C> {
        field.choice()
    }

    fn text(&self, value: &C) -> String {
        value.pick()
    }

    fn typed(&self, text: &str) -> Option<C> {
        C::named(text)
    }

    fn toml(&self, value: &C) -> String {
        quoted(value.word())
    }

    #[cfg(test)]
    fn any(&self) -> BoxedStrategy<C> {
        select(*self).prop_map(|(choice, _)| choice).boxed()
    }
}

/// Yes or no.
pub(super) struct YesNo;

impl Kind for YesNo {
    type Value = bool;

    fn read(&self, field: &Field<'_>) -> Option<bool> {
        field.yes_no()
    }

    fn text(&self, value: &bool) -> String {
        if *value { "yes" } else { "no" }.to_owned()
    }

    fn typed(&self, text: &str) -> Option<bool> {
        match text {
            "yes" => Some(true),
            "no" => Some(false),
            _ => None,
        }
    }

    fn toml(&self, value: &bool) -> String {
        value.to_string()
    }

    #[cfg(test)]
    fn any(&self) -> BoxedStrategy<bool> {
        any::<bool>().boxed()
    }
}

/// A quantity without a unit, and without quotes.
pub(super) struct Bare<Q>(pub(super) Bounds<Q>);

impl<Q: Quantity + Sync + 'static> Kind for Bare<Q> {
    type Value = Q;

    fn read(&self, field: &Field<'_>) -> Option<Q> {
        field.number(&self.0)
    }

    fn text(&self, value: &Q) -> String {
        value.amount().to_string()
    }

    fn typed(&self, text: &str) -> Option<Q> {
        self.0.typed(text)
    }

    fn toml(&self, value: &Q) -> String {
        let number = self.text(value);
        if number.contains('.') {
            number
        } else {
            format!("{number}.0")
        }
    }

    #[cfg(test)]
    fn any(&self) -> BoxedStrategy<Q> {
        self.0.any()
    }
}

/// The size of a wire.
pub(super) struct WireSize;

impl Kind for WireSize {
    type Value = Wire;

    fn read(&self, field: &Field<'_>) -> Option<Wire> {
        field.wire()
    }

    fn text(&self, value: &Wire) -> String {
        value.to_string()
    }

    fn typed(&self, text: &str) -> Option<Wire> {
        Wire::parse(text).ok()
    }

    #[cfg(test)]
    fn any(&self) -> BoxedStrategy<Wire> {
        prop_oneof![
            (0..=30_i8).prop_map(Wire::Awg),
            (100..=400_000_i32).prop_map(Wire::Area)
        ]
        .boxed()
    }
}

/// The shape of a plug.
pub(super) struct PlugShape;

impl Kind for PlugShape {
    type Value = Plug;

    fn read(&self, field: &Field<'_>) -> Option<Plug> {
        field.plug()
    }

    fn text(&self, value: &Plug) -> String {
        value.to_string()
    }

    fn typed(&self, text: &str) -> Option<Plug> {
        Plug::named(text)
    }

    #[cfg(test)]
    fn any(&self) -> BoxedStrategy<Plug> {
        select(Configuration::ALL.to_vec()).prop_map(Plug).boxed()
    }
}

/// The shape of a receptacle.
pub(super) struct Face;

impl Kind for Face {
    type Value = Receptacle;

    fn read(&self, field: &Field<'_>) -> Option<Receptacle> {
        field.receptacle()
    }

    fn text(&self, value: &Receptacle) -> String {
        value.to_string()
    }

    #[cfg(test)]
    fn any(&self) -> BoxedStrategy<Receptacle> {
        select(Configuration::ALL.to_vec())
            .prop_map(Receptacle)
            .boxed()
    }
}

/// Several, in brackets.
pub(super) struct List<K>(pub(super) K);

impl<K: Kind> Kind for List<K> {
    type Value = Vec<K::Value>;

    fn read(&self, field: &Field<'_>) -> Option<Self::Value> {
        field.list(Type::List, |item| self.0.read(item))
    }

    fn text(&self, value: &Self::Value) -> String {
        let all: Vec<String> = value.iter().map(|item| self.0.text(item)).collect();
        all.join(", ")
    }

    fn toml(&self, value: &Self::Value) -> String {
        let all: Vec<String> = value.iter().map(|item| self.0.toml(item)).collect();
        format!("[{}]", all.join(", "))
    }

    #[cfg(test)]
    fn any(&self) -> BoxedStrategy<Self::Value> {
        vec(self.0.any(), 0..3).boxed()
    }
}

/// The receptacles of a cord, one at least.
pub(super) struct Ends;

impl Kind for Ends {
    type Value = Vec<Receptacle>;

    fn read(&self, field: &Field<'_>) -> Option<Self::Value> {
        let ends = List(Face).read(field)?;
        if ends.is_empty() {
            field.put(ProblemKind::NoOutlets { part: "cord" });
        }
        Some(ends)
    }

    fn text(&self, value: &Self::Value) -> String {
        List(Face).text(value)
    }

    fn toml(&self, value: &Self::Value) -> String {
        List(Face).toml(value)
    }

    #[cfg(test)]
    fn any(&self) -> BoxedStrategy<Self::Value> {
        vec(Face.any(), 1..4).boxed()
    }
}

/// A part of the day.
pub(super) struct Hours;

impl Kind for Hours {
    type Value = Span;

    fn read(&self, field: &Field<'_>) -> Option<Span> {
        field.hours()
    }

    fn text(&self, value: &Span) -> String {
        value.to_string()
    }

    #[cfg(test)]
    fn any(&self) -> BoxedStrategy<Span> {
        let ends = (0..Span::DAY, 1..=Span::DAY);
        ends.prop_map(|(from, to)| Span { from, to }).boxed()
    }
}

/// Parts of the day, of which a single one needs no brackets.
pub(super) struct OneOrMoreHours;

impl Kind for OneOrMoreHours {
    type Value = Vec<Span>;

    fn read(&self, field: &Field<'_>) -> Option<Self::Value> {
        if field.is_list() {
            List(Hours).read(field)
        } else {
            Hours.read(field).map(|only| vec![only])
        }
    }

    fn text(&self, value: &Self::Value) -> String {
        List(Hours).text(value)
    }

    fn toml(&self, value: &Self::Value) -> String {
        match value.as_slice() {
            [only] => Hours.toml(only),
            _ => List(Hours).toml(value),
        }
    }

    #[cfg(test)]
    fn any(&self) -> BoxedStrategy<Self::Value> {
        List(Hours).any()
    }
}

/// What its owner calls something.
pub(super) struct Name;

impl Kind for Name {
    type Value = String;

    fn read(&self, field: &Field<'_>) -> Option<String> {
        field.name()
    }

    fn text(&self, value: &String) -> String {
        value.clone()
    }

    #[cfg(test)]
    fn any(&self) -> BoxedStrategy<String> {
        // Words of any script, with the characters that need care in TOML.
        let name = "[\\p{L}\"'\\\\#=\\[{][\\p{L}\\p{N} \"'\\\\#=,.-]{0,18}[\\p{L}\\p{N}\"\\\\]";
        name.boxed()
    }
}

/// The name of a part, which others refer to it by.
pub(super) struct NewId;

impl Kind for NewId {
    type Value = Id;

    fn read(&self, field: &Field<'_>) -> Option<Id> {
        field.id()
    }

    fn text(&self, value: &Id) -> String {
        value.to_string()
    }

    /// Whoever draws a plan names its parts.
    #[cfg(test)]
    fn any(&self) -> BoxedStrategy<Id> {
        Just(Id::blank()).boxed()
    }
}

/// The name of a receptacle. Whether there is one of that name is looked up when all was read.
pub(super) struct Reference;

impl Kind for Reference {
    type Value = Id;

    fn read(&self, field: &Field<'_>) -> Option<Id> {
        field.text().and_then(Id::reference)
    }

    fn text(&self, value: &Id) -> String {
        value.to_string()
    }

    /// Whoever draws a plan plugs its parts in.
    #[cfg(test)]
    fn any(&self) -> BoxedStrategy<Id> {
        Just(Id::blank()).boxed()
    }
}

/// A part in braces.
pub(super) struct Inline<P> {
    /// What stands between its values where people type them.
    between: &'static str,
    part: PhantomData<fn() -> P>,
}

impl<P> Inline<P> {
    pub(super) const fn with(between: &'static str) -> Self {
        Self {
            between,
            part: PhantomData,
        }
    }
}

impl<P: Part> Kind for Inline<P> {
    type Value = P;

    fn read(&self, field: &Field<'_>) -> Option<P> {
        field.table(&P::keys()).map(|fields| P::read(&fields))
    }

    fn text(&self, value: &P) -> String {
        let texts = P::ROWS.iter().filter_map(|row| match row.text(value) {
            Answer::Known(text) => Some(text),
            Answer::Missing | Answer::Unknown => None,
        });
        texts.collect::<Vec<_>>().join(self.between)
    }

    fn toml(&self, value: &P) -> String {
        let all = value
            .written()
            .map(|(key, value)| format!("{key} = {value}"));
        format!("{{ {} }}", all.collect::<Vec<_>>().join(", "))
    }

    #[cfg(test)]
    fn any(&self) -> BoxedStrategy<P> {
        super::arbitrary::part().boxed()
    }
}
