//! The plan as plain data. Field for field the TOML format of the plan file, version 1.

use std::sync::Arc;

use crate::quantity::{Current, Hours, Length, Percent, Power, Ratio, SoundLevel, Temperature, Voltage, Volume, Wire};
use crate::tables::shape::{Circuit, Plug, Receptacle};

/// The version of the plan format written by this program.
pub const FORMAT: i64 = 1;

/// The answer to a question that a beginner may be unable to answer.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum Answer<T> {
    /// The plan says nothing of it.
    #[default]
    Missing,
    /// The user was asked and does not know.
    Unknown,
    /// The user's answer.
    Known(T),
}

impl<T> Answer<T> {
    /// The value, if it is known.
    pub const fn known(&self) -> Option<&T> {
        match self {
            Self::Known(value) => Some(value),
            Self::Missing | Self::Unknown => None,
        }
    }

    /// Whether a value is known.
    pub const fn is_known(&self) -> bool {
        matches!(self, Self::Known(_))
    }
}

impl<T: Copy> Answer<T> {
    /// The value, or the cautious one to use in its place. Whoever calls this with a fallback
    /// owes the report an entry in its `assumed` list.
    pub fn or(self, cautious: T) -> T {
        match self {
            Self::Known(value) => value,
            Self::Missing | Self::Unknown => cautious,
        }
    }
}

/// One of a few: every one with its word, which is the same in plan files, drafts and reports.
pub trait Choice: Copy + PartialEq + std::fmt::Debug + 'static {
    /// All of them, in the order in which they are told.
    const ALL: &'static [(Self, &'static str)];

    /// Its word in plan files and reports.
    #[must_use]
    fn word(self) -> &'static str {
        let row = Self::ALL.iter().find(|(choice, _)| *choice == self);
        row.map_or("", |(_, word)| word)
    }

    /// Its word where people are asked, which is part of a message's key: `120-240` for "120/240 V".
    #[must_use]
    fn pick(self) -> String {
        let bare = self.word().trim_end_matches(" V");
        bare.replace('/', "-").to_lowercase()
    }

    /// The one of that word, of whichever of the two.
    #[must_use]
    fn named(word: &str) -> Option<Self> {
        let row = Self::ALL.iter().find(|(choice, own)| *own == word || choice.pick() == word);
        row.map(|(choice, _)| *choice)
    }
}

/// The name of a part or load in the plan: letters, digits, `-` and `_`, no dot. One end of a
/// cord with several is written with a dot and a number, as in `long.2`.
///
/// Shared, for a report and all that is tried for it names the same parts thousands of times. The
/// default stands for an id that is not known yet; no plan that is handed out has it.
#[derive(Clone, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Id(Arc<str>);

impl serde::Serialize for Id {
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.serialize_str(&self.0)
    }
}

impl Id {
    /// The longest id that is taken, in characters.
    pub const LONGEST: usize = 40;

    /// The id under which reports speak of the set itself. Nothing else may have it.
    pub const SET: &str = "generator";

    /// An id from text, if it is one: 1 to [`Self::LONGEST`] letters or digits of any script, `-`
    /// or `_`, beginning with a letter or digit.
    #[must_use]
    pub fn new(text: &str) -> Option<Self> {
        let fine = text.chars().all(|c| c.is_alphanumeric() || matches!(c, '-' | '_'));
        let starts = text.chars().next().is_some_and(char::is_alphanumeric);
        (fine && starts && text.chars().count() <= Self::LONGEST).then(|| Self(text.into()))
    }

    /// The id of the `number`th end of this cord, counting from one.
    #[must_use]
    pub fn end(&self, number: usize) -> Self {
        Self(format!("{}.{number}", self.0).into())
    }

    /// A reference as written in `from` or `on`: an id, or an id with an end number.
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

