//! The questions in a real terminal: the program runs in a pseudo-terminal, and what it shows is
//! read from the screen a terminal would draw.

use std::io::{Read, Write};
use std::path::Path;
use std::sync::mpsc::{Receiver, channel};
use std::time::Duration;

use portable_pty::{Child, CommandBuilder, PtySize, native_pty_system};

/// How long a screen may take to show what is waited for: long, for a machine that is busy.
const PATIENCE: Duration = Duration::from_mins(1);

struct Person {
    child: Box<dyn Child + Send + Sync>,
    keys: Box<dyn Write + Send>,
    shown: Receiver<Vec<u8>>,
    screen: vt100::Parser,
    columns: u16,
    /// Held open: the terminal goes when it is dropped.
    _master: Box<dyn portable_pty::MasterPty + Send>,
}

fn blank(columns: u16) -> vt100::Parser {
    let some = |count: u16| std::num::NonZeroU16::new(count).unwrap();
    vt100::Parser::new(some(40), some(columns), 500)
}

impl Person {
    fn sits_down(data: &Path, columns: u16) -> Self {
        let size = PtySize {
            rows: 40,
            cols: columns,
            pixel_width: 0,
            pixel_height: 0,
        };
        let pair = native_pty_system().openpty(size).unwrap();
        let mut command = CommandBuilder::new(env!("CARGO_BIN_EXE_tallywatt"));
        command.env("TALLYWATT_DATA", data.join("data"));
        command.env("TERM", "xterm-256color");
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
            screen: blank(columns),
            columns,
            _master: pair.master,
        }
    }

    /// Waits until the screen holds the text.
    fn sees(&mut self, text: &str) {
        self.waits(text, |screen| screen.contains(text));
    }

    /// Waits until a prompt stands below the text: only then does the program read keys. The
    /// prompt before may still be redrawn above it.
    fn is_asked(&mut self, text: &str) {
        self.waits(text, |screen| {
            screen
                .rfind(text)
                .is_some_and(|at| screen[at..].contains("Esc: back"))
        });
    }

    fn waits(&mut self, text: &str, there: impl Fn(&str) -> bool) {
        loop {
            let screen = self.screen.screen().contents();
            if there(&screen) {
                return;
            }
            match self.shown.recv_timeout(PATIENCE) {
                Ok(bytes) => self.screen.process(&bytes),
                Err(error) => panic!("waited for {text:?}: {error}; the screen is\n{screen}"),
            }
        }
    }

    fn types(&mut self, keys: &str) {
        self.keys.write_all(keys.as_bytes()).unwrap();
        self.keys.flush().unwrap();
    }

    /// Waits for a question, forgets the screen, and answers it.
    fn answers(&mut self, question: &str, keys: &str) {
        self.is_asked(question);
        self.screen = blank(self.columns);
        self.types(keys);
        self.types("\r");
    }

    /// Waits for the end; gives the exit status.
    fn ends(&mut self) -> u32 {
        let status = self.child.wait().unwrap();
        while let Ok(bytes) = self.shown.recv_timeout(Duration::from_millis(500)) {
            self.screen.process(&bytes);
        }
        status.exit_code()
    }
}

const GENERATOR: &[(&str, &str)] = &[
    ("How much power can it keep up", "2800 W"),
    ("And for a few seconds", "3300 W"),
    ("Which voltage", ""),
    ("floating or bonded?", ""),
    ("an inverter generator?", "yes"),
    ("Which outlet, and which number", "home T"),
    ("Which outlet, and which number", ""),
    ("a TEST and a RESET button?", ""),
    ("Anything special", ""),
];

const REST: &[(&str, &str)] = &[
    ("What will you plug in?", "fridge small"),
    ("What will you plug in?", ""),
    ("How wet", ""),
    ("How far is it", "40 ft"),
    ("carbon monoxide alarm", "yes"),
    ("wiring of a house", ""),
    ("How high", "4200 ft"),
    ("What is in your bin", ""),
    ("printed along the cord?", "SJTW 14/3"),
    ("How long is it?", "50 ft"),
    ("stay coiled", ""),
    ("What is in your bin", ""),
];

#[test]
fn a_whole_interview_ends_in_paper() {
    let home = tempfile::tempdir().unwrap();
    let mut person = Person::sits_down(home.path(), 80);
    for (question, keys) in GENERATOR.iter().chain(REST) {
        person.answers(question, keys);
    }
    person.answers("Is this right?", "");
    person.answers("What now?", "");
    person.answers("Which folder", "prints");
    assert_eq!(person.ends(), 0, "{}", person.screen.screen().contents());
    let plan = std::fs::read_to_string(home.path().join("prints/plan.toml")).unwrap();
    for expected in [
        "rated = \"2800 W\"",
        "sleepers_at = \"40 ft\"",
        "id = \"fridge-small\"",
        "wire = \"14 AWG\"",
        "outdoor = true",
        "from = \"home\"",
        "neutral = \"unknown\"",
    ] {
        assert!(plan.contains(expected), "{expected} not in\n{plan}");
    }
    for print in ["labels.pdf", "card.pdf", "cautions.pdf", "worksheet.pdf"] {
        let bytes = std::fs::read(home.path().join("prints").join(print)).unwrap();
        assert!(bytes.starts_with(b"%PDF"), "{print}");
    }
    // The plan holds it all now, and no draft is left to go on with.
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
    person.answers("How much power can it", "2000 W");
    person.is_asked("And for a few seconds");
    person.screen = blank(40);
    person.types("\u{1b}");
    // Asked again, with what was answered as what Enter takes.
    person.sees("How much power can it");
    person.sees("2000 W");
    person.answers("How much power can it", "2200 W");
    person.answers("And for a few seconds", "2800");
    person.is_asked("In which unit? Add one of: W, kW");
    person.types("\u{3}");
    assert_eq!(person.ends(), 130);
    let draft = std::fs::read_to_string(home.path().join("data/drafts/plan.toml")).unwrap();
    assert!(
        draft.contains("\"generator.rated\" = \"2200 W\""),
        "{draft}"
    );
    assert!(!draft.contains("generator.peak"), "{draft}");
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
            "home T" => "5-20R 20 A",
            "fridge small" => "fridge-small",
            keys => keys,
        });
        answers.push('\n');
    }
    answers.push_str("check\nprint\nprints\n");
    let file = home.path().join("answers.txt");
    tallywatt::plan::store::write_atomic(&file, answers.as_bytes()).unwrap();
    let output = std::process::Command::new(env!("CARGO_BIN_EXE_tallywatt"))
        .env("TALLYWATT_DATA", home.path())
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

#[test]
fn killed_outright_it_has_lost_nothing_that_was_answered() {
    let home = tempfile::tempdir().unwrap();
    for (at, (question, keys)) in GENERATOR[..4].iter().enumerate() {
        let mut person = Person::sits_down(home.path(), 60);
        if at > 0 {
            person.answers("Go on with an unfinished plan?", "");
        }
        person.answers(question, keys);
        // The next question is up: by then the answer must be on the disk.
        person.is_asked(GENERATOR[at + 1].0);
        person.child.kill().unwrap();
        person.child.wait().unwrap();
    }
    let draft = std::fs::read_to_string(home.path().join("data/drafts/plan.toml")).unwrap();
    for expected in [
        "2800 W",
        "3300 W",
        "\"generator.voltage\" = \"120\"",
        "unknown = [\"generator.neutral\"]",
    ] {
        assert!(draft.contains(expected), "{expected} not in\n{draft}");
    }
}
