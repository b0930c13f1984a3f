//! The interview in a real terminal: the program runs in a pseudo-terminal, and its output is read from the screen that
//! a terminal would draw.

use std::io::{Read, Write};
use std::path::Path;
use std::sync::mpsc::{Receiver, channel};
use std::time::Duration;

use portable_pty::{Child, CommandBuilder, PtySize, native_pty_system};

/// How long to wait for text on the screen. Long, because the machine may be busy.
const PATIENCE: Duration = Duration::from_mins(1);

struct Person {
    child: Box<dyn Child + Send + Sync>,
    keys: Box<dyn Write + Send>,
    shown: Receiver<Vec<u8>>,
    /// Every byte that the program wrote.
    raw: Vec<u8>,
    /// The pages that were shown before a question.
    pages: Vec<String>,
    screen: vt100::Parser,
    columns: u16,
    /// Kept open, because the terminal closes when this is dropped.
    master: Box<dyn portable_pty::MasterPty + Send>,
}

fn blank(columns: u16) -> vt100::Parser {
    let some = |count: u16| std::num::NonZeroU16::new(count).unwrap();
    vt100::Parser::new(some(40), some(columns), 500)
}

impl Person {
    fn sits_down(data: &Path, columns: u16) -> Self {
        Self::sits_down_at(data, 40, columns, &[], &[])
    }

    fn sits_down_at(data: &Path, rows: u16, columns: u16, environment: &[(&str, &str)], arguments: &[&str]) -> Self {
        let size = PtySize { rows, cols: columns, pixel_width: 0, pixel_height: 0 };
        let pair = native_pty_system().openpty(size).unwrap();
        let mut command = CommandBuilder::new(env!("CARGO_BIN_EXE_tallywatt"));
        command.env("TALLYWATT_DATA", data.join("data"));
        command.env("TERM", "xterm-256color");
        command.env_remove("NO_COLOR");
        command.env_remove("LANGUAGE");
        command.env("LC_ALL", "C");
        for (name, value) in environment {
            command.env(name, value);
        }
        command.args(arguments);
        command.cwd(data);
        let child = pair.slave.spawn_command(command).unwrap();
        let mut reader = pair.master.try_clone_reader().unwrap();
        let (send, shown) = channel();
        std::thread::spawn(move || {
            let mut buffer = [0; 4096];
            while let Ok(count @ 1..) = reader.read(&mut buffer) {
                if send.send(buffer[..count].to_vec()).is_err() {
                    return;
                }
            }
        });
        Self {
            child,
            keys: pair.master.take_writer().unwrap(),
            shown,
            raw: Vec::new(),
            pages: Vec::new(),
            screen: blank(columns),
            columns,
            master: pair.master,
        }
    }

    /// Waits until the screen shows the text.
    fn sees(&mut self, text: &str) {
        self.waits(text, |screen| screen.contains(text));
    }

    /// Waits until a prompt stands below the text, because only then does the program read keys. The previous prompt
    /// may still be redrawn above it.
    fn is_asked(&mut self, text: &str) {
        self.waits(text, |screen| screen.rfind(text).is_some_and(|at| screen[at..].contains("Esc: back")));
    }

    fn waits(&mut self, text: &str, there: impl Fn(&str) -> bool) {
        let mut read = false;
        loop {
            let screen = self.screen.screen().contents();
            if there(&screen) {
                return;
            }
            // Text that does not fit above the question is shown on a page before it.
            let page = screen.contains("Enter: go on");
            if page && !read {
                self.pages.push(screen.clone());
                self.types("\r");
            }
            read = page;
            match self.shown.recv_timeout(PATIENCE) {
                Ok(bytes) => {
                    self.screen.process(&bytes);
                    self.raw.extend(bytes);
                }
                Err(error) => panic!("waited for {text:?}: {error}; the screen is\n{screen}"),
            }
        }
    }

    fn types(&mut self, keys: &str) {
        self.keys.write_all(keys.as_bytes()).unwrap();
        self.keys.flush().unwrap();
    }

    /// Waits for a question, clears the screen and answers the question.
    fn answers(&mut self, question: &str, keys: &str) {
        self.is_asked(question);
        self.screen = blank(self.columns);
        self.types(keys);
        self.types("\r");
    }

    /// Waits for the program to end and returns its exit status.
    fn ends(&mut self) -> u32 {
        let status = self.child.wait().unwrap();
        while let Ok(bytes) = self.shown.recv_timeout(Duration::from_millis(500)) {
            self.screen.process(&bytes);
            self.raw.extend(bytes);
        }
        status.exit_code()
    }

    /// Sends a signal while a question is open. Checks the exit status and the message, and that the terminal is
    /// restored.
    fn is_ended_by(&mut self, signal: &str, said: &str) {
        // New terminals start alike, but the person's own may have been changed already.
        let other = native_pty_system().openpty(PtySize::default()).unwrap();
        let untouched = other.master.get_termios().unwrap();
        assert_ne!(self.master.get_termios().unwrap(), untouched);
        let id = self.child.process_id().unwrap().to_string();
        let sent = std::process::Command::new("kill").args(["-s", signal, &id]).status();
        assert!(sent.unwrap().success());
        assert_eq!(self.ends(), if signal == "INT" { 130 } else { 143 });
        self.sees(said);
        assert_eq!(self.master.get_termios().unwrap(), untouched);
    }
}

/// Questions about the generator, with the keys that answer them. In a list, Enter marks the row that was typed, Tab
/// moves to the row that ends the list, and the last Enter selects that row.
const GENERATOR: &[(&str, &str)] = &[
    ("How many watts does the generator", "2800 W, 3300 W"),
    ("or “bonded neutral”?", ""),
    ("what do the holes look", "Regular T\r\t"),
    ("What voltage", "120 V only"),
    ("linked by a kit?", ""),
    ("a TEST and a RESET button?", ""),
];

