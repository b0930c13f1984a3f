//! Where neutral and ground are joined, and what that does to ground-fault protection.
//!
//! A ground-fault circuit interrupter (GFCI) compares the current that leaves through it with the current that returns
//! through it. A fault sends current out through the hot wire, into the ground, and back into neutral where the two are
//! joined. If that joint is on the load side of the GFCI, all of the current comes back through the sensor: nothing is
//! missing, and nothing trips. The device's own TEST button still works, because it bypasses the sensor. So what counts
//! is not whether there is a device, but whether a joint lies beyond it (from how the device is built: common practice,
//! no source).
//!
//! Of two outlets on one breaker, the GFCI of one may serve both: it is in the breaker, or the one outlet feeds the
//! other, which then has no buttons of its own.

use serde::Serialize;

use crate::plan::{Answer, DistributionBox, Generator, Id, Load, Neutral, Outlet, Plan};
use crate::supply::{NodeIx, NodeKind, Supply};
use crate::tables::shape::Plug;

/// A three-valued answer. Unknown stays unknown, because taking it for yes or no would promise a tester reading.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum Sure {
    /// It is not so.
    No,
    /// Nobody knows.
    Unknown,
    /// It is so.
    Yes,
}

impl Sure {
    /// Converts an answer; silence counts as unknown.
    pub(crate) fn of(answer: Answer<bool>) -> Self {
        match answer {
            Answer::Known(true) => Self::Yes,
            Answer::Known(false) => Self::No,
            Answer::Missing | Answer::Unknown => Self::Unknown,
        }
    }

    /// Returns the surer of the two.
    pub(crate) fn or(self, other: Self) -> Self {
        self.max(other)
    }
}

/// Whether ground-fault protection works at a node.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Protection {
    /// It works, through this device: the nearest one that does.
    Works(NodeIx),
    /// There is a device, but it sees no fault, because neutral and ground are joined beyond it.
    Blind {
        /// The nearest device.
        device: NodeIx,
        /// Where neutral and ground are joined.
        joint: NodeIx,
    },
    /// There is a device, and it is blind if neutral and ground are joined there. Nobody knows that, or where a bonding
    /// plug is.
    Doubtful {
        /// The nearest device.
        device: NodeIx,
        /// Where they may be joined.
        joint: NodeIx,
    },
    /// There is no device that anybody knows of.
    None,
}

impl Protection {
    /// Whether it may be relied on.
    #[must_use]
    pub const fn works(self) -> bool {
        matches!(self, Self::Works(_))
    }

    /// Returns the joint that blinds it, or may.
    #[must_use]
    pub const fn joint(self) -> Option<NodeIx> {
        match self {
            Self::Blind { joint, .. } | Self::Doubtful { joint, .. } => Some(joint),
            Self::Works(_) | Self::None => None,
        }
    }

    /// Returns the device, working or not.
    #[must_use]
    pub const fn device(self) -> Option<NodeIx> {
        match self {
            Self::Works(device) | Self::Blind { device, .. } | Self::Doubtful { device, .. } => Some(device),
            Self::None => None,
        }
    }
}

/// The receptacle that a bonding plug is in, or may be in.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct BondingSocket {
    /// The receptacle.
    pub at: NodeIx,
    /// Whether this is a guess. Of several candidates it is the one where the plug would do the most harm; the plug
    /// takes a socket there.
    pub assumed: bool,
    /// Whether the plug belongs there as far as is known: there is such a plug, no GFCI is ahead of it, and nothing
    /// else at the generator joins neutral to ground.
    pub belongs: bool,
    /// Whether it is surely there and may stay: it is the only joint at the generator, and must not be pulled out with
    /// the unnamed parts.
    pub stays: bool,
}

/// The joints of neutral and ground in one supply tree.
#[derive(Clone, Debug)]
pub struct Grounding<'a> {
    supply: &'a Supply,
    /// Where neutral and ground are joined, or may be.
    joints: Vec<(NodeIx, Sure)>,
    /// The receptacles that a bonding plug may be in, the most harmful place first.
    bonding_sockets: Vec<NodeIx>,
    bonding_socket: Option<BondingSocket>,
}

