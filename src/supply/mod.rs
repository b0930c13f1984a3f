//! The supply tree: from the generator through breakers, receptacles, cords and boxes to the
//! places where loads plug in, with the limit at each point and what sets it.
//!
//! [`Supply::build`] takes any plan that loaded; parts that are not plugged in, or are plugged
//! in where they cannot go, stand apart in [`Supply::detached`] and carry nothing.

mod build;
pub mod drop;
mod limit;
#[cfg(test)]
mod tests;

pub(crate) use build::{
    COILED_DIVISOR, CONTINUOUS, TOO_SHORT_TO_COIL, UNKNOWN_CORD, UNKNOWN_LENGTH, UNKNOWN_RATED, UNKNOWN_WIRING,
    leg_taken, rated_of_peak, usual_mark,
};
pub use limit::{Acts, Governing, SetBy};

use std::collections::BTreeMap;

use crate::plan::{Id, Leg, Plan};
use crate::quantity::{ApparentPower, Current, Length, Power, Ratio, Resistance, Temperature, Voltage};
use crate::tables::shape::{Circuit, Plug, Receptacle};
use crate::value::Assumption;

/// The index of a node in [`Supply::nodes`].
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct NodeIx(pub usize);

/// The legs that a point of the tree is fed from.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Legs {
    /// One leg and neutral: 120 V.
    One(Leg),
    /// Both legs without neutral: 240 V only.
    Between,
    /// Both legs and neutral.
    Both,
}

impl Legs {
    /// The legs that carry current for a load here that uses all of them.
    #[must_use]
    pub const fn all(self) -> &'static [Leg] {
        match self {
            Self::One(Leg::A) => &[Leg::A],
            Self::One(Leg::B) => &[Leg::B],
            Self::Between | Self::Both => &[Leg::A, Leg::B],
        }
    }
}

/// What a node of the tree is.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum NodeKind {
    /// The generator itself. Root of the tree.
    Source,
    /// A breaker. Its id is that of the first outlet behind it, or of the box whose main breaker it is.
    Breaker {
        /// As marked; `None` when nobody knows.
        marked: Option<Current>,
        /// What it may let pass until it trips: of two markings the larger, whatever it was seen to trip at.
        /// `None` when nobody knows.
        trips: Option<Current>,
    },
    /// Fixed wiring between a breaker and its receptacle.
    Wiring,
    /// A receptacle of the generator, a cord or a box, or what is inside a camper.
    Receptacle {
        /// Its configuration; of a camper that of its own plug, which is what all inside is fed by.
        shape: Receptacle,
        /// How many plugs it takes; of a camper as many as run inside.
        sockets: u8,
    },
    /// A cord, adapter or splitter.
    Cord {
        /// Its plug.
        plug: Plug,
        /// Resistance out and back at working temperature.
        resistance: Resistance,
    },
    /// A box, from its inlet on.
    Inlet {
        /// Its inlet.
        plug: Plug,
    },
}

impl NodeKind {
    /// Whether it is a cord, an adapter or a splitter.
    #[must_use]
    pub const fn is_cord(&self) -> bool {
        matches!(self, Self::Cord { .. })
    }

    /// Whether it is a cord or a box, and not the generator's.
    #[must_use]
    pub const fn is_gear(&self) -> bool {
        matches!(self, Self::Cord { .. } | Self::Inlet { .. })
    }
}

/// Why a limit is what it is. The word in reports is [`LimitReason::code`].
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum LimitReason {
    /// The rated power of a set that stops past just that.
    RatedPower,
    /// The same, derated for air and altitude, of a set that is not known to, or only past more: it may just
    /// overheat.
    RatedPowerUnguarded,
    /// Half of a two-leg set: nothing says that each half stops by itself.
    OneLeg,
    /// What the kit between sets in parallel passes.
    ParallelKit,
    /// A breaker's marking.
    Breaker,
    /// A breaker that has been seen to trip below its marking.
    TripsEarly,
    /// The rating of a receptacle's configuration.
    Receptacle,
    /// The rating of a plug's or inlet's configuration.
    Plug,
    /// The ampacity of a cord's conductors.
    CordAmpacity,
    /// What a cord set of this gauge and length is usually marked with.
    CordMark,
    /// That ampacity, cut because the cord is coiled.
    CoiledCord,
    /// That ampacity, cut because the air is hotter than it is published for.
    HotCord,
    /// The ampacity of a box's wiring.
    Wiring,
    /// It is fed with other volts than its shape is for, or hangs on what is: of no use, and live.
    NotFed,
}