const REST: &[(&str, &str)] = &[
    ("What will you plug in?", "fridge small\r\t"),
    ("How wet", ""),
    ("How far from the generator", "40 ft"),
    ("above and around the generator", "In the open"),
    ("carbon monoxide alarm", "yes"),
    ("wiring of a house", "no"),
    ("the elevation", "4200 ft"),
    ("What cords, adapters", "Extension\r\t"),
    ("What color is it?", "Orange"),
    ("printed along the cord?", "SJTW 14/3"),
    ("How long is it?", "50 ft"),
    ("stay coiled", ""),
];

#[test]
fn a_whole_interview_ends_in_paper() {
    for columns in [80, 120] {
        ends_in_paper(columns);
    }
}

fn ends_in_paper(columns: u16) {
    let home = tempfile::tempdir().unwrap();
    let mut person = Person::sits_down(home.path(), columns);
    for (question, keys) in GENERATOR.iter().chain(REST) {
        person.answers(question, keys);
    }
    person.answers("Is this right?", "");
    // Enter alone would first show what would clear the dangers.
    person.answers("to do now?", "Print");
    person.answers("Which folder", "prints");
    assert_eq!(person.ends(), 0, "{}", person.screen.screen().contents());
    let plan = std::fs::read_to_string(home.path().join("prints/plan.toml")).unwrap();
    for expected in [
        "rated = \"2800 W\"",
        "sleepers_at = \"40 ft\"",
        "id = \"fridge-small\"",
        "wire = \"14 AWG\"",
        "outdoor = true",
        "id = \"orange-cord\"",
        "from = \"regular\"",
        "neutral = \"unknown\"",
        "peak = \"3300 W\"",
    ] {
        assert!(plan.contains(expected), "{expected} not in\n{plan}");
    }
    for print in ["labels.pdf", "card.pdf", "cautions.pdf", "worksheet.pdf"] {
        let bytes = std::fs::read(home.path().join("prints").join(print)).unwrap();
        assert!(bytes.starts_with(b"%PDF"), "{print}");
    }
    // The plan holds everything, so no draft is left.
    let left: Vec<_> = std::fs::read_dir(home.path().join("data/drafts"))
        .unwrap()
        .filter_map(|entry| entry.unwrap().file_name().into_string().ok())
        .filter(|name| !name.starts_with('.'))
        .collect();
    assert_eq!(left, Vec::<String>::new());
}

#[test]
fn escape_goes_back_one_question_with_the_answer_kept() {
    let home = tempfile::tempdir().unwrap();
    let mut person = Person::sits_down(home.path(), 40);
    person.answers("How many watts does the generator", "2000 W");
    person.is_asked("Is that number its running");
    person.screen = blank(40);
    person.types("\u{1b}");
    // The question is asked again, and Enter takes the earlier answer.
    person.sees("How many watts does the generator");
    person.sees("2000 W");
    person.answers("How many watts does the generator", "2.8");
    person.is_asked("“2.8” has no unit.");
    // Shell keys: Ctrl-W erases the last word, and Ctrl-U the whole line.
    person.answers("How many watts does the generator", "9 kW\u{17}\u{15}2200 W");
    person.is_asked("Is that number its running");
    person.types("\u{3}");
    assert_eq!(person.ends(), 130);
    let draft = std::fs::read_to_string(home.path().join("data/drafts/plan.toml")).unwrap();
    assert!(draft.contains("\"generator.rated\" = \"2200 W\""), "{draft}");
    assert!(!draft.contains("generator.figure"), "{draft}");
}

/// Asking for help in the middle of a list keeps what is marked.
#[test]
fn help_in_a_list_keeps_what_is_marked() {
    let home = tempfile::tempdir().unwrap();
    let mut person = Person::sits_down(home.path(), 80);
    for (question, keys) in &GENERATOR[..2] {
        person.answers(question, keys);
    }
    let list = "what do the holes look";
    for keys in ["Regular T\r?\r", "L5-30\r?\r"] {
        person.is_asked(list);
        person.screen = blank(80);
        person.types(keys);
    }
    person.answers(list, "");
    person.is_asked("What voltage");
    person.types("\u{3}");
    assert_eq!(person.ends(), 130);
    let draft = std::fs::read_to_string(home.path().join("data/drafts/plan.toml")).unwrap();
    for answer in ["\"outlet.1.face\" = \"5-20R\"", "\"outlet.2.face\" = \"L5-30R\""] {
        assert!(draft.contains(answer), "{draft}");
    }
}

#[test]
fn control_c_keeps_the_draft_and_the_next_run_goes_on() {
    let home = tempfile::tempdir().unwrap();
    let mut person = Person::sits_down(home.path(), 80);
    for (question, keys) in GENERATOR {
        person.answers(question, keys);
    }
    person.is_asked("What will you plug in?");
    person.types("\u{3}");
    assert_eq!(person.ends(), 130);
    let screen = person.screen.screen().contents();
    assert!(screen.contains("Your answers are kept"), "{screen}");
    assert!(screen.contains("Run tallywatt again"), "{screen}");

    let mut person = Person::sits_down(home.path(), 80);
    person.answers("Go on with an unfinished plan?", "");
    for (question, keys) in REST {
        person.answers(question, keys);
    }
    person.is_asked("Is this right?");
    person.sees("2800 W");
    person.types("\u{3}");
    assert_eq!(person.ends(), 130);
}

#[test]
fn without_a_terminal_it_says_what_to_do_instead() {
    let home = tempfile::tempdir().unwrap();
    let output = std::process::Command::new(env!("CARGO_BIN_EXE_tallywatt"))
        .env("TALLYWATT_DATA", home.path())
        .env("LC_ALL", "C")
        .env_remove("LANGUAGE")
        .stdin(std::process::Stdio::null())
        .output()
        .unwrap();
    assert_eq!(output.status.code(), Some(64));
    let said = String::from_utf8(output.stderr).unwrap();
    assert!(said.contains("tallywatt check PLAN"), "{said}");
    assert!(output.stdout.is_empty());
}

