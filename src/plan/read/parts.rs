//! Reads the parts of a plan one by one: how their values agree, what the parts are called and what they refer to. The
//! fields of each part are in [`crate::plan::table`].

use super::fields::{Field, Fields};
use super::problem::{Refusal, Value};
use super::refs::{Names, Owner};
use crate::plan::row::Part;
use crate::plan::{Answer, Cord, DistributionBox, Draw, Generator, Id, Load, Outlet, Plan, Site};
use crate::quantity::{Amount, Quantity};
use crate::tables::shape::Plug;

pub(super) const ROOT: &[&str] = &["format", "region", "language", "site", "generator", "cord", "box", "load"];

/// Reads the whole plan. A value that cannot be read is reported and replaced by a placeholder, so the result is valid
/// only if nothing was reported.
pub(super) fn plan(root: &Fields<'_>, names: &mut Names) -> Plan {
    let region = root.optional("region", Field::choice);
    let site = root.optional("site", |field| field.table(&Site::keys()));
    if root.get("generator").is_none() {
        root.put(Refusal::new("missing-table").with("table", "generator"));
    }
    let generator = root
        .get("generator")
        .and_then(|field| field.table(&with_outlets(Generator::keys())))
        .map(|fields| generator(&fields, names));
    let cords = root.tables("cord", &Cord::keys());
    let cords = cords.iter().map(|fields| cord(fields, names)).collect();
    let boxes = root.tables("box", &with_outlets(DistributionBox::keys()));
    let boxes = boxes.iter().map(|fields| distribution_box(fields, names)).collect();
    let loads = root.tables("load", &Load::keys());
    let loads = loads.iter().map(|fields| load(fields, names)).collect();
    Plan {
        region: region.unwrap_or_default(),
        language: root.optional("language", Field::language),
        site: site.map_or_else(Site::default, |fields| Site::read(&fields)),
        generator: generator.unwrap_or_default(),
        cords,
        boxes,
        loads,
    }
}

