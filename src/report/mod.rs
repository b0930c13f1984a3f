//! The whole result as plain data: codes and exact numbers, never sentences.
//!
//! The fields are a contract with other programs. Everything is in a fixed order, so that the same plan gives the same
//! report byte for byte.

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
pub(crate) use fuel::assumed_hours;
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
    /// Why that part sets it.
    #[serde(serialize_with = "reason_code")]
    pub reason: LimitReason,
    /// Whether something trips when the limit is exceeded.
    pub enforced: bool,
    /// Whether the figure is less than the part's rating because it holds for hours.
    pub share: bool,
}

/// What acts when a limit is exceeded.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case", tag = "when")]
pub enum Acts {
    /// A breaker or the generator's own shutdown acts at the limit itself, or above the current at which a breaker was
    /// once seen to trip, before any part is overloaded.
    AtLimit {
        /// The first outlet behind the breaker, or the generator.
        id: Id,
    },
    /// The same, by a camper's main breaker that nobody has read: it is assumed to be there.
    Assumed {
        /// The camper.
        id: Id,
    },
    /// A breaker or the shutdown acts, but only above what some part can stand. In between, nothing surely does.
    Above {
        /// The first outlet behind the breaker, or the generator.
        id: Id,
        /// The current above which it acts.
        amps: Current,
    },
    /// Nothing acts.
    Never,
}

/// Whether ground-fault protection works at a point.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum ShockState {
    /// It works.
    Works,
    /// There is a device, but neutral and ground are joined downstream of it, so it sees no fault.
    Blind,
    /// There is a device, but nobody knows whether they are joined downstream of it. It counts as blind.
    Doubtful,
    /// No device is there, or none is known.
    None,
}

/// Ground-fault protection at a point.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Shock {
    /// Whether it works.
    pub state: ShockState,
    /// The part with the nearest device, working or not.
    pub by: Option<Id>,
    /// The part where neutral and ground are joined downstream of it, or may be.
    pub joint: Option<Id>,
}

/// What may be plugged in at a point.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Admits {
    /// Whatever fits, within the limit.
    Everything,
    /// Only what [`Verdict::only`] names.
    Named,
    /// No appliance, only a cord with a built-in GFCI, and only the end of that cord is used. For a cord or box, the
    /// same goes for its receptacles.
    Guarded,
    /// Nothing.
    #[default]
    Nothing,
}

/// Where a cord with a built-in GFCI goes.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct GfciCord {
    /// The receptacle.
    pub into: Id,
    /// The cords and boxes plugged in there, which come out first and go into that cord.
    pub ahead_of: Vec<Id>,
}

/// Why something may not be plugged in at a point.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Because {
    /// The code of the rule that explains it.
    pub code: &'static str,
    /// The faulty part: this one, or one upstream.
    pub at: Id,
    /// The key of that rule's remedy.
    pub lifted_by: Option<&'static str>,
}