impl<'a> Grounding<'a> {
    pub(crate) fn new(plan: &Plan, supply: &'a Supply) -> Self {
        let bonding_sockets = bonding_sockets(plan, supply);
        let set = &plan.generator;
        let assumed = bonding_sockets.len() > 1;
        let bonding_socket = bonding_sockets.first().map(|at| BondingSocket {
            at: *at,
            assumed,
            stays: !assumed && bonding_plug(set) == Sure::Yes && joint_in_set(set) == Sure::No,
            belongs: bonding_plug(set) == Sure::Yes
                && joint_in_set(set) == Sure::No
                && gfci_ahead(supply, *at) == Sure::No,
        });
        Self { supply, joints: joints(plan, supply, &bonding_sockets), bonding_sockets, bonding_socket }
    }

    /// Returns the receptacle that the plan's bonding plug is in, or may be in.
    #[must_use]
    pub const fn bonding_socket(&self) -> Option<BondingSocket> {
        self.bonding_socket
    }

    /// Returns how many sockets of a receptacle hold no cord, box or bonding plug; 0 for other nodes.
    #[must_use]
    pub fn beside_gear(&self, at: NodeIx) -> usize {
        let NodeKind::Receptacle { sockets, .. } = self.supply.node(at).kind else {
            return 0;
        };
        let plug = self.bonding_socket.is_some_and(|socket| socket.at == at);
        let gear = self.supply.fed_from(at).count() + usize::from(plug);
        usize::from(sockets).saturating_sub(gear)
    }

    /// Returns where a bonding plug of unknown place is assumed to be: every receptacle where it would do harm, or else
    /// the one where it takes a socket.
    pub(crate) fn assumed_sockets(&self) -> Vec<NodeIx> {
        let Some(first) = self.bonding_socket.filter(|socket| socket.assumed) else {
            return Vec::new();
        };
        let all = self.bonding_sockets.iter().copied();
        let blinds = |at: &NodeIx| gfci_ahead(self.supply, *at) > Sure::No;
        let mut harmed: Vec<NodeIx> = all.filter(blinds).collect();
        harmed.sort_unstable();
        if harmed.is_empty() { vec![first.at] } else { harmed }
    }

    /// Returns the ground-fault protection here.
    ///
    /// A joint beyond a device blinds it for everything behind it, whatever path the current takes back. If a ground
    /// wire is broken on the way, that path may be the earth.
    #[must_use]
    pub fn protection(&self, at: NodeIx) -> Protection {
        if let Some(device) = self.working(at).next() {
            return Protection::Works(device);
        }
        let nearest = self.supply.up(at).find(|(_, node)| node.gfci);
        match nearest.and_then(|(device, _)| Some((device, self.joint_beyond(device)?))) {
            Some((device, (joint, Sure::Yes))) if !self.is_assumed(joint) => Protection::Blind { device, joint },
            Some((device, (joint, _))) => Protection::Doubtful { device, joint },
            None => Protection::None,
        }
    }

    /// Iterates over the devices between a node and the generator that see a fault at the node, nearest first.
    pub(crate) fn working(&self, at: NodeIx) -> impl Iterator<Item = NodeIx> {
        let devices = self.supply.up(at).filter(|(_, node)| node.gfci);
        let devices = devices.map(|(device, _)| device);
        devices.filter(|device| self.joint_beyond(*device).is_none())
    }

    /// Returns the nearest part upstream that may have a GFCI and would be blind, with the joint beyond it. Whoever
    /// found its buttons would rely on it.
    #[must_use]
    pub fn would_be_blind(&self, at: NodeIx) -> Option<(NodeIx, NodeIx)> {
        let mut devices = self.supply.up(at).filter(|(_, node)| node.may_have_gfci);
        devices.find_map(|(device, _)| Some((device, self.joint_beyond(device)?.0)))
    }

    /// Returns the surest joint beyond a device, the first if equal. A joint beyond another outlet on its breaker may
    /// be beyond this device.
    fn joint_beyond(&self, device: NodeIx) -> Option<(NodeIx, Sure)> {
        let beyond = |(joint, sure): &(NodeIx, Sure)| {
            if self.is_on_path(device, *joint) {
                Some((*joint, *sure))
            } else {
                on_one_breaker(self.supply, device, *joint).then_some((*joint, Sure::Unknown))
            }
        };
        let joints = self.joints.iter().filter_map(beyond);
        joints.rev().max_by_key(|(_, sure)| *sure)
    }

