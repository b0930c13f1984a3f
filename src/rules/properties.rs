//! What must hold for any plan: tried on many made at random.

use std::fmt::Write as _;

use proptest::prelude::*;

use super::testing::plan;
use crate::report::{Finding, Signal, build};

const SHAPES: [(&str, &str, u32); 4] = [
    ("5-15R", "5-15P", 15),
    ("5-20R", "5-20P", 20),
    ("L5-30R", "L5-30P", 30),
    ("TT-30R", "TT-30P", 30),
];

/// A plan in a few numbers, so that it can be changed in one place and compared.
#[derive(Clone, Debug)]
struct Sketch {
    ground: &'static str,
    sleepers_feet: u32,
    rated: u32,
    /// Shape and breaker of each outlet of the set.
    outlets: Vec<(usize, u32)>,
    /// Outlet it is in, gauge, shapes of its ends, coiled.
    cords: Vec<(usize, i8, Vec<usize>, bool)>,
    /// Watts and the receptacle, of those there are.
    loads: Vec<(u32, usize)>,
    gfci: bool,
}

impl Sketch {
    /// Every receptacle with its shape.
    fn receptacles(&self, prefix: &str) -> Vec<(String, usize)> {
        let outlets = self
            .outlets
            .iter()
            .enumerate()
            .map(|(at, (shape, _))| (format!("{prefix}out{at}"), *shape));
        let ends = self.cords.iter().enumerate().flat_map(|(at, cord)| {
            let several = cord.2.len() > 1;
            cord.2.iter().enumerate().map(move |(end, shape)| {
                let id = if several {
                    format!("{prefix}cord{at}.{}", end + 1)
                } else {
                    format!("{prefix}cord{at}")
                };
                (id, *shape)
            })
        });
        outlets.chain(ends).collect()
    }

    fn text(&self, prefix: &str) -> String {
        let mut text = format!(
            "format = 1\nregion = \"north-america\"\n[site]\nname = \"x\"\nground = \"{}\"\n\
             sleepers_at = \"{} ft\"\naltitude = \"0 ft\"\nair = \"59 °F\"\nco_alarm = true\n\
             feeds_building = false\n[generator]\nname = \"g\"\nrated = \"{} W\"\n\
             voltage = \"120 V\"\nneutral = \"bonded\"\n",
            self.ground, self.sleepers_feet, self.rated
        );
        for (at, (shape, breaker)) in self.outlets.iter().enumerate() {
            let _ = write!(
                text,
                "[[generator.outlet]]\nid = \"{prefix}out{at}\"\nshape = \"{}\"\nsockets = 2\n\
                 breaker = \"{breaker} A\"\ngfci = {}\n",
                SHAPES[*shape].0, self.gfci
            );
        }
        for (at, (from, gauge, ends, coiled)) in self.cords.iter().enumerate() {
            let from = from % self.outlets.len();
            let ends: Vec<String> = ends
                .iter()
                .map(|shape| format!("\"{}\"", SHAPES[*shape].0))
                .collect();
            let _ = write!(
                text,
                "[[cord]]\nid = \"{prefix}cord{at}\"\nfrom = \"{prefix}out{from}\"\n\
                 plug = \"{}\"\nends = [{}]\nwire = \"{gauge} AWG\"\nconductors = 3\n\
                 length = \"50 ft\"\noutdoor = true\ncoiled = {coiled}\n",
                SHAPES[self.outlets[from].0].1,
                ends.join(", ")
            );
        }
        let receptacles = self.receptacles(prefix);
        for (at, (watts, on)) in self.loads.iter().enumerate() {
            let (id, shape) = &receptacles[on % receptacles.len()];
            let _ = write!(
                text,
                "[[load]]\nid = \"{prefix}load{at}\"\nname = \"l\"\nkind = \"heater\"\n\
                 running = \"{watts} W\"\ncontinuous = false\nplug = \"{}\"\non = \"{id}\"\n",
                SHAPES[*shape].1
            );
        }
        text
    }

    fn findings(&self) -> Vec<Finding> {
        build(&plan(&self.text("p"))).findings
    }
}

/// Whether some finding of this code and signal is about a part.
fn has(findings: &[Finding], code: &str, signal: Signal, about: &Finding) -> bool {
    findings.iter().any(|finding| {
        finding.code == code
            && finding.signal <= signal
            && about
                .about
                .first()
                .is_none_or(|id| finding.about.contains(id))
    })
}

