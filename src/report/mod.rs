//! The whole result as plain data: codes and exact numbers, never sentences.
//!
//! The fields here are a contract with other programs. Everything is in a fixed order, so that
//! the same plan gives the same report byte for byte.

mod drops;
mod energy;
mod farther;
mod figures;
mod fuel;
mod limits;
pub mod noise;
mod proofs;
mod protection;
pub mod sums;
mod times;
mod usable;
mod volts;

pub use farther::{Farther, Place};
pub(crate) use limits::{Feed, Shared, limits};
pub use proofs::{Button, Lamp, Lamps, Proof, Reads};
pub(crate) use usable::flow;
pub use volts::{Longest, Reading, StepVolts, Volts, Worst};

pub use crate::loads::LoadFacts;
pub use crate::sharing::{Effect, Placed, Repair, Sharing, Start, StartStep, StartVerdict, Tally, Unplaced};
pub use crate::value::{Assumption, Finding, Fix, Signal, Value, Values};
pub use crate::verdict::{OnlyIf, Sure};

use std::collections::BTreeSet;

use serde::{Serialize, Serializer};

use crate::plan::{Id, Leg, Span};
use crate::quantity::{Current, Energy, Hours, Percent, Power, Resistance, SoundLevel, Voltage, Volume};
use crate::supply::LimitReason;
use crate::tables::shape::{Plug, Receptacle};

/// The version of the report format.
pub const FORMAT: u32 = 3;

/// What sets a limit.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct SetBy {
    /// The part.
    pub id: Id,
    /// Why that part.
    #[serde(serialize_with = "reason_code")]
    pub reason: LimitReason,
    /// Whether something trips when it is passed.
    pub enforced: bool,
    /// Whether the figure is less than the part is rated for, because it holds for hours.
    pub share: bool,
}

/// What acts past a limit.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case", tag = "when")]
pub enum Acts {
    /// A breaker, or the generator's own shutdown, at the limit itself, or past what a breaker was once seen to trip
    /// at, before any part is overloaded.
    AtLimit {
        /// The outlet whose breaker it is, or the generator.
        id: Id,
    },
    /// The same of the main breaker of a camper that nobody has read: that it is there is assumed.
    Assumed {
        /// The camper.
        id: Id,
    },
    /// The same, but only at more than some part stands: in between nothing does for sure.
    Above {
        /// The outlet whose breaker it is, or the generator.
        id: Id,
        /// From where on.
        amps: Current,
    },
    /// Nothing acts at all.
    Never,
}

/// Whether ground-fault protection works at a point.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum ShockState {
    /// It does.
    Works,
    /// A device is there, and neutral and ground are joined beyond it: it sees no fault.
    Blind,
    /// A device is there, and nobody knows if they are joined beyond it: taken for blind.
    Doubtful,
    /// No device is there, or none that anybody knows of.
    None,
}

/// Ground-fault protection at a point.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Shock {
    /// Whether it works.
    pub state: ShockState,
    /// The part with the nearest device, working or not.
    pub by: Option<Id>,
    /// The part in which neutral and ground are joined beyond it, or may be.
    pub joint: Option<Id>,
}

/// What may be plugged in at a point.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Admits {
    /// Whatever fits, within its limit.
    Everything,
    /// Only what [`Verdict::only`] names.
    Named,
    /// No appliance: only a cord with ground-fault protection built in, of which the end alone is used. Of a
    /// cord or box, the same of its receptacles.
    Guarded,
    /// Nothing.
    #[default]
    Nothing,
}

/// Where a cord with ground-fault protection built in goes.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct GfciCord {
    /// The receptacle.
    pub into: Id,
    /// The cords and boxes that come out of it first, and go into that cord.
    pub ahead_of: Vec<Id>,
}

/// Why not everything may be plugged in somewhere.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Because {
    /// The rule that tells of it.
    pub code: &'static str,
    /// The part that is wrong: this one, or one that it hangs on.
    pub at: Id,
    /// The remedy, a key of that rule's.
    pub lifted_by: Option<&'static str>,
}

