//! The interview as a pure state machine: answers in, questions out.

mod looking;
mod review;
mod telling;

use super::draft::{Draft, Said};
use super::form::{self, Form, Start};
use super::parts::{self, Ids};
use super::steps::{self, Ask, At, Group, Item, Label, Step, Suggestion, Takes};
use crate::interview::build;
use crate::plan::problem::Value;
use crate::plan::{Answer, Draw, MOST_LOADS, MOST_PARTS, Refusal, bounds};
use crate::quantity::{Amount, Current, Length};
use crate::tables::occasions;

/// What the user did.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Input {
    /// Gave this answer; an empty one takes what is suggested.
    Answer(String),
    /// Wants the question before.
    Back,
    /// Passes: takes what is suggested, or says that there is none.
    Skip,
    /// Does not know.
    Unknown,
    /// Wants to know more about the question.
    Explain,
    /// Wants to see what is plugged into what so far.
    Picture,
    /// Has had enough for today.
    Quit,
}

/// What a question takes.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Kind {
    /// One of these.
    Choice(Vec<Item>),
    /// `yes` or `no`.
    YesNo,
    /// A text of this form.
    Text(Form),
    /// A page of lines to pick one from.
    Page(Vec<Item>),
}

/// A question, ready to be put into words.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Question {
    /// The key its answer is kept under; `review` for the review page.
    pub key: String,
    /// The name of its messages: `ask-ID`, with `why` and `help`.
    pub id: &'static str,
    /// The part of the interview it belongs to.
    pub group: Group,
    /// What it is about, where several are alike: the part's name or number.
    pub about: Option<Label>,
    /// What it takes.
    pub kind: Kind,
    /// What Enter takes: the earlier answer, else what is suggested.
    pub default: Suggestion,
    /// Whether "I don't know" is an answer.
    pub unknown: bool,
    /// Whether "none" is an answer.
    pub none: bool,
    /// The how-manyth question it is, from one; 0 for one that the review page led to.
    pub number: usize,
    /// About how many there are in all.
    pub total: usize,
}

impl Question {
    /// Whether it asks for a shape that a person can only tell by looking: the drawings help.
    pub(super) fn drawn(&self) -> bool {
        matches!(
            self.id,
            "outlet-face" | "out-face" | "gear-plug" | "gear-ends"
        )
    }
}

/// Something worth saying after an answer: message `note-KEY`, given `values`.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Note {
    /// Which.
    pub key: &'static str,
    /// Its values.
    pub values: Vec<(&'static str, Value)>,
}

/// One question in its place.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
struct Place {
    step: &'static Step,
    at: At,
    ask: Ask,
}

impl Place {
    fn key(&self) -> String {
        key(self.step, self.at)
    }
}

fn key(step: &Step, at: At) -> String {
    let prefix = part_key(step.group, at);
    format!("{prefix}.{}", step.field)
}

fn part_key(group: Group, at: At) -> String {
    match group {
        Group::Generator => "generator".into(),
        Group::Fuel => "fuel".into(),
        Group::Outlets => "outlets".into(),
        Group::Site => "site".into(),
        Group::Outlet => format!("outlet.{}", at.n),
        Group::Load => format!("load.{}", at.n),
        Group::Gear => format!("gear.{}", at.n),
        Group::Out => format!("gear.{}.out.{}", at.n, at.m),
    }
}

/// Where the user is.
#[derive(Clone, Debug, PartialEq, Eq)]
enum Cursor {
    /// At the first question without a good answer, or on the review page.
    Front,
    /// At this question.
    At {
        key: String,
        from_page: Option<String>,
    },
    /// On the page of this part.
    Part(String),
}

/// The interview.
#[derive(Clone, Debug)]
pub struct Machine {
    draft: Draft,
    cursor: Cursor,
    /// While what is to be looked at is gone through, the questions that were asked already.
    looked_at: Option<Vec<String>>,
    over: bool,
    left: bool,
}

impl Machine {
    /// Goes on from a draft: at its first question without a good answer.
    #[must_use]
    pub fn new(draft: Draft) -> Self {
        Self {
            draft,
            cursor: Cursor::Front,
            looked_at: None,
            over: false,
            left: false,
        }
    }

    /// The answers so far.
    #[must_use]
    pub const fn draft(&self) -> &Draft {
        &self.draft
    }

