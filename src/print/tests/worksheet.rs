//! The worksheet says where each figure comes from.

use std::str::FromStr as _;

use rust_decimal::Decimal;

use super::*;
use crate::words::Units;

fn sheet_of(plan: &Plan, report: &Report, words: &Words) -> serde_json::Value {
    let only = Options { only: vec![Document::Worksheet], ..Options::default() };
    let data = template_data(plan, report, words, &only);
    let (_, sheet) = data.expect("data").swap_remove(0);
    serde_json::from_str(&sheet).expect("JSON")
}

/// The demo's splitter must not be used, so the worksheet gives no limit or rating for it and says that nothing
/// protects it. What feeds it has its amps.
#[test]
fn what_must_not_be_used_has_no_amps_on_the_worksheet() {
    let (plan, report) = demo(crate::plan::demo::WEEKEND);
    let sheet = sheet_of(&plan, &report, &Words::english());
    let rows = |key: &str| {
        let mut sections = sheet["sections"].as_array().into_iter().flatten();
        let section = sections.find(|it| it["key"] == key).expect("a section");
        section["rows"].as_array().expect("rows").clone()
    };
    let text = |cell: &serde_json::Value| cell["text"].as_str().unwrap_or_default().to_owned();
    for row in rows("limits") {
        let name = text(&row[0]);
        let told = text(&row[4]) != "–";
        assert_eq!(told, !name.starts_with("triple"), "{row}");
    }
    let of_triple = |row: &serde_json::Value| text(&row[1]).contains("triple");
    let protection: Vec<serde_json::Value> = rows("protection").into_iter().filter(of_triple).collect();
    let [row] = &protection[..] else { panic!("told once: {protection:?}") };
    assert_eq!(text(&row[0]), "NOTHING: do not use it");
    assert_eq!(text(&row[1]), "triple, triple.1, triple.2, triple.3");
}

/// One leg alone loads the neutral fully, and both together do not. With two legs, the worksheet says which was
/// assumed.
#[test]
fn two_legs_say_how_the_neutral_is_counted() {
    let one = crate::plan::demo::MENDED;
    let two = one.replacen("voltage = \"120 V\"", "voltage = \"120/240 V\"", 1);
    assert_ne!(one, two);
    for (text, said) in [(one, false), (&two, true)] {
        let (plan, report) = demo(text);
        let sheet = sheet_of(&plan, &report, &Words::english()).to_string();
        assert_eq!(sheet.contains("as if the other leg were off"), said);
    }
}