/// The verdict on one receptacle, cord or box. Given for parts that are connected, that the plan plugs in where they
/// cannot go, or that must not be used although they are not plugged in.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize)]
pub struct Verdict {
    /// The part.
    pub id: Id,
    /// What may be plugged in.
    pub admits: Admits,
    /// The cords and boxes that may be plugged in where nothing else may. Their own receptacles have their own
    /// verdicts.
    pub only: Vec<Id>,
    /// Whether the generator's bonding plug is, or is assumed to be, in this receptacle, and is to stay.
    pub bonding_plug: bool,
    /// Why it does not admit everything.
    pub why: Option<Because>,
    /// Where a cord with a built-in GFCI makes it usable, if a GFCI is all that it lacks.
    pub gfci_cord: Option<GfciCord>,
    /// What must hold beyond what the plan shows for it to be used at all.
    pub only_if: Option<OnlyIf>,
    /// The loads to plug in here: those placed here that may run at all.
    pub loads: Vec<Id>,
    /// Whether these may not all run at once.
    pub one_at_a_time: bool,
    /// The sets of these that may not run together. Empty if they all may, or if no two of them may.
    pub not_together: Vec<Vec<Id>>,
    /// What was assumed on the way here, as fields of `assumed`.
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

/// What one receptacle, or the inside of a camper, can carry. The rules use these numbers, and the label shows them.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Limit {
    /// The receptacle or the camper.
    pub id: Id,
    /// Whether this is the inside of a camper.
    pub inside: bool,
    /// Its configuration. For a camper, that of the receptacle its plug is made for.
    #[serde(serialize_with = "shape_name")]
    pub shape: Receptacle,
    /// The nominal voltage for a single load here.
    pub volts: Voltage,
    /// The marked current: that of its breaker where known, else its configuration's rating.
    pub marked_amps: Current,
    /// The current for three hours or more.
    pub continuous_amps: Current,
    /// The current for less than three hours.
    pub short_amps: Current,
    /// `continuous_amps` at nominal voltage and unity power factor.
    pub continuous_watts: Power,
    /// `short_amps` likewise.
    pub short_watts: Power,
    /// What sets `continuous_amps`. Where several parts are equal, the one nearest the generator that acts at the
    /// limit, or else the one nearest the receptacle.
    pub continuous_set_by: SetBy,
    /// What sets `short_amps`, likewise.
    pub set_by: SetBy,
    /// What acts when `short_amps` is exceeded.
    pub acts: Acts,
    /// The legs it is fed from.
    #[serde(serialize_with = "leg_names")]
    pub legs: &'static [Leg],
    /// Whether ground-fault protection works here.
    pub gfci: bool,
    /// How ground-fault protection works here, or why not.
    pub shock: Shock,
    /// The ids of the parts from the generator's outlet to this receptacle.
    pub path: Vec<Id>,
}

impl Limit {
    /// Returns the shape to look for: that of the receptacle, or of a camper's plug.
    #[must_use]
    pub fn told_shape(&self) -> String {
        if self.inside { Plug(self.shape.0).to_string() } else { self.shape.to_string() }
    }
}

/// The power that can and cannot be used.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize)]
pub struct Usable {
    /// Rated power after derating.
    pub rated_watts: Power,
    /// Peak power after derating.
    pub peak_watts: Power,
    /// The power available through the outlets in use and the gear plugged into them.
    pub reachable_watts: Power,
    /// The rest of the rated power.
    pub stranded_watts: Power,
}

/// The voltage drop at one load.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Drop {
    /// The load. A load without a place has no entry.
    pub at: Id,
    /// The receptacle where it is measured.
    pub receptacle: Id,
    /// Volts lost while everything that may run with the load runs.
    pub volts_running: Voltage,
    /// The same as a share of the nominal voltage.
    pub percent_running: Percent,
    /// Volts lost at the moment the load starts.
    pub volts_starting: Voltage,
    /// Volts left at the receptacle while running.
    pub volts_left: Voltage,
    /// The set running then, including this load: the one of all that may run together that costs it the most volts.
    pub beside: Vec<Id>,
    /// The cords on the way to it, from the generator on. Volts lost while running are the sum of their amps times
    /// ohms. Empty where the line cannot carry the set.
    pub cords: Vec<Through>,
}

/// The current through a cord.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Through {
    /// The cord.
    pub cord: Id,
    /// The current at the settled voltage. On two legs, half the sum of both.
    pub amps: Current,
    /// Its resistance out and back.
    pub ohms: Resistance,
}

/// How one part of the supply is protected from too much current.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Protection {
    /// The id of the receptacle, cord, box or load.
    pub id: Id,
    /// The kind of part: `receptacle`, `cord`, `inlet`, `wiring`, or `appliance-cord` for a load's own cord.
    pub part: &'static str,
    /// Its rating in air of 30 °C, laid out straight. `None` where a listing covers it.
    pub rating: Option<Current>,
    /// The marking of the breaker that protects it, if one is known.
    pub breaker: Option<Current>,
    /// The first outlet behind that breaker.
    pub breaker_at: Option<Id>,
    /// Why that is enough. `breaker`: no larger than the rating. `generator`: it stops by itself before it gives more
    /// than the part stands. `cord-set`, `receptacles`, `appliance-cord`: an allowance of the code. `listing`: that of
    /// its box. `camper-main`: only the main breaker of the camper that it is for, downstream. `single`: a lone
    /// receptacle on a larger breaker, kept to its own rating. `nothing`: it is not protected.
    pub by: &'static str,
}

