//! Whole interviews of different people, from the first question to the plan. A snapshot holds everything each is asked
//! and told, as shown on the screen.

use super::*;
use crate::plan::{Answer, Draw};
use crate::quantity::Power;

/// Returns how many questions were asked in turn.
fn in_turn(kept: &Kept) -> usize {
    let asked = kept.0.iter().map(|draft| Machine::new(draft.clone()).question());
    let asked: std::collections::BTreeSet<String> =
        asked.filter(|question| question.in_turn).map(|question| question.key).collect();
    asked.len()
}

/// Runs the interview of one person, which must end on the review page, and returns the plan.
pub(super) fn person(name: &str, text: &str) -> Plan {
    let typed = script(text);
    let (_, kept, said) = answers(&typed);
    let plan = planned(text);
    let report = crate::judge::build(&plan);
    let dangers = report.count(crate::report::Signal::Danger);
    let looks = report.figures.looks.len();
    // The keys the person had to press.
    let keys = typed.chars().count();
    let count = format!("{} questions, {keys} keys; {dangers} dangers, {looks} looks", in_turn(&kept));
    insta::assert_snapshot!(name, format!("{count}\n\n{said}\n{}", plan::write(&plan)));
    plan
}

#[test]
fn knows_everything() {
    person(
        "knows_everything",
        "\
3.6 kW, 4500 W
bonded
5-20R 20 A, 5-20R, TT-30R 30 A
across          # the two that look alike
20 A            # typed, and the same
120
1               # one generator
some
yes             # the first has buttons
yes
no
refrigerator, 2 x own, cpap
Big pump
motor
1/2 hp code G
3200 W
5-15P
Sign
lamp
0.8 A
1-15P
battery         # what runs it when the generator stops
dry
18 m
roof
yes
no
1300 m
none            # quiet hours: asked for the sake of the cpap
cord, box, split-30
orange          # the only box needs no name
TT-30P
TT-30R
12/3
25 ft
yes             # outdoor: the letters are missing
yes             # coiled
TT-30P
no              # the box is not listed
3 x 5-15R 15 A, 5-20R 20 A
no
yes
own
Dad’s splitter
unknown
3 ft
outlets         # the review page: what is not asked in turn
outlets.odd
both            # share, and early
none            # outlet1 is never early
outlet 1        # outlet2 is behind its breaker
17 A            # and trips early
own             # the camper outlet
none
fuel
propane
gasoline        # what its watts are given for
25 % 14 h, 100 % 5.5 h
4 gal
66 dBA at 7 m, 25 %
generator
generator.name
big red
generator.inverter
no
back
load.2
load.2.continuous
no
back
load.3
load.3.count
2
load.3.continuous
yes
back
gear.2
gear.2.bond
yes
back
site
site.name
Reunion
site.air
31 C
back
check
",
    );
}

#[test]
fn joins_two_sets() {
    let plan = person(
        "joins_two_sets",
        "\
2200 W, 2800 W
floating
5-20R 20 A
120
2               # joined by a kit: told at once
yes             # they are inverters
unknown         # whether the kit is the maker's
unknown         # and how much it passes
all
cpap, oxygen
unknown         # what runs it when the generator stops
none
wet
40 ft
open
yes
no
0 ft
none
extension
black
SJTW 12/3
50 ft
no
generator
generator.kit
yes
back
fuel
unknown         # so it may be propane
unknown         # and nobody knows for which fuel its watts are
unknown
unknown
check
",
    );
    // What both sets together have left.
    let (.., said) =
        answers(&script("2200 W, 2800 W\nfloating\n5-20R 20 A\n120\n2\nyes\nyes\n60 A\nall\nmicrowave, kettle\n"));
    assert!(said.contains("3,100\u{a0}W of 4,400\u{a0}W"), "{said}");
    let joined = plan.generator.parallel.expect("two sets");
    assert_eq!((joined.sets, joined.kit), (2, Answer::Known(true)));
    assert_eq!(joined.limit, Answer::Unknown);
    assert_eq!(plan.generator.rated_on, Answer::Unknown);
    let backups: Vec<_> = plan.loads.iter().map(|load| load.backup).collect();
    assert_eq!(backups, [Answer::Unknown, Answer::Known(false)]);
}

