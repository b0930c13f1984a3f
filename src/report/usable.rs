//! How much of the generator's power the outlets in use can deliver.

use super::{Sharing, Usable};
use crate::plan::{Leg, Plan};
use crate::quantity::{Current, Power};
use crate::supply::{NodeIx, NodeKind, Supply};
use crate::verdict::Verdicts;

/// Returns the power available through the outlets in use and the gear plugged into them. With neither loads nor gear
/// plugged in, through all outlets.
pub(super) fn usable(plan: &Plan, supply: &Supply, verdicts: &Verdicts<'_>, sharing: &Sharing) -> Usable {
    let used = used(plan, supply, sharing);
    let reach = Reach::of(supply, verdicts, &used);
    let root = NodeIx(0);
    let legs = supply.node(root).legs.all();
    let flows: Vec<Current> = legs.iter().map(|leg| reach.flow(root, *leg)).collect();
    let reachable = if flows.iter().all(|flow| *flow == supply.leg_rated) {
        supply.rated
    } else {
        flows.iter().map(|flow| Power::of_capacity(*flow, supply.volts)).sum::<Power>().min(supply.rated)
    };
    Usable {
        rated_watts: supply.rated,
        peak_watts: supply.peak,
        reachable_watts: reachable,
        stranded_watts: supply.rated - reachable,
    }
}

/// Returns the receptacles that loads are plugged into.
fn used(plan: &Plan, supply: &Supply, sharing: &Sharing) -> Vec<NodeIx> {
    plan.loads
        .iter()
        .filter_map(|load| load.on.as_ref())
        .chain(sharing.placed.iter().map(|placed| &placed.at))
        .filter_map(|id| supply.receptacle(id))
        .collect()
}

/// Returns the most current that can be drawn through a node on a leg by what is in use downstream of it.
pub(crate) fn flow(
    (plan, supply, sharing): (&Plan, &Supply, &Sharing),
    verdicts: &Verdicts<'_>,
    at: NodeIx,
    leg: Leg,
) -> Current {
    Reach::of(supply, verdicts, &used(plan, supply, sharing)).flow(at, leg)
}

struct Reach<'a> {
    supply: &'a Supply,
    verdicts: &'a Verdicts<'a>,
    /// Receptacles that loads are plugged into.
    used: &'a [NodeIx],
    /// Whether every receptacle counts as in use.
    everything: bool,
}

impl<'a> Reach<'a> {
    fn of(supply: &'a Supply, verdicts: &'a Verdicts<'a>, used: &'a [NodeIx]) -> Self {
        Self {
            supply,
            verdicts,
            used,
            everything: used.is_empty() && !supply.nodes.iter().any(|node| node.kind.is_gear()),
        }
    }

    /// Returns the most current that can be drawn through a node on one leg.
    fn flow(&self, at: NodeIx, leg: Leg) -> Current {
        let node = self.supply.node(at);
        // Nothing is drawn through a part that must not be used.
        if !node.legs.all().contains(&leg) || self.verdicts.refused(at).is_some() {
            return Current::ZERO;
        }
        let mut below: Current = self.supply.fed_from(at).map(|(child, _)| self.flow(child, leg)).sum();
        if let NodeKind::Receptacle { .. } = node.kind {
            let feeds_gear = self.supply.fed_from(at).next().is_some();
            // The receptacles of a cord or box are there to be used. Those of the generator are in use only when
            // something is plugged in.
            let of_gear = self.supply.up(at).skip(1).any(|(_, above)| above.kind.is_gear());
            let open = self.verdicts.no_loads(at).is_none();
            if open && (self.used.contains(&at) || self.everything || (of_gear && !feeds_gear)) {
                below = node.rating;
            }
        }
        below.min(node.rating)
    }
}
