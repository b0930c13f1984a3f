//! The plan as plain data, field for field the TOML format of the plan file, version 1.

use std::sync::Arc;

use super::letters::can_print;
use crate::quantity::{Current, Hours, Length, Percent, Power, Ratio, SoundLevel, Temperature, Voltage, Volume, Wire};
use crate::tables::shape::{Circuit, Plug, Receptacle};

/// The version of the plan format written by this program.
pub const FORMAT: i64 = 1;

/// The answer to a question that a beginner may be unable to answer.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum Answer<T> {
    /// The plan does not say.
    #[default]
    Missing,
    /// The user was asked and does not know.
    Unknown,
    /// The user's answer.
    Known(T),
}

impl<T> Answer<T> {
    /// Returns the value, if it is known.
    pub const fn known(&self) -> Option<&T> {
        match self {
            Self::Known(value) => Some(value),
            Self::Missing | Self::Unknown => None,
        }
    }

    /// Whether the value is known.
    pub const fn is_known(&self) -> bool {
        matches!(self, Self::Known(_))
    }
}

impl<T: Copy> Answer<T> {
    /// Returns the value, or `cautious` if it is not known. A caller that uses the fallback owes the report an entry in
    /// its `assumed` list.
    pub fn or(self, cautious: T) -> T {
        match self {
            Self::Known(value) => value,
            Self::Missing | Self::Unknown => cautious,
        }
    }
}

/// A choice among a few values, each with a word that is the same in plan files, drafts and reports.
pub trait Choice: Copy + PartialEq + std::fmt::Debug + 'static {
    /// All values with their words, in the order in which they are shown.
    const ALL: &'static [(Self, &'static str)];

    /// Returns the word used in plan files and reports.
    #[must_use]
    fn word(self) -> &'static str {
        let row = Self::ALL.iter().find(|(choice, _)| *choice == self);
        row.map_or("", |(_, word)| word)
    }

    /// Returns the word used in questions, which is part of a message key: `120-240` for "120/240 V".
    #[must_use]
    fn pick(self) -> String {
        let bare = self.word().trim_end_matches(" V");
        bare.replace('/', "-").to_lowercase()
    }

    /// Returns the value with this word, in either form.
    #[must_use]
    fn named(word: &str) -> Option<Self> {
        let row = Self::ALL.iter().find(|(choice, own)| *own == word || choice.pick() == word);
        row.map(|(choice, _)| *choice)
    }
}

/// The id of a part or load: letters, digits, `-` and `_`, no dot. An end of a cord with several ends has a dot and a
/// number after the cord's id, as in `long.2`.
///
/// Shared, because a report and all its trials name the same parts thousands of times. The default stands for an id
/// that is not known yet, and no finished plan contains it.
#[derive(Clone, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Id(Arc<str>);

impl serde::Serialize for Id {
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.serialize_str(&self.0)
    }
}

impl Id {
    /// The longest id allowed, in characters.
    pub const LONGEST: usize = 40;

    /// The id of the generator itself in reports. Nothing else may have it.
    pub const SET: &str = "generator";

    /// Returns the id with this text: 1 to [`Self::LONGEST`] letters or digits of any script that prints, `-` or `_`,
    /// starting with a letter or digit. `None` for any other text.
    #[must_use]
    pub fn new(text: &str) -> Option<Self> {
        let fine = text.chars().all(|c| c.is_alphanumeric() && can_print(c) || matches!(c, '-' | '_'));
        let starts = text.chars().next().is_some_and(char::is_alphanumeric);
        (fine && starts && text.chars().count() <= Self::LONGEST).then(|| Self(text.into()))
    }

    /// Returns the id of an end of this cord, counting from one.
    #[must_use]
    pub fn end(&self, number: usize) -> Self {
        Self(format!("{}.{number}", self.0).into())
    }

    /// Parses a reference as written in `from` or `on`: an id, or an id with an end number.
    #[must_use]
    pub fn reference(text: &str) -> Option<Self> {
        match text.rsplit_once('.') {
            Some((base, number)) => {
                let number: usize = number.parse().ok().filter(|n| *n > 0)?;
                Self::new(base).map(|base| base.end(number))
            }
            None => Self::new(text),
        }
    }

    /// Returns the id as text.
    #[must_use]
    pub fn as_str(&self) -> &str {
        &self.0
    }
}

impl AsRef<str> for Id {
    fn as_ref(&self) -> &str {
        &self.0
    }
}

impl std::fmt::Display for Id {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.pad(&self.0)
    }
}

/// The longest name allowed, in characters: what fits on a label in legible type.
pub const LONGEST_NAME: usize = 60;

/// Whether a character is invisible or affects the characters around it: a control character, a line or paragraph
/// separator, or one that changes the direction of writing. Such a character could make one name or figure look like
/// another.
#[must_use]
pub fn hides(c: char) -> bool {
    c.is_control()
        || matches!(c,
            '\u{61c}' | '\u{200e}' | '\u{200f}' | '\u{2028}'..='\u{202e}' | '\u{2066}'..='\u{2069}')
}

/// Returns a name as plans keep it: trimmed, on one line, not empty, at most [`LONGEST_NAME`] characters long and
/// without characters that [`hides`] rejects or that no print has a letter for.
#[must_use]
pub fn name(text: &str) -> Option<String> {
    let text = text.trim();
    let fine = !text.is_empty() && text.chars().count() <= LONGEST_NAME && text.chars().all(can_print);
    fine.then(|| text.to_owned())
}

