//! What each receptacle carries, and which feeds several of them share, in terms of ids.

use super::{Acts, Limit, SetBy, Shock, ShockState};
use crate::plan::{Id, Leg};
use crate::quantity::{Current, Power};
use crate::supply::{self, LimitReason, NodeIx, NodeKind, Supply};
use crate::verdict::{Protection, Verdicts};

/// Returns the limit of every receptacle, in tree order.
pub(crate) fn limits(supply: &Supply, verdicts: &Verdicts<'_>) -> Vec<Limit> {
    supply
        .receptacles()
        .map(|(ix, node, shape, _)| {
            let limit = supply.limit(ix);
            let volts = supply.volts_at(ix);
            Limit {
                id: node.id.clone(),
                inside: supply.inside(ix),
                shape,
                volts,
                marked_amps: supply.own_breaker(ix).unwrap_or(shape.0.rating()),
                continuous_amps: limit.continuous,
                short_amps: limit.short,
                continuous_watts: Power::of_capacity(limit.continuous, volts),
                short_watts: Power::of_capacity(limit.short, volts),
                continuous_set_by: set_by(supply, limit.continuous_by),
                set_by: set_by(supply, limit.short_by),
                acts: acts(supply, limit.acts),
                legs: supply.node(ix).legs.all(),
                gfci: verdicts.protected(ix),
                shock: shock(supply, verdicts.protection(ix)),
                path: supply.path(ix),
            }
        })
        .collect()
}

/// What a cord, a box's inlet or a receptacle carries, for everything on it together.
#[derive(Clone, Debug)]
pub(crate) struct Feed {
    /// The current for three hours or more, on each leg.
    pub continuous_amps: Current,
    /// The current for less than three hours, on each leg.
    pub short_amps: Current,
    /// What sets `short_amps`.
    pub set_by: SetBy,
    /// What acts when `short_amps` is exceeded.
    pub acts: Acts,
    /// The legs that feed it.
    pub legs: &'static [Leg],
}

impl From<&Limit> for Feed {
    fn from(it: &Limit) -> Self {
        Self {
            continuous_amps: it.continuous_amps,
            short_amps: it.short_amps,
            set_by: it.set_by.clone(),
            acts: it.acts.clone(),
            legs: it.legs,
        }
    }
}

impl Feed {
    /// Whether nothing acts when its short-time current is exceeded. False where the generator itself sets the limit,
    /// which has its own message, and where a camper's main breaker is assumed.
    pub(crate) const fn unwatched(&self) -> bool {
        let of_source = matches!(self.set_by.reason, LimitReason::RatedPowerUnguarded | LimitReason::OneLeg);
        matches!(self.acts, Acts::Above { .. } | Acts::Never) && !of_source
    }

    /// Returns the feed of a cord or box. `None` for one that is not plugged in.
    pub(crate) fn of(supply: &Supply, part: &Id) -> Option<Self> {
        let own = || supply.points().filter(|(_, node)| node.id == *part);
        own().find(|(_, node)| node.kind.is_gear())?;
        // A box's main breaker and a camper's inside share its id, and come after its inlet.
        let (at, node) = own().rfind(|(_, node)| !matches!(node.kind, NodeKind::Receptacle { .. }))?;
        let limit = supply.limit(at);
        Some(Self {
            continuous_amps: limit.continuous,
            short_amps: limit.short,
            set_by: set_by(supply, limit.short_by),
            acts: acts(supply, limit.acts),
            legs: node.legs.all(),
        })
    }

    /// Returns the feed that a receptacle shares with others of the same cord or box. `None` where it can supply each
    /// of them up to its own limit.
    pub(crate) fn shared(supply: &Supply, receptacle: &Id, part: &Id) -> Option<Shared> {
        let feed = Self::of(supply, part)?;
        let legs = supply.counts_on(supply.receptacle(receptacle)?);
        let all: Vec<(NodeIx, Current)> = supply
            .receptacles()
            // A receptacle belongs to the nearest cord or inlet upstream.
            .filter(|(at, ..)| {
                let mut above = supply.up(*at);
                let gear = above.find(|(_, node)| node.kind.is_gear());
                gear.is_some_and(|(_, node)| node.id == *part)
            })
            .filter(|(at, ..)| supply.counts_on(*at).iter().any(|leg| legs.contains(leg)))
            .map(|(at, ..)| (at, supply.limit(at).continuous))
            .collect();
        let asked: Current = all.iter().map(|(_, amps)| *amps).sum();
        if asked <= feed.continuous_amps {
            return None;
        }
        let part_at = supply.up(all.first()?.0).find(|(_, node)| node.kind.is_gear());
        let wider = part_at.and_then(|(at, _)| wider(supply, at));
        Some(Shared { ends: wider.is_none().then_some(all.len()), of: wider.unwrap_or_else(|| part.clone()), feed })
    }
}

/// A feed that several receptacles share.
#[derive(Clone, Debug)]
pub(crate) struct Shared {
    /// The part that everything sharing the feed is supplied from.
    pub of: Id,
    /// How many receptacles share it, if they are exactly those of one cord or box.
    pub ends: Option<usize>,
    /// What they share.
    pub feed: Feed,
}

/// Returns the outlet upstream that sets the limit of a cord or box, if it feeds other things as well, or can. These
/// draw on the same limit.
fn wider(supply: &Supply, part: NodeIx) -> Option<Id> {
    let by = supply.limit(part).continuous_by.node;
    let ahead = supply.node(by);
    if matches!(ahead.kind, NodeKind::Source) || by == part {
        return None;
    }
    let on_the_way: Vec<NodeIx> = supply.up(part).map(|(at, _)| at).collect();
    let mut others = supply.receptacles().filter(|(at, ..)| {
        let behind = |ix: NodeIx| supply.up(*at).any(|(above, _)| above == ix);
        behind(by) && !behind(part)
    });
    let more = others.any(|(at, _, _, sockets)| sockets > 1 || !on_the_way.contains(&at));
    more.then(|| ahead.id.clone())
}

/// Returns what sets a limit, in terms of ids.
fn set_by(supply: &Supply, by: supply::SetBy) -> SetBy {
    SetBy { id: supply.node(by.node).id.clone(), reason: by.reason, enforced: by.reason.enforced(), share: by.share }
}

/// Returns what acts when a limit is exceeded, in terms of ids.
fn acts(supply: &Supply, acts: supply::Acts) -> Acts {
    let id = |at: NodeIx| supply.node(at).id.clone();
    match acts {
        supply::Acts::At(at) => Acts::AtLimit { id: id(at) },
        supply::Acts::Assumed(at) => Acts::Assumed { id: id(at) },
        supply::Acts::Above(at, amps) => Acts::Above { id: id(at), amps },
        supply::Acts::Never => Acts::Never,
    }
}

fn shock(supply: &Supply, protection: Protection) -> Shock {
    let id = |at: NodeIx| supply.node(at).id.clone();
    Shock {
        state: match protection {
            Protection::Works(_) => ShockState::Works,
            Protection::Blind { .. } => ShockState::Blind,
            Protection::Doubtful { .. } => ShockState::Doubtful,
            Protection::None => ShockState::None,
        },
        by: protection.device().map(id),
        joint: protection.joint().map(id),
    }
}