#[test]
fn answers_from_a_file_make_the_same_plan() {
    let home = tempfile::tempdir().unwrap();
    let mut answers = String::new();
    for (_, keys) in GENERATOR.iter().chain(REST) {
        answers.push_str(match *keys {
            "Regular T\r\t" => "5-20R 20 A",
            "fridge small\r\t" => "fridge-small",
            "Extension\r\t" => "extension",
            keys => keys,
        });
        answers.push('\n');
    }
    answers.push_str("check\nprint\nprints\n");
    let file = home.path().join("answers.txt");
    std::fs::write(&file, answers.as_bytes()).unwrap();
    let output = std::process::Command::new(env!("CARGO_BIN_EXE_tallywatt"))
        .env("TALLYWATT_DATA", home.path())
        .env("LC_ALL", "C")
        .env_remove("LANGUAGE")
        .current_dir(home.path())
        .arg("--answers")
        .arg(&file)
        .output()
        .unwrap();
    let said = String::from_utf8_lossy(&output.stderr).into_owned();
    assert_eq!(output.status.code(), Some(0), "{said}");
    let plan = std::fs::read_to_string(home.path().join("prints/plan.toml")).unwrap();
    assert!(plan.contains("ground = \"wet\"") && plan.contains("length = \"50 ft\""));
}

/// If the only unknown is about a cord to buy, the last page has nothing to look at.
#[test]
fn nobody_is_sent_to_look_at_what_is_to_be_bought() {
    let home = tempfile::tempdir().unwrap();
    let to_buy = tallywatt::plan::demo::MENDED.replacen("wire = \"10 AWG\"", "wire = \"unknown\"\nbought = false", 1);
    for (text, looked) in [(to_buy.clone(), false), (to_buy.replace("bought = false\n", ""), true)] {
        let plan = home.path().join("camp.toml");
        std::fs::write(&plan, text.as_bytes()).unwrap();
        let file = home.path().join("answers.txt");
        std::fs::write(&file, b"check\nlook\nleave\n").unwrap();
        let output = std::process::Command::new(env!("CARGO_BIN_EXE_tallywatt"))
            .env("TALLYWATT_DATA", home.path().join(looked.to_string()))
            .env("LC_ALL", "C")
            .env_remove("LANGUAGE")
            .args(["ask", "--answers"])
            .args([&file, &plan])
            .output()
            .unwrap();
        let said = String::from_utf8_lossy(&output.stderr).into_owned();
        assert_eq!(said.contains("What is printed along the cord?"), looked, "{said}");
        assert_eq!(said.contains("Please pick one from the list."), !looked, "{said}");
    }
}

#[test]
fn killed_outright_it_has_lost_nothing_that_was_answered() {
    let home = tempfile::tempdir().unwrap();
    for (at, (question, keys)) in GENERATOR[..4].iter().enumerate() {
        let mut person = Person::sits_down(home.path(), 60);
        if at > 0 {
            person.answers("Go on with an unfinished plan?", "");
        }
        person.answers(question, keys);
        // When the next question is up, the answer must be on disk.
        person.is_asked(GENERATOR[at + 1].0);
        person.child.kill().unwrap();
        person.child.wait().unwrap();
    }
    let draft = std::fs::read_to_string(home.path().join("data/drafts/plan.toml")).unwrap();
    for expected in [
        "2800 W",
        "3300 W",
        "\"generator.voltage\" = \"120\"",
        "\"outlet.1.face\" = \"5-20R\"",
        "unknown = [\"generator.neutral\"]",
    ] {
        assert!(draft.contains(expected), "{expected} not in\n{draft}");
    }
}

#[test]
fn killed_at_two_hundred_moments_it_has_lost_nothing_that_was_confirmed() {
    let home = tempfile::tempdir().unwrap();
    let file = home.path().join("data/drafts/plan.toml");
    // The starting point: everything about the generator, and no loads.
    let mut person = Person::sits_down(home.path(), 80);
    for (question, keys) in GENERATOR {
        person.answers(question, keys);
    }
    person.is_asked("What will you plug in?");
    person.child.kill().unwrap();
    person.child.wait().unwrap();
    let start = std::fs::read(&file).unwrap();
    // The keys that the draft holds once each of the next questions is answered.
    let marks = ["load.1.what", "site.ground", "site.sleepers_at", "site.stands"];
    let marks = marks.iter().chain(&["site.alarm", "site.feeds_building", "site.altitude"]);
    let answered = |text: &str| marks.clone().filter(|key| text.contains(**key)).count();
    let mut random = 20_u64;
    let mut next = |below: u64| {
        // Knuth's linear congruential generator for MMIX.
        random = random.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        (random >> 33) % below
    };
    // An interrupted write leaves a partial file under a temporary name.
    let halves = || {
        std::fs::read_dir(home.path().join("data/drafts"))
            .unwrap()
            .filter(|entry| {
                let name = entry.as_ref().unwrap().file_name();
                name.to_string_lossy().ends_with(".part")
            })
            .count()
    };
    let (mut kept, mut confirmed_in_all, mut in_flight) = (0, 0, 0);
    for run in 0..200 {
        if kept >= 4 {
            std::fs::write(&file, &start).unwrap();
            kept = 0;
        }
        let mut person = Person::sits_down(home.path(), 80);
        let mut sent = 0;
        let confirmed = usize::try_from(next(3)).unwrap();
        // In one run of ten, the kill comes before the first question is answered.
        if next(10) > 0 {
            person.answers("Go on with an unfinished plan?", "");
            for (question, keys) in &REST[kept..kept + confirmed] {
                person.answers(question, keys);
                sent += 1;
            }
            let (question, keys) = REST[kept + confirmed];
            person.is_asked(question);
            if next(4) > 0 {
                person.types(&format!("{keys}\r"));
                sent += 1;
            }
            confirmed_in_all += confirmed;
        }
        std::thread::sleep(Duration::from_micros(next(12_000)));
        person.child.kill().unwrap();
        person.child.wait().unwrap();
        let text = std::fs::read_to_string(&file).unwrap();
        let now = answered(&text);
        let least = kept + if sent > 0 { confirmed } else { 0 };
        in_flight += usize::from(sent > confirmed);
        assert!(
            (least..=kept + sent).contains(&now),
            "run {run}: {now} kept of {least} confirmed and {sent} sent after {kept}\n{text}"
        );
        assert!(text.contains("\"generator.rated\" = \"2800 W\""), "run {run}: {text}");
        kept = now;
    }
    println!("killed 200 times: {} in the middle of a write, {in_flight} with an answer on its way", halves());
    assert!(confirmed_in_all > 100, "{confirmed_in_all}");
    // The last draft can still become a plan.
    let mut person = Person::sits_down(home.path(), 80);
    person.answers("Go on with an unfinished plan?", "");
    for (question, keys) in &REST[kept..] {
        person.answers(question, keys);
    }
    person.is_asked("Is this right?");
    person.child.kill().unwrap();
    person.child.wait().unwrap();
}