/// The codes, voltages and tables that apply. Independent of language.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum Region {
    /// 120 V and 120/240 V at 60 Hz, North American receptacles.
    #[default]
    NorthAmerica,
}

impl Choice for Region {
    const ALL: &'static [(Self, &'static str)] = &[(Self::NorthAmerica, "north-america")];
}

impl Region {
    /// Returns the nominal voltage of a 120 V circuit in this region.
    #[must_use]
    pub const fn line_to_neutral(self) -> Voltage {
        match self {
            Self::NorthAmerica => Voltage::from_millivolts(120_000),
        }
    }
}

/// A cord or box of unknown shape. What is unknown is given as table and key of the plan file.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) struct UnknownShape<'a> {
    /// The cord or box.
    pub part: &'a Id,
    /// Its plug or inlet, if unknown.
    pub plug: Option<(&'static str, &'static str)>,
    /// Its receptacles, if unknown.
    pub outlets: Option<(&'static str, &'static str)>,
}

/// A complete plan.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Plan {
    /// The rules and tables to use.
    pub region: Region,
    /// The language of output and prints, as a tag such as `es` or `fr-CA`.
    pub language: Option<String>,
    /// Where the generator stands, and the conditions there.
    pub site: Site,
    /// The generator.
    pub generator: Generator,
    /// Cords, adapters and splitters: anything with one plug and at least one receptacle.
    pub cords: Vec<Cord>,
    /// Distribution boxes.
    pub boxes: Vec<DistributionBox>,
    /// What is to run.
    pub loads: Vec<Load>,
}

/// Where the generator stands and who is near.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Site {
    /// The name of the occasion, printed on every sheet.
    pub name: String,
    /// How wet the ground and the gear are.
    pub ground: Answer<Ground>,
    /// The distance from the generator to the nearest tent, vehicle or building with people in it.
    pub sleepers_at: Answer<Length>,
    /// The height above sea level.
    pub altitude: Answer<Length>,
    /// The hottest air expected around the generator.
    pub air: Answer<Temperature>,
    /// The hours at which the camp must be quiet. An empty list means none.
    pub quiet_hours: Answer<Vec<Span>>,
    /// Whether everyone sleeps near a working carbon monoxide alarm.
    pub co_alarm: Answer<bool>,
    /// Whether somebody plans to feed a building's wiring.
    pub feeds_building: Answer<bool>,
    /// What is above and around the generator while it runs.
    pub stands: Answer<Stands>,
    /// Whether anybody sleeps where exhaust may reach them. Missing means yes; a market or a work party says no.
    pub people_sleep: Answer<bool>,
}

impl Site {
    /// Whether anybody sleeps here, unless the plan says that nobody does.
    #[must_use]
    pub fn sleeps(&self) -> bool {
        self.people_sleep != Answer::Known(false)
    }
}

/// What is above and around the generator while it runs.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Stands {
    /// In the open, with nothing near it on any side and nothing above it.
    Open,
    /// Under a roof on posts, open on all sides and well above it.
    Roof,
    /// Under a tarp or cover, an awning or a pop-up canopy, or close to a wall.
    Covered,
    /// In a tent, vehicle, trailer, shed, garage, porch, box or pit.
    Enclosed,
}

impl Choice for Stands {
    const ALL: &'static [(Self, &'static str)] =
        &[(Self::Open, "open"), (Self::Roof, "roof"), (Self::Covered, "covered"), (Self::Enclosed, "enclosed")];
}

/// How wet it is where people touch the gear.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Ground {
    /// Dry ground, dry hands.
    Dry,
    /// Dew, damp soil.
    Damp,
    /// Rain, wet grass, puddles.
    Wet,
}

impl Choice for Ground {
    const ALL: &'static [(Self, &'static str)] = &[(Self::Dry, "dry"), (Self::Damp, "damp"), (Self::Wet, "wet")];
}

/// A part of the day, which may pass midnight. Minutes after midnight, `from` in 0..1440 and `to` in 1..=1440. Equal
/// ends mean the whole day.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Span {
    /// The first minute.
    pub from: u16,
    /// The first minute after the span.
    pub to: u16,
}

/// The form used in plan files and in every language: `22:00-06:00`.
impl std::fmt::Display for Span {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(f, "{}-{}", Self::clock(self.from), Self::clock(self.to))
    }
}

impl Span {
    /// The minutes in a day.
    pub const DAY: u16 = 1440;

    /// Formats a minute of the day as on a clock. The end of the day is 24:00.
    #[must_use]
    pub fn clock(minute: u16) -> String {
        format!("{:02}:{:02}", minute / 60, minute % 60)
    }

    /// Whether the minute of the day is in the span.
    #[must_use]
    pub const fn contains(self, minute: u16) -> bool {
        let to = self.to % Self::DAY;
        if self.from < to { self.from <= minute && minute < to } else { minute >= self.from || minute < to }
    }

    /// Returns how many minutes the span lasts.
    #[must_use]
    pub const fn minutes(self) -> u16 {
        let to = self.to % Self::DAY;
        if self.from < to { to - self.from } else { Self::DAY - self.from + to }
    }