/// Energy and fuel over a day.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize)]
pub struct EnergyUse {
    /// The energy of the placed loads in their hours.
    pub watt_hours_per_day: Option<Energy>,
    /// The hour of the day with the greatest demand, and that demand.
    pub peak_hour: Option<PeakHour>,
    /// The shortest time on one tank: at the greatest demand of any minute, capped at rated power.
    pub hours_per_tank: Option<Hours>,
    /// The fuel for the day.
    pub fuel_per_day: Option<Volume>,
    /// The energy of each placed load in a day, in the order of the loads.
    pub loads: Vec<LoadEnergy>,
    /// How long anything runs in a day.
    pub hours_per_day: Option<Hours>,
    /// The mean demand while anything runs.
    pub mean_watts: Option<Power>,
    /// The greatest demand as a share of rated power, at most all of it.
    pub busiest_load: Option<Percent>,
    /// The load with the largest part in it, numbered as in `lamp.2` if there are several.
    pub busiest_by: Option<Id>,
    /// What each demand of the day burns, greatest first.
    pub burns: Vec<Burn>,
    /// How much of a tank each generator burns in a day.
    pub tanks_per_day: Option<Percent>,
    /// The stretch between two chances to refuel that burns the most of what may be used.
    pub stretch: Option<Stretch>,
}

/// The fuel that one demand burns in a day.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Burn {
    /// The demand on all generators together.
    pub watts: Power,
    /// How long it lasts in a day.
    pub hours: Hours,
    /// Time on one tank at this demand.
    pub hours_per_tank: Hours,
    /// The share of a tank that it burns.
    pub burns: Percent,
}

/// A time without a chance to refuel. Such a chance is by day, with the engine off and cool, and not close to the night
/// of a load that somebody's health depends on.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Stretch {
    /// The time during which the engine burns fuel in it. Equal ends mean around the clock, day after day.
    #[serde(serialize_with = "text")]
    pub span: Span,
    /// How long the span is.
    pub hours: Hours,
    /// The share of a tank that it burns.
    pub burns: Percent,
    /// The share of a tank that may be used. Less where somebody's health depends on it.
    pub usable: Percent,
    /// The loads running in it that somebody's health depends on.
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
    /// The id of the load.
    pub load: Id,
    /// How long it runs.
    pub hours: Hours,
    /// Its energy.
    pub watt_hours: Energy,
}

/// The hour of greatest demand.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct PeakHour {
    /// The hour of the day, 0 to 23.
    pub hour: u8,
    /// The greatest demand of any minute in that hour.
    pub watts: Power,
}

/// Sound levels at the places that matter.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize)]
pub struct NoiseAt {
    /// The level where people sleep.
    pub at_sleepers_dba: Option<SoundLevel>,
    /// The level at 50 ft, the published measuring distance.
    pub at_50ft_dba: Option<SoundLevel>,
    /// How much louder the generator is assumed to be at full load. The two figures above are for the load at which its
    /// level was measured, the two below for full load.
    pub more_at_full_load: Option<SoundLevel>,
    /// The level where people sleep, at full load.
    pub at_sleepers_full_dba: Option<SoundLevel>,
    /// The level at 50 ft, at full load.
    pub at_50ft_full_dba: Option<SoundLevel>,
    /// How much louder the generator is assumed to be at the busiest minute of this plan. Full load is assumed where
    /// the share of its power is unknown. The two figures below are for that minute.
    pub more_at_busiest: Option<SoundLevel>,
    /// The level where people sleep, at the busiest minute.
    pub at_sleepers_busiest_dba: Option<SoundLevel>,
    /// The level at 50 ft, at the busiest minute.
    pub at_50ft_busiest_dba: Option<SoundLevel>,
}

/// What to read to find something out.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Marking {
    /// The face of a receptacle: its buttons, breakers and slots.
    Face,
    /// What the maker wrote on a thing about what it gives or takes.
    Nameplate,
    /// What the manual says about the neutral, and any plug that bonds it.
    Neutral,
    /// A testing laboratory's mark, and what the maker knows.
    Maker,
    /// The print along a cord.
    Print,
    /// The package of something not bought yet.
    Package,
    /// Anything else.
    Other,
}

