//! Building the tree from a plan.

use std::collections::{BTreeMap, BTreeSet};

use super::{DetachReason, Detached, Legs, LimitReason, Node, NodeIx, NodeKind, Supply};
use crate::plan::{Answer, Cord, DistributionBox, Fuel, Id, Leg, Load, Outlet, Plan, System};
use crate::quantity::{Current, Length, Power, Quantity, Ratio, Temperature, Wire};
use crate::tables::conductor;
use crate::tables::shape::{Circuit, Plug, Receptacle};
use crate::tables::{copper, derating};
use crate::value::{Assumption, Value};

/// The share of their rating that breakers, receptacles and fixed wiring carry for three hours or more: 80 % (NEC
/// 210.20(A), 210.19(A), and 210.21(B)(2): 12, 16 and 24 A on 15, 20 and 30 A receptacles).
pub(crate) const CONTINUOUS: Ratio = Ratio::from_permille(800);
/// The share for cord sets, plugs and the engine, which have no lower rating for hours: a generator sustains its rated
/// power, and an ampacity has no time limit.
const WHOLE: Ratio = Ratio::from_permille(1000);
/// The divisor for a cord left on its reel or in a coil, which carries a third (common practice, no source).
pub(crate) const COILED_DIVISOR: i64 = 3;
/// The gauge assumed for a cord of unknown gauge: the thinnest made.
pub(crate) const UNKNOWN_CORD: Wire = Wire::Awg(18);
/// The gauge assumed for unknown wiring in a box that is not listed: a homemade box may be wired with pieces of such a
/// cord.
pub(crate) const UNKNOWN_WIRING: Wire = UNKNOWN_CORD;
/// The length assumed for a cord of unknown length: 100 ft, the longest commonly sold.
pub(crate) const UNKNOWN_LENGTH: Length = Length::from_millimetres(30_480);
/// The rated power assumed for a generator whose nameplate nobody has read: the smallest common one (common practice,
/// no source).
pub(crate) const UNKNOWN_RATED: Power = Power::from_milliwatts(1_000_000);
/// The share of its peak that a generator sustains if only the peak is known: the lowest usual value (common practice,
/// no source).
const OF_PEAK: Ratio = Ratio::from_permille(750);
/// The altitude assumed for an unknown site: 5,000 ft, above most camps that can be driven to.
const UNKNOWN_ALTITUDE: Length = Length::from_millimetres(1_524_000);
/// The air temperature assumed if unknown: 100 °F, rounded up.
const UNKNOWN_AIR: Temperature = Temperature::from_millicelsius(37_778);

/// Returns the usual marking of a cord with a household plug, by its gauge and length or those assumed. `None` if its
/// plug sets the marking, or the cord is of another kind.
pub(crate) fn usual_mark(cord: &Cord) -> Option<Current> {
    if !cord.is_household() {
        return None;
    }
    conductor::usual_mark(cord.wire.or(UNKNOWN_CORD), cord.length.or(UNKNOWN_LENGTH))
}

/// Returns what a breaker counts for once it was seen to trip at this current: the next whole ampere below (common
/// practice, no source). Never nothing: an outlet that gives nothing is another matter.
pub(crate) fn below_trip(seen: Current) -> Current {
    const WHOLE: i64 = 1000;
    const LEAST: i64 = 100;
    Current::from_milliamps(((seen.milliamps() - 1).div_euclid(WHOLE) * WHOLE).max(LEAST))
}

/// Returns the rated power assumed for a generator when only its peak is known.
pub(crate) fn rated_of_peak(peak: Power) -> Power {
    peak.scaled_down(OF_PEAK)
}

impl Supply {
    /// Builds the tree of a plan. Any plan will do: what cannot be connected goes to [`Supply::detached`], and every
    /// unknown taken for the unsafe case to [`Supply::assumed`].
    ///
    /// # Panics
    /// Never: the root's id is valid.
    #[must_use]
    pub fn build(plan: &Plan) -> Self {
        let mut builder = Builder::new(plan);
        builder.source();
        builder.outlets(&plan.generator.outlets, NodeIx(0), None);
        builder.unreached();
        let nodes = (0..builder.supply.nodes.len()).map(NodeIx);
        builder.supply.limits = nodes.map(|at| builder.supply.governing(at)).collect();
        builder.supply
    }
}

