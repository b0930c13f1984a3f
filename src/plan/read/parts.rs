//! The parts of a plan, key by key. What each figure may be is in [`bounds`].

use std::ops::Range;

use super::fields::{Field, Fields};
use super::problem::{ProblemKind, Type};
use super::refs::{Names, Owner};
use crate::plan::{
    Answer, Cord, DistributionBox, Draw, Fuel, Generator, Id, Load, Noise, Outlet, Parallel, Plan,
    Runtime, Site, bounds,
};
use crate::quantity::{Amount, Percent, Quantity};

pub(super) const ROOT: &[&str] = &[
    "format",
    "region",
    "language",
    "site",
    "generator",
    "cord",
    "box",
    "load",
];
const SITE: &[&str] = &[
    "name",
    "ground",
    "sleepers_at",
    "altitude",
    "air",
    "quiet_hours",
    "co_alarm",
    "feeds_building",
    "stands",
    "people_sleep",
];
const GENERATOR: &[&str] = &[
    "name",
    "rated",
    "peak",
    "voltage",
    "neutral",
    "bonding_plug",
    "bonding_plug_in",
    "inverter",
    "fuel",
    "rated_on",
    "parallel",
    "tank",
    "runtime",
    "noise",
    "outlet",
];
const OUTLET: &[&str] = &[
    "id", "shape", "sockets", "breaker", "shares", "trips_at", "gfci", "leg",
];
const BOX_OUTLET: &[&str] = &[
    "id", "shape", "sockets", "breaker", "shares", "trips_at", "gfci", "wire", "leg",
];
const CORD: &[&str] = &[
    "id",
    "from",
    "plug",
    "ends",
    "wire",
    "conductors",
    "length",
    "outdoor",
    "coiled",
    "gfci",
];
const BOX: &[&str] = &["id", "from", "inlet", "listed", "bond", "outlet"];
const LOAD: &[&str] = &[
    "id",
    "name",
    "kind",
    "running",
    "current",
    "motor",
    "count",
    "starting",
    "starting_current",
    "power_factor",
    "continuous",
    "wanted",
    "hours",
    "plug",
    "voltage",
    "on",
    "backup",
    "now",
];

/// The whole plan, or `None` when something was reported without which there is none.
pub(super) fn plan(root: &Fields<'_>, names: &mut Names) -> Option<Plan> {
    let region = root.optional("region", |field| field.choice(false));
    let language = root.optional("language", Field::language);
    let site = root
        .optional("site", |field| field.table(SITE))
        .map(|fields| site(&fields));
    let generator = match root.get("generator") {
        None => {
            root.sink.put(
                root.span.clone(),
                ProblemKind::MissingTable { table: "generator" },
            );
            None
        }
        Some(field) => field
            .table(GENERATOR)
            .map(|fields| generator(&fields, names)),
    };
    let cords = all(&root.tables("cord", CORD), |fields| cord(fields, names));
    let boxes = all(&root.tables("box", BOX), |fields| {
        distribution_box(fields, names)
    });
    let loads = all(&root.tables("load", LOAD), |fields| load(fields, names));
    Some(Plan {
        region: region.unwrap_or_default(),
        language,
        site: site.unwrap_or_default(),
        generator: generator??,
        cords: cords?,
        boxes: boxes?,
        loads: loads?,
    })
}