    /// Returns how many minutes of the day are in both spans.
    #[must_use]
    pub fn minutes_in_both(self, other: Self) -> u16 {
        let (from, minutes) = (i32::from(self.from), i32::from(self.minutes()));
        let day = i32::from(Self::DAY);
        // Either may pass midnight, so `other` is also compared a day earlier and a day later.
        let both: i32 = [-day, 0, day]
            .into_iter()
            .map(|shift| {
                let start = i32::from(other.from) + shift;
                let end = start + i32::from(other.minutes());
                ((from + minutes).min(end) - from.max(start)).max(0)
            })
            .sum();
        u16::try_from(both).unwrap_or(Self::DAY)
    }
}

/// The generator.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Generator {
    /// The name that its owner gives it.
    pub name: String,
    /// The power it can deliver for hours ("running").
    pub rated: Answer<Power>,
    /// The power it can deliver for a few seconds ("peak", "starting").
    pub peak: Answer<Power>,
    /// The voltage of its outlets.
    pub voltage: Answer<System>,
    /// Whether its neutral is bonded to its frame.
    pub neutral: Answer<Neutral>,
    /// Whether a bonding plug, which joins neutral to ground, is plugged in.
    pub bonding_plug: Answer<bool>,
    /// The receptacle that holds the bonding plug, or `None` if the plan does not say.
    pub bonding_plug_in: Option<Id>,
    /// Whether it is an inverter generator, which limits its own current.
    pub inverter: Answer<bool>,
    /// The fuel it burns.
    pub fuel: Answer<Fuel>,
    /// The fuel for which its rated and peak power are stated.
    pub rated_on: Answer<Fuel>,
    /// The sets joined in parallel with it.
    pub parallel: Option<Parallel>,
    /// How much fuel its tank holds.
    pub tank: Answer<Volume>,
    /// The published running times on one tank.
    pub runtime: Vec<Runtime>,
    /// The published sound level.
    pub noise: Answer<Noise>,
    /// Whether its owner has it and can look at it. Missing means yes; a plan for a purchase says no.
    pub bought: Option<bool>,
    /// Its receptacles. Empty only for a purchase for which none have been chosen yet.
    pub outlets: Vec<Outlet>,
}

/// The voltage system of a supply.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum System {
    /// 120 V on one leg.
    #[default]
    V120,
    /// 120 V on each of two legs, 240 V between them.
    V120_240,
}

impl Choice for System {
    const ALL: &'static [(Self, &'static str)] = &[(Self::V120, "120 V"), (Self::V120_240, "120/240 V")];
}

/// Whether neutral is bonded to ground at the generator.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Neutral {
    /// It is not bonded.
    Floating,
    /// The maker bonded it to the frame.
    Bonded,
}

impl Choice for Neutral {
    const ALL: &'static [(Self, &'static str)] = &[(Self::Floating, "floating"), (Self::Bonded, "bonded")];
}

/// The fuel that an engine burns.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Fuel {
    /// Gasoline, with or without ethanol.
    Gasoline,
    /// Liquefied propane.
    Propane,
    /// Diesel.
    Diesel,
}

impl Choice for Fuel {
    const ALL: &'static [(Self, &'static str)] =
        &[(Self::Gasoline, "gasoline"), (Self::Propane, "propane"), (Self::Diesel, "diesel")];
}

/// Several sets that run as one source. All other figures of the generator are for a single set.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub struct Parallel {
    /// The number of sets, two or more.
    pub sets: u8,
    /// The current that the kit joining them can carry.
    pub limit: Answer<Current>,
    /// Whether it is the maker's kit for exactly these sets.
    pub kit: Answer<bool>,
}

impl Generator {
    /// Returns the number of sets, 1 if none are paralleled.
    #[must_use]
    pub fn sets(&self) -> i64 {
        self.parallel.map_or(1, |parallel| i64::from(parallel.sets))
    }

    /// Whether the sets may be joined in parallel: 120 V inverter sets with their maker's kit (common practice, no
    /// source). `None` for a single set.
    #[must_use]
    pub fn may_join(&self) -> Option<Answer<bool>> {
        let kit = self.parallel?.kit;
        Some(match (self.inverter, self.voltage, kit) {
            (Answer::Known(false), _, _) | (_, Answer::Known(System::V120_240), _) | (_, _, Answer::Known(false)) => {
                Answer::Known(false)
            }
            (Answer::Known(true), Answer::Known(System::V120), Answer::Known(true)) => Answer::Known(true),
            _ => Answer::Unknown,
        })
    }

    /// Whether the sets may run as one: like [`Self::may_join`], but never for bonded sets. Whatever their maker
    /// intended, together they bond neutral to ground more than once, so they run separately.
    #[must_use]
    pub fn run_as_one(&self) -> Option<Answer<bool>> {
        let bonded = self.neutral == Answer::Known(Neutral::Bonded);
        self.may_join().map(|may| if bonded { Answer::Known(false) } else { may })
    }
}

/// A published running time.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Runtime {
    /// The share of rated load.
    pub load: Percent,
    /// The time on one tank.
    pub lasts: Hours,
}

/// A published sound level.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Noise {
    /// The level.
    pub level: SoundLevel,
    /// The distance at which it was measured.
    pub at: Length,
    /// The share of rated load at which it was measured.
    pub load: Answer<Percent>,
}

