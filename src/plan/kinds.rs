//! The kinds of values in a plan.

use std::fmt::{Debug, Display};
use std::marker::PhantomData;

#[cfg(test)]
use proptest::collection::vec;
#[cfg(test)]
use proptest::prelude::*;
#[cfg(test)]
use proptest::sample::select;

use super::bounds::{Bounds, Whole};
use super::read::{Field, Refusal};
use super::row::{Kind, Part};
use super::write::{natural, quoted};
use super::{Answer, Choice, Id, Span};
use crate::quantity::{Quantity, Wire};
#[cfg(test)]
use crate::tables::shape::Configuration;
use crate::tables::shape::{Plug, Receptacle};

/// A quantity: a number with a unit.
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
        // Numbers with two readings are mostly near the lower end.
        let near = most.min(least + 1_000_000);
        let any = prop_oneof![4 => least..=most, 1 => least..=near];
        any.prop_map(Q::from_count).boxed()
    }
}

/// A count.
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

/// A choice among a few words.
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

/// A quantity written as a bare number, without unit or quotes.
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
        if number.contains('.') { number } else { format!("{number}.0") }
    }

    #[cfg(test)]
    fn any(&self) -> BoxedStrategy<Q> {
        self.0.any()
    }
}

/// A value that is written as it displays.
pub(super) struct Shown<T: 'static> {
    read: fn(&Field<'_>) -> Option<T>,
    typed: fn(&str) -> Option<T>,
    #[cfg(test)]
    any: fn() -> BoxedStrategy<T>,
}

impl<T: Display + Clone + Debug + 'static> Kind for Shown<T> {
    type Value = T;

    fn read(&self, field: &Field<'_>) -> Option<T> {
        (self.read)(field)
    }

    fn text(&self, value: &T) -> String {
        value.to_string()
    }

    fn typed(&self, text: &str) -> Option<T> {
        (self.typed)(text)
    }

    #[cfg(test)]
    fn any(&self) -> BoxedStrategy<T> {
        (self.any)()
    }
}

/// A wire size.
pub(super) const WIRE: Shown<Wire> = Shown {
    read: |field| field.wire(),
    typed: |text| Wire::parse(text).ok(),
    #[cfg(test)]
    any: || {
        let gauge = (0..=30_i8).prop_map(Wire::Awg);
        prop_oneof![gauge, (100..=400_000_i32).prop_map(Wire::Area)].boxed()
    },
};

/// The shape of a plug.
pub(super) const PLUG: Shown<Plug> = Shown {
    read: |field| field.plug(),
    typed: Plug::named,
    #[cfg(test)]
    any: || select(&Configuration::ALL[..]).prop_map(Plug).boxed(),
};

/// The shape of a receptacle.
pub(super) const FACE: Shown<Receptacle> = Shown {
    read: |field| field.receptacle(),
    typed: Receptacle::named,
    #[cfg(test)]
    any: || select(&Configuration::ALL[..]).prop_map(Receptacle).boxed(),
};

/// A part of the day.
pub(super) const HOURS: Shown<Span> = Shown {
    read: |field| field.hours(),
    // Clock formats vary, so the interview parses these.
    typed: |_| None,
    #[cfg(test)]
    any: || {
        let ends = (0..Span::DAY, 1..=Span::DAY);
        ends.prop_map(|(from, to)| Span { from, to }).boxed()
    },
};

/// The name that its owner gives something.
pub(super) const NAME: Shown<String> = Shown {
    read: |field| field.name(),
    typed: super::name,
    // Words in any script, with the characters that need care in TOML.
    #[cfg(test)]
    any: || {
        let name = "[\\p{L}\"'\\\\#=\\[{][\\p{L}\\p{N} \"'\\\\#=,.-]{0,18}[\\p{L}\\p{N}\"\\\\]";
        let printed = |c: char| if crate::plan::can_print(c) { c } else { 'é' };
        name.prop_map(move |name: String| name.chars().map(printed).collect::<String>()).boxed()
    },
};

/// The id by which others refer to a part.
pub(super) const ID: Shown<Id> = Shown {
    read: |field| field.id(),
    typed: Id::new,
    // The plan's strategy names its parts and plugs them in.
    #[cfg(test)]
    any: || Just(Id::default()).boxed(),
};

/// The id of a receptacle. Whether it exists is checked after everything is read.
pub(super) const REFERENCE: Shown<Id> = Shown {
    read: |field| field.text().and_then(Id::reference),
    typed: |_| None,
    #[cfg(test)]
    any: || Just(Id::default()).boxed(),
};

/// A list in brackets.
pub(super) struct List<K> {
    /// The kind of its items.
    pub(super) of: K,
    /// The least number of items.
    pub(super) least: usize,
    /// Whether a single item needs no brackets.
    pub(super) alone: bool,
}

/// Returns the kind of a list of any length.
pub(super) const fn list<K>(of: K) -> List<K> {
    List { of, least: 0, alone: false }
}

impl<K: Kind> Kind for List<K> {
    type Value = Vec<K::Value>;

    fn read(&self, field: &Field<'_>) -> Option<Self::Value> {
        if self.alone && !field.is_list() {
            return self.of.read(field).map(|only| vec![only]);
        }
        let all = field.list("list", |item| self.of.read(item))?;
        if all.len() < self.least {
            // Only the ends of a cord have a minimum.
            field.put(Refusal::new("no-outlets-cord"));
        }
        Some(all)
    }

    fn text(&self, value: &Self::Value) -> String {
        let all: Vec<String> = value.iter().map(|item| self.of.text(item)).collect();
        all.join(", ")
    }

    fn toml(&self, value: &Self::Value) -> String {
        let all: Vec<String> = value.iter().map(|item| self.of.toml(item)).collect();
        match all.as_slice() {
            [only] if self.alone => only.clone(),
            _ => format!("[{}]", all.join(", ")),
        }
    }

    #[cfg(test)]
    fn any(&self) -> BoxedStrategy<Self::Value> {
        vec(self.of.any(), self.least..self.least + 3).boxed()
    }
}

/// A part in braces.
pub(super) struct Inline<P> {
    /// The separator between its values when people type them.
    between: &'static str,
    part: PhantomData<fn() -> P>,
}

impl<P> Inline<P> {
    pub(super) const fn with(between: &'static str) -> Self {
        Self { between, part: PhantomData }
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
        let all = value.written().map(|(key, value)| format!("{key} = {value}"));
        format!("{{ {} }}", all.collect::<Vec<_>>().join(", "))
    }

    #[cfg(test)]
    fn any(&self) -> BoxedStrategy<P> {
        super::arbitrary::part().boxed()
    }
}