/// Every figure for a load has a mark for its origin: the plan, or an assumption with its source. Each source is listed
/// with how it was verified.
#[test]
fn each_figure_of_the_worksheet_says_where_it_is_from() {
    let (plan, report) = demo(crate::plan::demo::MENDED);
    let sheet = sheet_of(&plan, &report, &Words::english());
    let sections = sheet["sections"].as_array().expect("sections");
    let section = |key: &str| sections.iter().find(|it| it["key"] == key).expect("one");
    let row_of = |key: &str, name: &str| {
        let rows = section(key)["rows"].as_array().expect("rows");
        let found = rows.iter().find(|row| row[0]["text"] == name);
        found.expect("a row").clone()
    };
    let cell = |row: &serde_json::Value, at: usize| {
        let text = |name: &str| row[at][name].as_str().expect("text").replace('\u{a0}', " ");
        (text("text"), text("mark"))
    };
    let sources = sheet["sources"].as_array().expect("sources");
    let source_of = |mark: &str| {
        let number = mark.trim_start_matches(['N', 'P']);
        let found = sources.iter().find(|it| it[0] == number);
        found.expect("a source")[1].as_str().expect("text").to_owned()
    };
    // The fan: its watts are from the plan, its power factor and starting current from tables.
    let fan = row_of("loads", "Fan");
    assert_eq!(cell(&fan, 2), ("55 W".into(), "P".into()));
    let (factor, mark) = cell(&fan, 3);
    assert!(factor == "0.8" && mark.starts_with('N') && mark.ends_with('○'), "{mark}");
    assert_eq!(source_of(&mark), "from memory, not verified");
    let (times, mark) = cell(&fan, 6);
    assert!(times == "× 6" && mark.ends_with('●'), "{times} {mark}");
    assert_eq!(source_of(&mark), "NFPA 70 (NEC), 430.251(A) (confirmed)");
    // The cooler: all three are from the plan.
    let cool_box = row_of("loads", "Cooler");
    for (at, text) in [(2, "60 W"), (3, "0.7"), (7, "180 W")] {
        assert_eq!(cell(&cool_box, at), (text.into(), "P".into()));
    }
    // A cord: ohms per 1,000 ft as printed in chapter 9 table 8.
    let (ohms, mark) = cell(&row_of("cords", "long"), 3);
    assert_eq!(ohms, "1.24 Ω");
    assert_eq!(source_of(&mark), "NFPA 70 (NEC), Chapter 9 Table 8 (confirmed)");
    // Every numbered mark is listed at the end, and each source there once.
    for section in sections {
        let cells = section["rows"].as_array().expect("rows").iter();
        for cell in cells.flat_map(|row| row.as_array().expect("cells")) {
            let mark = cell["mark"].as_str().expect("a mark");
            if !mark.trim_start_matches(['N', 'P']).is_empty() {
                source_of(mark);
            }
        }
        let cited = section["sources"].as_str().expect("numbers");
        cited.split(", ").filter(|it| !it.is_empty()).for_each(|it| {
            source_of(it);
        });
    }
    for rule in sheet["rules"].as_array().expect("rules") {
        let cited = rule["sources"].as_str().expect("numbers");
        cited.split(", ").for_each(|it| {
            source_of(it);
        });
    }
    let mut named: Vec<String> = sources.iter().map(|it| it[1].to_string()).collect();
    let all = named.len();
    named.sort();
    named.dedup();
    assert_eq!(named.len(), all);
}

/// Page 1 lists each receptacle with the amps on its label, and marks those that must not be used.
#[test]
fn the_case_on_page_one_has_every_outlet_and_danger() {
    let words = Words::english();
    for text in [crate::plan::demo::WEEKEND, crate::plan::demo::MENDED] {
        let (plan, report) = demo(text);
        let sheet = sheet_of(&plan, &report, &words);
        let case = &sheet["case"];
        let points = case["points"].as_array().expect("points");
        for limit in &report.figures.limits {
            let mut found = points.iter().filter(|it| it["id"] == limit.id.as_str());
            let point = found.next().expect("a line");
            assert!(found.next().is_none(), "{}", limit.id);
            let capacity = |amount: Amount| words.amount(amount, crate::words::Show::Capacity);
            let limits = [
                capacity(limit.continuous_amps.into()),
                capacity(limit.short_amps.into()),
                capacity(limit.continuous_watts.into()),
                capacity(limit.short_watts.into()),
            ];
            assert_eq!(point["limits"], serde_json::json!(limits), "{}", limit.id);
            let refused = report.refused(&limit.id).is_some();
            assert_eq!(point["refused"], refused, "{}", limit.id);
            assert_eq!(point["shape"], limit.shape.to_string());
            // The part whose GFCI protects it.
            let gfci = point["gfci"].as_str().expect("text");
            assert_eq!(gfci.starts_with("at "), limit.gfci, "{gfci}");
        }
        let dangers = case["dangers"].to_string();
        for finding in report.findings.iter().filter(|it| it.signal == Signal::Danger) {
            let title = words.finding(finding, &report.figures.loads).title;
            assert!(dangers.contains(finding.code) && dangers.contains(&title.replace('"', "\\\"")));
        }
    }
}