    /// The text of it.
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

/// The longest name that is taken, in characters: what a label can hold in type one can read.
pub const LONGEST_NAME: usize = 60;

/// Whether a character does something to its neighbours instead of being seen: a control, the end
/// of a line or paragraph, or one that turns the direction of writing round. Shown, it could make a
/// name or a figure look like another.
#[must_use]
pub fn hides(c: char) -> bool {
    c.is_control()
        || matches!(c,
            '\u{61c}' | '\u{200e}' | '\u{200f}' | '\u{2028}'..='\u{202e}' | '\u{2066}'..='\u{2069}')
}

/// A name as plans keep it: without blanks at its ends, one line, not empty, no longer than
/// [`LONGEST_NAME`], and nothing in it that hides.
#[must_use]
pub fn name(text: &str) -> Option<String> {
    let text = text.trim();
    let fine = !text.is_empty() && text.chars().count() <= LONGEST_NAME && !text.chars().any(hides);
    fine.then(|| text.to_owned())
}

/// Which codes, voltages and tables apply. Not the language.
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
    /// The nominal voltage of a 120 V circuit in this region.
    #[must_use]
    pub const fn line_to_neutral(self) -> Voltage {
        match self {
            Self::NorthAmerica => Voltage::from_millivolts(120_000),
        }
    }
}

/// A cord or box of which nobody knows the shape: what is not known, by its table and key.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) struct UnknownShape<'a> {
    /// Which.
    pub part: &'a Id,
    /// Its plug or inlet.
    pub plug: Option<(&'static str, &'static str)>,
    /// Its receptacles.
    pub outlets: Option<(&'static str, &'static str)>,
}

/// A whole plan.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Plan {
    /// Rules and tables to use.
    pub region: Region,
    /// The language in which to speak of it and print it, as a tag such as `es` or `fr-CA`.
    pub language: Option<String>,
    /// Where it all stands.
    pub site: Site,
    /// The set.
    pub generator: Generator,
    /// Cords, adapters and splitters: whatever has one plug and one or more receptacles.
    pub cords: Vec<Cord>,
    /// Distribution boxes.
    pub boxes: Vec<DistributionBox>,
    /// What is to run.
    pub loads: Vec<Load>,
}

/// Where the generator stands and who is near.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Site {
    /// A name for the occasion, printed on every sheet.
    pub name: String,
    /// How wet the ground and the gear are.
    pub ground: Answer<Ground>,
    /// From the generator to the nearest tent, vehicle or building with people in it.
    pub sleepers_at: Answer<Length>,
    /// Height above the sea.
    pub altitude: Answer<Length>,
    /// The hottest air expected round the set.
    pub air: Answer<Temperature>,
    /// When the camp must be quiet; an empty list where it need not be at any hour.
    pub quiet_hours: Answer<Vec<Span>>,
    /// Whether everyone sleeps with a working carbon monoxide alarm.
    pub co_alarm: Answer<bool>,
    /// Whether someone means to feed a building's wiring.
    pub feeds_building: Answer<bool>,
    /// What is over and round the set while it runs.
    pub stands: Answer<Stands>,
    /// Whether anybody sleeps where exhaust may reach them. Silence is a yes: a market or a work party
    /// says that nobody does.
    pub people_sleep: Answer<bool>,
}

impl Site {
    /// Whether anybody sleeps here, as far as is known.
    #[must_use]
    pub fn sleeps(&self) -> bool {
        self.people_sleep != Answer::Known(false)
    }
}

/// What is over and round the set while it runs.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Stands {
    /// In the open, nothing near it on any side and nothing over it.
    Open,
    /// Under a roof on posts, open on all sides, well above it.
    Roof,
    /// Under a tarp or cover, an awning, a pop-up canopy or a porch, or close to a wall.
    Covered,
    /// In a tent, vehicle, trailer, shed, garage, box or pit.
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

/// A part of the day, which may pass midnight. Minutes after midnight, `from` in 0..1440 and
/// `to` in 1..=1440; equal ends mean the whole day.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Span {
    /// First minute.
    pub from: u16,
    /// First minute after it.
    pub to: u16,
}

/// As plan files have it, and every language: `22:00-06:00`.
impl std::fmt::Display for Span {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(f, "{}-{}", Self::clock(self.from), Self::clock(self.to))
    }
}

