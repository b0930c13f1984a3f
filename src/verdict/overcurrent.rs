//! What protects a part of the supply from more current than it can carry.

use serde::Serialize;

use super::own_limit::{OwnLimit, own_limit};
use crate::plan::{Answer, Id, Load, Plan};
use crate::quantity::{Current, Wire};
use crate::supply::{Acts, LimitReason, NodeIx, NodeKind, Supply, UNKNOWN_CORD};
use crate::tables::conductor::{CORD_SET_CIRCUIT, flexible_ampacity, gauge_of};
use crate::tables::shape::{Configuration, Plug};

/// Whether a cord set is thick enough for the allowance of 240.5(B)(4): 16 AWG or larger.
fn allowed_cord_set(plan: &Plan, cord: &Id) -> bool {
    plan.cord(cord).and_then(|cord| cord.wire.known()).is_some_and(|wire| thick_enough(*wire))
}

/// Whether a wire is thick enough for the allowance of 240.5(B)(4).
fn thick_enough(wire: Wire) -> bool {
    gauge_of(wire).is_some_and(|gauge| gauge <= 16)
}

/// Whether this is in a listed box with a 15 A plug and no wire thinner than a cord set's. Such a box is like several
/// receptacles at the end of a cord set, and protected like one. Its listing covers wire the plan does not mention.
fn in_listed_unit(plan: &Plan, supply: &Supply, ix: NodeIx) -> bool {
    let holder = supply.up(ix).find_map(|(_, node)| match node.kind {
        NodeKind::Inlet { .. } => plan.holder(&node.id),
        _ => None,
    });
    holder.is_some_and(|it| {
        let mut wires = it.outlets.iter().filter_map(|outlet| outlet.wire.known());
        it.is_listed() == Answer::Known(true)
            && it.inlet == Answer::Known(Plug(Configuration::N5_15))
            && wires.all(|wire| thick_enough(*wire))
    })
}

/// Returns the current a part can stand. For a cord, what its plug and its wire carry: the usual marking may be lower
/// and limits the plan, but nothing overheats past it yet.
pub(crate) fn stands(plan: &Plan, supply: &Supply, ix: NodeIx) -> Current {
    let node = supply.node(ix);
    let cord = plan.cord(&node.id);
    match (&node.kind, cord) {
        (NodeKind::Cord { plug, .. }, Some(cord)) => {
            let wire = flexible_ampacity(cord.wire.or(UNKNOWN_CORD));
            plug.0.rating().min(wire)
        }
        _ => node.laid_out,
    }
}

/// A code's allowance for a breaker larger than a part's rating.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Allowance {
    /// 240.5(B)(4): a cord set of 16 AWG or larger on a 15 A or 20 A circuit, and the 15 A receptacles at its end. A
    /// listed unit of several such receptacles on a 15 A plug counts too.
    CordSet,
    /// 210.21(B)(3): two or more 15 A receptacles on a 20 A circuit.
    Receptacles,
}

/// How a part is protected from overcurrent.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Overcurrent {
    /// It carries nothing, or needs none: the generator, a breaker, or the inside of a camper.
    NotNeeded,
    /// By a breaker no larger than its rating.
    Breaker(Current),
    /// By the generator, which limits its own current to what the part stands.
    Source,
    /// By a larger breaker, as a code allows.
    Allowed { breaker: Current, by: Allowance },
    /// No breaker is known.
    Unknown,
    /// The breaker is too large.
    TooHigh { breaker: Current },
    /// The breaker is too large for what is a lone 15 A receptacle on a 20 A circuit (`sure`), or may be one.
    Single { breaker: Current, sure: bool },
    /// The breaker is too large, but all that is beyond is a camper with its own main breaker, which somebody has read
    /// (`sure`) or must still look for.
    Camper { breaker: Current, sure: bool },
}

impl Overcurrent {
    /// Returns how a part is protected, or why it is not.
    pub(crate) fn of(plan: &Plan, supply: &Supply, ix: NodeIx) -> Self {
        let by_breaker = Self::by_breaker(plan, supply, ix);
        let needed = !matches!(by_breaker, Self::NotNeeded | Self::Breaker(_));
        let spared = |own: OwnLimit| own.spares(stands(plan, supply, ix));
        if needed && own_limit(plan, supply).is_some_and(spared) { Self::Source } else { by_breaker }
    }