/// An electrician reads one system of units, whichever one the tables were published in.
#[test]
fn no_unit_of_the_other_system_is_on_the_worksheet() {
    for text in [crate::plan::demo::WEEKEND, crate::plan::demo::MENDED] {
        let (plan, report) = demo(text);
        for (units, others) in [
            (Units::Customary, ["m", "km", "cm", "°C", "L", "l"]),
            (Units::Metric, ["ft", "in", "mi", "°F", "gal", "lb"]),
        ] {
            let words = Words::new("en", units).expect("an offered language");
            let mut sheet = sheet_of(&plan, &report, &words);
            // Titles of sources keep their units.
            sheet["sources"] = serde_json::Value::Null;
            let sheet = sheet.to_string().replace('\u{a0}', " ");
            let mut words = sheet.split(' ').peekable();
            while let Some(word) = words.next() {
                let figure = word.ends_with(|c: char| c.is_ascii_digit());
                let unit = words.peek().map_or("", |next| next.trim_end_matches(|c: char| !c.is_alphabetic()));
                assert!(!figure || !others.contains(&unit), "{word} {unit}");
            }
        }
    }
}

/// The power section states its formulas in the reader's units and no figure more finely than its inputs allow: whole
/// watts, tenths of a percent and of a degree. At the reference of 60 °F nothing is lost: 3000 W stay 3000 W, and two
/// heaters of 1500 W run at once.
#[test]
fn power_on_the_worksheet_is_no_finer_than_what_it_rests_on() {
    let section = |plan: &Plan, units: Units| -> (String, Vec<String>) {
        let report = crate::judge::build(plan);
        let words = Words::new("en", units).expect("an offered language");
        let sheet = sheet_of(plan, &report, &words);
        let sections = sheet["sections"].as_array().expect("sections");
        let power = sections.iter().find(|it| it["key"] == "power");
        let power = power.expect("one");
        let rows = power["rows"].as_array().expect("rows").iter();
        let cells = rows.map(|row| row[1]["text"].as_str().expect("text").replace('\u{a0}', " "));
        (power.to_string().replace('\u{a0}', " "), cells.collect())
    };
    let (mut plan, _) = demo(crate::plan::demo::MENDED);
    let watts = |watts: i64| Answer::Known(Power::from_milliwatts(watts * 1000));
    let air = |text: &str| Answer::Known(bounds::AIR.read(text).expect("degrees"));
    let height = |text: &str| Answer::Known(bounds::ALTITUDE.read(text).expect("a height"));
    (plan.generator.rated, plan.generator.peak) = (watts(3000), watts(3000));
    (plan.site.air, plan.site.altitude) = (air("60 °F"), height("0 ft"));
    // 100 m above 1,219 m and 10 °C above 35 °C; 1,000 ft above 0 ft and 10 °F above 60 °F.
    let customary = ["328 ft above 4,000 ft", "18 °F above 95 °F", "1,000 ft above 0 ft", "10 °F above 60 °F"];
    let metric = ["100 m above 1,219 m", "10 °C above 35 °C", "304.8 m above 0 m", "5.6 °C above 15.6 °C"];
    for (units, formulas) in [(Units::Customary, customary), (Units::Metric, metric)] {
        let (all, cells) = section(&plan, units);
        for told in formulas {
            assert!(all.contains(told), "{told} not in {all}");
        }
        assert!(!all.contains("15.55"), "{all}");
        assert!(cells.contains(&"0% + 0%".to_owned()), "{cells:?}");
        let kept = cells.iter().filter(|cell| *cell == "3,000 W").count();
        assert!(kept >= 4, "{cells:?}");
    }
    (plan.site.air, plan.site.altitude) = (air("71 °F"), height("4201 ft"));
    for units in [Units::Customary, Units::Metric] {
        for cell in section(&plan, units).1 {
            let decimals = cell.split(|c: char| !(c.is_ascii_digit() || c == '.'));
            let most = decimals.filter_map(|number| Some(number.split_once('.')?.1.len())).max();
            // A length that the reader gave is shown as given.
            let given = cell.contains("ft") || cell.contains("°C");
            let most = most.unwrap_or(0);
            assert!(most <= if given { 2 } else { 1 }, "{cell}");
            assert!(most == 0 || !cell.ends_with('W'), "{cell}");
        }
    }
}

