//! A figure has one reason and the same words on label, card and screen.

use serde_json::Value as Json;

use super::agree::{data_of, text_of};
use super::*;
use crate::judge::ask::ask;
use crate::rules::testing::edited;

/// Returns the plan in this text and its report.
fn judged(text: &str) -> (Plan, Report) {
    let plan = crate::plan::read(text).expect("a plan");
    let report = crate::judge::build(&plan);
    (plan, report)
}

fn item(plan: &Plan, report: &Report, document: Document, list: &str, id: &str) -> Json {
    let data = data_of(plan, report, document).expect("data");
    let mut items = data[list].as_array().into_iter().flatten();
    let found = items.find(|item| text_of(item, "id") == id);
    found.unwrap_or_else(|| panic!("no {id}")).clone()
}

fn label(plan: &Plan, report: &Report, id: &str) -> Json {
    item(plan, report, Document::Labels, "items", id)
}

/// Replaces the no-break spaces that keep a number with its unit.
fn plain(text: &str) -> String {
    text.replace('\u{a0}', " ")
}

/// A 20 A breaker on a generator of 19.2 A: 16 A for hours is 80 % of the breaker (NEC 210.20(A)), and 19.2 A is the
/// limit of the generator. Each figure gets its own reason. On a generator of 30 A the breaker sets both and is named
/// once.
#[test]
fn each_figure_of_a_limit_has_its_own_reason() {
    let told = |edits: &[(&str, &str)]| {
        let (plan, report) = judged(&edited(edits));
        let label = label(&plan, &report, "front");
        let figures = [&label["long"], &label["short"]].map(|flow| plain(text_of(flow, "amps")));
        let screen = Words::english().limits(&report, 400);
        let line = screen.lines().find(|line| line.contains("front")).expect("a line");
        (figures, text_of(&label, "set_by").to_owned(), plain(line))
    };
    let small = [
        ("inverter = false", "inverter = true"),
        ("rated = \"3600 W\"", "rated = \"2304 W\""),
        ("peak = \"4500 W\"", "peak = \"2400 W\""),
    ];
    let (figures, set_by, line) = told(&small);
    assert_eq!(figures, ["16 A", "19.2 A"]);
    assert_eq!(
        set_by,
        "3 hours or more: 80% of breaker “front”. Go over, and it can trip. Under 3 hours: Limited by the generator. \
         Go over, and it shuts off or stalls."
    );
    let (hours, short) = line.split_once("19.2 A").expect("both figures");
    assert!(hours.contains("16 A") && hours.contains("80%") && !hours.contains("generator"), "{line}");
    assert!(short.contains("generator") && !short.contains("80%"), "{line}");

    let (figures, set_by, line) = told(&[]);
    assert_eq!(figures, ["16 A", "20 A"]);
    assert_eq!(set_by, "Limited by the breaker at “front”. It trips if you go over.");
    assert_eq!(line.matches("imited by").count(), 1, "{line}");
}

