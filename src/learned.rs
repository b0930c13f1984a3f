//! What somebody learned at camp, in a few words, and what it does to the plan.
//!
//! Words are understood by the part and the one figure in them: amps are where a breaker tripped, volts what a meter
//! showed, hours how long a tank lasted. Whatever is learned makes a plan more careful, and never less.

use crate::plan::{Answer, Cord, Id, Outlet, Plan, Runtime, bounds};
use crate::quantity::{Current, Hours, Percent, Quantity as _, Round, Voltage};
use crate::report::{Report, Signal, Value, Values};
use crate::rules::values;
use crate::tables::volts::{HIGH, USE_LEAST, at_nominal};

/// What somebody saw.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Seen {
    /// The breaker of this part tripped at so much.
    Tripped {
        /// The part.
        at: Id,
        /// What was on, in all.
        amps: Current,
    },
    /// It, or a plug in it, was hot or soft.
    Hot(Id),
    /// It was warm and no more.
    Warm(Id),
    /// A meter showed this.
    Meter {
        /// Where.
        at: Id,
        /// How much.
        volts: Voltage,
    },
    /// The generator ran so long on a full tank.
    Ran(Hours),
}

/// Why words are not understood.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Unclear {
    /// They name no part, and what they say is of one.
    NoPart,
    /// They name several.
    Parts(Vec<Id>),
    /// There is no figure in them, or none that can be.
    NoFigure,
    /// Amps of what has no breaker that the plan knows.
    NoBreaker(Id),
}

/// The words of a language for what is felt.
#[derive(Clone, Debug)]
pub struct Felt {
    /// For hot.
    pub hot: Vec<String>,
    /// For warm.
    pub warm: Vec<String>,
}

/// What it means.
#[derive(Clone, Debug)]
pub struct Learned {
    /// The plan with it.
    pub plan: Plan,
    /// The message that says what it means is `learned-KEY`.
    pub key: &'static str,
    /// Its values.
    pub values: Values,
    /// How bad it is by itself, whatever the plan says.
    pub signal: Option<Signal>,
}

/// The figure that a word, or it and the next, begin with.
fn figure<Q>(words: &[&str], read: impl Fn(&str) -> Option<Q>) -> Option<Q> {
    let begins = |word: &&str| word.starts_with(|c: char| c.is_ascii_digit());
    let at = |at: usize| {
        let with_unit = words[at..].iter().take(2).copied().collect::<Vec<_>>();
        read(words[at]).or_else(|| read(&with_unit.join(" ")))
    };
    let begun = words.iter().enumerate().filter(|(_, word)| begins(word));
    begun.into_iter().find_map(|(index, _)| at(index))
}

/// Every part of a plan that a label may name, with the ends of cords.
fn parts(plan: &Plan) -> Vec<Id> {
    let outlets = plan.generator.outlets.iter();
    let outlets = outlets.chain(plan.boxes.iter().flat_map(|holder| &holder.outlets));
    let ends = plan.cords.iter().flat_map(Cord::end_ids);
    let mut all: Vec<Id> = outlets.map(|outlet| outlet.id.clone()).collect();
    all.extend(plan.cords.iter().map(|cord| cord.id.clone()));
    all.extend(plan.boxes.iter().map(|holder| holder.id.clone()));
    all.extend(ends);
    all.sort_unstable();
    all.dedup();
    all
}

/// A word without what stands round it in a sentence.
fn bare(word: &str) -> &str {
    const MARKS: [char; 13] = [
        ',', '.', ';', ':', '!', '?', '"', '\'', '“', '”', '„', '«', '»',
    ];
    word.trim_matches(MARKS)
}