/// Worked by hand for 56 dB(A) at 23 ft and a quarter load: the busiest minute of this plan is 1,580 W of 2,800 W,
/// 56.43 %. 10 dB(A) more from a quarter to full load is common practice, no source, so 10 × 31.43 / 75 = 4.19 dB(A)
/// more. 56 + 4.19 − 20 log10(50 / 23) = 53.45 dB(A).
#[test]
fn noise_at_the_busiest_minute_can_be_worked_out_again() {
    let cells = |plan: &Plan| -> Vec<[String; 4]> {
        let report = crate::judge::build(plan);
        let sheet = sheet_of(plan, &report, &Words::english());
        let sections = sheet["sections"].as_array().expect("sections");
        let section = sections.iter().find(|it| it["key"] == "noise");
        let rows = section.expect("noise")["rows"].as_array().expect("rows");
        let text = |cell: &serde_json::Value, name: &str| {
            let text = cell[name].as_str().expect("text");
            text.replace('\u{a0}', " ")
        };
        rows.iter()
            .map(|row| {
                let (distance, level) = (&row[1], &row[2]);
                [text(&row[0], "text"), text(distance, "text"), text(level, "text"), text(level, "mark")]
            })
            .collect()
    };
    let (mut plan, _) = demo(crate::plan::demo::MENDED);
    let mut noise = Noise {
        level: SoundLevel::from_millidecibels(56_000),
        at: Length::from_millimetres(7010),
        load: Answer::Known(Percent::from_millipercent(25_000)),
    };
    plan.generator.noise = Answer::Known(noise);
    let rows = cells(&plan);
    let row = |what: &str| {
        let found = rows.iter().find(|row| row[0] == what);
        found.unwrap_or_else(|| panic!("{what} in {rows:?}")).clone()
    };
    let [.., load, mark] = row("Load it was measured at");
    assert_eq!((load.as_str(), mark.as_str()), ("25%", "P"));
    let [.., load, mark] = row("Load at the busiest minute");
    assert_eq!((load.as_str(), mark.as_str()), ("56.4%", ""));
    let [.., more, mark] = row("What that load adds");
    assert_eq!(more, "4.2 dBA");
    assert!(mark.starts_with('N') && mark.ends_with('◇'), "{mark}");
    let [_, distance, level, _] = row("Where national parks measure, at the busiest minute");
    assert_eq!((distance.as_str(), level.as_str()), ("50 ft", "53.4 dBA"));
    // No place is called quiet enough.
    assert!(rows.iter().all(|row| row[2] != "60 dBA"), "{rows:?}");
    // If measured at full load, nothing is added and nothing is repeated.
    noise.load = Answer::Known(Percent::from_millipercent(100_000));
    plan.generator.noise = Answer::Known(noise);
    assert!(cells(&plan).iter().all(|row| !row[0].contains("busiest")));
    // If the load is unknown, a quarter is assumed and marked as assumed.
    noise.load = Answer::Unknown;
    plan.generator.noise = Answer::Known(noise);
    let rows = cells(&plan);
    let load = rows.iter().find(|row| row[0] == "Load it was measured at");
    let [.., load, mark] = load.expect("a load");
    assert!(load == "25%" && mark.starts_with('N'), "{load} {mark}");
    // Two generators: 10 log10(2) = 3.0103 dB more.
    plan.generator.parallel = Some(Parallel { sets: 2, limit: Answer::Unknown, kit: Answer::Unknown });
    let rows = cells(&plan);
    let sets = rows.iter().find(|row| row[0] == "2 such generators side by side add");
    assert_eq!(sets.expect("two sets")[2], "3 dBA");
}

/// The decimals to which results are compared. Divisions leave more.
const LAST: u32 = 9;

/// Returns the number at the start of a text.
fn figure_of(text: &str) -> Decimal {
    let (number, _) = text.split_once(['\u{a0}', '%']).expect("a unit");
    Decimal::from_str(&number.replace(',', "")).expect("a number")
}