#[test]
fn two_runs_at_once_do_not_share_a_draft() {
    let home = tempfile::tempdir().unwrap();
    let mut one = Person::sits_down(home.path(), 80);
    one.answers("How many watts does the generator", "2000 W");
    one.is_asked("Is that number its running");
    // The other run is not offered the draft that the first one has open, and begins its own.
    let mut other = Person::sits_down(home.path(), 80);
    other.answers("How many watts does the generator", "1000 W");
    other.is_asked("Is that number its running");
    one.answers("Is that number its running", "The running");
    one.is_asked("or “bonded neutral”?");
    for (person, name) in [(&mut one, "plan"), (&mut other, "plan-2")] {
        person.types("\u{3}");
        assert_eq!(person.ends(), 130);
        let draft = std::fs::read_to_string(home.path().join(format!("data/drafts/{name}.toml")));
        let rated = if name == "plan" { "2000 W" } else { "1000 W" };
        assert!(draft.unwrap().contains(rated));
    }
    // The next run is offered both, each with its date and age.
    let old = std::fs::File::options().append(true).open(home.path().join("data/drafts/plan-2.toml")).unwrap();
    old.set_modified(std::time::UNIX_EPOCH + Duration::from_secs(1_000_000_000)).unwrap();
    for columns in [80, 40] {
        let mut next = Person::sits_down(home.path(), columns);
        next.is_asked("Go on with an unfinished plan?");
        next.sees(": 2000 W, just now");
        next.sees("plan-2, 2001-09-09: 1000 W, ");
        if columns == 80 {
            next.sees(" days ago");
        }
        next.types("\u{3}");
        assert_eq!(next.ends(), 130);
    }
}

/// Pastes text at the first question. Its first line is the answer, and the other lines answer nothing.
fn pastes(bytes: &str) {
    let home = tempfile::tempdir().unwrap();
    let mut person = Person::sits_down(home.path(), 80);
    person.is_asked("How many watts does the generator");
    assert!(String::from_utf8_lossy(&person.raw).contains("\u{1b}[?2004h"));
    person.types(bytes);
    person.sees("We took only the first line");
    person.is_asked("Is that number its running");
    person.types("\u{3}");
    assert_eq!(person.ends(), 130);
    let draft = std::fs::read_to_string(home.path().join("data/drafts/plan.toml")).unwrap();
    assert!(draft.contains("2800 W") && !draft.contains("generator.figure"), "{draft}");
}

#[test]
fn of_pasted_lines_only_the_first_is_an_answer() {
    pastes("2800 W\r9999 W\r\r\ry\r");
}

#[test]
fn a_bracketed_paste_is_text_and_its_first_line_the_answer() {
    pastes("\u{1b}[200~2800\u{1b}[201~\u{1b}[200~ W\r\n9999 W\r\n<html>\r\n\u{1b}[201~\r");
}

#[test]
fn a_small_screen_that_becomes_smaller_and_wide_letters() {
    let home = tempfile::tempdir().unwrap();
    let mut person = Person::sits_down_at(home.path(), 24, 80, &[], &[]);
    for (question, keys) in GENERATOR {
        person.answers(question, keys);
    }
    person.is_asked("What will you plug in?");
    let size = PtySize { rows: 24, cols: 40, pixel_width: 0, pixel_height: 0 };
    person.master.resize(size).unwrap();
    person.columns = 40;
    person.screen = blank(40);
    // Nobody types at the very moment the window changes.
    std::thread::sleep(std::time::Duration::from_millis(300));
    person.types("something else\r\t\r");
    person.is_asked("What is it called?");
    // Wide characters are shown, but cannot be printed. A combining accent can.
    person.answers("What is it called?", "電気毛布");
    person.sees("We have no letters to print");
    // Keys struck before the question is back are thrown away.
    std::thread::sleep(std::time::Duration::from_millis(300));
    person.types("\u{15}cafe\u{301}\r");
    person.is_asked("What kind of appliance is it?");
    for row in person.screen.screen().rows(0, 80) {
        assert!(row.chars().count() <= 40, "{row}");
    }
    person.types("\u{3}");
    assert_eq!(person.ends(), 130);
    let draft = std::fs::read_to_string(home.path().join("data/drafts/plan.toml")).unwrap();
    assert!(draft.contains("cafe\u{301}"), "{draft}");
}

#[test]
fn without_colour_nothing_is_bold_or_coloured() {
    let home = tempfile::tempdir().unwrap();
    // A sequence that sets a color or bold ends in m. One that moves the cursor does not.
    let styled = |person: &Person| {
        let raw = String::from_utf8_lossy(&person.raw).into_owned();
        raw.split("\u{1b}[").skip(1).any(|code| {
            let end = code.find(|c: char| c != ';' && !c.is_ascii_digit());
            end.is_some_and(|at| code[at..].starts_with('m'))
        })
    };
    for (environment, expected) in [(&[][..], true), (&[("NO_COLOR", "1")][..], false)] {
        let mut person = Person::sits_down_at(home.path(), 40, 80, environment, &[]);
        person.is_asked("How many watts does the generator");
        person.types("\u{3}");
        assert_eq!(person.ends(), 130);
        assert_eq!(styled(&person), expected, "{}", String::from_utf8_lossy(&person.raw));
    }
}

