//! The interview as a pure state machine: answers in, questions out.

mod lists;
mod looking;
mod review;
mod telling;

use super::draft::{Draft, Said};
use super::form::{self, Form, Start};
use super::parts::{self, Ids};
use super::steps::{self, Ask, At, Group, Item, Label, Step, Suggestion, Takes, load_label};
use crate::interview::build;
use crate::plan::problem::Value;
use crate::plan::{Answer, Draw, MOST_LOADS, MOST_PARTS, Refusal, bounds};
use crate::quantity::{Amount, Current, Length};

/// What the user did at a question.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Input {
    /// Gave this answer. An empty one accepts the default.
    Answer(String),
    /// Wants the previous question.
    Back,
    /// Skips the question: answers "none" where that is an answer, and accepts the default elsewhere.
    Skip,
    /// Doesn't know the answer.
    Unknown,
    /// Has yet to buy the thing, so there is nothing to read the answer from.
    NotBought,
    /// Wants the question explained.
    Explain,
    /// Wants to see what is plugged into what so far.
    Picture,
    /// Wants to quit for now.
    Quit,
}

/// The kind of answer a question takes.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Kind {
    /// One of these items.
    Choice(Vec<Item>),
    /// Any of these items, with a count of each.
    Many(Vec<Item>),
    /// `yes` or `no`.
    YesNo,
    /// Typed text of this form.
    Text(Form),
    /// A page of rows to pick one from.
    Page(Vec<Item>),
}

/// A question, ready to be put into words.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Question {
    /// The key that its answer is stored under, or `review` for the review page.
    pub key: String,
    /// The name of its message, `ask-ID`, which has the attributes `why` and `help`.
    pub id: &'static str,
    /// The part of the interview it belongs to.
    pub group: Group,
    /// The name or number of the part it asks about, where several parts are alike.
    pub about: Option<Label>,
    /// The kind of answer it takes.
    pub kind: Kind,
    /// What Enter accepts: the earlier answer, or else the suggestion.
    pub default: Suggestion,
    /// Other inputs that count as an answer: "I don't know", "none", "not bought yet".
    pub besides: Vec<Input>,
    /// Whether the question comes in its turn, rather than from a page the user opened.
    pub in_turn: bool,
    /// Its place among the things to look at, while the user goes through them.
    pub look: Option<LookAt>,
}

/// The place of a question among the things to look at.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct LookAt {
    /// The number of questions ahead of it.
    pub at: usize,
    /// The number of questions in all. Answers never raise it.
    pub total: usize,
    /// Whether answers to the first list led to this one.
    pub more: bool,
}

impl Question {
    /// Whether this input is one of the extra answers.
    pub(super) fn allows(&self, input: &Input) -> bool {
        self.besides.contains(input)
    }

    /// Whether it asks for a shape that people can only tell by looking, so that the drawings help.
    pub(super) fn drawn(&self) -> bool {
        matches!(self.id, "outlet-list" | "outlet-face" | "out-list" | "out-face" | "gear-plug" | "gear-ends")
    }

    /// Whether it asks for the shape of a plug.
    pub(super) fn asks_plug(&self) -> bool {
        matches!(self.id, "gear-plug" | "load-plug")
    }
}

/// A note to show after an answer: the message `note-KEY` with these values.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Note {
    /// The key of its message.
    pub key: &'static str,
    /// The values of its message.
    pub values: Vec<(&'static str, Value)>,
}

/// A question and the part it asks about.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
struct Place {
    step: &'static Step,
    at: At,
    ask: Ask,
}

impl Place {
    fn key(&self) -> String {
        format!("{}.{}", self.part(), self.step.field)
    }

    /// Returns the key of its part.
    fn part(&self) -> String {
        part_key(self.step.group, self.at)
    }

    /// Returns the items to pick from.
    fn items(&self, draft: &Draft) -> Vec<Item> {
        self.step.items(draft, self.at).unwrap_or_default()
    }
}

