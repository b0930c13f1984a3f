//! The limit at a node: the least of everything between it and the engine.

use super::{LimitReason, NodeIx, NodeKind, Supply};
use crate::plan::Id;
use crate::quantity::{Current, Voltage};

/// What acts when a limit is passed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Acts {
    /// This node trips or shuts down before any part is overloaded.
    At(NodeIx),
    /// A camper's main breaker does, but nobody has read it. It is assumed to exist, and no label says that it trips.
    Assumed(NodeIx),
    /// Nothing acts until this current, which overloads some part; then this node acts.
    Above(NodeIx, Current),
    /// Nothing acts at all.
    Never,
}

/// What sets a limit.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct SetBy {
    /// The node that sets it.
    pub node: NodeIx,
    /// The reason at that node.
    pub reason: LimitReason,
    /// Whether the limit is below the node's rating because the load runs for hours.
    pub share: bool,
}

/// The limit at a node and what sets it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Governing {
    /// The limit for three hours or more, on each leg.
    pub continuous: Current,
    /// What sets `continuous`. Of several equal limits, the one nearest the generator among those that trip, or else
    /// the one nearest the receptacle.
    pub continuous_by: SetBy,
    /// The limit for less than three hours, on each leg.
    pub short: Current,
    /// What sets `short`, by the same rule.
    pub short_by: SetBy,
    /// What acts past `short`.
    pub acts: Acts,
}

impl Supply {
    /// Returns the limit at a node.
    #[must_use]
    pub fn limit(&self, at: NodeIx) -> Governing {
        self.limits[at.0]
    }

    /// Computes the limit at a node from everything upstream.
    pub(super) fn governing(&self, at: NodeIx) -> Governing {
        let long = |node: &super::Node| node.rating.scaled_down(node.continuous);
        let (continuous, continuous_by) = self.least(at, long);
        let (short, short_by) = self.least(at, |node| node.rating);
        let acting = |assumed: bool| {
            let of_kind = self.up(at).filter(|(_, node)| node.assumed_breaker() == assumed);
            of_kind.filter_map(|(ix, node)| Some((node.acts_past()?, ix))).min()
        };
        // An early trip lowers the planned current, but not what the parts behind the breaker can stand.
        let stands = self.up(at).map(|(_, node)| node.acts_past().unwrap_or(node.rating)).min();
        let in_time = |acting: &(Current, NodeIx)| Some(acting.0) <= stands;
        let acts = match (acting(false), acting(true)) {
            (Some(sure), _) if in_time(&sure) => Acts::At(sure.1),
            (_, Some(assumed)) if in_time(&assumed) => Acts::Assumed(assumed.1),
            (Some((amps, ix)), _) => Acts::Above(ix, amps),
            (None, _) => Acts::Never,
        };
        Governing { continuous, continuous_by, short, short_by, acts }
    }

    /// Returns the least of a figure from here up to the generator, and the node that sets it.
    fn least(&self, at: NodeIx, figure: impl Fn(&super::Node) -> Current) -> (Current, SetBy) {
        let least = self.up(at).map(|(_, node)| figure(node)).min();
        let least = least.unwrap_or(Current::ZERO);
        let equal = || self.up(at).filter(|(_, node)| figure(node) == least);
        let node = equal()
            .filter(|(_, node)| node.reason.enforced())
            .last()
            .or_else(|| equal().next())
            .map_or(at, |(ix, _)| ix);
        // One leg of a two-leg generator has half its power, so that is the reason to report.
        let half = self.node(node).legs.all().len() > self.node(at).legs.all().len();
        let reason = match self.node(node).reason {
            LimitReason::RatedPower | LimitReason::RatedPowerUnguarded if half => LimitReason::OneLeg,
            reason => reason,
        };
        let share = least < self.node(node).rating;
        (least, SetBy { node, reason, share })
    }

    /// Returns the nominal voltage of a load at this node that uses all of its legs.
    #[must_use]
    pub fn volts_at(&self, at: NodeIx) -> Voltage {
        let legs = i64::try_from(self.node(at).legs.all().len()).unwrap_or(1);
        Voltage::from_millivolts(self.volts.millivolts() * legs)
    }

    /// Returns the ids of the parts from the generator's outlet to this node, each once.
    #[must_use]
    pub fn path(&self, at: NodeIx) -> Vec<Id> {
        let mut path: Vec<Id> = self
            .up(at)
            .filter(|(_, node)| {
                matches!(node.kind, NodeKind::Receptacle { .. } | NodeKind::Cord { .. } | NodeKind::Inlet { .. })
            })
            .map(|(_, node)| node.id.clone())
            .collect();
        path.reverse();
        path.dedup();
        path
    }

    /// Returns the main breaker that everything past this node runs through, with its marking: that of a box or camper
    /// which alone is fed from here. `None` if there is none, or nobody has read it. It stops an overload on this side
    /// of it as well, but no short circuit.
    #[must_use]
    pub fn main_past(&self, at: NodeIx) -> Option<(NodeIx, Current)> {
        let only = |at: NodeIx| {
            let mut fed = self.fed_from(at);
            // Something else may go into a second socket.
            let single = !matches!(self.node(at).kind, NodeKind::Receptacle { sockets, .. } if sockets > 1);
            fed.next().filter(|_| single && fed.next().is_none()).map(|(next, _)| next)
        };
        std::iter::successors(only(at), |at| only(*at)).find_map(|next| match self.node(next).kind {
            NodeKind::Breaker { marked: Some(marked), .. } if !self.node(next).assumed_breaker() => {
                Some((next, marked))
            }
            _ => None,
        })
    }

    /// Returns the marking on a receptacle's own breaker, if it has one and the marking is known. A breaker at the
    /// other end of a cord does not count.
    #[must_use]
    pub fn own_breaker(&self, at: NodeIx) -> Option<Current> {
        self.up(at)
            .skip(1)
            .take_while(|(_, node)| matches!(node.kind, NodeKind::Wiring | NodeKind::Breaker { .. }))
            .find_map(|(_, node)| match node.kind {
                NodeKind::Breaker { marked, .. } => marked,
                _ => None,
            })
    }
}
