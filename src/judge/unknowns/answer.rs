//! The best answer to each unknown that somebody can find out: a fixed one for the field, or one that depends on the
//! rest of the plan.

use crate::plan::row::Part;
use crate::plan::{Answer, Cord, DistributionBox, Draw, Id, Leg, LoadKind, Outlet, Plan, Uses};
use crate::quantity::{Current, Power};
use crate::supply::{UNKNOWN_RATED, leg_taken};
use crate::tables::shape::{Configuration, Plug, Receptacle};

/// Less than anything worth planning for draws.
const LEAST_DRAW: Power = Power::from_milliwatts(10_000);

/// The shape that most plugs fit.
const HOUSEHOLD: Configuration = Configuration::N5_15;

/// Gives the low answer to a field where more is better in one way and less in another. A peak starts motors but heats
/// wires, so it is set no higher than the rated power. The rated power is set no higher than that of the smallest
/// generators, which overload no wire. `None`, with nothing changed, for any other field.
pub(super) fn answer_low(plan: &mut Plan, field: &str) -> Option<()> {
    let set = &mut plan.generator;
    match field {
        "generator.peak" => set.peak = Answer::Known(set.rated.or(UNKNOWN_RATED)),
        "generator.rated" => {
            let peak = set.peak.known().copied();
            set.rated = Answer::Known(peak.map_or(UNKNOWN_RATED, |peak| peak.min(UNKNOWN_RATED)));
        }
        _ => return None,
    }
    Some(())
}

/// Gives the best answer to a field. `None`, with nothing changed, for a field that has none.
pub(super) fn answer(plan: &mut Plan, field: &str) -> Option<()> {
    // The leg that it is not assumed to be on.
    let other = match leg_taken(plan) {
        Leg::A => Leg::B,
        Leg::B => Leg::A,
    };
    let (path, name) = field.rsplit_once('.')?;
    let (table, id) = path.split_once('.').unwrap_or((path, ""));
    match table {
        "site" => plan.site.answer_best(name)?,
        "generator" => match id.strip_prefix("outlet.") {
            Some(id) => answer_outlet(&mut plan.generator.outlets, other, id, name)?,
            None => answer_set(plan, name)?,
        },
        "box" => {
            let (id, outlet) = id.split_once(".outlet.").map_or((id, None), |(id, outlet)| (id, Some(outlet)));
            let holder = plan.holder_mut(id)?;
            match (outlet, name) {
                (Some(outlet), _) => answer_outlet(&mut holder.outlets, other, outlet, name)?,
                (None, "breaker") => holder.breaker = Answer::Known(holder.inlet.known()?.0.rating()),
                (None, "inlet" | "outlet") => shape_of_box(holder)?,
                (None, _) => holder.answer_best(name)?,
            }
        }
        "cord" => {
            let cord = plan.cord_mut(id)?;
            match name {
                // As many as the plug has contacts.
                "conductors" => {
                    let Plug(shape) = cord.plug.known()?;
                    cord.conductors = Answer::Known(shape.circuit().conductors() + u8::from(shape.grounded()));
                }
                "plug" | "ends" => shape_of_cord(cord),
                _ => cord.answer_best(name)?,
            }
        }
        "load" => {
            let load = plan.load_mut(id)?;
            match name {
                "running" => load.running = Answer::Known(Draw::Power(LEAST_DRAW)),
                // The best kind has unity power factor, no starting current and no use at night. If the draw is unknown
                // too, it is the kind that draws the least.
                "kind" => {
                    let heats = load.running.is_known();
                    let kind = if heats { LoadKind::Cooker } else { LoadKind::Lamp };
                    load.kind = Answer::Known(kind);
                }
                // A start below the running power counts as the running power.
                "starting" => load.starting = Answer::Known(Power::ZERO),
                // A load known to use both voltages may state its amps per half, at best the same on each.
                "legs" if load.voltage.is_known() => {
                    let power = match load.running {
                        Answer::Known(Draw::Power(power)) => power,
                        Answer::Known(Draw::Current(_) | Draw::Motor { .. }) => return None,
                        // The same amps also state the unknown draw.
                        Answer::Missing | Answer::Unknown => LEAST_DRAW,
                    };
                    let each = Current::from_milliamps(power.milliwatts() / 240);
                    load.running = Answer::Known(Draw::Current(each));
                }
                // The same amps are fewer watts.
                "voltage" if matches!(load.running, Answer::Known(Draw::Current(_))) => {
                    load.voltage = Answer::Known(Uses::V120);
                }
                _ => load.answer_best(name)?,
            }
        }
        _ => return None,
    }
    Some(())
}