#[test]
fn line_by_line_nothing_is_redrawn_and_control_c_says_the_same() {
    for (environment, arguments) in [(&[("TERM", "dumb")][..], &[][..]), (&[][..], &["--plain"][..])] {
        let home = tempfile::tempdir().unwrap();
        let mut person = Person::sits_down_at(home.path(), 40, 40, environment, arguments);
        person.sees("How many watts does the generator");
        person.sees("Enter: unknown");
        person.types("2800 W\n");
        person.sees("1. The running power");
        person.types("1\n");
        person.sees("4. I don’t know");
        person.types("4\n");
        person.sees("what do the holes look");
        person.screen = blank(40);
        person.types("2 x 3, l5-30r 30 a\n");
        person.sees("3. By number");
        person.types("3\n");
        person.sees("3. I don’t know");
        person.types("\u{3}");
        assert_eq!(person.ends(), 130);
        person.sees("Your answers are kept");
        let raw = String::from_utf8_lossy(&person.raw).into_owned();
        assert!(!raw.contains('\u{1b}'), "{raw:?}");
        let draft = std::fs::read_to_string(home.path().join("data/drafts/plan.toml")).unwrap();
        for answer in ["\"outlet.2.face\" = \"5-20R\"", "\"outlet.3.face\" = \"L5-30R\""] {
            assert!(draft.contains(answer), "{draft}");
        }
    }
}

/// Runs the program with these answers piped in.
fn piped(home: &Path, arguments: &[&str], answers: &str) -> (Option<i32>, String) {
    let mut child = std::process::Command::new(env!("CARGO_BIN_EXE_tallywatt"))
        .env("TALLYWATT_DATA", home.join("data"))
        .env("LC_ALL", "C")
        .env_remove("LANGUAGE")
        .current_dir(home)
        .args(arguments)
        .stdin(std::process::Stdio::piped())
        .stdout(std::process::Stdio::piped())
        .stderr(std::process::Stdio::piped())
        .spawn()
        .unwrap();
    child.stdin.take().unwrap().write_all(answers.as_bytes()).unwrap();
    let output = child.wait_with_output().unwrap();
    let said = String::from_utf8_lossy(&output.stderr).into_owned() + &String::from_utf8_lossy(&output.stdout);
    (output.status.code(), said)
}

#[test]
fn piped_answers_need_no_option() {
    let home = tempfile::tempdir().unwrap();
    let (status, said) = piped(home.path(), &[], "2800 W, 3300 W\n");
    assert_eq!(status, Some(130), "{said}");
    assert!(said.contains("Your answers are kept"), "{said}");
    let (status, said) = piped(home.path(), &[], "");
    assert_eq!(status, Some(64), "{said}");
    assert!(said.contains("tallywatt check PLAN"), "{said}");
}

/// If no draft can be kept, the user is told once and can still make the plan.
#[test]
fn without_room_for_a_draft_there_is_still_a_plan() {
    let home = tempfile::tempdir().unwrap();
    let plan = home.path().join("ours.toml");
    let text = tallywatt::plan::demo::MENDED;
    std::fs::write(&plan, text.as_bytes()).unwrap();
    // A file stands in place of the folder.
    std::fs::write(home.path().join("data"), b"no folder").unwrap();
    let change = "site\nsite.sleepers_at\n80 ft\n";
    let (status, said) = piped(home.path(), &["ask", "ours.toml"], change);
    assert_eq!(status, Some(130), "{said}");
    assert_eq!(said.matches("We cannot keep your answers").count(), 1, "{said}");
    assert!(said.contains("Your answers were not kept"), "{said}");
    let saved = format!("{change}back\ncheck\nsave\n");
    let (status, said) = piped(home.path(), &["ask", "ours.toml"], &saved);
    assert_eq!(status, Some(0), "{said}");
    let text = std::fs::read_to_string(&plan).unwrap();
    assert!(text.contains("sleepers_at = \"80 ft\""), "{text}");
}

/// A draft that cannot be read is named and kept.
#[test]
fn a_spoilt_draft_is_named_and_kept() {
    let home = tempfile::tempdir().unwrap();
    let plan = home.path().join("ours.toml");
    let text = tallywatt::plan::demo::MENDED;
    std::fs::write(&plan, text.as_bytes()).unwrap();
    let spoilt = home.path().join("data/drafts/spoilt.toml");
    std::fs::create_dir_all(spoilt.parent().unwrap()).unwrap();
    std::fs::write(&spoilt, b"format = 999\n[answers\n").unwrap();
    let (_, said) = piped(home.path(), &["ask", "ours.toml"], "check\nleave\n");
    assert!(said.contains("We cannot read the draft") && said.contains("spoilt.toml"), "{said}");
    assert_eq!(std::fs::read(&spoilt).unwrap(), b"format = 999\n[answers\n");
}

/// A print that fails is reported, and the last page asks again with the other choices still there.
#[test]
fn a_print_that_fails_is_told_and_asked_again() {
    let home = tempfile::tempdir().unwrap();
    let plan = home.path().join("ours.toml");
    std::fs::write(&plan, tallywatt::plan::demo::MENDED).unwrap();
    std::fs::create_dir(home.path().join("taken")).unwrap();
    std::fs::write(home.path().join("taken/card.pdf"), "theirs").unwrap();
    let (status, said) = piped(home.path(), &["ask", "ours.toml"], "check\nprint\ntaken\nprint\nfree\n");
    assert_eq!(status, Some(0), "{said}");
    assert!(said.contains("card.pdf is not as we wrote it"), "{said}");
    assert_eq!(std::fs::read(home.path().join("taken/card.pdf")).unwrap(), b"theirs");
    assert!(home.path().join("free/card.pdf").exists() && !home.path().join("taken/labels.pdf").exists());
    // If the answers end there, the exit status tells of the failure.
    let (status, said) = piped(home.path(), &["ask", "ours.toml"], "check\nprint\ntaken\n");
    assert_eq!(status, Some(73), "{said}");
}