/// A receptacle of the generator or of a box, with one or more sockets.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Outlet {
    /// The id.
    pub id: Id,
    /// The configuration.
    pub shape: Receptacle,
    /// How many plugs it takes, or `None` if nobody counted. Two is usual for 5-15R and 5-20R, one otherwise.
    pub sockets: Option<u8>,
    /// The breaker that feeds it, as marked. [`Answer::Missing`] on a box outlet means that it has no breaker of its
    /// own.
    pub breaker: Answer<Current>,
    /// The outlet whose breaker it shares.
    pub shares: Option<Id>,
    /// The current at which its breaker has been seen to trip. It counts for the next whole ampere below.
    pub trips_at: Option<Current>,
    /// Whether it has GFCI protection.
    pub gfci: Answer<bool>,
    /// The wire that feeds it (boxes only).
    pub wire: Answer<Wire>,
    /// The leg that feeds a 120 V outlet of a 120/240 V system.
    pub leg: Answer<Leg>,
    /// Whether it or a plug in it felt hot or soft, or gave a shock. Missing means no.
    pub hot: Option<bool>,
}

impl Outlet {
    /// Returns the least and the most plugs it takes. Where nobody counted: one, and the usual number for its shape.
    /// Its rating is judged by the first and what may be plugged in by the second, each being the unsafe case.
    #[must_use]
    pub fn plugs(&self) -> (u8, u8) {
        let counted = self.sockets.map(|count| (count, count));
        counted.unwrap_or_else(|| (1, self.shape.usual_sockets()))
    }
}

/// One leg of a supply.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Leg {
    /// The first leg, and the only one of a 120 V supply.
    A,
    /// The second leg.
    B,
}

impl Choice for Leg {
    const ALL: &'static [(Self, &'static str)] = &[(Self::A, "A"), (Self::B, "B")];
}

/// A cord, adapter or splitter.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Cord {
    /// The id, which is also the id of its receptacle if there is only one.
    pub id: Id,
    /// The receptacle it is plugged into, or `None` if it is owned but not plugged in.
    pub from: Option<Id>,
    /// Its plug. A cord with an unknown plug is not plugged in anywhere.
    pub plug: Answer<Plug>,
    /// Its receptacles. If they are unknown, nothing is plugged into them.
    pub ends: Answer<Vec<Receptacle>>,
    /// The size of its conductors.
    pub wire: Answer<Wire>,
    /// The number of conductors, including ground.
    pub conductors: Answer<u8>,
    /// Its length.
    pub length: Answer<Length>,
    /// Whether its jacket is marked for outdoor use.
    pub outdoor: Answer<bool>,
    /// Whether any of it stays coiled or on a reel while in use.
    pub coiled: Answer<bool>,
    /// Whether it has built-in GFCI protection.
    pub gfci: Answer<bool>,
    /// Whether it or one of its connectors felt hot or soft, or gave a shock. Missing means no.
    pub hot: Option<bool>,
    /// Whether its owner has it and can look at it. Missing means yes; a plan for a purchase says no.
    pub bought: Option<bool>,
}

impl Cord {
    /// The length up to which a cord counts as uncoiled: nobody coils 2 m.
    pub const TOO_SHORT_TO_COIL: Length = Length::from_millimetres(2_000);

    /// Whether the cord is used coiled or on its reel. A cord too short to coil never is, whatever the plan says.
    #[must_use]
    pub fn is_coiled(&self) -> Answer<bool> {
        let short = self.length.known().is_some_and(|length| *length <= Self::TOO_SHORT_TO_COIL);
        if short { Answer::Known(false) } else { self.coiled }
    }

    /// Returns its receptacles, none if they are unknown.
    #[must_use]
    pub fn ends(&self) -> &[Receptacle] {
        self.ends.known().map_or(&[], Vec::as_slice)
    }

    /// Whether its plug has a household shape.
    #[must_use]
    pub fn is_household(&self) -> bool {
        self.plug.known().is_some_and(|plug| plug.0.household())
    }

    /// Returns its plug, if both plug and ends are known. A cord of unknown shape is not in use.
    #[must_use]
    pub fn usable_plug(&self) -> Option<Plug> {
        self.plug.known().copied().filter(|_| self.ends.is_known())
    }

    /// Returns the circuit it passes on, which determines how many of its conductors carry current and how many it
    /// needs.
    ///
    /// This is the circuit of its plug, except that an adapter to a single receptacle with fewer conductors uses only
    /// those. A splitter of a two-leg plug may use both legs whatever its ends are.
    #[must_use]
    pub fn circuit(&self) -> Circuit {
        match (self.plug.known().map(|plug| plug.0.circuit()), self.ends()) {
            // An unknown plug counts as the circuit with the most conductors.
            (None | Some(Circuit::TwoLegsNeutral), [only]) => only.0.circuit(),
            (circuit, _) => circuit.unwrap_or(Circuit::TwoLegsNeutral),
        }
    }

    /// Returns how many conductors that circuit needs, including ground.
    #[must_use]
    pub fn conductors_needed(&self) -> u8 {
        self.circuit().conductors() + 1
    }

    /// Whether people would call it an adapter: a single receptacle of another shape than its plug, at most a meter
    /// long (common practice, no source). A cord of unknown length is not one, and with several receptacles it is a
    /// splitter, however short.
    ///
    /// Only labels use this. No rule asks less of an adapter.
    #[must_use]
    pub fn is_adapter(&self) -> bool {
        const LONGEST: Length = Length::from_millimetres(1_000);
        let short = self.length.known().is_some_and(|length| *length <= LONGEST);
        matches!((self.plug, self.ends()), (Answer::Known(plug), [only]) if only.0 != plug.0) && short
    }