/// Whether a question moves to the review page because of the state of its part.
///
/// Nothing more is asked about a part whose shape nobody knows. For a part that is not bought yet, only what its buyer
/// chooses is asked.
fn waits(draft: &Draft, step: &Step, at: At) -> bool {
    let in_gear = matches!(step.group, Group::Gear | Group::Out);
    in_gear && parts::has_unknown_shape(draft, at.n) || is_to_buy(draft, step, at)
}

/// Whether a question is about something not bought yet, and its packaging will answer it.
fn is_to_buy(draft: &Draft, step: &Step, at: At) -> bool {
    !step.chosen && is_of_thing_to_buy(draft, step, at)
}

/// Whether a question is about something not bought yet.
fn is_of_thing_to_buy(draft: &Draft, step: &Step, at: At) -> bool {
    let bought = match step.group {
        Group::Generator | Group::Outlet | Group::Outlets => "generator.bought".to_owned(),
        Group::Gear | Group::Out => format!("gear.{}.bought", at.n),
        Group::Fuel | Group::Loads | Group::Load | Group::Site | Group::Gears => return false,
    };
    draft.text(&bought) == Some("no")
}

fn part_key(group: Group, at: At) -> String {
    match group {
        Group::Generator => "generator".into(),
        Group::Fuel => "fuel".into(),
        Group::Outlets => "outlets".into(),
        Group::Site => "site".into(),
        Group::Loads => "loads".into(),
        Group::Gears => "gears".into(),
        Group::Outlet => format!("outlet.{}", at.n),
        Group::Load => format!("load.{}", at.n),
        Group::Gear => format!("gear.{}", at.n),
        Group::Out => format!("gear.{}.out.{}", at.n, at.m),
    }
}

/// Where the user is.
#[derive(Clone, Debug, PartialEq, Eq)]
enum Cursor {
    /// At the first question without a valid answer, or on the review page when there is none.
    Front,
    /// At the question with this key, opened from a page or not.
    At { key: String, from_page: Option<String> },
    /// On the page of this part.
    Part(String),
}

/// The id of the question about the generator's outlets.
const OUTLET_LIST: &str = "outlet-list";

/// The state of an interview.
#[derive(Clone, Debug)]
pub struct Machine {
    draft: Draft,
    cursor: Cursor,
    /// Progress through the things to look up, while the user goes through them.
    looking: Option<looking::Looking>,
    /// The list last answered with nothing. The same answer again is taken as meant.
    nothing: Option<String>,
    over: bool,
    left: bool,
}

impl Machine {
    /// Resumes a draft at its first question without a valid answer.
    #[must_use]
    pub fn new(draft: Draft) -> Self {
        Self { draft, cursor: Cursor::Front, looking: None, nothing: None, over: false, left: false }
    }

    /// Returns the answers so far.
    #[must_use]
    pub const fn draft(&self) -> &Draft {
        &self.draft
    }

    /// Moves to a question the way a line of the review page does.
    #[cfg(test)]
    pub(super) fn cursor_for_tests(&mut self, key: &str) {
        self.cursor = Cursor::At { key: key.to_owned(), from_page: Some("review".to_owned()) };
    }

    /// Moves to a question the way going back does.
    #[cfg(test)]
    pub(super) fn went_back_for_tests(&mut self, key: &str) {
        self.cursor = Cursor::At { key: key.to_owned(), from_page: None };
    }

    /// Returns the keys of the questions asked in turn.
    #[cfg(test)]
    pub(super) fn asked_for_tests(&self) -> Vec<String> {
        self.flow().into_iter().map(|place| place.key()).collect()
    }

    /// Returns the keys of the questions about a part.
    #[cfg(test)]
    pub(super) fn of_part_for_tests(&self, part: &str) -> Vec<String> {
        self.of_part(part).iter().map(Place::key).collect()
    }

    /// Whether the user declared the plan ready to check.
    #[must_use]
    pub const fn finished(&self) -> bool {
        self.over
    }

