//! How a field of the plan is described, once for whoever reads, writes, asks or draws one: a
//! [`Row`] for each key, in the order in which files are written. The rows are in
//! [`super::table`], the kinds of value in [`super::kinds`].

#[cfg(test)]
use proptest::prelude::*;

use super::Answer;
use super::read::{Field, Fields, missing, not_unknown};
use super::write::quoted;

/// A part of the plan: keys in a table of the file. By default nothing is said of it.
pub(crate) trait Part: Default + Clone + std::fmt::Debug + 'static {
    /// What may be said of it, in the order in which it is written.
    const ROWS: &'static [&'static dyn Row<Self>];

    /// The row of this key.
    fn row(key: &str) -> Option<&'static dyn Row<Self>> {
        let mut rows = Self::ROWS.iter();
        rows.find(|row| row.keys().contains(&key)).copied()
    }

    /// Gives it the best answer in this field that somebody can find out; `None`, and nothing changed,
    /// of a field without one that is the same for every part.
    fn answer_best(&mut self, key: &str) -> Option<()> {
        let row = Self::row(key)?;
        row.take(self, Answer::Known(row.best()?));
        Some(())
    }

    /// One with the best answers.
    fn best() -> Self {
        let mut part = Self::default();
        for row in Self::ROWS {
            row.take(&mut part, row.best().map_or(Answer::Missing, Answer::Known));
        }
        part
    }

    /// Every key that means something here.
    fn keys() -> Vec<&'static str> {
        Self::ROWS.iter().flat_map(|row| row.keys()).copied().collect()
    }

    /// Reads all of it, so that everything that is wrong is reported.
    fn read(fields: &Fields<'_>) -> Self {
        let mut part = Self::default();
        for row in Self::ROWS {
            row.read(fields, &mut part);
        }
        part
    }

    /// Its keys with their values as TOML; those of which nothing is said left out.
    fn written(&self) -> impl Iterator<Item = (&'static str, String)> {
        Self::ROWS.iter().filter_map(|row| row.write(self))
    }
}

/// One field of a part.
pub(crate) trait Row<P>: Sync {
    /// Its key; of what can be said in several ways, one for each.
    fn keys(&self) -> &'static [&'static str];
    /// Takes it from the file, and reports what is wrong with it.
    fn read(&self, fields: &Fields<'_>, part: &mut P);
    /// Its key and value, as TOML.
    fn write(&self, part: &P) -> Option<(&'static str, String)>;
    /// The value as people type it.
    fn text(&self, part: &P) -> Answer<String>;
    /// The best answer that somebody can find out, as people type it, where it is the same for
    /// every part.
    fn best(&self) -> Option<&'static str>;
    /// Takes it from what somebody typed. What is no such value, or may not be unknown, changes
    /// nothing.
    fn take(&self, part: &mut P, said: Answer<&str>);
    /// Takes it from another.
    #[cfg(test)]
    fn copy(&self, from: &P, to: &mut P);
    /// A part with any value in this field.
    #[cfg(test)]
    fn any(&self) -> BoxedStrategy<P>;
}

/// What a value may be, and how it is written.
pub(crate) trait Kind: Sync {
    /// The value.
    type Value: Clone + std::fmt::Debug + 'static;
    /// Reads it, or reports what is wrong with it.
    fn read(&self, field: &Field<'_>) -> Option<Self::Value>;
    /// As people type it.
    fn text(&self, value: &Self::Value) -> String;
    /// What somebody typed, where it takes no more than the value's own form.
    fn typed(&self, _: &str) -> Option<Self::Value> {
        None
    }
    /// As TOML.
    fn toml(&self, value: &Self::Value) -> String {
        quoted(&self.text(value))
    }
    /// Any value that is taken.
    #[cfg(test)]
    fn any(&self) -> BoxedStrategy<Self::Value>;
}

/// How a part holds a value: as an answer, perhaps, or for sure.
pub(crate) trait Holds<T>: Clone + std::fmt::Debug + 'static {
    /// What is held when nobody knows, where that is an answer.
    const UNKNOWN: Option<Self>;
    /// A value that is known.
    fn known(value: T) -> Self;
    /// What is known.
    fn answer(&self) -> Answer<&T>;
    /// Holds this value, or none where there may be none.
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

/// A field of one key.
pub(crate) struct Of<P: 'static, H: 'static, K> {
    pub(super) keys: &'static [&'static str],
    pub(super) kind: K,
    pub(super) get: fn(&P) -> &H,
    pub(super) place: fn(&mut P) -> &mut H,
    pub(super) example: Option<&'static str>,
    pub(super) unless: fn(&P) -> bool,
    pub(super) best: Option<&'static str>,
}

/// The row of a field, whose key is its name, and the kind of its values.
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
    /// May not be left out. A line with it looks like this.
    pub(super) const fn needed(mut self, example: &'static str) -> Self {
        self.example = Some(example);
        self
    }

    /// Is not written where it says nothing.
    pub(super) const fn unless(mut self, unless: fn(&P) -> bool) -> Self {
        self.unless = unless;
        self
    }

    /// The best that somebody can find out is this.
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
        // Something may be called "Unknown"; that is a name like any other.
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