/// Adds up the volt-amperes written in a sum as a reader would: "3 × 12 VA", "480 VA ÷ 80%", "(412.56 VA − 68.75 VA)".
fn added_up(text: &str) -> Decimal {
    let words: Vec<String> =
        text.split_whitespace().map(|word| word.trim_matches(['(', ')', '%']).replace(',', "")).collect();
    let number = |at: usize| words.get(at).and_then(|word| Decimal::from_str(word).ok());
    let is = |at: Option<usize>, sign: &str| at.and_then(|at| words.get(at)).is_some_and(|it| it == sign);
    let mut sum = Decimal::ZERO;
    for at in 0..words.len() {
        let Some(mut term) = number(at).filter(|_| is(Some(at + 1), "VA")) else {
            continue;
        };
        if is(at.checked_sub(1), "×") {
            term *= number(at - 2).expect("a count");
        }
        if is(Some(at + 2), "÷") {
            term = term * Decimal::ONE_HUNDRED / number(at + 3).expect("per cent");
        }
        sum += if is(at.checked_sub(1), "−") { -term } else { term };
    }
    sum
}

/// Every sum equals its terms, every peak is what ran before plus the start, and each step begins with what ran after
/// the one before.
#[test]
fn each_sum_of_the_worksheet_comes_out_when_it_is_added_up_again() {
    let twelve = include_str!("../../../tests/plans/large/twelve.toml");
    // Hardly anything may run in the weekend as packed, so it has few sums.
    for text in [crate::plan::demo::MENDED, twelve] {
        let (plan, report) = demo(text);
        let sheet = sheet_of(&plan, &report, &Words::english());
        let rows = |key: &str| -> Vec<Vec<String>> {
            let sections = sheet["sections"].as_array().expect("sections");
            let section = sections.iter().find(|it| it["key"] == key).expect("one");
            let rows = section["rows"].as_array().expect("rows").iter();
            let cells = |row: &serde_json::Value| -> Vec<String> {
                let cells = row.as_array().expect("cells").iter();
                cells.map(|cell| cell["text"].as_str().expect("text").to_owned()).collect()
            };
            rows.map(cells).collect()
        };
        let sums = rows("sums");
        assert!(sums.len() > 3);
        for row in &sums {
            // Rounded up once, to a milliampere.
            let more = (figure_of(&row[3]) - added_up(&row[2])).round_dp(LAST);
            assert!(more >= Decimal::ZERO && more < Decimal::new(1, 3), "{row:?}");
            let holds = figure_of(&row[3]) <= figure_of(&row[4]);
            assert_eq!(holds, row[0].starts_with("Together"), "{row:?}");
        }
        let mut on = Vec::<Decimal>::new();
        let starts = rows("starts");
        let legs = 1 + usize::from(starts.iter().any(|row| row[0].ends_with("leg B")));
        for (at, row) in starts.iter().enumerate() {
            assert_eq!(figure_of(&row[2]).round_dp(LAST), added_up(&row[1]).round_dp(LAST), "{row:?}");
            assert!(figure_of(&row[2]) <= figure_of(&row[3]), "{row:?}");
            let before = on.get(at.wrapping_sub(legs)).copied().unwrap_or_default();
            let first = row[1].split(" + ").next().expect("a term");
            assert_eq!(figure_of(first), before, "{row:?}");
            on.push(figure_of(&row[4]));
        }
    }
}