/// Wherever amps of a two-leg 30 A outlet appear, they are given for each leg, so that nobody adds them up or takes
/// them for a sum. An outlet on one leg has one figure.
#[test]
fn two_legs_have_their_amps_each() {
    let (plan, report) = judged(&edited(&[
        ("voltage = \"120 V\"", "voltage = \"120/240 V\""),
        ("rated = \"3600 W\"", "rated = \"7200 W\""),
        ("peak = \"4500 W\"", "peak = \"9000 W\""),
        ("ground = \"wet\"", "ground = \"dry\""),
        ("shape = \"L5-30R\"", "shape = \"L14-30R\""),
        (
            "from = \"twist\"\nplug = \"L5-30P\" # long\nends = [\"L5-30R\"]",
            "from = \"twist\"\nplug = \"L14-30P\"\nends = [\"L14-30R\"]",
        ),
        ("conductors = 3 # long", "conductors = 4"),
        ("inlet = \"L5-30P\" # box", "inlet = \"L14-30P\""),
        ("gfci = true # left", "gfci = true\nleg = \"A\""),
        ("gfci = true # right", "gfci = true\nleg = \"B\""),
    ]));
    let both = "24 A on A and 24 A on B";
    for id in ["twist", "long", "box"] {
        let label = label(&plan, &report, id);
        let flow = &label["long"];
        let told = plain(&format!("{} {}", text_of(flow, "amps"), text_of(flow, "how_long")));
        assert!(told.starts_with(both), "{id}: {told}");
        let row = item(&plan, &report, Document::Card, "rows", id);
        assert!(plain(&row["facts"].to_string()).contains(both), "{row}");
    }
    let whole = label(&plan, &report, "the grey one");
    assert!(plain(&whole["outlets"].to_string()).contains("A: 24 A, B: 24 A"), "{whole}");
    let screen = plain(&Words::english().limits(&report, 400));
    assert!(screen.lines().any(|line| line.contains("twist") && line.contains(both)), "{screen}");

    let left = label(&plan, &report, "left");
    assert_eq!(text_of(&left["long"], "how_long"), "3 hours or more");
    let left = screen.lines().find(|line| line.contains("left")).expect("a line");
    assert!(!left.contains("on A and"), "{left}");

    let kettle: Vec<_> = report.figures.loads.iter().map(|it| it.id.clone()).collect();
    let answer = ask(&plan, &report, &kettle[..1], &[]);
    let said = plain(&Words::english().may(&report, &answer, 400));
    assert!(answer.may, "{said}");
    assert!(said.contains("through the breaker of “twist”: up to 12.5 A\n"), "{said}");
    assert!(said.contains("the generator then supplies up to 12.5 A on one leg\n"), "{said}");
    assert!(!said.contains("in all"), "{said}");
    assert!(said.contains("through the breaker of “left”: up to 12.5 A\n"), "{said}");
}

/// The generator's label names the load with which its tank lasts the shortest: at the busiest minute, the one that
/// demands most. In another plan it is another load.
#[test]
fn the_tank_is_told_with_what_empties_it() {
    for (edits, name) in [(&[][..], "Kettle"), (&[("running = \"1500 W\"", "running = \"40 W\"")], "Fan")] {
        let (plan, report) = judged(&edited(edits));
        let hours = report.figures.energy.hours_per_tank.expect("known");
        let hours = Words::english().amount(hours, crate::words::Show::Capacity);
        let told = plain(&label(&plan, &report, "the grey one")["facts"].to_string());
        let wanted = plain(&format!("about {hours} at the busiest time, with {name} on"));
        assert!(told.contains(&wanted), "{wanted}: {told}");
    }
}

/// A 15 A cord in a 20 A outlet. A generator of 14.1 A cannot overload it, so nothing is called missing. One of 16.6 A
/// can, and its own shutdown is named. With one of 30 A, the breaker is named as tripping too late.
#[test]
fn what_the_generator_cannot_overload_lacks_no_breaker() {
    let told = |rated: &str, peak: &str| {
        let (rated, peak) = (format!("rated = \"{rated}\""), format!("peak = \"{peak}\""));
        let (plan, report) = judged(&edited(&[
            ("inverter = false", "inverter = true"),
            ("rated = \"3600 W\"", rated.as_str()),
            ("peak = \"4500 W\"", peak.as_str()),
            (
                "from = \"twist\"\nplug = \"L5-30P\" # long\nends = [\"L5-30R\"]",
                "from = \"front\"\nplug = \"5-15P\"\nends = [\"5-15R\"]",
            ),
            ("from = \"long\"\ninlet", "inlet"),
            ("wire = \"10 AWG\" # long", "wire = \"14 AWG\""),
            ("on = \"left\" # kettle", "on = \"long\""),
            ("on = \"right\" # fan", "on = \"front\""),
        ]));
        let label = label(&plan, &report, "long");
        let row = item(&plan, &report, Document::Card, "rows", "long");
        [text_of(&label, "unwatched"), text_of(&row, "unwatched")].map(plain)
    };
    assert_eq!(told("1700 W", "2000 W"), ["", ""]);
    let [label, card] = told("2000 W", "2400 W");
    assert!(label.contains("the generator shuts off only above 16.6 A"), "{label}");
    // Both say what to add up and to which figure.
    for told in [&label, &card] {
        assert!(told.contains("Add up") && told.to_lowercase().contains("past 15 a "), "{told}");
    }
    let [label, card] = told("3600 W", "4500 W");
    assert!(label.contains("the breaker trips only at 20 A"), "{label}");
    assert!(!card.is_empty());
}

