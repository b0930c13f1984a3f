//! Ids and references to them. Finds duplicate ids, plugs into nothing, and loops.

use std::collections::BTreeMap;
use std::ops::Range;

use super::fields::Sink;
use super::nearest;
use super::problem::{Refusal, Value};
use crate::plan::{Id, Plan};
use crate::quantity::Current;

/// What an id names.
#[derive(Clone, Debug)]
pub(super) enum Owner {
    /// The generator, as the owner of outlets.
    Generator,
    /// A box without a usable id, as the owner of outlets.
    Nobody,
    /// A box, as the owner of outlets.
    OutletOf {
        /// The id of the box.
        box_id: Id,
    },
    /// An outlet.
    Outlet {
        /// The box it belongs to. `None` for an outlet of the generator or of a box without a usable id.
        of: Option<Id>,
        /// Whether it shares the breaker of another outlet.
        shares: bool,
    },
    /// A cord.
    Cord {
        /// The number of receptacles. `None` if the ends could not be read.
        ends: Option<usize>,
    },
    /// A box.
    Box,
    /// A camper. A load may refer to it by this id, but a cord may not.
    Camper,
    /// A load.
    Load,
}

impl Owner {
    /// Returns an outlet of this owner.
    pub(super) fn outlet(&self, shares: bool) -> Self {
        Self::Outlet {
            of: match self {
                Self::OutletOf { box_id } => Some(box_id.clone()),
                _ => None,
            },
            shares,
        }
    }
}

/// A reference to an id.
#[derive(Clone, Debug)]
pub(super) struct Reference {
    key: &'static str,
    /// The part that is plugged in. `None` for a load.
    part: Option<Id>,
    to: Id,
    span: Range<usize>,
}

struct Share {
    outlet: Id,
    to: Id,
    breaker: Option<Current>,
    span: Range<usize>,
}

/// All ids of a plan and the references to them.
#[derive(Default)]
pub(super) struct Names {
    defined: BTreeMap<Id, (Range<usize>, Owner)>,
    order: Vec<Id>,
    references: Vec<Reference>,
    strays: Vec<(&'static str, String, Range<usize>)>,
    shares: Vec<Share>,
    breakers: BTreeMap<Id, Current>,
    /// The number of loads, counting several identical loads one by one.
    pub(super) loads: usize,
    duplicates: usize,
    text: String,
}

/// The most duplicate ids that are reported, so that a file full of them is refused quickly.
const MOST_DUPLICATES: usize = 100;

impl Names {
    pub(super) fn new(text: &str) -> Self {
        Self { text: text.to_owned(), ..Self::default() }
    }

    pub(super) fn define(&mut self, sink: &Sink, id: Id, span: Range<usize>, owner: Owner) {
        if let Some((first, _)) = self.defined.get(&id) {
            // Finding the line of a duplicate takes a scan of the text.
            self.duplicates += 1;
            if self.duplicates > MOST_DUPLICATES {
                return;
            }
            let before = self.text.get(..first.start).unwrap_or_default();
            let line = before.matches('\n').count() + 1;
            let why = Refusal::new("duplicate-id").with("id", id.to_string());
            let why = why.with("line", line.to_string());
            sink.put_second(span, why, first.clone());
            return;
        }
        if id.as_str() == Id::SET {
            sink.put(span.clone(), Refusal::new("sets-id").with("id", id.to_string()));
        }
        self.order.push(id.clone());
        self.defined.insert(id, (span, owner));
    }

    pub(super) fn plug_in(&mut self, key: &'static str, part: Option<Id>, to: Id, span: Range<usize>) {
        self.references.push(Reference { key, part, to, span });
    }

    /// Records a reference that cannot be the name of anything.
    pub(super) fn stray(&mut self, key: &'static str, text: &str, span: Range<usize>) {
        self.strays.push((key, text.to_owned(), span));
    }

    pub(super) fn share(&mut self, outlet: Id, to: Id, breaker: Option<Current>, span: Range<usize>) {
        self.shares.push(Share { outlet, to, breaker, span });
    }

