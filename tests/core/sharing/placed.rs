//! The properties of a placing, computed directly from their definitions and without the solvers.

use tallywatt::sharing::model::{Model, plugged};

type Places = [Option<usize>];

/// Whether every row, socket and allowed place holds with everything plugged in and running.
pub fn holds(model: &Model, at: &Places) -> bool {
    plugs_fit(model, at) && model.at(at).holds(&plugged(at))
}

/// Whether the plugs fit all day and the rows hold at every moment.
pub fn holds_all_day(model: &Model, at: &Places) -> bool {
    let (fixed, all) = (model.at(at), plugged(at));
    plugs_fit(model, at) && model.moments().iter().all(|moment| fixed.holds(&all.intersection(moment)))
}

fn plugs_fit(model: &Model, at: &Places) -> bool {
    let fit = |place: usize, sockets: u32| at.iter().filter(|it| **it == Some(place)).count() <= sockets as usize;
    let allowed =
        |(load, place): (usize, &Option<usize>)| place.is_none_or(|it| model.loads[load].allowed.contains(&it));
    model.sockets.iter().enumerate().all(|(place, sockets)| fit(place, *sockets)) && at.iter().enumerate().all(allowed)
}

/// Returns the greatest use of any balanced row at any moment, in thousandths, rounded up. At least `enough`, below
/// which use does not count.
pub fn use_permille(model: &Model, at: &Places) -> i64 {
    let (fixed, all) = (model.at(at), plugged(at));
    let mut most = model.enough;
    for moment in model.moments() {
        let on = all.intersection(&moment);
        for (row, _) in fixed.rows.iter().zip(&model.rows).filter(|(_, of)| of.balanced) {
            let capacity = i128::from(row.capacity.max(1));
            let up = (i128::from(row.sum(&on)) * 1000 + capacity - 1) / capacity;
            most = most.max(i64::try_from(up).expect("a share"));
        }
    }
    most
}

/// Returns the weights of the loads that are plugged in: musts, then wishes.
pub fn weights(model: &Model, at: &Places) -> (u64, u64) {
    let of = |must: bool| {
        plugged(at).iter().map(|it| &model.loads[it]).filter(|it| it.must == must).map(|it| it.weight).sum()
    };
    (of(true), of(false))
}