/// Keys are still read after any escape sequence, even an incomplete one, and Ctrl-C always ends the program.
#[test]
fn the_terminal_never_goes_deaf() {
    let halves = ["\u{1b}[<0;10;5", "\u{1b}[M", "\u{1b}[M ", "\u{1b}[200~never ended", "\u{1b}[", "\u{1b}O"];
    for half in halves {
        let home = tempfile::tempdir().unwrap();
        let mut person = Person::sits_down(home.path(), 80);
        person.is_asked("How many watts does the generator");
        person.types(half);
        std::thread::sleep(Duration::from_millis(1500));
        person.answers("How many watts does the generator", "\u{15}2000 W");
        person.is_asked("Is that number its running");
        // Once more, with Ctrl-C right behind it.
        person.types(half);
        person.types("\u{3}");
        assert_eq!(person.ends(), 130, "{half:?}");
        let draft = std::fs::read_to_string(home.path().join("data/drafts/plan.toml")).unwrap();
        assert!(draft.contains("2000 W"), "{half:?}: {draft}");
    }
}

/// Ctrl-C during long work between questions ends the program with nothing written.
#[test]
fn control_c_ends_it_while_it_prints() {
    let home = tempfile::tempdir().unwrap();
    std::fs::write(home.path().join("ours.toml"), tallywatt::plan::demo::MENDED).unwrap();
    let arguments = ["ask", "ours.toml", "--print-language", "en,es,fr,de"];
    let mut person = Person::sits_down_at(home.path(), 40, 80, &[], &arguments);
    person.answers("Is this right?", "check");
    person.answers("to do now?", "Print");
    person.answers("Which folder", "prints");
    std::thread::sleep(Duration::from_millis(300));
    person.types("\u{3}");
    assert_eq!(person.ends(), 130);
    person.sees("nothing was changed");
    assert!(!home.path().join("prints").exists());
}

/// Keys typed before the first question opens, some of them erased, do not answer it.
#[test]
fn what_was_typed_while_nothing_was_asked_is_no_answer() {
    let home = tempfile::tempdir().unwrap();
    let mut person = Person::sits_down(home.path(), 80);
    person.types("9999 W\u{7f}\u{7f}\u{15}some\u{7f}text\rmore\r");
    person.answers("How many watts does the generator", "2000 W");
    person.is_asked("Is that number its running");
    person.types("\u{3}");
    assert_eq!(person.ends(), 130);
}

#[test]
fn a_plan_file_is_changed_in_place_and_its_comments_stay() {
    let home = tempfile::tempdir().unwrap();
    let plan = home.path().join("ours.toml");
    let text = tallywatt::plan::demo::WEEKEND;
    std::fs::write(&plan, text.as_bytes()).unwrap();
    // After an interruption the file is unchanged, and the draft keeps the change.
    let (status, said) = piped(home.path(), &["ask", "ours.toml"], "site\nsite.sleepers_at\n80 ft\n");
    assert_eq!(status, Some(130), "{said}");
    assert!(said.contains("Is this right?") && said.contains("danger is gone"), "{said}");
    assert_eq!(std::fs::read_to_string(&plan).unwrap(), text);
    let (status, said) = piped(home.path(), &["ask", "ours.toml"], "check\nsave\n");
    assert_eq!(status, Some(0), "{said}");
    assert!(said.contains("your unsaved changes"), "{said}");
    let now = std::fs::read_to_string(&plan).unwrap();
    assert!(text.contains("\"12 ft\"") && text.contains('#'));
    assert_eq!(now, text.replacen("sleepers_at = \"12 ft\"", "sleepers_at = \"80 ft\"", 1));
    // Leaving without a change keeps no draft, and neither does saving.
    let (status, _) = piped(home.path(), &["ask", "ours.toml"], "check\n");
    assert!(matches!(status, Some(0..=2)), "{status:?}");
    let drafts = std::fs::read_dir(home.path().join("data/drafts")).unwrap();
    let left = drafts
        .filter_map(|entry| entry.unwrap().file_name().into_string().ok())
        .filter(|name| !name.starts_with('.'))
        .count();
    assert_eq!(left, 0);
    // A file that is not a plan is refused, and the message shows the place.
    std::fs::write(&plan, b"format = 1\nspeed = 3\n").unwrap();
    let (status, said) = piped(home.path(), &["ask", "ours.toml"], "check\n");
    assert_eq!(status, Some(65), "{said}");
    assert!(said.contains("speed"), "{said}");
}

#[test]
fn control_c_behind_an_answer_and_between_questions() {
    let home = tempfile::tempdir().unwrap();
    let file = home.path().join("data/drafts/plan.toml");
    // Ctrl-C arrives together with the answer.
    let mut person = Person::sits_down(home.path(), 80);
    person.is_asked("How many watts does the generator");
    person.types("2800 W\r\u{3}");
    assert_eq!(person.ends(), 130);
    person.sees("Your answers are kept");
    assert!(std::fs::read_to_string(&file).unwrap().contains("2800 W"));
    // As a signal, which is how Ctrl-C arrives while no question reads the keys.
    for signal in ["INT", "TERM"] {
        let mut person = Person::sits_down(home.path(), 80);
        person.answers("Go on with an unfinished plan?", "");
        person.is_asked("Is that number its running");
        person.is_ended_by(signal, "Your answers are kept");
    }
}

#[test]
fn two_who_change_one_plan_file_both_get_their_changes() {
    let home = tempfile::tempdir().unwrap();
    let plan = home.path().join("ours.toml");
    let text = tallywatt::plan::demo::WEEKEND;
    std::fs::write(&plan, text.as_bytes()).unwrap();
    let mut one = Person::sits_down_at(home.path(), 40, 80, &[], &["ask", "ours.toml", "--plain"]);
    one.sees("Is this right?");
    for line in ["site", "site.sleepers_at", "80 ft", "back", "check"] {
        one.sees("> ");
        one.screen = blank(80);
        one.types(&format!("{line}\n"));
    }
    one.sees("to do now?");
    // Meanwhile, someone else changes the same original file and saves first.
    let (status, said) = piped(home.path(), &["ask", "ours.toml"], "site\nsite.ground\ndry\nback\ncheck\nsave\n");
    assert_eq!(status, Some(0), "{said}");
    one.screen = blank(80);
    one.types("save\n");
    one.sees("in the meantime");
    one.sees("Is this right?");
    one.types("check\n");
    one.sees("to do now?");
    one.types("save\n");
    assert_eq!(one.ends(), 0);
    let both = text.replacen("sleepers_at = \"12 ft\"", "sleepers_at = \"80 ft\"", 1).replacen(
        "ground = \"wet\"",
        "ground = \"dry\"",
        1,
    );
    assert_ne!(both.replacen("\"dry\"", "\"wet\"", 1), both);
    assert_eq!(std::fs::read_to_string(&plan).unwrap(), both);
}

