//! Whole interviews of different people, from the first question to the plan: what each is asked
//! and told, as it stands on the screen, is a snapshot.

use super::*;
use crate::plan::{Answer, Draw};
use crate::quantity::Power;

/// The interview of one person, who must end on the review page.
pub(super) fn person(name: &str, text: &str) -> Plan {
    let (_, _, said) = answers(&script(text));
    let plan = planned(text);
    insta::assert_snapshot!(name, format!("{said}\n{}", plan::write(&plan)));
    plan
}

#[test]
fn knows_everything() {
    person(
        "knows_everything",
        "\
3.6 kW
4500 W
                # 120 V
bonded
no              # inverter
5-20R 20 A
5-20R
20 A            # typed, and the same
TT-30R 30 A
                # done
some
both            # share, and early
yes             # outlet1 has buttons
none            # never early
yes
outlet 1        # outlet2 is behind the breaker of outlet1
17 A            # and trips early
no
own             # the camper outlet
none
refrigerator
own
Big pump
motor
1/2 hp code G
1
3200 W
no
5-15P
cpap
battery         # what runs it when the generator stops
own
Sign
lamp
0.8 A
2
yes
1-15P

dry
18 m
roof
yes
no
1300 m
none            # quiet hours: asked for the sake of the cpap
cord
TT-30P
TT-30R
12/3
25 ft
yes             # outdoor: the letters are missing
yes             # coiled
box
TT-30P
no
yes             # a bond inside, and not listed
5-15R
3
15 A
no
5-20R
1
20 A
yes
done
split-30
unknown
3 ft
unknown
no
done
fuel            # the review page: what is not asked in turn
propane
gasoline        # what its watts are given for
4 gal
25 % 14 h, 100 % 5.5 h
66 dBA at 7 m, 25 %
generator
generator.name
big red
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
2200 W
2800 W

floating
yes
5-20R 20 A

all

cpap
unknown         # what runs it when the generator stops
oxygen
none

wet
40 ft
open
yes
no
0 ft
none
extension
SJTW 12/3
50 ft
no

generator
generator.sets
2
unknown         # whether the kit is the maker's: told at once
unknown         # and how much it passes
generator
generator.kit
yes
back
fuel
unknown         # so it may be propane
unknown         # and nobody knows for which fuel its watts are
unknown
unknown
unknown
check
",
    );
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
unknown
unknown
unknown
5-20R           # and no number on its breaker
unknown
done
unknown

own
Old thing
motor
don't know
1
unknown
unknown
unknown
done
unknown
idk
unknown
unknown
unknown
unknown
extension
unknown
unknown
unknown
unknown
done
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
2800
28000 W
<               # ten times too much
2.8 kW
3300 W
<
<               # back to the rated power, and it is right
2.8 kW
120-240
<
120             # no: 120 V only
bonded
no
5-15R 15 A
done
none

kettle
<
toaster         # not the kettle
done

12 m
open

no

done
fuel
diesel
unknown
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
done
outlet.1
outlet.1.face
5-20R           # another shape, and the breaker is asked again
15 A
back
check
",
    );
    assert_eq!(
        plan.generator.rated,
        Answer::Known(Power::from_milliwatts(2_800_000))
    );
    assert_eq!(plan.loads.len(), 2);
    assert_eq!(plan.loads[0].name, "Old toaster");
    assert_eq!(
        plan.loads[0].running,
        Answer::Known(Draw::Power(Power::from_milliwatts(900_000)))
    );
}

#[test]
fn split_phase() {
    let plan = person(
        "split_phase",
        "\
7000 W
8750 W
120-240
plug            # a bonding plug
no
L14-30R 30 A
5-20R 20 A
done
all

microwave
air-conditioner-small
done
damp
15 m
open
yes
no
unknown
twist-30-four
SOOW 10/4
50 ft
no
four-to-twist
10/3
1 ft
yes
no
box-twist-30-four
yes
5-20R 20 A
4
yes
A A B           # one is missing
A A B B
L5-30R 30 A
1
unknown
unknown         # nobody knows which half
done
done
none            # the adapter has the only socket: nothing else is offered
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
2,2 kW
2.4 kW

unknown
yes
5-15R 15 A

unknown

phone
projector

wet
12 m
covered
no
no
450 m
extension
3G1.5
10 m
yes
no
strip
unknown
1.5 m
no
no
cord 1 1
done
check
",
    );
}