/// Returns a node that nothing feeds.
const fn root(id: Id, kind: NodeKind, legs: Legs) -> Node {
    Node {
        id,
        kind,
        parent: None,
        legs,
        leg_known: true,
        rating: Current::ZERO,
        reason: LimitReason::NotFed,
        laid_out: Current::ZERO,
        when_cool: Current::ZERO,
        unwound: Current::ZERO,
        stops_past: None,
        continuous: WHOLE,
        gfci: false,
        may_have_gfci: false,
        protected_at: None,
    }
}

struct Builder<'a> {
    plan: &'a Plan,
    supply: Supply,
    /// Parts connected so far.
    reached: BTreeSet<&'a Id>,
    /// Parts refused so far, and why.
    refused: BTreeMap<&'a Id, DetachReason>,
}

impl<'a> Builder<'a> {
    fn new(plan: &'a Plan) -> Self {
        Self {
            plan,
            supply: Supply {
                nodes: Vec::new(),
                limits: Vec::new(),
                by_id: BTreeMap::new(),
                detached: Vec::new(),
                rated: Power::ZERO,
                peak: Power::ZERO,
                altitude: UNKNOWN_ALTITUDE,
                air: UNKNOWN_AIR,
                leg_rated: Current::ZERO,
                leg_peak: Current::ZERO,
                volts: plan.line_to_neutral(),
                unknown_leg: leg_taken(plan),
                volts_known: plan.generator.voltage.is_known(),
                assumed: Vec::new(),
            },
            reached: BTreeSet::new(),
            refused: BTreeMap::new(),
        }
    }

    fn assume(&mut self, field: impl Into<String>, value: impl Into<Value>, why: &'static str) {
        self.supply.assumed.push(Assumption { field: field.into(), value: value.into(), why });
    }

    /// Returns the known value of an answer, or the cautious one after recording it in `assumed`.
    fn or_assume<Q: Quantity>(
        &mut self,
        answer: Answer<Q>,
        cautious: Q,
        field: impl Into<String>,
        why: &'static str,
    ) -> Q {
        if let Answer::Known(value) = answer {
            return value;
        }
        self.assume(field, cautious, why);
        cautious
    }

    fn push(&mut self, mut node: Node) -> NodeIx {
        node.laid_out = node.laid_out.max(node.rating);
        node.when_cool = node.when_cool.max(node.rating);
        node.unwound = node.unwound.max(node.rating);
        let ix = NodeIx(self.supply.nodes.len());
        if let NodeKind::Receptacle { .. } = node.kind {
            self.supply.by_id.entry(node.id.clone()).or_insert(ix);
        }
        self.supply.nodes.push(node);
        ix
    }

    /// Returns a node below `parent` with the fields that most nodes share.
    fn node(&self, id: &Id, kind: NodeKind, parent: NodeIx, legs: Legs) -> Node {
        let Node { leg_known, protected_at, .. } = *self.supply.node(parent);
        Node { parent: Some(parent), leg_known, protected_at, ..root(id.clone(), kind, legs) }
    }