#[test]
fn the_effect_of_a_change_is_told() {
    let home = tempfile::tempdir().unwrap();
    let plan = home.path().join("ours.toml");
    std::fs::write(&plan, tallywatt::plan::demo::WEEKEND.as_bytes()).unwrap();
    let (_, said) = piped(
        home.path(),
        &["ask", "ours.toml"],
        "check\nchange\nsite\nsite.sleepers_at\n80 ft\nback\ncheck\nchange\ncheck\n",
    );
    let effect = said.split("What your change did:").nth(1).unwrap();
    assert!(effect.trim_start().starts_with("- gone: DANGER"), "{said}");
    assert!(said.contains("- the findings are the same as before"), "{said}");
}

/// The plan to resume is never guessed: help selects nothing, and input that matches no row is asked again.
#[test]
fn line_by_line_only_a_row_goes_on_with_a_plan() {
    // By the row's number, counting from one; by its name; and a new plan.
    for (typed, rated) in [("2", "3000 W"), ("plan-2", "2000 W"), ("1", "1000 W"), ("4", "unknown")] {
        let home = tempfile::tempdir().unwrap();
        let folder = home.path().join("data/drafts");
        std::fs::create_dir_all(&folder).unwrap();
        for (place, (name, rated)) in (0..).zip([("plan", "1000 W"), ("camp", "3000 W"), ("plan-2", "2000 W")]) {
            let text = format!("format = 1\nname = \"{name}\"\n[answers]\n\"generator.rated\" = \"{rated}\"\n");
            let file = folder.join(format!("{name}.toml"));
            std::fs::write(&file, text.as_bytes()).unwrap();
            let saved = std::time::UNIX_EPOCH + Duration::from_secs(1_000_000_000 - place);
            let file = std::fs::File::options().append(true).open(file).unwrap();
            file.set_modified(saved).unwrap();
        }
        let mut person = Person::sits_down_at(home.path(), 40, 80, &[], &["--plain"]);
        for (keys, said) in [
            ("zzz", "pick one from the list"),
            // Every row's date contains a 0.
            ("0", "3. plan-2"),
            ("99999", "pick one from the list"),
            ("?", "by its number or the start of its row"),
        ] {
            person.sees("> ");
            person.screen = blank(80);
            person.types(&format!("{keys}\n"));
            person.sees(said);
        }
        person.sees("> ");
        person.screen = blank(80);
        person.types(&format!("{typed}\n"));
        if rated != "unknown" {
            person.sees("Is that number its running");
            person.types("<\n");
        }
        person.sees("How many watts does the generator");
        person.sees(&format!("Enter: {rated}"));
        person.types("\u{3}");
        assert_eq!(person.ends(), 130);
    }
}

/// A signal restores the terminal even at the very first question.
#[test]
fn asked_to_end_at_the_first_question_it_gives_the_terminal_back() {
    let home = tempfile::tempdir().unwrap();
    let mut person = Person::sits_down(home.path(), 80);
    person.answers("How many watts does the generator", "2800 W");
    person.is_asked("Is that number its running");
    person.types("\u{3}");
    assert_eq!(person.ends(), 130);
    for signal in ["INT", "TERM"] {
        let mut person = Person::sits_down(home.path(), 80);
        person.is_asked("Go on with an unfinished plan?");
        person.is_ended_by(signal, "nothing was changed");
    }
}

/// A value out of bounds is refused at its own question, not at the end.
#[test]
fn an_answer_that_no_plan_can_have_is_refused_when_it_is_given() {
    let home = tempfile::tempdir().unwrap();
    let (_, said) = piped(home.path(), &[], "20 W\n2800 W\n");
    assert!(said.contains("Rated power must be from 50\u{a0}W to 100,000\u{a0}W"), "{said}");
    let draft = std::fs::read_to_string(home.path().join("data/drafts/plan.toml")).unwrap();
    assert!(draft.contains("2800 W") && !draft.contains("\"20 W"), "{draft}");
}

