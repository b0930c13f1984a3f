//! One verdict for each node: what may be plugged in there, and why not.
//!
//! Verdicts are drawn once, from the plan's gear, before any load is placed. Sharing places loads only where they
//! allow; rules, labels, card, screen and answers all read them, and none draws its own.
//!
//! A node is **refused** if something is wrong with the gear itself, and so is everything downstream: nothing passes
//! gear that must not be used. A receptacle is **bare** if ground-fault protection does not work there and the ground
//! may be wet. No appliance goes in, but a cord or a box may, and its own receptacles are judged separately. If it is
//! bare for lack of a device, or because a bonding plug blinds the device, a cord with a GFCI of its own may go in
//! ([`Verdicts::takes_guarded`]). On damp or dry ground the rules report such a receptacle, but nothing is refused. A
//! camper outlet is bare only if the plan has something else for it.
//!
//! A cord or box that is plugged into nothing is judged in a setup that lacks nothing: what is wrong there is wrong
//! anywhere.
//!
//! A cord or box beyond which no appliance may be plugged in anywhere is of no use and is itself refused, unless
//! something beyond it is bare and takes a cord with protection.

mod grounding;
mod overcurrent;
mod own_limit;
mod spare;

use grounding::BondingSocket;
pub use grounding::{Grounding, Protection, Sure};
pub(crate) use grounding::{bonded_boxes, bonds_at_set, doubtful_boxes};
pub use overcurrent::OnlyIf;
pub(crate) use overcurrent::{Allowance, Overcurrent, protects_wire, stands};
pub(crate) use own_limit::{OwnLimit, own_limit};
pub(crate) use spare::wrong_anywhere;

use crate::plan::{Answer, Cord, Ground, Id, Load, LoadKind, Outlet, Plan};
use crate::supply::{Legs, LimitReason, NodeIx, NodeKind, Supply};
use crate::tables::shape::Configuration::{L5_30, L14_30, N14_50, TT30};
use crate::tables::shape::{Circuit, Receptacle};
use crate::value::{Assumption, Value};

/// What keeps something from being used, gravest first. One rule reports each cause.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Cause {
    /// It was felt hot or soft, or gave a shock: known to be bad wherever it goes.
    FeltHot,
    /// Nothing trips before some part of it is overloaded.
    Unprotected,
    /// It gives 240 V, but its shape promises 120 V or both.
    WrongVolts,
    /// Its neutral may be missing, with 120 V parts beyond it on two legs.
    LostNeutral,
    /// Its ground may not go through.
    NoGround,
    /// It bonds neutral to ground, and so does something else.
    TwoBonds,
    /// It bonds neutral to ground, which belongs at the generator.
    BondInBox,
    /// It is dead, or live at the wrong voltage for its shape.
    NotFed,
    /// The air is too hot for it to carry anything.
    TooHot,
    /// Its ground-fault protection is blind, or may be.
    BlindProtection,
    /// It has no ground-fault protection.
    NoProtection,
}

impl Cause {
    /// Returns the code of the rule that reports it.
    #[must_use]
    pub const fn code(self) -> &'static str {
        match self {
            Self::Unprotected => "OVER001",
            Self::WrongVolts => "FIT006",
            Self::NotFed => "FIT003",
            Self::TooHot => "CORD006",
            Self::FeltHot => "CORD009",
            Self::LostNeutral => "SHOCK011",
            Self::NoGround => "CORD004",
            Self::TwoBonds => "SHOCK004",
            Self::BondInBox => "SHOCK005",
            Self::BlindProtection => "SHOCK013",
            Self::NoProtection => "SHOCK001",
        }
    }
}

/// Why something must not be used.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Refusal {
    /// What is wrong.
    pub cause: Cause,
    /// The node that is wrong: this one, or one upstream.
    pub at: NodeIx,
}

/// Returns the graver of two reasons, the first if equal: a reader of only one should read the worst.
fn graver(one: Option<Refusal>, other: Option<Refusal>) -> Option<Refusal> {
    one.into_iter().chain(other).min_by_key(|refusal| refusal.cause)
}

/// The verdicts on one supply tree.
#[derive(Clone, Debug)]
pub struct Verdicts<'a> {
    supply: &'a Supply,
    /// The joints of neutral and ground.
    pub grounding: Grounding<'a>,
    /// Why each node is refused, if it is.
    refused: Vec<Option<Refusal>>,
    /// The ground-fault protection at each node.
    protection: Vec<Protection>,
    /// Whether each node is inside a camper, or is a camper outlet for which the plan has nothing else.
    for_campers: Vec<bool>,
    /// Whether an appliance at each node could give a shock with nothing tripping.
    bare: Vec<bool>,
    /// What is open at and beyond each node.
    beyond: Vec<Beyond>,
}

