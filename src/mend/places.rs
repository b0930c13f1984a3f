//! What is plugged in where, and how many sockets that leaves.

use crate::plan::{Id, Load, Plan};
use crate::supply::{NodeIx, NodeKind, Supply};
use crate::tables::shape::{Plug, Receptacle};
use crate::verdict::{Refusal, Verdicts};

/// The receptacles of a cord or box.
pub(super) fn ends_of(plan: &Plan, part: &Id) -> Vec<Id> {
    let cords = plan.cords.iter().filter(|it| it.id == *part);
    let boxes = plan.boxes.iter().filter(|it| it.id == *part);
    cords
        .flat_map(|cord| (0..cord.ends.len()).map(|end| cord.end_id(end)))
        .chain(boxes.flat_map(|it| it.outlets.iter().map(|outlet| outlet.id.clone())))
        .collect()
}

/// How many plugs of loads the plan has at a receptacle.
pub(super) fn plugs_at(plan: &Plan, at: &Id) -> usize {
    let loads = plan.loads.iter();
    loads
        .filter(|load| load.on.as_ref().or(load.now.as_ref()) == Some(at))
        .map(|load| usize::from(load.count))
        .sum()
}

/// How many sockets loads take up at once, at the most, if each is plugged in only in its hours; all of them
/// where one has none.
pub(super) fn at_once(loads: &[&Load]) -> usize {
    let count = |load: &&Load| usize::from(load.count);
    if loads.iter().any(|load| load.hours.is_empty()) {
        return loads.iter().map(count).sum();
    }
    let on = |minute: u16| {
        let on = |load: &&&Load| load.hours.iter().any(|span| span.contains(minute));
        loads.iter().filter(on).map(count).sum()
    };
    // More is on than a minute before only where some hours begin.
    let begins = loads.iter().flat_map(|load| &load.hours);
    begins.map(|span| on(span.from)).max().unwrap_or(0)
}

/// The sockets of a plan as it stands.
pub(super) struct Sockets<'a> {
    plan: &'a Plan,
    supply: Supply,
    /// Where the bonding plug is, or may be.
    bonded: Option<NodeIx>,
    /// For each node, why nothing at all may be used there, if so.
    refused: Vec<Option<Refusal>>,
}

impl<'a> Sockets<'a> {
    pub fn of(plan: &'a Plan) -> Self {
        let supply = Supply::build(plan);
        let verdicts = Verdicts::of(plan, &supply);
        let bonded = verdicts.grounding.bonding_socket();
        let refused = |at: usize| verdicts.refused(NodeIx(at));
        Self {
            plan,
            bonded: bonded.map(|socket| socket.at),
            refused: (0..supply.nodes.len()).map(refused).collect(),
            supply,
        }
    }

    fn find(&self, at: &Id) -> Option<(NodeIx, Receptacle, usize)> {
        let mut all = self.supply.receptacles();
        let (ix, _, shape, sockets) = all.find(|(_, node, ..)| node.id == *at)?;
        Some((ix, shape, usize::from(sockets)))
    }

    /// Whether the receptacle is connected to the generator and takes this plug.
    pub fn takes(&self, at: &Id, plug: Plug) -> bool {
        self.find(at).is_some_and(|(_, shape, _)| shape.takes(plug))
    }

    /// Whether something may be plugged in there, if only gear with protection of its own.
    pub fn usable(&self, at: &Id) -> bool {
        self.find(at)
            .is_some_and(|(ix, ..)| self.refused[ix.0].is_none())
    }

    /// Why nothing at all may be plugged in there: the rule that tells of it, and the part that is wrong.
    pub fn refused(&self, at: &Id) -> Option<(&'static str, &Id)> {
        let refusal = self.refused[self.find(at)?.0.0]?;
        Some((refusal.cause.code(), &self.supply.node(refusal.at).id))
    }

    /// The sockets that no cord, box or bonding plug is in. None where the generator does not feed it.
    pub fn beside_gear(&self, at: &Id) -> usize {
        self.find(at).map_or(0, |(ix, _, sockets)| {
            let gear = self.supply.fed_from(ix).count() + usize::from(self.bonded == Some(ix));
            sockets.saturating_sub(gear)
        })
    }

    /// The sockets that nothing at all is in.
    pub fn free(&self, at: &Id) -> usize {
        self.beside_gear(at).saturating_sub(plugs_at(self.plan, at))
    }

    /// Whether this receptacle hangs on the part.
    pub fn hangs_on(&self, at: &Id, part: &Id) -> bool {
        self.find(at).is_some_and(|(ix, ..)| {
            self.supply.up(ix).any(|(_, node)| {
                node.id == *part
                    && matches!(node.kind, NodeKind::Cord { .. } | NodeKind::Inlet { .. })
            })
        })
    }
}
