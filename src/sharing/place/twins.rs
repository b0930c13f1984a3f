//! Places that are the same but for their names and a limit of their own.
//!
//! Two outlets of a box behind breakers of the same size are twins: as long as neither has
//! anything that the other has not, a load need be tried at one of them only.

use super::search::Search;
use super::table::{Constraint, Touches};

/// Which places are twins, and what each has of its own.
pub(super) struct Twins {
    /// For each place, the first of its kind.
    pub(super) kind: Vec<usize>,
    /// For each place, the constraints that hold there only, in an order that is the same for all
    /// of its kind.
    pub(super) own: Vec<Vec<usize>>,
    /// The constraints that are no place's own.
    pub(super) shared: Vec<usize>,
}

impl Twins {
    fn new(constraints: &[Constraint], touches: &Touches, allowed: &[u64], places: usize) -> Self {
        let alone = |c: &usize| constraints[*c].places.is_power_of_two();
        let (owned, shared): (Vec<usize>, Vec<usize>) = (0..constraints.len()).partition(alone);
        // What every load does at a place, to constraints of its own and to others.
        let told = |place: usize| {
            let of_load = |load: usize| touches.at(load * places + place).iter();
            let mut own: Vec<(Facts, usize)> = owned
                .iter()
                .filter(|c| constraints[**c].places == 1 << place)
                .map(|c| {
                    let here = |load: usize| {
                        let touch = of_load(load).find(|touch| touch.constraint == *c);
                        touch.map_or((0, 0, 0), |touch| (touch.sum, touch.peak, touch.pledge))
                    };
                    let of = &constraints[*c];
                    let loads = (0..allowed.len()).map(here).collect();
                    ((of.moment, of.surge, of.capacity, loads), *c)
                })
                .collect();
            own.sort();
            let others: Vec<(usize, usize, i64, i64)> = (0..allowed.len())
                .flat_map(|load| of_load(load).map(move |touch| (load, touch)))
                .filter(|(_, touch)| !alone(&touch.constraint))
                .map(|(load, touch)| (load, touch.constraint, touch.sum, touch.peak))
                .collect();
            let welcome: Vec<bool> = allowed.iter().map(|mask| mask >> place & 1 == 1).collect();
            let (facts, own): (Vec<Facts>, Vec<usize>) = own.into_iter().unzip();
            ((welcome, others, facts), own)
        };
        let (told, own): (Vec<_>, Vec<_>) = (0..places).map(told).unzip();
        Self {
            kind: (0..places)
                .map(|place| {
                    (0..place)
                        .find(|first| told[*first] == told[place])
                        .unwrap_or(place)
                })
                .collect(),
            own,
            shared,
        }
    }
}

/// The moment of a constraint, its sort, its capacity, and what each load does to it.
type Facts = (usize, bool, i64, Vec<(i64, i64, i64)>);

impl Search<'_> {
    /// Which places are twins. Few searches ask.
    pub(super) fn twins(&self) -> &Twins {
        self.twins.get_or_init(|| {
            let places = self.sockets.len();
            Twins::new(&self.constraints, &self.touches, &self.allowed, places)
        })
    }

    /// Leaves out places that are, for all that is undecided, the same as one before them.
    ///
    /// Proof. What is left is to find places for the undecided loads, each at a place that is not
    /// before that of the one alike that is seated last. Let two twins be open to the same loads
    /// by that, have as many sockets, and be as full. Exchanging them turns a way of seating all
    /// into another. Of the ways there are, take one in which the least place of this load and the
    /// undecided ones alike is least, and give that place to this load, which is the first of
    /// them. If it were a place left out here, exchanging it with its twin before it would make
    /// the least place less. So it is one that is tried, and the others alike are not before it.
    pub(super) fn without_twins(&self, order: &mut Vec<usize>) {
        let mut kept: Vec<usize> = Vec::new();
        for place in order.drain(..) {
            if !self.twin_of_any(place, &kept) {
                kept.push(place);
            }
        }
        *order = kept;
    }

    /// Whether exchanging the place with one of these changes nothing for all that is undecided.
    pub(super) fn twin_of_any(&self, place: usize, others: &[usize]) -> bool {
        if others.is_empty() {
            return false;
        }
        let twins = self.twins();
        others.iter().any(|other| {
            twins.kind[*other] == twins.kind[place]
                && self.sockets[*other] == self.sockets[place]
                && twins.own[*other]
                    .iter()
                    .zip(&twins.own[place])
                    .all(|(a, b)| self.used[*a] == self.used[*b] && self.peak[*a] == self.peak[*b])
                && self
                    .bounds()
                    .all(|bound| (bound <= *other) == (bound <= place))
        })
    }

    /// For each undecided load that one alike goes before, the place of that one.
    pub(super) fn bounds(&self) -> impl Iterator<Item = usize> {
        self.undecided
            .iter()
            .filter_map(|load| self.alike[load].and_then(|before| self.at[before]))
    }
}
