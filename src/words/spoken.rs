//! All that is said, in a form that somebody can read: a snapshot for each kind, in which each sentence stands once.
//! Every English message stands in one of the snapshots, or in a short list with the reason.

#![expect(clippy::disallowed_methods, reason = "tests read the files of this package")]

use std::collections::BTreeSet;
use std::fmt::Write as _;
use std::path::Path;

use super::Words;
use super::language::style::{VALUE, shown_to_readers};
use crate::judge;
use crate::judge::ask::ask;
use crate::learned;
use crate::mend::advised;
use crate::plan::demo::{MENDED, WEEKEND};
use crate::plan::{Id, Plan};
use crate::print::{Options, template_data};
use crate::report::Report;
use crate::rules::testing::edited;

/// So wide that every paragraph is one line.
const WIDE: usize = 100_000;

/// Texts, each of which is kept once, with the names and figures that it first came with.
#[derive(Default)]
pub(crate) struct Once {
    seen: BTreeSet<String>,
    pub(crate) text: String,
}

impl Once {
    pub(crate) fn heading(&mut self, heading: &str) {
        self.text = format!("{}\n\n# {heading}\n\n", self.text.trim_end());
    }

    /// Adds the lines of a text that have not been said yet with other names and figures.
    pub(crate) fn add(&mut self, text: &str) {
        let bare = anstream::adapter::strip_str(text).to_string();
        for line in bare.lines().map(str::trim).filter(|line| line.contains(char::is_alphabetic)) {
            // A reason is the same with its label or without.
            let label = ["Why ", "Do ", "Look "].into_iter().find_map(|label| line.strip_prefix(label));
            if self.seen.insert(alike(label.unwrap_or(line).trim_start())) {
                self.text.push_str(line);
                self.text.push('\n');
            }
        }
    }
}

/// Returns a text without its names and figures.
fn alike(text: &str) -> String {
    let mut named = 0_usize;
    let mut out = String::new();
    for c in text.chars() {
        match c {
            '“' => named += 1,
            '”' => named = named.saturating_sub(1),
            _ if named > 0 || c.is_ascii_digit() => {}
            _ => out.push(c),
        }
    }
    // Lists of names are alike, however long.
    let mut short = out.replace(", , ", ", ").replace(" and ,", "");
    while short.contains(", , ") {
        short = short.replace(", , ", ", ");
    }
    short
}

/// The plans of a folder of `tests/plans`, in the order of their names.
fn plans_of(folder: &str) -> Vec<String> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/plans").join(folder);
    let mut paths: Vec<_> = std::fs::read_dir(folder).expect("a folder").map(|it| it.expect("a file").path()).collect();
    paths.sort();
    paths.iter().map(|path| std::fs::read_to_string(path).expect("a plan")).collect()
}

/// Both demo plans and the usual ones.
pub(crate) fn usual() -> Vec<Plan> {
    let demos = [WEEKEND, MENDED].map(str::to_owned);
    let texts = demos.into_iter().chain(plans_of("usual")).chain(plans_of("large"));
    texts.map(|text| crate::rules::testing::plan(&text)).collect()
}

/// The plans that set off a rule, each with the code of the rule.
pub(crate) fn firing() -> impl Iterator<Item = (&'static str, Plan)> {
    crate::rules::all()
        .flat_map(|rule| rule.fires.iter().map(|it| (rule.code, crate::rules::testing::plan(&edited(it)))))
}

fn checked(said: &mut Once, words: &Words, report: &Report) {
    for text in [
        words.brief(report, WIDE),
        words.troubles(report, WIDE),
        words.limits(report, WIDE),
        words.sharing(report, WIDE),
        words.dangers(report, WIDE),
        words.count(report),
    ] {
        said.add(&text);
    }
    for finding in &report.findings {
        let text = words.finding(finding, &report.figures.loads);
        let look = text.look.iter().map(String::as_str);
        [text.title.as_str(), &text.why, &text.fix].into_iter().chain(look).for_each(|text| said.add(text));
    }
    for (_, text) in words.assumptions(report, |_| true, true) {
        said.add(&text);
    }
}

#[test]
fn all_that_check_says() {
    let words = Words::english();
    let mut said = Once::default();
    for text in [WEEKEND, MENDED] {
        let plan = crate::rules::testing::plan(text);
        said.heading(plan.site.name.as_str());
        checked(&mut said, &words, &judge::build(&plan));
    }
    said.heading("Other plans");
    for plan in usual() {
        checked(&mut said, &words, &judge::build(&plan));
    }
    let mut last = "";
    for (code, plan) in firing() {
        if code != last {
            said.heading(code);
        }
        last = code;
        checked(&mut said, &words, &judge::build(&plan));
    }
    for key in ["check-long", "check-more", "check-defer"] {
        said.add(&words.text(key));
    }
    assert_eq!(words.faults(), [""; 0]);
    insta::assert_snapshot!("check", said.text);
}