    /// Returns the id of an end, counting from zero.
    #[must_use]
    pub fn end_id(&self, index: usize) -> Id {
        if self.ends().len() == 1 { self.id.clone() } else { self.id.end(index + 1) }
    }

    /// Returns the ids of its ends.
    pub fn end_ids(&self) -> impl Iterator<Item = Id> + use<'_> {
        (0..self.ends().len()).map(|end| self.end_id(end))
    }
}

/// The kind of a box.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum BoxKind {
    /// Receptacles behind an inlet, and nothing else.
    #[default]
    Distribution,
    /// A camper or vehicle with a factory-made box. What runs inside is wired in or plugged in there.
    Camper,
}

impl Choice for BoxKind {
    const ALL: &'static [(Self, &'static str)] = &[(Self::Distribution, "distribution"), (Self::Camper, "camper")];
}

/// A distribution box, or a camper, which contains one.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct DistributionBox {
    /// The id. What runs inside a camper is `on` it.
    pub id: Id,
    /// The kind of box.
    pub kind: BoxKind,
    /// The receptacle it is plugged into.
    pub from: Option<Id>,
    /// Its inlet, or the plug of the camper's own cord. A box with an unknown inlet is not plugged in anywhere.
    pub inlet: Answer<Plug>,
    /// Its main breaker, upstream of all its outlets. [`Answer::Missing`] means none, except in a camper.
    pub breaker: Answer<Current>,
    /// Whether it is factory made and listed.
    pub listed: Answer<bool>,
    /// Whether neutral is bonded to ground inside it.
    pub bond: Answer<bool>,
    /// Whether it felt hot or soft, or gave a shock. Missing means no.
    pub hot: Option<bool>,
    /// Whether its owner has it and can look at it. Missing means yes; a plan for a purchase says no.
    pub bought: Option<bool>,
    /// Its receptacles; for a camper, only those reached from outside. Empty means unknown, except for a camper.
    pub outlets: Vec<Outlet>,
}

impl DistributionBox {
    /// Whether its receptacles are unknown.
    #[must_use]
    pub fn outlets_unknown(&self) -> bool {
        self.outlets.is_empty() && !self.is_camper()
    }

    /// Returns its inlet, if its receptacles are known too. A box of unknown shape is not in use.
    #[must_use]
    pub fn usable_inlet(&self) -> Option<Plug> {
        self.inlet.known().copied().filter(|_| !self.outlets_unknown())
    }

    /// Whether it is a camper.
    #[must_use]
    pub fn is_camper(&self) -> bool {
        self.kind == BoxKind::Camper
    }

    /// Whether it is factory made and listed, which a camper is unless the plan says otherwise. An answer of "unknown"
    /// is a doubt and stays one.
    #[must_use]
    pub fn is_listed(&self) -> Answer<bool> {
        match self.listed {
            Answer::Missing if self.is_camper() => Answer::Known(true),
            answer => answer,
        }
    }

    /// Whether it bonds neutral to ground. Listed boxes and campers do not, unless the plan says otherwise.
    #[must_use]
    pub fn joins(&self) -> Answer<bool> {
        match self.bond {
            Answer::Missing if self.is_listed() == Answer::Known(true) => Answer::Known(false),
            answer => answer,
        }
    }
}

/// An appliance or other consumer of power.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Load {
    /// The id.
    pub id: Id,
    /// The name on prints.
    pub name: String,
    /// Its electrical behavior.
    pub kind: Answer<LoadKind>,
    /// What it draws while running.
    pub running: Answer<Draw>,
    /// How many there are, each with its own plug. At least one.
    pub count: u8,
    /// The power it draws while starting.
    pub starting: Answer<Power>,
    /// The current it draws while starting, on each of its legs: locked-rotor amps, as on the nameplate. At most one of
    /// the two is given.
    pub starting_current: Answer<Current>,
    /// The ratio of real to apparent power.
    pub power_factor: Answer<Ratio>,
    /// Whether it runs for three hours or more at a stretch.
    pub continuous: Answer<bool>,
    /// How much it matters to its owner.
    pub wanted: Wanted,
    /// When it runs. Empty means at any time.
    pub hours: Vec<Span>,
    /// Its plug.
    pub plug: Answer<Plug>,
    /// What it uses of a plug that supplies both 120 V and 240 V.
    pub voltage: Answer<Uses>,
    /// The receptacle, or the camper, in which it must stay plugged in.
    pub on: Option<Id>,
    /// Whether a battery made for it takes over for the whole night when the power goes off.
    pub backup: Answer<bool>,
    /// The receptacle that it is plugged into now but may leave. It stays there unless moving it lets more loads run.
    pub now: Option<Id>,
    /// Whether it or its plug felt hot or soft, or gave a shock.
    pub hot: Option<bool>,
}

impl Default for Load {
    fn default() -> Self {
        Self {
            id: Id::default(),
            name: String::new(),
            kind: Answer::Missing,
            running: Answer::Missing,
            count: 1,
            starting: Answer::Missing,
            starting_current: Answer::Missing,
            power_factor: Answer::Missing,
            continuous: Answer::Missing,
            wanted: Wanted::default(),
            hours: Vec::new(),
            plug: Answer::Missing,
            voltage: Answer::Missing,
            on: None,
            backup: Answer::Missing,
            now: None,
            hot: None,
        }
    }
}