/// What is open at a node and at the receptacles beyond it.
#[derive(Clone, Copy, Debug, Default)]
struct Beyond {
    /// Whether an appliance may be plugged in somewhere.
    open: bool,
    /// The gravest reason at the receptacles that only a cord with ground-fault protection may enter; `None` if there
    /// are none.
    guarded: Option<Refusal>,
    /// The gravest reason at the receptacles that take no appliance; `None` if there are none.
    closed: Option<Refusal>,
}

/// Whether the ground is, or may be, wet.
#[must_use]
pub fn may_be_wet(plan: &Plan) -> bool {
    !matches!(plan.site.ground, Answer::Known(Ground::Dry | Ground::Damp))
}

/// Whether a cord's ground does not go through to ends that have one; `None` if unknown.
#[must_use]
pub fn lifts_ground(cord: &Cord) -> Option<bool> {
    if !cord.ends().iter().any(|end| end.0.grounded()) {
        return Some(false);
    }
    if !cord.plug.known()?.0.grounded() {
        return Some(true);
    }
    let count = cord.conductors.known()?;
    Some(*count < cord.conductors_needed())
}

impl<'a> Verdicts<'a> {
    /// Draws the verdicts on a plan's gear.
    #[must_use]
    pub fn of(plan: &Plan, supply: &'a Supply) -> Self {
        let grounding = Grounding::new(plan, supply);
        let count = supply.nodes.len();
        let protection: Vec<Protection> = (0..count).map(|at| grounding.protection(NodeIx(at))).collect();
        let wet = may_be_wet(plan);
        let for_campers: Vec<bool> = (supply.points())
            .map(|(at, node)| match node.kind {
                NodeKind::Receptacle { shape, .. } => supply.inside(at) || for_campers(plan, &node.id, shape),
                _ => false,
            })
            .collect();
        let bare = (0..count)
            .map(|at| {
                let exposed = wet && !protection[at].works() && !for_campers[at];
                exposed && matches!(supply.nodes[at].kind, NodeKind::Receptacle { .. })
            })
            .collect();
        // Parents come first, so what is refused upstream is already known.
        let mut refused: Vec<Option<Refusal>> = vec![None; count];
        for (at, own) in own_causes(plan, supply).into_iter().enumerate() {
            let above = supply.nodes[at].parent.and_then(|parent| refused[parent.0]);
            let own = own.map(|cause| Refusal { cause, at: NodeIx(at) });
            refused[at] = graver(above, own);
        }
        let mut verdicts =
            Self { supply, grounding, refused, protection, for_campers, bare, beyond: vec![Beyond::default(); count] };
        // Children come after their parent, and decide whether it is of any use.
        for at in (0..count).rev().map(NodeIx) {
            verdicts.close(at);
        }
        verdicts
    }

    /// Draws the verdict on a node once everything beyond it has one, and passes it on to the parent.
    fn close(&mut self, at: NodeIx) {
        let node = self.supply.node(at);
        if self.is_receptacle(at) {
            let closed = self.no_loads(at);
            let guarded = self.refused[at.0].is_none() && self.bare[at.0] && self.wants_device(at);
            let here = &mut self.beyond[at.0];
            here.open |= closed.is_none();
            here.guarded = graver(closed.filter(|_| guarded), here.guarded);
            here.closed = graver(closed, here.closed);
        }
        let part = node.kind.is_gear();
        if part && !self.takes_guarded(at) {
            self.refused[at.0] = self.no_loads(at);
        }
        if let Some(parent) = node.parent {
            let here = self.beyond[at.0];
            let above = &mut self.beyond[parent.0];
            above.open |= here.open;
            above.guarded = graver(here.guarded, above.guarded);
            above.closed = graver(here.closed, above.closed);
        }
    }