#[test]
fn knows_nothing() {
    let plan = person(
        "knows_nothing",
        "\
unknown
unknown
5-20R           # and no number on its breaker
unknown
unknown
unknown
own
Old thing
motor
don't know
unknown
unknown
unknown
idk
unknown
unknown
unknown
unknown
extension
idk             # nor its color
unknown
unknown
unknown
check
",
    );
    let load = &plan.loads[0];
    assert_eq!(load.running, Answer::Unknown);
    assert_eq!(plan.generator.rated, Answer::Unknown);
    assert_eq!(plan.generator.peak, Answer::Unknown);
    assert_eq!(plan.cords[0].wire, Answer::Unknown);
    assert_eq!(plan.cords[0].coiled, Answer::Unknown);
}

#[test]
fn changes_their_mind() {
    let plan = person(
        "changes_their_mind",
        "\
28000
<               # ten times too much
2.8 kW, 3300 W
<               # back, and it is right
2.8 kW
bonded
L14-30R 30 A    # no: not this one
<
5-15R 15 A
120
1               # one generator
none
kettle
<
toaster         # not the kettle

12 m
open

no

done
fuel
diesel
unknown
unknown
load.1          # the review page: the toaster
load.1.running
900 W
load.1.name
Old toaster
back
add
add load
laptop
outlet.1
outlet.1.face
5-20R           # another shape, and the breaker is asked again
15 A
check
",
    );
    assert_eq!(plan.generator.rated, Answer::Known(Power::from_milliwatts(2_800_000)));
    assert_eq!(plan.loads.len(), 2);
    assert_eq!(plan.loads[0].name, "Old toaster");
    assert_eq!(plan.loads[0].running, Answer::Known(Draw::Power(Power::from_milliwatts(900_000))));
}

#[test]
fn split_phase() {
    let plan = person(
        "split_phase",
        "\
7000 W, 8750 W
plug            # a bonding plug
L14-30R 30 A, 5-20R 20 A
all
microwave, air-conditioner-small
damp
15 m
open
yes
no
unknown
twist-30-four, four-to-twist, box-twist-30-four
yellow
SOOW 10/4
50 ft
no

10/3
1 ft
yes
yes
4 x 5-20R 20 A, L5-30R 30 A
yes
unknown
none            # the adapter has the only socket: nothing else is offered
gear.3.out.1
gear.3.out.1.leg
A A B           # one is missing
A A B B
back
gear.3.out.2
gear.3.out.2.leg
unknown         # nobody knows which half
back
check
",
    );
    let legs: Vec<_> = plan.boxes[0].outlets.iter().map(|it| it.leg).collect();
    let [a, b] = [plan::Leg::A, plan::Leg::B].map(Answer::Known);
    assert_eq!(legs, [a, a, b, b, Answer::Unknown]);
}

#[test]
fn metric_and_a_strip_behind_a_cord() {
    person(
        "metric",
        "\
2,2 kW, 2.4 kW
unknown
5-15R 15 A
120
1               # one generator
unknown
phone, projector
wet
12 m
covered
no
no
450 m
extension, strip
white
3G1.5
10 m
yes
no
white
unknown
1.5 m
cord 1 1
check
",
    );
}

#[test]
fn two_boxes() {
    let plan = person(
        "two_boxes",
        "\
6500 W, 8000 W
floating
L14-30R 30 A, TT-30R 30 A
none
percolator, griddle, lamp-string
damp
25 m
open
yes
no
300 m
twist-30-four, camper-30, box-twist-30-four, box-camper-30
black
SOOW 10/4
25 ft
no
black
STW 10/3
25 ft
no
gray            # two boxes
yes
4 x 5-20R 20 A
yes
yellow
yes
2 x 5-20R 20 A
yes
down
gear.3.out.1
gear.3.out.1.leg
b               # all of them
back
check
",
    );
    let fed: Vec<_> = plan.boxes.iter().map(|holder| holder.from.as_ref().map(ToString::to_string)).collect();
    assert_eq!(fed, [Some("black-four-wire-cord".into()), Some("black-camper-cord".into())]);
    // A single letter applies to all outlets. A box on a camper outlet has just one leg, so it has no such answer.
    let legs = |holder: &plan::DistributionBox| -> Vec<_> { holder.outlets.iter().map(|it| it.leg).collect() };
    assert_eq!(legs(&plan.boxes[0]), [Answer::Known(plan::Leg::B); 4]);
    assert_eq!(legs(&plan.boxes[1]), [Answer::Missing; 2]);
}

