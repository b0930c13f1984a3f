//! What protects each part of the supply from too much current: a proof that a reader can follow line by line.

use super::Protection;
use crate::plan::{Answer, Id, Plan};
use crate::supply::{NodeIx, NodeKind, Supply};
use crate::tables::conductor::CORD_SET_CIRCUIT;
use crate::tables::shape::Plug;
use crate::verdict::{Allowance, Cause, Overcurrent, Verdicts, own_limit, stands};

/// Returns one entry for each receptacle, cord, inlet and wire, in tree order, with a listed box's wiring covered by
/// its listing. Then one for the own cord of each load that is plugged in.
pub(super) fn protection<'a>(
    plan: &Plan,
    supply: &Supply,
    verdicts: &Verdicts<'_>,
    plugged_in: impl Iterator<Item = (&'a Id, Plug, NodeIx)>,
) -> Vec<Protection> {
    let mut list = Vec::new();
    for (ix, node) in supply.points() {
        let part = match node.kind {
            NodeKind::Source | NodeKind::Breaker { .. } => continue,
            // The wiring inside a camper is its maker's.
            _ if supply.inside(ix) => {
                list.push(Protection {
                    id: node.id.clone(),
                    part: "wiring",
                    rating: None,
                    breaker: node.protected_at.map(|(_, amps)| amps),
                    breaker_at: (node.protected_at).map(|(ix, _)| supply.node(ix).id.clone()),
                    by: "listing",
                });
                continue;
            }
            NodeKind::Wiring => "wiring",
            NodeKind::Receptacle { .. } => "receptacle",
            NodeKind::Cord { .. } => "cord",
            NodeKind::Inlet { .. } => "inlet",
        };
        let unprotected = verdicts.refused(ix).is_some_and(|it| it.at == ix && it.cause == Cause::Unprotected);
        let by = match Overcurrent::of(plan, supply, ix) {
            // A splitter is refused for its ends.
            _ if unprotected => "nothing",
            Overcurrent::NotNeeded => continue,
            Overcurrent::Breaker(_) => "breaker",
            Overcurrent::Source => "generator",
            Overcurrent::Allowed { by, .. } => match by {
                Allowance::CordSet => "cord-set",
                Allowance::Receptacles => "receptacles",
            },
            // Few receptacles are single ones. Rule OVER001 says what to look at.
            Overcurrent::Single { sure: false, .. } => "receptacles",
            Overcurrent::Single { sure: true, .. } => "single",
            Overcurrent::Camper { .. } => "camper-main",
            Overcurrent::Unknown | Overcurrent::TooHigh { .. } => "nothing",
        };
        let breaker = node.protected_at;
        list.push(Protection {
            id: node.id.clone(),
            part,
            rating: Some(if by == "generator" { stands(plan, supply, ix) } else { node.laid_out }),
            breaker: breaker.map(|(_, amps)| amps),
            breaker_at: breaker.map(|(ix, _)| supply.node(ix).id.clone()),
            by,
        });
    }
    // The wiring that the tree leaves out because a laboratory tested it.
    for holder in &plan.boxes {
        for outlet in &holder.outlets {
            if supply.receptacle(&outlet.id).is_some()
                && holder.is_listed() == Answer::Known(true)
                && !outlet.wire.is_known()
            {
                list.push(Protection {
                    id: outlet.id.clone(),
                    part: "wiring",
                    rating: None,
                    breaker: None,
                    breaker_at: None,
                    by: "listing",
                });
            }
        }
    }
    list.extend(plugged_in.map(|(load, plug, at)| own_cord(plan, supply, load, plug, at)));
    list
}

/// Returns the entry for the own cord of a load at a receptacle. It is protected by a breaker no larger than its plug;
/// by a generator that cannot give more; as part of a listed appliance, on a circuit of up to 20 A or where the
/// generator gives no more than that (240.5(B)(1)); or by the main breaker of a camper.
fn own_cord(plan: &Plan, supply: &Supply, load: &Id, plug: Plug, at: NodeIx) -> Protection {
    let breaker = supply.node(at).protected_at;
    let rating = plug.0.rating();
    let spares = |amps| own_limit(plan, supply).is_some_and(|own| own.spares(amps));
    let camper =
        || supply.up(at).any(|(ix, _)| matches!(Overcurrent::of(plan, supply, ix), Overcurrent::Camper { .. }));
    let by = match breaker {
        Some((_, amps)) if amps <= rating => "breaker",
        _ if spares(rating) => "generator",
        Some((_, amps)) if amps <= CORD_SET_CIRCUIT || spares(CORD_SET_CIRCUIT) => "appliance-cord",
        _ if camper() => "camper-main",
        _ => "nothing",
    };
    Protection {
        id: load.clone(),
        part: "appliance-cord",
        rating: Some(rating),
        breaker: breaker.map(|(_, amps)| amps),
        breaker_at: breaker.map(|(ix, _)| supply.node(ix).id.clone()),
        by,
    }
}