    /// Returns where neutral and ground are joined once all refused gear is unplugged, as a tester finds it.
    #[must_use]
    pub fn grounding_in_use(&self) -> Grounding<'a> {
        self.grounding.in_use(|at| self.refused(at).is_some())
    }

    /// Returns every unknown that the verdicts took for the unsafe case.
    pub(crate) fn assumed(&self, plan: &Plan) -> Vec<Assumption> {
        let sockets = self.grounding.assumed_sockets();
        let ids = sockets.iter().map(|at| self.supply.node(*at).id.clone());
        let plug = (!sockets.is_empty()).then(|| Assumption {
            field: "generator.bonding_plug_in".to_owned(),
            value: Value::Parts(ids.collect()),
            why: "bonding-plug-in",
        });
        let of_set = plan.generator.outlets.iter();
        let of_set = of_set.map(|outlet| (format!("generator.outlet.{}", outlet.id), outlet));
        let of_boxes = plan.boxes.iter().flat_map(|holder| {
            let field = |outlet: &Outlet| format!("box.{}.outlet.{}", holder.id, outlet.id);
            holder.outlets.iter().map(move |outlet| (field(outlet), outlet))
        });
        let single = of_set.chain(of_boxes).filter(|(_, outlet)| {
            let at = self.supply.receptacle(&outlet.id);
            at.is_some_and(|at| {
                let how = Overcurrent::of(plan, self.supply, at);
                matches!(how, Overcurrent::Single { sure: false, .. })
            })
        });
        let single = single.map(|(field, _)| Assumption {
            field: format!("{field}.sockets"),
            value: Value::Name("1".to_owned()),
            why: "single-socket",
        });
        plug.into_iter().chain(single).collect()
    }

    /// Returns why nothing at all may be used here, if so.
    #[must_use]
    pub fn refused(&self, at: NodeIx) -> Option<Refusal> {
        self.refused[at.0]
    }

    /// Returns why no appliance may be plugged in here, if so. For a cord or box, why none may be plugged in anywhere
    /// beyond it.
    #[must_use]
    pub fn no_loads(&self, at: NodeIx) -> Option<Refusal> {
        if !self.is_receptacle(at) {
            // A receptacle beyond that takes a guarded cord explains why the part takes nothing else.
            let beyond = self.beyond[at.0];
            let dead_end = beyond.guarded.or(beyond.closed).filter(|_| !self.leads_on(at));
            // Trouble upstream has to be put right first.
            return match self.refused(at) {
                Some(above) if above.at != at => Some(above),
                own => graver(own, dead_end),
            };
        }
        self.refused(at).or_else(|| {
            self.bare[at.0].then(|| Refusal {
                cause: match self.protection(at) {
                    Protection::Blind { .. } | Protection::Doubtful { .. } => Cause::BlindProtection,
                    Protection::Works(_) | Protection::None => Cause::NoProtection,
                },
                at,
            })
        })
    }

    /// Whether this is inside a camper, or is a camper outlet for which the plan has nothing else.
    #[must_use]
    pub fn for_campers(&self, at: NodeIx) -> bool {
        self.for_campers[at.0]
    }

    /// Whether an appliance here could give a shock on possibly wet ground, with nothing tripping.
    #[must_use]
    pub fn bare(&self, at: NodeIx) -> bool {
        self.bare[at.0]
    }

    /// Whether an appliance may be plugged in here or somewhere beyond.
    #[must_use]
    pub fn leads_on(&self, at: NodeIx) -> bool {
        self.beyond[at.0].open
    }

    /// Whether no appliance may go in here or anywhere beyond, but a cord with ground-fault protection may, because
    /// nothing else is missing.
    #[must_use]
    pub fn takes_guarded(&self, at: NodeIx) -> bool {
        !self.leads_on(at) && self.beyond[at.0].guarded.is_some()
    }

    /// Returns where to put a cord with ground-fault protection for a node that lacks nothing else: the receptacle
    /// nearest the generator that takes one, so that it protects everything beyond.
    #[must_use]
    pub fn guard_goes(&self, at: NodeIx) -> Option<NodeIx> {
        let takes = |at: NodeIx| self.bare[at.0] && self.wants_device(at) && self.takes_guarded(at);
        let way = self.supply.up(at).map(|(above, _)| above).take_while(|above| self.refused(*above).is_none());
        way.filter(|above| self.is_receptacle(*above) && takes(*above)).last()
    }

    /// Returns the parts plugged in at a receptacle that are of use only behind a GFCI: a cord with one goes in ahead
    /// of them.
    #[must_use]
    pub fn to_go_past(&self, at: NodeIx) -> Vec<NodeIx> {
        let fed = self.supply.fed_from(at).map(|(fed, _)| fed);
        let past = |fed: &NodeIx| self.refused(*fed).is_none() && !self.leads_on(*fed);
        fed.filter(past).collect()
    }

    /// Returns what alone may be plugged in where no appliance may, or where the bonding plug has the only socket: the
    /// cords and boxes there that lead on, and whether the bonding plug is named.
    ///
    /// A bonding plug that may not be there, or that does harm there, is not named as something to plug in. One that is
    /// in the only socket, or beside other named parts, stays in.
    #[must_use]
    pub fn named(&self, at: NodeIx) -> (Vec<NodeIx>, bool) {
        let closed = self.refused(at).is_none() && self.no_loads(at).is_some();
        let fed = self.supply.fed_from(at).map(|(fed, _)| fed);
        let fed: Vec<NodeIx> = fed.filter(|_| closed).collect();
        // Beside a part that leads on, one that only a GFCI cord may go into stays too.
        let stays = |at: &NodeIx| self.leads_on(*at) || self.takes_guarded(*at);
        let only: Vec<NodeIx> =
            if fed.iter().any(|at| self.leads_on(*at)) { fed.into_iter().filter(stays).collect() } else { Vec::new() };
        let plug = self.full_of_bonding_plug(at)
            || closed && (self.bonding_socket(at)).is_some_and(|it| it.belongs || it.stays && !only.is_empty());
        (only, plug)
    }

    /// Whether the generator's bonding plug is in this receptacle and either belongs there or may stay.
    #[must_use]
    pub fn holds_bonding_plug(&self, at: NodeIx) -> bool {
        let socket = self.bonding_socket(at);
        socket.is_some_and(|it| it.belongs || it.stays)
    }

    /// Whether it is there in the only socket, so that nothing else goes in.
    #[must_use]
    pub fn full_of_bonding_plug(&self, at: NodeIx) -> bool {
        let one = |kind: &NodeKind| matches!(kind, NodeKind::Receptacle { sockets: 1, .. });
        one(&self.supply.node(at).kind) && self.holds_bonding_plug(at)
    }

    /// Returns the bonding plug's place here; `None` if cords and boxes take every socket. Rule FIT001 reports a plug
    /// without a socket.
    fn bonding_socket(&self, at: NodeIx) -> Option<BondingSocket> {
        let socket = self.grounding.bonding_socket();
        let socket = socket.filter(|socket| socket.at == at)?;
        let NodeKind::Receptacle { sockets, .. } = self.supply.node(at).kind else {
            return None;
        };
        (self.supply.fed_from(at).count() < usize::from(sockets)).then_some(socket)
    }

    /// Whether a cord needs nothing here but a GFCI of its own: either there is none, or a bonding plug at the
    /// generator, upstream of the cord's GFCI, blinds the one there is. A box with a bond is itself at fault.
    fn wants_device(&self, at: NodeIx) -> bool {
        match self.protection[at.0] {
            Protection::None => true,
            Protection::Blind { joint, .. } | Protection::Doubtful { joint, .. } => self.is_receptacle(joint),
            Protection::Works(_) => false,
        }
    }

    fn is_receptacle(&self, at: NodeIx) -> bool {
        matches!(self.supply.node(at).kind, NodeKind::Receptacle { .. })
    }

    /// Returns the ground-fault protection here.
    #[must_use]
    pub fn protection(&self, at: NodeIx) -> Protection {
        self.protection[at.0]
    }

    /// Whether ground-fault protection may be relied on here.
    #[must_use]
    pub fn protected(&self, at: NodeIx) -> bool {
        self.protection(at).works()
    }
}