    fn source(&mut self) {
        let plan = self.plan;
        let (set, site) = (&plan.generator, &plan.site);
        let altitude = self.or_assume(site.altitude, UNKNOWN_ALTITUDE, "site.altitude", "altitude");
        let air = self.or_assume(site.air, UNKNOWN_AIR, "site.air", "air");
        let (least, why) = match set.peak {
            Answer::Known(peak) => (rated_of_peak(peak), "rated-of-peak"),
            Answer::Missing | Answer::Unknown => (UNKNOWN_RATED, "rated"),
        };
        let marked = self.or_assume(set.rated, least, "generator.rated", why);
        self.supply.altitude = altitude;
        self.supply.air = air;
        let peak = self.or_assume(set.peak, marked, "generator.peak", "peak");
        let (marked, peak) = self.on_its_fuel(marked, peak.max(marked));
        self.supply.rated = derating::left(marked, altitude, air);
        self.supply.peak = derating::left(peak, altitude, air);
        let joint = self.in_parallel();

        // Two legs is the unsafe guess: each 120 V outlet then gets only half the power.
        let voltage = set.voltage.or(System::V120_240);
        if !set.voltage.is_known() {
            let word = Value::Name("120/240 V".to_owned());
            self.assume("generator.voltage", word, "voltage");
        }
        let (legs, count) = match voltage {
            System::V120 => (Legs::One(Leg::A), 1),
            System::V120_240 => (Legs::Both, 2),
        };
        // Each leg has half the power; the odd milliwatt is dropped.
        let volts = self.supply.volts;
        let per_leg = |power: Power| Current::of_capacity(Power::from_milliwatts(power.milliwatts() / count), volts);
        self.supply.leg_rated = per_leg(self.supply.rated);
        self.supply.leg_peak = per_leg(self.supply.peak);
        let rating = self.supply.leg_rated;
        // Only an inverter generator limits its own current. Any other runs on past its rated power, as far as the
        // breakers let it, and overheats.
        if !set.inverter.is_known() {
            let no = Value::Word { word: "assumed-no" };
            self.assume("generator.inverter", no, "inverter");
        }
        let limits_itself = !joint && set.inverter == Answer::Known(true);
        let marked = set.rated.known().or(set.peak.known()).filter(|_| limits_itself);
        let stops_past = marked.map(|marked| {
            let all = Power::from_milliwatts(marked.milliwatts().saturating_mul(set.sets()));
            Current::of_capacity(all, volts)
        });
        let reason = if joint {
            LimitReason::ParallelKit
        } else if stops_past == Some(rating) {
            LimitReason::RatedPower
        } else {
            LimitReason::RatedPowerUnguarded
        };
        let id = Id::new(Id::SET).expect("the root's name is an id");
        self.push(Node { rating, reason, stops_past, ..root(id, NodeKind::Source, legs) });
    }

    /// Returns rated and peak power on propane, unless the figures are known to be for propane.
    fn on_its_fuel(&mut self, rated: Power, peak: Power) -> (Power, Power) {
        let set = &self.plan.generator;
        let propane = match set.fuel {
            Answer::Known(fuel) => fuel == Fuel::Propane,
            Answer::Unknown => true,
            // With no word about fuel, the figures are taken to be for the fuel it burns.
            Answer::Missing => false,
        };
        if !propane || set.rated_on == Answer::Known(Fuel::Propane) {
            return (rated, peak);
        }
        let left = derating::on_propane(rated);
        self.assume("generator.rated_on", left, "rated-on");
        (left, derating::on_propane(peak))
    }

    /// Adds up parallel sets as far as the kit between them allows. Returns whether the kit sets the limit.
    fn in_parallel(&mut self) -> bool {
        let Some(parallel) = self.plan.generator.parallel else {
            return false;
        };
        // If the sets must run separately, an outlet has the power of just one.
        let as_one = self.plan.generator.run_as_one();
        if as_one == Some(Answer::Known(false)) {
            return false;
        }
        let (one, volts) = (self.supply.rated, self.supply.volts);
        let times = |power: Power| Power::from_milliwatts(power.milliwatts().saturating_mul(parallel.sets.into()));
        let legs = match self.plan.generator.voltage.or(System::V120_240) {
            System::V120 => 1,
            System::V120_240 => 2,
        };
        // With an unknown kit limit, no more than what one set gives alone.
        let alone = Current::of_capacity(Power::from_milliwatts(one.milliwatts() / legs), volts);
        let limit = self.or_assume(parallel.limit, alone, "generator.parallel.limit", "parallel-limit");
        // The power of one set until it is known that they may be joined, even if the kit's limit is known.
        if as_one != Some(Answer::Known(true)) {
            return false;
        }
        let kit = Power::from_milliwatts(Power::of_capacity(limit, volts).milliwatts() * legs);
        let (rated, peak) = (times(one), times(self.supply.peak));
        self.supply.rated = rated.min(kit);
        self.supply.peak = peak.min(kit).max(self.supply.rated);
        kit < rated
    }

