//! Interprets a short report of something seen at camp, and applies it to the plan.
//!
//! The part and the figure decide the meaning: amps are where a breaker tripped, volts are a meter reading, hours are
//! how long a tank lasted. An observation can only make a plan more cautious. Ambiguous text is an error, so that the
//! user is asked again.

use std::ops::Range;

use crate::plan::{Cord, Id, Plan, Runtime, bounds};
use crate::quantity::{ApparentPower, Current, Hours, Percent, Power, Quantity as _, Round, Voltage};
use crate::report::sums::Adder;
use crate::report::{Report, Signal, Value, Values};
use crate::rules::values;
use crate::supply::{NodeKind, Supply, below_trip};
use crate::tables::shape::Circuit;
use crate::tables::volts::{HIGH, SERVICE_LEAST, SERVICE_MOST, USE_LEAST, at_nominal};

/// Something seen at camp.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Seen {
    /// The carbon monoxide alarm sounded.
    Alarm,
    /// Something is on fire.
    Fire,
    /// Somebody got a shock. The part or load, if one is named.
    Shock(Option<Id>),
    /// A part or load, or a plug in it, was hot, soft or burned.
    Hot(Id),
    /// A part was warm, but no more than that.
    Warm(Id),
    /// A GFCI cut the power at this part.
    Gfci(Id),
    /// The breaker of this part tripped.
    Tripped {
        /// The part.
        at: Id,
        /// The total current at the time. `None` if nobody said: then it is what the plan runs there.
        amps: Option<Current>,
    },
    /// A meter reading.
    Meter {
        /// The part.
        at: Id,
        /// The voltage shown.
        volts: Voltage,
    },
    /// How long the generator ran on a full tank.
    Ran(Hours),
}

/// Why the text was not understood.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Unclear {
    /// It says what did not happen.
    Not,
    /// It names no part, and needs one.
    NoPart,
    /// It names several parts.
    Parts(Vec<Id>),
    /// It has no figure, no plausible one, or two of them.
    NoFigure,
    /// It says that a breaker tripped here, but not at how many amps, and the plan runs nothing there.
    NoAmps(Id),
    /// It gives amps, but does not say that a breaker tripped.
    NoTrip,
    /// It gives amps for a part with no breaker that the plan knows of.
    NoBreaker(Id),
}

/// Words of one language that carry meaning, in lower case.
#[derive(Clone, Debug)]
pub struct Vocabulary {
    /// A carbon monoxide alarm.
    pub alarm: Vec<String>,
    /// Flames.
    pub fire: Vec<String>,
    /// An electric shock.
    pub shock: Vec<String>,
    /// Hot, soft or burned.
    pub hot: Vec<String>,
    /// Warm.
    pub warm: Vec<String>,
    /// Intensifiers, such as "too".
    pub very: Vec<String>,
    /// Negations.
    pub not: Vec<String>,
    /// A breaker that tripped.
    pub trip: Vec<String>,
    /// The words for the numbers from one to twenty, then thirty and forty, each with its other forms.
    pub numbers: Vec<Vec<String>>,
    /// A half, with which a number in words is another one.
    pub half: Vec<String>,
}

impl Vocabulary {
    /// Returns the number that a word stands for.
    fn number(&self, word: &str) -> Option<usize> {
        let at = self.numbers.iter().position(|forms| forms.iter().any(|form| form == word))?;
        Some(if at < 20 { at + 1 } else { (at - 17) * 10 })
    }

    /// Returns the words with numbers in digits: "thirty two" is "32".
    ///
    /// Numbers that are put together in another way stay as they are, so that none is taken for a part of itself.
    fn in_digits(&self, words: &[&str]) -> Vec<String> {
        let as_typed = || words.iter().map(|word| (*word).to_owned()).collect();
        let number = |word: &str| {
            let word = word.to_lowercase();
            self.number(&word).or_else(|| {
                let (tens, ones) = word.split_once('-')?;
                joined(self.number(tens)?, self.number(ones)?)
            })
        };
        if words.iter().any(|word| self.half.contains(&word.to_lowercase())) {
            return as_typed();
        }
        let mut found = Vec::new();
        let mut before: Option<(usize, usize)> = None;
        for (at, word) in words.iter().enumerate() {
            let Some(here) = number(word) else {
                found.push((*word).to_owned());
                continue;
            };
            match before.replace((at, here)).map(|(place, before)| (at - place, before)) {
                Some((1, before)) if let Some(both) = joined(before, here) => {
                    found.pop();
                    found.push(both.to_string());
                }
                // "Treinta y cinco" is none of its words.
                Some((1, _)) => return as_typed(),
                Some((2, before)) if joined(before, here).is_some() => return as_typed(),
                _ => found.push(here.to_string()),
            }
        }
        found
    }
}

/// Returns the number that tens and ones make.
fn joined(tens: usize, ones: usize) -> Option<usize> {
    (tens >= 20 && tens.is_multiple_of(10) && ones < 10).then_some(tens + ones)
}

/// What an observation means.
#[derive(Clone, Debug)]
pub struct Learned {
    /// The plan with the observation applied.
    pub plan: Plan,
    /// The key of the message that explains it: `learned-KEY`.
    pub key: &'static str,
    /// The values that message needs.
    pub values: Values,
    /// How severe the observation is by itself, whatever the plan says.
    pub signal: Option<Signal>,
}

/// How many words before another a negation still applies to it.
const NEAR: usize = 3;