/// Whether campers and vehicles plug in here and nothing else in the plan does. Codes ask for no ground-fault
/// protection there, because a camper has its own and may leak more than one allows.
fn for_campers(plan: &Plan, receptacle: &Id, shape: Receptacle) -> bool {
    let mut loads = plan.loads.iter();
    matches!(shape.0, TT30 | N14_50 | L5_30 | L14_30)
        && loads.all(|load| surely_camper(load) || !may_go_in(load, receptacle, shape))
}

/// Whether a load may be plugged in here: the plan puts it here, or nowhere, and its plug fits. A load of unknown plug
/// may go in the outlet where the plan puts it.
fn may_go_in(load: &Load, receptacle: &Id, shape: Receptacle) -> bool {
    let fits = load.plug.known().map(|plug| shape.takes(*plug));
    match &load.on {
        Some(on) => on == receptacle && fits != Some(false),
        None => fits == Some(true),
    }
}

/// Whether a load runs in a camper of the plan, or is a camper by its plug.
pub(crate) fn of_camper(plan: &Plan, load: &Load) -> bool {
    plan.around(load).is_some() || camper(load)
}

/// Whether a load is a camper or a vehicle, judging by its plug: no 120 V appliance has these plugs, and no camper uses
/// 240 V alone.
pub(crate) fn camper(load: &Load) -> bool {
    let plug = load.plug.known();
    plug.is_some_and(|plug| matches!(plug.0, TT30 | N14_50 | L5_30 | L14_30)) && !load.needs_240()
}

/// Whether a load is a camper and nothing known or unknown speaks against it. Appliances have locking plugs too, and
/// may have a camper's. A load that only cooks, heats, lights or keeps somebody well is no camper. A plug with both
/// hots does not rule out 240 V alone, so silence about the voltage counts as unknown.
fn surely_camper(load: &Load) -> bool {
    let plug = load.plug.known().map(|plug| plug.0);
    let uses_fit = match plug {
        Some(TT30) => matches!(load.voltage, Answer::Missing | Answer::Known(_)),
        Some(N14_50) => load.voltage.is_known(),
        _ => false,
    };
    let kind = load.kind.known();
    let kind_fits = matches!(kind, Some(LoadKind::Motor | LoadKind::Electronic));
    camper(load) && uses_fit && kind_fits
}

