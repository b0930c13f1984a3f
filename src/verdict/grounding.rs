//! Where neutral and ground are joined, and what that does to ground-fault protection.
//!
//! A ground-fault circuit interrupter (GFCI) compares what leaves through it with what comes back
//! through it. A fault sends current out through the hot wire, into the ground, and back into
//! neutral where the two are joined. Where that joint lies on the load side of the GFCI, all of it comes
//! back through the sensor: nothing is missing, and nothing trips, while the device's own TEST button works
//! all the same, because that button goes round the sensor. So what counts is not whether a device is
//! there, but whether a joint lies beyond it (from how the device is built: common practice, no source).

use serde::Serialize;

use crate::plan::{Answer, Cord, Generator, Id, Neutral, Outlet, Plan};
use crate::supply::{NodeIx, NodeKind, Supply};
use crate::tables::shape::{Configuration, Plug};

/// What a bonding plug is made with (common practice, no source).
pub(crate) const BONDING_PLUG: Plug = Plug(Configuration::N5_15);

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

    /// Both.
    pub(crate) fn and(self, other: Self) -> Self {
        self.min(other)
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

    /// The device, working or not.
    #[must_use]
    pub const fn device(self) -> Option<NodeIx> {
        match self {
            Self::Works(device) | Self::Blind { device, .. } | Self::Doubtful { device, .. } => {
                Some(device)
            }
            Self::None => None,
        }
    }
}

/// The receptacle that a bonding plug is in, or may be in.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct BondingSocket {
    /// The receptacle.
    pub at: NodeIx,
    /// Whether nobody said so: of several it is the one where the plug does the most harm.
    pub assumed: bool,
    /// Whether it is where it belongs, as far as is known: there is such a plug, no GFCI is ahead of it, and
    /// nothing else joins neutral to ground at the generator.
    pub belongs: bool,
}

/// Joints of neutral and ground, and grounds that go through, of one supply.
#[derive(Clone, Debug)]
pub struct Grounding<'a> {
    supply: &'a Supply,
    /// For each node of a cord: whether its ground goes through.
    grounds: Vec<(NodeIx, Sure)>,
    /// Where neutral and ground are joined, or may be.
    joints: Vec<(NodeIx, Sure)>,
    bonding_socket: Option<BondingSocket>,
}

impl<'a> Grounding<'a> {
    pub(crate) fn new(plan: &Plan, supply: &'a Supply) -> Self {
        let bonding_socket = bonding_socket(plan, supply);
        Self {
            supply,
            grounds: grounds(plan, supply),
            joints: joints(plan, supply, bonding_socket),
            bonding_socket,
        }
    }

    /// The receptacle that the plan's bonding plug is in, or may be in.
    #[must_use]
    pub const fn bonding_socket(&self) -> Option<BondingSocket> {
        self.bonding_socket
    }

    /// Whether ground-fault protection works here.
    ///
    /// A joint beyond a device blinds it for all that hangs behind it, by whatever way the
    /// current comes back; and where a ground wire is broken on the way, the earth may be that way.
    #[must_use]
    pub fn protection(&self, at: NodeIx) -> Protection {
        let mut nearest = None;
        for (device, _) in self.supply.up(at).filter(|(_, node)| node.gfci) {
            let beyond = self
                .joints
                .iter()
                .filter(|(joint, _)| self.is_on_path(device, *joint));
            // The surest of them; of equals the first.
            let beyond = beyond.rev_max();
            match beyond {
                None => return Protection::Works(device),
                Some((joint, Sure::Yes)) if !self.is_assumed(joint) => {
                    nearest.get_or_insert(Protection::Blind { device, joint });
                }
                Some((joint, _)) => {
                    nearest.get_or_insert(Protection::Doubtful { device, joint });
                }
            }
        }
        nearest.unwrap_or(Protection::None)
    }

    /// Whether the ground goes all the way between two points: through every cord that is on the
    /// path of one of them and not of the other.
    #[must_use]
    pub fn ground_to(&self, one: NodeIx, other: NodeIx) -> Sure {
        self.grounds
            .iter()
            .filter(|(cord, _)| self.is_on_path(*cord, one) != self.is_on_path(*cord, other))
            .fold(Sure::Yes, |all, (_, ground)| all.and(*ground))
    }

    /// Whether neutral is joined to this receptacle's ground, anywhere.
    #[must_use]
    pub fn joined(&self, at: NodeIx) -> Sure {
        self.joined_where(at, |_| true)
    }

    /// Whether it is joined beyond a device, or short of it.
    #[must_use]
    pub fn joined_beyond(&self, at: NodeIx, device: NodeIx, beyond: bool) -> Sure {
        self.joined_where(at, |joint| self.is_on_path(device, joint) == beyond)
    }

    /// Whether neutral and ground are joined anywhere at all, at the generator or beyond.
    #[must_use]
    pub fn joined_anywhere(&self) -> Sure {
        let joints = self.joints.iter();
        joints.fold(Sure::No, |any, (_, sure)| any.or(*sure))
    }

    fn joined_where(&self, at: NodeIx, counts: impl Fn(NodeIx) -> bool) -> Sure {
        self.joints
            .iter()
            .filter(|(joint, _)| counts(*joint))
            .fold(Sure::No, |any, (joint, sure)| {
                any.or(sure.and(self.ground_to(at, *joint)))
            })
    }

    /// Whether a bonding plug is only assumed to be there.
    fn is_assumed(&self, joint: NodeIx) -> bool {
        let socket = self.bonding_socket;
        socket.is_some_and(|socket| socket.assumed && socket.at == joint)
    }