    /// Whether neutral and ground are or may be joined beyond a device, other than in this gear and beyond it.
    pub(crate) fn may_be_joined_but_in(&self, device: NodeIx, gear: NodeIx) -> bool {
        let joints = self.joints.iter().map(|(joint, _)| *joint);
        let mut beyond = joints.filter(|joint| self.is_on_path(device, *joint));
        beyond.any(|joint| !self.is_on_path(gear, joint))
    }

    /// Returns the joints left once no refused cord or box is plugged in. Gear that may be used has a ground all the
    /// way, so each of these joints shows at every receptacle.
    pub(super) fn in_use(&self, refused: impl Fn(NodeIx) -> bool) -> Self {
        let mut left = self.clone();
        left.joints.retain(|(at, _)| !(self.supply.node(*at).kind.is_gear() && refused(*at)));
        left
    }

    /// Whether neutral and ground are joined, at the generator or beyond.
    #[must_use]
    pub fn joined(&self) -> Sure {
        self.joined_where(|_| true)
    }

    /// Whether they are joined beyond a device (`beyond`), or elsewhere.
    #[must_use]
    pub fn joined_beyond(&self, device: NodeIx, beyond: bool) -> Sure {
        self.joined_where(|joint| self.is_on_path(device, joint) == beyond)
    }

    fn joined_where(&self, counts: impl Fn(NodeIx) -> bool) -> Sure {
        self.joints.iter().filter(|(joint, _)| counts(*joint)).fold(Sure::No, |any, (_, sure)| any.or(*sure))
    }

    /// Whether this joint is one of several assumed places of a bonding plug.
    fn is_assumed(&self, joint: NodeIx) -> bool {
        self.bonding_sockets.len() > 1 && self.bonding_sockets.contains(&joint)
    }

    /// Whether a joint may or may not be beyond this device, and nobody knows.
    #[must_use]
    pub fn may_hold_joint(&self, device: NodeIx) -> bool {
        let mut sockets = self.bonding_sockets.iter();
        let mut joints = self.joints.iter();
        sockets.any(|at| self.is_assumed(*at) && self.is_on_path(device, *at))
            || joints.any(|(joint, _)| !self.is_on_path(device, *joint) && on_one_breaker(self.supply, device, *joint))
    }

    fn is_on_path(&self, part: NodeIx, of: NodeIx) -> bool {
        is_on_path(self.supply, part, of)
    }
}

/// Returns where neutral and ground are joined, or may be: in the generator, by a plug in one of its receptacles, and
/// in boxes connected to it.
fn joints(plan: &Plan, supply: &Supply, bonding_sockets: &[NodeIx]) -> Vec<(NodeIx, Sure)> {
    let boxes = supply
        .points()
        .filter(|(_, node)| matches!(node.kind, NodeKind::Inlet { .. }))
        .filter_map(|(ix, node)| Some((ix, Sure::of(plan.holder(&node.id)?.joins()))));
    let plug = bonding_plug(&plan.generator);
    // Each of several places counts as much as a single one, because nobody can rule it out.
    let plugs = bonding_sockets.iter().map(|at| (*at, plug));
    // A plug that fits no outlet counts at the generator all the same.
    let elsewhere = bonding_sockets.is_empty().then_some((NodeIx(0), plug));
    std::iter::once((NodeIx(0), joint_in_set(&plan.generator)))
        .chain(elsewhere)
        .chain(plugs)
        .chain(boxes)
        .filter(|(_, joint)| *joint != Sure::No)
        .collect()
}

fn joint_in_set(set: &Generator) -> Sure {
    match set.neutral {
        Answer::Known(Neutral::Bonded) => Sure::Yes,
        Answer::Known(Neutral::Floating) => Sure::No,
        Answer::Missing | Answer::Unknown => Sure::Unknown,
    }
}

/// Silence about a bonding plug means that there is none: whoever put one in knows of it.
fn bonding_plug(set: &Generator) -> Sure {
    match set.bonding_plug {
        Answer::Missing => Sure::No,
        answer => Sure::of(answer),
    }
}

/// Returns how many bonds the generator's end has: its maker's and a bonding plug.
pub(crate) fn bonds_at_set(plan: &Plan) -> usize {
    // Each of several parallel sets has its own.
    let sets = usize::try_from(plan.generator.sets()).unwrap_or(1);
    sets * usize::from(plan.generator.neutral == Answer::Known(Neutral::Bonded))
        + usize::from(plan.generator.bonding_plug == Answer::Known(true))
}