/// Returns the gravest fault of each node itself, if any. Faults upstream do not count.
fn own_causes(plan: &Plan, supply: &Supply) -> Vec<Option<Cause>> {
    let mut causes: Vec<Option<Cause>> = vec![None; supply.nodes.len()];
    let mut note = |at: NodeIx, cause: Cause| {
        let known = &mut causes[at.0];
        *known = Some(known.map_or(cause, |known| known.min(cause)));
    };
    let boxes = bonded_boxes(plan);
    let bond = if bonds_at_set(plan) + boxes.len() > 1 { Cause::TwoBonds } else { Cause::BondInBox };
    let hot: Vec<&Id> = plan.felt_hot().collect();
    for (ix, node) in supply.points() {
        let part = node.kind.is_gear() || matches!(node.kind, NodeKind::Receptacle { .. });
        if part && hot.contains(&&node.id) {
            note(ix, Cause::FeltHot);
        }
        if matches!(Overcurrent::of(plan, supply, ix), Overcurrent::Unknown | Overcurrent::TooHigh { .. }) {
            note(splitter(supply, ix).unwrap_or(ix), Cause::Unprotected);
        }
        match node.kind {
            NodeKind::Receptacle { .. } if is_trap(supply, ix) => note(ix, Cause::WrongVolts),
            NodeKind::Receptacle { .. } if node.reason == LimitReason::NotFed => {
                note(ix, Cause::NotFed);
            }
            NodeKind::Inlet { .. } if boxes.contains(&node.id) => note(ix, bond),
            NodeKind::Cord { .. } => {
                let Some(cord) = plan.cord(&node.id) else {
                    continue;
                };
                if node.too_hot() {
                    note(ix, Cause::TooHot);
                }
                if lost_neutral(supply, ix, cord) {
                    note(ix, Cause::LostNeutral);
                }
                // Unknown is as bad as known to be missing, on any ground.
                if lifts_ground(cord) != Some(false) {
                    note(ix, Cause::NoGround);
                }
            }
            _ => {}
        }
    }
    causes
}

/// Returns the cord of which this receptacle is an end.
pub(crate) fn splitter(supply: &Supply, ix: NodeIx) -> Option<NodeIx> {
    let node = supply.node(ix);
    node.parent.filter(|parent| {
        matches!(node.kind, NodeKind::Receptacle { .. }) && matches!(supply.node(*parent).kind, NodeKind::Cord { .. })
    })
}

/// Whether a receptacle gives 240 V without neutral although its shape says otherwise.
pub(crate) fn is_trap(supply: &Supply, ix: NodeIx) -> bool {
    let node = supply.node(ix);
    let NodeKind::Receptacle { shape, .. } = node.kind else {
        return false;
    };
    node.legs == Legs::Between
        && shape.0.circuit() != Circuit::TwoLegs
        // Nothing arrives beyond a receptacle that is surely dead. If the voltage is unknown, it may be live.
        && (!supply.volts_known || supply.up(ix).skip(1).all(|(_, above)| {
            !matches!(above.kind, NodeKind::Receptacle { .. })
                || above.reason != LimitReason::NotFed
        }))
}

/// Whether a cord with both legs may lack its neutral while something beyond it needs 120 V.
pub(crate) fn lost_neutral(supply: &Supply, ix: NodeIx, cord: &Cord) -> bool {
    const FOUR: u8 = 4;
    cord.conductors.known().is_none_or(|count| *count < FOUR)
        && cord.circuit() == Circuit::TwoLegsNeutral
        && supply.node(ix).legs == Legs::Both
        && supply.receptacles().any(|(end, _, shape, _)| {
            shape.0.circuit() != Circuit::TwoLegs && supply.up(end).any(|(above, _)| above == ix)
        })
}

#[cfg(test)]
mod tests {
    use crate::plan::Id;
    use crate::report::{Admits, OnlyIf};
    use crate::rules::testing::report;

    /// Returns what each of these takes, and the rule that says why.
    fn admits(edits: &[(&str, &str)], ids: &[&str]) -> Vec<Option<(Admits, Option<&'static str>)>> {
        let report = report(edits);
        let of = |id: &&str| {
            let (part, end) = id.split_once('.').unwrap_or((id, ""));
            let part = Id::new(part).expect("an id");
            let id = end.parse().map_or_else(|_| part.clone(), |end| part.end(end));
            let verdict = report.verdict(&id)?;
            Some((verdict.admits, verdict.why.as_ref().map(|why| why.code)))
        };
        ids.iter().map(of).collect()
    }

    const EVERYTHING: Option<(Admits, Option<&str>)> = Some((Admits::Everything, None));

