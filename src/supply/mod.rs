//! The supply tree: from the generator through breakers, receptacles, cords and boxes to the places where loads plug
//! in, with the limit at each node and what sets it.
//!
//! [`Supply::build`] takes any plan that loaded. Parts that are not plugged in, or are plugged in where they cannot go,
//! are listed in [`Supply::detached`] and carry nothing.

mod build;
pub mod drop;
mod limit;
#[cfg(test)]
mod tests;

pub(crate) use build::{
    COILED_DIVISOR, CONTINUOUS, UNKNOWN_CORD, UNKNOWN_LENGTH, UNKNOWN_RATED, UNKNOWN_WIRING, below_trip, leg_taken,
    rated_of_peak, usual_mark,
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

/// The legs that feed a node.
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
    /// Returns the individual legs.
    #[must_use]
    pub const fn all(self) -> &'static [Leg] {
        match self {
            Self::One(Leg::A) => &[Leg::A],
            Self::One(Leg::B) => &[Leg::B],
            Self::Between | Self::Both => &[Leg::A, Leg::B],
        }
    }
}

/// The kind of a node, with the data particular to it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum NodeKind {
    /// The generator itself: the root of the tree.
    Source,
    /// A breaker. Its id is that of the first outlet downstream, or of the box whose main breaker it is.
    Breaker {
        /// The marking; `None` if unknown.
        marked: Option<Current>,
        /// The most current it may pass before it trips: the larger of two markings, whatever current it was seen to
        /// trip at. `None` if unknown.
        trips: Option<Current>,
    },
    /// Fixed wiring between a breaker and its receptacle.
    Wiring,
    /// A receptacle of the generator, a cord or a box, or the inside of a camper.
    Receptacle {
        /// Its configuration. For a camper, that of its plug, which feeds everything inside.
        shape: Receptacle,
        /// How many plugs it takes. For a camper, how many loads run inside.
        sockets: u8,
    },
    /// A cord, adapter or splitter.
    Cord {
        /// Its plug.
        plug: Plug,
        /// Out-and-back resistance at working temperature.
        resistance: Resistance,
    },
    /// A box, from its inlet on.
    Inlet {
        /// Its inlet.
        plug: Plug,
    },
}

impl NodeKind {
    /// Whether this is a cord, an adapter or a splitter.
    #[must_use]
    pub const fn is_cord(&self) -> bool {
        matches!(self, Self::Cord { .. })
    }

    /// Whether this is a cord or a box rather than part of the generator.
    #[must_use]
    pub const fn is_gear(&self) -> bool {
        matches!(self, Self::Cord { .. } | Self::Inlet { .. })
    }
}

/// The reason for a limit. Reports use the word from [`LimitReason::code`].
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum LimitReason {
    /// The rated power of a generator that stops right at that power.
    RatedPower,
    /// The derated power of a generator that is not known to stop, or that stops only at a higher power. It may
    /// overheat instead.
    RatedPowerUnguarded,
    /// Half the power of a two-leg generator. Nothing says that each half stops on its own.
    OneLeg,
    /// The rating of the kit that joins parallel sets.
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
    /// The usual marking of a cord set of this gauge and length.
    CordMark,
    /// The cord's ampacity, reduced because the cord is coiled.
    CoiledCord,
    /// The cord's ampacity, reduced because the air is hotter than the published value assumes.
    HotCord,
    /// The ampacity of a box's wiring.
    Wiring,
    /// The node, or something upstream of it, is fed with the wrong voltage for its shape: it is unusable, and live.
    NotFed,
}

impl LimitReason {
    /// Returns the stable name used in reports and message keys.
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

    /// Whether something trips when the limit is passed. A conductor or a shape only heats up, and a breaker that
    /// tripped early may not do so again.
    #[must_use]
    pub const fn enforced(self) -> bool {
        matches!(self, Self::RatedPower | Self::Breaker)
    }
}