    /// Adds the outlets of the generator (if `within` is `None`) or of a box.
    fn outlets(&mut self, outlets: &'a [Outlet], parent: NodeIx, within: Option<&'a DistributionBox>) {
        let mut breakers: BTreeMap<usize, Option<NodeIx>> = BTreeMap::new();
        for (at, outlet) in outlets.iter().enumerate() {
            let owner = breaker_owner(outlets, at);
            let group: Vec<&Outlet> = (0..outlets.len())
                .filter(|other| breaker_owner(outlets, *other) == owner)
                .map(|other| &outlets[other])
                .collect();
            let breaker = if let Some(breaker) = breakers.get(&owner) {
                *breaker
            } else {
                let breaker = self.breaker(&outlets[owner], &group, parent, within);
                breakers.insert(owner, breaker);
                breaker
            };
            let legs = self.outlet_legs(outlet, self.supply.node(parent).legs, within);
            let mut above = breaker.unwrap_or(parent);
            if let Some(holder) = within {
                above = self.wiring(outlet, above, legs.0, holder);
            }
            let field = field_of(outlet, within);
            if !outlet.gfci.is_known() {
                self.assume(format!("{field}.gfci"), Value::Word { word: "assumed-no" }, "no-gfci");
            }
            self.receptacle(&outlet.id, outlet.shape, outlet.plugs().1, above, legs, outlet.gfci);
        }
    }

    /// Adds the one breaker of a group of outlets; `None` if the group has none of its own.
    fn breaker(
        &mut self,
        owner: &Outlet,
        group: &[&Outlet],
        parent: NodeIx,
        within: Option<&DistributionBox>,
    ) -> Option<NodeIx> {
        // If two answers differ for one breaker, the lower is cautious for the current it passes, the higher for what
        // it protects.
        let markings = || group.iter().filter_map(|outlet| outlet.breaker.known().copied());
        let seen = group.iter().filter_map(|outlet| outlet.trips_at).min();
        let marked = markings().min();
        let field = format!("{}.breaker", field_of(owner, within));
        if marked.is_none() {
            // A breaker that several outlets share, or that was seen to trip, exists whether or not anybody has read
            // it. Elsewhere in a box, an unmentioned breaker is taken as missing, and protection comes from upstream.
            let is_there = within.is_none() || group.len() > 1 || seen.is_some();
            let why = if is_there { "breaker-unknown" } else { "no-breaker" };
            if is_there || owner.breaker == Answer::Unknown {
                self.assume(field, Value::Word { word: "assumed-none" }, why);
            }
            if !is_there {
                return None;
            }
        }
        let feed = self.supply.node(parent).legs;
        let legs = group
            .iter()
            .filter_map(|outlet| fed_legs(outlet.shape, feed, self.leg_of(outlet)))
            .reduce(|one, other| if one == other { one } else { feed })
            .unwrap_or(feed);
        // With an unknown breaker, the receptacles are all there is to go by.
        let smallest = group.iter().map(|outlet| outlet.shape.0.rating()).min();
        let full = marked.or(smallest).unwrap_or(Current::ZERO);
        // A breaker seen to trip below its marking carries less than that from then on.
        let early = seen.filter(|seen| *seen < full);
        let rating = early.map_or(full, below_trip);
        let trips = markings().max();
        let mut node = self.node(&owner.id, NodeKind::Breaker { marked, trips }, parent, legs);
        node.rating = rating;
        node.reason = match marked {
            _ if early.is_some() => LimitReason::TripsEarly,
            Some(_) => LimitReason::Breaker,
            None => LimitReason::Receptacle,
        };
        Some(self.push_breaker(node))
    }

    /// Adds a breaker. Protection goes by its marking, never by an early trip; see [`Node::protected_at`].
    fn push_breaker(&mut self, mut node: Node) -> NodeIx {
        node.continuous = CONTINUOUS;
        let NodeKind::Breaker { trips, .. } = node.kind else {
            return self.push(node);
        };
        let upstream = node.protected_at;
        let ix = self.push(node);
        if let Some(trips) = trips
            && upstream.is_none_or(|(_, above)| trips <= above)
        {
            self.supply.nodes[ix.0].protected_at = Some((ix, trips));
        }
        ix
    }

