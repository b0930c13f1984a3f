//! Reads the text of a plan file into a [`Plan`], or returns everything that is wrong with it at once.
//!
//! Reading is lenient where there is only one meaning (spaces, case, "ft" or "feet") and strict where there could be
//! two: a number without a unit is refused, never guessed.

mod fields;
mod parts;
mod places;
pub mod problem;
mod refs;
mod syntax;

use std::ops::Range;

use toml::de::DeTable;

use super::{FORMAT, Plan};
use crate::nearest;
use fields::Sink;
pub(crate) use fields::{Field, Fields, missing, not_unknown};
pub use places::lines;
pub use problem::{Problem, Problems, Refusal, Value};
use refs::Names;

/// The most parts (outlets, boxes, and every end of a cord) in a plan. This many are judged within a second.
pub const MOST_PARTS: usize = 250;

/// The most loads in a plan, counting several identical loads one by one. This many are judged within a second.
pub const MOST_LOADS: usize = 300;

/// Problems that may only follow from a line that could not be read.
const MAY_FOLLOW: &[&str] = &[
    "empty",
    "no-format",
    "missing-key",
    "missing-table",
    "unknown-reference",
    "unknown-share",
    "not-a-receptacle",
    "no-outlets-generator",
    "no-outlets-box",
    "no-outlets-cord",
    "bad-share",
    "share-differs",
];

/// Reads a plan.
///
/// # Errors
/// Returns everything that is wrong with the text, in the order of the text.
pub fn read(text: &str) -> Result<Plan, Problems> {
    let sink = Sink::default();
    let (root, errors) = DeTable::parse_recoverable(text);
    let damaged = syntax::report(text, &errors, &sink);
    let root = root.get_ref();
    let mut plan = None;
    if root.is_empty() && damaged.is_empty() {
        sink.put(0..0, Refusal::new("empty"));
    } else if format_is_ours(&sink, root) {
        let fields = Fields::open(&sink, root, 0..0, parts::ROOT);
        let mut names = Names::new(text);
        let mut read = parts::plan(&fields, &mut names);
        too_many(&sink, "parts", names.parts(), MOST_PARTS);
        too_many(&sink, "loads", names.loads, MOST_LOADS);
        // Checking references takes quadratic time, so it is done only for plans of a plausible size.
        if names.parts() <= MOST_PARTS && names.loads <= 100 * MOST_LOADS {
            names.check(&sink);
        }
        names.settle(&mut read);
        plan = Some(read);
    }
    let mut problems = sink.into_problems();
    // What stands on an unreadable line is seldom what its owner wrote, and what seems to be missing may be on that
    // line. The unreadable lines themselves were reported first.
    let mut at = 0;
    problems.retain(|problem| {
        at += 1;
        let beside = |line: &Range<usize>| problem.span.start <= line.end && line.start <= problem.span.end;
        let follows = !damaged.is_empty() && MAY_FOLLOW.contains(&problem.why.key);
        at <= damaged.len() || !(follows || damaged.iter().any(beside))
    });
    problems.sort_by_key(|problem| (problem.span.start, problem.span.end));
    problems.dedup();
    match plan {
        Some(plan) if problems.is_empty() => Ok(plan),
        // Every value that could not be read was reported.
        _ => Err(Problems(problems)),
    }
}

/// Whether this program understands the format of the file. Reports a format that is not its own.
fn format_is_ours(sink: &Sink, root: &DeTable<'_>) -> bool {
    let Some(value) = root.get("format") else {
        sink.put(0..0, Refusal::new("no-format"));
        return true;
    };
    let Some(whole) = value.get_ref().as_integer() else {
        let fields = Fields::peek(sink, root);
        return fields.get("format").is_some_and(|field| field.is_whole());
    };
    let other = |key| {
        let why = Refusal::new(key).found(&whole.to_string());
        sink.put(value.span(), why.with("ours", FORMAT.to_string()));
    };
    match i64::from_str_radix(whole.as_str(), whole.radix()) {
        Ok(FORMAT) => true,
        Ok(number) if number < FORMAT => {
            other("no-such-format");
            true
        }
        // This program cannot judge the keys of a later format.
        _ => {
            other("newer-format");
            false
        }
    }
}

fn too_many(sink: &Sink, what: &'static str, found: usize, most: usize) {
    if found > most {
        let why = Refusal::new("too-many").with("found", found.to_string());
        let why = why.with("most", most.to_string());
        sink.put(0..0, why.with("what", Value::Word(format!("plan-too-many.{what}"))));
    }
}

