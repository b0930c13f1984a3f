//! The description of a plan's fields, shared by reading, writing, asking and test generation: a [`Row`] for each key,
//! in the order of the file. The rows are in [`super::table`], the kinds of values in [`super::kinds`].

#[cfg(test)]
use proptest::prelude::*;

use super::Answer;
use super::read::{Field, Fields, missing, not_unknown};
use super::write::quoted;

/// A part of the plan, stored as a table in the file. By default nothing is said about it.
pub(crate) trait Part: Default + Clone + std::fmt::Debug + 'static {
    /// Its fields, in the order in which they are written.
    const ROWS: &'static [&'static dyn Row<Self>];

    /// Returns the row with this key.
    fn row(key: &str) -> Option<&'static dyn Row<Self>> {
        let mut rows = Self::ROWS.iter();
        rows.find(|row| row.keys().contains(&key)).copied()
    }

    /// Sets this field to the best answer that somebody could find out. Returns `None` and changes nothing if the field
    /// has no best answer that is the same for every part.
    fn answer_best(&mut self, key: &str) -> Option<()> {
        let row = Self::row(key)?;
        row.take(self, Answer::Known(row.best()?));
        Some(())
    }

    /// Returns a part with all the best answers.
    fn best() -> Self {
        let mut part = Self::default();
        for row in Self::ROWS {
            row.take(&mut part, row.best().map_or(Answer::Missing, Answer::Known));
        }
        part
    }

    /// Returns every key that is valid here.
    fn keys() -> Vec<&'static str> {
        Self::ROWS.iter().flat_map(|row| row.keys()).copied().collect()
    }

    /// Reads every field, so that everything wrong is reported.
    fn read(fields: &Fields<'_>) -> Self {
        let mut part = Self::default();
        for row in Self::ROWS {
            row.read(fields, &mut part);
        }
        part
    }

    /// Returns its keys with their TOML values, without fields that are not set.
    fn written(&self) -> impl Iterator<Item = (&'static str, String)> {
        Self::ROWS.iter().filter_map(|row| row.write(self))
    }
}

/// A field of a part.
pub(crate) trait Row<P>: Sync {
    /// Returns its key, or all its keys if the value can be given in several ways.
    fn keys(&self) -> &'static [&'static str];
    /// Reads the field from the file and reports what is wrong with it.
    fn read(&self, fields: &Fields<'_>, part: &mut P);
    /// Returns its key and TOML value, or `None` if it is not written.
    fn write(&self, part: &P) -> Option<(&'static str, String)>;
    /// Returns the value as people type it.
    fn text(&self, part: &P) -> Answer<String>;
    /// Returns the best answer that somebody could find out, as people type it, if it is the same for every part.
    fn best(&self) -> Option<&'static str>;
    /// Sets the field from what somebody typed. Leaves it alone if that is no such value, or if it may not be unknown.
    fn take(&self, part: &mut P, said: Answer<&str>);
    /// Copies the field from another part.
    #[cfg(test)]
    fn copy(&self, from: &P, to: &mut P);
    /// Generates a part with any value in this field.
    #[cfg(test)]
    fn any(&self) -> BoxedStrategy<P>;
}

/// The allowed values of a field and their spelling.
pub(crate) trait Kind: Sync {
    /// The type of the value.
    type Value: Clone + std::fmt::Debug + 'static;
    /// Reads the value, or reports what is wrong with it.
    fn read(&self, field: &Field<'_>) -> Option<Self::Value>;
    /// Formats the value as people type it.
    fn text(&self, value: &Self::Value) -> String;
    /// Parses what somebody typed, if that needs no more than the value's own form.
    fn typed(&self, _: &str) -> Option<Self::Value> {
        None
    }
    /// Formats the value as TOML.
    fn toml(&self, value: &Self::Value) -> String {
        quoted(&self.text(value))
    }
    /// Generates any accepted value.
    #[cfg(test)]
    fn any(&self) -> BoxedStrategy<Self::Value>;
}

/// How a part stores a value: as an answer, as an option or plainly.
pub(crate) trait Holds<T>: Clone + std::fmt::Debug + 'static {
    /// The value for "unknown", if that is allowed.
    const UNKNOWN: Option<Self>;
    /// Wraps a known value.
    fn known(value: T) -> Self;
    /// Returns the value as an answer.
    fn answer(&self) -> Answer<&T>;
    /// Generates this value, or none where it is not `needed`.
    #[cfg(test)]
    fn any(value: BoxedStrategy<T>, needed: bool) -> BoxedStrategy<Self>;
}

impl<T: Clone + std::fmt::Debug + 'static> Holds<T> for Answer<T> {
    const UNKNOWN: Option<Self> = Some(Self::Unknown);

    fn known(value: T) -> Self {
        Self::Known(value)
    }

    fn answer(&self) -> Answer<&T> {
        match self {
            Self::Missing => Answer::Missing,
            Self::Unknown => Answer::Unknown,
            Self::Known(value) => Answer::Known(value),
        }
    }

    #[cfg(test)]
    fn any(value: BoxedStrategy<T>, needed: bool) -> BoxedStrategy<Self> {
        let answer = (u8::from(needed)..6, value).prop_map(|(which, value)| match which {
            0 => Self::Missing,
            1 => Self::Unknown,
            _ => Self::Known(value),
        });
        answer.boxed()
    }
}