/// What one look at one thing settles: unknowns that a danger or warning rests on.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Look {
    /// The part or load to look at. `None` for questions about the place and its people.
    pub at: Option<Id>,
    /// What to read there.
    pub read: Marking,
    /// What it answers, as fields of `assumed`.
    pub fields: Vec<String>,
    /// How many more dangers go away once this look and all before it get the best answers.
    pub dangers: usize,
    /// The same for warnings.
    pub warnings: usize,
    /// The findings that go away then, as indices into `findings`: only the gravest of them.
    pub gone: Vec<usize>,
    /// How grave they still are then. `None` if they go away entirely.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub left: Option<Signal>,
    /// What has to be found for that: of the fields above, those that matter for it.
    pub find: Vec<Found>,
    /// What the cord can carry then, if that is more than is assumed now.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub carries: Option<Current>,
    /// What the package must say, for something not bought yet.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub buy: Vec<Property>,
}

impl Look {
    /// Creates a look whose effect has not been worked out yet.
    pub(crate) const fn new(at: Option<Id>, read: Marking, fields: Vec<String>) -> Self {
        Self {
            at,
            read,
            fields,
            dangers: 0,
            warnings: 0,
            gone: Vec::new(),
            left: None,
            find: Vec::new(),
            carries: None,
            buy: Vec::new(),
        }
    }

    /// Whether to buy another kind of thing, since this one is a danger even as the best of its kind.
    pub(crate) fn wrong_anyway(&self) -> bool {
        self.buy.iter().any(|it| it.key == Property::ANOTHER)
    }
}

/// What a look has to find.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Found {
    /// The field of `assumed`.
    pub field: String,
    /// The value that is enough, if there is more to it than yes or no.
    pub value: Option<Value>,
}

/// Something that a package must say.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Property {
    /// The key of the plan field. For a length: `length` at most, `reach` at least, `long` as chosen.
    pub key: &'static str,
    /// The value required, or better.
    pub value: Value,
}

impl Property {
    /// The key of [`Look::wrong_anyway`]. It is alone in its list.
    pub(crate) const ANOTHER: &str = "another";
}

/// A thing to do next.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum Next {
    /// Look at something, by index in [`Figures::looks`].
    Look(usize),
    /// Clear something, by index in [`Figures::troubles`].
    Trouble(usize),
}

/// One thing to do, and the findings it clears.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Trouble {
    /// The most severe signal of its findings.
    pub signal: Signal,
    /// The parts and loads it is about, those of the most severe finding first.
    pub about: Vec<Id>,
    /// Its findings, as indices into [`Report::findings`], most severe first.
    pub findings: Vec<usize>,
}

/// The numbers, and what follows from the findings.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize)]
pub struct Figures {
    /// One for each connected receptacle, in tree order. One that cannot work with its feed carries nothing and has the
    /// reason `not-fed`, but is live all the same.
    pub limits: Vec<Limit>,
    /// One for each connected receptacle, cord and box, in tree order, then one for each part that is not connected and
    /// must not be used.
    pub verdicts: Vec<Verdict>,
    /// What is wrong with cords and boxes that are not plugged in, wherever they might be plugged in. Nothing else
    /// counts these.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub spare: Vec<Finding>,
    /// The findings grouped by what clears them, worst first.
    pub troubles: Vec<Trouble>,
    /// What protects each part of the supply from too much current.
    pub protection: Vec<Protection>,
    /// The loads, with one entry for each unit.
    pub loads: Vec<LoadFacts>,
    /// The power that can and cannot be used.
    pub usable: Usable,
    /// The voltage drop at each load.
    pub drops: Vec<Drop>,
    /// What each load that is too much for the generator would lose by itself. For the rules only, since a larger
    /// generator makes its cords no better. Not in prints or JSON, because the load may not run.
    #[serde(skip)]
    pub(crate) drops_alone: Vec<Drop>,
    /// Volts at each step of switching on, the worst cases, and how long each cord might be.
    pub volts: Volts,
    /// What each test of a receptacle shows here, and what that proves.
    pub tests: Vec<Proof>,
    /// Where each load plugs in.
    pub sharing: Sharing,
    /// What a life depends on, of which the rules found several too much together: of these nobody says which one to
    /// rely on.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub lives_too_many: Vec<Id>,
    /// Energy and fuel.
    pub energy: EnergyUse,
    /// Sound.
    pub noise: NoiseAt,
    /// Unknowns that were assumed to be the unsafe case.
    pub assumed: Vec<Assumption>,
    /// The fields of `assumed` for which another answer would change a danger, a warning or a limit. Filled only on
    /// request (see [`crate::judge::build`]).
    pub matters: Vec<String>,
    /// What to look at, ordered by how much it clears. Filled only on request.
    pub looks: Vec<Look>,
    /// The first things to do, at most three: silent killers first, then a look, then the rest, worst first.
    pub next: Vec<Next>,
}