    /// Returns the same without counting the generator's own limit.
    fn by_breaker(plan: &Plan, supply: &Supply, ix: NodeIx) -> Self {
        let node = supply.node(ix);
        if matches!(node.kind, NodeKind::Source | NodeKind::Breaker { .. }) || node.reason == LimitReason::NotFed {
            return Self::NotNeeded;
        }
        let breaker = node.protected_at.map(|(_, breaker)| breaker);
        if let Some(breaker) = breaker
            && breaker <= node.laid_out
        {
            return Self::Breaker(breaker);
        }
        let Some(breaker) = breaker else {
            return Self::Unknown;
        };
        let allowed = |by| Self::Allowed { breaker, by };
        match node.kind {
            // The inside is the camper maker's business; the plug and the inlet are judged.
            NodeKind::Receptacle { .. } if supply.inside(ix) => Self::NotNeeded,
            NodeKind::Receptacle { shape, sockets }
                if matches!(shape.0, Configuration::N5_15 | Configuration::N1_15) && breaker <= CORD_SET_CIRCUIT =>
            {
                let at_cord_end =
                    node.parent.filter(|parent| matches!(supply.node(*parent).kind, NodeKind::Cord { .. }));
                match at_cord_end {
                    Some(cord) if allowed_cord_set(plan, &supply.node(cord).id) => allowed(Allowance::CordSet),
                    // The cord is reported, so its end need not be.
                    Some(_) => Self::TooHigh { breaker },
                    None if fewest_plugs(plan, &node.id) > 1
                        || shares_circuit(supply, ix) && !may_be_alone(plan, &node.id) =>
                    {
                        allowed(Allowance::Receptacles)
                    }
                    None => Self::Single { breaker, sure: sockets == 1 },
                }
            }
            NodeKind::Cord { .. } if breaker <= CORD_SET_CIRCUIT && allowed_cord_set(plan, &node.id) => {
                allowed(Allowance::CordSet)
            }
            NodeKind::Inlet { .. } | NodeKind::Wiring
                if breaker <= CORD_SET_CIRCUIT && in_listed_unit(plan, supply, ix) =>
            {
                allowed(Allowance::CordSet)
            }
            _ => match only_a_camper(plan, supply, ix) {
                Some(sure) if breaker <= Configuration::N14_50.rating() => Self::Camper { breaker, sure },
                _ => Self::TooHigh { breaker },
            },
        }
    }

    /// Whether the part is shown to be protected.
    pub(crate) const fn holds(self) -> bool {
        matches!(self, Self::NotNeeded | Self::Breaker(_) | Self::Source | Self::Allowed { .. })
    }
}

/// Whether a cord in this place would be protected with this wire: by the breaker upstream, by the allowance for cord
/// sets, or by the generator itself.
pub(crate) fn protects_wire(plan: &Plan, supply: &Supply, cord: NodeIx, wire: Wire) -> bool {
    let node = supply.node(cord);
    let NodeKind::Cord { plug, .. } = node.kind else {
        return false;
    };
    let stands = plug.0.rating().min(flexible_ampacity(wire));
    let allowed = |breaker| breaker <= stands || breaker <= CORD_SET_CIRCUIT && thick_enough(wire);
    node.protected_at.is_some_and(|(_, breaker)| allowed(breaker))
        || own_limit(plan, supply).is_some_and(|own| own.spares(stands))
}

/// A condition that the plan cannot show, under which alone a part may be used. The part's own label states it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case", tag = "what")]
pub enum OnlyIf {
    /// A camper is plugged in, with a main breaker of at most `amps`.
    CamperMain {
        /// What the adapter carries.
        amps: Current,
    },
    /// This generator feeds it: the breaker upstream is too big, but the generator stops first.
    ThisGenerator,
}

