//! Where neutral and ground are joined, and what that does to ground-fault protection.
//!
//! A ground-fault circuit interrupter (GFCI) compares what leaves through it with what comes back
//! through it. A fault sends current out through the hot wire, into the ground, and back into
//! neutral where the two are joined. Where that joint lies on the load side of the GFCI, all of it comes
//! back through the sensor: nothing is missing, and nothing trips, while the device's own TEST button works
//! all the same, because that button goes round the sensor. So what counts is not whether a device is
//! there, but whether a joint lies beyond it (from how the device is built: common practice, no source).
//! Of two outlets on one breaker, the GFCI of one may serve both: it is in the breaker, or the one outlet feeds the
//! other, which then has no buttons of its own.

use serde::Serialize;

use crate::plan::{Answer, DistributionBox, Generator, Id, Load, Neutral, Outlet, Plan};
use crate::supply::{NodeIx, NodeKind, Supply};
use crate::tables::shape::Plug;

/// What nobody knows stays open: here the unsafe case is to promise a reading.
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
    /// What an answer makes of it: silence is no answer.
    pub(crate) fn of(answer: Answer<bool>) -> Self {
        match answer {
            Answer::Known(true) => Self::Yes,
            Answer::Known(false) => Self::No,
            Answer::Missing | Answer::Unknown => Self::Unknown,
        }
    }

    /// Either.
    pub(crate) fn or(self, other: Self) -> Self {
        self.max(other)
    }
}

/// Whether ground-fault protection works at a point.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Protection {
    /// It does: of several that do, this one is nearest.
    Works(NodeIx),
    /// There is a device, and it sees no fault: neutral and ground are joined beyond it.
    Blind {
        /// The nearest device.
        device: NodeIx,
        /// Where they are joined.
        joint: NodeIx,
    },
    /// The same, if they are joined there; nobody knows, or nobody knows where a bonding plug is.
    Doubtful {
        /// The nearest device.
        device: NodeIx,
        /// Where they may be joined.
        joint: NodeIx,
    },
    /// There is no device, or none that anybody knows of.
    None,
}

impl Protection {
    /// Whether it may be relied on.
    #[must_use]
    pub const fn works(self) -> bool {
        matches!(self, Self::Works(_))
    }

    /// The joint that blinds it, or may.
    #[must_use]
    pub const fn joint(self) -> Option<NodeIx> {
        match self {
            Self::Blind { joint, .. } | Self::Doubtful { joint, .. } => Some(joint),
            Self::Works(_) | Self::None => None,
        }
    }

    /// The device, working or not.
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
    /// Whether nobody said so: of several it is the one where the plug takes a socket, since it does the most
    /// harm there.
    pub assumed: bool,
    /// Whether it is where it belongs, as far as is known: there is such a plug, no GFCI is ahead of it, and
    /// nothing else joins neutral to ground at the generator.
    pub belongs: bool,
    /// Whether it is there for sure and may stay: whoever empties the receptacle but for what is named there
    /// would pull the only joint out.
    pub stays: bool,
}

/// Joints of neutral and ground of one supply.
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

    /// The receptacle that the plan's bonding plug is in, or may be in.
    #[must_use]
    pub const fn bonding_socket(&self) -> Option<BondingSocket> {
        self.bonding_socket
    }

    /// How many sockets of a receptacle no cord, box or bonding plug is in. None of what is no receptacle.
    #[must_use]
    pub fn beside_gear(&self, at: NodeIx) -> usize {
        let NodeKind::Receptacle { sockets, .. } = self.supply.node(at).kind else {
            return 0;
        };
        let plug = self.bonding_socket.is_some_and(|socket| socket.at == at);
        let gear = self.supply.fed_from(at).count() + usize::from(plug);
        usize::from(sockets).saturating_sub(gear)
    }

    /// Where a plug of which nobody said where it is was taken to be: every receptacle that it would do harm in,
    /// or the one that it takes.
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

    /// Whether ground-fault protection works here.
    ///
    /// A joint beyond a device blinds it for all that hangs behind it, by whatever way the
    /// current comes back; and where a ground wire is broken on the way, the earth may be that way.
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

    /// The devices on the way from a point to the generator that see a fault there, the nearest first.
    pub(crate) fn working(&self, at: NodeIx) -> impl Iterator<Item = NodeIx> {
        let devices = self.supply.up(at).filter(|(_, node)| node.gfci);
        let devices = devices.map(|(device, _)| device);
        devices.filter(|device| self.joint_beyond(*device).is_none())
    }

    /// The nearest part on the way to a point without a known device that may be one, and would be blind, and the
    /// joint beyond it. Whoever finds its buttons then would rely on it.
    #[must_use]
    pub fn would_be_blind(&self, at: NodeIx) -> Option<(NodeIx, NodeIx)> {
        let mut devices = self.supply.up(at).filter(|(_, node)| node.may_have_gfci);
        devices.find_map(|(device, _)| Some((device, self.joint_beyond(device)?.0)))
    }

    /// The surest joint beyond a device, of equals the first. A joint beyond another outlet on its breaker may be beyond
    /// this device.
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

    /// Whether neutral and ground are joined beyond a device, or may be, elsewhere than in this gear and beyond it.
    pub(crate) fn may_be_joined_but_in(&self, device: NodeIx, gear: NodeIx) -> bool {
        let joints = self.joints.iter().map(|(joint, _)| *joint);
        let mut beyond = joints.filter(|joint| self.is_on_path(device, *joint));
        beyond.any(|joint| !self.is_on_path(gear, joint))
    }

    /// The joints that are left when no cord or box is plugged in that must not be used. What may be used has a
    /// ground all the way, so that each of them is seen at every receptacle.
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

    /// Whether they are joined beyond a device, or short of it.
    #[must_use]
    pub fn joined_beyond(&self, device: NodeIx, beyond: bool) -> Sure {
        self.joined_where(|joint| self.is_on_path(device, joint) == beyond)
    }

    fn joined_where(&self, counts: impl Fn(NodeIx) -> bool) -> Sure {
        self.joints.iter().filter(|(joint, _)| counts(*joint)).fold(Sure::No, |any, (_, sure)| any.or(*sure))
    }

    /// Whether a bonding plug is only assumed to be there.
    fn is_assumed(&self, joint: NodeIx) -> bool {
        self.bonding_sockets.len() > 1 && self.bonding_sockets.contains(&joint)
    }

    /// Whether a joint may sit behind this device or not, and nobody knows.
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