/// Returns the text of every print and the screen, in lowercase.
fn all_told(text: &str) -> String {
    let (plan, report) = judged(text);
    let words = Words::english();
    let prints = [Document::Labels, Document::Card, Document::Cautions]
        .map(|document| data_of(&plan, &report, document).expect("data").to_string());
    (prints.concat() + &words.troubles(&report, 4000)).to_lowercase()
}

/// Propane neither spills nor comes in cans, but gasoline does both. If dry ground can burn, advice on noise agrees
/// with advice on fire: bare soil, and never soft ground or grass.
#[test]
fn each_fuel_is_told_in_its_own_words() {
    let all_day = ("hours = [\"18:00-23:00\"]", "hours = [\"00:00-24:00\"]");
    let quiet = ("quiet_hours = \"23:00-07:00\"", "quiet_hours = []");
    let gasoline = all_told(&edited(&[all_day, quiet]));
    let propane = all_told(&edited(&[all_day, quiet, ("fuel = \"gasoline\"", "fuel = \"propane\"")]));
    for words in ["fuel spills", "closed can"] {
        assert!(gasoline.contains(words), "{words}: {gasoline}");
        assert!(!propane.contains(words), "{words}: {propane}");
    }
    assert!(propane.contains("cylinder") && propane.contains("smell gas"), "{propane}");
    for words in ["spill", "add fuel", "fuel on a hot"] {
        assert!(!propane.contains(words), "{words}: {propane}");
    }
    assert!(!gasoline.contains("cylinder"));

    let dry = ("ground = \"wet\"", "ground = \"dry\"");
    for level in ["64.6 dBA", "67.5 dBA"] {
        let level = format!("level = \"{level}\"");
        let told = all_told(&edited(&[dry, ("level = \"56 dBA\"", level.as_str())]));
        assert!(told.contains("noise001") && told.contains("fuel002"), "{told}");
        assert!(told.contains("on bare soil or rock"), "{told}");
        for words in ["soft ground", "on grass", "soft soil"] {
            assert!(!told.contains(words), "{words}: {told}");
        }
    }
}

/// An assumption that changes nothing appears only on the worksheet. One that matters appears with what it changes.
#[test]
fn what_changes_nothing_stands_on_the_worksheet_alone() {
    let words = Words::english();
    let mut seen = [0, 0];
    for text in [
        crate::plan::demo::WEEKEND.to_owned(),
        edited(&[("altitude = \"0 ft\"", ""), ("air = \"59 °F\"", ""), ("power_factor = 1.0 # fan", "")]),
        edited(&[("ground = \"wet\"", ""), ("gfci = true # left", "gfci = \"unknown\"")]),
    ] {
        let (plan, report) = judged(&text);
        let figures = &report.figures;
        let matters = |field: &String| {
            figures.matters.contains(field) || figures.looks.iter().any(|look| look.fields.contains(field))
        };
        let said = |it: &Assumption| words.assumed(it, &figures.loads);
        let sheet = data_of(&plan, &report, Document::Worksheet).expect("a worksheet").to_string();
        let others = [Document::Labels, Document::Card, Document::Cautions]
            .map(|document| data_of(&plan, &report, document).expect("data").to_string())
            .concat();
        let screen = words.troubles(&report, 4000);
        let squeezed = |text: &str| text.split_whitespace().collect::<String>();
        for it in &figures.assumed {
            let sentence = serde_json::to_string(&said(it)).expect("text");
            let sentence = sentence.trim_matches('"').to_owned();
            if matters(&it.field) {
                seen[0] += 1;
                continue;
            }
            seen[1] += 1;
            assert!(!others.contains(&sentence), "{sentence}");
            assert!(!squeezed(&screen).contains(&squeezed(&said(it))), "{sentence}");
            // Similar assumptions share one sentence there, about the first of them.
            let alike = figures.assumed.iter().any(|other| {
                let first = serde_json::to_string(&said(other)).expect("text");
                other.why == it.why && sheet.contains(first.trim_matches('"').trim_end_matches('.'))
            });
            assert!(alike, "{sentence}: {sheet}");
        }
    }
    assert!(seen.iter().all(|count| *count > 0), "{seen:?}");
}