/// The fuel for each demand adds up: hours divided by the hours that a tank lasts at it, and the fuel itself.
#[test]
fn fuel_comes_out_when_it_is_added_up_again() {
    for text in [crate::plan::demo::WEEKEND, crate::plan::demo::MENDED] {
        let (plan, report) = demo(text);
        let sheet = sheet_of(&plan, &report, &Words::english());
        let sections = sheet["sections"].as_array().expect("sections");
        let section = sections.iter().find(|it| it["key"] == "energy");
        let rows = section.expect("energy")["rows"].as_array().expect("rows");
        let text = |row: &serde_json::Value, at: usize| row[at]["text"].as_str().expect("text").to_owned();
        let figure = |text: &str| {
            let (number, _) = text.split_once(['\u{a0}', '%']).expect("a unit");
            Decimal::from_str(&number.replace(',', "")).expect("a number")
        };
        let hours = |text: &str| {
            let (hours, minutes) = text.split_once(':').expect("a clock");
            let part = |text: &str| Decimal::from_str(&text.replace("\u{a0}h", "")).expect("a number");
            part(hours) + part(minutes) / Decimal::from(60)
        };
        let (mut sum, mut count) = (Decimal::ZERO, Decimal::ZERO);
        for row in rows.iter().filter(|row| text(row, 0).starts_with("At ")) {
            let run = text(row, 1);
            let (run, tank) = run.split_once(" ÷ ").expect("a fraction");
            let share = hours(run) / hours(tank) * Decimal::ONE_HUNDRED;
            // Hours per tank are rounded down to the minute, and the share up to a tenth.
            let off = figure(&text(row, 2)) - share;
            assert!(off.abs() <= Decimal::new(2, 1), "{row:?} {share}");
            (sum, count) = (sum + figure(&text(row, 2)), count + Decimal::ONE);
        }
        assert!(count > Decimal::TWO);
        let row = |name: &str| {
            let found = rows.iter().find(|row| text(row, 0) == name);
            figure(&text(found.unwrap_or_else(|| panic!("{name}")), 2))
        };
        let day = row("Share of a tank in a day");
        assert!(day <= sum && sum - day <= count / Decimal::TEN, "{day} {sum}");
        let fuel = row("One tank holds") * day / Decimal::ONE_HUNDRED;
        assert!((fuel - row("Fuel in a day")).abs() <= Decimal::new(2, 2), "{fuel}");
    }
}

/// UL 943 gives 5.594 s at 6 mA (from a secondary copy), which a German reader sees with a comma.
#[test]
fn times_to_trip_are_written_as_the_reader_writes_numbers() {
    let (plan, report) = demo(crate::plan::demo::MENDED);
    for (tag, right, wrong) in [("en", "5.594", "5,594"), ("de", "5,594", "5.594")] {
        let words = Words::new(tag, Units::Metric).expect("an offered language");
        let sheet = sheet_of(&plan, &report, &words).to_string();
        assert!(sheet.contains(right) && !sheet.contains(wrong), "{tag}");
    }
}

/// Page 1 says what an outlet's label says: only a GFCI cord may go in, or whether a GFCI works there.
#[test]
fn the_diagram_tells_of_gfcis_what_the_labels_tell() {
    let (plan, report) = demo(crate::plan::demo::WEEKEND);
    let sheet = sheet_of(&plan, &report, &Words::english());
    let points = sheet["case"]["points"].as_array().expect("points");
    let gfci = |id: &str| {
        let mut points = points.iter();
        let point = points.find(|point| point["id"] == id).expect("a point");
        point["gfci"].as_str().expect("text").to_owned()
    };
    let told = ["front", "tents", "tents.1", "twist", "box-left"].map(gfci);
    let expected = ["GFCI CORD ONLY", "GFCI CORD FIRST", "GFCI CORD FIRST", "NO", "at box-left"];
    assert_eq!(told, expected);
}

/// Page 1 has what was assumed, as far as there is room under the diagram.
#[test]
fn a_small_diagram_leaves_room_for_what_was_assumed() {
    let lent = include_str!("../../../tests/plans/large/lent-box.toml");
    let before = crate::rules::testing::lent_box_before();
    let options = Options::default();
    for (text, most) in [(lent, 0), (&*before, 4)] {
        let (plan, report) = demo(text);
        let data = template_data(&plan, &report, &Words::english(), &options).expect("data");
        let (_, data) = data.iter().find(|(document, _)| *document == Document::Worksheet).expect("a worksheet");
        let data: serde_json::Value = serde_json::from_str(data).expect("JSON");
        let more = data["case"]["more"].as_str().map_or(0, |said| {
            let digits = said.split(|c: char| !c.is_ascii_digit()).find(|digits| !digits.is_empty());
            digits.and_then(|digits| digits.parse().ok()).unwrap_or(usize::MAX)
        });
        assert!(more <= most, "{more}: {}", data["case"]["more"]);
        let first = super::legible::pages(text, Document::Worksheet, &options).swap_remove(0);
        assert!(first.contains("Signature"), "{first}");
    }
}