impl<T: Clone + std::fmt::Debug + 'static> Holds<T> for Option<T> {
    const UNKNOWN: Option<Self> = None;

    fn known(value: T) -> Self {
        Some(value)
    }

    fn answer(&self) -> Answer<&T> {
        self.as_ref().map_or(Answer::Missing, Answer::Known)
    }

    #[cfg(test)]
    fn any(value: BoxedStrategy<T>, _: bool) -> BoxedStrategy<Self> {
        proptest::option::of(value).boxed()
    }
}

impl<T: Clone + std::fmt::Debug + 'static> Holds<T> for T {
    const UNKNOWN: Option<Self> = None;

    fn known(value: T) -> Self {
        value
    }

    fn answer(&self) -> Answer<&T> {
        Answer::Known(self)
    }

    #[cfg(test)]
    fn any(value: BoxedStrategy<T>, _: bool) -> BoxedStrategy<Self> {
        value
    }
}

/// A field with a single key.
pub(crate) struct Of<P: 'static, H: 'static, K> {
    pub(super) keys: &'static [&'static str],
    pub(super) kind: K,
    pub(super) get: fn(&P) -> &H,
    pub(super) place: fn(&mut P) -> &mut H,
    pub(super) example: Option<&'static str>,
    pub(super) unless: fn(&P) -> bool,
    pub(super) best: Option<&'static str>,
}

/// Builds the row of a field, which has the field's name as its key.
macro_rules! row {
    ($part:ident.$field:ident: $kind:expr) => {
        $crate::plan::row::Of {
            keys: &[stringify!($field)],
            kind: $kind,
            get: |part: &$part| &part.$field,
            place: |part: &mut $part| &mut part.$field,
            example: None,
            unless: |_| false,
            best: None,
        }
    };
}
pub(super) use row;

impl<P, H, K> Of<P, H, K> {
    /// Makes the field required. `example` is a valid line for the error message.
    pub(super) const fn needed(mut self, example: &'static str) -> Self {
        self.example = Some(example);
        self
    }

    /// Leaves the field out of the file when `unless` holds, because it says nothing then.
    pub(super) const fn unless(mut self, unless: fn(&P) -> bool) -> Self {
        self.unless = unless;
        self
    }

    /// Sets the best answer that somebody could find out.
    pub(super) const fn best(mut self, best: &'static str) -> Self {
        self.best = Some(best);
        self
    }
}

impl<P: Part, K: Kind, H: Holds<K::Value>> Row<P> for Of<P, H, K> {
    fn keys(&self) -> &'static [&'static str] {
        self.keys
    }

    fn read(&self, fields: &Fields<'_>, part: &mut P) {
        let key = self.keys[0];
        let Some(mut field) = fields.get(key) else {
            if let Some(example) = self.example {
                fields.put(missing(key, example));
            }
            return;
        };
        field.or_unknown = H::UNKNOWN.is_some();
        // Something may be named "Unknown". That is a name like any other.
        let held = if !field.is_unknown() || key == "name" {
            self.kind.read(&field).map(H::known)
        } else {
            if H::UNKNOWN.is_none() {
                field.put(not_unknown(self.example.is_none()));
            }
            H::UNKNOWN
        };
        if let Some(held) = held {
            *(self.place)(part) = held;
        }
    }

    fn write(&self, part: &P) -> Option<(&'static str, String)> {
        let value = match (self.get)(part).answer() {
            _ if (self.unless)(part) => None,
            Answer::Missing if self.example.is_none() => None,
            Answer::Missing | Answer::Unknown => Some(quoted("unknown")),
            Answer::Known(value) => Some(self.kind.toml(value)),
        };
        value.map(|value| (self.keys[0], value))
    }

    fn text(&self, part: &P) -> Answer<String> {
        match (self.get)(part).answer() {
            Answer::Missing => Answer::Missing,
            Answer::Unknown => Answer::Unknown,
            Answer::Known(value) => Answer::Known(self.kind.text(value)),
        }
    }

    fn best(&self) -> Option<&'static str> {
        self.best
    }

    fn take(&self, part: &mut P, said: Answer<&str>) {
        let held = match said {
            Answer::Missing => None,
            Answer::Unknown => H::UNKNOWN,
            Answer::Known(text) => self.kind.typed(text).map(H::known),
        };
        if let Some(held) = held {
            *(self.place)(part) = held;
        }
    }

    #[cfg(test)]
    fn copy(&self, from: &P, to: &mut P) {
        *(self.place)(to) = (self.get)(from).clone();
    }

    #[cfg(test)]
    fn any(&self) -> BoxedStrategy<P> {
        let place = self.place;
        let held = H::any(self.kind.any(), self.example.is_some());
        held.prop_map(move |held| {
            let mut part = P::default();
            *place(&mut part) = held;
            part
        })
        .boxed()
    }
}