    /// Goes to a question, as a line of the review page does.
    #[cfg(test)]
    pub(super) fn cursor_for_tests(&mut self, key: &str) {
        self.cursor = Cursor::At {
            key: key.to_owned(),
            from_page: Some("review".to_owned()),
        };
    }

    /// Whether the user has said that the plan is ready to be checked.
    #[must_use]
    pub const fn finished(&self) -> bool {
        self.over
    }

    /// Whether the user has left.
    #[must_use]
    pub const fn quit(&self) -> bool {
        self.left
    }

    /// Every question that applies as things stand, in order.
    fn places(&self) -> Vec<Place> {
        let draft = &self.draft;
        let mut all = Vec::new();
        let mut add = |list: &'static [Step], at: At| {
            for step in list {
                let ask = (step.when)(draft, at);
                if ask != Ask::No {
                    all.push(Place { step, at, ask });
                }
            }
        };
        let whole = At::default();
        add(steps::GENERATOR, whole);
        each(draft, steps::MOST_OUTLETS, "outlet", "face", |n, stands| {
            let at = At { n, m: 0 };
            add(&steps::OUTLET[..1], at);
            if stands {
                add(&steps::OUTLET[1..], at);
            }
        });
        add(steps::OUTLETS, whole);
        for n in parts::outlets(draft) {
            add(steps::OUTLET_AFTER, At { n, m: 0 });
        }
        each(draft, steps::MOST_LOADS, "load", "what", |n, stands| {
            let at = At { n, m: 0 };
            add(&steps::LOAD[..1], at);
            if stands {
                add(&steps::LOAD[1..], at);
            }
        });
        add(steps::SITE, whole);
        // Where a part is plugged in is asked with the part when there is a choice already.
        // Else it waits for the parts to come, which may bring one.
        let mut waiting = Vec::new();
        each(draft, steps::MOST_GEAR, "gear", "what", |n, stands| {
            let at = At { n, m: 0 };
            add(&steps::GEAR[..1], at);
            if !stands {
                return;
            }
            add(&steps::GEAR[1..], at);
            if parts::is_box(draft, n) {
                each(
                    draft,
                    steps::MOST_OUTS,
                    &format!("gear.{n}.out"),
                    "face",
                    |m, stands| {
                        let at = At { n, m };
                        add(&steps::OUT[..1], at);
                        if stands {
                            add(&steps::OUT[1..], at);
                        }
                    },
                );
            }
            if parts::has_choice(draft, n) {
                add(steps::GEAR_AFTER, at);
            } else {
                waiting.push(at);
            }
        });
        for at in waiting {
            add(steps::GEAR_AFTER, at);
        }
        add(steps::FUEL, whole);
        all
    }

    /// The questions that are asked in their turn: those of the flow, and those of the review page
    /// whose answer no longer goes with the others.
    fn flow(&self) -> Vec<Place> {
        let mut all = self.places();
        all.retain(|place| place.ask == Ask::Flow || self.clashes(place));
        all
    }

    fn is_answered(&self, place: &Place) -> bool {
        self.draft
            .get(&place.key())
            .is_some_and(|said| self.check(place, said).is_ok())
    }

    /// The place the user is at; `None` on a page.
    fn here(&self) -> Option<Place> {
        match &self.cursor {
            Cursor::At { key, .. } => {
                let found = self.places().into_iter().find(|place| place.key() == *key);
                found.or_else(|| self.front())
            }
            Cursor::Front => self.front(),
            Cursor::Part(_) => None,
        }
    }

    fn front(&self) -> Option<Place> {
        self.flow()
            .into_iter()
            .find(|place| !self.is_answered(place))
    }

    /// The question to ask now.
    #[must_use]
    pub fn question(&self) -> Question {
        let flow = self.flow();
        match self.here() {
            Some(place) => {
                let total = flow.len() + self.to_come(&flow);
                let number = match &self.cursor {
                    Cursor::At {
                        from_page: Some(_), ..
                    } => None,
                    _ => flow.iter().position(|other| *other == place),
                };
                self.ask(&place, number.map_or(0, |at| at + 1), total)
            }
            None => self.page(flow.len()),
        }
    }

    /// About how many questions will still appear: people name some two outlets, half a dozen
    /// things to run and two pieces of gear.
    fn to_come(&self, flow: &[Place]) -> usize {
        let open = |group: Group| {
            flow.iter()
                .rfind(|place| place.step.group == group)
                .filter(|place| !self.is_answered(place))
                .map_or(0, |place| usize::from(place.at.n))
        };
        let missing = |expected: usize, open: usize, each: usize| match open {
            0 => 0,
            n => (expected + 1).saturating_sub(n) * each,
        };
        missing(2, open(Group::Outlet), 1)
            + missing(6, open(Group::Load), 1)
            + missing(2, open(Group::Gear), 4)
    }

    fn ask(&self, place: &Place, number: usize, total: usize) -> Question {
        let key = place.key();
        let earlier = self
            .draft
            .get(&key)
            .filter(|said| self.check(place, said).is_ok());
        Question {
            id: place.step.id,
            group: place.step.group,
            about: self.about(place),
            kind: match place.step.takes {
                Takes::Pick(items) => Kind::Choice(items(&self.draft, place.at)),
                Takes::YesNo => Kind::YesNo,
                Takes::Typed(form) => Kind::Text(form),
            },
            default: earlier.map_or_else(
                || self.suggestion(place),
                |said| {
                    let whole = steps::face_said(&self.draft, &key);
                    Suggestion::Said(whole.unwrap_or_else(|| said.clone()))
                },
            ),
            unknown: place.step.unknown,
            none: place.step.none,
            key,
            number,
            total,
        }
    }

    /// A suggestion that would not be taken is none.
    fn suggestion(&self, place: &Place) -> Suggestion {
        match (place.step.suggest)(&self.draft, place.at) {
            Suggestion::Said(said) if self.check(place, &said).is_err() => Suggestion::Nothing,
            suggestion => suggestion,
        }
    }

    fn about(&self, place: &Place) -> Option<Label> {
        let draft = &self.draft;
        let n = place.at.n;
        let first = matches!(place.step.field, "face" | "what");
        match place.step.group {
            Group::Outlet if !first => {
                let shape = parts::Place::Outlet(n).shape(draft)?;
                Some(Label::Place(Ids::new(draft).outlet(n), shape))
            }
            Group::Load if !first => Some(load_label(draft, n)),
            Group::Gear if !first => {
                let what = draft.text(&format!("gear.{n}.what"))?;
                Some(Label::Word(
                    "about-gear".into(),
                    vec![
                        ("id", Ids::new(draft).gear(n).into()),
                        ("what", Value::word(format!("pick-gear-what-{what}"))),
                    ],
                ))
            }
            Group::Out => Some(Label::Plain(Ids::new(draft).gear(n))),
            _ => None,
        }
    }

    /// Takes what the user did.
    ///
    /// # Errors
    /// When it is no answer to the question; nothing has changed then.
    pub fn answer(&mut self, input: Input) -> Result<Vec<Note>, Refusal> {
        match input {
            Input::Quit => {
                self.left = true;
                Ok(Vec::new())
            }
            Input::Explain | Input::Picture => Ok(Vec::new()),
            Input::Back => self.back().map(|()| Vec::new()),
            input => match self.here() {
                Some(place) => self.take(&place, input),
                None => self.pick_line(input).map(|()| Vec::new()),
            },
        }
    }

    fn back(&mut self) -> Result<(), Refusal> {
        let previous_of = |flow: &[Place], before: usize| {
            before.checked_sub(1).map(|at| Cursor::At {
                key: flow[at].key(),
                from_page: None,
            })
        };
        let next = match &self.cursor {
            Cursor::Part(_) => Some(Cursor::Front),
            Cursor::At {
                from_page: Some(page),
                ..
            } => {
                let page = page_cursor(page);
                Some(self.look_back().unwrap_or(page))
            }
            Cursor::At { .. } | Cursor::Front => {
                let flow = self.flow();
                let at = match self.here() {
                    Some(place) => flow
                        .iter()
                        .position(|other| *other == place)
                        .unwrap_or(flow.len()),
                    None => flow.len(),
                };
                previous_of(&flow, at)
            }
        };
        self.cursor = next.ok_or_else(|| Refusal::new("first"))?;
        Ok(())
    }

    fn take(&mut self, place: &Place, input: Input) -> Result<Vec<Note>, Refusal> {
        let said = self.said(place, input)?;
        self.check(place, &said)?;
        let occasion = said
            .text()
            .and_then(|text| text.strip_prefix(steps::OCCASION));
        let before = self.draft.clone();
        let added = occasion.map(|occasion| self.add_usual(place.at.n, occasion));
        let added = added.transpose()?;
        if added.is_none() {
            self.keep(place, said);
        }
        if overfills(&before, &self.draft) {
            self.draft = before;
            return Err(Refusal::new("full"));
        }
        self.cursor = match &self.cursor {
            _ if self.looked_at.is_some() => self.look_on(),
            Cursor::At {
                from_page: Some(page),
                ..
            } => page_cursor(page),
            _ => Cursor::Front,
        };
        // A change on the page may have opened questions: they come first.
        if let Cursor::Part(part) = &self.cursor
            && (self.front().is_some() || !self.parts().contains(part) || part == "add")
        {
            self.cursor = Cursor::Front;
        }
        Ok(added.into_iter().chain(self.note(place)).collect())
    }

    /// Names the usual things of an occasion that are not named yet, from load `n` on.
    fn add_usual(&mut self, n: u8, occasion: &str) -> Result<Note, Refusal> {
        let usual = occasions::named(occasion).ok_or_else(|| Refusal::new("choice"))?;
        let what = |n: u8| format!("load.{n}.what");
        let named: Vec<&str> = parts::loads(&self.draft)
            .filter(|other| *other != n)
            .filter_map(|other| self.draft.text(&what(other)))
            .collect();
        let missing: Vec<&str> = usual
            .appliances
            .iter()
            .map(String::as_str)
            .filter(|key| !named.contains(key))
            .collect();
        if missing.is_empty() {
            return Err(Refusal::new("all-named"));
        }
        let first_after = self.end_of("load", "what", steps::MOST_LOADS).unwrap_or(n);
        let numbers = std::iter::once(n).chain(first_after.max(n + 1)..=steps::MOST_LOADS);
        let added: Vec<(u8, String)> = numbers
            .zip(missing.into_iter().map(str::to_owned))
            .collect();
        let things: Vec<String> = added
            .iter()
            .map(|(_, key)| format!("appliance-{key}"))
            .collect();
        if added.len() > 1 {
            self.forget_after("load", "what", first_after, steps::MOST_LOADS);
        }
        for (n, key) in added {
            self.forget_figures(n);
            self.draft.answers.insert(what(n), Said::Is(key));
        }
        let values = vec![
            ("count", things.len().to_string().into()),
            ("things", Value::Words(things)),
        ];
        Ok(Note {
            key: "added",
            values,
        })
    }

    /// The first number of a list of parts that is not named.
    fn end_of(&self, list: &str, field: &str, most: u8) -> Option<u8> {
        (1..=most).find(|n| {
            let said = self.draft.text(&format!("{list}.{n}.{field}"));
            matches!(said, None | Some("done"))
        })
    }

    /// What was named after the end of a list, before it was ended there, does not come back
    /// when the list grows again.
    fn forget_after(&mut self, list: &str, field: &str, end: u8, most: u8) {
        for n in end..=most {
            self.draft.answers.remove(&format!("{list}.{n}.{field}"));
        }
    }

    /// What a load uses belongs to the thing it was; how it is used may stay.
    fn forget_figures(&mut self, n: u8) {
        for field in [
            "id",
            "name",
            "kind",
            "running",
            "starting",
            "power_factor",
            "continuous",
            "voltage",
        ] {
            self.draft.answers.remove(&format!("load.{n}.{field}"));
        }
    }

    /// A shape may bring its breaker with it; one that does not leaves the breaker to be asked.
    fn keep(&mut self, place: &Place, said: Said) {
        let key = place.key();
        let other = self.draft.get(&key).is_some_and(|before| *before != said);
        if other && place.step.id == "load-what" && said.text() != Some("removed") {
            self.forget_figures(place.at.n);
        }
        if let Some(breaker_key) = steps::breaker_key(&key) {
            let had = steps::face_said(&self.draft, &key);
            if let Some((shape, breaker)) = said.text().and_then(steps::split_face) {
                let answers = &mut self.draft.answers;
                answers.insert(breaker_key, Said::is(breaker));
                answers.insert(key, Said::is(shape));
                return;
            }
            if had.is_some() && said.text() != Some("removed") {
                self.draft.answers.remove(&breaker_key);
            }
        }
        self.draft.answers.insert(key, said);
    }

    fn said(&self, place: &Place, input: Input) -> Result<Said, Refusal> {
        let step = place.step;
        let default = || match self.draft.get(&place.key()) {
            Some(said) if self.check(place, said).is_ok() => {
                Some(steps::face_said(&self.draft, &place.key()).unwrap_or_else(|| said.clone()))
            }
            _ => match self.suggestion(place) {
                Suggestion::Said(said) => Some(said),
                Suggestion::Nothing => None,
            },
        };
        match input {
            Input::Answer(text) if text.trim().is_empty() => default().ok_or_else(|| {
                match step.takes {
                    Takes::Typed(form) => form.check("").err(),
                    _ => None,
                }
                .unwrap_or_else(|| Refusal::new("choice"))
            }),
            Input::Answer(text) => {
                let text = text.trim();
                match step.takes {
                    Takes::YesNo => Ok(Said::is(text.to_lowercase())),
                    Takes::Typed(_) | Takes::Pick(_) => Ok(Said::is(text)),
                }
            }
            Input::Skip if step.none => Ok(Said::None),
            Input::Skip => default().ok_or_else(|| Refusal::new("no-skip")),
            Input::Unknown if step.unknown => Ok(Said::Unknown),
            // What nobody can name must not be used, so it has no place in a plan.
            Input::Unknown if matches!(step.field, "face" | "plug" | "ends") => {
                Err(Refusal::new("unknown-shape"))
            }
            Input::Unknown => Err(Refusal::new("no-unknown")),
            Input::Back | Input::Explain | Input::Picture | Input::Quit => {
                Err(Refusal::new("choice"))
            }
        }
    }

    /// Whether it is an answer to the question, as the other answers stand.
    fn check(&self, place: &Place, said: &Said) -> Result<(), Refusal> {
        let step = place.step;
        let text = match said {
            Said::Unknown if step.unknown => return Ok(()),
            Said::None if step.none => return Ok(()),
            // Ours, whatever it says.
            Said::Word(_) if matches!(step.takes, Takes::Typed(Form::Name)) => return Ok(()),
            Said::Word(_) => return Err(Refusal::new("choice")),
            Said::Unknown | Said::None => return Err(Refusal::new("no-unknown")),
            Said::Is(text) => text,
        };
        match step.takes {
            Takes::YesNo => {
                if !matches!(text.as_str(), "yes" | "no") {
                    return Err(Refusal::new("yes-no"));
                }
            }
            Takes::Pick(items) => {
                if !items(&self.draft, place.at)
                    .iter()
                    .any(|item| item.value == *text)
                {
                    return Err(Refusal::new("choice"));
                }
            }
            Takes::Typed(form) => form.check(text).map_err(|reject| {
                let row = format!("ask-{}.row", step.id);
                reject.with("field", Value::Word(row))
            })?,
        }
        self.check_against_others(place, text)
    }

    /// Whether what is answered here was taken and can no longer be, because of another answer.
    fn clashes(&self, place: &Place) -> bool {
        match (place.step.takes, self.draft.text(&place.key())) {
            (Takes::Typed(form), Some(text)) => {
                form.check(text).is_ok() && self.check_against_others(place, text).is_err()
            }
            // The socket may be taken by now.
            (Takes::Pick(items), Some(text)) if place.step.id == "load-on" => {
                let items = items(&self.draft, place.at);
                items.iter().all(|item| item.value != text)
            }
            _ => false,
        }
    }

    fn check_against_others(&self, place: &Place, text: &str) -> Result<(), Refusal> {
        let draft = &self.draft;
        let n = place.at.n;
        match place.step.id {
            "generator-peak" => {
                let peak = form::quantity(text, &bounds::PEAK)?;
                let rated = draft.text("generator.rated").unwrap_or_default();
                match bounds::RATED.read(rated) {
                    Ok(least) if peak < least => {
                        Err(Refusal::new("peak").with("rated", Value::Numbers(rated.to_owned())))
                    }
                    _ => Ok(()),
                }
            }
            "load-starting" => {
                let less = |least: Amount| Err(Refusal::new("starting").with("running", least));
                match (form::start(text)?, build::load_draw(draft, n)) {
                    (Start::Power(power), Answer::Known(Draw::Power(least))) if power < least => {
                        less(Amount::of(least))
                    }
                    (Start::Current(amps), Answer::Known(Draw::Current(least))) if amps < least => {
                        less(Amount::of(least))
                    }
                    _ => Ok(()),
                }
            }
            "load-draw" | "load-plug" | "load-factor" => {
                match build::beyond_plug(draft, n, place.step.field, text) {
                    Some((amps, plug)) => Err(Refusal::new("plug-amps")
                        .with("amps", Amount::of(amps))
                        .with("plug", plug.to_string())
                        .with("rating", Amount::of(plug.0.rating()))),
                    None => Ok(()),
                }
            }
            "out-leg" => {
                let (told, there) = (
                    form::legs(text)?.len(),
                    parts::out_count(draft, n, place.at.m),
                );
                if told == 1 || told == usize::from(there) {
                    Ok(())
                } else {
                    Err(Refusal::new("legs-count").with("count", there.to_string()))
                }
            }
            "outlet-trips" => {
                let trips = form::quantity(text, &bounds::TRIPS_AT)?;
                match breaker(draft, n) {
                    Some((most, marked)) if trips > most => {
                        Err(Refusal::new("trips").with("marked", marked))
                    }
                    _ => Ok(()),
                }
            }
            "outlet-shares" => {
                let other = parts::shared(draft, n, text).map(|other| breaker(draft, other));
                match (breaker(draft, n), other) {
                    // One breaker has one number.
                    (Some((own, marked)), Some(other))
                        if other.as_ref().map(|o| o.0) != Some(own) =>
                    {
                        let other = other.map_or_else(|| Value::word("shown-unknown"), |o| o.1);
                        Err(Refusal::new("shares")
                            .with("own", marked)
                            .with("other", other))
                    }
                    _ => Ok(()),
                }
            }
            "site-sleepers" => not_zero(form::quantity(text, &bounds::SLEEPERS_AT)?),
            "gear-length" => not_zero(form::quantity(text, &bounds::LENGTH)?),
            "outlet-name" | "gear-name" => {
                let own = place.key();
                let ids = Ids::new(draft);
                let taken = ids.all().any(|(key, id)| key != own && id == text)
                    || parts::load_ids(draft, &ids)
                        .iter()
                        .any(|(_, id)| id == text);
                if taken {
                    Err(Refusal::new("ident-taken"))
                } else {
                    Ok(())
                }
            }
            _ => Ok(()),
        }
    }
}