prop_compose! {
    fn sketch()(
        ground in prop::sample::select(vec!["wet", "damp", "dry", "unknown"]),
        sleepers_feet in 5_u32..40,
        rated in 1500_u32..5000,
        outlets in prop::collection::vec((0_usize..4, prop::sample::select(vec![15_u32, 20, 30])), 1..4),
        cords in prop::collection::vec(
            (
                0_usize..3,
                prop::sample::select(vec![18_i8, 16, 14, 12, 10]),
                prop::collection::vec(0_usize..4, 1..4),
                any::<bool>(),
            ),
            0..3,
        ),
        loads in prop::collection::vec((50_u32..3000, 0_usize..9), 0..4),
        gfci in any::<bool>(),
    ) -> Sketch {
        Sketch { ground, sleepers_feet, rated, outlets, cords, loads, gfci }
    }
}

proptest! {
    #![proptest_config(ProptestConfig {
        max_global_rejects: 1 << 20,
        ..ProptestConfig::with_cases(128)
    })]

    #[test]
    fn a_bigger_breaker_never_turns_an_unprotected_rating_off(
        sketch in sketch(), which in 0_usize..3, more in 1_u32..30,
    ) {
        let before = sketch.findings();
        let mut bigger = sketch.clone();
        let which = which % bigger.outlets.len();
        bigger.outlets[which].1 += more;
        let after = bigger.findings();
        // What was unprotected is still in some finding of the rule, if not at its head.
        for finding in before.iter().filter(|finding| finding.code == "OVER001") {
            for id in &finding.about {
                prop_assert!(
                    after.iter().any(|later| later.code == "OVER001" && later.about.contains(id)),
                    "{id} of {finding:?} is not in {after:#?}"
                );
            }
        }
    }

    #[test]
    fn one_more_load_never_clears_a_danger(sketch in sketch(), watts in 50_u32..3000, on in 0_usize..9) {
        let before = sketch.findings();
        let mut more = sketch.clone();
        more.loads.push((watts, on));
        let after = more.findings();
        for finding in before.iter().filter(|finding| finding.signal == Signal::Danger) {
            prop_assert!(
                has(&after, finding.code, Signal::Danger, finding),
                "{finding:?} is not in {after:#?}"
            );
        }
    }

    #[test]
    fn a_thicker_cord_never_worsens_its_findings(sketch in sketch(), which in 0_usize..3) {
        prop_assume!(!sketch.cords.is_empty());
        let mut thicker = sketch.clone();
        let which = which % thicker.cords.len();
        thicker.cords[which].1 -= 2;
        // Voltage is left out: what a thin cord kept out now runs, and drops voltage elsewhere.
        let before = sketch.findings();
        for finding in thicker.findings() {
            if matches!(finding.code, "CORD001" | "OVER001") {
                prop_assert!(
                    has(&before, finding.code, finding.signal, &finding),
                    "{finding:?} is not in {before:#?}"
                );
            }
        }
    }

    #[test]
    fn other_ids_change_nothing(sketch in sketch()) {
        let strip = |prefix: &str| {
            let report = build(&plan(&sketch.text(prefix)));
            let text = serde_json::to_string(&report).expect("a report is JSON");
            text.replace(prefix, "")
        };
        // Prefixes of the same length that keep the order, and are in no other word.
        prop_assert_eq!(strip("Qq"), strip("Zz"));
    }

    #[test]
    fn the_worst_comes_first_and_twice_is_the_same(sketch in sketch()) {
        let findings = sketch.findings();
        let keys: Vec<_> = findings.iter().map(|it| (it.signal, it.code, &it.about)).collect();
        prop_assert!(keys.is_sorted());
        prop_assert_eq!(&findings, &sketch.findings());
    }

    /// Whoever must do without something is told so.
    #[test]
    fn what_must_run_and_cannot_is_in_some_finding(
        sketch in sketch(), legs in any::<bool>(), motors in any::<bool>(), free in any::<bool>(),
    ) {
        let mut text = sketch.text("p");
        if legs {
            text = text.replace("voltage = \"120 V\"", "voltage = \"120/240 V\"");
        }
        if motors {
            text = text.replace("kind = \"heater\"", "kind = \"motor\"");
        }
        if free {
            text = text.lines().filter(|line| !line.starts_with("on = ")).collect::<Vec<_>>().join("\n");
        }
        let report = build(&plan(&text));
        for lost in &report.figures.sharing.unplaced {
            prop_assert!(
                report.findings.iter().any(|finding| finding.about.contains(&lost.load)),
                "{lost:?} is in none of {:#?}\n{text}", report.findings
            );
        }
    }
}
