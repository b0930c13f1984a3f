//! What each receptacle carries, told in ids.

use super::{Acts, Limit, SetBy, Shock, ShockState};
use crate::quantity::Power;
use crate::supply::{self, NodeIx, Supply};
use crate::verdict::{Protection, Verdicts};

/// The limit of every receptacle, in the order of the tree.
pub(crate) fn limits(supply: &Supply, verdicts: &Verdicts<'_>) -> Vec<Limit> {
    supply
        .receptacles()
        .map(|(ix, node, shape, _)| {
            let limit = supply.limit(ix);
            let volts = supply.volts_at(ix);
            Limit {
                id: node.id.clone(),
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

/// What sets a limit, in ids.
pub(crate) fn set_by(supply: &Supply, by: supply::SetBy) -> SetBy {
    SetBy {
        id: supply.node(by.node).id.clone(),
        reason: by.reason,
        enforced: by.reason.enforced(),
        share: by.share,
    }
}

/// What acts past a limit, in ids.
pub(crate) fn acts(supply: &Supply, acts: supply::Acts) -> Acts {
    let id = |at: NodeIx| supply.node(at).id.clone();
    match acts {
        supply::Acts::At(at) => Acts::AtLimit { id: id(at) },
        supply::Acts::Above(at, amps) => Acts::Above { id: id(at), amps },
        supply::Acts::Never => Acts::Never,
    }
}

fn shock(supply: &Supply, protection: Protection) -> Shock {
    let joint = match protection {
        Protection::Blind { joint, .. } | Protection::Doubtful { joint, .. } => Some(joint),
        Protection::Works(_) | Protection::None => None,
    };
    let id = |at: NodeIx| supply.node(at).id.clone();
    Shock {
        state: match protection {
            Protection::Works(_) => ShockState::Works,
            Protection::Blind { .. } => ShockState::Blind,
            Protection::Doubtful { .. } => ShockState::Doubtful,
            Protection::None => ShockState::None,
        },
        by: protection.device().map(id),
        joint: joint.map(id),
    }
}