impl LimitReason {
    /// Its stable name in reports and message keys.
    #[must_use]
    pub const fn code(self) -> &'static str {
        match self {
            Self::RatedPower => "rated-power",
            Self::RatedPowerUnguarded => "rated-power-unguarded",
            Self::OneLeg => "one-leg",
            Self::ParallelKit => "parallel-kit",
            Self::Breaker => "breaker",
            Self::TripsEarly => "trips-early",
            Self::Receptacle => "receptacle",
            Self::Plug => "plug",
            Self::CordAmpacity => "cord-ampacity",
            Self::CordMark => "cord-mark",
            Self::CoiledCord => "coiled-cord",
            Self::HotCord => "hot-cord",
            Self::Wiring => "wiring",
            Self::NotFed => "not-fed",
        }
    }

    /// Whether something trips when the limit is passed. A conductor or a shape only heats, and a breaker that
    /// tripped early may not do so again.
    #[must_use]
    pub const fn enforced(self) -> bool {
        matches!(self, Self::RatedPower | Self::Breaker)
    }
}

/// One point of the tree.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Node {
    /// The id in the plan of the part this is of; a breaker, its wiring and its receptacle
    /// share one.
    pub id: Id,
    /// What it is.
    pub kind: NodeKind,
    /// What feeds it. Parents come before children in [`Supply::nodes`].
    pub parent: Option<NodeIx>,
    /// The legs it is fed from.
    pub legs: Legs,
    /// Whether that is known: of two legs one was taken for it if not ([`Supply::counts_on`]).
    pub leg_known: bool,
    /// The current each of its legs may carry for a short time, of its own accord (not counting
    /// what is upstream).
    pub rating: Current,
    /// Why.
    pub reason: LimitReason,
    /// What it is rated for when it is laid out straight in air of 30 °C, which is what a breaker has
    /// to protect (NEC 240.5(A)): `rating`, but of a coiled or hot cord.
    pub laid_out: Current,
    /// Of a set that limits its own current: past this it stops. As marked, and all of it on one leg: thin or hot air
    /// takes from its engine, and not from what its electronics let pass.
    pub stops_past: Option<Current>,
    /// What it may carry in air of 30 °C, lying as it does: `rating`, but of a hot cord.
    pub when_cool: Current,
    /// What it may carry laid out straight, in the air expected: `rating`, but of a coiled cord.
    pub unwound: Current,
    /// The share of `rating` for three hours or more.
    pub continuous: Ratio,
    /// Whether it brings ground-fault protection itself.
    pub gfci: bool,
    /// Whether it may bring it, for all that anybody knows.
    pub may_have_gfci: bool,
    /// The lowest **marked** breaker at or above it (of equal ones the nearest), with that
    /// marking. `None` when there is none, or when no marking is known.
    ///
    /// A breaker that trips early is not relied on here: it may be replaced, or trip later in
    /// the cold, so a wire behind it is protected only by what is marked. In [`Self::rating`]
    /// it is the other way about: the early trip counts.
    pub protected_at: Option<(NodeIx, Current)>,
}

impl Node {
    /// Whether it is on one of two legs, and nobody knows which.
    #[must_use]
    pub const fn on_either(&self) -> bool {
        matches!(self.legs, Legs::One(_)) && !self.leg_known
    }

    /// The current past which this acts, if it does.
    #[must_use]
    pub const fn acts_past(&self) -> Option<Current> {
        match self.kind {
            NodeKind::Breaker { trips, .. } => trips,
            _ => self.stops_past,
        }
    }

    /// Whether this is the main breaker of a camper that nobody has read: what its plug is made for sets it.
    #[must_use]
    pub fn assumed_breaker(&self) -> bool {
        matches!(self.kind, NodeKind::Breaker { .. }) && self.reason == LimitReason::Plug
    }

    /// Whether this is a cord that the air leaves nothing to carry.
    #[must_use]
    pub fn too_hot(&self) -> bool {
        self.reason == LimitReason::HotCord && self.rating <= Current::ZERO
    }
}

/// Why a part hangs on nothing.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum DetachReason {
    /// Nobody knows its plug or its receptacles.
    UnknownShape,
    /// It names nothing it plugs into.
    NotPluggedIn,
    /// What it names is no receptacle of this plan.
    NoSuchReceptacle,
    /// Its plug does not go into the receptacle it names.
    PlugDoesNotFit,
    /// All sockets of that receptacle are taken, by the bonding plug that is said to be in it or by parts named before
    /// it.
    NoFreeSocket,
    /// It is plugged into a part that hangs on nothing itself.
    UpstreamDetached,
    /// Its chain of cords leads back to itself.
    Loop,
}

/// A part that hangs on nothing.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Detached {
    /// The cord or box.
    pub id: Id,
    /// Why.
    pub reason: DetachReason,
    /// The part to look at: this one, or that which it hangs on and which hangs on nothing.
    pub begins: Id,
}

