//! Who would use receptacles where ground-fault protection does not work, and how bad that is.

use crate::plan::{Answer, Ground, Id};
use crate::report::{Signal, Value};
use crate::rules::Facts;
use crate::rules::demand::{Need, camper};
use crate::supply::{LimitReason, NodeIx};

/// Receptacles without protection that works, by who would use them. In the order of the tree.
#[derive(Debug, Default)]
pub(super) struct Exposed {
    /// Those that appliances are plugged into, or that an appliance without another place needs.
    pub used: Vec<NodeIx>,
    /// Those that a camper is plugged into.
    pub campers: Vec<NodeIx>,
    /// Those with a free socket, which anybody may use, or that lead to nothing usable.
    pub free: Vec<NodeIx>,
}

/// Those that count.
pub(super) fn exposed(facts: &Facts<'_>, counts: impl Fn(NodeIx) -> bool) -> Exposed {
    let needs = facts.needs();
    let socket = facts.verdicts.grounding.bonding_socket();
    let mut exposed = Exposed::default();
    for (at, node, shape, sockets) in facts.supply.receptacles() {
        // What must not be used for another reason is told of by that rule.
        let refused = facts.verdicts.refused(at).is_some();
        if node.reason == LimitReason::NotFed || !counts(at) {
            continue;
        }
        // What does not fit is not plugged in, wherever the plan puts it. What nothing that may be used carries is
        // plugged in all the same, into what is free.
        let bonded = socket.filter(|socket| socket.at == at);
        // What leads to nothing usable comes out again.
        let gear = facts.supply.fed_from(at);
        let gear = gear
            .filter(|(fed, _)| facts.verdicts.leads_on(*fed))
            .count();
        let known = gear + usize::from(bonded.is_some_and(|socket| socket.stays));
        let roams = |need: &Need<'_>| {
            need.by_gear() && need.load.on.is_none() && known < usize::from(sockets)
        };
        let mut here = needs
            .iter()
            .filter(|need| (need.at == Some(at) || roams(need)) && need.fits(shape))
            .peekable();
        let used = here.peek().is_some();
        // A camper there takes nothing from what an appliance needs it for.
        if used && !here.all(|need| camper(need.load)) {
            exposed.used.push(at);
        } else if used {
            exposed.campers.push(at);
        } else if facts.verdicts.bare(at)
            && !refused
            && (known < usize::from(sockets) || !(bonded.is_some() || facts.verdicts.leads_on(at)))
        {
            exposed.free.push(at);
        }
    }
    exposed
}

/// How bad it is to use one, with how wet the ground is.
pub(super) fn by_ground(facts: &Facts<'_>) -> (Signal, Value) {
    let (signal, word) = match facts.plan.site.ground {
        Answer::Known(Ground::Wet) => (Signal::Danger, "ground-wet"),
        Answer::Known(Ground::Damp) => (Signal::Warning, "ground-damp"),
        Answer::Known(Ground::Dry) => (Signal::Caution, "ground-dry"),
        Answer::Unknown | Answer::Missing => (Signal::Danger, "ground-unknown"),
    };
    (signal, Value::Word { word })
}

/// One step milder.
pub(super) const fn milder(signal: Signal) -> Signal {
    match signal {
        Signal::Danger => Signal::Warning,
        Signal::Warning => Signal::Caution,
        Signal::Caution | Signal::Notice => Signal::Notice,
    }
}

/// The ids of receptacles.
pub(super) fn ids(facts: &Facts<'_>, at: &[NodeIx]) -> Vec<Id> {
    at.iter()
        .map(|at| facts.supply.node(*at).id.clone())
        .collect()
}