/// The verdict on one receptacle, cord or box that is connected, that the plan plugs in where it cannot be, or
/// that must not be used although it is plugged into nothing.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize)]
pub struct Verdict {
    /// The part.
    pub id: Id,
    /// What may be plugged in.
    pub admits: Admits,
    /// What, where only this may be: cords and boxes whose own receptacles have verdicts of their own.
    pub only: Vec<Id>,
    /// Whether the generator's bonding plug is in it, or is assumed to be, and is to stay.
    pub bonding_plug: bool,
    /// Why not everything.
    pub why: Option<Because>,
    /// Where a cord with ground-fault protection built in goes so that it may be used, if that is all it lacks.
    pub gfci_cord: Option<GfciCord>,
    /// What must hold beyond the plan, for it to be used at all.
    pub only_if: Option<OnlyIf>,
    /// The loads to plug in here: those placed here that may run at all.
    pub loads: Vec<Id>,
    /// Whether not all of these may run at once.
    pub one_at_a_time: bool,
    /// Where not all of these may run at once, but two of them may: the sets that may not. Empty otherwise.
    pub not_together: Vec<Vec<Id>>,
    /// What was only assumed on the way here, as fields of `assumed`.
    pub assumed: Vec<String>,
}

#[allow(clippy::trivially_copy_pass_by_ref)]
fn reason_code<S: Serializer>(reason: &LimitReason, serializer: S) -> Result<S::Ok, S::Error> {
    serializer.serialize_str(reason.code())
}

pub(crate) fn leg_names<S: Serializer>(legs: &&'static [Leg], serializer: S) -> Result<S::Ok, S::Error> {
    serializer.collect_seq(legs.iter().map(|leg| match leg {
        Leg::A => "A",
        Leg::B => "B",
    }))
}

#[allow(clippy::trivially_copy_pass_by_ref)]
fn text<S: Serializer>(span: &Span, serializer: S) -> Result<S::Ok, S::Error> {
    serializer.collect_str(span)
}

#[allow(clippy::trivially_copy_pass_by_ref)]
fn shape_name<S: Serializer>(shape: &Receptacle, serializer: S) -> Result<S::Ok, S::Error> {
    serializer.collect_str(shape)
}

/// What one receptacle can carry, or all that runs in a camper. These numbers are the ones the rules used and the
/// ones the label shows.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Limit {
    /// The receptacle, or the camper.
    pub id: Id,
    /// Whether it is no receptacle, but what runs in a camper.
    pub inside: bool,
    /// Its configuration; of a camper that of the receptacle which its plug is made for.
    #[serde(serialize_with = "shape_name")]
    pub shape: Receptacle,
    /// Nominal volts for a single load here.
    pub volts: Voltage,
    /// What is marked on it: its breaker's marking where known, else its configuration's rating.
    pub marked_amps: Current,
    /// For three hours or more.
    pub continuous_amps: Current,
    /// For less.
    pub short_amps: Current,
    /// `continuous_amps` at nominal volts and unity power factor.
    pub continuous_watts: Power,
    /// `short_amps` likewise.
    pub short_watts: Power,
    /// What sets `continuous_amps`; where several are equal, the one nearest the generator that
    /// acts at it, else the nearest the receptacle.
    pub continuous_set_by: SetBy,
    /// What sets `short_amps`, likewise.
    pub set_by: SetBy,
    /// What acts past `short_amps`.
    pub acts: Acts,
    /// The legs that it is fed from.
    #[serde(serialize_with = "leg_names")]
    pub legs: &'static [Leg],
    /// Whether ground-fault protection works here.
    pub gfci: bool,
    /// How that is.
    pub shock: Shock,
    /// From the generator's outlet to this receptacle, ids of parts.
    pub path: Vec<Id>,
}

impl Limit {
    /// The shape to look for: a receptacle's own, or that of a camper's plug.
    #[must_use]
    pub fn told_shape(&self) -> String {
        if self.inside { Plug(self.shape.0).to_string() } else { self.shape.to_string() }
    }
}

/// Power that can and cannot be used.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize)]
pub struct Usable {
    /// Rated power after derating.
    pub rated_watts: Power,
    /// Peak power after derating.
    pub peak_watts: Power,
    /// What can be had through the outlets in use and the gear plugged into them.
    pub reachable_watts: Power,
    /// The rest of the rated power.
    pub stranded_watts: Power,
}