/// No place meets a level measured at 50 ft, so the card, which is for setting up the camp, gives none. The worksheet's
/// plot shows levels only where exhaust allows the generator, and no bound to stay below.
#[test]
fn no_place_is_told_to_be_quiet_enough() {
    let loud = ("level = \"56 dBA\"", "level = \"67.5 dBA\"");
    let (plan, report) = judged(&edited(&[loud]));
    let told: Vec<&str> = report.findings.iter().map(|it| it.code).collect();
    assert!(told.contains(&"NOISE001"), "{told:?}");
    let card = data_of(&plan, &report, Document::Card).expect("a card");
    assert!(!card.to_string().contains("dB"), "{card}");
    let sheet = data_of(&plan, &report, Document::Worksheet).expect("a worksheet");
    let curves = sheet["plot"]["curves"].as_array().expect("curves");
    let [_, noise] = &curves[..] else { panic!("volts and noise: {curves:?}") };
    assert_eq!(noise["bounds"], Json::Array(Vec::new()));
    // People at 60 ft with 50 ft of cord: with the generator 25 ft from them, the cord spans 15 ft, 4.572 m.
    let metres = |curve: &Json| -> Vec<f64> {
        let points = curve["points"].as_array().into_iter().flatten();
        points.filter_map(|point| point[0].as_str()?.parse().ok()).collect()
    };
    let (near, volts) = (metres(noise), metres(&curves[0]));
    assert!(!near.is_empty() && near.iter().all(|at| *at > 4.57), "{near:?} {noise}");
    assert!(volts.iter().any(|at| *at < 4.57), "{volts:?}");
}

/// A box, in storage and in use. It is known to be homemade, and only guessed to bond neutral to ground. If only the
/// guess forbids its use, the title says that it is a guess.
#[test]
fn a_guess_is_no_reason_ahead_of_what_is_known() {
    let floating = ("neutral = \"bonded\"", "neutral = \"floating\"");
    let unknown = ("bond = false", "bond = \"unknown\"");
    let joined = ("bond = false", "bond = true");
    let home_made = ("listed = true", "listed = false");
    let doubted = ("listed = true", "listed = \"unknown\"");
    let bin = [
        ("from = \"long\"\n", ""),
        ("on = \"left\" # kettle", "on = \"front\""),
        ("on = \"right\" # fan", "on = \"front\""),
    ];
    for spare in [&[][..], &bin] {
        let title = |edits: &[(&str, &str)]| {
            let (plan, report) = judged(&edited(&[edits, spare].concat()));
            plain(text_of(&label(&plan, &report, "box"), "title"))
        };
        assert_eq!(title(&[floating, unknown, home_made]), "Homemade box: “box”");
        let guess = title(&[floating, unknown, doubted]);
        assert!(guess.starts_with("Worst case: Neutral is joined"), "{guess}");
        let known = title(&[floating, joined, doubted]);
        assert!(known.starts_with("Neutral is joined"), "{known}");
    }
}