fn with_outlets(mut keys: Vec<&'static str>) -> Vec<&'static str> {
    keys.push("outlet");
    keys
}

fn generator(fields: &Fields<'_>, names: &mut Names) -> Generator {
    let mut set = Generator::read(fields);
    at_least(fields, ("peak", set.peak), ("rated", set.rated));
    let place = fields.get("bonding_plug_in");
    // Naming the place of a bonding plug says that it is plugged in, and contradicts an answer that it is not.
    if let Some(place) = &place {
        match set.bonding_plug {
            Answer::Missing => set.bonding_plug = Answer::Known(true),
            Answer::Known(false) => {
                let why = Refusal::new("place-for-no-plug").with("place", place.key);
                place.put(why.with("plug", "bonding_plug"));
            }
            Answer::Known(true) | Answer::Unknown => {}
        }
    }
    // Only boxes are asked for the wire of their outlets.
    let mut keys = Outlet::keys();
    keys.retain(|key| *key != "wire");
    // A generator that is not bought yet may have no outlets yet.
    let none = (set.bought != Some(false)).then_some("no-outlets-generator");
    set.outlets = outlets(fields, &keys, &Owner::Generator, none, names);
    if let Some(place) = place
        && let Some(found) = set.bonding_plug_in.as_ref().map(Id::as_str).or_else(|| place.stray())
    {
        let household = set.outlets.iter().filter(|outlet| outlet.shape.takes(Plug::BONDING));
        let household: Vec<String> = household.map(|outlet| outlet.id.to_string()).collect();
        if !household.iter().any(|outlet| outlet == found) {
            let any = (!household.is_empty()).then_some(Value::All(household));
            place.put(Refusal::new("bonding-plug-elsewhere").found(found).near("allowed", any));
        }
    }
    set
}

fn outlets(
    fields: &Fields<'_>,
    keys: &[&'static str],
    owner: &Owner,
    none: Option<&'static str>,
    names: &mut Names,
) -> Vec<Outlet> {
    // Only the outlets of a box may be unknown.
    if !matches!(owner, Owner::Generator) && fields.get("outlet").is_some_and(|field| field.is_unknown()) {
        return Vec::new();
    }
    let tables = fields.tables("outlet", keys);
    if let Some(none) = none.filter(|_| tables.is_empty()) {
        fields.put(Refusal::new(none));
    }
    let outlet = |fields| outlet(fields, owner, names);
    tables.iter().map(outlet).collect()
}

fn outlet(fields: &Fields<'_>, owner: &Owner, names: &mut Names) -> Outlet {
    let outlet = Outlet::read(fields);
    let breaker = outlet.breaker.known().copied();
    let shares = outlet.shares.as_ref();
    let id = define(fields, &outlet.id, owner.outlet(shares.is_some()), names);
    match (shares, fields.get("shares")) {
        (Some(to), Some(field)) => {
            if let Some(id) = &id {
                names.share(id.clone(), to.clone(), breaker, field.span);
            }
        }
        _ => {
            refer(fields, "shares", None, None, names);
        }
    }
    if let (Some(id), Some(breaker)) = (id, breaker) {
        names.breaker(id, breaker);
    }
    outlet
}

fn cord(fields: &Fields<'_>, names: &mut Names) -> Cord {
    let cord = Cord::read(fields);
    // Nothing can be plugged into unknown ends. Ends that could not be read may be anything.
    let ends = match &cord.ends {
        Answer::Known(ends) => Some(ends.len()).filter(|ends| *ends > 0),
        Answer::Unknown => Some(0),
        Answer::Missing => None,
    };
    let id = define(fields, &cord.id, Owner::Cord { ends }, names);
    refer(fields, "from", id, cord.from.as_ref(), names);
    cord
}

fn distribution_box(fields: &Fields<'_>, names: &mut Names) -> DistributionBox {
    let mut part = DistributionBox::read(fields);
    let owner = if part.is_camper() { Owner::Camper } else { Owner::Box };
    let id = define(fields, &part.id, owner, names);
    refer(fields, "from", id.clone(), part.from.as_ref(), names);
    let owner = id.map_or(Owner::Nobody, |id| Owner::OutletOf { box_id: id });
    let told = part.is_camper() || fields.get("outlet").is_some_and(|field| field.is_unknown());
    let none = (!told).then_some("no-outlets-box");
    part.outlets = outlets(fields, &Outlet::keys(), &owner, none, names);
    part
}

fn load(fields: &Fields<'_>, names: &mut Names) -> Load {
    let mut load = Load::read(fields);
    define(fields, &load.id, Owner::Load, names);
    refer(fields, "on", None, load.on.as_ref(), names);
    refer(fields, "now", None, load.now.as_ref(), names);
    let inside = load.on.as_ref().filter(|on| names.is_camper(on));
    if let (Some(camper), Some(field)) = (inside, fields.get("plug")) {
        field.put(Refusal::new("plug-inside").with("camper", camper.to_string()));
    }
    names.loads += usize::from(load.count);
    let (power, current) = match load.running {
        Answer::Known(Draw::Power(power)) => (Answer::Known(power), Answer::Missing),
        Answer::Known(Draw::Current(amps)) => (Answer::Missing, Answer::Known(amps)),
        _ => (Answer::Missing, Answer::Missing),
    };
    fields.one_of(&["starting", "starting_current"]);
    at_least(fields, ("starting", load.starting), ("running", power));
    let amps = ("starting_current", load.starting_current);
    at_least(fields, amps, ("current", current));
    if load.name.is_empty() {
        load.name = load.id.to_string();
    }
    load
}

/// Records the id of a part and returns it. `None` if it could not be read.
fn define(fields: &Fields<'_>, id: &Id, owner: Owner, names: &mut Names) -> Option<Id> {
    let field = fields.get("id")?;
    if *id == Id::default() {
        return None;
    }
    names.define(fields.sink, id.clone(), field.span, owner);
    Some(id.clone())
}

/// Records what a key refers to, to be looked up after everything is read. Returns the field, if it is there.
fn refer<'t>(
    fields: &Fields<'t>,
    key: &'static str,
    part: Option<Id>,
    to: Option<&Id>,
    names: &mut Names,
) -> Option<Field<'t>> {
    let field = fields.get(key)?;
    match (to, field.stray()) {
        (Some(to), _) => names.plug_in(key, part, to.clone(), field.span.clone()),
        (None, Some(text)) => names.stray(key, text, field.span.clone()),
        (None, None) => {}
    }
    Some(field)
}

/// Reports a figure that is less than its lower limit, the figure of another key.
fn at_least<Q: Quantity>(
    fields: &Fields<'_>,
    (key, figure): (&'static str, Answer<Q>),
    (other, least): (&'static str, Answer<Q>),
) {
    if let (Answer::Known(figure), Answer::Known(least)) = (figure, least)
        && figure < least
        && let Some(field) = fields.get(key)
    {
        let why = Refusal::new("less-than").with("found", Amount::of(figure));
        field.put(why.with("other", other).with("least", Amount::of(least)));
    }
}