/// Voltage drop at one place of use.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Drop {
    /// The load. A load that found no place has no entry.
    pub at: Id,
    /// The receptacle it is measured at.
    pub receptacle: Id,
    /// Volts lost while everything that may run with it runs.
    pub volts_running: Voltage,
    /// The same as a share of nominal.
    pub percent_running: Percent,
    /// Volts lost in the moment this load starts.
    pub volts_starting: Voltage,
    /// Volts left at the receptacle while running.
    pub volts_left: Voltage,
    /// What runs then, this load too: of all that may run together what costs it the most volts.
    pub beside: Vec<Id>,
    /// The cords on the way to it, from the generator on. Volts lost while running are their amps
    /// times their ohms, added up. Empty where the line cannot carry all that.
    pub cords: Vec<Through>,
}

/// What passes a cord.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Through {
    /// The cord.
    pub cord: Id,
    /// Amperes, at the volts that are left; of two legs half of both.
    pub amps: Current,
    /// Its resistance there and back.
    pub ohms: Resistance,
}

/// How one part of the supply is protected from too much current.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Protection {
    /// The receptacle, cord, box or load it is of.
    pub id: Id,
    /// What it is: `receptacle`, `cord`, `inlet`, `wiring`, or `appliance-cord` for a load's own.
    pub part: &'static str,
    /// What it is rated for in air of 30 °C, laid out. None where a listing answers for it.
    pub rating: Option<Current>,
    /// The breaker that protects it, as marked, if one is known.
    pub breaker: Option<Current>,
    /// The first outlet behind that breaker.
    pub breaker_at: Option<Id>,
    /// Why that is enough: `breaker`, no larger than the rating; `generator`, which stops by itself before
    /// it gives more than the part stands; by an allowance of the code, `cord-set`, `receptacles` or
    /// `appliance-cord`; by the `listing` of a box; `camper-main`, the main breaker past it of the camper that it is
    /// for, and by nothing else; or `nothing`.
    pub by: &'static str,
}

/// Energy and fuel over a day.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize)]
pub struct EnergyUse {
    /// Energy of the placed loads in their hours.
    pub watt_hours_per_day: Option<Energy>,
    /// The hour of the day with the greatest demand, and that demand.
    pub peak_hour: Option<PeakHour>,
    /// The least time on one tank: at the greatest demand of any minute, but no more than the set is
    /// rated for.
    pub hours_per_tank: Option<Hours>,
    /// Fuel for the day.
    pub fuel_per_day: Option<Volume>,
    /// What each placed load takes in a day, in the order of the loads.
    pub loads: Vec<LoadEnergy>,
    /// How long anything runs in a day.
    pub hours_per_day: Option<Hours>,
    /// The mean demand while anything runs.
    pub mean_watts: Option<Power>,
    /// That greatest demand, as a share of rated power; no more than all of it.
    pub busiest_load: Option<Percent>,
    /// The load that asks most of it; of several alike, as `lamp.2`.
    pub busiest_by: Option<Id>,
    /// What each demand of the day burns, the greatest first.
    pub burns: Vec<Burn>,
    /// How much of a tank the day burns, of each set.
    pub tanks_per_day: Option<Percent>,
    /// Of all stretches between two chances to refuel the one that burns most of what may be used.
    pub stretch: Option<Stretch>,
}

/// What one demand burns in a day.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Burn {
    /// What all sets together are asked for.
    pub watts: Power,
    /// For how long in a day.
    pub hours: Hours,
    /// Time on one tank at it.
    pub hours_per_tank: Hours,
    /// The part of a tank that it burns.
    pub burns: Percent,
}

/// A time without a chance to refuel: by day, with the engine off and cool, and not beside the night of
/// what somebody's health depends on.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Stretch {
    /// From when to when the engine burns in it; from one time to the same, all day and on and on.
    #[serde(serialize_with = "text")]
    pub span: Span,
    /// How long that is.
    pub hours: Hours,
    /// The part of a tank that it burns.
    pub burns: Percent,
    /// The part of a tank that may be used: less where somebody's health depends on it.
    pub usable: Percent,
    /// The loads in it that somebody's health depends on.
    pub life: Vec<Id>,
}

impl Stretch {
    /// Whether one tank does not last.
    #[must_use]
    pub fn is_too_long(&self) -> bool {
        self.burns > self.usable
    }
}

/// The energy of one load in a day.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct LoadEnergy {
    /// The load.
    pub load: Id,
    /// How long it runs.
    pub hours: Hours,
    /// Its energy.
    pub watt_hours: Energy,
}

/// The hour of greatest demand.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct PeakHour {
    /// Hour of the day, 0 to 23.
    pub hour: u8,
    /// Demand of all placed loads on in that hour.
    pub watts: Power,
}