/// The word for a GFCI in every supported language.
const GFCI: &str = "gfci";

/// Returns every part that a label may name, and the ends of cords.
fn parts(plan: &Plan) -> Vec<Id> {
    let ends = plan.cords.iter().flat_map(Cord::end_ids);
    let mut all: Vec<Id> = plan.outlets().map(|outlet| outlet.id.clone()).collect();
    all.extend(plan.cords.iter().map(|cord| cord.id.clone()));
    all.extend(plan.boxes.iter().map(|holder| holder.id.clone()));
    all.extend(ends);
    all.sort_unstable();
    all.dedup();
    all
}

/// The words of a text, and of those with hyphens their pieces, each with the number of its word.
struct Pieces<'t>(Vec<(usize, &'t str)>);

impl<'t> Pieces<'t> {
    fn of(words: &[&'t str]) -> Self {
        let pieces = words.iter().enumerate().flat_map(|(at, word)| word.split('-').map(move |piece| (at, piece)));
        Self(pieces.collect())
    }

    /// Returns where a name stands, whether it is written with hyphens or with spaces.
    fn places(&self, name: &str) -> Vec<Range<usize>> {
        let name = name.to_lowercase();
        let name: Vec<&str> = name.split(|c: char| c.is_whitespace() || c == '-').filter(|it| !it.is_empty()).collect();
        if name.is_empty() {
            return Vec::new();
        }
        let starts = 0..(self.0.len() + 1).saturating_sub(name.len());
        let all = starts.map(|from| from..from + name.len());
        all.filter(|at| self.0[at.clone()].iter().map(|(_, piece)| *piece).eq(name.iter().copied())).collect()
    }

    /// Returns which of these things are named, and where. A name inside a longer one is not meant.
    fn named<T: Clone + PartialEq>(&self, things: impl Iterator<Item = (T, String)>) -> Vec<(T, Range<usize>)> {
        let all: Vec<(T, Range<usize>)> = things
            .flat_map(|(thing, name)| self.places(&name).into_iter().map(move |at| (thing.clone(), at)))
            .collect();
        let inside = |at: &Range<usize>| {
            all.iter().any(|(_, other)| other.len() > at.len() && other.start <= at.start && at.end <= other.end)
        };
        all.iter().filter(|(_, at)| !inside(at)).cloned().collect()
    }
}

/// Returns the one thing that is named.
fn one_of(named: &[(Id, Range<usize>)]) -> Result<Id, Unclear> {
    let mut ids: Vec<Id> = named.iter().map(|(id, _)| id.clone()).collect();
    ids.sort_unstable();
    ids.dedup();
    match ids.as_slice() {
        [] => Err(Unclear::NoPart),
        [one] => Ok(one.clone()),
        _ => Err(Unclear::Parts(ids)),
    }
}

/// Returns a word without the punctuation around it.
fn bare(word: &str) -> &str {
    const MARKS: [char; 13] = [',', '.', ';', ':', '!', '?', '"', '\'', '“', '”', '„', '«', '»'];
    word.trim_matches(MARKS)
}

/// Returns the figures in some words. A number and its unit may be one word or two.
fn figures<Q>(words: &[&str], read: impl Fn(&str) -> Option<Q>) -> Vec<Q> {
    let number = |word: &str| word.starts_with(|c: char| c.is_ascii_digit());
    let begun = words.iter().enumerate().filter(|(_, word)| number(word));
    begun
        .filter_map(|(at, word)| {
            let unit = words.get(at + 1).filter(|next| !number(next));
            read(word).or_else(|| read(&format!("{word} {}", unit?)))
        })
        .collect()
}

/// Interprets text as an observation. `typed` converts a number with its unit to the form that plans use.
///
/// # Errors
/// When the text does not mean exactly one thing.
pub fn understand(
    plan: &Plan,
    text: &str,
    vocabulary: &Vocabulary,
    typed: impl Fn(&str) -> Option<String>,
) -> Result<Seen, Unclear> {
    let lower = text.to_lowercase();
    let folded: Vec<&str> = lower.split_whitespace().map(bare).collect();
    let is_in = |any: &[String], word: &&str| any.iter().any(|it| it == word);
    let says = |any: &[String]| folded.iter().any(|word| is_in(any, word));
    // An emergency wins, whatever else the text says.
    if says(&vocabulary.alarm) {
        return Ok(Seen::Alarm);
    }
    if says(&vocabulary.fire) {
        return Ok(Seen::Fire);
    }
    let pieces = Pieces::of(&folded);
    let named = pieces.named(parts(plan).into_iter().map(|id| (id.clone(), id.to_string())));
    let part = one_of(&named);
    // Words that name a part are not figures.
    let in_name =
        |at: usize| named.iter().any(|(_, place)| pieces.0[place.clone()].iter().any(|(word, _)| *word == at));
    let words = text.split_whitespace().map(bare).enumerate().filter(|(at, _)| !in_name(*at));
    let words: Vec<&str> = words.map(|(_, word)| word).collect();
    let words = vocabulary.in_digits(&words);
    let words: Vec<&str> = words.iter().map(String::as_str).collect();
    // A bad cord end counts against the whole cord.
    let whole = |id: Id| {
        let mut cords = plan.cords.iter();
        let cord = cords.find(|cord| cord.end_ids().any(|end| end == id));
        cord.map_or(id, |cord| cord.id.clone())
    };
    // Shock and heat are the only observations about a load. If a part is named too, the load is what was plugged in
    // there.
    let part_or_load = || match &part {
        Err(Unclear::NoPart) => {
            let loads = plan.loads.iter();
            let said =
                loads.flat_map(|load| [load.id.to_string(), load.name.clone()].map(|name| (load.id.clone(), name)));
            one_of(&pieces.named(said))
        }
        named => named.clone(),
    };
    if says(&vocabulary.shock) {
        return Ok(Seen::Shock(part_or_load().ok().map(whole)));
    }
    // "Not hot" and "was not so hot" do not count. "Hot, and did not trip" does.
    let felt = |any: &[String]| {
        let mut words = folded.iter().enumerate().filter(|(_, word)| is_in(any, word));
        words.any(|(at, _)| {
            let before = &folded[at.saturating_sub(NEAR)..at];
            !before.iter().any(|word| is_in(&vocabulary.not, word))
        })
    };
    let warm = felt(&vocabulary.warm);
    if felt(&vocabulary.hot) || warm && says(&vocabulary.very) {
        return part_or_load().map(whole).map(Seen::Hot);
    }
    if says(&vocabulary.not) {
        return Err(Unclear::Not);
    }
    if warm {
        return part.map(whole).map(Seen::Warm);
    }
    if folded.contains(&GFCI) {
        return part.map(Seen::Gfci);
    }
    let amps = figures(&words, |text| bounds::TRIPS_AT.read(&typed(text)?).ok());
    let volts = figures(&words, |text| Voltage::parse(&typed(text)?, Round::Down).ok());
    let hours = figures(&words, |text| bounds::LASTS.read(&typed(text)?).ok());
    let tripped = says(&vocabulary.trip);
    // Watts are amps where an outlet has one leg. At less than nominal volts there were more amps, so this is careful.
    let one_leg = |id: &Id| plan.outlet(id).is_some_and(|it| it.shape.0.circuit() == Circuit::OneLeg);
    let millivolts = plan.region.line_to_neutral().millivolts();
    let watts = figures(&words, |text| Power::parse(&typed(text)?, Round::Down).ok());
    let of_watts = watts.iter().filter_map(|watts| {
        Some(Current::from_milliamps(watts.milliwatts() * 1000 / millivolts))
            .filter(|amps| bounds::TRIPS_AT.hold(*amps))
    });
    let of_watts = of_watts.filter(|_| tripped && part.as_ref().is_ok_and(one_leg));
    let amps: Vec<Current> = amps.into_iter().chain(of_watts).collect();
    // Of several trips or run times, take the most cautious.
    match (amps.into_iter().min(), volts.as_slice(), hours.into_iter().min()) {
        (Some(amps), _, _) if tripped => part.map(|at| Seen::Tripped { at, amps: Some(amps) }),
        (Some(_), _, _) => Err(Unclear::NoTrip),
        (None, [], _) if tripped && !watts.is_empty() => Err(part.map_or_else(|unclear| unclear, Unclear::NoAmps)),
        // Nobody has an ammeter at camp. However long it took, what the plan runs there was too much.
        (None, [], _) if tripped => part.map(|at| Seen::Tripped { at, amps: None }),
        (None, [volts], _) if !tripped => part.map(|at| Seen::Meter { at, volts: *volts }),
        (None, [], Some(hours)) if !tripped && part == Err(Unclear::NoPart) => Ok(Seen::Ran(hours)),
        _ => Err(part.err().unwrap_or(Unclear::NoFigure)),
    }
}

/// Applies an observation to a plan, and says what it means.
///
/// # Errors
/// When a breaker is said to have tripped: [`Unclear::NoBreaker`] if the plan knows of none there, and
/// [`Unclear::NoAmps`] if nobody said at how many amps, and the plan runs nothing there.
pub fn learn(plan: &Plan, report: &Report, seen: &Seen) -> Result<Learned, Unclear> {
    let mut after = plan.clone();
    let of = |id: &Id| values([("part", named(id))]);
    let (key, told) = match seen {
        Seen::Alarm => ("alarm", values([])),
        Seen::Fire => ("fire", values([])),
        // Treated like a hot part: not to be used until somebody has looked at it.
        Seen::Shock(Some(id)) => {
            let marked = mark(&mut after, report, id, true);
            ("shock-at", values([("part", marked)]))
        }
        Seen::Shock(None) => ("shock", values([])),
        Seen::Hot(id) => {
            let marked = mark(&mut after, report, id, false);
            ("hot", values([("part", marked)]))
        }
        Seen::Warm(id) => ("warm", of(id)),
        Seen::Gfci(id) => ("gfci", of(id)),
        Seen::Tripped { at, amps } => tripped(&mut after, report, at, *amps)?,
        Seen::Meter { at, volts } => metered(plan, report, at, *volts),
        Seen::Ran(hours) => ran(&mut after, *hours),
    };
    let signal = match key {
        "alarm" | "fire" | "shock" | "shock-at" | "meter-high" => Some(Signal::Danger),
        "gfci" | "meter-low" | "meter-source" | "meter-none" | "meter-raised" => Some(Signal::Warning),
        _ => None,
    };
    Ok(Learned { plan: after, key, values: told, signal })
}

fn named(id: &Id) -> Value {
    Value::Parts(vec![id.clone()])
}

/// Returns the most current on one leg that the plan runs at a breaker, of what may be on together.
fn planned_at(plan: &Plan, report: &Report, breaker: &Id) -> Option<Current> {
    let supply = Supply::build(plan);
    let (at, _) =
        supply.points().find(|(_, node)| node.id == *breaker && matches!(node.kind, NodeKind::Breaker { .. }))?;
    let adder = Adder::new(report, &supply);
    let sums = report.figures.sharing.together.iter().map(|set| adder.running_at(at, set));
    let most = sums.max().filter(|most| *most > ApparentPower::ZERO)?;
    Some(Current::of_apparent(most, supply.volts))
}

fn tripped(
    plan: &mut Plan,
    report: &Report,
    at: &Id,
    said: Option<Current>,
) -> Result<(&'static str, Values), Unclear> {
    // The part's own breaker, or the nearest one upstream.
    let mut proofs = report.figures.protection.iter();
    let ahead = proofs.find_map(|proof| proof.breaker_at.clone().filter(|_| proof.id == *at));
    let outlet = ahead.unwrap_or_else(|| at.clone());
    let planned = if said.is_none() { planned_at(plan, report, &outlet) } else { None };
    let outlet = plan.outlet_mut(&outlet).ok_or_else(|| Unclear::NoBreaker(at.clone()))?;
    let tripped_at = said.or(planned).filter(|amps| bounds::TRIPS_AT.hold(*amps));
    let amps = tripped_at.ok_or_else(|| Unclear::NoAmps(at.clone()))?;
    let marked = outlet.breaker.known().copied();
    // As far as we know, no receptacle has a breaker larger than its own rating.
    let most = marked.unwrap_or_else(|| outlet.shape.0.rating());
    let counted = outlet.trips_at.map_or(most, |known| known.min(most));
    let told = |marked: Current| {
        let part = ("part", named(&outlet.id));
        let counted = ("counted", below_trip(amps).into());
        values([part, ("amps", amps.into()), ("marked", marked.into()), ("demand", amps.into()), counted])
    };
    Ok(match marked {
        Some(_) if most <= amps => ("tripped-made", told(most)),
        None if most <= amps => ("tripped-unknown", told(most)),
        _ if counted <= amps => ("tripped-known", told(below_trip(counted))),
        _ => {
            let told = told(counted);
            outlet.trips_at = Some(amps);
            (if planned.is_some() { "tripped-planned" } else { "tripped" }, told)
        }
    })
}

/// Marks a part or load as hot, and what is plugged into it: everything in a hot outlet, and after a shock the loads
/// placed there. Returns everything marked, with `id` first.
fn mark(plan: &mut Plan, report: &Report, id: &Id, shock: bool) -> Value {
    plan.feel_hot(id);
    let mut marked = vec![id.clone()];
    let mut there: Vec<Id> = plan.in_hot_outlets().into_iter().map(|(id, _)| id).collect();
    if shock {
        let ends = |at: &Id| at == id || plan.part_of(at) == Some(id);
        let placed = report.figures.sharing.placed.iter();
        let placed = placed.filter(|placed| ends(&placed.at));
        there.extend(placed.filter_map(|placed| Some(report.figures.load(&placed.load)?.of.clone())));
    }
    for part in there {
        if !marked.contains(&part) {
            plan.feel_hot(&part);
            marked.push(part);
        }
    }
    Value::Parts(marked)
}

/// Returns the nominal volts at a part, and the volts lost on the way there with everything on that may be on together.
/// `None` where the plan runs nothing.
fn lost_at(plan: &Plan, report: &Report, at: &Id) -> Option<(Voltage, Voltage)> {
    let part = |id: &Id| plan.part_of(id).unwrap_or(id).clone();
    let here = part(at);
    let drops = report.figures.drops.iter();
    let lost = drops
        .filter(|drop| part(&drop.receptacle) == here)
        .map(|drop| (&drop.receptacle, drop.volts_running))
        .max_by_key(|(_, lost)| *lost);
    let (receptacle, lost) = lost?;
    let nominal = report.figures.limit(receptacle)?.volts;
    (lost < nominal).then_some((nominal, lost))
}

fn metered(plan: &Plan, report: &Report, at: &Id, volts: Voltage) -> (&'static str, Values) {
    if volts == Voltage::ZERO {
        return ("meter-none", values([("part", named(at))]));
    }
    let nominal = report.figures.limit(at).map(|it| it.volts);
    let line = plan.line_to_neutral();
    // On a 240 V outlet, a meter between one hot slot and the neutral shows half.
    let half = |nominal: &Voltage| *nominal > line && volts.millivolts() * 4 < nominal.millivolts() * 3;
    let base = nominal.filter(|nominal| !half(nominal)).unwrap_or(line);
    // The generator's voltage under load is unknown, but a sound one gives at least this.
    let source = at_nominal(SERVICE_LEAST, base);
    let told = |least: Voltage, more: Voltage| {
        let part = ("part", named(at));
        values([
            part,
            ("volts", volts.into()),
            ("least", least.into()),
            ("more", more.into()),
            ("source", source.into()),
        ])
    };
    let high = at_nominal(HIGH, base);
    if volts > high {
        return ("meter-high", told(high, volts));
    }
    let most = at_nominal(SERVICE_MOST, base);
    if volts > most {
        return ("meter-raised", told(most, volts));
    }
    if plan.generator.outlets.iter().any(|outlet| outlet.id == *at) {
        let key = if volts < source { "meter-source" } else { "meter-fine" };
        return (key, told(source, volts));
    }
    match lost_at(plan, report, at).filter(|(nominal, _)| *nominal == base) {
        None => ("meter-unknown", told(at_nominal(USE_LEAST, base), volts)),
        Some((nominal, lost)) => {
            let least = nominal - lost;
            let key = match () {
                () if volts >= least => "meter-fine",
                () if volts + lost >= source => "meter-compare",
                () => "meter-low",
            };
            (key, told(least, volts + lost))
        }
    }
}

fn ran(plan: &mut Plan, hours: Hours) -> (&'static str, Values) {
    /// A tank that lasts only this long at the least load lasts no longer at any other.
    const LEAST: Percent = Percent::from_millipercent(1_000);
    let told = values([("hours", hours.into())]);
    let known = &mut plan.generator.runtime;
    if known.is_empty() {
        return ("ran-unknown", told);
    }
    let careful = |point: &Runtime| point.load <= LEAST && point.lasts <= hours;
    if known.iter().any(careful) || known.iter().all(|point| point.lasts <= hours) {
        return ("ran-more", told);
    }
    known.retain(|point| point.load > LEAST);
    known.insert(0, Runtime { load: LEAST, lasts: hours });
    ("ran-less", told)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::judge;
    use crate::plan::{demo, read};
    use crate::words::{Units, Words};

    fn plan() -> Plan {
        read(demo::MENDED).expect("the demo")
    }

    fn said(plan: &Plan, text: &str, words: &Words) -> Result<Seen, Unclear> {
        let typed = |text: &str| words.plain_numbers(text).ok();
        understand(plan, text, &words.vocabulary(), typed)
    }

    fn understood(text: &str) -> Result<Seen, Unclear> {
        said(&plan(), text, &Words::english())
    }

    fn id(text: &str) -> Id {
        Id::new(text).expect("an id")
    }

    /// Returns the key of the meaning, and the plan with the observation applied.
    fn learned(text: &str) -> (&'static str, Plan) {
        let plan = plan();
        let seen = understood(text).expect(text);
        let learned = learn(&plan, &judge::build(&plan), &seen).expect(text);
        (learned.key, learned.plan)
    }

    /// 1560 W at 120 V is 13 A. On a twist outlet with both legs, watts do not say how many amps one leg had.
    #[test]
    fn watts_are_amps_where_an_outlet_has_one_leg() {
        let (at, amps) = (id("front"), Some(Current::from_milliamps(13_000)));
        assert_eq!(understood("front tripped at 1560 W"), Ok(Seen::Tripped { at, amps }));
        let mut two = plan();
        let twist = two.outlet_mut("twist").expect("an outlet");
        twist.shape = crate::tables::shape::Receptacle::named("L14-30R").expect("a shape");
        assert_eq!(said(&two, "twist tripped at 1560 W", &Words::english()), Err(Unclear::NoAmps(id("twist"))));
    }

    #[test]
    fn the_figure_and_the_part_say_what_was_seen() {
        let amps = Some(Current::from_milliamps(13_000));
        for text in [
            "front tripped at 13 A",
            "front tripped at thirteen amps, after twenty minutes",
            "13A: front trips",
            "“Front” tripped with 13 amps on, after 20 min",
            "front tripped twice, 15 A and 13 A",
        ] {
            let at = id("front");
            assert_eq!(understood(text), Ok(Seen::Tripped { at, amps }), "{text}");
        }
        let volts = Voltage::from_millivolts(109_500);
        for text in ["box-left 109.5 V", "the meter at box-left shows 109.5 volts."] {
            let at = id("box-left");
            assert_eq!(understood(text), Ok(Seen::Meter { at, volts }), "{text}");
        }
        assert_eq!(understood("ran thirty-two hours"), Ok(Seen::Ran(Hours::from_millihours(32_000))));
        assert_eq!(understood("It ran an hour"), Ok(Seen::Ran(Hours::from_millihours(1_000))));
        let hours = Hours::from_millihours(7_500);
        assert_eq!(understood("ran 7.5 hours on a tank"), Ok(Seen::Ran(hours)));
        // A cord end stands for the cord, and heat counts whatever figure comes with it.
        for text in ["tents.2 was HOT at 9 A", "tents too warm to touch", "tents.1 smells burned"] {
            assert_eq!(understood(text), Ok(Seen::Hot(id("tents"))), "{text}");
        }
        assert_eq!(understood("box warm"), Ok(Seen::Warm(id("box"))));
        assert_eq!(understood("the GFCI of front tripped at 5 A"), Ok(Seen::Gfci(id("front"))));
        assert_eq!(understood("I got a shock from box-right"), Ok(Seen::Shock(Some(id("box-right")))));
        assert_eq!(understood("got a shock"), Ok(Seen::Shock(None)));
        // What was hot, and an emergency, count whatever else is said.
        assert_eq!(understood("box hot, the breaker did not trip"), Ok(Seen::Hot(id("box"))));
        for text in ["the CO alarm will not stop", "I feel dizzy, not hot"] {
            assert_eq!(understood(text), Ok(Seen::Alarm), "{text}");
        }
        // Nobody is sent to pull a plug out of a fire.
        for text in ["fire", "the cord tents is on fire", "flames at box-left"] {
            assert_eq!(understood(text), Ok(Seen::Fire), "{text}");
        }
    }

    /// A name that ends in a figure, or is typed in capitals, is still a name.
    #[test]
    fn a_name_is_no_figure() {
        let text = demo::MENDED.replace("box-left", "box-2").replace("box-right", "20a");
        let plan = read(&text).expect("a plan");
        let volts = Voltage::from_millivolts(109_000);
        let at = id("box-2");
        let seen = said(&plan, "box-2 109 V", &Words::english());
        assert_eq!(seen, Ok(Seen::Meter { at, volts }));
        let (at, amps) = (id("20a"), Some(Current::from_milliamps(13_000)));
        let seen = said(&plan, "20A tripped at 13 A", &Words::english());
        assert_eq!(seen, Ok(Seen::Tripped { at, amps }));
    }

    /// A part is named by its words, however they are joined. The longest name counts.
    #[test]
    fn a_part_is_named_by_its_words() {
        let text = demo::MENDED.replace("\"tents\"", "\"orange-cord\"").replace("\"long\"", "\"cord\"");
        let plan = read(&text).expect("a plan");
        let seen = |text: &str| said(&plan, text, &Words::english());
        for text in ["the orange cord got warm", "Orange-cord: warm.", "orange  CORD warm"] {
            assert_eq!(seen(text), Ok(Seen::Warm(id("orange-cord"))), "{text}");
        }
        assert_eq!(seen("the cord got warm"), Ok(Seen::Warm(id("cord"))));
        let volts = Voltage::from_millivolts(109_000);
        assert_eq!(seen("box left 109 V"), Ok(Seen::Meter { at: id("box-left"), volts }));
        let both = vec![id("cord"), id("orange-cord")];
        assert_eq!(seen("the cord and the orange cord got warm"), Err(Unclear::Parts(both)));
    }

    /// No number is taken for a part of itself.
    #[test]
    fn a_number_in_words_is_whole_or_none() {
        let hours = |hours: i64| Ok(Seen::Ran(Hours::from_millihours(hours * 1000)));
        for (tag, text, seen) in [
            ("en", "ran twenty five hours", hours(25)),
            ("en", "ran an hour and a half", Err(Unclear::NoPart)),
            ("en", "ran half an hour", Err(Unclear::NoPart)),
            ("es", "treinta y cinco horas", Err(Unclear::NoPart)),
            ("es", "una hora", hours(1)),
            ("es", "veinte horas", hours(20)),
            ("fr", "dix-sept heures", hours(17)),
            ("fr", "vingt-deux heures", hours(22)),
            ("fr", "une heure et demie", Err(Unclear::NoPart)),
            ("de", "vierzig Stunden", hours(40)),
            ("de", "eine Stunde", hours(1)),
            ("de", "eine halbe Stunde", Err(Unclear::NoPart)),
        ] {
            let words = Words::new(tag, Units::Metric).expect(tag);
            assert_eq!(said(&plan(), text, &words), seen, "{tag}: {text}");
        }
    }

    /// Nobody has an ammeter at camp. What the plan has on that breaker at once was too much, so the new limit is below
    /// that. By hand: the kettle's 1500 W at 120 V are 12.5 A, and the griddle with it would be more than 20 A.
    #[test]
    fn without_amps_what_the_plan_runs_there_was_too_much() {
        for text in ["box-left tripped after twenty minutes", "box-left tripped"] {
            let before = plan();
            let report = judge::build(&before);
            let seen = understood(text).expect(text);
            assert_eq!(seen, Seen::Tripped { at: id("box-left"), amps: None });
            let learned = learn(&before, &report, &seen).expect(text);
            assert_eq!(learned.key, "tripped-planned", "{text}");
            let mut after = learned.plan;
            let trips = after.outlet_mut(id("box-left")).expect("an outlet").trips_at.expect("a limit");
            assert_eq!(trips.milliamps(), 12_500, "{text}");
            let counted = Current::from_milliamps(12_000);
            assert_eq!(learned.values.get("counted"), Some(&counted.into()));
            // Whatever drew that much may not be on any more.
            let now = judge::build(&after);
            let drawn = planned_at(&after, &now, &id("box-left"));
            assert!(drawn.is_none_or(|drawn| drawn <= counted), "{drawn:?}");
        }
        // Where nothing runs, it is asked.
        let mut empty = plan();
        empty.loads.clear();
        let report = judge::build(&empty);
        let seen = said(&empty, "box-left tripped", &Words::english()).expect("a trip");
        assert_eq!(learn(&empty, &report, &seen).expect_err("unclear"), Unclear::NoAmps(id("box-left")));
    }

    /// The time until a breaker tripped is not a run time, a figure without a part fits no breaker, two parts are
    /// ambiguous, and what did not happen teaches nothing.
    #[test]
    fn what_could_be_two_things_is_asked_again() {
        assert_eq!(understood("it tripped"), Err(Unclear::NoPart));
        assert_eq!(understood("front 3 h"), Err(Unclear::NoFigure));
        assert_eq!(understood("tripped at 13 A"), Err(Unclear::NoPart));
        assert_eq!(understood("front 13 A"), Err(Unclear::NoTrip));
        assert_eq!(understood("front did not trip at 13 A"), Err(Unclear::Not));
        assert_eq!(understood("box-left 118 V with nothing on"), Err(Unclear::Not));
        assert_eq!(understood("box-left 118 V, then 109 V"), Err(Unclear::NoFigure));
        assert_eq!(understood("tents were not hot"), Err(Unclear::Not));
        assert_eq!(understood("it got hot"), Err(Unclear::NoPart));
        assert_eq!(understood("whatever"), Err(Unclear::NoPart));
        let both = vec![id("box-left"), id("front")];
        let text = "front or box-left tripped at 13 A";
        assert_eq!(understood(text), Err(Unclear::Parts(both)));
    }

    /// The message about missing amps offers a command that is itself understood.
    #[test]
    fn the_command_to_type_is_understood() {
        for tag in ["en", "es", "fr", "de"] {
            let words = Words::new(tag, Units::Metric).expect(tag);
            let (why, instead) = words.unclear(&Unclear::NoAmps(id("front")), "camp.toml");
            assert!(why.contains("front"), "{tag}: {why}");
            let (_, said_so) = instead.split_once("tallywatt learned camp.toml ").expect(tag);
            let seen = said(&plan(), said_so, &words);
            assert!(matches!(seen, Ok(Seen::Tripped { .. })), "{tag}: {said_so}");
        }
    }

    /// What it tripped at is not offered again, nor anything above the next whole ampere below: on labels, or by an
    /// answer. By hand: it tripped at 13 A, so it counts for 12 A, and for 80 % of that for hours, 9.6 A.
    #[test]
    fn what_a_breaker_tripped_at_is_not_offered_again() {
        for (tripped, counted) in [("13 A", 12_000), ("12.5 A", 12_000), ("12.1 A", 12_000), ("12 A", 11_000)] {
            let (_, after) = learned(&format!("front tripped at {tripped}"));
            let report = judge::build(&after);
            let limit = report.figures.limit(&id("front")).expect("a limit");
            assert_eq!(limit.short_amps.milliamps(), counted, "{tripped}");
            assert_eq!(limit.continuous_amps.milliamps(), counted * 8 / 10, "{tripped}");
        }
    }

    /// A trip below the lowest so far lowers what the breaker lets through. Nothing raises it, and a trip at the
    /// marking only means that the breaker did its job.
    #[test]
    fn a_breaker_lets_less_through_and_never_more() {
        let trips = |text: &str, at: &str| {
            let (key, mut plan) = learned(text);
            let outlet = plan.outlet_mut(id(at)).expect("an outlet");
            (key, outlet.trips_at.map(Current::milliamps))
        };
        assert_eq!(trips("front tripped at 13 A", "front"), ("tripped", Some(13_000)));
        // The demo plan has it tripping at 17 A.
        assert_eq!(trips("front tripped at 17 A", "front"), ("tripped-known", Some(17_000)));
        assert_eq!(trips("front tripped at 25 A", "front"), ("tripped-made", Some(17_000)));
        assert_eq!(trips("box-left trips at 19.9 A", "box-left"), ("tripped", Some(19_900)));
        assert_eq!(trips("box-left trips at 20 A", "box-left"), ("tripped-made", None));
        // A cord has no breaker, so the one upstream counts.
        assert_eq!(trips("tents tripped at 12 A", "front"), ("tripped", Some(12_000)));
        // With an unknown marking, the receptacle's rating is the cap.
        let unknown = |amps: i64| {
            let mut plan = plan();
            let report = judge::build(&plan);
            let outlet = plan.outlet_mut(id("front")).expect("an outlet");
            (outlet.breaker, outlet.trips_at) = (crate::plan::Answer::Unknown, None);
            let amps = Some(Current::from_milliamps(amps));
            tripped(&mut plan, &report, &id("front"), amps).expect("a breaker").0
        };
        assert_eq!((unknown(19_000), unknown(40_000)), ("tripped", "tripped-unknown"));
    }

    /// A hot part is refused.
    #[test]
    fn what_got_hot_is_not_to_be_used() {
        for (text, part) in [
            ("long hot", "long"),
            ("box soft", "box"),
            ("box-left melted", "box-left"),
            ("got a shock at box-left", "box-left"),
        ] {
            let (key, plan) = learned(text);
            assert_eq!(key == "hot", !text.contains("shock"));
            let report = judge::build(&plan);
            let why = report.refused(&id(part)).expect(text);
            assert_eq!(why.code, "CORD009", "{text}");
        }
        assert_eq!(learned("long warm"), ("warm", plan()));
    }

    /// The card asks for 118.2 V at the box with everything on that may be on there, 2.3 V less than the generator
    /// gives. A sound generator gives 114 V or more, and never 140 V.
    #[test]
    fn a_reading_is_held_against_what_should_be_there() {
        for (text, key) in [
            ("box-left 109 V", "meter-low"),
            ("box-left 113 V", "meter-compare"),
            ("box-left 118.2 V", "meter-fine"),
            ("box-left 126 V", "meter-fine"),
            ("box-left 126.1 V", "meter-raised"),
            ("twist 128 V", "meter-raised"),
            ("box-left 132 V", "meter-raised"),
            ("box-left 132.1 V", "meter-high"),
            ("box-left 0 V", "meter-none"),
            ("box-through 109 V", "meter-low"),
            ("twist 119 V", "meter-fine"),
            ("twist 109 V", "meter-source"),
        ] {
            assert_eq!(learned(text), (key, plan()), "{text}");
        }
        // On a two-leg outlet, one hot slot and the neutral show half: 118 V is normal, and 150 V means a lost neutral.
        let mut two_legs = plan();
        two_legs.generator.voltage = crate::plan::Answer::Known(crate::plan::System::V120_240);
        let four = crate::tables::shape::Receptacle::named("L14-30R").expect("a shape");
        two_legs.outlet_mut(id("twist")).expect("an outlet").shape = four;
        let report = judge::build(&two_legs);
        let key = |volts: i64| metered(&two_legs, &report, &id("twist"), Voltage::from_millivolts(volts * 1000)).0;
        assert_eq!(
            (key(118), key(150), key(238), key(253)),
            ("meter-fine", "meter-high", "meter-fine", "meter-raised")
        );
    }

    /// The published times are 8.5 h at a quarter load and 3.1 h at full load. After a run of 2 h, no more than 2 h is
    /// counted on. A run of 9 h changes nothing, nor does one of 7 h after the 2 h.
    #[test]
    fn a_tank_that_ran_out_early_is_counted_on_for_less() {
        let least = |plan: &Plan| {
            let energy = judge::build(plan).figures.energy;
            let burns = energy.burns.iter();
            burns.map(|it| it.hours_per_tank.millihours()).max()
        };
        let (key, after) = learned("ran 2 h");
        assert_eq!((key, least(&after)), ("ran-less", Some(2000)));
        assert!(least(&plan()) > Some(3100));
        let (key, after) = learned("ran 9 h");
        assert_eq!((key, after), ("ran-more", plan()));
        let mut again = learned("ran 2 h").1;
        let before = again.clone();
        assert_eq!(ran(&mut again, Hours::from_millihours(7000)).0, "ran-more");
        assert_eq!(again, before);
        // A still shorter run replaces the entry.
        assert_eq!(ran(&mut again, Hours::from_millihours(1000)).0, "ran-less");
        assert_eq!(again.generator.runtime.len(), before.generator.runtime.len());
    }

    /// A hot outlet marks every plug in it. A shock marks the part and what is plugged in there, or only the load where
    /// a load is named.
    #[test]
    fn what_was_plugged_in_is_not_to_be_used_either() {
        let hot = |text: &str| -> (&'static str, Vec<String>) {
            let (key, plan) = learned(text);
            let loads = plan.loads.iter().filter(|it| it.hot == Some(true));
            let loads = loads.map(|it| it.id.to_string());
            let mut all: Vec<String> = plan.felt_hot().map(ToString::to_string).collect();
            all.extend(loads);
            all.sort();
            (key, all)
        };
        let own = |ids: &[&str]| ids.iter().map(ToString::to_string).collect::<Vec<_>>();
        assert_eq!(hot("front hot"), ("hot", own(&["front", "table", "tents"])));
        assert_eq!(hot("tents hot"), ("hot", own(&["tents"])));
        let there = own(&["box-left", "griddle", "kettle"]);
        assert_eq!(hot("shock at box-left"), ("shock-at", there));
        assert_eq!(hot("Kettle shock"), ("shock-at", own(&["kettle"])));
        assert_eq!(hot("the Electric blanket burned"), ("hot", own(&["blanket"])));
        // Such a load may not be switched on, and gets no outlet.
        let (_, plan) = learned("Kettle shock");
        let report = judge::build(&plan);
        assert!(!judge::ask::ask(&plan, &report, &[id("kettle")], &[]).may);
        let lost = report.figures.sharing.without_place(&id("kettle"));
        assert_eq!(lost.map(|it| it.reason), Some("hot"));
    }

    /// Every meaning can be said in each language's own words.
    #[test]
    fn every_meaning_has_its_words() {
        let mut plan = plan();
        // The first word of each kind, in the shortest sentence that uses it.
        for tag in ["en", "es", "fr", "de"] {
            let words = Words::new(tag, Units::Metric).expect(tag);
            let of = words.vocabulary();
            let trip = &of.trip[0];
            let texts = [
                format!("box-left {trip}"),
                format!("front {trip} 13 A"),
                format!("front {trip} 18 A"),
                format!("front {trip} 30 A"),
                "box-left 109 V".to_owned(),
                "box-left 113 V".to_owned(),
                "box-left 119 V".to_owned(),
                "box-left 0 V".to_owned(),
                "twist 109 V".to_owned(),
                "twist 128 V".to_owned(),
                "twist 140 V".to_owned(),
                "tents 109 V".to_owned(),
                "2 h".to_owned(),
                "99 h".to_owned(),
                format!("long {}", of.hot[0]),
                format!("long {}", of.warm[0]),
                format!("front gfci {trip}"),
                format!("front {}", of.shock[0]),
                of.shock[0].clone(),
                of.alarm[0].clone(),
                format!("long {}", of.fire[0]),
            ];
            let mut keys = std::collections::BTreeSet::new();
            for (unknown, clear) in [(false, false), (true, true)] {
                if unknown {
                    plan.outlet_mut(id("front")).expect("an outlet").breaker = crate::plan::Answer::Unknown;
                    plan.loads.retain(|load| load.id.as_str() != "fan");
                }
                if clear {
                    plan.generator.runtime.clear();
                }
                let report = judge::build(&plan);
                for text in &texts {
                    let seen = said(&plan, text, &words).expect(text);
                    let learned = learn(&plan, &report, &seen).expect(text);
                    keys.insert(learned.key);
                    assert!(!words.learned(&learned, &[]).is_empty());
                }
            }
            assert!(keys.len() >= 20, "{tag}: {keys:?}");
            plan = super::tests::plan();
            for unclear in [
                Unclear::Not,
                Unclear::NoPart,
                Unclear::NoFigure,
                Unclear::NoTrip,
                Unclear::NoAmps(id("front")),
                Unclear::Parts(vec![id("front"), id("box")]),
                Unclear::NoBreaker(id("front")),
            ] {
                words.unclear(&unclear, "camp.toml");
            }
            assert_eq!(words.faults(), Vec::<String>::new(), "{tag}");
        }
    }
}