/// Somebody who knows little about a lent box and an orange cord looks up what is asked again, takes the changes that
/// clear the rest, and has a plan without dangers. Nothing is bought or left at home.
#[test]
fn who_knew_little_looks_and_ends_without_a_danger() {
    const LENT: &str = r#"
format = 1
[site]
ground = "wet"
sleepers_at = "15 ft"
altitude = "0 ft"
co_alarm = "unknown"
feeds_building = false
stands = "unknown"
[generator]
rated = "3500 W"
peak = "unknown"
voltage = "120 V"
neutral = "unknown"
inverter = "unknown"
[[generator.outlet]]
id = "twist"
shape = "L5-30R"
breaker = "30 A"
gfci = "unknown"
[[box]]
id = "lent"
from = "twist"
inlet = "L5-30P"
listed = "unknown"
bond = "unknown"
[[box.outlet]]
id = "left"
shape = "5-20R"
breaker = "20 A"
gfci = "unknown"
[[box.outlet]]
id = "right"
shape = "5-20R"
breaker = "20 A"
gfci = "unknown"
[[cord]]
id = "orange"
from = "right"
plug = "5-15P"
ends = ["5-15R"]
wire = "unknown"
conductors = "unknown"
length = "50 ft"
outdoor = "unknown"
coiled = false
[[load]]
id = "coffee"
kind = "cooker"
running = "1200 W"
wanted = "must"
"#;
    let home = tempfile::tempdir().unwrap();
    let path = home.path().join("lent.toml");
    std::fs::write(&path, LENT.as_bytes()).unwrap();
    let dangers = || {
        let text = std::fs::read_to_string(&path).unwrap();
        let plan = tallywatt::plan::read(&text).unwrap();
        tallywatt::judge::build(&plan).count(tallywatt::report::Signal::Danger)
    };
    assert!(dangers() >= 5);
    // Enter looks, even once the changes are shown. Where nothing is left to look at, it takes them.
    let other = tempfile::tempdir().unwrap();
    for (name, text, looks) in [("other.toml", LENT, true), ("weekend.toml", tallywatt::plan::demo::WEEKEND, false)] {
        std::fs::write(other.path().join(name), text.as_bytes()).unwrap();
        let (_, said) = piped(other.path(), &["ask", name], "check\nmend\n\nopen\n");
        assert_eq!(said.contains("Look first"), looks, "{said}");
        assert_eq!(said.contains("What is above and around the generator?"), looks, "{said}");
        assert_eq!(said.contains("Which changes do you take"), !looks, "{said}");
    }
    let answers = "look\nopen\nyes\nyes\nSJTW 12/3\nyes\nall\ncheck\nmend\ntake\n\ncheck\nsave\n";
    let (status, said) = piped(home.path(), &["ask", "lent.toml"], answers);
    assert_eq!(status, Some(0), "{said}");
    // Six answers, one for each line of the sheet. None of them requires opening the box.
    for question in [
        "What is above and around the generator?",
        "Is the box factory made, with a test lab’s mark?",
        "What is printed along the cord?",
        "Is there a carbon monoxide alarm where people sleep?",
    ] {
        assert_eq!(said.matches(question).count(), 1, "{question}: {said}");
    }
    assert!(!said.contains("inside the box"), "{said}");
    assert_eq!(dangers(), 0);
}

/// The drawings stand beside the first list of outlets, above it on a narrow screen with room for both, and otherwise in
/// the help. The question stays in view.
#[test]
fn the_drawings_are_there_where_there_is_room() {
    let home = tempfile::tempdir().unwrap();
    for (rows, columns, drawn) in [(24, 80, true), (40, 40, true), (24, 40, false)] {
        let mut person = Person::sits_down_at(&home.path().join(format!("{rows}x{columns}")), rows, columns, &[], &[]);
        person.answers("How many watts does the generator", "2800 W, 3300 W");
        person.answers("“bonded neutral”?", "");
        person.is_asked("what do the holes look");
        person.sees("Those are all of its outlets");
        let screen = person.screen.screen().contents();
        assert_eq!(screen.contains("L5-30R  L14-30R 14-50R"), drawn, "{screen}");
        let lines: Vec<&str> = screen.lines().collect();
        let question = lines.iter().position(|line| line.contains("what do the holes")).expect("the question");
        assert!(lines.len() - question <= usize::from(rows), "{screen}");
        person.types("\u{3}");
        assert_eq!(person.ends(), 130);
    }
}

/// Dangers that one answer makes certain are shown in full on the smallest screen, each with what to do, before the
/// next question.
#[test]
fn dangers_told_at_once_stay_on_a_small_screen() {
    let home = tempfile::tempdir().unwrap();
    let mut person = Person::sits_down_at(home.path(), 24, 40, &[], &[]);
    for (question, keys) in [
        ("How many watts does the generator", "3500 W, 4000 W"),
        ("“bonded neutral”?", ""),
        ("what do the holes look", "Regular T\r\t"),
        ("What voltage", "120 V only"),
        ("linked by a kit?", ""),
        ("TEST and a RESET", "All of"),
        ("What will you plug in?", "phone\r\t"),
        ("How wet", ""),
        ("How far from the generator", "60 ft"),
        ("above and around", "In the open"),
        ("carbon monoxide alarm", "yes"),
        ("wiring of a house", "no"),
        ("the elevation", "0 ft"),
        ("What cords, adapters", "Extension\r\t"),
        ("What color is it?", ""),
        ("printed along the cord?", ""),
        ("How long is it?", ""),
        ("stay coiled", ""),
    ] {
        person.answers(question, keys);
    }
    person.is_asked("Is this right?");
    let pages = std::mem::take(&mut person.pages).join("\n");
    let told: Vec<&str> = pages.split("DANGER").skip(1).collect();
    assert!(told.len() > 1, "{pages}");
    assert!(told.iter().all(|danger| danger.contains("Do:")), "{pages}");
    person.types("\u{3}");
    assert_eq!(person.ends(), 130);
}

/// If nothing is found, no steps stand above the last page, and it does not refer to any.
#[test]
fn the_last_page_speaks_of_what_is_above_it() {
    let home = tempfile::tempdir().unwrap();
    for (name, text, wanted, other) in [
        (
            "good.toml",
            tallywatt::plan::demo::MENDED,
            "put the labels up before you plug in",
            "What to do first is above",
        ),
        (
            "bad.toml",
            tallywatt::plan::demo::WEEKEND,
            "What to do first is above",
            "put the labels up before you plug in",
        ),
    ] {
        let path = home.path().join(name);
        std::fs::write(&path, text.as_bytes()).unwrap();
        let mut person = Person::sits_down_at(home.path(), 24, 80, &[], &["ask", name]);
        person.is_asked("Is this right?");
        person.screen = blank(80);
        person.types("check\r");
        person.is_asked("to do now?");
        let screen = person.screen.screen().contents();
        let flat = screen.replace('\n', " ");
        assert!(flat.contains(wanted) && !flat.contains(other), "{screen}");
        // The first step is visible together with the question.
        let lines: Vec<&str> = screen.lines().collect();
        let step = lines.iter().position(|line| line.starts_with("1. "));
        assert_eq!(step.is_some(), name == "bad.toml", "{screen}");
        assert!(lines.len() - step.unwrap_or(lines.len()) <= 24, "{screen}");
        person.types("\u{3}");
        assert_eq!(person.ends(), 130);
    }
}
