//! Who would use receptacles without working ground-fault protection, and how bad that is.

use crate::plan::{Answer, Ground, Id};
use crate::report::{Signal, Value};
use crate::rules::Facts;
use crate::rules::demand::Need;
use crate::supply::{LimitReason, NodeIx};
use crate::verdict::doubtful_boxes;

/// Receptacles without working protection, by who would use them. In tree order.
#[derive(Debug, Default)]
pub(super) struct Exposed {
    /// Receptacles that appliances are plugged into, or that an appliance without another place needs.
    pub used: Vec<NodeIx>,
    /// Receptacles that a camper is plugged into.
    pub campers: Vec<NodeIx>,
    /// Receptacles with a free socket, which anybody may use, or that lead to nothing usable.
    pub free: Vec<NodeIx>,
}

/// Sorts the receptacles for which `counts` holds: those without protection, or with `device` blinded by a joint of
/// neutral and ground beyond it.
pub(super) fn exposed(facts: &Facts<'_>, device: Option<NodeIx>, counts: impl Fn(NodeIx) -> bool) -> Exposed {
    let needs = facts.needs();
    let socket = facts.verdicts.grounding.bonding_socket();
    let mut exposed = Exposed::default();
    for (at, node, shape, sockets) in facts.supply.receptacles() {
        // If it must not be used for another reason, another rule reports it.
        let refused = facts.verdicts.refused(at).is_some();
        // Inside a camper, its maker has seen to protection.
        let fed = node.reason != LimitReason::NotFed || facts.supply.may_have_240(node);
        if facts.supply.inside(at) || !fed || !counts(at) {
            continue;
        }
        // A plug that does not fit is not plugged in, wherever the plan puts it. A load that is too much for every
        // usable receptacle still gets plugged in wherever a socket is free.
        let bonded = socket.filter(|socket| socket.at == at);
        // Gear that leads to nothing usable comes out again.
        let plugs = |stays: &dyn Fn(NodeIx) -> bool| {
            let gear = facts.supply.fed_from(at).filter(|(fed, _)| stays(*fed));
            gear.count() + usize::from(bonded.is_some_and(|socket| socket.stays))
        };
        let known = plugs(&|fed| facts.verdicts.leads_on(fed));
        // A box about which too little is known may come out too. But a box that is the only cause of harm, and only while it is
        // in, keeps its socket taken.
        let grounding = &facts.verdicts.grounding;
        let holds = |fed| device.is_some_and(|device| !grounding.may_be_joined_but_in(device, fed));
        let taken = plugs(&|fed| holds(fed) || stays(facts, fed));
        let roams = |need: &Need<'_>| need.by_gear() && need.load.on.is_none() && taken < usize::from(sockets);
        let used = needs.iter().any(|need| {
            let there = need.at == Some(at) || roams(need);
            there && need.fits(shape)
        });
        // A camper here makes the outlet no milder for an appliance that needs it.
        let camper = || {
            let mut gear = facts.supply.fed_from(at);
            gear.any(|(fed, it)| facts.plan.camper(&it.id).is_some() && facts.verdicts.leads_on(fed))
        };
        if used && !facts.verdicts.for_campers(at) {
            exposed.used.push(at);
        } else if used || camper() {
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

/// Whether a node's path to the generator passes through another node.
fn passes(facts: &Facts<'_>, from: NodeIx, by: NodeIx) -> bool {
    facts.supply.up(from).any(|(at, _)| at == by)
}

/// Whether a cord or box stays useful whatever is found out about boxes: some receptacle beyond it may be used, with no
/// box upstream that may have a bond.
fn stays(facts: &Facts<'_>, gear: NodeIx) -> bool {
    let doubtful = doubtful_boxes(facts.plan);
    let mut receptacles = facts.supply.receptacles();
    receptacles.any(|(at, ..)| {
        let mut way = facts.supply.up(at);
        facts.verdicts.no_loads(at).is_none()
            && passes(facts, at, gear)
            && way.all(|(_, node)| !doubtful.contains(&node.id))
    })
}

/// Returns how bad it is to use an unprotected receptacle, and how wet the ground is.
pub(super) fn by_ground(facts: &Facts<'_>) -> (Signal, Value) {
    let (signal, word) = match facts.plan.site.ground {
        Answer::Known(Ground::Wet) => (Signal::Danger, "ground-wet"),
        Answer::Known(Ground::Damp) => (Signal::Warning, "ground-damp"),
        Answer::Known(Ground::Dry) => (Signal::Caution, "ground-dry"),
        Answer::Unknown | Answer::Missing => (Signal::Danger, "ground-unknown"),
    };
    (signal, Value::Word { word })
}

/// Returns the signal one step milder.
pub(super) const fn milder(signal: Signal) -> Signal {
    match signal {
        Signal::Danger => Signal::Warning,
        Signal::Warning => Signal::Caution,
        Signal::Caution | Signal::Notice => Signal::Notice,
    }
}

/// Returns the ids of receptacles.
pub(super) fn ids(facts: &Facts<'_>, at: &[NodeIx]) -> Vec<Id> {
    at.iter().map(|at| facts.supply.node(*at).id.clone()).collect()
}

#[cfg(test)]
mod tests {
    use crate::report::Signal;
    use crate::rules::testing::signals;

    /// The only household outlet feeds a box with no household receptacle. The box has to come out if it has a bond,
    /// and might have to if that is unknown; then the kettle goes in. While the box is in and
    /// blinds the GFCI, the kettle has no socket.
    #[test]
    fn a_box_that_may_have_to_come_out_leaves_its_socket() {
        let home = ("from = \"twist\"\nplug", "plug");
        let kettle = ("on = \"left\" # kettle", "");
        let fan = ("on = \"right\" # fan", "");
        let danger = |code: &str, sockets: u8, gfci: bool, bond: &str| {
            let front = format!("gfci = {gfci}\nsockets = {sockets}");
            let small = format!(
                "[[box]]\nid = \"small\"\nfrom = \"front\"\ninlet = \"5-20P\"\nlisted = true\n\
                 bond = {bond}\n[[box.outlet]]\nid = \"lock\"\nshape = \"L5-20R\"\nbreaker = \"20 A\"\n\
                 gfci = true\nwire = \"12 AWG\"\n[[box]]"
            );
            let edits = [home, kettle, fan, ("gfci = true # front", &front), ("[[box]]", &small)];
            signals(code, &edits).contains(&Signal::Danger)
        };
        for (bond, comes_out) in [("true", true), ("\"unknown\"", true), ("false", false)] {
            assert_eq!(danger("SHOCK001", 1, false, bond), comes_out, "{bond}");
            assert!(danger("SHOCK001", 2, false, bond));
            assert!(!danger("SHOCK013", 1, true, bond));
            assert_eq!(danger("SHOCK013", 2, true, bond), comes_out, "{bond}");
        }
    }

    /// The only outlet that takes the kettle has no GFCI. In cool air the generator can start the kettle. If the air is
    /// unknown, the kettle is too large only on a guess, and is plugged in all the same.
    #[test]
    fn what_only_a_guess_makes_too_large_is_plugged_in() {
        let kettle = [
            ("plug = \"5-15P\" # kettle", "plug = \"5-20P\""),
            ("on = \"left\" # kettle", ""),
            ("gfci = true # front", "gfci = false"),
        ];
        let found = |air: &str, starting: &str| {
            let (air, starting) = (format!("air = \"{air}\""), format!("starting = \"{starting}\""));
            let more = [("air = \"59 °F\"", air.as_str()), ("hours = [\"18:30-19:00\"]", starting.as_str())];
            signals("SHOCK001", &[&kettle[..], &more].concat())
        };
        assert_eq!(found("59 °F", "4400 W"), [Signal::Danger]);
        assert_eq!(found("unknown", "4400 W"), [Signal::Danger]);
        // Why it is there is a guess, but the missing GFCI is not.
        let rests = |gfci: &str| {
            let air = ("air = \"59 °F\"", "air = \"unknown\"");
            let starting = ("hours = [\"18:30-19:00\"]", "starting = \"4400 W\"");
            let gfci = ("gfci = true # front", gfci);
            let report = crate::rules::testing::report(&[&kettle[..2], &[gfci, air, starting]].concat());
            let found = report.findings.into_iter().find(|it| it.code == "SHOCK001");
            let rests = found.expect("it is told").rests_on;
            rests.into_iter().map(|it| it.field).collect::<Vec<_>>()
        };
        assert_eq!(rests("gfci = false"), [""; 0]);
        assert_eq!(rests("gfci = \"unknown\""), ["generator.outlet.front.gfci"]);
        // More than the generator can ever start.
        assert_eq!(found("59 °F", "9000 W"), [Signal::Caution]);
    }
}