    /// Whether a bonding plug may sit behind this device or not, and nobody knows.
    #[must_use]
    pub fn may_hold_plug(&self, device: NodeIx) -> bool {
        let assumed = self.bonding_socket.is_some_and(|socket| socket.assumed);
        let at_set = |(_, node): (NodeIx, &crate::supply::Node)| {
            !matches!(node.kind, NodeKind::Cord { .. } | NodeKind::Inlet { .. })
        };
        assumed && self.supply.up(device).all(at_set)
    }

    fn is_on_path(&self, part: NodeIx, of: NodeIx) -> bool {
        self.supply.up(of).any(|(ix, _)| ix == part)
    }
}

/// The surest joint, the first of equals.
trait Surest {
    fn rev_max(self) -> Option<(NodeIx, Sure)>;
}

impl<'j, I: DoubleEndedIterator<Item = &'j (NodeIx, Sure)>> Surest for I {
    fn rev_max(self) -> Option<(NodeIx, Sure)> {
        self.rev().max_by_key(|(_, sure)| *sure).copied()
    }
}

/// Whether each cord's ground goes through.
fn grounds(plan: &Plan, supply: &Supply) -> Vec<(NodeIx, Sure)> {
    let cord_of = |id: &Id| plan.cords.iter().find(|cord| cord.id == *id);
    nodes(supply)
        .filter(|(_, node)| matches!(node.kind, NodeKind::Cord { .. }))
        .filter_map(|(ix, node)| Some((ix, ground_through(cord_of(&node.id)?))))
        .collect()
}

fn ground_through(cord: &Cord) -> Sure {
    match cord.conductors {
        _ if !cord.plug.0.grounded() => Sure::No,
        Answer::Known(count) if count < cord.conductors_needed() => Sure::No,
        Answer::Known(_) => Sure::Yes,
        Answer::Missing | Answer::Unknown => Sure::Unknown,
    }
}

/// Where neutral and ground are joined, or may be: in the set, by a plug in one of its receptacles, and
/// in boxes that hang on it.
fn joints(
    plan: &Plan,
    supply: &Supply,
    bonding_socket: Option<BondingSocket>,
) -> Vec<(NodeIx, Sure)> {
    let box_of = |id: &Id| plan.boxes.iter().find(|part| part.id == *id);
    let boxes = nodes(supply)
        .filter(|(_, node)| matches!(node.kind, NodeKind::Inlet { .. }))
        .filter_map(|(ix, node)| Some((ix, Sure::of(box_of(&node.id)?.joins()))));
    let plug = (
        bonding_socket.map_or(NodeIx(0), |socket| socket.at),
        bonding_plug(&plan.generator),
    );
    [(NodeIx(0), joint_in_set(&plan.generator)), plug]
        .into_iter()
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

/// The boxes that join them.
pub(crate) fn bonded_boxes(plan: &Plan) -> Vec<Id> {
    plan.boxes
        .iter()
        .filter(|it| it.from.is_some() && it.bond == Answer::Known(true))
        .map(|it| it.id.clone())
        .collect()
}

/// The boxes that may join them, for all that is known: nobody knows, or nothing is said of a box
/// that is not known to be factory made and listed.
pub(crate) fn doubtful_boxes(plan: &Plan) -> Vec<Id> {
    plan.boxes
        .iter()
        .filter(|it| it.from.is_some() && !it.joins().is_known())
        .map(|it| it.id.clone())
        .collect()
}

/// The socket that a bonding plug takes: where the plan says it is. Where it says nothing, of the
/// household outlets with a socket left the one where the plug does the most harm: behind a GFCI with other things,
/// behind a GFCI, else the one with the most sockets left, the last of equals.
fn bonding_socket(plan: &Plan, supply: &Supply) -> Option<BondingSocket> {
    let set = &plan.generator;
    if bonding_plug(set) == Sure::No {
        return None;
    }
    let belongs = |at: NodeIx| {
        bonding_plug(set) == Sure::Yes
            && joint_in_set(set) == Sure::No
            && !supply.up(at).any(|(_, node)| node.gfci)
    };
    let household = |outlet: &&Outlet| outlet.shape.takes(BONDING_PLUG);
    let said = set.bonding_plug_in.as_ref();
    if let Some(at) = said.and_then(|id| supply.receptacle(id)) {
        return Some(BondingSocket {
            at,
            assumed: false,
            belongs: belongs(at),
        });
    }
    let of = |outlet: &Outlet| {
        let at = supply.receptacle(&outlet.id)?;
        let loads = plan.loads.iter();
        let on = loads.filter(|load| load.on.as_ref() == Some(&outlet.id));
        let taken =
            supply.fed_from(at).count() + on.map(|load| usize::from(load.count)).sum::<usize>();
        let free = usize::from(outlet.socket_count()).saturating_sub(taken);
        let device = supply.node(at).gfci;
        // One with no socket left is the last to be thought of.
        Some(((free > 0, (device && taken > 0, device, free)), at))
    };
    // Where the plan leaves no socket for it, it is in one of them all the same.
    let ((_, (_, device, _)), at) = set
        .outlets
        .iter()
        .filter(household)
        .filter_map(of)
        .max_by_key(|(harm, _)| *harm)?;
    let alone = set.outlets.iter().filter(household).count() == 1;
    Some(BondingSocket {
        at,
        assumed: device && !alone,
        belongs: belongs(at),
    })
}

fn nodes(supply: &Supply) -> impl Iterator<Item = (NodeIx, &crate::supply::Node)> {
    supply
        .nodes
        .iter()
        .enumerate()
        .map(|(at, node)| (NodeIx(at), node))
}