impl Load {
    /// Returns the receptacle it is plugged into, whether it must stay there or may move.
    #[must_use]
    pub fn plugged_into(&self) -> Option<&Id> {
        self.on.as_ref().or(self.now.as_ref())
    }

    /// Whether its hours include this minute.
    #[must_use]
    pub fn wants(&self, minute: u16) -> bool {
        self.hours.iter().any(|span| span.contains(minute))
    }

    /// Whether both may be on at the same time of day. A load without hours may be on at any time.
    #[must_use]
    pub fn may_meet(&self, other: &Self) -> bool {
        let any_time = self.hours.is_empty() || other.hours.is_empty();
        let begins_in = |one: &Self, other: &Self| one.hours.iter().any(|span| other.wants(span.from));
        any_time || begins_in(self, other) || begins_in(other, self)
    }

    /// Whether it must run, or somebody's health depends on it, or might.
    #[must_use]
    pub fn is_needed(&self) -> bool {
        self.wanted == Wanted::Must || self.may_be(LoadKind::Medical)
    }

    /// Whether it is of this kind, or of unknown kind.
    #[must_use]
    pub fn may_be(&self, kind: LoadKind) -> bool {
        self.kind.known().is_none_or(|known| *known == kind)
    }

    /// Whether it makes heat for any use, or is of unknown kind.
    #[must_use]
    pub fn may_heat(&self) -> bool {
        self.kind.known().is_none_or(|known| known.heats())
    }

    /// Whether it is known to need 240 V, because its plug has no neutral or because the plan says so.
    #[must_use]
    pub fn needs_240(&self) -> bool {
        let plug = self.plug.known();
        self.voltage == Answer::Known(Uses::V240) || plug.is_some_and(|plug| plug.0.circuit() == Circuit::TwoLegs)
    }
}

/// What a load uses of a plug with both hots and a neutral.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Uses {
    /// Only 120 V from one of the hots to neutral, as nearly all that runs in a camper.
    V120,
    /// Only the 240 V between the hots, which loads both legs equally.
    V240,
    /// Also 120 V from the hots to neutral, split in any way.
    V120AndV240,
}

impl Choice for Uses {
    const ALL: &'static [(Self, &'static str)] =
        &[(Self::V120, "120 V"), (Self::V240, "240 V"), (Self::V120AndV240, "120/240 V")];
}

/// The electrical behavior of a load.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum LoadKind {
    /// Resistance heat for rooms, beds and people, and any other that is not for cooking. Older plans use it for all
    /// heat.
    Heater,
    /// Resistance heat for cooking or heating water. Somebody stands by it, so it is not assumed to run at night unless
    /// its hours say so.
    Cooker,
    /// Anything that turns a motor or compressor.
    Motor,
    /// Switched-mode power supplies, as in chargers and televisions.
    Electronic,
    /// Lighting.
    Lamp,
    /// Equipment that someone's health depends on.
    Medical,
}

impl Choice for LoadKind {
    const ALL: &'static [(Self, &'static str)] = &[
        (Self::Heater, "heater"),
        (Self::Cooker, "cooker"),
        (Self::Motor, "motor"),
        (Self::Electronic, "electronic"),
        (Self::Lamp, "lamp"),
        (Self::Medical, "medical"),
    ];
}

impl LoadKind {
    /// Whether it is resistance heat, for which watts and amps are computed in the same way.
    #[must_use]
    pub const fn heats(self) -> bool {
        matches!(self, Self::Heater | Self::Cooker)
    }
}

/// What a load draws, as stated on its nameplate.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Draw {
    /// The real power.
    Power(Power),
    /// The current at its rated voltage.
    Current(Current),
    /// A motor's horsepower and locked-rotor code letter.
    Motor {
        /// The power in thousandths of a horsepower.
        millihorsepower: u32,
        /// The letter from NEC table 430.7(B), if the nameplate has one.
        code: Option<char>,
    },
}

/// How much a load matters to its owner.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum Wanted {
    /// The weekend fails without it.
    #[default]
    Must,
    /// Nice to have.
    Wish,
}

impl Choice for Wanted {
    const ALL: &'static [(Self, &'static str)] = &[(Self::Must, "must"), (Self::Wish, "wish")];
}

/// A cord or box: gear that is plugged in and has receptacles of its own.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Gear<'a> {
    /// The id.
    pub id: &'a Id,
    /// The plug or inlet, or `None` if its shape is unknown, so that it is not in use.
    pub plug: Option<Plug>,
    /// The receptacle into which the plan plugs it.
    pub from: Option<&'a Id>,
    /// Whether it felt hot or soft, or gave a shock.
    pub hot: Option<bool>,
}

impl Plan {
    /// Returns the nominal voltage of a 120 V circuit in this region.
    #[must_use]
    pub const fn line_to_neutral(&self) -> Voltage {
        self.region.line_to_neutral()
    }

    /// Returns the generator's outlets, then those of the boxes.
    pub fn outlets(&self) -> impl Iterator<Item = &Outlet> + Clone {
        let of_boxes = self.boxes.iter().flat_map(|holder| &holder.outlets);
        self.generator.outlets.iter().chain(of_boxes)
    }