/// Returns the candidate most similar to `text`, or `None` if none is similar enough.
fn nearest<'c>(text: &str, candidates: impl Iterator<Item = &'c str>) -> Option<&'c str> {
    /// The least similarity that counts.
    const ALIKE: f64 = 0.55;
    /// Words that people write, and the keys or values they mean.
    const MEANT: &[(&str, &str)] = &[
        ("amps", "current"),
        ("battery", "electronic"),
        ("charger", "electronic"),
        ("distance", "sleepers_at"),
        ("elevation", "altitude"),
        ("gauge", "wire"),
        ("lockedrotor", "starting_current"),
        ("lockedrotoramps", "starting_current"),
        ("lpg", "propane"),
        ("lra", "starting_current"),
        ("moist", "damp"),
        ("petrol", "gasoline"),
        ("power", "running"),
        ("rain", "wet"),
        ("surge", "starting"),
        ("temperature", "air"),
        ("watts", "running"),
    ];
    let squeeze = |text: &str| -> String {
        let kept = text.chars().filter(|c| !matches!(c, '-' | '_' | '.') && !c.is_whitespace());
        kept.take(60).flat_map(char::to_lowercase).collect()
    };
    let wanted = squeeze(text);
    let meant = MEANT.iter().find(|(written, _)| *written == wanted).map(|(_, meant)| *meant);
    // A different number is a different thing, no matter how similar the rest is: 230 V is not a typo for 120 V.
    let digits = |text: &str| -> String { text.chars().filter(char::is_ascii_digit).collect() };
    let number = digits(text);
    let likeness = |candidate: &str| {
        if meant == Some(candidate) { 1.0 } else { nearest::likeness(&wanted, &squeeze(candidate)) }
    };
    nearest::nearest(candidates.filter(|candidate| digits(candidate) == number), ALIKE, likeness)
}

#[cfg(test)]
mod tests {
    use std::collections::BTreeSet;

    use proptest::prelude::*;
    use proptest::test_runner::TestRunner;

    use super::*;
    use crate::plan::row::Part;
    use crate::plan::{Answer, Cord, DistributionBox, Draw, Generator, Load, Noise, Outlet, Parallel, Runtime, Site};
    use crate::quantity::{Current, Power};

    const SMALLEST: &str = r#"
format = 1
[generator]
rated = "2000 W"
voltage = "120 V"
[[generator.outlet]]
id = "front"
shape = "5-20R"
"#;

    #[test]
    fn the_smallest_plan_reads() {
        let plan = read(SMALLEST).unwrap();
        assert_eq!(plan.generator.rated, Answer::Known(Power::from_milliwatts(2_000_000)));
        assert_eq!(plan.generator.outlets[0].breaker, Answer::Missing);
        assert_eq!(plan.generator.outlets[0].plugs(), (1, 2));
    }

