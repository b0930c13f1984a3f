//! Computes the figures: everything known about a plan before the rules judge it.

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
    /// Returns the facts of a load unit, by its own id.
    pub(crate) fn load(&self, id: &Id) -> Option<&LoadFacts> {
        self.loads.iter().find(|load| load.id == *id)
    }

    /// Returns the facts of every unit of a load in the plan.
    pub(crate) fn units<'a>(&'a self, load: &'a Id) -> impl Iterator<Item = &'a LoadFacts> {
        self.loads.iter().filter(move |it| it.of == *load)
    }

    /// Returns the limit of a receptacle, or of the inside of a camper.
    pub(crate) fn limit(&self, id: &Id) -> Option<&Limit> {
        self.limits.iter().find(|limit| limit.id == *id)
    }

    /// Whether these loads need more than the generator gives, running or with any one of them starting. On two legs
    /// only the total is compared, since the rest depends on where they are plugged in.
    pub(crate) fn beyond_the_set<'a>(&self, loads: impl Iterator<Item = &'a LoadFacts>) -> bool {
        // Volt-amperes over all legs, never fewer than the watts, because a leg's capacity is counted in amps.
        let (mut running, mut most) = (0, 0);
        for load in loads {
            let of_all_legs = |of_one: ApparentPower| of_one.millivolt_amps() * load.legs();
            running += of_all_legs(load.running_volt_amps);
            most = most.max(of_all_legs(load.starting_volt_amps - load.running_volt_amps));
        }
        running > self.usable.rated_watts.milliwatts() || running + most > self.usable.peak_watts.milliwatts()
    }

    /// Whether a load may run at all. See [`Sharing::may_run`](crate::sharing::Sharing::may_run).
    pub(crate) fn may_run(&self, load: &Id) -> bool {
        let of = |id: &Id| self.load(id).map(|facts| &facts.of);
        self.sharing.may_run(load, of)
    }

    /// Computes the figures that need no rule. What the rules assume and find, and what follows from that, is left
    /// empty.
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
        // A load in a camper may be wired in.
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

    /// Computes the figures for a trial plan: placing with little work, and no sets, orders or turns. Volts, energy and
    /// readings are empty, and all power counts as reachable.
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
