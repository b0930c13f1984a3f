//! What is wrong with a cord or box that is plugged into nothing.

use super::{Refusal, Verdicts, may_be_wet};
use crate::plan::{Answer, Ground, Id, Outlet, Plan};
use crate::quantity::Current;
use crate::supply::{NodeIx, Supply};
use crate::tables::shape::{Plug, Receptacle};

/// A breaker that protects anything a cord or box is made of: 5 A (common practice, no source).
const PROTECTS_ALL: Current = Current::from_milliamps(5_000);

/// Returns the plan with this cord or box at its best: alone but for what is plugged into it, on ground that is not
/// wet, in an outlet of its shape with this breaker. What is wrong there is wrong anywhere. `None` if the generator has
/// no outlet.
fn at_its_best(plan: &Plan, part: &Id, plug: Plug, breaker: Current) -> Option<Plan> {
    let mut best = plan.clone();
    let outlet = best.generator.outlets.first()?.id.clone();
    best.loads.clear();
    if may_be_wet(plan) {
        best.site.ground = Answer::Known(Ground::Damp);
    }
    best.generator.bonding_plug = Answer::Known(false);
    best.generator.bonding_plug_in = None;
    best.generator.outlets = vec![Outlet {
        id: outlet.clone(),
        shape: Receptacle(plug.0),
        sockets: Some(1),
        breaker: Answer::Known(breaker),
        gfci: Answer::Known(false),
        ..Outlet::default()
    }];
    // What is plugged into the generator now is left out.
    let at_set = |from: &Id| plan.generator.outlets.iter().any(|it| it.id == *from);
    for (id, from) in best.gear_mut() {
        from.take_if(|from| at_set(from));
        if id == part {
            *from = Some(outlet.clone());
        }
    }
    Some(best)
}

/// Returns why a cord or box must not be used wherever it is plugged in, if so, with the faulty part and the plan that
/// shows it. What is wrong behind any breaker comes before what a breaker of its own size does not stop.
pub(crate) fn wrong_anywhere(plan: &Plan, part: &Id) -> Option<(Refusal, Id, Plan)> {
    let plug = plan.gear_of(part)?.plug?;
    let mut breakers = [PROTECTS_ALL, plug.0.rating()].into_iter();
    breakers.find_map(|breaker| wrong_on(part, at_its_best(plan, part, plug, breaker)?))
}

fn wrong_on(part: &Id, best: Plan) -> Option<(Refusal, Id, Plan)> {
    let supply = Supply::build(&best);
    let verdicts = Verdicts::of(&best, &supply);
    let at = supply.nodes.iter().position(|node| node.kind.is_gear() && node.id == *part);
    let at = NodeIx(at?);
    let refusal = verdicts.refused(at)?;
    Some((refusal, supply.node(refusal.at).id.clone(), best))
}