#[cfg(test)]
mod tests {
    use crate::report::Protection;
    use crate::rules::testing::report;

    fn by(edits: &[(&str, &str)], id: &str, part: &str) -> Option<&'static str> {
        let is = |proof: &&Protection| proof.id.as_str() == id && proof.part == part;
        let report = report(edits);
        report.figures.protection.iter().find(is).map(|it| it.by)
    }

    /// Every allowance is named, and a part without one is reported as unprotected. The clauses are those of NFPA 70
    /// (NEC): 240.5(B)(4) (confirmed); 240.5(B)(3) and (B)(1), 210.21(B)(3) (from a secondary copy).
    #[test]
    fn each_part_has_its_breaker_or_its_allowance_by_name() {
        assert_eq!(by(&[], "long", "cord"), Some("breaker"));
        assert_eq!(by(&[], "left", "wiring"), Some("breaker"));
        assert_eq!(by(&[], "left", "receptacle"), Some("breaker"));
        assert_eq!(by(&[], "kettle", "appliance-cord"), Some("breaker"));
        // A 15 A duplex on a 20 A breaker, with a kettle's 15 A plug in it.
        let twenty = [("breaker = \"15 A\" # left", "breaker = \"20 A\"")];
        assert_eq!(by(&twenty, "left", "receptacle"), Some("receptacles"));
        let thick = [twenty[0], ("wire = \"14 AWG\" # left", "wire = \"12 AWG\"")];
        assert_eq!(by(&thick, "kettle", "appliance-cord"), Some("appliance-cord"));
        // In a box, 14 AWG is for 15 A.
        assert_eq!(by(&twenty, "left", "wiring"), Some("nothing"));
        let unsaid = [("wire = \"14 AWG\" # left", "")];
        assert_eq!(by(&unsaid, "left", "wiring"), Some("listing"));
        // A generator that gives 15 A, and 20 A for a moment, behind a 30 A breaker.
        let small = [
            ("inverter = false", "inverter = true"),
            ("rated = \"3600 W\"", "rated = \"1800 W\""),
            ("peak = \"4500 W\"", "peak = \"2400 W\""),
            ("breaker = \"15 A\" # left", "breaker = \"30 A\""),
        ];
        for part in ["receptacle", "wiring"] {
            assert_eq!(by(&small, "left", part), Some("generator"));
        }
        assert_eq!(by(&small, "kettle", "appliance-cord"), Some("generator"));
        assert_eq!(by(&small[1..], "left", "wiring"), Some("nothing"));
        // A 16 AWG cord set on a 20 A circuit, then on 30 A.
        let set = [
            ("from = \"twist\"\nplug = \"L5-30P\"", "from = \"front\"\nplug = \"5-20P\""),
            ("ends = [\"L5-30R\"]", "ends = [\"5-15R\"]"),
            ("wire = \"10 AWG\"", "wire = \"16 AWG\""),
        ];
        assert_eq!(by(&set, "long", "cord"), Some("cord-set"));
        assert_eq!(by(&set, "long", "receptacle"), Some("cord-set"));
        assert_eq!(by(&[("wire = \"10 AWG\"", "wire = \"16 AWG\"")], "long", "cord"), Some("nothing"));
    }

    /// The rule and the proof agree on what is unprotected. A part protected only by a camper's own main breaker is a
    /// finding too.
    #[test]
    fn the_proof_and_the_rule_agree() {
        let is_told = |by: &str| matches!(by, "nothing" | "single" | "camper-main");
        for rule in crate::rules::all() {
            for edits in rule.fires {
                let report = report(edits);
                let named: Vec<&str> = report
                    .findings
                    .iter()
                    // An unknown breaker is only a caution where the generator itself is enough, and so is an unknown
                    // number of receptacles.
                    .filter(|found| found.code == "OVER001")
                    .filter(|found| !matches!(found.fix.key, "own" | "single-look"))
                    .flat_map(|found| found.about.iter().map(crate::plan::Id::as_str))
                    .collect();
                for proof in &report.figures.protection {
                    if is_told(proof.by) && proof.part != "appliance-cord" {
                        assert!(named.contains(&proof.id.as_str()), "{proof:?} for {edits:?}");
                    }
                }
                let bare = |id: &&str| {
                    let mut of = report.figures.protection.iter();
                    of.any(|proof| proof.id.as_str() == *id && is_told(proof.by))
                };
                // A splitter may be named only because of its ends.
                assert_eq!(named.is_empty(), !named.iter().any(bare), "{edits:?}");
            }
        }
    }
}