#[test]
fn all_that_may_says() {
    let words = Words::english();
    let mut said = Once::default();
    let mut answer = |plan: &Plan| {
        let report = judge::build(plan);
        let ids: Vec<Id> = report.figures.loads.iter().map(|load| load.id.clone()).take(7).collect();
        let mut answer = |wanted: &[Id], running: &[Id]| {
            said.add(&words.may(&report, &ask(plan, &report, wanted, running), WIDE));
        };
        answer(&ids, &[]);
        for one in ids.chunks(1) {
            answer(one, &[]);
            answer(one, one);
            for other in ids.chunks(1).filter(|other| *other != one) {
                answer(one, other);
            }
        }
        for pair in ids.windows(2) {
            answer(pair, &[]);
        }
    };
    usual().iter().for_each(&mut answer);
    for (_, plan) in firing() {
        answer(&plan);
    }
    assert_eq!(words.faults(), [""; 0]);
    insta::assert_snapshot!("may", said.text);
}

#[test]
fn all_that_mend_says() {
    let words = Words::english();
    let mut said = Once::default();
    let mut mended = |plan: &Plan| {
        let (report, mended) = advised(plan, false);
        said.add(&words.repairs(&report, WIDE));
        said.add(&words.by_hand(&mended.effect));
    };
    usual().iter().for_each(&mut mended);
    for (code, plan) in firing() {
        // A quick half of the rest: what is not dangerous has nothing to mend.
        if judge::build(&plan).findings.iter().any(|it| it.code == code && it.signal == crate::report::Signal::Danger) {
            mended(&plan);
        }
    }
    assert_eq!(words.faults(), [""; 0]);
    insta::assert_snapshot!("mend", said.text);
}

/// What somebody might have seen in the example weekend.
const SEEN: &[&str] = &[
    "front tripped at 13 A",
    "front tripped at 18 A",
    "front tripped at 25 A",
    "front tripped",
    "13 A",
    "twist tripped at 35 A",
    "table tripped at 9 A",
    "tents hot",
    "tents warm",
    "tents very warm",
    "kettle hot",
    "box-left 109 V",
    "box-left 60 V",
    "box-left 0 V",
    "box-left 119 V",
    "box-left 124 V",
    "box-left 131 V",
    "box-left 150 V",
    "front 90 V",
    "front 122 V",
    "front 112 V",
    "box-through 109 V",
    "ran 7 h",
    "ran 2 h",
    "ran 20 h",
    "GFCI box-left tripped",
    "GFCI tripped",
    "CO alarm",
    "shock",
    "shock at kettle",
    "shock at front",
    "fire",
    "no alarm",
    "nothing happened",
    "something",
    "front table hot",
    "front 5",
    "box-left tripped at 12 A",
    "box-left tripped at 15 A",
    "box-through tripped at 12 A",
];

#[test]
fn all_that_learned_says() {
    let words = Words::english();
    let mut said = Once::default();
    let runtime = |line: &&str| !line.starts_with("runtime");
    let without = WEEKEND.lines().filter(runtime).collect::<Vec<_>>().join("\n");
    let unknown =
        without.replacen("breaker = \"20 A\"", "breaker = \"unknown\"", 1).replacen("trips_at = \"17 A\"", "", 1);
    assert_ne!(without, unknown);
    for text in [WEEKEND, MENDED, &without, &unknown] {
        let plan = crate::rules::testing::plan(text);
        let report = judge::build(&plan);
        for seen in SEEN {
            let typed = |text: &str| words.plain_numbers(text).ok();
            let learned = learned::understand(&plan, seen, &words.vocabulary(), typed)
                .and_then(|seen| learned::learn(&plan, &report, &seen));
            let told = match learned {
                Ok(learned) => words.learned(&learned, &report.figures.loads),
                Err(unclear) => {
                    let (why, instead) = words.unclear(&unclear, "plan.toml");
                    format!("{why} {instead}")
                }
            };
            said.add(&format!("{seen}: {told}"));
        }
    }
    assert_eq!(words.faults(), [""; 0]);
    insta::assert_snapshot!("learned", said.text);
}