/// Reads every one before it gives up, so that all are reported.
fn all<'t, T>(
    tables: &[Fields<'t>],
    mut read: impl FnMut(&Fields<'t>) -> Option<T>,
) -> Option<Vec<T>> {
    let parts: Vec<Option<T>> = tables.iter().map(&mut read).collect();
    parts.into_iter().collect()
}

fn site(fields: &Fields<'_>) -> Site {
    Site {
        name: fields.optional("name", Field::name).unwrap_or_default(),
        ground: fields.answer("ground", |field| field.choice(true)),
        sleepers_at: fields.answer("sleepers_at", |field| field.quantity(&bounds::SLEEPERS_AT)),
        altitude: fields.answer("altitude", |field| field.quantity(&bounds::ALTITUDE)),
        air: fields.answer("air", |field| field.quantity(&bounds::AIR)),
        quiet_hours: fields.answer("quiet_hours", Field::hours_or_list),
        co_alarm: fields.answer("co_alarm", Field::yes_no),
        feeds_building: fields.answer("feeds_building", Field::yes_no),
        stands: fields.answer("stands", |field| field.choice(true)),
        people_sleep: fields.answer("people_sleep", Field::yes_no),
    }
}

/// Whether a bonding plug is in. Who names the place of one says that it is, and cannot say that it is not.
fn bonding_plug(fields: &Fields<'_>) -> Answer<bool> {
    let said = fields.answer("bonding_plug", Field::yes_no);
    let Some(place) = fields.get("bonding_plug_in") else {
        return said;
    };
    match said {
        Answer::Missing => Answer::Known(true),
        Answer::Known(false) => {
            place.put(ProblemKind::PlaceForNoPlug {
                place: place.key,
                plug: "bonding_plug",
            });
            said
        }
        said => said,
    }
}

fn generator(fields: &Fields<'_>, names: &mut Names) -> Option<Generator> {
    let rated = fields.required_answer("rated", r#"rated = "2800 W""#, |field| {
        field.quantity(&bounds::RATED)
    });
    let peak = fields.answer("peak", |field| {
        let peak = field.quantity(&bounds::PEAK)?;
        at_least(field, peak, "rated", rated.known().copied())
    });
    // A set of two legs that passed for one would seem to give twice what an outlet of it can.
    let voltage = fields.required_answer("voltage", r#"voltage = "120 V""#, |field| {
        field.choice(true)
    });
    let (bonding_plug_in, span) = reference(fields, "bonding_plug_in", names);
    names.plug_in("bonding_plug_in", None, bonding_plug_in.clone(), span);
    let bonding_plug = bonding_plug(fields);
    let outlets = outlets(fields, OUTLET, &Owner::Generator, "generator", names);
    Some(Generator {
        name: fields.optional("name", Field::name).unwrap_or_default(),
        peak,
        neutral: fields.answer("neutral", |field| field.choice(true)),
        bonding_plug,
        bonding_plug_in,
        inverter: fields.answer("inverter", Field::yes_no),
        fuel: fields.answer("fuel", fuel),
        rated_on: fields.answer("rated_on", fuel),
        parallel: fields.optional("parallel", parallel),
        tank: fields.answer("tank", |field| field.quantity(&bounds::TANK)),
        runtime: fields
            .optional("runtime", |field| field.list(Type::List, runtime))
            .unwrap_or_default(),
        noise: fields.answer("noise", noise),
        outlets: outlets?,
        rated,
        voltage,
    })
}

fn fuel(field: &Field<'_>) -> Option<Fuel> {
    field.choice(true)
}

fn parallel(field: &Field<'_>) -> Option<Parallel> {
    let fields = field.table(&["sets", "limit", "kit"])?;
    let sets = fields.required("sets", "sets = 2", |field| field.whole(bounds::SETS));
    Some(Parallel {
        limit: fields.answer("limit", |field| field.quantity(&bounds::KIT_LIMIT)),
        kit: fields.answer("kit", Field::yes_no),
        sets: sets?,
    })
}

fn percent(field: &Field<'_>) -> Option<Percent> {
    field.quantity(&bounds::SHARE)
}

fn runtime(field: &Field<'_>) -> Option<Runtime> {
    let fields = field.table(&["load", "lasts"])?;
    let load = fields.required("load", r#"load = "25 %""#, percent);
    let lasts = fields.required("lasts", r#"lasts = "8.5 h""#, |field| {
        field.quantity(&bounds::LASTS)
    });
    Some(Runtime {
        load: load?,
        lasts: lasts?,
    })
}

fn noise(field: &Field<'_>) -> Option<Noise> {
    let fields = field.table(&["level", "at", "load"])?;
    let level = fields.required("level", r#"level = "58 dBA""#, |field| {
        field.quantity(&bounds::NOISE_LEVEL)
    });
    let at = fields.required("at", r#"at = "23 ft""#, |field| {
        field.quantity(&bounds::NOISE_AT)
    });
    let load = fields.answer("load", percent);
    Some(Noise {
        level: level?,
        at: at?,
        load,
    })
}

fn outlets(
    fields: &Fields<'_>,
    allowed: &'static [&'static str],
    owner: &Owner,
    part: &'static str,
    names: &mut Names,
) -> Option<Vec<Outlet>> {
    let tables = fields.tables("outlet", allowed);
    if tables.is_empty() {
        fields
            .sink
            .put(fields.span.clone(), ProblemKind::NoOutlets { part });
    }
    all(&tables, |fields| outlet(fields, owner, names))
}