/// A camper and the loads in it add only a few questions.
#[test]
fn comes_in_a_camper() {
    let plan = person(
        "comes_in_a_camper",
        "\
3400 W, 4200 W
floating
5-20R 20 A, TT-30R 30 A
120
1               # one generator
all
air-conditioner-roof, battery-charger-large, microwave, percolator
damp
40 ft
open
yes
no
600 ft
camper
TT-30P
unknown         # nobody has looked behind the small door
air-conditioner-roof, battery-charger-large, microwave
check
",
    );
    let [camper] = &plan.boxes[..] else { panic!("{:?}", plan.boxes) };
    assert!(camper.is_camper() && camper.from.is_some());
    let inside = plan.loads.iter().filter(|load| plan.around(load).is_some());
    let plugs: Vec<_> = inside.map(|load| load.plug).collect();
    assert_eq!(plugs, [Answer::Missing; 3]);
}

#[test]
fn no_box() {
    let plan = person(
        "no_box",
        "\
1800 W, 2200 W
floating
5-15R 15 A
120
1               # one generator
all
phone, laptop
damp
60 ft
open
yes
no
unknown
extension
orange
SJTW 14/3
50 ft
no
check
",
    );
    assert!(plan.boxes.is_empty());
    assert_eq!(plan.cords.len(), 1);
}

#[test]
fn only_a_power_strip() {
    let plan = person(
        "only_a_power_strip",
        "\
2000 W
unknown         # whether that was its peak
unknown
5-20R 20 A
120
1               # one generator
unknown
phone, tv, lamp-led
wet
30 ft
enclosed
no
no
unknown
strip

?
unknown
unknown
no
check
",
    );
    assert_eq!(plan.cords[0].ends().len(), 6);
    assert_eq!(plan.cords[0].wire, Answer::Unknown);
    // A single figure of unknown kind is the peak.
    assert_eq!(plan.generator.rated, Answer::Unknown);
    let watts = Power::from_milliwatts(2_000_000);
    assert_eq!(plan.generator.peak, Answer::Known(watts));
}

#[test]
fn pasted_garbage() {
    let long = "x".repeat(5000);
    let text = format!(
        "\
\u{1b}[31m2800 W\u{7}
<html><body>{long}
'; DROP TABLE plans; --
-5 W
99999999999999999999 W
2800 \u{202e}W
電気
2.8 kW
3300 W
running
floating floating
floating
5-21R
2 x
13 x 5-20R
,,,
tree
TT-30R 30 A
121
120
1               # one generator
maybe
all
{long}
0 x own
own
Sam\u{0}'s thing
Sam \u{202e}gniht
Sam's thing
spins
motor
lots
1/2 hp code Q
1/2 hp code G
unknown
5-15P
wet
0 ft
40 ft
open
yes
no
unknown
done
check
"
    );
    let plan = person("pasted_garbage", &text);
    assert_eq!(plan.loads.len(), 1);
    assert_eq!(plan.loads[0].name, "Sam's thing");
}

#[test]
fn resumes_twice() {
    let text = script(COMMON);
    let lines: Vec<&str> = text.lines().collect();
    let words = Words::english();
    let mut draft = Draft::new("test");
    let mut said = Vec::new();
    let mut last = None;
    for part in [&lines[..3], &lines[3..13], &lines[13..]] {
        let mut kept = Kept::default();
        let outcome = run(
            &mut lines::Lines::new((part.join("\n") + "\n").as_bytes(), &mut said),
            &mut kept,
            &words,
            draft,
            Start::First,
        )
        .unwrap();
        said.extend(b"\n--- the answers end here ---\n");
        // Through the file format, as the next run of the program would read it.
        draft = Draft::from_text(&kept.0.last().unwrap().to_text()).unwrap();
        last = Some(outcome);
    }
    let Some(Outcome::Finished { plan, .. }) = last else { panic!("{last:?}") };
    assert_eq!(*plan, planned(COMMON));
    insta::assert_snapshot!("resumes_twice", String::from_utf8(said).unwrap());
}

/// An occasion adds six loads at once, beside those marked by hand, and each can be unmarked again.
#[test]
fn a_usual_list() {
    let listed = |line: &str| {
        let named = COMMON.lines().nth(6).expect("what is plugged in");
        COMMON.replacen(named, line, 1)
    };
    assert_eq!(planned(&listed("occasion-tent")).loads.len(), 6);
    assert_eq!(planned(&listed("occasion-tent, kettle, 2 x phone")).loads.len(), 7);
    let text = listed("occasion-tent\n<\nlamp-string, phone");
    assert_eq!(person("a_usual_list", &text).loads.len(), 2);
}