#[test]
fn two_boxes() {
    let plan = person(
        "two_boxes",
        "\
6500 W
8000 W
120-240
floating
no
L14-30R 30 A
TT-30R 30 A
done
none

percolator
griddle
lamp-string
done
wet
25 m
open
yes
no
300 m
twist-30-four
SOOW 10/4
25 ft
no
camper-30
STW 10/3
25 ft
no
box-twist-30-four
yes
5-20R 20 A
4
yes
b               # all of them
done
box-camper-30
yes
5-20R 20 A
2
yes
done
done
check
",
    );
    let fed: Vec<_> = plan
        .boxes
        .iter()
        .map(|holder| holder.from.as_ref().map(ToString::to_string))
        .collect();
    assert_eq!(fed, [Some("cord1".into()), Some("cord2".into())]);
    // One letter is for all of them; a box for a camper's outlet has one half only.
    let legs = |holder: &plan::DistributionBox| -> Vec<_> {
        holder.outlets.iter().map(|it| it.leg).collect()
    };
    assert_eq!(legs(&plan.boxes[0]), [Answer::Known(plan::Leg::B); 4]);
    assert_eq!(legs(&plan.boxes[1]), [Answer::Missing; 2]);
}

#[test]
fn no_box() {
    let plan = person(
        "no_box",
        "\
1800 W
2200 W
120
floating
yes
5-15R 15 A
done
all

phone
laptop
done
damp
60 ft
open
yes
no
unknown
extension
SJTW 14/3
50 ft
no
done
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
unknown
unknown         # whether that was its peak
120
unknown
yes
5-20R 20 A
done
unknown

phone
tv
lamp-led
done
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
no
done
check
",
    );
    assert_eq!(plan.cords[0].ends.len(), 6);
    assert_eq!(plan.cords[0].wire, Answer::Unknown);
    // The one number, of which nobody knew what it is, is the peak.
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
2800 W; 3300 W
-5 W
99999999999999999999 W
2800 \u{202e}W
2.8 kW
電気
3300 W
121
120
floating floating
floating
maybe
yes
5-21R
tree
TT-30R 30 A
done
all
no
{long}
own
Sam\u{0}'s thing
Sam \u{202e}gniht
Sam's thing
spins
motor
lots
1/2 hp code Q
1/2 hp code G
0
101
1
unknown
no
5-15P
done
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
    for part in [&lines[..7], &lines[7..19], &lines[19..]] {
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
        // Through the file, as the next run of the program would have it.
        draft = Draft::from_text(&kept.0.last().unwrap().to_text()).unwrap();
        last = Some(outcome);
    }
    let Some(Outcome::Finished { plan, .. }) = last else {
        panic!("{last:?}")
    };
    assert_eq!(*plan, planned(COMMON));
    insta::assert_snapshot!("resumes_twice", String::from_utf8(said).unwrap());
}

/// Six things at one stroke, and one of them taken out again.
#[test]
fn a_usual_list() {
    let common: Vec<&str> = COMMON.lines().collect();
    let (before, after) = (&common[..10], &common[16..]);
    let text = [before, &["occasion-tent"], after].concat().join("\n") + "\n";
    let plan = planned(&text);
    assert_eq!(plan.loads.len(), 6);
    let answers = text.lines().count();
    assert_eq!(answers, 30, "answers of the common case with a usual list");
    let enter = script(&text).lines().filter(|line| line.is_empty()).count();
    // Enter does not say that a cord lies flat, which was one more.
    assert!(
        enter * 2 >= answers,
        "half of them Enter: {enter} of {answers}"
    );
    let text = text.replacen(
        "occasion-tent\n",
        "occasion-tent\n<\nremoved\noccasion-tent\n",
        1,
    );
    let plan = person("a_usual_list", &text);
    let names: Vec<&str> = plan.loads.iter().map(|load| load.id.as_str()).collect();
    assert_eq!(names.len(), 6, "{names:?}");
}