impl Span {
    /// Minutes in a day.
    pub const DAY: u16 = 1440;

    /// A minute of the day as a clock shows it; the end of the day is 24:00.
    #[must_use]
    pub fn clock(minute: u16) -> String {
        format!("{:02}:{:02}", minute / 60, minute % 60)
    }

    /// Whether the minute of the day falls in it.
    #[must_use]
    pub const fn contains(self, minute: u16) -> bool {
        let to = self.to % Self::DAY;
        if self.from < to { self.from <= minute && minute < to } else { minute >= self.from || minute < to }
    }

    /// How many minutes it lasts.
    #[must_use]
    pub const fn minutes(self) -> u16 {
        let to = self.to % Self::DAY;
        if self.from < to { to - self.from } else { Self::DAY - self.from + to }
    }

    /// How many minutes of the day lie in both.
    #[must_use]
    pub fn minutes_in_both(self, other: Self) -> u16 {
        let (from, minutes) = (i32::from(self.from), i32::from(self.minutes()));
        let day = i32::from(Self::DAY);
        // Either may pass midnight, so the other is laid beside it a day earlier and later as well.
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

/// The generator set.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Generator {
    /// What its owner calls it.
    pub name: String,
    /// Power it can keep up for hours ("running").
    pub rated: Answer<Power>,
    /// Power it can give for a few seconds ("peak", "starting").
    pub peak: Answer<Power>,
    /// What its outlets give.
    pub voltage: Answer<System>,
    /// Whether its neutral is joined to its frame.
    pub neutral: Answer<Neutral>,
    /// Whether a plug that joins neutral to ground is fitted.
    pub bonding_plug: Answer<bool>,
    /// The receptacle that plug is in. `None`: nobody said.
    pub bonding_plug_in: Option<Id>,
    /// Whether it is an inverter set, which limits its own current.
    pub inverter: Answer<bool>,
    /// What it burns.
    pub fuel: Answer<Fuel>,
    /// The fuel that its rated and peak power are given for.
    pub rated_on: Answer<Fuel>,
    /// Others of its kind that run with it as one.
    pub parallel: Option<Parallel>,
    /// How much of it the tank holds.
    pub tank: Answer<Volume>,
    /// Published running times on one tank.
    pub runtime: Vec<Runtime>,
    /// Published sound level.
    pub noise: Answer<Noise>,
    /// Whether it is there already, to be looked at. Silence is a yes: who plans what to buy says no.
    pub bought: Option<bool>,
    /// Its receptacles; none only where it is not bought yet, and nobody has chosen them.
    pub outlets: Vec<Outlet>,
}

/// A supply system.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum System {
    /// One leg of 120 V.
    #[default]
    V120,
    /// Two legs of 120 V, 240 V between them.
    V120_240,
}

impl Choice for System {
    const ALL: &'static [(Self, &'static str)] = &[(Self::V120, "120 V"), (Self::V120_240, "120/240 V")];
}

/// What joins neutral to ground at the generator.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Neutral {
    /// Nothing does.
    Floating,
    /// The maker joined it to the frame.
    Bonded,
}

impl Choice for Neutral {
    const ALL: &'static [(Self, &'static str)] = &[(Self::Floating, "floating"), (Self::Bonded, "bonded")];
}

/// What the engine burns.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Fuel {
    /// Petrol, with or without ethanol.
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

/// Several sets that run as one source. All other figures of the generator are those of one set.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub struct Parallel {
    /// How many there are, two or more.
    pub sets: u8,
    /// What the kit that joins them passes.
    pub limit: Answer<Current>,
    /// Whether it is the maker's kit for exactly these sets.
    pub kit: Answer<bool>,
}

impl Generator {
    /// How many sets there are.
    #[must_use]
    pub fn sets(&self) -> i64 {
        self.parallel.map_or(1, |parallel| i64::from(parallel.sets))
    }

    /// Whether several sets may run as one, as their plan has it: inverter sets of one voltage, with their maker's kit
    /// (common practice, no source). `None` for one set.
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