    /// Returns the generator's outlets, then those of the boxes, mutably.
    pub(crate) fn outlets_mut(&mut self) -> impl Iterator<Item = &mut Outlet> {
        let of_boxes = self.boxes.iter_mut().flat_map(|holder| &mut holder.outlets);
        self.generator.outlets.iter_mut().chain(of_boxes)
    }

    /// Returns the outlet with this id.
    pub(crate) fn outlet(&self, id: impl AsRef<str>) -> Option<&Outlet> {
        self.outlets().find(|it| it.id.as_str() == id.as_ref())
    }

    /// Returns the outlet with this id, mutably.
    pub(crate) fn outlet_mut(&mut self, id: impl AsRef<str>) -> Option<&mut Outlet> {
        self.outlets_mut().find(|it| it.id.as_str() == id.as_ref())
    }

    /// Returns the cord with this id.
    pub(crate) fn cord(&self, id: impl AsRef<str>) -> Option<&Cord> {
        self.cords.iter().find(|it| it.id.as_str() == id.as_ref())
    }

    /// Returns the cord with this id, mutably.
    pub(crate) fn cord_mut(&mut self, id: impl AsRef<str>) -> Option<&mut Cord> {
        self.cords.iter_mut().find(|it| it.id.as_str() == id.as_ref())
    }

    /// Returns the box or camper with this id.
    pub(crate) fn holder(&self, id: impl AsRef<str>) -> Option<&DistributionBox> {
        self.boxes.iter().find(|it| it.id.as_str() == id.as_ref())
    }

    /// Returns the box or camper with this id, mutably.
    pub(crate) fn holder_mut(&mut self, id: impl AsRef<str>) -> Option<&mut DistributionBox> {
        self.boxes.iter_mut().find(|it| it.id.as_str() == id.as_ref())
    }

    /// Returns the load with this id.
    pub(crate) fn load(&self, id: impl AsRef<str>) -> Option<&Load> {
        self.loads.iter().find(|it| it.id.as_str() == id.as_ref())
    }

    /// Returns the load with this id, mutably.
    pub(crate) fn load_mut(&mut self, id: impl AsRef<str>) -> Option<&mut Load> {
        self.loads.iter_mut().find(|it| it.id.as_str() == id.as_ref())
    }