    /// Adds the wiring of a box outlet, if it can set the limit.
    fn wiring(&mut self, outlet: &Outlet, above: NodeIx, legs: Legs, holder: &DistributionBox) -> NodeIx {
        let wire = match outlet.wire {
            Answer::Known(wire) => wire,
            // A factory-made box's listing covers its wiring.
            _ if holder.is_listed() == Answer::Known(true) => return above,
            _ => {
                let field = format!("{}.wire", field_of(outlet, Some(holder)));
                self.assume(field, Value::Name(UNKNOWN_WIRING.to_string()), "box-wire");
                UNKNOWN_WIRING
            }
        };
        let mut node = self.node(&outlet.id, NodeKind::Wiring, above, legs);
        node.rating = conductor::wiring_ampacity(wire);
        node.reason = LimitReason::Wiring;
        node.continuous = CONTINUOUS;
        self.push(node)
    }

    /// Returns the legs of an outlet, and whether they are known. A 120 V outlet that may be on either of two legs
    /// counts on both.
    fn outlet_legs(&mut self, outlet: &Outlet, feed: Legs, within: Option<&DistributionBox>) -> (Legs, bool) {
        let one_leg = feed == Legs::Both && outlet.shape.0.circuit() == Circuit::OneLeg;
        let known = !one_leg || outlet.leg.is_known();
        if !known {
            self.assume_both(format!("{}.leg", field_of(outlet, within)));
        }
        // An outlet that cannot be fed keeps the legs of its feed and gets a rating of zero.
        let legs = fed_legs(outlet.shape, feed, self.leg_of(outlet));
        (legs.unwrap_or(feed), known)
    }

    fn assume_both(&mut self, field: String) {
        let both = "assumed-leg-both";
        self.assume(field, Value::Word { word: both }, "leg");
    }

    /// Returns the leg of a 120 V outlet on two legs. If nobody knows whether there are two, all outlets go on one leg,
    /// whatever the plan says: they share half the power, and a breaker they share is one pole.
    fn leg_of(&self, outlet: &Outlet) -> Leg {
        let said = outlet.leg.known().filter(|_| self.plan.generator.voltage.is_known());
        said.copied().unwrap_or(self.supply.unknown_leg)
    }

    /// Adds a receptacle and everything plugged into it.
    fn receptacle(
        &mut self,
        id: &Id,
        shape: Receptacle,
        sockets: u8,
        above: NodeIx,
        (legs, leg_known): (Legs, bool),
        gfci: Answer<bool>,
    ) {
        // A generator of unknown voltage may not give 240 V.
        let sure = self.supply.volts_known || shape.0.circuit() != Circuit::TwoLegs;
        // A breaker or wiring in between does not carry the `NotFed` of its box, so look all the way up.
        let fed = sure
            && self.supply.up(above).all(|(_, node)| node.reason != LimitReason::NotFed)
            && fed_legs(shape, self.supply.node(above).legs, Leg::A).is_some();
        let mut node = self.node(id, NodeKind::Receptacle { shape, sockets }, above, legs);
        node.leg_known &= leg_known;
        node.continuous = CONTINUOUS;
        node.gfci = gfci == Answer::Known(true);
        node.may_have_gfci = !gfci.is_known();
        if fed {
            node.rating = shape.0.rating();
            node.reason = LimitReason::Receptacle;
        }
        let ix = self.push(node);
        self.plugged_into(id, ix, shape, sockets);
    }