/// An unknown rated power is assumed from the peak, not as 1000 W, and the label says so. Uncounted sockets are "all
/// plugs", not "both".
#[test]
fn a_label_tells_what_was_assumed() {
    let told = |edits: &[(&str, &str)]| {
        let (plan, report) = judged(&edited(edits));
        let set = label(&plan, &report, &plan.generator.name).to_string();
        let front = label(&plan, &report, "front").to_string();
        (plain(&set), plain(&front))
    };
    let watts = ("rated = \"3600 W\"", "rated = \"unknown\"");
    let (set, front) = told(&[watts]);
    assert!(set.contains("We assumed 3,"), "{set}");
    assert!(!set.contains("1,000 W"), "{set}");
    assert!(front.contains("All plugs here") && !front.contains("Both"), "{front}");
    let counted = ("gfci = true # front", "gfci = true\nsockets = 2");
    let (_, front) = told(&[counted]);
    assert!(front.contains("Both sockets"), "{front}");
}

/// A camper's outlet without a GFCI feeds a box whose outlets have none either. The box may be plugged in as it is,
/// with its full limit. Only its own outlets require a GFCI cord.
#[test]
fn a_box_goes_in_whose_outlet_takes_the_gfci_cord() {
    let bare = [("gfci = true # left", "gfci = false"), ("gfci = true # right", "gfci = false")];
    let (plan, report) = judged(&edited(&bare));
    let kind = |id: &str| text_of(&label(&plan, &report, id), "kind").to_owned();
    assert_eq!([kind("twist"), kind("long")], ["receptacle", "cord"]);
    assert_eq!([kind("box"), kind("left")], ["box", "refuse"]);
    let row = item(&plan, &report, Document::Card, "rows", "box");
    assert!(row["long"].is_string() && row["stop"].is_null(), "{row}");
    let row = item(&plan, &report, Document::Card, "rows", "left");
    assert!(row["long"].is_null() && row["stop"].is_string(), "{row}");
}

/// Two splitters in an outlet that trips early share what it carries, so the ends of neither have it to themselves.
/// With one splitter and one socket, they do.
#[test]
fn ends_share_what_other_cords_draw_on_as_well() {
    let text = crate::plan::demo::MENDED;
    let share = |text: &str| {
        let (plan, report) = judged(text);
        let label = label(&plan, &report, "tents.1");
        plain(text_of(&label["shared"][0], "sentence"))
    };
    assert_eq!(share(text), "All of “front” together: 12.8 A.");
    let from = text.find("# demo-remark-now-socket").expect("the other cord");
    let to = text.find("[[box]]").expect("a box");
    let one = format!("{}{}", &text[..from], &text[to..]).replace("sockets = 2", "sockets = 1");
    assert_eq!(share(&one), "All 3 ends of “tents” together: 12.8 A. Not each.");
}

/// The label of a cord that got hot says so first, before any other fault of the cord or of what feeds it, since the
/// cord is bad wherever it goes.
#[test]
fn what_got_hot_is_told_first() {
    let title = |edits: &[(&str, &str)]| {
        let (plan, report) = judged(&edited(edits));
        text_of(&label(&plan, &report, "long"), "title").to_owned()
    };
    let hot = ("coiled = false # long", "coiled = false\nhot = true");
    let guess = ("conductors = 3 # long", "conductors = \"unknown\"");
    let ahead = ("breaker = \"30 A\" # twist", "breaker = \"unknown\"");
    for others in [&[][..], &[guess], &[ahead], &[guess, ahead]] {
        let title = title(&[&[hot][..], others].concat());
        assert_eq!(title, "“long” got hot, or gave a shock", "{others:?}");
    }
    assert!(!title(&[guess]).contains("hot"));
}