/// Sound at the places that matter.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize)]
pub struct NoiseAt {
    /// At the sleepers.
    pub at_sleepers_dba: Option<SoundLevel>,
    /// At the published measuring distance of 50 ft.
    pub at_50ft_dba: Option<SoundLevel>,
    /// How much louder the set is taken to be at full load. The two figures above are for the load
    /// that its level was measured at, the two below for full load.
    pub more_at_full_load: Option<SoundLevel>,
    /// At the sleepers.
    pub at_sleepers_full_dba: Option<SoundLevel>,
    /// At 50 ft.
    pub at_50ft_full_dba: Option<SoundLevel>,
    /// How much louder the set is taken to be at the busiest minute of this plan, at full load where
    /// nobody knows what part of its power that is. The two figures below are for it.
    pub more_at_busiest: Option<SoundLevel>,
    /// At the sleepers.
    pub at_sleepers_busiest_dba: Option<SoundLevel>,
    /// At 50 ft.
    pub at_50ft_busiest_dba: Option<SoundLevel>,
}

/// What is read to find something out.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Marking {
    /// The face of receptacles: their buttons, breakers and holes.
    Face,
    /// What the maker wrote on a thing about what it gives or takes.
    Nameplate,
    /// What the manual says of the neutral, and what is plugged in for it.
    Neutral,
    /// A mark of a testing laboratory, and what whoever made it knows.
    Maker,
    /// What is printed along a cord.
    Print,
    /// The package of what is not bought yet.
    Package,
    /// Something else.
    Other,
}

/// What one reading of one thing finds out: unknowns on which a danger or a warning rests.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Look {
    /// The part or load that is looked at; none for what is found out about the place and its people.
    pub at: Option<Id>,
    /// What is read.
    pub read: Marking,
    /// What that answers, as fields of `assumed`.
    pub fields: Vec<String>,
    /// How many dangers go away once this and all ahead of it have the best answers, those already told left out.
    pub dangers: usize,
    /// How many warnings.
    pub warnings: usize,
    /// Of what is not bought yet: what has to be on its package.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub buy: Vec<Property>,
}

impl Look {
    /// Of which nobody has worked out yet what it clears.
    pub(crate) const fn new(at: Option<Id>, read: Marking, fields: Vec<String>) -> Self {
        Self { at, read, fields, dangers: 0, warnings: 0, buy: Vec::new() }
    }
}

/// What has to be on a package.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Property {
    /// Of what: a key of the plan. Of a length, `length` at most, `reach` at least, `long` as somebody chose it.
    pub key: &'static str,
    /// This, or better.
    pub value: Value,
}

/// What to do next.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum Next {
    /// Look at this, by its place in [`Figures::looks`].
    Look(usize),
    /// Clear this, by its place in [`Figures::troubles`].
    Trouble(usize),
}

/// One thing to do.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Trouble {
    /// The gravest signal of its findings.
    pub signal: Signal,
    /// The parts and loads that it is about, those of the gravest finding first.
    pub about: Vec<Id>,
    /// Its findings, as places in the report's list of them, the gravest first.
    pub findings: Vec<usize>,
    /// Whether it is there only for want of what is not bought yet, and goes away with what the list says to buy
    /// ([`Look::buy`]): that list tells it, and nothing else does.
    #[serde(skip_serializing_if = "std::ops::Not::not")]
    pub to_buy: bool,
}