/// Where neutral and ground are joined, or may be: in the set, by a plug in one of its receptacles, and
/// in boxes that hang on it.
fn joints(plan: &Plan, supply: &Supply, bonding_sockets: &[NodeIx]) -> Vec<(NodeIx, Sure)> {
    let boxes = supply
        .points()
        .filter(|(_, node)| matches!(node.kind, NodeKind::Inlet { .. }))
        .filter_map(|(ix, node)| Some((ix, Sure::of(plan.holder(&node.id)?.joins()))));
    let plug = bonding_plug(&plan.generator);
    // Of several places each is as good as sure: nobody can say at which of them it is not.
    let plugs = bonding_sockets.iter().map(|at| (*at, plug));
    // One that fits no outlet is in the set all the same.
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

/// Silence about a plug means that there is none: whoever put one in knows of it.
fn bonding_plug(set: &Generator) -> Sure {
    match set.bonding_plug {
        Answer::Missing => Sure::No,
        answer => Sure::of(answer),
    }
}

/// How often the set's own end joins neutral and ground: by its maker and by a plug.
pub(crate) fn bonds_at_set(plan: &Plan) -> usize {
    // Each of several sets in parallel has its own.
    let sets = usize::try_from(plan.generator.sets()).unwrap_or(1);
    sets * usize::from(plan.generator.neutral == Answer::Known(Neutral::Bonded))
        + usize::from(plan.generator.bonding_plug == Answer::Known(true))
}

/// The boxes that join them, or are taken to: one of which nobody knows, and that is not known to be factory made and
/// listed.
pub(crate) fn bonded_boxes(plan: &Plan) -> Vec<Id> {
    of_boxes(plan, |it| match it.joins() {
        Answer::Known(joins) => joins,
        Answer::Missing | Answer::Unknown => it.is_listed() != Answer::Known(true),
    })
}

/// The listed boxes that may join them, for all that is known.
pub(crate) fn doubtful_boxes(plan: &Plan) -> Vec<Id> {
    of_boxes(plan, |it| !it.joins().is_known() && it.is_listed() == Answer::Known(true))
}

/// The boxes in use of which this is so.
fn of_boxes(plan: &Plan, is_so: impl Fn(&DistributionBox) -> bool) -> Vec<Id> {
    let boxes = plan.boxes.iter();
    let boxes = boxes.filter(|it| it.from.is_some() && is_so(it));
    boxes.map(|it| it.id.clone()).collect()
}

/// Where a bonding plug is: where the plan says. Where it says nothing, in any household outlet of the set, full
/// or not, for what is plugged in by turns leaves a socket, and a plan proves nothing of a plug that it does not
/// place. First where it does the most harm: behind a GFCI with other things, behind a GFCI, the same of what may be
/// one, else where the most sockets are left, the last of equals.
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

/// Whether a GFCI is anywhere ahead of it. Another outlet on its breaker counts as ahead of it: its GFCI may serve both.
/// Where nobody looked for the buttons there may be one, which a joint here would blind as well.
fn gfci_ahead(supply: &Supply, at: NodeIx) -> Sure {
    let devices = supply.points().filter(|(device, node)| {
        (node.gfci || node.may_have_gfci) && (is_on_path(supply, *device, at) || on_one_breaker(supply, *device, at))
    });
    let sure = devices.map(|(_, node)| if node.gfci { Sure::Yes } else { Sure::Unknown });
    sure.max().unwrap_or(Sure::No)
}

/// Whether a point is behind another outlet of the breaker that this outlet is on: a device in the one may serve the other
/// too, which may be fed by it, buttons or not.
fn on_one_breaker(supply: &Supply, outlet: NodeIx, of: NodeIx) -> bool {
    breaker_of(supply, outlet).is_some_and(|here| {
        let mut way = supply.up(of).filter(|(at, _)| *at != outlet);
        way.any(|(at, _)| breaker_of(supply, at) == Some(here))
    })
}

/// The breaker of an outlet of the generator or a box.
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