/// What is said in these words, whose numbers and units are as plans write them.
///
/// # Errors
/// When no one thing is.
pub fn understand(plan: &Plan, text: &str, felt: &Felt) -> Result<Seen, Unclear> {
    let lower = text.to_lowercase();
    let words: Vec<&str> = text.split_whitespace().map(bare).collect();
    let folded: Vec<&str> = lower.split_whitespace().map(bare).collect();
    let named: Vec<Id> = parts(plan)
        .into_iter()
        .filter(|id| folded.contains(&id.as_str()))
        .collect();
    let part = match named.as_slice() {
        [] => Err(Unclear::NoPart),
        [one] => Ok(one.clone()),
        several => Err(Unclear::Parts(several.to_vec())),
    };
    let says = |any: &[String]| any.iter().any(|word| folded.contains(&word.as_str()));
    // The end of a cord is as bad as the cord.
    let whole = |id: Id| {
        plan.cords
            .iter()
            .find(|cord| cord.end_ids().any(|end| end == id))
            .map_or(id, |cord| cord.id.clone())
    };
    if says(&felt.hot) {
        return part.map(whole).map(Seen::Hot);
    }
    if says(&felt.warm) {
        return part.map(whole).map(Seen::Warm);
    }
    if let Some(amps) = figure(&words, |text| bounds::TRIPS_AT.read(text).ok()) {
        return part.map(|at| Seen::Tripped { at, amps });
    }
    if let Some(volts) = figure(&words, |text| Voltage::parse(text, Round::Down).ok()) {
        return part.map(|at| Seen::Meter { at, volts });
    }
    let hours = figure(&words, |text| bounds::LASTS.read(text).ok());
    match (part, hours) {
        // Of a part they are no figure that helps: after how long it tripped says nothing without the amps.
        (Err(Unclear::NoPart), Some(hours)) => Ok(Seen::Ran(hours)),
        (part, _) => Err(part.err().unwrap_or(Unclear::NoFigure)),
    }
}

/// The plan with what was seen, and what that means.
///
/// # Errors
/// When amps are said of what has no breaker.
pub fn learn(plan: &Plan, report: &Report, seen: &Seen) -> Result<Learned, Unclear> {
    let mut after = plan.clone();
    let (key, told) = match seen {
        Seen::Tripped { at, amps } => tripped(&mut after, report, at, *amps)?,
        Seen::Hot(id) => (felt_hot(&mut after, id), values([("part", named(id))])),
        Seen::Warm(id) => ("warm", values([("part", named(id))])),
        Seen::Meter { at, volts } => metered(plan, report, at, *volts),
        Seen::Ran(hours) => ran(&mut after, *hours),
    };
    let signal = match key {
        "meter-high" => Some(Signal::Danger),
        "meter-low" => Some(Signal::Warning),
        _ => None,
    };
    Ok(Learned {
        plan: after,
        key,
        values: told,
        signal,
    })
}

fn named(id: &Id) -> Value {
    Value::Parts(vec![id.clone()])
}

fn outlet_of<'a>(plan: &'a mut Plan, id: &Id) -> Option<&'a mut Outlet> {
    let of_boxes = plan.boxes.iter_mut().flat_map(|holder| &mut holder.outlets);
    let mut all = plan.generator.outlets.iter_mut().chain(of_boxes);
    all.find(|outlet| outlet.id == *id)
}

fn tripped(
    plan: &mut Plan,
    report: &Report,
    at: &Id,
    amps: Current,
) -> Result<(&'static str, Values), Unclear> {
    // Its own breaker, or the nearest ahead of it.
    let mut proofs = report.figures.protection.iter();
    let ahead = proofs.find_map(|proof| proof.breaker_at.clone().filter(|_| proof.id == *at));
    let outlet = ahead.unwrap_or_else(|| at.clone());
    let outlet = outlet_of(plan, &outlet).ok_or_else(|| Unclear::NoBreaker(at.clone()))?;
    let told = |marked: Current| {
        let part = ("part", named(&outlet.id));
        values([part, ("amps", amps.into()), ("marked", marked.into())])
    };
    Ok(match (outlet.trips_at, outlet.breaker) {
        (Some(known), _) if known <= amps => ("tripped-known", told(known)),
        (_, Answer::Known(marked)) if marked <= amps => ("tripped-made", told(marked)),
        (known, marked) => {
            let marked = known.or(marked.known().copied());
            let told = told(marked.unwrap_or_else(|| outlet.shape.0.rating()));
            outlet.trips_at = Some(amps);
            ("tripped", told)
        }
    })
}

fn felt_hot(plan: &mut Plan, id: &Id) -> &'static str {
    let hot = Some(true);
    for cord in plan.cords.iter_mut().filter(|cord| cord.id == *id) {
        cord.hot = hot;
    }
    for holder in plan.boxes.iter_mut().filter(|holder| holder.id == *id) {
        holder.hot = hot;
    }
    if let Some(outlet) = outlet_of(plan, id) {
        outlet.hot = hot;
    }
    "hot"
}