    fn plugged_into(&mut self, id: &Id, ix: NodeIx, shape: Receptacle, sockets: u8) {
        let plan = self.plan;
        let set = &plan.generator;
        // The generator's bonding plug comes first: whoever says where it is has seen it there.
        let plug = set.bonding_plug != Answer::Known(false) && set.bonding_plug_in.as_ref() == Some(id);
        let mut free = sockets.saturating_sub(u8::from(plug));
        let mut claim = |builder: &mut Self, part: &'a Id, plug: Plug| -> bool {
            if builder.reached.contains(part) {
                return false;
            }
            let refusal = if !shape.takes(plug) {
                DetachReason::PlugDoesNotFit
            } else if free == 0 {
                DetachReason::NoFreeSocket
            } else {
                free -= 1;
                builder.reached.insert(part);
                return true;
            };
            builder.refused.insert(part, refusal);
            false
        };
        for cord in &plan.cords {
            let plug = cord.usable_plug().filter(|_| cord.from.as_ref() == Some(id));
            if let Some(plug) = plug.filter(|plug| claim(self, &cord.id, *plug)) {
                self.cord(cord, plug, ix);
            }
        }
        for holder in &plan.boxes {
            let inlet = holder.usable_inlet().filter(|_| holder.from.as_ref() == Some(id));
            if let Some(inlet) = inlet.filter(|inlet| claim(self, &holder.id, *inlet)) {
                self.inlet(holder, inlet, ix);
            }
        }
    }

    /// Adds a cord, adapter or splitter and its receptacles.
    fn cord(&mut self, cord: &'a Cord, plug: Plug, parent: NodeIx) {
        let field = |name: &str| format!("cord.{}.{name}", cord.id);
        let wire = if let Answer::Known(wire) = cord.wire {
            wire
        } else {
            self.assume(field("wire"), Value::Name(UNKNOWN_CORD.to_string()), "cord-wire");
            UNKNOWN_CORD
        };
        if !cord.conductors.is_known() {
            // As many as the plug needs without its ground.
            let bare = plug.0.circuit().conductors();
            self.assume(field("conductors"), Value::Count(bare.into()), "cord-conductors");
        }
        let length = self.or_assume(cord.length, UNKNOWN_LENGTH, field("length"), "cord-length");
        let coiled = cord.is_coiled();
        if !coiled.is_known() {
            self.assume(field("coiled"), Value::Word { word: "assumed-yes" }, "cord-coiled");
        }
        if cord.gfci == Answer::Unknown {
            self.assume(field("gfci"), Value::Word { word: "assumed-no" }, "no-gfci");
        }
        let cool = conductor::flexible_ampacity(wire);
        let straight = conductor::in_air(cool, self.supply.air);
        let lying = |amps: Current| {
            if coiled.or(true) { Current::from_milliamps(amps.milliamps() / COILED_DIVISOR) } else { amps }
        };
        // A coil and hot air both use up the one temperature rise that the insulation allows.
        let ampacity = lying(straight);
        let rated = plug.0.rating();
        let resistance = copper::out_and_back(wire, length);
        let legs = self.plug_legs(plug, parent);
        let mut node = self.node(
            &cord.id,
            NodeKind::Cord { plug, resistance },
            parent,
            legs.unwrap_or(self.supply.node(parent).legs),
        );
        node.gfci = cord.gfci == Answer::Known(true);
        node.may_have_gfci = cord.gfci == Answer::Unknown;
        if legs.is_some() {
            node.laid_out = rated.min(cool).min(usual_mark(cord).unwrap_or(rated));
            node.when_cool = node.laid_out.min(lying(cool));
            node.unwound = node.laid_out.min(straight);
            node.rating = node.laid_out.min(ampacity);
            node.reason = if node.laid_out <= ampacity {
                if node.laid_out == rated {
                    LimitReason::Plug
                } else if node.laid_out == cool {
                    LimitReason::CordAmpacity
                } else {
                    LimitReason::CordMark
                }
            // Uncoiling raises the ampacity in any air, unless the air leaves nothing.
            } else if straight > ampacity {
                LimitReason::CoiledCord
            } else {
                LimitReason::HotCord
            };
        }
        let ix = self.push(node);
        let feed = self.supply.node(ix).legs;
        for (at, end) in cord.ends().iter().enumerate() {
            let id = cord.end_id(at);
            let known = feed != Legs::Both || end.0.circuit() != Circuit::OneLeg;
            if !known {
                self.assume_both(format!("cord.{id}.leg"));
            }
            let legs = fed_legs(*end, feed, self.supply.unknown_leg).unwrap_or(feed);
            self.receptacle(&id, *end, 1, ix, (legs, known), Answer::Known(false));
        }
    }

    /// Adds a box, from its inlet on.
    fn inlet(&mut self, holder: &'a DistributionBox, inlet: Plug, parent: NodeIx) {
        let legs = self.plug_legs(inlet, parent);
        let mut node = self.node(
            &holder.id,
            NodeKind::Inlet { plug: inlet },
            parent,
            legs.unwrap_or(self.supply.node(parent).legs),
        );
        if legs.is_some() {
            node.rating = inlet.0.rating();
            node.reason = LimitReason::Plug;
        }
        let mut above = self.push(node);
        if let Some(main) = self.main_breaker(holder, inlet, above) {
            above = main;
        }
        self.outlets(&holder.outlets, above, Some(holder));
        if holder.is_camper() {
            self.inside(holder, inlet, above);
        }
    }

    /// Adds the main breaker of a box; `None` if it has none that anybody knows of. A camper has one of its plug's
    /// rating (NEC 551.45, from memory, not verified).
    fn main_breaker(&mut self, holder: &DistributionBox, inlet: Plug, parent: NodeIx) -> Option<NodeIx> {
        let field = format!("box.{}.breaker", holder.id);
        let marked = match holder.breaker {
            Answer::Known(marked) => marked,
            Answer::Missing | Answer::Unknown if holder.is_camper() => {
                let marked = inlet.0.rating();
                self.assume(field, marked, "camper-main");
                marked
            }
            Answer::Missing => return None,
            Answer::Unknown => {
                let none = "assumed-none";
                self.assume(field, Value::Word { word: none }, "no-breaker");
                return None;
            }
        };
        let kind = NodeKind::Breaker { marked: Some(marked), trips: Some(marked) };
        let legs = self.supply.node(parent).legs;
        let mut node = self.node(&holder.id, kind, parent, legs);
        node.rating = marked;
        // If nobody has read it, no label says that it trips.
        node.reason = match holder.breaker {
            Answer::Known(_) => LimitReason::Breaker,
            Answer::Missing | Answer::Unknown => LimitReason::Plug,
        };
        Some(self.push_breaker(node))
    }

    /// Adds the inside of a camper: one receptacle that takes what the plan says is inside and nothing else. Its wiring
    /// is its maker's business, and its plug says how it is fed.
    fn inside(&mut self, holder: &'a DistributionBox, inlet: Plug, above: NodeIx) {
        let on = |load: &&Load| load.on.as_ref() == Some(&holder.id);
        let loads = self.plan.loads.iter().filter(on);
        let count: usize = loads.map(|load| usize::from(load.count)).sum();
        let sockets = u8::try_from(count).unwrap_or(u8::MAX);
        let legs = self.supply.node(above).legs;
        let shape = Receptacle(inlet.0);
        let no = Answer::Known(false);
        self.receptacle(&holder.id, shape, sockets, above, (legs, true), no);
        // A plug has no lower rating for hours.
        if let Some(inside) = self.supply.nodes.last_mut() {
            inside.continuous = WHOLE;
            if inside.reason == LimitReason::Receptacle {
                inside.reason = LimitReason::Plug;
            }
        }
    }

    /// Returns the legs a plug takes from its receptacle; `None` if the receptacle is not fed.
    fn plug_legs(&self, plug: Plug, parent: NodeIx) -> Option<Legs> {
        let above = self.supply.node(parent);
        if above.reason == LimitReason::NotFed {
            return None;
        }
        fed_legs(Receptacle(plug.0), above.legs, Leg::A)
    }

    /// Lists every part that was not reached, with the reason.
    fn unreached(&mut self) {
        let plan = self.plan;
        self.refused.extend(plan.of_unknown_shape().map(|it| (it.part, DetachReason::UnknownShape)));
        let parts: Vec<(&Id, Option<&Id>)> = plan.gear().map(|it| (it.id, it.from)).collect();
        // The part each receptacle belongs to, for following a chain upstream.
        let mut part_of: BTreeMap<Id, &Id> = BTreeMap::new();
        for cord in &plan.cords {
            for at in 0..cord.ends().len() {
                part_of.entry(cord.end_id(at)).or_insert(&cord.id);
            }
        }
        for holder in &plan.boxes {
            for outlet in &holder.outlets {
                part_of.entry(outlet.id.clone()).or_insert(&holder.id);
            }
        }
        let from_of: BTreeMap<&Id, Option<&Id>> = parts.iter().copied().collect();
        let begins = |part: &'a Id| {
            let mut at = part;
            while !self.refused.contains_key(at) && !leads_back(at, &from_of, &part_of) {
                let from = from_of.get(at).copied().flatten();
                let Some(above) = from.and_then(|from| part_of.get(from)) else {
                    break;
                };
                at = above;
            }
            at.clone()
        };
        let mut detached = Vec::new();
        for (part, from) in parts {
            if self.reached.contains(part) {
                continue;
            }
            let reason = match (self.refused.get(part), from) {
                (Some(reason), _) => *reason,
                (None, None) => DetachReason::NotPluggedIn,
                (None, Some(from)) => match part_of.get(from) {
                    None => DetachReason::NoSuchReceptacle,
                    Some(_) if leads_back(part, &from_of, &part_of) => DetachReason::Loop,
                    Some(_) => DetachReason::UpstreamDetached,
                },
            };
            detached.push(Detached { id: part.clone(), reason, begins: begins(part) });
        }
        self.supply.detached = detached;
    }
}