/// The numbers, and what follows from the findings.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize)]
pub struct Figures {
    /// One for each receptacle that is connected, in the order of the supply tree. One that
    /// cannot work with its feed carries nothing, and its reason is `not-fed`: it is live all the same.
    pub limits: Vec<Limit>,
    /// One for each receptacle, cord and box that is connected, in that order; then for what is not, and must not
    /// be used.
    pub verdicts: Vec<Verdict>,
    /// What is wrong with cords and boxes that are plugged into nothing, wherever somebody plugs them in. Nothing
    /// else counts these.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub spare: Vec<Finding>,
    /// The findings by what there is to do about them, worst first.
    pub troubles: Vec<Trouble>,
    /// What protects each part of the supply from too much current.
    pub protection: Vec<Protection>,
    /// The loads, one entry for each of a count.
    pub loads: Vec<LoadFacts>,
    /// Power that can and cannot be used.
    pub usable: Usable,
    /// Voltage drop at each load.
    pub drops: Vec<Drop>,
    /// What each would lose by itself that is too much for the generator. The rules tell of it: a larger generator
    /// makes its cords no better. It is on no print and in no JSON, for it may not run.
    #[serde(skip)]
    pub(crate) drops_alone: Vec<Drop>,
    /// Volts at each step of switching on, the worst of them, and how long each cord might be.
    pub volts: Volts,
    /// What each test of a receptacle shows here, and what that proves.
    pub tests: Vec<Proof>,
    /// Who plugs in where.
    pub sharing: Sharing,
    /// Energy and fuel.
    pub energy: EnergyUse,
    /// Sound.
    pub noise: NoiseAt,
    /// Unknowns taken for the unsafe case.
    pub assumed: Vec<Assumption>,
    /// The fields of `assumed` of which another answer would change a danger, a warning or a limit. Only
    /// where that was asked for ([`crate::judge::build`]).
    pub matters: Vec<String>,
    /// What to look at, in the order in which it clears most. Only where that was asked for.
    pub looks: Vec<Look>,
    /// The first things to do, at most three, in this order: what kills unseen, then looking, then the rest,
    /// worst first.
    pub next: Vec<Next>,
}

/// The whole result.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Report {
    /// The version of this format.
    pub format: u32,
    /// What the rules found, worst first.
    pub findings: Vec<Finding>,
    /// The numbers.
    #[serde(flatten)]
    pub figures: Figures,
}

/// The finding of a rule that is about a part; where none names it, that about the device and the joint that
/// leave it without protection, with others in use there.
pub(crate) fn telling<'a>(findings: &'a [Finding], limits: &[Limit], code: &str, at: &Id) -> Option<&'a Finding> {
    let of_rule = || findings.iter().filter(|it| it.code == code);
    let shock = limits.iter().find(|limit| limit.id == *at);
    let names = |finding: &Finding, value: &str, part: &Option<Id>| {
        part.is_some() && finding.values.get(value) == part.as_ref().map(Value::from).as_ref()
    };
    of_rule().find(|it| it.about.contains(at)).or_else(|| {
        let shock = &shock?.shock;
        of_rule().find(|it| names(it, "device", &shock.by) && names(it, "joint", &shock.joint))
    })
}

impl Report {
    /// The rules whose findings name parts that have nothing to do with each other: what is wrong with
    /// each of them is wrong with it alone, and is mended there.
    pub(crate) const ONE_BY_ONE: [&str; 6] = ["SHOCK001", "SHOCK013", "CORD002", "CORD004", "SHOCK006", "HEALTH002"];

    /// The verdict on a part; none for what is not connected.
    #[must_use]
    pub fn verdict(&self, id: &Id) -> Option<&Verdict> {
        self.figures.verdicts.iter().find(|it| it.id == *id)
    }

    /// Why this part must not be used at all, if so.
    #[must_use]
    pub fn refused(&self, id: &Id) -> Option<&Because> {
        let verdict = self.verdict(id)?;
        let why = verdict.why.as_ref()?;
        (verdict.admits == Admits::Nothing).then_some(why)
    }

    /// Why nothing may be plugged in here but a cord with ground-fault protection built in, if so.
    #[must_use]
    pub fn guarded(&self, id: &Id) -> Option<&Because> {
        let verdict = self.verdict(id)?;
        let why = verdict.why.as_ref()?;
        (verdict.admits == Admits::Guarded && !self.goes_in(verdict)).then_some(why)
    }

    /// Whether this is a box or cord that goes in as it is, since only its own outlets lack a GFCI, and the cord that
    /// brings one goes in there.
    fn goes_in(&self, verdict: &Verdict) -> bool {
        let receptacle = || self.figures.limits.iter().any(|it| it.id == verdict.id);
        verdict.admits == Admits::Guarded && verdict.gfci_cord.is_none() && !receptacle()
    }

    /// Whether that cord goes in nearer the generator than here, so that it protects this as well.
    #[must_use]
    pub fn guarded_ahead(&self, id: &Id) -> bool {
        let cord = self.verdict(id).and_then(|verdict| verdict.gfci_cord.as_ref());
        cord.is_some_and(|cord| cord.into != *id)
    }