/// What a meter should show there at least, with all on that may be on together; `None` where the plan runs nothing.
fn expected(plan: &Plan, report: &Report, at: &Id) -> Option<Voltage> {
    let part = |id: &Id| plan.part_of(id).unwrap_or(id).clone();
    let here = part(at);
    let drops = report.figures.drops.iter();
    let lost = drops
        .filter(|drop| part(&drop.receptacle) == here)
        .map(|drop| (&drop.receptacle, drop.volts_running))
        .max_by_key(|(_, lost)| *lost);
    let (receptacle, lost) = lost?;
    let mut limits = report.figures.limits.iter();
    let nominal = limits.find(|limit| limit.id == *receptacle)?.volts;
    (lost < nominal).then(|| nominal - lost)
}

fn metered(plan: &Plan, report: &Report, at: &Id, volts: Voltage) -> (&'static str, Values) {
    let told = |least: Voltage| {
        values([
            ("part", named(at)),
            ("volts", volts.into()),
            ("least", least.into()),
        ])
    };
    let mut limits = report.figures.limits.iter();
    let nominal = limits
        .find(|limit| limit.id == *at)
        .map_or(plan.line_to_neutral(), |limit| limit.volts);
    let high = at_nominal(HIGH, nominal);
    if volts > high {
        return ("meter-high", told(high));
    }
    match expected(plan, report, at) {
        Some(least) if volts < least => ("meter-low", told(least)),
        Some(least) => ("meter-fine", told(least)),
        None => ("meter-unknown", told(at_nominal(USE_LEAST, nominal))),
    }
}