    /// The same of sets that join neutral to ground each: whatever their maker made them for, together they join it more
    /// than once, and run apart.
    #[must_use]
    pub fn run_as_one(&self) -> Option<Answer<bool>> {
        let bonded = self.neutral == Answer::Known(Neutral::Bonded);
        self.may_join().map(|may| if bonded { Answer::Known(false) } else { may })
    }
}

/// One published running time.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Runtime {
    /// Share of rated load.
    pub load: Percent,
    /// Time on one tank.
    pub lasts: Hours,
}

/// A published sound level.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Noise {
    /// The level.
    pub level: SoundLevel,
    /// The distance it was measured at.
    pub at: Length,
    /// The share of rated load it was measured at.
    pub load: Answer<Percent>,
}

/// A receptacle of the generator or of a box, or several behind one face.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Outlet {
    /// Its id.
    pub id: Id,
    /// Its configuration.
    pub shape: Receptacle,
    /// How many plugs it takes. Left out: two for 5-15R and 5-20R, else one.
    pub sockets: Option<u8>,
    /// The breaker it is behind, as marked. [`Answer::Missing`] on a box outlet means no breaker
    /// of its own.
    pub breaker: Answer<Current>,
    /// The outlet whose breaker it shares.
    pub shares: Option<Id>,
    /// Current at which its breaker has been seen to trip.
    pub trips_at: Option<Current>,
    /// Whether it has ground-fault protection.
    pub gfci: Answer<bool>,
    /// The wire behind it (boxes only).
    pub wire: Answer<Wire>,
    /// The leg a 120 V outlet of a 120/240 V system is on.
    pub leg: Answer<Leg>,
    /// Whether it, or a plug in it, has been felt hot or soft, or gave a shock. Silence is a no.
    pub hot: Option<bool>,
}

impl Outlet {
    /// How many plugs it takes at least, and at most: where nobody counted, one and what is usual for its shape. What it
    /// is rated for is judged by the first, and what may be plugged in by the second: each is the unsafe case.
    #[must_use]
    pub fn plugs(&self) -> (u8, u8) {
        let counted = self.sockets.map(|count| (count, count));
        counted.unwrap_or_else(|| (1, self.shape.usual_sockets()))
    }
}

/// One side of a 120/240 V supply.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Leg {
    /// The first, and the only one of a 120 V supply.
    A,
    /// The second.
    B,
}

impl Choice for Leg {
    const ALL: &'static [(Self, &'static str)] = &[(Self::A, "A"), (Self::B, "B")];
}

/// A cord, adapter or splitter.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Cord {
    /// Its id; also the id of its only receptacle.
    pub id: Id,
    /// The receptacle it plugs into. `None`: owned, not plugged in yet.
    pub from: Option<Id>,
    /// Its plug. Where nobody knows it, it goes in nowhere.
    pub plug: Answer<Plug>,
    /// Its receptacles. Where nobody knows them, nothing is plugged in there.
    pub ends: Answer<Vec<Receptacle>>,
    /// Size of its conductors.
    pub wire: Answer<Wire>,
    /// How many conductors, ground included.
    pub conductors: Answer<u8>,
    /// How long it is.
    pub length: Answer<Length>,
    /// Whether its jacket is marked for outdoor use.
    pub outdoor: Answer<bool>,
    /// Whether any of it stays coiled or on a reel in use.
    pub coiled: Answer<bool>,
    /// Whether it has ground-fault protection built in.
    pub gfci: Answer<bool>,
    /// Whether it, or a plug of it, has been felt hot or soft, or gave a shock. Silence is a no.
    pub hot: Option<bool>,
    /// Whether it is there already, to be looked at. Silence is a yes: who plans what to buy says no.
    pub bought: Option<bool>,
}

impl Cord {
    /// Its receptacles, as far as they are known.
    #[must_use]
    pub fn ends(&self) -> &[Receptacle] {
        self.ends.known().map_or(&[], Vec::as_slice)
    }