    pub(super) fn breaker(&mut self, id: Id, breaker: Current) {
        self.breakers.entry(id).or_insert(breaker);
    }

    /// Returns the number of parts: outlets, boxes, and every end of a cord.
    pub(super) fn parts(&self) -> usize {
        self.defined
            .values()
            .map(|(_, owner)| match owner {
                Owner::Load => 0,
                Owner::Cord { ends } => ends.unwrap_or(1).max(1),
                _ => 1,
            })
            .sum()
    }

    /// Whether the id names a camper.
    pub(super) fn is_camper(&self, id: &Id) -> bool {
        matches!(self.defined.get(id), Some((_, Owner::Camper)))
    }

    /// Returns every receptacle, as `from` and `on` name it, in the order of the file.
    fn receptacles(&self) -> impl Iterator<Item = Id> {
        self.order.iter().flat_map(|id| match self.defined.get(id).map(|(_, owner)| owner) {
            Some(Owner::Outlet { .. }) => vec![id.clone()],
            Some(Owner::Cord { ends }) => ends_of(id, *ends),
            _ => Vec::new(),
        })
    }

    /// Returns the canonical form of a reference: a cord with one end has no end numbers.
    fn canonical(&self, reference: &Id) -> Id {
        if let Some((base, number)) = split_end(reference)
            && let Some((_, Owner::Cord { ends: Some(1) })) = self.defined.get(&base)
            && number == 1
        {
            return base;
        }
        reference.clone()
    }

    /// Reports references to nothing, loops, and outlets that cannot share a breaker.
    pub(super) fn check(&self, sink: &Sink) {
        let receptacles: Vec<Id> = self.receptacles().collect();
        for reference in &self.references {
            let to = self.canonical(&reference.to);
            let inside = reference.key == "on" && self.is_camper(&to);
            if inside || receptacles.contains(&to) || self.ends_unknown(&to) {
                continue;
            }
            let base = split_end(&to).map_or_else(|| to.clone(), |(base, _)| base);
            let found = to.to_string();
            let why = if self.defined.contains_key(&base) {
                let own = self.receptacles_of(&base);
                let own = (!own.is_empty()).then_some(Value::All(own));
                Refusal::new("not-a-receptacle").near("allowed", own)
            } else {
                let campers = self.order.iter().filter(|id| self.is_camper(id));
                let campers = campers.filter(|_| reference.key == "on");
                let ids = receptacles.iter().chain(campers).map(Id::as_str);
                Refusal::new("unknown-reference").near("nearest", nearest(&found, ids))
            };
            let why = why.found(&found).with("key", reference.key);
            sink.put(reference.span.clone(), why);
        }
        for (key, text, span) in &self.strays {
            let near = nearest(text, receptacles.iter().map(Id::as_str));
            let why = Refusal::new(unknown(key)).near("nearest", near);
            sink.put(span.clone(), why.found(text).with("key", *key));
        }
        self.check_rings(sink);
        self.check_shares(sink);
    }

    /// Whether the reference is to a cord whose ends could not be read, so that any end may be there.
    fn ends_unknown(&self, reference: &Id) -> bool {
        let base = split_end(reference).map_or_else(|| reference.clone(), |(base, _)| base);
        matches!(self.defined.get(&base), Some((_, Owner::Cord { ends: None })))
    }

    /// Returns the names of the receptacles of a part.
    fn receptacles_of(&self, part: &Id) -> Vec<String> {
        let ids: Vec<Id> = match self.defined.get(part).map(|(_, owner)| owner) {
            Some(Owner::Cord { ends }) => ends_of(part, *ends),
            Some(Owner::Box | Owner::Camper) => {
                self.order.iter().filter(|id| self.part_of(id).as_ref() == Some(part)).cloned().collect()
            }
            Some(Owner::Outlet { .. }) => vec![part.clone()],
            _ => Vec::new(),
        };
        ids.iter().map(ToString::to_string).collect()
    }