/// The whole tree.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Supply {
    /// Nodes, parents first, root at index 0.
    pub nodes: Vec<Node>,
    /// What each carries.
    limits: Vec<Governing>,
    /// The receptacles among them.
    by_id: BTreeMap<Id, NodeIx>,
    /// Parts that hang on nothing, cords before boxes, in the order of the plan.
    pub detached: Vec<Detached>,
    /// Rated power after derating.
    pub rated: Power,
    /// Peak power after derating; the rated power where no peak is known.
    pub peak: Power,
    /// How high the place is, or what was taken for it.
    pub altitude: Length,
    /// The hottest air expected, or what was taken for it.
    pub air: Temperature,
    /// Rated current of each leg.
    pub leg_rated: Current,
    /// Peak current of each leg.
    pub leg_peak: Current,
    /// Line-to-neutral voltage.
    pub volts: Voltage,
    /// The leg that stands for one that nobody knows.
    pub unknown_leg: Leg,
    /// Whether somebody said if the set gives 120 V, or 240 V as well: if not, no shape for 240 V alone is fed for
    /// sure, and none is known to be without it.
    pub volts_known: bool,
    /// Every unknown that was taken for the unsafe case while building.
    pub assumed: Vec<Assumption>,
}

impl Supply {
    /// The part that is plugged into nothing, or not into what the plan says, and that this receptacle hangs on;
    /// `None` where it hangs on the generator.
    #[must_use]
    pub fn loose_part<'a>(&'a self, plan: &Plan, receptacle: &Id) -> Option<&'a Id> {
        let part = plan.part_of(receptacle)?;
        let mut detached = self.detached.iter();
        Some(&detached.find(|it| it.id == *part)?.begins)
    }

    /// The node.
    #[must_use]
    pub fn node(&self, ix: NodeIx) -> &Node {
        &self.nodes[ix.0]
    }

    /// The legs on which what is plugged in at a node counts: either, where it is on one of two and nobody knows which.
    #[must_use]
    pub fn counts_on(&self, at: NodeIx) -> &'static [Leg] {
        let node = self.node(at);
        if node.on_either() { &[Leg::A, Leg::B] } else { node.legs.all() }
    }

    /// What a node carries on each leg, in volt-amperes: of the generator its power itself, which its amperes are
    /// rounded down from.
    #[must_use]
    pub fn room(&self, at: NodeIx) -> ApparentPower {
        match self.node(at).kind {
            NodeKind::Source => self.of_a_leg(self.rated),
            _ => ApparentPower::of_capacity(self.node(at).rating, self.volts),
        }
    }

    /// The same of the generator for a moment.
    #[must_use]
    pub fn peak_room(&self) -> ApparentPower {
        self.of_a_leg(self.peak)
    }

    /// Watts are volt-amperes at most.
    fn of_a_leg(&self, power: Power) -> ApparentPower {
        let legs = i64::try_from(self.node(NodeIx(0)).legs.all().len()).unwrap_or(1);
        ApparentPower::from_millivolt_amps(power.milliwatts() / legs)
    }

    /// From a node up to the root, the node first.
    pub fn up(&self, from: NodeIx) -> impl Iterator<Item = (NodeIx, &Node)> {
        std::iter::successors(Some(from), |ix| self.node(*ix).parent).map(|ix| (ix, self.node(ix)))
    }

    /// Every point of the tree, the set first.
    pub fn points(&self) -> impl DoubleEndedIterator<Item = (NodeIx, &Node)> {
        self.nodes.iter().enumerate().map(|(at, node)| (NodeIx(at), node))
    }

    /// Every cord, adapter and splitter, in the order of the tree.
    pub fn cords(&self) -> impl Iterator<Item = (NodeIx, &Node)> {
        self.points().filter(|(_, node)| node.kind.is_cord())
    }

    /// Every receptacle, in the order of the plan.
    pub fn receptacles(&self) -> impl Iterator<Item = (NodeIx, &Node, Receptacle, u8)> {
        self.points().filter_map(|(ix, node)| match node.kind {
            NodeKind::Receptacle { shape, sockets } => Some((ix, node, shape, sockets)),
            _ => None,
        })
    }

    /// Whether this is a receptacle with both hots of a set of which nobody knows the volts: there may be 240 V between
    /// them, or none, and nothing is said to feed it.
    pub(crate) fn may_have_240(&self, node: &Node) -> bool {
        let two_legs =
            matches!(node.kind, NodeKind::Receptacle { shape, .. } if shape.0.circuit() == Circuit::TwoLegs);
        !self.volts_known && node.reason == LimitReason::NotFed && node.legs == Legs::Between && two_legs
    }

    /// The receptacle with this id.
    #[must_use]
    pub fn receptacle(&self, id: &Id) -> Option<NodeIx> {
        self.by_id.get(id).copied()
    }

    /// Whether this is no receptacle, but what runs in a camper: it has the camper's own id.
    #[must_use]
    pub fn inside(&self, at: NodeIx) -> bool {
        let node = self.node(at);
        let of_gear = |above: &Node| matches!(above.kind, NodeKind::Inlet { .. });
        matches!(node.kind, NodeKind::Receptacle { .. })
            && (self.up(at).skip(1)).any(|(_, above)| of_gear(above) && above.id == node.id)
    }

    /// The nodes fed directly from this one.
    pub fn fed_from(&self, ix: NodeIx) -> impl Iterator<Item = (NodeIx, &Node)> {
        self.points().filter(move |(_, node)| node.parent == Some(ix))
    }
}