/// Every text of the data of every print.
#[test]
fn all_that_is_printed() {
    let words = Words::english();
    let mut said = Once::default();
    let options = Options { alignment: true, ..Options::default() };
    let mut printed = |plan: &Plan, report: &Report| {
        for (_, data) in template_data(plan, report, &words, &options).expect("data") {
            let data: serde_json::Value = serde_json::from_str(&data).expect("JSON");
            each_text(&data, &mut |text| said.add(text));
        }
    };
    for plan in usual() {
        printed(&plan, &advised(&plan, false).0);
    }
    for (_, plan) in firing() {
        printed(&plan, &judge::build(&plan));
    }
    // The example plans are written into the reader's folder.
    for text in [WEEKEND, MENDED] {
        said.add(&crate::plan::demo::named(text, &|key| words.text(key)));
    }
    assert_eq!(words.faults(), [""; 0]);
    insta::assert_snapshot!("prints", said.text);
}

fn each_text(value: &serde_json::Value, tell: &mut dyn FnMut(&str)) {
    match value {
        serde_json::Value::String(text) => tell(text),
        serde_json::Value::Array(values) => values.iter().for_each(|value| each_text(value, tell)),
        serde_json::Value::Object(values) => values.values().for_each(|value| each_text(value, tell)),
        _ => {}
    }
}

/// Messages that stand in no snapshot, by how their key begins, each with the reason.
const ELSEWHERE: &[(&str, &str)] = &[
    ("appliance-", "a name in a list, which is the file"),
    ("shape-", "a name in a list, which is the file"),
    ("face-", "a name in a list, which is the file"),
    ("id-", "a name in a list, which is the file"),
    ("drawn-", "a drawing: looked at in a terminal"),
    ("plain-list-found", "where what is typed fits several rows: src/interview/lines.rs"),
    ("source-", "the name of a document, as on the pages"),
    ("page-", "a heading of every page"),
    ("words-", "told to who translates"),
    ("hint-", "a key of the terminal: looked at there"),
    ("list-nothing", "a key of the terminal: looked at there"),
    ("interview-", "around the interview, of files and terminals: tests/program/interview.rs"),
    ("cli-", "an argument's help: tests/program/commands.rs"),
    ("usage-", "a wrong command line: tests/program/commands.rs"),
    ("failure-", "a fault of the system: tests/program/commands.rs"),
    ("templates-", "told to who changes templates"),
    ("demo-", "after the demo is written: tests/program/prints.rs"),
    ("print-wrote", "after prints are written: tests/program/prints.rs"),
    ("print-card-sheets", "after prints are written: tests/program/prints.rs"),
    ("print-labels-used", "after prints are written: tests/program/prints.rs"),
    ("print-look-gone", "after prints are written: tests/program/prints.rs"),
    ("print-dangers-left", "after prints are written: tests/program/prints.rs"),
    ("working", "while prints are written: tests/program/prints.rs"),
    ("note-danger-unplugged", "after a part came out: interview/live.rs"),
    ("share-turn-without", "turns at an hour without a device for health: words/share.rs"),
    ("learned-no-print", "after a plan is changed: tests/program/commands.rs"),
    ("learned-same", "after a plan is changed: tests/program/commands.rs"),
    ("learned-take-off", "after a plan is changed: tests/program/commands.rs"),
    ("may-no-load", "a name that the plan lacks: tests/program/commands.rs"),
    ("mend-", "after a plan is changed: tests/program/commands.rs"),
    ("reject-", "what cannot be: each is met in interview/tests"),
    ("change-", "a rare way to mend: each is carried out in mend/tests/steps.rs"),
    ("box-shapes", "a rare way to mend: each is carried out in mend/tests/steps.rs"),
    ("buy-", "of what is not bought: interview/tests/unknown.rs"),
    ("look-buy", "of what is not bought: interview/tests/unknown.rs"),
];