/// A first-time camper with a borrowed box, who answers "I don't know" wherever such a person would.
pub(super) const LENT_BOX: &str = "\
3500 W          # the number in its name
unknown         # which of the two it is
unknown         # neutral
L5-30R 30 A, 5-15R 15 A
unknown         # volts
unknown         # buttons
phone, fridge-small, coffee-maker, heater, cpap
unknown         # what runs it when the generator stops
wet
15 ft
unknown
unknown
no
unknown
unknown         # quiet hours
extension, box-twist-30
orange
unknown         # print on the cord
unknown
no              # it lies flat
unknown         # who made the box
2 x 5-20R 20 A
unknown
across          # left and right
box 2 1 2       # the orange cord is in the box
check
";

/// Every question asked in turn has another answer that changes the report.
#[test]
fn every_question_that_is_asked_matters() {
    let told = |draft: &Draft| {
        let plan = plan_of(draft, &|key| key.to_owned());
        crate::judge::judge(&plan).to_json().expect("a report")
    };
    for text in [COMMON, LENT_BOX] {
        let (_, kept, _) = answers(&script(text));
        let whole = kept.0.last().expect("answers");
        let report = told(whole);
        let asked = kept.0.iter().map(|draft| Machine::new(draft.clone()).question());
        for question in asked.filter(|question| question.in_turn && question.key != "review") {
            let others: Vec<Input> = match &question.kind {
                Kind::Choice(rows) | Kind::Many(rows) | Kind::Page(rows) => {
                    let values = rows.iter().map(|row| row.value.clone());
                    values.map(Input::Answer).collect()
                }
                Kind::YesNo => ["yes", "no"].map(|text| Input::Answer(text.into())).into(),
                Kind::Text(_) => {
                    ["900 W", "16/3", "400 ft", "1 ft", "8pm-8am", "0 ft"].map(|text| Input::Answer(text.into())).into()
                }
            };
            let matters = others.into_iter().chain([Input::Unknown]).any(|other| {
                let mut machine = Machine::new(whole.clone());
                machine.went_back_for_tests(&question.key);
                machine.answer(other).is_ok() && told(machine.draft()) != report
            });
            assert!(matters, "{} of\n{text}", question.key);
        }
    }
}

/// A question left to the review page is unknown until answered. Its assumption is listed.
#[test]
fn what_waits_for_the_review_page_is_assumed() {
    let (_, kept, _) = answers(&script(LENT_BOX));
    let machine = Machine::new(kept.0.last().expect("answers").clone());
    for key in ["generator.inverter", "site.air", "gear.1.outdoor", "gear.2.bond", "gear.2.out.1.wire"] {
        assert_eq!(machine.draft().get(key), None, "{key}");
        assert!(!machine.taken(key).is_empty(), "{key}");
    }
}

/// A usual camp and that of a user who knows next to nothing take at most 25 questions, all of which make a difference.
#[test]
fn at_most_twenty_five_questions() {
    for text in [COMMON, LENT_BOX] {
        let (outcome, kept, _) = answers(&script(text));
        let questions = in_turn(&kept);
        assert!((1..=25).contains(&questions), "{questions}");
        let Outcome::Finished { draft, .. } = outcome else { panic!("{outcome:?}") };
        assert_eq!(matters::needless(&draft), Vec::<String>::new());
    }
    let plan = person("lent_box", LENT_BOX);
    assert_eq!(plan.cords[0].from, crate::plan::Id::reference("box-right"));
    // A look sheet of at most six lines is enough to find the answers.
    let looks = crate::judge::build(&plan).figures.looks;
    assert!((1..=6).contains(&looks.len()), "{looks:#?}");
}

/// At home, with a cord still to be bought: one answer says so, and its package is on the list of things to look at.
#[test]
fn before_arriving() {
    let text = COMMON.replacen("SJTW 10/3\n75 ft\nno             # not coiled", "not bought\nunknown", 1);
    let plan = person("before_arriving", &text);
    let cord = &plan.cords[0];
    assert_eq!((cord.bought, cord.wire), (Some(false), Answer::Unknown));
    let looks = crate::judge::build(&plan).figures.looks;
    let package = looks.iter().find(|it| !it.buy.is_empty()).expect("a package");
    let keys: Vec<&str> = package.buy.iter().map(|it| it.key).collect();
    let wanted = ["plug", "ends", "outdoor", "wire", "conductors", "length", "reach"];
    assert_eq!(keys, wanted);
    // A cord that is not there has nothing else to look at.
    assert!(looks.iter().all(|it| it.at != package.at || it == package));
}