/// Returns the boxes with a bond, including those whose bond is unknown and that are not known to be factory-made and
/// listed.
pub(crate) fn bonded_boxes(plan: &Plan) -> Vec<Id> {
    of_boxes(plan, |it| match it.joins() {
        Answer::Known(joins) => joins,
        Answer::Missing | Answer::Unknown => it.is_listed() != Answer::Known(true),
    })
}

/// Returns the listed boxes whose bond is unknown.
pub(crate) fn doubtful_boxes(plan: &Plan) -> Vec<Id> {
    of_boxes(plan, |it| !it.joins().is_known() && it.is_listed() == Answer::Known(true))
}

/// Returns the boxes in use for which this holds.
fn of_boxes(plan: &Plan, is_so: impl Fn(&DistributionBox) -> bool) -> Vec<Id> {
    let boxes = plan.boxes.iter();
    let boxes = boxes.filter(|it| it.from.is_some() && is_so(it));
    boxes.map(|it| it.id.clone()).collect()
}

/// Returns where the bonding plug is, if the plan says. Otherwise, any household outlet of the generator, full or not:
/// loads plugged in by turns leave a socket, and a plan proves nothing about a plug that it does not place.
///
/// The most harmful places come first: behind a GFCI with other things, behind a GFCI, then the same for outlets that
/// may have one, then where most sockets are left; the last outlet if equal.
fn bonding_sockets(plan: &Plan, supply: &Supply) -> Vec<NodeIx> {
    let set = &plan.generator;
    if bonding_plug(set) == Sure::No {
        return Vec::new();
    }
    let said = set.bonding_plug_in.as_ref();
    if let Some(at) = said.and_then(|id| supply.receptacle(id)) {
        return vec![at];
    }
    let harm = |outlet: &Outlet, at: NodeIx| {
        let on = |load: &&Load| load.on.as_ref() == Some(&outlet.id);
        let loads = plan.loads.iter().filter(on).map(|load| usize::from(load.count));
        let taken = supply.fed_from(at).count() + loads.sum::<usize>();
        let free = usize::from(outlet.plugs().1).saturating_sub(taken);
        let device = gfci_ahead(supply, at);
        let beside = if taken > 0 { device } else { Sure::No };
        (beside, device, free)
    };
    let mut sockets: Vec<_> = set
        .outlets
        .iter()
        .rev()
        .filter(|outlet| outlet.shape.takes(Plug::BONDING))
        .filter_map(|outlet| Some((outlet, supply.receptacle(&outlet.id)?)))
        .collect();
    sockets.sort_by_cached_key(|(outlet, at)| std::cmp::Reverse(harm(outlet, *at)));
    sockets.into_iter().map(|(_, at)| at).collect()
}

/// Whether a GFCI is anywhere ahead of this receptacle. Another outlet on its breaker counts, because its GFCI may
/// serve both. If nobody looked for the buttons there may be one, and a joint here would blind it too.
fn gfci_ahead(supply: &Supply, at: NodeIx) -> Sure {
    let devices = supply.points().filter(|(device, node)| {
        (node.gfci || node.may_have_gfci) && (is_on_path(supply, *device, at) || on_one_breaker(supply, *device, at))
    });
    let sure = devices.map(|(_, node)| if node.gfci { Sure::Yes } else { Sure::Unknown });
    sure.max().unwrap_or(Sure::No)
}

/// Whether a node is behind another outlet on this outlet's breaker. A device in one may serve the other too, which it
/// may feed, buttons or not.
fn on_one_breaker(supply: &Supply, outlet: NodeIx, of: NodeIx) -> bool {
    breaker_of(supply, outlet).is_some_and(|here| {
        let mut way = supply.up(of).filter(|(at, _)| *at != outlet);
        way.any(|(at, _)| breaker_of(supply, at) == Some(here))
    })
}

/// Returns the breaker of an outlet of the generator or of a box.
fn breaker_of(supply: &Supply, outlet: NodeIx) -> Option<NodeIx> {
    let node = supply.node(outlet);
    let mut up = supply.up(outlet).skip(1);
    let above = up.find(|(_, above)| !matches!(above.kind, NodeKind::Wiring))?;
    let breaker = matches!(above.1.kind, NodeKind::Breaker { .. });
    (breaker && matches!(node.kind, NodeKind::Receptacle { .. })).then_some(above.0)
}

fn is_on_path(supply: &Supply, part: NodeIx, of: NodeIx) -> bool {
    supply.up(of).any(|(ix, _)| ix == part)
}