/// An outlet with nothing planned for it says so on the screen as on its label, with a GFCI or without. Near miss: one
/// with something planned.
#[test]
fn an_idle_outlet_is_idle_on_the_screen_as_well() {
    let told = |edits: &[(&str, &str)]| {
        let (plan, report) = judged(&edited(edits));
        let label = label(&plan, &report, "front");
        let screen = Words::english().limits(&report, 400);
        let line = screen.lines().find(|line| line.contains("front")).expect("a line");
        (label["idle"].is_string(), line.contains("Before you plug anything in here"))
    };
    let dry = ("ground = \"wet\"", "ground = \"dry\"");
    let bare = ("gfci = true # front", "gfci = false");
    assert_eq!(told(&[dry, bare]), (true, true));
    assert_eq!(told(&[dry]), (true, true));
    assert_eq!(told(&[dry, ("on = \"right\" # fan", "on = \"front\"")]), (false, false));
}

/// Unless there is known to be no bonding plug, no label calls an open ground normal: it may be a broken wire.
#[test]
fn an_open_ground_is_normal_only_without_a_bonding_plug() {
    let told = |plug: &str| {
        let (plan, report) =
            judged(&edited(&[("neutral = \"bonded\"", "neutral = \"floating\""), ("bonding_plug = false", plug)]));
        label(&plan, &report, &plan.generator.name).to_string().contains("OPEN GROUND")
    };
    assert!(told("bonding_plug = false"));
    assert!(!told("bonding_plug = \"unknown\""));
    assert!(!told("bonding_plug = true"));
}

/// If the bonding plug takes an outlet's only socket, no amps are given on label, card or screen, since it draws
/// nothing. With two sockets, the other one has them.
#[test]
fn where_only_the_bonding_plug_goes_no_amps_are_told() {
    let told = |sockets: &str| {
        let counted = format!("gfci = false\nsockets = {sockets}");
        let (plan, report) = judged(&edited(&[
            ("neutral = \"bonded\"", "neutral = \"floating\""),
            ("bonding_plug = false", "bonding_plug = true\nbonding_plug_in = \"front\""),
            ("gfci = true # front", &counted),
            ("ground = \"wet\"", "ground = \"dry\""),
        ]));
        let label = label(&plan, &report, "front");
        let row = item(&plan, &report, Document::Card, "rows", "front");
        let screen = Words::english().limits(&report, 400);
        let line = screen.lines().find(|line| line.contains("front")).expect("a line");
        (!label["long"].is_null(), !row["long"].is_null(), plain(line).contains(" A"))
    };
    assert_eq!(told("1"), (false, false, false));
    assert_eq!(told("2"), (true, true, true));
}

/// The bonding plug is in a single socket, so a cord or kettle that the plan puts there too has no place, which FIT001
/// reports as a danger. Nothing is sent there, and nobody is told to put the plug on a cord whose GFCI it would blind.
/// With two sockets, the other one is free.
#[test]
fn nothing_goes_where_the_bonding_plug_is() {
    let plug = [
        ("neutral = \"bonded\"", "neutral = \"floating\""),
        ("ground = \"wet\"", "ground = \"dry\""),
        ("bonding_plug = false", "bonding_plug = true\nbonding_plug_in = \"front\""),
    ];
    let cord = (
        "[[box]]",
        "[[cord]]\nid = \"other\"\nfrom = \"front\"\nplug = \"5-15P\"\nends = [\"5-15R\"]\nwire = \"12 AWG\"\n\
         conductors = 3\nlength = \"10 ft\"\noutdoor = true\ncoiled = false\ngfci = true\n[[box]]",
    );
    let kettle = |on| ("on = \"left\" # kettle", on);
    // A cord that leads to nothing would not be named anyway.
    let used = [cord, kettle("on = \"other\"")];
    for (other, name) in [(&used[..], "other"), (&[kettle("on = \"front\"")][..], "Kettle")] {
        for (sockets, fits) in [("1", false), ("2", true)] {
            let counted = format!("gfci = false\nsockets = {sockets}");
            let edits = [&plug[..], &[("gfci = true # front", counted.as_str())], other].concat();
            let (plan, report) = judged(&edited(&edits));
            let mut lost = report.findings.iter().filter(|it| it.code == "FIT001");
            let lost = lost.find(|it| it.fix.key == "lost");
            assert_eq!(lost.map(|it| it.signal), (!fits).then_some(crate::report::Signal::Danger));
            if let Some(lost) = lost {
                let said = Words::english().finding(lost, &report.figures.loads).fix;
                assert!(!said.contains("three-way"), "{said}");
            }
            let label = label(&plan, &report, "front").to_string();
            assert_eq!(label.contains(name), fits, "{label}");
            assert!(label.contains("bonding plug"), "{label}");
        }
    }
}