    /// Whether its plug is of a household shape.
    #[must_use]
    pub fn is_household(&self) -> bool {
        self.plug.known().is_some_and(|plug| plug.0.household())
    }

    /// Its plug, if its ends are known as well: a cord of unknown shape is not in use.
    #[must_use]
    pub fn usable_plug(&self) -> Option<Plug> {
        self.plug.known().copied().filter(|_| self.ends.is_known())
    }

    /// The circuit it passes on, which says how many of its conductors carry current and how many
    /// it needs. That of its plug; an adapter to one receptacle of fewer conductors uses only
    /// these. A splitter of a two-leg plug may use both legs, whatever its ends are.
    #[must_use]
    pub fn circuit(&self) -> Circuit {
        match (self.plug.known().map(|plug| plug.0.circuit()), self.ends()) {
            // Of an unknown plug the circuit that needs most conductors.
            (None | Some(Circuit::TwoLegsNeutral), [only]) => only.0.circuit(),
            (circuit, _) => circuit.unwrap_or(Circuit::TwoLegsNeutral),
        }
    }

    /// The conductors that circuit needs, ground included.
    #[must_use]
    pub fn conductors_needed(&self) -> u8 {
        self.circuit().conductors() + 1
    }

    /// Whether people call it an adapter: one receptacle, of another shape than its plug, on no more
    /// than a metre. Where the length is unknown it is a cord, which is the longer of the two; one
    /// with several receptacles is a splitter, however short. A word for labels, and no more than
    /// that: no rule asks less of an adapter. The metre is common practice, no source.
    #[must_use]
    pub fn is_adapter(&self) -> bool {
        const LONGEST: Length = Length::from_millimetres(1_000);
        let short = self.length.known().is_some_and(|length| *length <= LONGEST);
        matches!((self.plug, self.ends()), (Answer::Known(plug), [only]) if only.0 != plug.0) && short
    }

    /// The id of end `index`, counting from zero.
    #[must_use]
    pub fn end_id(&self, index: usize) -> Id {
        if self.ends().len() == 1 { self.id.clone() } else { self.id.end(index + 1) }
    }

    /// The ids of its ends.
    pub fn end_ids(&self) -> impl Iterator<Item = Id> + use<'_> {
        (0..self.ends().len()).map(|end| self.end_id(end))
    }
}

/// What a box is.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum BoxKind {
    /// Receptacles behind an inlet, and nothing else.
    #[default]
    Distribution,
    /// A camper or a vehicle with a box of its maker's: what runs inside is wired in, or plugged in there.
    Camper,
}

impl Choice for BoxKind {
    const ALL: &'static [(Self, &'static str)] = &[(Self::Distribution, "distribution"), (Self::Camper, "camper")];
}

/// A distribution box, or a camper, which has one inside.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct DistributionBox {
    /// Its id. What runs in a camper is `on` this.
    pub id: Id,
    /// What it is.
    pub kind: BoxKind,
    /// The receptacle it plugs into.
    pub from: Option<Id>,
    /// Its inlet; of a camper the plug that it comes with. Where nobody knows it, it goes in nowhere.
    pub inlet: Answer<Plug>,
    /// Its main breaker, ahead of all that it has. [`Answer::Missing`] means none, but in a camper.
    pub breaker: Answer<Current>,
    /// Whether it is factory made and listed.
    pub listed: Answer<bool>,
    /// Whether neutral is joined to ground inside.
    pub bond: Answer<bool>,
    /// Whether it has been felt hot or soft, or gave a shock. Silence is a no.
    pub hot: Option<bool>,
    /// Whether it is there already, to be looked at. Silence is a yes: who plans what to buy says no.
    pub bought: Option<bool>,
    /// Its receptacles, of which a box has some: none means that nobody knows them. Of a camper those that are reached
    /// from outside.
    pub outlets: Vec<Outlet>,
}

impl DistributionBox {
    /// Whether nobody knows what receptacles it has.
    #[must_use]
    pub fn outlets_unknown(&self) -> bool {
        self.outlets.is_empty() && !self.is_camper()
    }

