//! The limit at a point of the tree: the least of everything between it and the engine.

use super::{LimitReason, NodeIx, NodeKind, Supply};
use crate::plan::Id;
use crate::quantity::{Current, Voltage};

/// The limit at a node and what sets it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Governing {
    /// For three hours or more, on each leg.
    pub continuous: Current,
    /// For less, on each leg.
    pub short: Current,
    /// The node that sets `short`: of several equal ones the one nearest the generator that
    /// enforces it, else the one nearest the receptacle.
    pub set_by: NodeIx,
    /// Why that node.
    pub reason: LimitReason,
}

impl Supply {
    /// The limit at a node.
    #[must_use]
    pub fn limit(&self, at: NodeIx) -> Governing {
        let mut continuous: Option<Current> = None;
        let mut short: Option<Current> = None;
        for (_, node) in self.up(at) {
            let long = node.rating.scaled_down(node.continuous);
            continuous = Some(continuous.map_or(long, |least| least.min(long)));
            short = Some(short.map_or(node.rating, |least| least.min(node.rating)));
        }
        let (continuous, short) = (
            continuous.unwrap_or(Current::ZERO),
            short.unwrap_or(Current::ZERO),
        );
        let equal = || self.up(at).filter(|(_, node)| node.rating == short);
        let set_by = equal()
            .filter(|(_, node)| node.reason.enforced())
            .last()
            .or_else(|| equal().next())
            .map_or(at, |(ix, _)| ix);
        // What a two-leg set gives on one leg is half of it, and that is what to tell.
        let half = self.node(set_by).legs.all().len() > self.node(at).legs.all().len();
        let reason = match self.node(set_by).reason {
            LimitReason::RatedPower if half => LimitReason::OneLeg,
            LimitReason::RatedPowerUnguarded if half => LimitReason::OneLegUnguarded,
            reason => reason,
        };
        Governing {
            continuous,
            short,
            set_by,
            reason,
        }
    }

    /// Nominal voltage of a single load at this node that uses all of its legs.
    #[must_use]
    pub fn volts_at(&self, at: NodeIx) -> Voltage {
        let legs = i64::try_from(self.node(at).legs.all().len()).unwrap_or(1);
        Voltage::from_millivolts(self.volts.millivolts() * legs)
    }

    /// Whether anything from here back to the generator gives ground-fault protection.
    #[must_use]
    pub fn gfci(&self, at: NodeIx) -> bool {
        self.up(at).any(|(_, node)| node.gfci)
    }

    /// Ids of the parts from the generator's outlet to this node, each once.
    #[must_use]
    pub fn path(&self, at: NodeIx) -> Vec<Id> {
        let mut path: Vec<Id> = self
            .up(at)
            .filter(|(_, node)| {
                matches!(
                    node.kind,
                    NodeKind::Receptacle { .. } | NodeKind::Cord { .. } | NodeKind::Inlet { .. }
                )
            })
            .map(|(_, node)| node.id.clone())
            .collect();
        path.reverse();
        path.dedup();
        path
    }

    /// The marking on a receptacle's own breaker, if it has one and it is known: not that of a
    /// breaker at the other end of a cord.
    #[must_use]
    pub fn own_breaker(&self, at: NodeIx) -> Option<Current> {
        self.up(at)
            .skip(1)
            .take_while(|(_, node)| {
                matches!(node.kind, NodeKind::Wiring | NodeKind::Breaker { .. })
            })
            .find_map(|(_, node)| match node.kind {
                NodeKind::Breaker { marked, .. } => marked,
                _ => None,
            })
    }
}