/// Whether following a part upstream comes back to it.
fn leads_back(part: &Id, from_of: &BTreeMap<&Id, Option<&Id>>, part_of: &BTreeMap<Id, &Id>) -> bool {
    let mut at = part;
    for _ in 0..=from_of.len() {
        let Some(Some(from)) = from_of.get(at) else {
            return false;
        };
        let Some(above) = part_of.get(*from) else {
            return false;
        };
        if *above == part {
            return true;
        }
        at = above;
    }
    false
}

/// Returns the outlet that has the breaker of this one: itself, unless `shares` leads elsewhere in the same list. A
/// chain leads to its end, and a loop to its lowest index.
fn breaker_owner(outlets: &[Outlet], start: usize) -> usize {
    let mut seen = vec![start];
    let mut at = start;
    loop {
        let next = outlets[at].shares.as_ref().and_then(|id| outlets.iter().position(|outlet| outlet.id == *id));
        match next {
            None => return at,
            Some(next) => {
                if let Some(first) = seen.iter().position(|one| *one == next) {
                    return seen[first..].iter().copied().min().unwrap_or(at);
                }
                seen.push(next);
                at = next;
            }
        }
    }
}

/// Returns the leg that stands in for an unknown one: the leg with the most known current. What is plugged in there
/// counts on both ([`Supply::counts_on`]).
pub(crate) fn leg_taken(plan: &Plan) -> Leg {
    let known: Vec<(Leg, Current)> = plan
        .outlets()
        .filter(|outlet| outlet.shape.0.circuit() == Circuit::OneLeg)
        .filter_map(|outlet| Some((*outlet.leg.known()?, outlet.shape.0.rating())))
        .collect();
    let on = |leg: Leg| -> Current {
        let on = known.iter().filter(|(known, _)| *known == leg);
        on.map(|(_, amps)| *amps).sum()
    };
    if on(Leg::B) > on(Leg::A) { Leg::B } else { Leg::A }
}

/// Returns the legs a shape uses on this feed, where `leg` is the one a 120 V shape is wired to. `None` if it cannot
/// work: a 120 V shape without a neutral, or a 240 V shape on one leg.
fn fed_legs(shape: Receptacle, feed: Legs, leg: Leg) -> Option<Legs> {
    match (shape.0.circuit(), feed) {
        (Circuit::OneLeg, Legs::Both) => Some(Legs::One(leg)),
        // A 120/240 V shape fed with one leg has both its hots on that leg.
        (Circuit::OneLeg | Circuit::TwoLegsNeutral, Legs::One(only)) => Some(Legs::One(only)),
        (Circuit::TwoLegs, Legs::Both | Legs::Between) => Some(Legs::Between),
        (Circuit::TwoLegsNeutral, Legs::Both) => Some(Legs::Both),
        (Circuit::OneLeg | Circuit::TwoLegsNeutral, Legs::Between) | (Circuit::TwoLegs, Legs::One(_)) => None,
    }
}

fn field_of(outlet: &Outlet, within: Option<&DistributionBox>) -> String {
    match within {
        None => format!("generator.outlet.{}", outlet.id),
        Some(holder) => format!("box.{}.outlet.{}", holder.id, outlet.id),
    }
}