    /// Whether something that the plan has may be plugged in here: only then has it amps to tell.
    #[must_use]
    pub fn usable(&self, id: &Id) -> bool {
        self.verdict(id).is_none_or(|it| match it.admits {
            Admits::Everything | Admits::Named => true,
            Admits::Guarded => self.goes_in(it),
            Admits::Nothing => false,
        })
    }

    /// Whether nothing but the generator's bonding plug goes in here: it draws nothing, so that no amps are told.
    #[must_use]
    pub fn only_bonding_plug(&self, id: &Id) -> bool {
        let verdict = self.verdict(id);
        verdict.is_some_and(|it| it.admits == Admits::Named && it.only.is_empty())
    }

    /// Whether a receptacle is one that the plan uses for nothing and at which no GFCI works, though nothing forbids to use
    /// it: nobody is invited to plug in there.
    #[must_use]
    pub fn idle(&self, id: &Id) -> bool {
        let open = |it: &Verdict| it.admits == Admits::Everything && it.loads.is_empty() && !it.bonding_plug;
        let limits = &self.figures.limits;
        let works = |limit: &Limit| limit.shock.state == ShockState::Works;
        let feeds = |beyond: &Limit| {
            let mut way = beyond.path.iter().skip_while(|part| *part != id).skip(1);
            beyond.id != *id && way.any(|part| self.usable(part))
        };
        self.verdict(id).is_some_and(open)
            && limits.iter().any(|limit| limit.id == *id && !works(limit))
            && !limits.iter().any(feeds)
    }

    /// The finding in whose words a reason is told: of those of the same part that the same deed clears the gravest, and
    /// of equals what is known ahead of what is a guess.
    #[must_use]
    pub fn told_by(&self, why: &Because) -> Option<&Finding> {
        let of = |findings| telling(findings, &self.figures.limits, why.code, &why.at);
        let (own, with) = if let Some(own) = of(&self.findings) {
            let mut troubles = self.figures.troubles.iter();
            let trouble = troubles.find(|it| self.findings_of(it).any(|of| of == own));
            let with = trouble.into_iter().flat_map(|it| self.findings_of(it));
            (own, with.collect())
        } else {
            let spare = &self.figures.spare;
            (of(spare)?, spare.iter().collect::<Vec<_>>())
        };
        let of_part = with.into_iter().filter(|it| it.about.contains(&why.at));
        std::iter::once(own).chain(of_part).min_by_key(|it| (it.signal, it.guessed()))
    }

    /// The loads that a life depends on.
    #[must_use]
    pub fn lives(&self) -> Vec<Id> {
        let loads = self.figures.loads.iter().filter(|load| load.life());
        loads.map(|load| load.id.clone()).collect()
    }

    /// How grave the trouble is that a finding belongs to. One of a part that is plugged into nothing belongs to none.
    #[must_use]
    pub fn signal_of(&self, finding: &Finding) -> Signal {
        let troubles = self.figures.troubles.iter();
        let mut of_it = troubles.filter(|it| self.findings_of(it).any(|of| of == finding));
        of_it.next().map_or(finding.signal, |it| it.signal)
    }

    /// The troubles that are told: all but those of which the list of what to buy tells.
    pub fn troubles(&self) -> impl Iterator<Item = &Trouble> {
        self.figures.troubles.iter().filter(|trouble| !trouble.to_buy)
    }

    /// How many of them have this signal.
    #[must_use]
    pub fn count(&self, signal: Signal) -> usize {
        self.troubles().filter(|trouble| trouble.signal == signal).count()
    }

    /// The findings of a trouble, the gravest first.
    pub fn findings_of<'a>(&'a self, trouble: &'a Trouble) -> impl Iterator<Item = &'a Finding> {
        trouble.findings.iter().map(|at| &self.findings[*at])
    }

    /// Their codes, each once.
    #[must_use]
    pub fn codes_of(&self, trouble: &Trouble) -> String {
        let codes: BTreeSet<&str> = self.findings_of(trouble).map(|it| it.code).collect();
        Vec::from_iter(codes).join(" ")
    }

    /// The report as JSON, laid out for reading.
    ///
    /// # Errors
    /// Never for a report that was built; the serializer cannot promise it.
    pub fn to_json(&self) -> serde_json::Result<String> {
        serde_json::to_string_pretty(self)
    }

    /// The worst signal of all findings.
    #[must_use]
    pub fn worst(&self) -> Option<Signal> {
        self.findings.iter().map(|finding| finding.signal).min()
    }
}