    /// A cord with two ends in an outlet without a GFCI, on wet ground: all three admit only a cord with one of its
    /// own. On damp ground, or with a GFCI in the outlet, they admit anything that fits.
    #[test]
    fn a_cord_that_leads_to_no_usable_socket_carries_nothing() {
        const SPLITTER: &str = "[[cord]]\nid = \"tents\"\nfrom = \"front\"\nplug = \"5-15P\"\n\
             ends = [\"5-15R\", \"5-15R\"]\nwire = \"14 AWG\"\nconductors = 3\nlength = \"10 ft\"\n\
             outdoor = true\ncoiled = false\n[[box]]";
        let splitter = ("[[box]]", SPLITTER);
        let bare = ("gfci = true # front", "gfci = false");
        let ids = ["front", "tents", "tents.1"];
        let guarded = Some((Admits::Guarded, Some("SHOCK001")));
        assert_eq!(admits(&[splitter, bare], &ids), [guarded; 3]);
        assert_eq!(admits(&[splitter], &ids), [EVERYTHING; 3]);
        let damp = ("ground = \"wet\"", "ground = \"damp\"");
        assert_eq!(admits(&[splitter, bare, damp], &ids), [EVERYTHING; 3]);
        // With a GFCI in the cord, its ends may be used, and the outlet for that cord alone.
        let guard = SPLITTER.replace("coiled = false", "coiled = false\ngfci = true");
        let named = Some((Admits::Named, Some("SHOCK001")));
        assert_eq!(admits(&[("[[box]]", &guard), bare], &ids), [named, EVERYTHING, EVERYTHING]);
    }

    /// A compressor with a locking plug, in an outlet that campers and boxes also use, without a GFCI on wet ground:
    /// refused as at any other outlet. A camper there is not refused, nor a cord to a box, nor the compressor on damp
    /// ground or with a GFCI.
    #[test]
    fn an_outlet_for_campers_takes_no_appliance_without_a_gfci() {
        let compressor = [
            ("from = \"twist\"\nplug", "plug"),
            ("on = \"right\" # fan", "on = \"front\""),
            ("kind = \"heater\" # kettle", "kind = \"motor\""),
            ("plug = \"5-15P\" # kettle", "plug = \"L5-30P\""),
        ];
        let at_twist = ("on = \"left\" # kettle", "on = \"twist\"");
        let nowhere = ("on = \"left\" # kettle", "");
        let twist = |more: &[(&str, &str)]| admits(&[&compressor[..], more].concat(), &["twist"])[0];
        let guarded = Some((Admits::Guarded, Some("SHOCK001")));
        assert_eq!(twist(&[at_twist]), guarded);
        assert_eq!(twist(&[nowhere]), guarded);
        let damp = ("ground = \"wet\"", "ground = \"damp\"");
        assert_eq!(twist(&[at_twist, damp]), EVERYTHING);
        assert_eq!(twist(&[at_twist, ("gfci = false # twist", "gfci = true")]), EVERYTHING);
        let camper = [
            ("plug = \"5-15P\" # kettle", "plug = \"TT-30P\""),
            ("shape = \"L5-30R\"\nbreaker", "shape = \"TT-30R\"\nbreaker"),
        ];
        let camper = [&compressor[..3], &camper, &[at_twist]].concat();
        assert_eq!(admits(&camper, &["twist"]), [EVERYTHING]);
        assert_eq!(admits(&[], &["twist"]), [EVERYTHING]);
    }

    /// A box with both receptacles behind breakers too big for them is refused as a whole; with only one such
    /// receptacle it is not.
    #[test]
    fn a_box_of_which_nothing_may_be_used_is_not_to_be_used() {
        let left = ("breaker = \"15 A\" # left", "breaker = \"30 A\"");
        let right = ("breaker = \"15 A\" # right", "breaker = \"30 A\"");
        let nothing = Some((Admits::Nothing, Some("OVER001")));
        let ids = ["long", "box", "left", "right"];
        assert_eq!(admits(&[left, right], &ids)[1..], [nothing; 3]);
        assert_eq!(admits(&[left], &ids), [EVERYTHING, EVERYTHING, nothing, EVERYTHING]);
    }

    /// On wet ground, one receptacle of a box has too big a breaker and the other no GFCI: the box gives the second
    /// reason, because a cord with a GFCI helps there. Near miss: the other has a GFCI.
    #[test]
    fn what_takes_a_guarded_cord_says_why() {
        let left = ("breaker = \"15 A\" # left", "breaker = \"30 A\"");
        let right = ("gfci = true # right", "gfci = false");
        let nothing = Some((Admits::Nothing, Some("OVER001")));
        let guarded = Some((Admits::Guarded, Some("SHOCK001")));
        let ids = ["box", "left", "right"];
        assert_eq!(admits(&[left, right], &ids), [guarded, nothing, guarded]);
        assert_eq!(admits(&[left], &ids), [EVERYTHING, nothing, EVERYTHING]);
    }