/// Messages for cases that no plan here has. They are read in their file only, so a plan that brings one about is welcome:
/// then its key has to go from here.
const RARE: &str = "ask-bought ask-bought.help ask-bought.why ask-gear-bond.row ask-gear-ends.help ask-gear-ends.row \
    ask-gear-ends.why ask-gear-inside.row ask-gear-listed.row ask-gear-main.row ask-gear-plug.help \
    ask-gear-plug.why ask-generator-figure.row ask-generator-kit.row ask-generator-limit.row \
    ask-generator-rated-on.help ask-generator-rated-on.row ask-generator-rated-on.why \
    ask-generator-runtime.row ask-generator-tank.row ask-load-backup.row ask-load-voltage \
    ask-load-voltage.help ask-load-voltage.row ask-load-voltage.why ask-out-list.help ask-out-places.row \
    ask-outlet-face.help ask-outlet-shares.help ask-outlet-shares.row ask-outlet-shares.why \
    ask-outlet-trips.help ask-outlet-trips.row ask-outlet-trips.why ask-outlets-bonding.help \
    ask-outlets-bonding.why ask-review-quit ask-review-quit.why ask-site-air.row ask-site-alarm.row \
    ask-site-building.row ask-site-quiet.row ask-site-sleepers.row ask-site-stands.row assume-load-one-leg \
    assume-load-one-leg.look assume-load-voltage assume-load-voltage.look assume-night assume-no-breaker \
    assume-no-breaker.look assume-noise-load assume-people-sleep assume-people-sleep.look assume-shape-outlets \
    assume-shape-outlets.look assume-starting-code-v check-limit-bonding-plug learned-meter-compare \
    look-clears-dangers look-clears-warnings look-if-altitude look-if-length progress-look-more \
    learned-meter-unknown learned-no-breaker may-taken note-first-line note-load-cannot-start \
    note-load-too-large only-if-generator overload-early overload-hot overload-late pick-gear-ends-done \
    pick-gear-what-split-30-four pick-load-voltage-120-240 pick-outlet-shares-own pick-outlet-trips-none \
    pick-review-stay picture-guarded-ahead plain-not-text plan-first-here plan-more print-look-count \
    print-neutral-plug-unknown print-no-breaker-brief print-nothing-trips print-set-by-hot-cord \
    print-set-by-hot-cord-guessed print-set-by-not-fed print-set-by-parallel-kit \
    print-set-by-share-trips-early print-set-by-share-wiring print-set-by-wiring print-shock-camper \
    print-short-only-generator print-unplaced-life-maybe print-wire-unknown print-ws-column-at-5 \
    print-ws-column-ohms-kilometre print-ws-loads-leg print-ws-refused print-ws-starts-more reason-hot-cord \
    reason-not-fed reason-parallel-kit reason-wiring shown-unused";

/// Reads every snapshot of this package.
fn snapshots() -> String {
    let root = Path::new(env!("CARGO_MANIFEST_DIR"));
    let mut folders = vec![root.join("src"), root.join("tests")];
    let mut text = String::new();
    while let Some(folder) = folders.pop() {
        for entry in std::fs::read_dir(folder).expect("a folder") {
            let path = entry.expect("an entry").path();
            if path.is_dir() {
                folders.push(path);
            } else if path.extension().is_some_and(|it| it == "snap") {
                let file = std::fs::read_to_string(&path).expect("a snapshot");
                let _ = write!(text, " {file} ");
            }
        }
    }
    text.split_whitespace().collect::<Vec<_>>().join(" ")
}

/// Whether the pieces of a message stand there one after another, with names and figures between them.
fn stands(snapshots: &str, text: &str) -> bool {
    let text = text.split_whitespace().collect::<Vec<_>>().join(" ");
    let pieces: Vec<&str> = text.split(VALUE).map(str::trim).filter(|it| it.contains(char::is_alphanumeric)).collect();
    let Some((first, rest)) = pieces.split_first() else { return true };
    let alone = |at: usize, length: usize| {
        let before = snapshots[..at].chars().next_back();
        let after = snapshots[at + length..].chars().next();
        let edge = |inside: Option<char>, outside: Option<char>| {
            !(inside.is_some_and(char::is_alphanumeric) && outside.is_some_and(char::is_alphanumeric))
        };
        edge(first.chars().next(), before) && (!rest.is_empty() || edge(first.chars().next_back(), after))
    };
    snapshots.match_indices(first).any(|(at, _)| {
        let mut from = at + first.len();
        alone(at, first.len())
            && rest.iter().all(|piece| {
                let end = snapshots.len().min(from + 400);
                let end = (end..snapshots.len()).find(|at| snapshots.is_char_boundary(*at)).unwrap_or(snapshots.len());
                match snapshots[from..end].find(piece) {
                    Some(further) => {
                        from += further + piece.len();
                        true
                    }
                    None => false,
                }
            })
    })
}

#[test]
fn every_message_stands_in_a_snapshot_that_somebody_looked_at() {
    let snapshots = snapshots();
    let shown = shown_to_readers();
    let elsewhere = |key: &str| ELSEWHERE.iter().any(|(start, _)| key.starts_with(start));
    let missing: BTreeSet<&str> = shown
        .iter()
        .filter(|(key, texts)| !elsewhere(key) && !texts.iter().any(|text| stands(&snapshots, text)))
        .map(|(key, _)| key.as_str())
        .collect();
    let rare: BTreeSet<&str> = RARE.split(' ').collect();
    let new: Vec<&str> = missing.difference(&rare).copied().collect();
    assert!(new.is_empty(), "in no snapshot: {}", new.join(" "));
    let told: Vec<&str> = rare.difference(&missing).copied().collect();
    assert!(told.is_empty(), "no longer rare: {}", told.join(" "));
    for (start, why) in ELSEWHERE {
        assert!(!why.is_empty() && shown.iter().any(|(key, _)| key.starts_with(start)), "{start}");
    }
}