/// The whole result.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Report {
    /// The version of the format.
    pub format: u32,
    /// What the rules found, worst first.
    pub findings: Vec<Finding>,
    /// The numbers.
    #[serde(flatten)]
    pub figures: Figures,
}

/// Returns the finding of a rule about a part. Where none names the part, the one about the device and the joint that
/// leave it without protection, whose findings name other parts in use there.
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
    /// The rules whose findings list unrelated parts: each part is wrong by itself, and is fixed by itself.
    pub(crate) const ONE_BY_ONE: [&str; 6] = ["SHOCK001", "SHOCK013", "CORD002", "CORD004", "SHOCK006", "HEALTH002"];

    /// Returns the verdict on a part. `None` if it has none, as for spare gear with nothing wrong.
    #[must_use]
    pub fn verdict(&self, id: &Id) -> Option<&Verdict> {
        self.figures.verdicts.iter().find(|it| it.id == *id)
    }

    /// Returns why a part must not be used at all, if so.
    #[must_use]
    pub fn refused(&self, id: &Id) -> Option<&Because> {
        let verdict = self.verdict(id)?;
        let why = verdict.why.as_ref()?;
        (verdict.admits == Admits::Nothing).then_some(why)
    }

    /// Returns why nothing but a cord with a built-in GFCI may be plugged in here, if so.
    #[must_use]
    pub fn guarded(&self, id: &Id) -> Option<&Because> {
        let verdict = self.verdict(id)?;
        let why = verdict.why.as_ref()?;
        (verdict.admits == Admits::Guarded && !self.goes_in(verdict)).then_some(why)
    }

    /// Whether this is a cord or box that is plugged in as it is, because only its own receptacles lack a GFCI, and the
    /// GFCI cord goes in there.
    fn goes_in(&self, verdict: &Verdict) -> bool {
        let receptacle = || self.figures.limits.iter().any(|it| it.id == verdict.id);
        verdict.admits == Admits::Guarded && verdict.gfci_cord.is_none() && !receptacle()
    }

    /// Whether the GFCI cord goes in upstream of this part, and so protects it as well.
    #[must_use]
    pub fn guarded_ahead(&self, id: &Id) -> bool {
        let cord = self.verdict(id).and_then(|verdict| verdict.gfci_cord.as_ref());
        cord.is_some_and(|cord| cord.into != *id)
    }

    /// Whether something in the plan may be plugged in here. Only then is there a current to show.
    #[must_use]
    pub fn usable(&self, id: &Id) -> bool {
        self.verdict(id).is_none_or(|it| match it.admits {
            Admits::Everything | Admits::Named => true,
            Admits::Guarded => self.goes_in(it),
            Admits::Nothing => false,
        })
    }

    /// Whether only the generator's bonding plug goes in here. It draws nothing, so no current is shown.
    #[must_use]
    pub fn only_bonding_plug(&self, id: &Id) -> bool {
        let verdict = self.verdict(id);
        verdict.is_some_and(|it| it.admits == Admits::Named && it.only.is_empty())
    }

    /// Whether the plan uses this receptacle for nothing, although nothing forbids its use. Nobody is invited to plug in
    /// here. In a plan without loads, that holds only where no GFCI works.
    #[must_use]
    pub fn idle(&self, id: &Id) -> bool {
        let beyond = |limit: &Limit| limit.id != *id && limit.path.contains(id) && self.used(limit);
        let limits = &self.figures.limits;
        limits.iter().any(|limit| limit.id == *id && self.spare(limit)) && !limits.iter().any(beyond)
    }

    /// Whether the plan has something for an idle receptacle: a load that must not run there, or a part past which there
    /// is nothing but such loads and what must not be used.
    #[must_use]
    pub fn is_taken(&self, id: &Id) -> bool {
        let Figures { sharing, limits, .. } = &self.figures;
        let placed = |at: &Id| sharing.placed.iter().any(|it| it.at == *at);
        let beyond: Vec<&Limit> = limits.iter().filter(|it| it.id != *id && it.path.contains(id)).collect();
        let ways: BTreeSet<&Id> = beyond.iter().flat_map(|it| it.path.iter().filter(|part| **part != it.id)).collect();
        let lost = |it: &&Limit| ways.contains(&it.id) || !self.usable(&it.id) || placed(&it.id);
        placed(id) || !beyond.is_empty() && beyond.iter().all(lost)
    }

    /// Whether this cord or box, or anything past it, has a receptacle that is there to be used. Nobody is sent to plug
    /// in what leads only to what must not be used, or to what the plan uses for nothing.
    #[must_use]
    pub fn leads_on(&self, part: &Id) -> bool {
        self.figures.limits.iter().any(|limit| limit.path.contains(part) && self.used(limit))
    }

    fn used(&self, limit: &Limit) -> bool {
        self.usable(&limit.id) && !self.spare(limit)
    }

    /// Whether anything may be plugged in here, and the plan has nothing for it.
    fn spare(&self, limit: &Limit) -> bool {
        let open = |it: &Verdict| it.admits == Admits::Everything && it.loads.is_empty() && !it.bonding_plug;
        let invites = limit.shock.state == ShockState::Works && self.figures.loads.is_empty();
        self.verdict(&limit.id).is_some_and(open) && !invites
    }

    /// Returns the finding whose words explain a reason. Of the findings about the same part that are cleared together,
    /// the most severe, and among equals one that is certain before a guess.
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

    /// Returns the loads that a life depends on, or might.
    #[must_use]
    pub fn lives(&self) -> Vec<Id> {
        let loads = self.figures.loads.iter().filter(|load| load.life());
        loads.map(|load| load.id.clone()).collect()
    }

    /// Returns the severity of the trouble that a finding belongs to, or its own if it belongs to none, as those about
    /// unplugged parts do.
    #[must_use]
    pub fn signal_of(&self, finding: &Finding) -> Signal {
        let troubles = self.figures.troubles.iter();
        let mut of_it = troubles.filter(|it| self.findings_of(it).any(|of| of == finding));
        of_it.next().map_or(finding.signal, |it| it.signal)
    }

    /// Returns how many troubles have this signal.
    #[must_use]
    pub fn count(&self, signal: Signal) -> usize {
        self.figures.troubles.iter().filter(|trouble| trouble.signal == signal).count()
    }

    /// Returns the findings of a trouble, most severe first.
    pub fn findings_of<'a>(&'a self, trouble: &'a Trouble) -> impl Iterator<Item = &'a Finding> {
        trouble.findings.iter().map(|at| &self.findings[*at])
    }

    /// Returns the codes of a trouble's findings, each once, in order.
    #[must_use]
    pub fn codes_of(&self, trouble: &Trouble) -> String {
        let codes: BTreeSet<&str> = self.findings_of(trouble).map(|it| it.code).collect();
        Vec::from_iter(codes).join(" ")
    }

    /// Serializes the report as indented JSON.
    ///
    /// # Errors
    /// Never for a report that [`crate::judge::build`] returned. The serializer's signature cannot say so.
    pub fn to_json(&self) -> serde_json::Result<String> {
        serde_json::to_string_pretty(self)
    }

    /// Returns the worst signal of all findings. `None` without findings.
    #[must_use]
    pub fn worst(&self) -> Option<Signal> {
        self.findings.iter().map(|finding| finding.signal).min()
    }
}