    /// Whether the user quit.
    #[must_use]
    pub const fn quit(&self) -> bool {
        self.left
    }

    /// Returns every question that applies to the current answers, in order.
    fn places(&self) -> Vec<Place> {
        let draft = &self.draft;
        let mut all = Vec::new();
        let mut add = |list: &'static [Step], at: At| {
            for step in list {
                let ask = match (step.when)(draft, at) {
                    Ask::Flow if waits(draft, step, at) => Ask::Later,
                    ask => ask,
                };
                if ask != Ask::No {
                    all.push(Place { step, at, ask });
                }
            }
        };
        let whole = At::default();
        add(steps::GENERATOR, whole);
        add(steps::OUTLET_LIST, whole);
        for n in parts::outlets(draft) {
            add(steps::OUTLET, At { n, m: 0 });
        }
        add(steps::GENERATOR_AFTER, whole);
        add(steps::OUTLETS, whole);
        for n in parts::outlets(draft) {
            add(steps::OUTLET_AFTER, At { n, m: 0 });
        }
        add(steps::LOADS, whole);
        for n in parts::loads(draft) {
            add(steps::LOAD, At { n, m: 0 });
        }
        add(steps::SITE, whole);
        add(steps::GEARS, whole);
        // The question of where a part is plugged in comes with the part if there is already a choice. Otherwise it
        // waits, since later parts may bring one.
        let mut waiting = Vec::new();
        for n in parts::gear(draft) {
            let at = At { n, m: 0 };
            add(steps::GEAR, at);
            add(steps::OUT_LIST, at);
            if parts::is_box(draft, n) {
                for m in parts::outs(draft, n) {
                    add(steps::OUT, At { n, m });
                }
            }
            if parts::has_choice(draft, n) {
                add(steps::GEAR_AFTER, at);
            } else {
                waiting.push(at);
            }
        }
        for at in waiting {
            add(steps::GEAR_AFTER, at);
        }
        add(steps::FUEL, whole);
        all
    }

    /// Returns the questions asked in turn: those of the normal flow, plus review-page questions whose answer
    /// contradicts another one.
    fn flow(&self) -> Vec<Place> {
        let mut all = self.places();
        all.retain(|place| place.ask == Ask::Flow || self.clashes(place));
        all
    }

    /// Whether the question with this key is about something not bought yet, which nobody can look at.
    pub(super) fn asks_of_thing_to_buy(&self, key: &str) -> bool {
        let places = self.places();
        let place = places.iter().find(|place| place.key() == key && place.step.field != "from");
        place.is_some_and(|place| is_of_thing_to_buy(&self.draft, place.step, place.at))
    }

    /// Returns the keys of the questions that only the review page asks.
    pub(super) fn waiting(&self) -> Vec<String> {
        let waiting = self.places().into_iter().filter(|place| place.ask == Ask::Later);
        waiting.map(|place| place.key()).collect()
    }

    /// Whether "I don't know" is an answer. The owner of a generator can see which outlets it has, so for the outlet
    /// list it counts only before the purchase.
    fn may_be_unknown(&self, place: &Place) -> bool {
        place.step.unknown || place.step.id == OUTLET_LIST && self.draft.text("generator.bought") == Some("no")
    }

    /// Returns the other inputs that count as an answer.
    fn besides(&self, place: &Place) -> Vec<Input> {
        let mut all = place.step.besides();
        if !place.step.unknown && self.may_be_unknown(place) {
            all.extend([Input::Unknown, Input::NotBought]);
        }
        all
    }

    fn is_answered(&self, place: &Place) -> bool {
        self.earlier(place).is_some()
    }

    /// Returns the stored answer if it is still valid.
    fn earlier(&self, place: &Place) -> Option<Said> {
        let said = match place.step.takes {
            Takes::Many(_) => self.marked(place)?,
            _ => self.draft.get(&place.key())?.clone(),
        };
        self.check(place, &said).is_ok().then_some(said)
    }

    /// Returns the question the user is at, or `None` on a page.
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
        self.flow().into_iter().find(|place| !self.is_answered(place))
    }

    /// Returns the question to ask next.
    #[must_use]
    pub fn question(&self) -> Question {
        match self.here() {
            Some(place) => {
                let led = matches!(&self.cursor, Cursor::At { from_page, .. } if from_page.is_some());
                self.ask(&place, !led)
            }
            None => self.page(),
        }
    }

    fn ask(&self, place: &Place, in_turn: bool) -> Question {
        let key = place.key();
        Question {
            id: place.step.id,
            group: place.step.group,
            about: self.about(place),
            kind: match place.step.takes {
                Takes::YesNo => Kind::YesNo,
                Takes::Typed(form) => Kind::Text(form),
                Takes::Many(_) => Kind::Many(place.items(&self.draft)),
                _ => Kind::Choice(place.items(&self.draft)),
            },
            default: self.usual(place).map_or(Suggestion::Nothing, Suggestion::Said),
            besides: self.besides(place),
            look: self.look_at(&key),
            key,
            in_turn,
        }
    }

    /// Returns the answer that Enter accepts. When the user is adding to a list, that is nothing.
    fn usual(&self, place: &Place) -> Option<Said> {
        if matches!(place.step.takes, Takes::Many(_)) && self.is_adding() {
            return Some(Said::is("done"));
        }
        let earlier = self.earlier(place);
        let earlier = earlier.or_else(|| self.marked_so_far(place));
        let whole = |said| {
            let face = steps::face_said(&self.draft, &place.key());
            face.or_else(|| self.both_figures(place)).unwrap_or(said)
        };
        earlier.map(whole).or_else(|| match self.suggestion(place) {
            Suggestion::Said(said) => Some(said),
            Suggestion::Nothing => None,
        })
    }

    /// Returns the running power and the peak as one answer, where one question took both.
    fn both_figures(&self, place: &Place) -> Option<Said> {
        let figure = |key: &str| self.draft.text(key).filter(|_| place.step.id == "generator-rated");
        let (rated, peak) = (figure("generator.rated")?, figure("generator.peak")?);
        let both = format!("{rated}, {peak}");
        // A peak below the running power has a question of its own.
        let told = form::watts(&both).ok()?;
        (told == (rated.to_owned(), Some(peak.to_owned()))).then_some(Said::Is(both))
    }

    /// Whether marked items are added to the existing ones, because the user came from the "add" page.
    fn is_adding(&self) -> bool {
        matches!(&self.cursor, Cursor::At { from_page: Some(page), .. } if page == "review")
    }

    /// Returns the suggestion, or nothing if it would not be a valid answer.
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
            Group::Out => Some(Label::Plain(self.outs_label(place.at))),
            _ => None,
        }
    }

    /// Returns the ids of the box outlets that a question is about.
    fn outs_label(&self, At { n, m }: At) -> String {
        let ids = Ids::new(&self.draft);
        let id = |copy| ids.of(parts::Place::Out(n, m, copy));
        match parts::out_count(&self.draft, n, m) {
            count @ 1..=3 => (1..=count).map(id).collect::<Vec<_>>().join(", "),
            count => [id(1), id(count)].join(" … "),
        }
    }

    /// Applies the user's input.
    ///
    /// # Errors
    /// When the input does not answer the question. The state is unchanged then.
    pub fn answer(&mut self, input: Input) -> Result<Vec<Note>, Refusal> {
        match input {
            Input::Quit => {
                self.left = true;
                Ok(Vec::new())
            }
            Input::Explain | Input::Picture => Ok(Vec::new()),
            Input::Back => self.back().map(|()| Vec::new()),
            input => match self.here() {
                Some(place) if input == Input::NotBought && place.step.to_buy => {
                    let key = format!("{}.bought", place.part());
                    self.draft.answers.insert(key, Said::is("no"));
                    self.take(&place, Input::Unknown)
                }
                // The whole generator was already marked as not bought.
                Some(place)
                    if input == Input::NotBought && place.step.id == OUTLET_LIST && self.may_be_unknown(&place) =>
                {
                    self.take(&place, Input::Unknown)
                }
                Some(place) => self.take(&place, input),
                None => self.pick_line(input).map(|()| Vec::new()),
            },
        }
    }

    fn back(&mut self) -> Result<(), Refusal> {
        let previous_of = |flow: &[Place], before: usize| {
            before.checked_sub(1).map(|at| Cursor::At { key: flow[at].key(), from_page: None })
        };
        let next = match &self.cursor {
            Cursor::Part(_) => Some(Cursor::Front),
            Cursor::At { from_page: Some(page), .. } => {
                let page = page_cursor(page);
                Some(self.look_back().unwrap_or(page))
            }
            // A reopened plan starts on the review page, so going back from there asks whether to quit.
            Cursor::Front if self.draft.plan.is_some() && self.here().is_none() => {
                Some(Cursor::Part(review::QUIT.into()))
            }
            Cursor::At { .. } | Cursor::Front => {
                let flow = self.flow();
                let at = match self.here() {
                    Some(place) => flow.iter().position(|other| *other == place).unwrap_or(flow.len()),
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
        if place.step.id == lists::INSIDE
            && said.text() == Some("done")
            && self.nothing.replace(place.key()) != Some(place.key())
        {
            return Err(Refusal::new("nothing-inside"));
        }
        let before = self.draft.clone();
        let was_plugged = self.plugged_in();
        let adding = self.is_adding();
        let added = if let (Takes::Many(_), Some(text)) = (place.step.takes, said.text()) {
            self.keep_marked(place, text, adding)
        } else {
            self.keep(place, said);
            Ok(None)
        };
        let added = match added {
            Ok(_) if overfills(&before, &self.draft) => Err(Refusal::new("full")),
            added => added,
        };
        let added = match added {
            Ok(added) => added,
            Err(refusal) => {
                self.draft = before;
                return Err(refusal);
            }
        };
        self.cursor = match &self.cursor {
            _ if self.looking.is_some() => self.look_on(),
            Cursor::At { from_page: Some(page), .. } => page_cursor(page),
            // Walk forward through questions that are already answered.
            Cursor::At { .. } => self.after(place),
            _ => Cursor::Front,
        };
        // A change made on a page may have opened new questions, which come first.
        if let Cursor::Part(part) = &self.cursor
            && (self.front().is_some() || !self.parts().contains(part) || part == "add")
        {
            self.cursor = Cursor::Front;
        }
        let plugged = self.plugged_notes(&was_plugged);
        let notes = self.notes(place).into_iter().chain(plugged);
        Ok(added.into_iter().chain(notes).collect())
    }

    /// Returns the position of the question after this one.
    fn after(&self, place: &Place) -> Cursor {
        let mut flow = self.flow().into_iter();
        let here = flow.by_ref().any(|other| other == *place || other.key() == place.key());
        let next = flow.next().filter(|next| here && self.is_answered(next));
        next.map_or(Cursor::Front, |next| Cursor::At { key: next.key(), from_page: None })
    }

    /// Drops a load's identity and figures, which belong to its previous kind. Answers about how it is used stay.
    fn forget_figures(&mut self, n: u8) {
        for field in ["id", "name", "kind", "running", "starting", "power_factor", "continuous", "voltage"] {
            self.draft.answers.remove(&format!("load.{n}.{field}"));
        }
    }

    /// Returns the peak given earlier without a running power, if it is above this running power.
    fn peak_beside(&self, rated: &str) -> Option<String> {
        let told = match self.draft.get("generator.rated")? {
            Said::Unknown => "generator.peak",
            _ if self.draft.text("generator.figure") == Some("peak") => "generator.rated",
            _ => return None,
        };
        let peak = self.draft.text(told)?;
        let [least, most] = [rated, peak].map(|text| bounds::RATED.read(text));
        (least.ok()? < most.ok()?).then(|| peak.to_owned())
    }

    /// Stores an answer. A receptacle shape may carry its breaker with it. If it does not, the breaker is asked about.
    fn keep(&mut self, place: &Place, said: Said) {
        let key = place.key();
        let other = self.draft.get(&key).is_some_and(|before| *before != said);
        if place.step.id == "generator-rated"
            && let Some(Ok((rated, peak))) = said.text().map(form::watts)
        {
            let peak = peak.or_else(|| self.peak_beside(&rated));
            let answers = &mut self.draft.answers;
            if other {
                // The old peak and figure belong to the old rating.
                answers.remove("generator.peak");
                answers.remove("generator.figure");
            }
            answers.extend(peak.map(|peak| ("generator.peak".to_owned(), Said::Is(peak))));
            answers.insert(key, Said::Is(rated));
            return;
        }
        if place.step.id == OUTLET_LIST {
            // The user does not know the outlets, so drop any that were listed.
            self.draft.answers.retain(|key, _| !key.starts_with("outlet."));
        }
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
        let default = || self.usual(place);
        match input {
            Input::Answer(text) if text.trim().is_empty() => default().ok_or_else(|| {
                match step.takes {
                    Takes::Typed(form) => form.check("").err(),
                    Takes::Many(_) => Some(Refusal::new("mark-one")),
                    _ => None,
                }
                .unwrap_or_else(|| Refusal::new("choice"))
            }),
            Input::Answer(text) => {
                let text = text.trim();
                match step.takes {
                    Takes::YesNo => Ok(Said::is(text.to_lowercase())),
                    // An id is one word, so "Dad’s cord" becomes "Dads-cord".
                    Takes::Typed(Form::Ident) => {
                        let words: Vec<&str> = text.split_whitespace().collect();
                        Ok(Said::Is(words.join("-").replace(['\'', '’'], "")))
                    }
                    _ => Ok(Said::is(text)),
                }
            }
            Input::Skip if step.none => Ok(Said::None),
            Input::Skip => default().ok_or_else(|| Refusal::new("no-skip")),
            Input::Unknown if self.may_be_unknown(place) => Ok(Said::Unknown),
            // Without a color, it goes by what it is.
            Input::Unknown if step.id == "gear-color" => default().ok_or_else(|| Refusal::new("no-unknown")),
            // A part whose shape nobody can name must not be used, so it has no place in a plan.
            Input::Unknown if matches!(step.field, "face" | "faces" | "outs" | "plug" | "ends") => {
                Err(Refusal::new("unknown-shape"))
            }
            Input::Unknown | Input::NotBought => Err(Refusal::new("no-unknown")),
            Input::Back | Input::Explain | Input::Picture | Input::Quit => Err(Refusal::new("choice")),
        }
    }

    /// Checks that this answers the question, given the other answers.
    fn check(&self, place: &Place, said: &Said) -> Result<(), Refusal> {
        let step = place.step;
        let text = match said {
            Said::Unknown if self.may_be_unknown(place) => return Ok(()),
            Said::None if step.none => return Ok(()),
            // One of the program's own names, which is always valid.
            Said::Word(_) if matches!(step.takes, Takes::Typed(Form::Name)) => return Ok(()),
            Said::Word(_) => return Err(Refusal::new("choice")),
            Said::Unknown | Said::None => return Err(Refusal::new("no-unknown")),
            Said::Is(text) => text,
        };
        match step.takes {
            Takes::YesNo if matches!(text.as_str(), "yes" | "no") => {}
            Takes::YesNo => return Err(Refusal::new("yes-no")),
            Takes::Many(_) => self.check_marked(place, text, &place.items(&self.draft))?,
            Takes::Typed(form) => form.check(text).map_err(|reject| {
                let row = format!("ask-{}.row", step.id);
                reject.with("field", Value::Word(row))
            })?,
            _ if place.items(&self.draft).iter().all(|item| item.value != *text) => {
                return Err(Refusal::new("choice"));
            }
            _ => {}
        }
        self.check_against_others(place, text)
    }

    /// Whether a stored answer was valid by itself but now contradicts another one.
    fn clashes(&self, place: &Place) -> bool {
        match (place.step.takes, self.draft.text(&place.key())) {
            (Takes::Typed(form), Some(text)) => {
                form.check(text).is_ok() && self.check_against_others(place, text).is_err()
            }
            // Its socket may be taken by now.
            (Takes::Pick(_), Some(text)) if place.step.id == "load-on" => {
                let items = place.items(&self.draft);
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
            "load-draw" | "load-plug" | "load-factor" => match build::beyond_plug(draft, n, place.step.field, text) {
                Some((amps, plug)) => Err(Refusal::new("plug-amps")
                    .with("amps", Amount::of(amps))
                    .with("plug", plug.to_string())
                    .with("rating", Amount::of(plug.0.rating()))),
                None => Ok(()),
            },
            "out-leg" => {
                let (told, there) = (form::legs(text)?.len(), parts::out_count(draft, n, place.at.m));
                if told == 1 || told == usize::from(there) {
                    Ok(())
                } else {
                    Err(Refusal::new("legs-count").with("count", there.to_string()))
                }
            }
            "outlet-trips" => {
                let trips = form::quantity(text, &bounds::TRIPS_AT)?;
                match breaker(draft, n) {
                    Some((most, marked)) if trips > most => Err(Refusal::new("trips").with("marked", marked)),
                    _ => Ok(()),
                }
            }
            "outlet-shares" => {
                let other = parts::shared(draft, n, text).map(|other| breaker(draft, other));
                match (breaker(draft, n), other) {
                    // Outlets behind one breaker must have the same breaker rating.
                    (Some((own, marked)), Some(other)) if other.as_ref().map(|o| o.0) != Some(own) => {
                        let other = other.map_or_else(|| Value::word("shown-unknown"), |o| o.1);
                        Err(Refusal::new("shares").with("own", marked).with("other", other))
                    }
                    _ => Ok(()),
                }
            }
            "site-sleepers" => not_zero(form::quantity(text, &bounds::SLEEPERS_AT)?),
            "gear-length" => not_zero(form::quantity(text, &bounds::LENGTH)?),
            "gear-color" if parts::has_color_of_other(draft, n, text) => Err(Refusal::new("ident-taken")),
            "outlet-name" | "gear-name" => {
                let own = place.part() + ".";
                let ids = Ids::new(draft);
                let loads = parts::load_ids(draft, &ids);
                let mut taken = loads.iter().map(|(_, id)| id.as_str());
                if taken.any(|id| id == text)
                    || ids.all().any(|(part, id)| id == text && !(part + ".").starts_with(&own))
                {
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
    if length > Length::ZERO { Ok(()) } else { Err(Refusal::new("zero")) }
}

/// Returns the breaker rating of a generator outlet, as a current and as the user wrote it.
fn breaker(draft: &Draft, n: u8) -> Option<(Current, Value)> {
    let text = draft.text(&format!("outlet.{n}.breaker"))?;
    let marked = bounds::BREAKER.read(text).ok()?;
    Some((marked, Value::Numbers(text.to_owned())))
}

/// Whether there are now more parts or loads than a plan may have, and more than there were before.
fn overfills(before: &Draft, now: &Draft) -> bool {
    let more = |count: fn(&Draft) -> usize, most: usize| count(now) > most.max(count(before));
    more(parts::count, MOST_PARTS) || more(parts::load_count, MOST_LOADS)
}

fn page_cursor(page: &str) -> Cursor {
    if page == "review" { Cursor::Front } else { Cursor::Part(page.to_owned()) }
}