fn outlet(fields: &Fields<'_>, owner: &Owner, names: &mut Names) -> Option<Outlet> {
    let breaker = fields.answer("breaker", |field| field.quantity(&bounds::BREAKER));
    let (shares, shares_span) = reference(fields, "shares", names);
    let id = new_id(
        fields,
        r#"id = "front""#,
        names,
        owner.outlet(shares.is_some()),
    );
    if let (Some(id), Some(to), Some(span)) = (&id, &shares, shares_span) {
        names.share(id.clone(), to.clone(), breaker.known().copied(), span);
    }
    if let (Some(id), Some(breaker)) = (&id, breaker.known()) {
        names.breaker(id.clone(), *breaker);
    }
    let shape = fields.required("shape", r#"shape = "5-20R""#, Field::receptacle);
    Some(Outlet {
        sockets: fields.optional("sockets", |field| field.whole(bounds::SOCKETS)),
        breaker,
        trips_at: fields.optional("trips_at", |field| field.quantity(&bounds::TRIPS_AT)),
        gfci: fields.answer("gfci", Field::yes_no),
        wire: fields.answer("wire", Field::wire),
        leg: fields.answer("leg", |field| field.choice(true)),
        id: id?,
        shape: shape?,
        shares,
    })
}

fn cord(fields: &Fields<'_>, names: &mut Names) -> Option<Cord> {
    let ends = fields.required("ends", r#"ends = ["5-15R"]"#, |field| {
        let ends = field.list(Type::List, Field::receptacle);
        if ends.as_ref().is_some_and(Vec::is_empty) {
            field.put(ProblemKind::NoOutlets { part: "cord" });
            return None;
        }
        ends
    });
    let (from, from_span) = reference(fields, "from", names);
    let count = ends.as_ref().map(Vec::len);
    let id = new_id(fields, r#"id = "long""#, names, Owner::Cord { ends: count });
    names.plug_in("from", id.clone(), from.clone(), from_span);
    let plug = fields.required("plug", r#"plug = "5-15P""#, Field::plug);
    Some(Cord {
        wire: fields.answer("wire", Field::wire),
        conductors: fields.answer("conductors", |field| field.whole(bounds::CONDUCTORS)),
        length: fields.answer("length", |field| field.quantity(&bounds::LENGTH)),
        outdoor: fields.answer("outdoor", Field::yes_no),
        coiled: fields.answer("coiled", Field::yes_no),
        gfci: fields.answer("gfci", Field::yes_no),
        id: id?,
        from,
        plug: plug?,
        ends: ends?,
    })
}

fn distribution_box(fields: &Fields<'_>, names: &mut Names) -> Option<DistributionBox> {
    let (from, from_span) = reference(fields, "from", names);
    let id = new_id(fields, r#"id = "box""#, names, Owner::Box);
    names.plug_in("from", id.clone(), from.clone(), from_span);
    let owner = id
        .clone()
        .map_or(Owner::Nobody, |id| Owner::OutletOf { box_id: id });
    let outlets = outlets(fields, BOX_OUTLET, &owner, "box", names);
    let inlet = fields.required("inlet", r#"inlet = "L5-30P""#, Field::plug);
    Some(DistributionBox {
        listed: fields.answer("listed", Field::yes_no),
        bond: fields.answer("bond", Field::yes_no),
        id: id?,
        from,
        inlet: inlet?,
        outlets: outlets?,
    })
}

fn load(fields: &Fields<'_>, names: &mut Names) -> Option<Load> {
    let id = new_id(fields, r#"id = "kettle""#, names, Owner::Load);
    let (on, on_span) = reference(fields, "on", names);
    names.plug_in("on", None, on.clone(), on_span);
    let (now, now_span) = reference(fields, "now", names);
    names.plug_in("now", None, now.clone(), now_span);
    let kind = fields.required_answer("kind", r#"kind = "heater""#, |field| field.choice(true));
    let running = draw(fields);
    one_of(fields, &["starting", "starting_current"]);
    let wanted = fields.optional("wanted", |field| field.choice(false));
    let name = fields.optional("name", Field::name);
    let count = fields.optional("count", |field| field.whole(bounds::COUNT));
    names.loads += usize::from(count.unwrap_or(1));
    Some(Load {
        count: count.unwrap_or(1),
        starting: fields.answer("starting", |field| {
            let starting = field.quantity(&bounds::STARTING)?;
            let power = match running {
                Answer::Known(Draw::Power(power)) => Some(power),
                _ => None,
            };
            at_least(field, starting, "running", power)
        }),
        starting_current: fields.answer("starting_current", |field| {
            let starting = field.quantity(&bounds::STARTING_CURRENT)?;
            let current = match running {
                Answer::Known(Draw::Current(current)) => Some(current),
                _ => None,
            };
            at_least(field, starting, "current", current)
        }),
        power_factor: fields.answer("power_factor", |field| field.number(&bounds::POWER_FACTOR)),
        continuous: fields.answer("continuous", Field::yes_no),
        wanted: wanted.unwrap_or_default(),
        hours: fields
            .optional("hours", |field| field.list(Type::List, Field::hours))
            .unwrap_or_default(),
        plug: fields.answer("plug", Field::plug),
        voltage: fields.answer("voltage", |field| field.choice(true)),
        backup: fields.answer("backup", Field::yes_no),
        name: name.or_else(|| id.as_ref().map(ToString::to_string))?,
        id: id?,
        kind,
        running,
        on,
        now,
    })
}

/// Reports every key but the first of those that say the same.
fn one_of(fields: &Fields<'_>, keys: &[&'static str]) {
    let given: Vec<Field<'_>> = keys.iter().filter_map(|key| fields.get(key)).collect();
    if let [first, others @ ..] = given.as_slice() {
        for second in others {
            second.put(ProblemKind::TwoDraws {
                first: first.key,
                second: second.key,
            });
        }
    }
}

/// What a load draws, by whichever of the three keys is there.
fn draw(fields: &Fields<'_>) -> Answer<Draw> {
    one_of(fields, &["running", "current", "motor"]);
    let read = |key| {
        fields.answer(key, |field| match key {
            "running" => field.quantity(&bounds::RUNNING).map(Draw::Power),
            "current" => field.quantity(&bounds::CURRENT).map(Draw::Current),
            _ => motor(field),
        })
    };
    // All three are read, so that each is checked; the first that says something counts.
    let (power, current, motor) = (read("running"), read("current"), read("motor"));
    [power, current, motor]
        .into_iter()
        .find(|answer| *answer != Answer::Missing)
        .unwrap_or_default()
}

fn motor(field: &Field<'_>) -> Option<Draw> {
    let fields = field.table(&["hp", "code"])?;
    let horsepower = fields.required("hp", r#"hp = "1/2""#, |field| {
        field.ratio_in_text(&bounds::HORSEPOWER)
    });
    let code = fields.answer("code", |field| {
        let text = field.text()?;
        let mut letters = text.chars();
        let code = letters
            .next()
            .map(|letter| letter.to_ascii_uppercase())
            .filter(|letter| letters.next().is_none() && "ABCDEFGHJKLMNPRSTUV".contains(*letter));
        if code.is_none() {
            field.put(ProblemKind::MotorCode {
                found: super::fields::shorten(text),
            });
        }
        code
    });
    Some(Draw::Motor {
        millihorsepower: u32::try_from(horsepower?.permille()).ok()?,
        code: code.known().copied(),
    })
}

/// A reference in `from`, `on` or `shares`, in its written form, and where it stands. What it
/// names is looked up when everything was read.
fn reference(
    fields: &Fields<'_>,
    key: &'static str,
    names: &mut Names,
) -> (Option<Id>, Option<Range<usize>>) {
    let mut span = None;
    let id = fields.optional(key, |field| {
        let text = field.text()?;
        let id = Id::reference(text);
        if id.is_some() {
            span = Some(field.span.clone());
        } else {
            names.stray(key, text, field.span.clone());
        }
        id
    });
    (id, span)
}

fn new_id(
    fields: &Fields<'_>,
    example: &'static str,
    names: &mut Names,
    owner: Owner,
) -> Option<Id> {
    let mut span = 0..0;
    let id = fields.required("id", example, |field| {
        span = field.span.clone();
        field.id()
    })?;
    names.define(fields.sink, id.clone(), span, owner);
    Some(id)
}

/// The figure, if it is not less than the other one.
fn at_least<Q: Quantity>(
    field: &Field<'_>,
    figure: Q,
    other: &'static str,
    least: Option<Q>,
) -> Option<Q> {
    let Some(least) = least.filter(|least| figure < *least) else {
        return Some(figure);
    };
    field.put(ProblemKind::LessThan {
        key: field.key,
        found: Amount::of(figure),
        other,
        least: Amount::of(least),
    });
    None
}