    /// Its inlet, if its receptacles are known as well: a box of unknown shape is not in use.
    #[must_use]
    pub fn usable_inlet(&self) -> Option<Plug> {
        self.inlet.known().copied().filter(|_| !self.outlets_unknown())
    }

    /// Whether it is a camper.
    #[must_use]
    pub fn is_camper(&self) -> bool {
        self.kind == BoxKind::Camper
    }

    /// Whether it is factory made and listed, as campers are of which nothing is said. Whoever says that nobody knows has a
    /// doubt.
    #[must_use]
    pub fn is_listed(&self) -> Answer<bool> {
        match self.listed {
            Answer::Missing if self.is_camper() => Answer::Known(true),
            answer => answer,
        }
    }

    /// Whether it joins neutral and ground. Factory-made, listed boxes do not, unless somebody says
    /// so, nor do campers.
    #[must_use]
    pub fn joins(&self) -> Answer<bool> {
        match self.bond {
            Answer::Missing if self.is_listed() == Answer::Known(true) => Answer::Known(false),
            answer => answer,
        }
    }
}

/// Something that uses power.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Load {
    /// Its id.
    pub id: Id,
    /// What it is called on prints.
    pub name: String,
    /// How it behaves electrically.
    pub kind: Answer<LoadKind>,
    /// What it draws while it runs.
    pub running: Answer<Draw>,
    /// How many of them, each with its own plug. At least one.
    pub count: u8,
    /// Power for the moments of starting.
    pub starting: Answer<Power>,
    /// The same as the plate has it in amperes, of each of its legs: locked-rotor amps. One of the two
    /// is given at most.
    pub starting_current: Answer<Current>,
    /// Real over apparent power.
    pub power_factor: Answer<Ratio>,
    /// Whether it runs for three hours or more at a stretch.
    pub continuous: Answer<bool>,
    /// How much it matters.
    pub wanted: Wanted,
    /// When it runs. Empty: at any time.
    pub hours: Vec<Span>,
    /// Its plug.
    pub plug: Answer<Plug>,
    /// What it uses of a plug that brings 120 V and 240 V.
    pub voltage: Answer<Uses>,
    /// Where it is plugged in, and stays.
    pub on: Option<Id>,
    /// Whether a battery made for it takes over, for the whole night, when the power goes off.
    pub backup: Answer<bool>,
    /// Where it is plugged in now, if it may be moved: it stays there unless more can be served.
    pub now: Option<Id>,
    /// Whether it or its plug has been felt hot or soft, or gave a shock.
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
    /// The receptacle that it is plugged into, whether it stays there or is only there now.
    #[must_use]
    pub fn plugged_into(&self) -> Option<&Id> {
        self.on.as_ref().or(self.now.as_ref())
    }

    /// Whether this minute is in its hours.
    #[must_use]
    pub fn wants(&self, minute: u16) -> bool {
        self.hours.iter().any(|span| span.contains(minute))
    }

    /// Whether it is of this kind, or nobody knows of which.
    #[must_use]
    pub fn may_be(&self, kind: LoadKind) -> bool {
        self.kind.known().is_none_or(|known| *known == kind)
    }

    /// Whether it makes heat, of whichever use, or nobody knows of which kind it is.
    #[must_use]
    pub fn may_heat(&self) -> bool {
        self.kind.known().is_none_or(|known| known.heats())
    }

    /// Whether it is known to need 240 V: by its plug, which has no neutral, or because somebody said so.
    #[must_use]
    pub fn needs_240(&self) -> bool {
        let plug = self.plug.known();
        self.voltage == Answer::Known(Uses::V240) || plug.is_some_and(|plug| plug.0.circuit() == Circuit::TwoLegs)
    }
}

/// What a load uses of a plug with both hots and a neutral.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Uses {
    /// The 240 V between the hots and nothing else: as much on each leg.
    V240,
    /// 120 V from the hots to the neutral too, shared out in whichever way.
    V120AndV240,
}