    /// Returns the cords, then the boxes.
    pub(crate) fn gear(&self) -> impl Iterator<Item = Gear<'_>> {
        let cords = self.cords.iter();
        let cords = cords.map(|it| Gear { id: &it.id, plug: it.usable_plug(), from: it.from.as_ref(), hot: it.hot });
        let boxes = self.boxes.iter();
        let boxes = boxes.map(|it| Gear { id: &it.id, plug: it.usable_inlet(), from: it.from.as_ref(), hot: it.hot });
        cords.chain(boxes)
    }

    /// Returns the cord or box with this id.
    pub(crate) fn gear_of(&self, id: impl AsRef<str>) -> Option<Gear<'_>> {
        self.gear().find(|it| it.id.as_str() == id.as_ref())
    }

    /// Returns each cord, then each box, with the receptacle it is plugged into, mutably.
    pub(crate) fn gear_mut(&mut self) -> impl Iterator<Item = (&Id, &mut Option<Id>)> {
        let cords = self.cords.iter_mut().map(|it| (&it.id, &mut it.from));
        cords.chain(self.boxes.iter_mut().map(|it| (&it.id, &mut it.from)))
    }

    /// Returns the cords, boxes and outlets that felt hot or soft, or gave a shock.
    pub fn felt_hot(&self) -> impl Iterator<Item = &Id> {
        let outlets = self.outlets().map(|outlet| (&outlet.id, outlet.hot));
        let all = outlets.chain(self.gear().map(|it| (it.id, it.hot)));
        all.filter(|(_, hot)| *hot == Some(true)).map(|(id, _)| id)
    }

    /// Returns what is plugged into outlets that felt hot, with the outlets. Those plugs got as hot, unless the plan
    /// says that they did not.
    pub(crate) fn in_hot_outlets(&self) -> Vec<(Id, Id)> {
        let hot = self.outlets().filter(|outlet| outlet.hot == Some(true));
        let hot: Vec<&Id> = hot.map(|outlet| &outlet.id).collect();
        if hot.is_empty() {
            return Vec::new();
        }
        let gear = self.gear().map(|it| (it.id, it.from, it.hot));
        let loads = self.loads.iter().map(|it| (&it.id, it.plugged_into(), it.hot));
        let there = gear.chain(loads).filter_map(|(id, at, said)| Some((id, at?, said)));
        let there = there.filter(|(_, at, said)| said.is_none() && hot.contains(at));
        there.map(|(id, at, _)| (id.clone(), at.clone())).collect()
    }

    /// Marks a cord, box, outlet or load as having felt hot.
    pub(crate) fn feel_hot(&mut self, id: &Id) {
        let hot = Some(true);
        for outlet in self.outlets_mut().filter(|outlet| outlet.id == *id) {
            outlet.hot = hot;
        }
        for cord in self.cords.iter_mut().filter(|cord| cord.id == *id) {
            cord.hot = hot;
        }
        for holder in self.boxes.iter_mut().filter(|holder| holder.id == *id) {
            holder.hot = hot;
        }
        for load in self.loads.iter_mut().filter(|load| load.id == *id) {
            load.hot = hot;
        }
    }

    /// Returns the cords and boxes that are not in use because their shape is unknown.
    pub(crate) fn of_unknown_shape(&self) -> impl Iterator<Item = UnknownShape<'_>> {
        let cords = self.cords.iter().map(|it| UnknownShape {
            part: &it.id,
            plug: (!it.plug.is_known()).then_some(("cord", "plug")),
            outlets: (!it.ends.is_known()).then_some(("cord", "ends")),
        });
        let boxes = self.boxes.iter().map(|it| UnknownShape {
            part: &it.id,
            plug: (!it.inlet.is_known()).then_some(("box", "inlet")),
            outlets: it.outlets_unknown().then_some(("box", "outlet")),
        });
        cords.chain(boxes).filter(|it| it.plug.is_some() || it.outlets.is_some())
    }

    /// Returns the camper with this id.
    #[must_use]
    pub fn camper(&self, id: &Id) -> Option<&DistributionBox> {
        self.holder(id).filter(|it| it.is_camper())
    }

    /// Returns the camper inside which a load runs.
    #[must_use]
    pub fn around(&self, load: &Load) -> Option<&DistributionBox> {
        self.camper(load.on.as_ref()?)
    }

    /// Returns the cord or box with this receptacle, or `None` for one of the generator's and for an id that is no
    /// receptacle.
    #[must_use]
    pub fn part_of(&self, receptacle: &Id) -> Option<&Id> {
        // An end's id starts with its cord's id, which is quick to check.
        let has_end = |cord: &&Cord| {
            receptacle.as_str().starts_with(cord.id.as_str()) && cord.end_ids().any(|end| end == *receptacle)
        };
        let has_outlet = |it: &&DistributionBox| {
            it.outlets.iter().any(|outlet| outlet.id == *receptacle) || it.is_camper() && it.id == *receptacle
        };
        let boxes = self.boxes.iter().filter(has_outlet).map(|it| &it.id);
        let cords = self.cords.iter().filter(has_end).map(|it| &it.id);
        boxes.chain(cords).next()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn spans_pass_midnight() {
        let quiet = Span { from: 22 * 60, to: 6 * 60 };
        assert!(quiet.contains(23 * 60) && quiet.contains(0) && !quiet.contains(6 * 60));
        assert_eq!(quiet.minutes(), 8 * 60);
        let day = Span { from: 0, to: 1440 };
        assert!(day.contains(720));
        assert_eq!(day.minutes(), 1440);
    }

    #[test]
    fn spans_share_what_a_count_of_their_minutes_says() {
        let times = [0, 1, 359, 360, 361, 719, 1320, 1439, 1440];
        let spans = times
            .iter()
            .flat_map(|from| times.iter().map(move |to| (*from, *to)))
            .filter(|(from, _)| *from < Span::DAY)
            .map(|(from, to)| Span { from, to });
        for one in spans.clone() {
            for other in spans.clone() {
                let counted = (0..Span::DAY).filter(|minute| one.contains(*minute) && other.contains(*minute)).count();
                assert_eq!(usize::from(one.minutes_in_both(other)), counted, "{one:?} {other:?}");
            }
        }
    }

    #[test]
    fn a_short_cord_from_shape_to_shape_is_an_adapter() {
        let cord = |ends: &[&str], length| Cord {
            id: Id("one".into()),
            plug: Answer::Known(Plug::named("TT-30P").expect("a shape")),
            ends: Answer::Known(ends.iter().map(|end| Receptacle::named(end).expect("a shape")).collect()),
            length,
            ..Cord::default()
        };
        let metre = |millimetres| Answer::Known(Length::from_millimetres(millimetres));
        // 3 ft, and a meter to the millimeter.
        for length in [metre(914), metre(1_000)] {
            assert!(cord(&["5-20R"], length).is_adapter());
        }
        for (ends, length) in [
            (&["5-20R"][..], metre(1_001)),
            (&["5-20R"], Answer::Unknown),
            (&["5-20R"], Answer::Missing),
            (&["TT-30R"], metre(300)),
            (&["5-20R", "5-20R"], metre(300)),
        ] {
            assert!(!cord(ends, length).is_adapter(), "{ends:?} {length:?}");
        }
    }

    #[test]
    fn every_choice_has_its_own_word() {
        fn hold<C: Choice>() {
            for (choice, word) in C::ALL {
                assert_eq!((choice.word(), C::named(word)), (*word, Some(*choice)));
                assert_eq!(C::named(&choice.pick()), Some(*choice));
            }
            assert_eq!(C::named("unknown"), None);
        }
        hold::<Region>();
        hold::<Stands>();
        hold::<Ground>();
        hold::<System>();
        hold::<Neutral>();
        hold::<Fuel>();
        hold::<BoxKind>();
        hold::<Leg>();
        hold::<Uses>();
        hold::<LoadKind>();
        hold::<Wanted>();
        assert_eq!(LoadKind::Medical.word(), "medical");
        assert_eq!(Uses::V120AndV240.pick(), "120-240");
    }

    #[test]
    fn references_name_an_end() {
        assert_eq!(Id::reference("long.2").map(|id| id.to_string()).as_deref(), Some("long.2"));
        for bad in ["long.0", "long.", ".2", "a b", "", "-x"] {
            assert_eq!(Id::reference(bad), None, "{bad}");
        }
        assert_eq!(Id::new("long.2"), None);
    }
}
