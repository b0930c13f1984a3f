//! Working out the figures: all that is known of a plan before the rules have judged it.

use super::limits::limits;
use super::usable::usable;
use super::{EnergyUse, Figures, Limit, LoadFacts, Usable, drops, energy, noise, proofs, protection, volts};
use crate::loads;
use crate::plan::{Id, Plan};
use crate::quantity::{ApparentPower, Power};
use crate::sharing::{places, share};
use crate::supply::Supply;
use crate::verdict::Verdicts;

impl Figures {
    /// What is known of a load, of one of a count.
    pub(crate) fn load(&self, id: &Id) -> Option<&LoadFacts> {
        self.loads.iter().find(|load| load.id == *id)
    }

    /// What is known of each of a load of the plan.
    pub(crate) fn units<'a>(&'a self, load: &'a Id) -> impl Iterator<Item = &'a LoadFacts> {
        self.loads.iter().filter(move |it| it.of == *load)
    }

    /// The limit of a receptacle, or of what runs in a camper.
    pub(crate) fn limit(&self, id: &Id) -> Option<&Limit> {
        self.limits.iter().find(|limit| limit.id == *id)
    }

    /// Whether these ask for more than the set gives, running or with one of them starting. Of a set with two legs only
    /// their sum is asked: where they are plugged in decides the rest.
    pub(crate) fn beyond_the_set<'a>(&self, loads: impl Iterator<Item = &'a LoadFacts>) -> bool {
        // Volt-amperes of all legs, no fewer than watts: what a leg carries is counted in amps.
        let (mut running, mut most) = (0, 0);
        for load in loads {
            let of_all_legs = |of_one: ApparentPower| of_one.millivolt_amps() * load.legs();
            running += of_all_legs(load.running_volt_amps);
            most = most.max(of_all_legs(load.starting_volt_amps - load.running_volt_amps));
        }
        running > self.usable.rated_watts.milliwatts() || running + most > self.usable.peak_watts.milliwatts()
    }

    /// Whether a load may run at all (`Sharing::may_run`).
    pub(crate) fn may_run(&self, load: &Id) -> bool {
        let of = |id: &Id| self.load(id).map(|facts| &facts.of);
        self.sharing.may_run(load, of)
    }

    /// Whatever needs no rule. What the rules assume and find, and what follows from that, is left empty.
    pub(crate) fn of_plan(plan: &Plan, supply: &Supply, verdicts: &Verdicts<'_>) -> Self {
        let (units, load_assumptions) = loads::units(plan);
        let sharing = share(plan, supply, verdicts, &units);
        let mut assumed = supply.assumed.clone();
        assumed.extend(verdicts.assumed(plan));
        assumed.extend(load_assumptions);
        let (energy, energy_assumptions) = energy::of_plan(plan, supply, &units, &sharing);
        assumed.extend(energy_assumptions);
        let scene = drops::Scene::new(supply, &units, &sharing);
        let (drops, drops_alone) = drops::of_scene(&scene);
        let plugged_in = scene.placed.iter();
        // What runs in a camper may be wired in.
        let plugged_in = plugged_in.filter(|it| !supply.inside(it.load.at));
        let plugged_in = plugged_in.map(|it| (&it.unit.id, it.unit.plug, it.load.at));
        Self {
            limits: limits(supply, verdicts),
            protection: protection::protection(plan, supply, verdicts, plugged_in),
            loads: units.iter().map(|unit| unit.facts(plan)).collect(),
            usable: usable(plan, supply, verdicts, &sharing),
            drops,
            drops_alone,
            volts: volts::of_plan(plan, supply, &sharing, &scene),
            tests: proofs::of_plan(supply, verdicts),
            sharing,
            noise: noise::of_plan(plan, &energy),
            energy,
            assumed,
            ..Self::default()
        }
    }

    /// For a plan on trial: a sharing with little work and without what runs together, orders and turns. Volts,
    /// energy and readings are empty, and all power is taken to reach its outlets.
    pub(crate) fn of_trial(plan: &Plan, supply: &Supply, verdicts: &Verdicts<'_>) -> Self {
        let (units, _) = loads::units(plan);
        Self {
            limits: limits(supply, verdicts),
            loads: units.iter().map(|unit| unit.facts(plan)).collect(),
            usable: Usable {
                rated_watts: supply.rated,
                peak_watts: supply.peak,
                reachable_watts: supply.rated,
                stranded_watts: Power::ZERO,
            },
            sharing: places(plan, supply, verdicts, &units),
            noise: noise::of_plan(plan, &EnergyUse::default()),
            ..Self::default()
        }
    }
}
