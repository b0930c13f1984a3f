//! Places that nothing tells apart, taken for one.
//!
//! The receptacles of a splitter, or of a box whose feed limits them all, differ in their names
//! only: for how much can be served they are one receptacle with the sockets of all. The search
//! then has fewer places to try, and never the same placing under other names.

use super::super::model::{Model, Places, Row};

/// A model with such places joined, and what was joined.
pub(super) struct Joined {
    pub(super) model: Model,
    /// For each joined place, the places it stands for, rising.
    of: Vec<Vec<usize>>,
    /// For each joined place, the sockets of the places it stands for.
    sockets: Vec<Vec<u32>>,
}

impl Joined {
    /// Joins the places at which every load may be plugged in or none, costs as much, and does the
    /// same to every row.
    ///
    /// Proof that this changes nothing but names. A placing becomes one of the joined model by
    /// renaming its places: rows have the same sums, and a joined place takes as many plugs as its
    /// parts. Back, the loads at a joined place are dealt out to the sockets of its parts, which
    /// are as many; each is allowed there, and every row has the same sum wherever they went.
    pub(super) fn new(model: &Model) -> Self {
        let places = model.sockets.len();
        let mut of: Vec<Vec<usize>> = Vec::new();
        for place in 0..places {
            match of.iter_mut().find(|of| same(model, of[0], place)) {
                Some(of) => of.push(place),
                None => of.push(vec![place]),
            }
        }
        let sockets: Vec<Vec<u32>> = of
            .iter()
            .map(|of| of.iter().map(|place| model.sockets[*place]).collect())
            .collect();
        let pick = |table: &[i64]| -> Vec<i64> {
            table
                .chunks(places.max(1))
                .flat_map(|of_load| of.iter().map(|of| of_load[of[0]]))
                .collect()
        };
        let index = |place: &usize| of.iter().position(|of| of.contains(place));
        let model = Model {
            loads: model
                .loads
                .iter()
                .map(|load| {
                    let mut load = load.clone();
                    load.allowed = load.allowed.iter().filter_map(index).collect();
                    load.allowed.sort_unstable();
                    load.allowed.dedup();
                    load
                })
                .collect(),
            sockets: sockets.iter().map(|sockets| sockets.iter().sum()).collect(),
            rows: model
                .rows
                .iter()
                .map(|row| Row {
                    capacity: row.capacity,
                    balanced: row.balanced,
                    sums: pick(&row.sums),
                    peaks: pick(&row.peaks),
                })
                .collect(),
            moments: model.moments.clone(),
            costs: pick(&model.costs),
            enough: model.enough,
        };
        Self { model, of, sockets }
    }

    /// A placing of the joined model as one of the model it was made from.
    pub(super) fn apart(&self, at: &Places) -> Vec<Option<usize>> {
        let mut sockets = self.sockets.clone();
        at.iter()
            .map(|joined| {
                let joined = (*joined)?;
                let part = sockets[joined].iter().position(|left| *left > 0)?;
                sockets[joined][part] -= 1;
                Some(self.of[joined][part])
            })
            .collect()
    }
}

/// Whether nothing but its name tells a place from another.
fn same(model: &Model, one: usize, other: usize) -> bool {
    let places = model.sockets.len();
    model
        .loads
        .iter()
        .all(|load| load.allowed.contains(&one) == load.allowed.contains(&other))
        && model
            .rows
            .iter()
            .flat_map(|row| [&row.sums, &row.peaks])
            .chain([&model.costs])
            .all(|table| table.chunks(places).all(|of| of[one] == of[other]))
}