    #[test]
    fn a_number_with_two_readings_is_refused() {
        let load = |draw: &str| read(&format!("{SMALLEST}[[load]]\nid = \"l\"\nkind = \"heater\"\n{draw}\n"));
        for draw in [r#"running = "1.500 W""#, r#"running = "1,500 W""#, r#"running = "2.800""#] {
            let problems = load(draw).expect_err(draw);
            let keys: Vec<_> = problems.0.iter().map(|p| p.why.key).collect();
            assert_eq!(keys, ["two-readings"], "{draw}");
        }
        for (draw, running) in [
            (r#"running = "1.5 W""#, Draw::Power(Power::from_milliwatts(1500))),
            (r#"running = "1500 W""#, Draw::Power(Power::from_milliwatts(1_500_000))),
            (r#"running = "1.234 kW""#, Draw::Power(Power::from_milliwatts(1_234_000))),
            (r#"current = "12.350 A""#, Draw::Current(Current::from_milliamps(12_350))),
            (r#"current = "0.500 A""#, Draw::Current(Current::from_milliamps(500))),
        ] {
            let plan = load(draw).expect(draw);
            assert_eq!(plan.loads[0].running, Answer::Known(running), "{draw}");
        }
    }

    /// Tests 20 ft and 15 ft to the millimeter, written with a decimal comma. If the comma marked thousands, nobody
    /// would seem to sleep near the generator.
    #[test]
    fn a_number_with_two_readings_in_bounds_is_refused() {
        let keys = |rest: &str| -> Vec<&'static str> {
            match read(&format!("{SMALLEST}{rest}\n")) {
                Ok(_) => Vec::new(),
                Err(problems) => problems.0.iter().map(|p| p.why.key).collect(),
            }
        };
        let load = "[[load]]\nid = \"l\"\nkind = \"heater\"\n";
        for line in [
            "[site]\nsleepers_at = \"6,096 m\"",
            "[site]\nsleepers_at = \"4,572 m\"",
            "[site]\nsleepers_at = \"6.096 m\"",
            "[site]\naltitude = \"4,201 ft\"",
            &format!("{load}running = \"1.875 W\""),
            &format!("{load}running = \"1,875 kW\""),
            &format!("{load}running = \"1.875\""),
            "[site]\nair = \"31,125 °C\"",
        ] {
            assert_eq!(keys(line), ["two-readings"], "{line}");
        }
        for line in [
            // The other reading is out of bounds.
            &format!("{load}current = \"12.125 A\""),
            &format!("{load}running = \"1.234 kW\""),
            // There is only one reading.
            "[site]\nsleepers_at = \"6.0960 m\"",
            "[site]\nsleepers_at = \"6096 mm\"",
            "[site]\nsleepers_at = \"0,914 m\"",
        ] {
            assert_eq!(keys(line), [""; 0], "{line}");
        }
    }

    #[test]
    fn loads_round_up_and_capacities_down_as_read() {
        let text = format!(
            "{SMALLEST}breaker = \"20.0009 A\"\n\
             [[cord]]\nid=\"c\"\nplug=\"5-15P\"\nends=[\"5-15R\"]\nlength=\"1 in\"\n\
             [[load]]\nid=\"l\"\nkind=\"lamp\"\nrunning=\"0.0001 W\"\n\
             [site]\nsleepers_at=\"1 in\"\n"
        );
        let plan = read(&text).unwrap();
        let breaker = plan.generator.outlets[0].breaker.known().unwrap();
        assert_eq!(breaker.milliamps(), 20_000);
        assert_eq!(plan.cords[0].length.known().unwrap().millimetres(), 26);
        assert_eq!(plan.site.sleepers_at.known().unwrap().millimetres(), 25);
        let Answer::Known(Draw::Power(power)) = &plan.loads[0].running else {
            panic!("{:?}", plan.loads[0].running);
        };
        assert_eq!(power.milliwatts(), 1);
    }

    /// A character that changes direction or breaks the line could make one name look like another on a terminal or a
    /// label.
    #[test]
    fn a_name_that_turns_the_writing_round_is_refused() {
        for sign in ['\u{202e}', '\u{2066}', '\u{200f}', '\u{61c}', '\u{2028}'] {
            let text = format!("{SMALLEST}[[load]]\nid = \"l\"\nkind = \"lamp\"\nname = \"gnal{sign}pm\"\n");
            let problems = read(&text).expect_err("refused");
            assert_eq!(problems.0[0].why.key, "bad-text", "{sign:?}");
            let words = crate::words::Words::english();
            let look = crate::words::problem::Look::default();
            let said = crate::words::problem::render(&words, "p", &text, &problems, look);
            assert!(!said.contains(sign), "{sign:?}: {said}");
        }
        // Characters that join letters within a word belong to the spelling of some languages.
        let text = format!("{SMALLEST}[site]\nname = \"a\u{200d}b\u{200c}c\"\n");
        assert!(read(&text).is_ok());
    }

    /// Draws each field from its whole range, not only from common values. What is written reads back the same.
    #[test]
    fn every_field_reads_back_the_same() {
        fn hold<P: Part + PartialEq>() {
            for row in P::ROWS {
                let back = |part: P| {
                    let Some((key, value)) = row.write(&part) else {
                        return Ok(());
                    };
                    // Only a whole plan can give this name.
                    if value == "\"\"" {
                        return Ok(());
                    }
                    let text = format!("{key} = {value}");
                    let sink = Sink::default();
                    let (table, _) = DeTable::parse_recoverable(&text);
                    let fields = Fields::open(&sink, table.get_ref(), 0..0, &P::keys());
                    let mut back = P::default();
                    row.read(&fields, &mut back);
                    prop_assert_eq!(back, part, "{}", text);
                    prop_assert_eq!(sink.into_problems(), [], "{}", text);
                    Ok(())
                };
                TestRunner::new(ProptestConfig::with_cases(300))
                    .run(&row.any(), back)
                    .unwrap_or_else(|error| panic!("{:?}: {error}", row.keys()));
            }
        }
        hold::<Site>();
        hold::<Generator>();
        hold::<Parallel>();
        hold::<Runtime>();
        hold::<Noise>();
        hold::<Outlet>();
        hold::<Cord>();
        hold::<DistributionBox>();
        hold::<Load>();
    }

    /// A field without a row would not be read, written or generated.
    #[test]
    fn every_field_has_a_row() {
        fn hold<P: Part>(in_tables: &[&str]) {
            // In the debug output, each field is a line with one level of indentation.
            let told = format!("{:#?}", P::default());
            let fields = told.lines().filter_map(|line| line.strip_prefix("    "));
            let fields = fields.filter(|line| line.starts_with(char::is_alphabetic));
            let fields = fields.map(|line| line.split(':').next().unwrap_or_default());
            let rows = P::ROWS.iter().map(|row| row.keys()[0]);
            let rows = rows.chain(in_tables.iter().copied());
            assert_eq!(fields.collect::<BTreeSet<_>>(), rows.collect());
            // The best answer is a known one.
            let best = P::best();
            for row in P::ROWS.iter().filter(|row| row.best().is_some()) {
                assert!(row.text(&best).is_known(), "{:?}", row.keys());
            }
        }
        hold::<Site>(&[]);
        hold::<Generator>(&["outlets"]);
        hold::<Parallel>(&[]);
        hold::<Runtime>(&[]);
        hold::<Noise>(&[]);
        hold::<Outlet>(&[]);
        hold::<Cord>(&[]);
        hold::<DistributionBox>(&["outlets"]);
        hold::<Load>(&[]);
    }

    #[test]
    fn not_said_and_not_known_stay_apart() {
        let text = format!("{SMALLEST}gfci = \"unknown\"\n");
        let plan = read(&text).unwrap();
        assert_eq!(plan.generator.outlets[0].gfci, Answer::Unknown);
        assert_eq!(plan.generator.neutral, Answer::Missing);
    }

    /// Tests a cord and a box. A generator needs known outlets, and nothing can be plugged into an unknown receptacle.
    #[test]
    fn a_part_of_unknown_shape_is_read() {
        let cord = "[[cord]]\nid = \"c\"\nplug = \"unknown\"\nends = \"unknown\"\n";
        let holder = "[[box]]\nid = \"b\"\ninlet = \"unknown\"\noutlet = \"unknown\"\n";
        let plan = read(&format!("{SMALLEST}{cord}{holder}")).unwrap();
        assert_eq!((&plan.cords[0].plug, &plan.cords[0].ends), (&Answer::Unknown, &Answer::Unknown));
        assert_eq!((&plan.boxes[0].inlet, plan.boxes[0].outlets_unknown()), (&Answer::Unknown, true));
        let refused = |text: &str| -> Vec<&str> {
            let problems = read(text).expect_err(text);
            problems.0.iter().map(|problem| problem.why.key).collect()
        };
        let no_box = holder.replace("outlet = \"unknown\"\n", "");
        assert_eq!(refused(&format!("{SMALLEST}{no_box}")), ["no-outlets-box"]);
        let set = SMALLEST.split("[[").next().unwrap();
        assert_eq!(refused(&format!("{set}outlet = \"unknown\"\n")), ["no-outlets-generator", "wrong-type"]);
        for at in ["c", "c.1"] {
            let more = format!("[[cord]]\nid = \"d\"\nfrom = \"{at}\"\nplug = \"5-15P\"\nends = [\"5-15R\"]\n");
            assert_eq!(refused(&format!("{SMALLEST}{cord}{more}")), ["not-a-receptacle"]);
        }
    }

    #[test]
    fn nearest_is_near() {
        let keys = ["breaker", "shape", "trips_at"];
        assert_eq!(nearest("braeker", keys.into_iter()), Some("breaker"));
        assert_eq!(nearest("trips-at", keys.into_iter()), Some("trips_at"));
        assert_eq!(nearest("zebra", keys.into_iter()), None);
        assert_eq!(nearest("230 V", ["120 V"].into_iter()), None);
        assert_eq!(nearest("petrol", ["gasoline"].into_iter()), Some("gasoline"));
    }
}
