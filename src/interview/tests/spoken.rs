//! All that the interview says, each sentence once.

use std::collections::{BTreeMap, BTreeSet};

use super::matters::at;
use super::takes::TYPED;
use super::*;
use crate::words::spoken::{Once, usual};

/// A person who tries everything: asks for help at each new question, and answers in many ways.
struct Curious<'a> {
    said: &'a mut Once,
    asked: BTreeSet<String>,
    /// Any number. It need not be random: the person must only do something else each time.
    draw: usize,
    left: usize,
}

impl Curious<'_> {
    fn next(&mut self, below: usize) -> usize {
        self.draw = self.draw.wrapping_mul(1_664_525).wrapping_add(1_013_904_223) % (1 << 32);
        (self.draw >> 8) % below.max(1)
    }
}

impl Prompter for Curious<'_> {
    fn ask(&mut self, view: &View) -> Result<Input, PromptError> {
        self.left = self.left.checked_sub(1).ok_or(PromptError::Ended)?;
        for text in [&view.progress, &view.question, &view.why] {
            self.said.add(text);
        }
        if self.asked.insert(view.question.clone()) {
            return Ok(Input::Explain);
        }
        let turn = self.next(16);
        match &view.shape {
            Shape::List { rows, marks, .. } => {
                for row in rows {
                    self.said.add(&row.text);
                }
                let row = rows[self.next(rows.len())].clone();
                let other = rows[self.next(rows.len())].clone();
                Ok(match (turn, marks, row.value(), other.value()) {
                    (0, ..) => Input::Picture,
                    (1, ..) => Input::Unknown,
                    (2, ..) => Input::Skip,
                    (3, ..) if self.next(3) == 0 => Input::Back,
                    (4 | 5, ..) => Input::Answer(String::new()),
                    (6, ..) => Input::Answer("nothing of the kind".to_owned()),
                    (7..=12, Some(_), Some(one), Some(two)) => Input::Answer(format!("{one}, 2 x {two}")),
                    _ => row.input,
                })
            }
            Shape::Line { default, hint } => {
                for text in default.iter().chain([hint]) {
                    self.said.add(text);
                }
                Ok(match turn {
                    0 | 8 => Input::Unknown,
                    1 => Input::Skip,
                    2..=7 if default.is_some() => Input::Answer(String::new()),
                    2 | 3 => Input::Answer(TYPED[self.next(TYPED.len())].to_owned()),
                    _ => {
                        // As the question itself gives it.
                        let example =
                            view.why.rsplit([':', '.']).map(str::trim).find(|it| it.contains(char::is_numeric));
                        Input::Answer(example.map_or_else(|| TYPED[self.next(TYPED.len())].to_owned(), str::to_owned))
                    }
                })
            }
        }
    }

    fn tell(&mut self, text: &str) -> std::io::Result<()> {
        self.said.add(text);
        Ok(())
    }
}

#[test]
fn all_that_the_interview_says() {
    let words = Words::english();
    let mut said = Once::default();
    let plans = usual();
    let opened = plans.iter().step_by(7).filter_map(|plan| reopen::draft_of(plan, "test"));
    let drafts: Vec<Draft> = (0..4).map(|_| Draft::new("test")).chain(opened).collect();
    for (draw, draft) in drafts.into_iter().enumerate() {
        let left = if draft.answers.is_empty() { 120 } else { 40 };
        let mut curious = Curious { said: &mut said, asked: BTreeSet::default(), draw, left };
        let start = if draw % 2 == 0 { Start::First } else { Start::Looking };
        run(&mut curious, &mut Kept::default(), &words, draft, start).expect("no terminal to fail");
    }
    // Each question of a plan, whoever asks it.
    said.heading("Question by question");
    let mut times = BTreeMap::new();
    for plan in plans.iter().rev() {
        let Some(draft) = reopen::draft_of(plan, "test") else { continue };
        let machine = Machine::new(draft);
        let keys = machine.draft().answers.keys().map(String::as_str);
        // Of things that are asked the same, two will do.
        let alike = |key: &str| key.chars().filter(|c| !c.is_ascii_digit()).collect::<String>();
        let often = |key: &&str| {
            let times = times.entry(alike(key)).or_insert(0_usize);
            *times += 1;
            *times <= 2
        };
        for key in keys.chain(["review"]).filter(often) {
            let question = at(&machine, key).question();
            let shown = view(&words, &question);
            let mut texts = vec![shown.question, shown.why];
            match shown.shape {
                Shape::Line { default, hint } => texts.extend(default.into_iter().chain([hint])),
                Shape::List { rows, .. } => texts.extend(rows.into_iter().map(|row| row.text)),
            }
            texts.extend(explanation(&words, &question));
            for text in &texts {
                said.add(text);
            }
        }
    }
    // Line by line, as for a screen reader. A long list is not shown until somebody searches it.
    said.heading("Line by line");
    let mut lines = Vec::new();
    let typed = script(COMMON).replacen("kettle,", "?\nheater\nnothing of the kind\n\u{fffd}\nkettle,", 1);
    let mut prompter = lines::Lines::at_a_terminal(typed.as_bytes(), &mut lines, &words);
    run(&mut prompter, &mut Kept::default(), &words, Draft::new("test"), Start::First).expect("no terminal to fail");
    said.add(&String::from_utf8(lines).expect("text"));
    assert_eq!(words.faults(), [""; 0]);
    insta::assert_snapshot!("interview", said.text);
}