    /// Returns the cord or box that a receptacle belongs to. `None` at the generator.
    fn part_of(&self, receptacle: &Id) -> Option<Id> {
        let base = split_end(receptacle).map_or_else(|| receptacle.clone(), |(base, _)| base);
        match self.defined.get(&base) {
            Some((_, Owner::Outlet { of, .. })) => of.clone(),
            Some((_, Owner::Cord { .. })) => Some(base),
            _ => None,
        }
    }

    fn check_rings(&self, sink: &Sink) {
        let feeds: BTreeMap<&Id, (Id, &Range<usize>)> = self
            .references
            .iter()
            .filter_map(|reference| {
                let part = reference.part.as_ref()?;
                Some((part, (self.part_of(&reference.to)?, &reference.span)))
            })
            .collect();
        let mut seen: Vec<&Id> = Vec::new();
        for start in &self.order {
            let mut way: Vec<&Id> = Vec::new();
            let mut at = start;
            while let Some((next, _)) = feeds.get(at) {
                if seen.contains(&at) {
                    break;
                }
                if let Some(begin) = way.iter().position(|part| *part == at) {
                    let ring: Vec<String> = way[begin..].iter().map(ToString::to_string).collect();
                    let key = if ring.len() == 1 { "loop-self" } else { "loop" };
                    if let Some((_, span)) = feeds.get(at) {
                        let why = Refusal::new(key).with("through", Value::All(ring));
                        sink.put((*span).clone(), why);
                    }
                    break;
                }
                way.push(at);
                at = next;
            }
            seen.extend(way);
        }
    }

    fn check_shares(&self, sink: &Sink) {
        for share in &self.shares {
            let Some((_, Owner::Outlet { of, .. })) = self.defined.get(&share.outlet) else {
                continue;
            };
            let fellows: Vec<Id> = self
                .order
                .iter()
                .filter(|id| {
                    **id != share.outlet
                        && matches!(self.defined.get(*id),
                            Some((_, Owner::Outlet { of: other, shares: false })) if other == of)
                })
                .cloned()
                .collect();
            let to = share.to.to_string();
            let why = if !self.defined.contains_key(&share.to) {
                let near = nearest(&to, fellows.iter().map(Id::as_str));
                Refusal::new("unknown-share").near("nearest", near)
            } else if !fellows.contains(&share.to) {
                let ids = fellows.iter().map(ToString::to_string);
                let any = (!fellows.is_empty()).then(|| Value::any(ids));
                Refusal::new("bad-share").near("allowed", any)
            } else if share.breaker.is_some() && share.breaker != self.breakers.get(&share.to).copied() {
                Refusal::new("share-differs").with("with", to.clone())
            } else {
                continue;
            };
            sink.put(share.span.clone(), why.found(&to).with("key", "shares"));
        }
    }

    /// Rewrites every reference in its canonical form.
    pub(super) fn settle(&self, plan: &mut Plan) {
        let from = plan.cords.iter_mut().map(|cord| &mut cord.from);
        let boxes = plan.boxes.iter_mut().map(|part| &mut part.from);
        let loads = plan.loads.iter_mut();
        let plugged = loads.flat_map(|load| [&mut load.on, &mut load.now]);
        for reference in from.chain(boxes).chain(plugged) {
            *reference = reference.as_ref().map(|id| self.canonical(id));
        }
    }
}

/// Returns the message key for a reference to a name that nothing has.
fn unknown(key: &str) -> &'static str {
    if key == "shares" { "unknown-share" } else { "unknown-reference" }
}

fn ends_of(cord: &Id, ends: Option<usize>) -> Vec<Id> {
    match ends {
        Some(1) | None => vec![cord.clone()],
        Some(ends) => (1..=ends).map(|number| cord.end(number)).collect(),
    }
}

/// Splits "long.2" into the cord and the number of its end.
fn split_end(reference: &Id) -> Option<(Id, usize)> {
    let (base, number) = reference.as_str().rsplit_once('.')?;
    Some((Id::new(base)?, number.parse().ok()?))
}