fn not_zero(length: Length) -> Result<(), Refusal> {
    if length > Length::ZERO {
        Ok(())
    } else {
        Err(Refusal::new("zero"))
    }
}

/// The number on the breaker of an outlet of the set, and as it was given.
fn breaker(draft: &Draft, n: u8) -> Option<(Current, Value)> {
    let text = draft.text(&format!("outlet.{n}.breaker"))?;
    let marked = bounds::BREAKER.read(text).ok()?;
    Some((marked, Value::Numbers(text.to_owned())))
}

/// Whether there are now more parts or loads than a plan may have, and more than before.
fn overfills(before: &Draft, now: &Draft) -> bool {
    let more = |count: fn(&Draft) -> usize, most: usize| count(now) > most.max(count(before));
    more(parts::count, MOST_PARTS) || more(parts::load_count, MOST_LOADS)
}

fn page_cursor(page: &str) -> Cursor {
    if page == "review" {
        Cursor::Front
    } else {
        Cursor::Part(page.to_owned())
    }
}

fn load_label(draft: &Draft, n: u8) -> Label {
    let name = draft.text(&format!("load.{n}.name"));
    let what = draft.text(&format!("load.{n}.what")).unwrap_or_default();
    match name {
        Some(name) => Label::Plain(name.to_owned()),
        _ if what == "own" => Label::word("part-load"),
        _ => Label::word(format!("appliance-{what}")),
    }
}

/// Goes through a list of parts: each with whether it stands, up to and with the first that is
/// not answered or says that there are no more.
fn each(draft: &Draft, most: u8, list: &str, field: &str, mut visit: impl FnMut(u8, bool)) {
    for n in 1..=most {
        match draft.text(&format!("{list}.{n}.{field}")) {
            None | Some("done") => {
                visit(n, false);
                return;
            }
            Some(value) => visit(n, value != "removed"),
        }
    }
}