impl OnlyIf {
    /// Returns the condition for a cord or box, or an end of a cord.
    pub(crate) fn of(plan: &Plan, supply: &Supply, ix: NodeIx) -> Option<Self> {
        let node = supply.node(ix);
        let part = if node.kind.is_gear() { ix } else { super::splitter(supply, ix)? };
        [ix, part].into_iter().find_map(|at| {
            let amps = supply.node(at).laid_out;
            match Overcurrent::of(plan, supply, at) {
                Overcurrent::Camper { .. } => Some(Self::CamperMain { amps: amps.min(node.laid_out) }),
                Overcurrent::Source => matches!(
                    Overcurrent::by_breaker(plan, supply, at),
                    Overcurrent::TooHigh { .. } | Overcurrent::Camper { .. }
                )
                .then_some(Self::ThisGenerator)
                // If heat or a coil leaves it less than that, the generator itself can overload it.
                .filter(|_| matches!(supply.limit(at).acts, Acts::At(_))),
                _ => None,
            }
        })
    }
}

/// Whether this is an adapter from a 50 A plug to one camper receptacle, or a camper cord behind one, that carries the
/// receptacle's rating and feeds nothing but a camper, whose main breaker is for no more. `None` if not; otherwise
/// whether somebody has read that breaker.
fn only_a_camper(plan: &Plan, supply: &Supply, ix: NodeIx) -> Option<bool> {
    const CAMPERS: Configuration = Configuration::TT30;
    let cords = supply.up(ix).filter_map(|(at, node)| match node.kind {
        NodeKind::Cord { plug, .. } => Some((at, plug.0)),
        _ => None,
    });
    let mut way: Vec<(NodeIx, Configuration)> = cords.collect();
    let adapter = way.pop();
    let to_campers = way.iter().all(|(_, plug)| *plug == CAMPERS);
    let Some((mut cord, Configuration::N14_50)) = adapter.filter(|_| to_campers) else {
        return None;
    };
    let end = loop {
        if supply.node(cord).laid_out < CAMPERS.rating() {
            return None;
        }
        let mut ends = supply.fed_from(cord);
        let (Some((end, node)), None) = (ends.next(), ends.next()) else {
            return None;
        };
        if !matches!(node.kind, NodeKind::Receptacle { shape, .. } if shape.0 == CAMPERS) {
            return None;
        }
        let mut past = supply.fed_from(end);
        match (past.next(), past.next()) {
            (None, _) => break node,
            (Some((next, it)), None) if it.kind.is_cord() => cord = next,
            (Some((_, it)), None) => {
                let main = plan.camper(&it.id)?.breaker;
                let small = main.known().is_none_or(|main| *main <= CAMPERS.rating());
                return small.then_some(main.is_known());
            }
            _ => return None,
        }
    };
    let campers: Vec<&Load> = plan
        .loads
        .iter()
        .filter(|load| load.plug.known().is_some_and(|plug| plug.0 == CAMPERS))
        .filter(|load| load.on.as_ref().is_none_or(|on| *on == end.id))
        .collect();
    matches!(campers.as_slice(), [one] if one.count == 1).then_some(false)
}

/// Whether another receptacle is on the same breaker. What is plugged into this one does not count as another.
fn shares_circuit(supply: &Supply, receptacle: NodeIx) -> bool {
    let breaker = supply.node(receptacle).protected_at.map(|(ix, _)| ix);
    supply.receptacles().any(|(ix, node, ..)| {
        node.protected_at.map(|(ix, _)| ix) == breaker && supply.up(ix).all(|(above, _)| above != receptacle)
    })
}

/// Returns the least number of plugs that a receptacle of the generator or of a box may take.
fn fewest_plugs(plan: &Plan, receptacle: &Id) -> u8 {
    plan.outlet(receptacle).map_or(1, |outlet| outlet.plugs().0)
}

/// Whether nobody knows the breaker of a box's receptacle: it may be its own, with nothing else on it.
fn may_be_alone(plan: &Plan, receptacle: &Id) -> bool {
    plan.boxes
        .iter()
        .flat_map(|it| &it.outlets)
        .any(|outlet| outlet.id == *receptacle && outlet.breaker == Answer::Unknown)
}