/// Gives this answer to a field of the site, the generator or a cord. `None` for any other field.
pub(in crate::judge) fn answer_as(plan: &mut Plan, field: &str, text: &str) -> Option<()> {
    fn take<P: Part>(part: &mut P, name: &str, text: &str) -> Option<()> {
        P::row(name)?.take(part, Answer::Known(text));
        Some(())
    }
    let (path, name) = field.rsplit_once('.')?;
    match path.split_once('.') {
        None if path == "site" => take(&mut plan.site, name, text),
        None => take(&mut plan.generator, name, text),
        Some(("cord", id)) => {
            let cord = plan.cord_mut(id)?;
            take(cord, name, text)
        }
        Some(_) => None,
    }
}

fn answer_set(plan: &mut Plan, name: &str) -> Option<()> {
    let set = &mut plan.generator;
    match name {
        // The largest that people carry around, or the peak if it is known.
        "rated" => {
            let most = Power::from_milliwatts(9_000_000);
            set.rated = Answer::Known(set.peak.or(most));
        }
        "peak" => {
            // Twice the rated power. Few generators have more.
            let rated = set.rated.or(UNKNOWN_RATED).milliwatts();
            set.peak = Answer::Known(Power::from_milliwatts(rated.saturating_mul(2)));
        }
        // Where it does the least harm: away from any GFCI, or else in the last outlet.
        "bonding_plug_in" => {
            let household = set.outlets.iter().filter(|it| it.shape.takes(Plug::BONDING));
            let best = household.max_by_key(|it| it.gfci != Answer::Known(true))?;
            set.bonding_plug_in = Some(best.id.clone());
        }
        "kit" | "limit" => set.parallel.as_mut()?.answer_best(name)?,
        _ => set.answer_best(name)?,
    }
    Some(())
}

fn answer_outlet(outlets: &mut [Outlet], other: Leg, id: &str, name: &str) -> Option<()> {
    let outlet = outlets.iter_mut().find(|it| it.id.as_str() == id)?;
    match name {
        "breaker" => outlet.breaker = Answer::Known(outlet.shape.0.rating()),
        "sockets" => outlet.sockets = Some(outlet.shape.usual_sockets()),
        "leg" => outlet.leg = Answer::Known(other),
        _ => outlet.answer_best(name)?,
    }
    Some(())
}

/// Fills in both ends: whoever looks at a cord sees both.
fn shape_of_cord(cord: &mut Cord) {
    cord.plug = Answer::Known(cord.plug.or(Plug(HOUSEHOLD)));
    if !cord.ends.is_known() {
        cord.ends = Answer::Known(vec![Receptacle(HOUSEHOLD)]);
    }
}

/// Fills in the inlet and the receptacles of a box.
fn shape_of_box(holder: &mut DistributionBox) -> Option<()> {
    holder.inlet = Answer::Known(holder.inlet.or(Plug(HOUSEHOLD)));
    if holder.outlets_unknown() {
        let id = Id::new(&format!("outlet-of-{}", holder.id))?;
        holder.outlets = vec![Outlet { id, shape: Receptacle(HOUSEHOLD), ..Outlet::default() }];
    }
    Some(())
}