impl Choice for Uses {
    const ALL: &'static [(Self, &'static str)] = &[(Self::V240, "240 V"), (Self::V120AndV240, "120/240 V")];
}

/// Electrical behaviour of a load.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum LoadKind {
    /// Resistance heat for rooms, beds and people, and whatever is not to cook with. Older plans say it
    /// of all heat.
    Heater,
    /// Resistance heat to cook with, or to heat water: somebody stands by it, and it is not taken to run
    /// at night unless its hours say so.
    Cooker,
    /// Anything that turns a motor or compressor.
    Motor,
    /// Switched-mode supplies: chargers, televisions.
    Electronic,
    /// Lighting.
    Lamp,
    /// Someone's health depends on it.
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
    /// Whether it is resistance heat: what is worked out of watts and amps is the same for all of it.
    #[must_use]
    pub const fn heats(self) -> bool {
        matches!(self, Self::Heater | Self::Cooker)
    }
}

/// What a load draws, in the figure its nameplate gives.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Draw {
    /// Real power.
    Power(Power),
    /// Current at its rated voltage.
    Current(Current),
    /// A motor's horsepower (in thousandths) and locked-rotor code letter.
    Motor {
        /// Thousandths of a horsepower.
        millihorsepower: u32,
        /// NEC table 430.7(B) letter, if the nameplate has one.
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

/// What is plugged in and has receptacles of its own: a cord or a box.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Gear<'a> {
    /// Its id.
    pub id: &'a Id,
    /// Its plug, or its inlet. `None` while nobody knows its shape: then it is not in use.
    pub plug: Option<Plug>,
    /// The receptacle that the plan puts it into.
    pub from: Option<&'a Id>,
    /// Whether it has been felt hot or soft, or gave a shock.
    pub hot: Option<bool>,
}

impl Plan {
    /// The nominal voltage of a 120 V circuit in this region.
    #[must_use]
    pub const fn line_to_neutral(&self) -> Voltage {
        self.region.line_to_neutral()
    }

    /// The outlets of the generator, then those of the boxes.
    pub fn outlets(&self) -> impl Iterator<Item = &Outlet> + Clone {
        let of_boxes = self.boxes.iter().flat_map(|holder| &holder.outlets);
        self.generator.outlets.iter().chain(of_boxes)
    }

    /// The same, to change them.
    pub(crate) fn outlets_mut(&mut self) -> impl Iterator<Item = &mut Outlet> {
        let of_boxes = self.boxes.iter_mut().flat_map(|holder| &mut holder.outlets);
        self.generator.outlets.iter_mut().chain(of_boxes)
    }

    /// The outlet of this id.
    pub(crate) fn outlet(&self, id: impl AsRef<str>) -> Option<&Outlet> {
        self.outlets().find(|it| it.id.as_str() == id.as_ref())
    }

    /// The same, to change it.
    pub(crate) fn outlet_mut(&mut self, id: impl AsRef<str>) -> Option<&mut Outlet> {
        self.outlets_mut().find(|it| it.id.as_str() == id.as_ref())
    }

    /// The cord of this id.
    pub(crate) fn cord(&self, id: impl AsRef<str>) -> Option<&Cord> {
        self.cords.iter().find(|it| it.id.as_str() == id.as_ref())
    }

    /// The same, to change it.
    pub(crate) fn cord_mut(&mut self, id: impl AsRef<str>) -> Option<&mut Cord> {
        self.cords.iter_mut().find(|it| it.id.as_str() == id.as_ref())
    }

    /// The box or camper of this id.
    pub(crate) fn holder(&self, id: impl AsRef<str>) -> Option<&DistributionBox> {
        self.boxes.iter().find(|it| it.id.as_str() == id.as_ref())
    }

    /// The same, to change it.
    pub(crate) fn holder_mut(&mut self, id: impl AsRef<str>) -> Option<&mut DistributionBox> {
        self.boxes.iter_mut().find(|it| it.id.as_str() == id.as_ref())
    }