/// One node of the tree.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Node {
    /// The plan's id of the part this node belongs to. A breaker, its wiring and its receptacle share one.
    pub id: Id,
    /// What the node is.
    pub kind: NodeKind,
    /// The node that feeds this one. Parents come before children in [`Supply::nodes`].
    pub parent: Option<NodeIx>,
    /// The legs that feed it.
    pub legs: Legs,
    /// Whether `legs` is known. If not, it holds a stand-in for one of two legs ([`Supply::counts_on`]).
    pub leg_known: bool,
    /// The current each leg may carry for a short time, ignoring everything upstream.
    pub rating: Current,
    /// The reason for `rating`.
    pub reason: LimitReason,
    /// The rating when laid out straight in air at 30 °C, which is what a breaker has to protect (NEC 240.5(A)). Equal
    /// to `rating` unless the cord is coiled or hot.
    pub laid_out: Current,
    /// The current past which the generator stops, all of it on one leg; `None` unless it limits its own current. As
    /// marked, not derated: thin or hot air weakens the engine, but does not lower what the electronics let pass.
    pub stops_past: Option<Current>,
    /// The current it may carry in air at 30 °C, coiled or not as it lies. Equal to `rating` unless the cord is hot.
    pub when_cool: Current,
    /// The current it may carry laid out straight in the expected air. Equal to `rating` unless the cord is coiled.
    pub unwound: Current,
    /// The share of `rating` that it may carry for three hours or more.
    pub continuous: Ratio,
    /// Whether it has ground-fault protection of its own.
    pub gfci: bool,
    /// Whether it may have ground-fault protection of its own: nobody knows.
    pub may_have_gfci: bool,
    /// The lowest **marked** breaker at or upstream of this node, with its marking; the nearest if several are equal.
    /// `None` if there is no breaker or no marking is known.
    ///
    /// An early trip does not count here: the breaker may be replaced, or trip later in the cold, so only its marking
    /// protects the wire behind it. In [`Self::rating`] the early trip does count.
    pub protected_at: Option<(NodeIx, Current)>,
}

impl Node {
    /// Whether it is on one of two legs and nobody knows which.
    #[must_use]
    pub const fn on_either(&self) -> bool {
        matches!(self.legs, Legs::One(_)) && !self.leg_known
    }

    /// Returns the current past which this node trips or stops, if it does.
    #[must_use]
    pub const fn acts_past(&self) -> Option<Current> {
        match self.kind {
            NodeKind::Breaker { trips, .. } => trips,
            _ => self.stops_past,
        }
    }

    /// Whether this is a camper's main breaker that nobody has read, assumed to match the rating of the plug.
    #[must_use]
    pub fn assumed_breaker(&self) -> bool {
        matches!(self.kind, NodeKind::Breaker { .. }) && self.reason == LimitReason::Plug
    }

    /// Whether this is a cord with no ampacity left in the expected air.
    #[must_use]
    pub fn too_hot(&self) -> bool {
        self.reason == LimitReason::HotCord && self.rating <= Current::ZERO
    }
}

/// Why a part is not connected to the generator.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum DetachReason {
    /// Its plug or its receptacles are unknown.
    UnknownShape,
    /// The plan does not say what it plugs into.
    NotPluggedIn,
    /// It names a receptacle that is not in the plan.
    NoSuchReceptacle,
    /// Its plug does not fit the receptacle it names.
    PlugDoesNotFit,
    /// All sockets of that receptacle are taken, by the bonding plug said to be in it or by parts listed earlier.
    NoFreeSocket,
    /// It is plugged into a part that is itself detached.
    UpstreamDetached,
    /// Its chain of cords leads back to itself.
    Loop,
}

/// A part that is not connected to the generator.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Detached {
    /// The cord or box.
    pub id: Id,
    /// Why it is detached.
    pub reason: DetachReason,
    /// The part to look at: this one, or the detached part upstream where the chain breaks.
    pub begins: Id,
}

/// The whole supply tree.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Supply {
    /// All nodes, parents first, the root at index 0.
    pub nodes: Vec<Node>,
    /// The limit at each node.
    limits: Vec<Governing>,
    /// Receptacle nodes by id.
    by_id: BTreeMap<Id, NodeIx>,
    /// Parts not connected to the generator, cords before boxes, in plan order.
    pub detached: Vec<Detached>,
    /// Rated power after derating.
    pub rated: Power,
    /// Peak power after derating; the rated power if no peak is known.
    pub peak: Power,
    /// The altitude of the site, or the assumed one.
    pub altitude: Length,
    /// The hottest air expected, or the assumed temperature.
    pub air: Temperature,
    /// Rated current of each leg.
    pub leg_rated: Current,
    /// Peak current of each leg.
    pub leg_peak: Current,
    /// Line-to-neutral voltage.
    pub volts: Voltage,
    /// The leg that stands in for an unknown one.
    pub unknown_leg: Leg,
    /// Whether the plan says if the generator gives 120 V only or 240 V as well. If not, no 240 V shape counts as
    /// surely fed, and none as surely dead.
    pub volts_known: bool,
    /// Every unknown for which the build assumed the unsafe case.
    pub assumed: Vec<Assumption>,
}