    /// With the bonding plug in an outlet's only socket nothing else goes in, on any ground. Near miss: there is a
    /// second socket.
    #[test]
    fn what_holds_the_bonding_plug_takes_nothing_else() {
        let twist = |sockets: u8, ground: &'static str| {
            let plug = ("bonding_plug = false", "bonding_plug = true\nbonding_plug_in = \"front\"");
            let one = format!("gfci = false\nsockets = {sockets}");
            let floating = ("neutral = \"bonded\"", "neutral = \"floating\"");
            let ground = ("ground = \"wet\"", ground);
            admits(&[plug, floating, ground, ("gfci = true # front", one.as_str())], &["front"])[0]
                .map(|(admits, _)| admits)
        };
        for ground in ["ground = \"dry\"", "ground = \"damp\"", "ground = \"wet\""] {
            assert_eq!(twist(1, ground), Some(Admits::Named), "{ground}");
        }
        assert_eq!(twist(2, "ground = \"damp\""), Some(Admits::Everything));
    }

    /// A box whose bond is unknown is refused like one with a bond. A listed one is only reported.
    #[test]
    fn a_box_that_nobody_knows_is_as_bad_as_a_bonded_one() {
        let bond = |bond, listed| admits(&[("bond = false", bond), ("listed = true", listed)], &["box", "left"]);
        let nothing = [Some((Admits::Nothing, Some("SHOCK004"))); 2];
        for bonded in ["bond = true", "bond = \"unknown\"", ""] {
            for listed in ["listed = false", "listed = \"unknown\"", ""] {
                assert_eq!(bond(bonded, listed), nothing, "{bonded} {listed}");
            }
        }
        assert_eq!(bond("bond = false", "listed = false"), [EVERYTHING; 2]);
        assert_eq!(bond("bond = \"unknown\"", "listed = true"), [EVERYTHING; 2]);
    }

    /// A box with a bond, which is a warning. One of its receptacles has too big a breaker, which is a danger.
    #[test]
    fn the_gravest_reason_is_told() {
        let bond = ("bond = false", "bond = true");
        let left = ("breaker = \"15 A\" # left", "breaker = \"30 A\"");
        let nothing = |code| Some((Admits::Nothing, Some(code)));
        let ids = ["box", "left", "right"];
        assert_eq!(admits(&[bond], &ids), [nothing("SHOCK004"); 3]);
        let graver = [nothing("OVER001"), nothing("OVER001"), nothing("SHOCK004")];
        assert_eq!(admits(&[bond, left], &ids), graver);
    }

    /// If the generator's voltage is unknown, a 240 V shape is not surely fed.
    #[test]
    fn what_may_lack_240_volts_is_not_to_be_used() {
        let volts = |volts| {
            let shape = ("shape = \"5-20R\"\nbreaker = \"20 A\" # front", "shape = \"6-20R\"\nbreaker = \"20 A\"");
            admits(&[("voltage = \"120 V\"", volts), shape], &["front", "left"])
        };
        let nothing = Some((Admits::Nothing, Some("FIT003")));
        assert_eq!(volts("voltage = \"unknown\""), [nothing, EVERYTHING]);
        assert_eq!(volts("voltage = \"120 V\""), [nothing, EVERYTHING]);
        assert_eq!(volts("voltage = \"120/240 V\""), [EVERYTHING; 2]);
    }

    /// A second box in a single receptacle, with a cord in it, has no socket. The same box in the bin is not judged.
    #[test]
    fn what_found_no_socket_is_not_to_be_used_nor_what_hangs_on_it() {
        const SECOND: &str = "[[cord]]\nid = \"third\"\nfrom = \"there\"\nplug = \"5-20P\"\nends = [\"5-20R\"]\n\
             wire = \"12 AWG\"\nconductors = 3\n[[box]]\nid = \"second\"\nfrom = \"long\"\ninlet = \"L5-30P\"\nlisted = true\nbond = false\n\
             [[box.outlet]]\nid = \"there\"\nshape = \"5-20R\"\nbreaker = \"20 A\"\ngfci = true\n\
             [[load]]\nid = \"kettle\"";
        let ids = ["box", "second", "third"];
        let second = ("[[load]]\nid = \"kettle\"", SECOND);
        let nothing = Some((Admits::Nothing, Some("FIT001")));
        assert_eq!(admits(&[second], &ids), [EVERYTHING, nothing, nothing]);
        let in_the_bin = SECOND.replace("from = \"long\"\n", "");
        assert_eq!(admits(&[(second.0, &in_the_bin)], &ids), [EVERYTHING, None, None]);
    }

    /// With a bonding plug behind the outlet's GFCI, a cord with a GFCI of its own may go in, and once it is in, the
    /// plug is named beside it. A box with a bond is itself at fault.
    #[test]
    fn a_cord_with_a_gfci_may_go_beside_a_bonding_plug() {
        let floating = ("neutral = \"bonded\"", "neutral = \"floating\"");
        let plug = ("bonding_plug = false", "bonding_plug = true\nbonding_plug_in = \"front\"");
        assert_eq!(admits(&[floating, plug], &["front"]), [Some((Admits::Guarded, Some("SHOCK013")))]);
        let cord = "[[cord]]\nid = \"safe\"\nfrom = \"front\"\nplug = \"5-15P\"\nends = [\"5-15R\"]\n\
             wire = \"14 AWG\"\nconductors = 3\nlength = \"2 ft\"\noutdoor = true\ngfci = true\n[[box]]";
        for (plug, named) in [(vec![floating, plug], true), (vec![], false)] {
            let report = report(&[plug, vec![("[[box]]", cord)]].concat());
            let front = Id::new("front").expect("an id");
            let verdict = report.verdict(&front).expect("a verdict");
            assert_eq!(verdict.bonding_plug, named);
            assert_eq!(verdict.admits == Admits::Named, named);
        }
        let behind = ("gfci = false # twist", "gfci = true");
        let bond = ("bond = false", "bond = true");
        let nothing = Some((Admits::Nothing, Some("SHOCK005")));
        assert_eq!(admits(&[floating, behind, bond], &["left"]), [nothing]);
    }

    /// Parts that may be used under a condition: an adapter from 50 A to one camper, and one from 30 A to 15 A on a
    /// generator that gives no more than 15 A. Near misses: a breaker of the adapter's size, and a cord set that a code
    /// allows behind 20 A.
    #[test]
    fn what_must_hold_for_a_part_is_in_its_verdict() {
        let only_if = |edits: &[(&str, &str)]| {
            let verdict = report(edits).verdict(&Id::new("long").expect("an id")).cloned();
            verdict.expect("a verdict").only_if
        };
        let amps = crate::quantity::Current::from_milliamps(30_000);
        let camper = [
            ("voltage = \"120 V\"", "voltage = \"120/240 V\""),
            ("shape = \"L5-30R\"\nbreaker = \"30 A\" # twist", "shape = \"14-50R\"\nbreaker = \"50 A\" # twist"),
            ("plug = \"L5-30P\" # long\nends = [\"L5-30R\"] # long", "plug = \"14-50P\"\nends = [\"TT-30R\"] # long"),
            ("from = \"long\"\ninlet", "inlet"),
            ("plug = \"5-15P\" # kettle\non = \"left\" # kettle", "plug = \"TT-30P\"\non = \"long\" # kettle"),
            ("on = \"right\" # fan", "on = \"front\""),
        ];
        assert_eq!(only_if(&camper), Some(OnlyIf::CamperMain { amps }));
        let of_its_size = ("breaker = \"50 A\" # twist", "breaker = \"30 A\"");
        assert_eq!(only_if(&[&camper[..], &[of_its_size]].concat()), None);
        let small = [
            ("inverter = false", "inverter = true"),
            ("rated = \"3600 W\"", "rated = \"1800 W\""),
            ("peak = \"4500 W\"", "peak = \"2400 W\""),
            ("from = \"long\"\ninlet", "inlet"),
            ("ends = [\"L5-30R\"] # long", "ends = [\"5-15R\"]"),
        ];
        assert_eq!(only_if(&small), Some(OnlyIf::ThisGenerator));
        // Coiled, it carries less than this generator gives.
        let coiled = ("coiled = false # long", "coiled = true");
        assert_eq!(only_if(&[&small[..], &[coiled]].concat()), None);
        let twenty = ("from = \"twist\"\nplug = \"L5-30P\" # long", "from = \"front\"\nplug = \"5-15P\"");
        assert_eq!(only_if(&[&small[..], &[twenty]].concat()), None);
        // On a generator that gives more, it is not to be used at all.
        assert_eq!(only_if(&small[3..]), None);
    }

    /// In the bin, a cord without a ground wire and a box whose own plug nothing protects are still refused, with the
    /// reason. One that is merely unplugged is not.
    #[test]
    fn what_is_wrong_anywhere_is_not_to_be_used_anywhere() {
        let no_cord = ("from = \"twist\"\nplug", "plug");
        let no_box = ("from = \"long\"\ninlet", "inlet");
        let nothing = |code| Some((Admits::Nothing, Some(code)));
        let ids = ["long", "box"];
        let two_wires = ("conductors = 3", "conductors = 2");
        assert_eq!(admits(&[no_cord], &ids), [None, None]);
        assert_eq!(admits(&[no_cord, two_wires], &ids), [nothing("CORD004"), None]);
        let left = ("breaker = \"15 A\" # left", "breaker = \"30 A\"");
        let right = ("breaker = \"15 A\" # right", "breaker = \"30 A\"");
        assert_eq!(admits(&[no_box, left], &ids)[1..], [None]);
        assert_eq!(admits(&[no_box, left, right], &ids)[1..], [nothing("OVER001")]);
        let report = report(&[no_box, left, right]);
        let why = report.refused(&Id::new("box").expect("an id")).expect("refused");
        assert!(report.told_by(why).is_some());
        assert!(report.findings.iter().all(|it| it.code != "OVER001"));
    }
}