    /// The load of this id.
    pub(crate) fn load(&self, id: impl AsRef<str>) -> Option<&Load> {
        self.loads.iter().find(|it| it.id.as_str() == id.as_ref())
    }

    /// The same, to change it.
    pub(crate) fn load_mut(&mut self, id: impl AsRef<str>) -> Option<&mut Load> {
        self.loads.iter_mut().find(|it| it.id.as_str() == id.as_ref())
    }

    /// The cords, then the boxes.
    pub(crate) fn gear(&self) -> impl Iterator<Item = Gear<'_>> {
        let cords = self.cords.iter();
        let cords = cords.map(|it| Gear { id: &it.id, plug: it.usable_plug(), from: it.from.as_ref(), hot: it.hot });
        let boxes = self.boxes.iter();
        let boxes = boxes.map(|it| Gear { id: &it.id, plug: it.usable_inlet(), from: it.from.as_ref(), hot: it.hot });
        cords.chain(boxes)
    }

    /// The cord or box of this id.
    pub(crate) fn gear_of(&self, id: impl AsRef<str>) -> Option<Gear<'_>> {
        self.gear().find(|it| it.id.as_str() == id.as_ref())
    }

    /// Where each cord is plugged in, and then each box, to change that.
    pub(crate) fn gear_mut(&mut self) -> impl Iterator<Item = (&Id, &mut Option<Id>)> {
        let cords = self.cords.iter_mut().map(|it| (&it.id, &mut it.from));
        cords.chain(self.boxes.iter_mut().map(|it| (&it.id, &mut it.from)))
    }

    /// The cords, boxes and outlets that have been felt hot or soft, or gave a shock.
    pub fn felt_hot(&self) -> impl Iterator<Item = &Id> {
        let outlets = self.outlets().map(|outlet| (&outlet.id, outlet.hot));
        let all = outlets.chain(self.gear().map(|it| (it.id, it.hot)));
        all.filter(|(_, hot)| *hot == Some(true)).map(|(id, _)| id)
    }

    /// What the plan puts into an outlet that has been felt hot: its plug was as hot, and nobody has said that it was not.
    pub(crate) fn in_hot_outlets(&self) -> Vec<(Id, Id)> {
        let hot = self.outlets().filter(|outlet| outlet.hot == Some(true));
        let hot: Vec<&Id> = hot.map(|outlet| &outlet.id).collect();
        if hot.is_empty() {
            return Vec::new();
        }
        let gear = self.gear().map(|it| (it.id, it.from, it.hot));
        let loads = self.loads.iter().map(|it| (&it.id, it.on.as_ref(), it.hot));
        let there = gear.chain(loads).filter_map(|(id, at, said)| Some((id, at?, said)));
        let there = there.filter(|(_, at, said)| said.is_none() && hot.contains(at));
        there.map(|(id, at, _)| (id.clone(), at.clone())).collect()
    }

    /// Says of a cord, a box, an outlet or a load that it has been felt hot.
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

    /// The cords and boxes that are not in use because nobody knows their shape.
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

    /// Whether the plan puts a cord, a box or a load into this receptacle.
    #[must_use]
    pub fn takes(&self, receptacle: &Id) -> bool {
        let gear = self.gear().map(|it| it.from);
        let mut plugged = gear.chain(self.loads.iter().map(|load| load.on.as_ref()));
        plugged.any(|at| at == Some(receptacle))
    }

    /// The camper of this id.
    #[must_use]
    pub fn camper(&self, id: &Id) -> Option<&DistributionBox> {
        self.holder(id).filter(|it| it.is_camper())
    }

    /// The camper that a load runs in.
    #[must_use]
    pub fn around(&self, load: &Load) -> Option<&DistributionBox> {
        self.camper(load.on.as_ref()?)
    }

    /// The cord or box that has this receptacle; `None` for what is the generator's, and for what is none.
    #[must_use]
    pub fn part_of(&self, receptacle: &Id) -> Option<&Id> {
        // An end begins with the name of its cord, which is quickly told.
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
        // 3 ft, and the last millimetre of a metre.
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