/// A camper has one label for its inlet and everything inside: what never runs together there, and whether a GFCI is
/// upstream. It says that something trips only if the main breaker was read.
#[test]
fn the_label_of_a_camper_speaks_of_what_is_inside() {
    const SOUND: &str = include_str!("../../../tests/plans/usual/s11-camper-inside.toml");
    let told = |text: &str| {
        let (plan, report) = judged(text);
        let label = label(&plan, &report, "camper");
        let inside = label["facts"][1][1].as_str().unwrap_or_default().to_owned();
        (inside, label["gfci"] == true, text_of(&label, "shock").to_owned())
    };
    let (inside, gfci, shock) = told(SOUND);
    assert!(inside.ends_with("not together: Air conditioner + Microwave"), "{inside}");
    assert!(gfci && shock.contains("“rv”"), "{shock}");
    let bare = "breaker = \"30 A\"\ngfci = false";
    let (_, gfci, shock) = told(&SOUND.replacen("breaker = \"30 A\"\ngfci = true", bare, 1));
    assert!(!gfci && shock.contains("camper’s own"), "{shock}");

    // With nothing else that trips.
    let trips = |main: &str| {
        let edits = [
            ("rated = \"3400 W\"", "rated = \"4800 W\""),
            ("peak = \"4200 W\"", "peak = \"5200 W\""),
            ("inverter = true", "inverter = false"),
            ("shape = \"TT-30R\"\nbreaker = \"30 A\"", "shape = \"TT-30R\"\nbreaker = \"unknown\""),
            ("inlet = \"TT-30P\"\nbreaker = \"30 A\"", main),
        ];
        let text = edits.iter().fold(SOUND.to_owned(), |text, (was, is)| {
            assert_eq!(text.matches(was).count(), 1, "{was}");
            text.replace(was, is)
        });
        let (_, report) = judged(&text);
        let mut limits = report.figures.limits.into_iter();
        limits.find(|it| it.inside).expect("its inside").acts
    };
    let id = Id::new("camper").expect("an id");
    let read = trips("inlet = \"TT-30P\"\nbreaker = \"30 A\"");
    assert_eq!(read, crate::report::Acts::AtLimit { id: id.clone() });
    assert_eq!(trips("inlet = \"TT-30P\""), crate::report::Acts::Assumed { id });
}

/// What looking may clear is sent to the look sheet, and not to an electrician. Near miss: what may be used with a GFCI
/// cord says how, and a box that got hot needs no look.
#[test]
fn a_label_sends_to_the_look_sheet() {
    let (plan, report) = judged(&crate::rules::testing::lent_box_before());
    let fix = |id: &str| text_of(&label(&plan, &report, id), "fix").to_owned();
    assert!(fix("box1").starts_with("See the look sheet, line "), "{}", fix("box1"));
    assert!(fix("home").contains("only a GFCI cord"), "{}", fix("home"));
    let known = crate::rules::testing::LENT_BOX.replace("listed = true", "listed = true\nhot = true");
    let (plan, report) = judged(&known);
    let label = label(&plan, &report, "box1").to_string();
    assert!(label.contains("DO NOT USE") && !label.contains("look sheet"), "{label}");
}