fn ran(plan: &mut Plan, hours: Hours) -> (&'static str, Values) {
    /// Whatever lasts so long at the least load lasts no longer at any other.
    const LEAST: Percent = Percent::from_millipercent(1_000);
    let told = values([("hours", hours.into())]);
    let known = &mut plan.generator.runtime;
    if known.is_empty() {
        return ("ran-unknown", told);
    }
    if known.iter().all(|point| point.lasts <= hours) {
        return ("ran-more", told);
    }
    known.retain(|point| point.load > LEAST);
    known.insert(
        0,
        Runtime {
            load: LEAST,
            lasts: hours,
        },
    );
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

    fn understood(text: &str) -> Result<Seen, Unclear> {
        understand(&plan(), text, &Words::english().felt())
    }

    fn id(text: &str) -> Id {
        Id::new(text).expect("an id")
    }

    /// The key of what it means, and the plan with it.
    fn learned(text: &str) -> (&'static str, Plan) {
        let plan = plan();
        let seen = understood(text).expect(text);
        let learned = learn(&plan, &judge::build(&plan), &seen).expect(text);
        (learned.key, learned.plan)
    }

    #[test]
    fn the_figure_and_the_part_say_what_was_seen() {
        let amps = Current::from_milliamps(13_000);
        for text in [
            "front tripped at 13 A",
            "13A: front",
            "“Front” went off with 13 amps on, after 20 min",
        ] {
            let at = id("front");
            assert_eq!(understood(text), Ok(Seen::Tripped { at, amps }), "{text}");
        }
        let volts = Voltage::from_millivolts(109_500);
        for text in [
            "box-left 109.5 V",
            "the meter at box-left shows 109.5 volts.",
        ] {
            let at = id("box-left");
            assert_eq!(understood(text), Ok(Seen::Meter { at, volts }), "{text}");
        }
        let hours = Hours::from_millihours(7_500);
        assert_eq!(understood("ran 7.5 hours on a tank"), Ok(Seen::Ran(hours)));
        // The end of a cord is the cord; what was felt counts whatever figure is beside it.
        assert_eq!(
            understood("tents.2 was HOT at 9 A"),
            Ok(Seen::Hot(id("tents")))
        );
        assert_eq!(understood("box warm"), Ok(Seen::Warm(id("box"))));
    }

    /// After how long it tripped is no tank, a figure without a part is no breaker, and of two parts nobody knows which.
    #[test]
    fn what_could_be_two_things_is_asked_again() {
        assert_eq!(
            understood("front tripped after 20 min"),
            Err(Unclear::NoFigure)
        );
        assert_eq!(understood("tripped at 13 A"), Err(Unclear::NoPart));
        assert_eq!(understood("it got hot"), Err(Unclear::NoPart));
        assert_eq!(understood("nothing"), Err(Unclear::NoPart));
        let both = vec![id("box-left"), id("front")];
        assert_eq!(
            understood("front or box-left at 13 A"),
            Err(Unclear::Parts(both))
        );
    }

    /// A breaker is counted on to trip where it did, if that is sooner than so far; marked at no more than that, it did
    /// its job.
    #[test]
    fn a_breaker_is_trusted_less_and_never_more() {
        let trips = |text: &str, at: &str| {
            let (key, mut plan) = learned(text);
            let outlet = outlet_of(&mut plan, &id(at)).expect("an outlet");
            (key, outlet.trips_at.map(Current::milliamps))
        };
        assert_eq!(trips("front 13 A", "front"), ("tripped", Some(13_000)));
        // Seen to trip at 17 A before.
        assert_eq!(
            trips("front 17 A", "front"),
            ("tripped-known", Some(17_000))
        );
        assert_eq!(
            trips("front 25 A", "front"),
            ("tripped-known", Some(17_000))
        );
        assert_eq!(
            trips("box-left 19.9 A", "box-left"),
            ("tripped", Some(19_900))
        );
        assert_eq!(trips("box-left 20 A", "box-left"), ("tripped-made", None));
        // A cord has none: the one ahead of it.
        assert_eq!(trips("tents 12 A", "front"), ("tripped", Some(12_000)));
    }

    /// What got hot is refused, everywhere and with all that hangs on it.
    #[test]
    fn what_got_hot_is_not_to_be_used() {
        for (text, part) in [
            ("long hot", "long"),
            ("box soft", "box"),
            ("box-left melted", "box-left"),
        ] {
            let (key, plan) = learned(text);
            assert_eq!(key, "hot");
            let report = judge::build(&plan);
            let why = report.refused(&id(part)).expect(text);
            assert_eq!(why.code, "CORD009", "{text}");
        }
        assert_eq!(learned("long warm"), ("warm", plan()));
    }

    /// The card asks for 118.2 V at the box, with what may be on there; and no set gives 140 V.
    #[test]
    fn a_reading_is_held_against_what_should_be_there() {
        for (text, key) in [
            ("box-left 109 V", "meter-low"),
            ("box-left 118.2 V", "meter-fine"),
            ("box-left 132 V", "meter-fine"),
            ("box-left 132.1 V", "meter-high"),
            ("box-through 109 V", "meter-low"),
            ("twist 109 V", "meter-unknown"),
        ] {
            assert_eq!(learned(text), (key, plan()), "{text}");
        }
    }

    /// The published times are 8.5 h at a quarter and 3.1 h at full load. Two hours are all that is counted on then, and
    /// nine change nothing.
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
        // The same again is no second line.
        let mut twice = learned("ran 2 h").1;
        let lines = twice.generator.runtime.len();
        ran(&mut twice, Hours::from_millihours(1000));
        assert_eq!(twice.generator.runtime.len(), lines);
    }

    /// In each language, with its own words for what is felt.
    #[test]
    fn every_meaning_has_its_words() {
        let plan = plan();
        let report = judge::build(&plan);
        for tag in ["en", "es", "fr", "de"] {
            let words = Words::new(tag, Units::Metric).expect(tag);
            let felt = words.felt();
            let texts = [
                "front 13 A",
                "front 18 A",
                "box-left 20 A",
                "box-left 109 V",
                "box-left 119 V",
                "twist 109 V",
                "twist 140 V",
                "2 h",
                "99 h",
            ];
            let texts = texts.map(str::to_owned).into_iter();
            let felt_words = [&felt.hot[0], &felt.warm[0]].map(|word| format!("long {word}"));
            for text in texts.chain(felt_words) {
                let seen = understand(&plan, &text, &felt).expect(&text);
                let learned = learn(&plan, &report, &seen).expect(&text);
                assert!(!words.learned(&learned).is_empty());
            }
            for unclear in [
                Unclear::NoPart,
                Unclear::NoFigure,
                Unclear::Parts(vec![id("front"), id("box")]),
                Unclear::NoBreaker(id("front")),
            ] {
                words.unclear(&unclear);
            }
            let mut unknown = plan.clone();
            unknown.generator.runtime.clear();
            let (key, values) = ran(&mut unknown, Hours::from_millihours(1000));
            let (plan, signal) = (unknown, None);
            words.learned(&Learned {
                plan,
                key,
                values,
                signal,
            });
            assert_eq!(words.faults(), Vec::<String>::new(), "{tag}");
        }
    }
}