impl Supply {
    /// Returns the detached part at which this receptacle's feed breaks; `None` if the receptacle is connected to the
    /// generator.
    #[must_use]
    pub fn loose_part<'a>(&'a self, plan: &Plan, receptacle: &Id) -> Option<&'a Id> {
        let part = plan.part_of(receptacle)?;
        let mut detached = self.detached.iter();
        Some(&detached.find(|it| it.id == *part)?.begins)
    }

    /// Returns a node.
    #[must_use]
    pub fn node(&self, ix: NodeIx) -> &Node {
        &self.nodes[ix.0]
    }

    /// Returns the legs on which a load plugged in here counts: both, if it is on one of two and nobody knows which.
    #[must_use]
    pub fn counts_on(&self, at: NodeIx) -> &'static [Leg] {
        let node = self.node(at);
        if node.on_either() { &[Leg::A, Leg::B] } else { node.legs.all() }
    }

    /// Returns the apparent power a node can carry on each leg. For the generator this is its power itself, because its
    /// amperes are rounded down.
    #[must_use]
    pub fn room(&self, at: NodeIx) -> ApparentPower {
        match self.node(at).kind {
            NodeKind::Source => self.of_a_leg(self.rated),
            _ => ApparentPower::of_capacity(self.node(at).rating, self.volts),
        }
    }

    /// Returns the generator's peak apparent power on each leg.
    #[must_use]
    pub fn peak_room(&self) -> ApparentPower {
        self.of_a_leg(self.peak)
    }

    /// Returns one leg's share of a generator power. Watts never exceed volt-amperes, so watts are taken as
    /// volt-amperes.
    fn of_a_leg(&self, power: Power) -> ApparentPower {
        let legs = i64::try_from(self.node(NodeIx(0)).legs.all().len()).unwrap_or(1);
        ApparentPower::from_millivolt_amps(power.milliwatts() / legs)
    }

    /// Iterates from a node up to the root, starting with the node itself.
    pub fn up(&self, from: NodeIx) -> impl Iterator<Item = (NodeIx, &Node)> {
        std::iter::successors(Some(from), |ix| self.node(*ix).parent).map(|ix| (ix, self.node(ix)))
    }

    /// Iterates over all nodes, the generator first.
    pub fn points(&self) -> impl DoubleEndedIterator<Item = (NodeIx, &Node)> {
        self.nodes.iter().enumerate().map(|(at, node)| (NodeIx(at), node))
    }

    /// Iterates over the cords, adapters and splitters in tree order.
    pub fn cords(&self) -> impl Iterator<Item = (NodeIx, &Node)> {
        self.points().filter(|(_, node)| node.kind.is_cord())
    }

    /// Iterates over the receptacles in tree order, each with its shape and number of sockets.
    pub fn receptacles(&self) -> impl Iterator<Item = (NodeIx, &Node, Receptacle, u8)> {
        self.points().filter_map(|(ix, node)| match node.kind {
            NodeKind::Receptacle { shape, sockets } => Some((ix, node, shape, sockets)),
            _ => None,
        })
    }

    /// Whether this is a 240 V receptacle of a generator whose voltage is unknown. There may be 240 V between its hots,
    /// or none, and it counts as not fed.
    pub(crate) fn may_have_240(&self, node: &Node) -> bool {
        let two_legs = matches!(node.kind, NodeKind::Receptacle { shape, .. } if shape.0.circuit() == Circuit::TwoLegs);
        !self.volts_known && node.reason == LimitReason::NotFed && node.legs == Legs::Between && two_legs
    }

    /// Looks up a receptacle by id.
    #[must_use]
    pub fn receptacle(&self, id: &Id) -> Option<NodeIx> {
        self.by_id.get(id).copied()
    }

    /// Whether this node is the inside of a camper rather than a receptacle. It shares the camper's id.
    #[must_use]
    pub fn inside(&self, at: NodeIx) -> bool {
        let node = self.node(at);
        let of_gear = |above: &Node| matches!(above.kind, NodeKind::Inlet { .. });
        matches!(node.kind, NodeKind::Receptacle { .. })
            && (self.up(at).skip(1)).any(|(_, above)| of_gear(above) && above.id == node.id)
    }

    /// Iterates over the nodes fed directly from this one.
    pub fn fed_from(&self, ix: NodeIx) -> impl Iterator<Item = (NodeIx, &Node)> {
        self.points().filter(move |(_, node)| node.parent == Some(ix))
    }
}
