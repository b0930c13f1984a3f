//! Adds up a set of loads at the points of the supply, keeping every term so that a reader can check the sum. The
//! limits are those that decide what may run together.
//!
//! Volt-amperes on a leg add as plain numbers, which is never less than what really flows. They are rounded up to amps
//! once, for display.

use super::{LoadFacts, Report};
use crate::plan::{Id, Leg};
use crate::quantity::{ApparentPower, Power, Ratio, narrow};
use crate::supply::{NodeIx, Supply};

/// A ratio of one.
const WHOLE: Ratio = Ratio::from_permille(1000);

/// Units of one load that count alike.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Term {
    /// The first of them.
    pub load: Id,
    /// How many there are.
    pub count: usize,
    /// What each of them takes on the leg while running.
    pub each: ApparentPower,
    /// The divisor: the share of the limit allowed for three hours or more if they run that long, else one.
    pub over: Ratio,
}

/// The load that starts.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Starts {
    /// The id of the load.
    pub load: Id,
    /// What it takes while it starts.
    pub starting: ApparentPower,
    /// What it takes while it runs, which is in the sum already.
    pub running: ApparentPower,
}

/// A sum at one point, on one leg.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Sum {
    /// The point of the tree.
    pub at: NodeIx,
    /// The leg, where the point has two.
    pub leg: Option<Leg>,
    /// The running loads.
    pub terms: Vec<Term>,
    /// At a moment of starting, the load whose start exceeds its running by the most. The excess is added.
    pub starts: Option<Starts>,
    /// The total, rounded up.
    pub asks: ApparentPower,
    /// The most that the total may be.
    pub limit: ApparentPower,
}

impl Sum {
    /// Whether the total is within the limit.
    #[must_use]
    pub fn holds(&self) -> bool {
        self.asks <= self.limit
    }

    /// Returns the total in millionths of the limit.
    fn fullness(&self) -> i128 {
        let limit = i128::from(self.limit.millivolt_amps().max(1));
        i128::from(self.asks.millivolt_amps()) * 1_000_000 / limit
    }
}

/// One leg in one step of switching on.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct StepLeg {
    /// The leg, where there are two.
    pub leg: Option<Leg>,
    /// What already runs.
    pub on: ApparentPower,
    /// Loads of the same step that are switched on just before.
    pub just_before: Vec<Term>,
    /// What the last load takes while it starts. `None` if it is not on this leg.
    pub starting: Option<ApparentPower>,
    /// The total.
    pub asks: ApparentPower,
    /// The most that the total may be: the peak.
    pub limit: ApparentPower,
    /// What runs once the step is over.
    pub then: ApparentPower,
}

/// One step of switching on: units of one load that follow one another, at the moment the last of them starts.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct StartSum {
    /// The units.
    pub loads: Vec<Id>,
    /// The sums for each leg.
    pub legs: Vec<StepLeg>,
    /// Volt-amperes over all legs, counted as watts.
    pub watts: Power,
}

/// Adds up loads of one report.
#[derive(Clone, Copy, Debug)]
pub struct Adder<'a> {
    report: &'a Report,
    supply: &'a Supply,
}

/// A load and the node it is plugged in at.
struct Member<'a> {
    facts: &'a LoadFacts,
    at: NodeIx,
}

impl Member<'_> {
    fn running(&self) -> ApparentPower {
        self.facts.running_volt_amps
    }

    fn starting(&self) -> ApparentPower {
        self.facts.starting_volt_amps
    }
}

impl<'a> Adder<'a> {
    /// Creates an adder for a report and the supply tree of the same plan.
    #[must_use]
    pub const fn new(report: &'a Report, supply: &'a Supply) -> Self {
        Self { report, supply }
    }

    /// Returns the sums for a set of loads: each leg of the generator, running and with the start that needs the most,
    /// and the fullest point downstream.
    #[must_use]
    pub fn of_set(&self, set: &[Id]) -> Vec<Sum> {
        let members = self.members(set);
        let mut sums = self.of_source(&members);
        sums.extend(self.fullest_part(&members));
        sums
    }

    /// Returns the sum furthest past its limit, for a set that may not run together.
    #[must_use]
    pub fn of_never(&self, set: &[Id]) -> Option<Sum> {
        first_fullest(self.of_set(set))
    }

    /// Returns the most that a set of loads takes at a point, running, on one leg.
    #[must_use]
    pub fn running_at(&self, at: NodeIx, set: &[Id]) -> ApparentPower {
        let members = self.members(set);
        let on_leg = |leg: &Leg| members.iter().filter(|it| self.carries(at, *leg, it)).map(Member::running).sum();
        self.supply.node(at).legs.all().iter().map(on_leg).max().unwrap_or(ApparentPower::ZERO)
    }

    fn members(&self, set: &[Id]) -> Vec<Member<'a>> {
        let figures = &self.report.figures;
        set.iter()
            .filter_map(|id| {
                let facts = figures.load(id)?;
                let at = self.supply.receptacle(figures.sharing.place(id)?)?;
                Some(Member { facts, at })
            })
            .collect()
    }

    fn carries(&self, at: NodeIx, leg: Leg, member: &Member<'_>) -> bool {
        let legs = self.supply.counts_on(member.at);
        legs.contains(&leg) && self.supply.up(member.at).any(|(ix, _)| ix == at)
    }

    fn leg_of(&self, at: NodeIx, leg: Leg) -> Option<Leg> {
        (self.supply.node(at).legs.all().len() > 1).then_some(leg)
    }

    /// Sums the volt-amperes through a point on one leg, with everything running.
    fn running(&self, at: NodeIx, leg: Leg, members: &[Member<'_>]) -> Sum {
        let node = self.supply.node(at);
        let passing = members.iter().filter(|it| self.carries(at, leg, it));
        let terms = terms(passing, node.continuous);
        // Rounded up once, not term by term.
        let (whole, cut): (i128, i128) = terms.iter().fold((0, 0), |(whole, cut), term| {
            let part = term.count as i128 * i128::from(term.each.millivolt_amps());
            if term.over == WHOLE { (whole + part, cut) } else { (whole, cut + part) }
        });
        let share = i128::from(node.continuous.permille().max(1));
        let asks = whole + (cut * 1000 + share - 1) / share;
        Sum {
            at,
            leg: self.leg_of(at, leg),
            terms,
            starts: None,
            asks: ApparentPower::from_millivolt_amps(narrow(asks)),
            limit: self.supply.room(at),
        }
    }

    /// Returns the sums at the generator: each leg running, and at the moment that needs the most.
    fn of_source(&self, members: &[Member<'_>]) -> Vec<Sum> {
        let root = NodeIx(0);
        let mut sums = Vec::new();
        for leg in self.supply.node(root).legs.all() {
            let sum = self.running(root, *leg, members);
            let over = |it: &&Member<'_>| it.starting() - it.running();
            let starts = members
                .iter()
                .filter(|it| self.carries(root, *leg, it) && it.starting() > it.running())
                .rev()
                .max_by_key(over);
            let peak = starts.map(|it| {
                let here = || members.iter().filter(|it| self.carries(root, *leg, it));
                let running: ApparentPower = here().map(Member::running).sum();
                Sum {
                    starts: Some(Starts { load: it.facts.id.clone(), starting: it.starting(), running: it.running() }),
                    asks: running + (it.starting() - it.running()),
                    limit: self.supply.peak_room(),
                    terms: terms(here(), WHOLE),
                    ..sum.clone()
                }
            });
            sums.push(sum);
            sums.extend(peak);
        }
        sums
    }

    /// Returns the fullest point downstream of the generator. The first wins a tie.
    fn fullest_part(&self, members: &[Member<'_>]) -> Option<Sum> {
        let parts = (1..self.supply.nodes.len()).map(NodeIx);
        let all = parts.flat_map(|at| {
            let legs = self.supply.node(at).legs.all().iter();
            legs.map(move |leg| self.running(at, *leg, members))
        });
        first_fullest(all.filter(|sum| !sum.terms.is_empty()))
    }

    /// Returns the steps of switching on, in the order of the report.
    #[must_use]
    pub fn of_start(&self) -> Vec<StartSum> {
        let order: Vec<Id> = self.report.figures.sharing.start_order.iter().map(|step| step.load.clone()).collect();
        let members = self.members(&order);
        let root = self.supply.node(NodeIx(0)).legs.all();
        let mut on = vec![ApparentPower::ZERO; root.len()];
        let mut steps = Vec::new();
        for run in members.chunk_by(|one, next| one.facts.of == next.facts.of) {
            let Some((last, before)) = run.split_last() else {
                continue;
            };
            let legs: Vec<StepLeg> = root
                .iter()
                .zip(&mut on)
                .map(|(leg, on)| {
                    let here = |it: &&Member<'_>| self.carries(NodeIx(0), *leg, it);
                    let just_before = terms(before.iter().filter(here), WHOLE);
                    let starting = here(&last).then(|| last.starting());
                    let so_far = *on;
                    let others: ApparentPower = before.iter().filter(here).map(Member::running).sum();
                    let runs: ApparentPower = run.iter().filter(here).map(Member::running).sum();
                    *on = so_far + runs;
                    StepLeg {
                        leg: self.leg_of(NodeIx(0), *leg),
                        on: so_far,
                        just_before,
                        starting,
                        asks: so_far + others + starting.unwrap_or(ApparentPower::ZERO),
                        limit: self.supply.peak_room(),
                        then: *on,
                    }
                })
                .collect();
            let all: ApparentPower = legs.iter().map(|leg| leg.asks).sum();
            steps.push(StartSum {
                loads: run.iter().map(|it| it.facts.id.clone()).collect(),
                legs,
                watts: Power::from_milliwatts(all.millivolt_amps()),
            });
        }
        steps
    }
}

/// Returns the fullest sum. The first wins a tie.
fn first_fullest(sums: impl IntoIterator<Item = Sum>) -> Option<Sum> {
    sums.into_iter().reduce(|most, next| if next.fullness() > most.fullness() { next } else { most })
}

/// Combines units of one load that take the same, in order of appearance.
fn terms<'a>(members: impl Iterator<Item = &'a Member<'a>>, continuous: Ratio) -> Vec<Term> {
    let mut terms: Vec<(&Id, Term)> = Vec::new();
    for member in members {
        let (facts, each) = (member.facts, member.running());
        let over = if facts.continuous { continuous } else { WHOLE };
        let same = |(of, term): &&mut (&Id, Term)| **of == facts.of && term.each == each;
        match terms.iter_mut().find(same) {
            Some((_, term)) => term.count += 1,
            None => terms.push((&facts.of, Term { load: facts.id.clone(), count: 1, each, over })),
        }
    }
    terms.into_iter().map(|(_, term)| term).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    const PLANS: [&str; 3] =
        [crate::plan::demo::WEEKEND, crate::plan::demo::MENDED, include_str!("../../tests/plans/large/twelve.toml")];

    fn each(check: impl Fn(&Report, &Supply, &Adder<'_>)) {
        for text in PLANS {
            let plan = crate::plan::read(text).expect("a plan");
            let report = crate::judge::build(&plan);
            let supply = Supply::build(&plan);
            check(&report, &supply, &Adder::new(&report, &supply));
        }
    }

    /// The solver computes the sets in its own way. Whatever it lets run together is within every limit here, and
    /// whatever it does not is past the one returned.
    #[test]
    fn what_runs_together_is_within_every_sum_and_what_never_does_past_one() {
        each(|report, _, adder| {
            let sharing = &report.figures.sharing;
            assert!(!sharing.together.is_empty());
            for set in &sharing.together {
                let sums = adder.of_set(set);
                assert!(sums.len() > 1 && sums.iter().all(Sum::holds), "{sums:?}");
            }
            for set in &sharing.never {
                let sum = adder.of_never(set).expect("a sum");
                assert!(!sum.holds(), "{set:?}: {sum:?}");
            }
        });
    }

    /// Each step comes to the peak in the report, which is computed separately.
    #[test]
    fn each_step_comes_to_the_peak_that_is_reported() {
        each(|report, supply, adder| {
            let order = &report.figures.sharing.start_order;
            let steps = adder.of_start();
            assert!(!steps.is_empty());
            let told: usize = steps.iter().map(|step| step.loads.len()).sum();
            assert_eq!(told, order.len());
            for step in &steps {
                let last = step.loads.last().expect("a load");
                let peak = order.iter().find(|it| it.load == *last).expect("a step");
                assert_eq!(step.watts, peak.peak_watts, "{last}");
                for leg in &step.legs {
                    assert!(leg.asks <= supply.peak_room(), "{last}");
                }
            }
        });
    }

    /// NEC 210.19(A)(1) and 215.2(A)(1): noncontinuous load plus 125 % of continuous load. Worked by hand: 10 A + 8 A ÷
    /// 0.8 = 20 A, just what a 20 A circuit carries. The clause is from memory.
    #[test]
    fn what_runs_for_hours_counts_for_a_quarter_more() {
        let text = r#"
            format = 1
            region = "north-america"
            [site]
            name = "Two things"
            ground = "dry"
            [generator]
            name = "set"
            rated = "3600 W"
            peak = "4500 W"
            voltage = "120 V"
            [[generator.outlet]]
            id = "front"
            shape = "5-20R"
            sockets = 2
            breaker = "20 A"
            [[load]]
            id = "pump"
            name = "Pump"
            kind = "heater"
            running = "1200 W"
            power_factor = 1
            plug = "5-15P"
            continuous = false
            on = "front"
            [[load]]
            id = "warmer"
            name = "Warmer"
            kind = "heater"
            running = "960 W"
            power_factor = 1
            plug = "5-15P"
            continuous = true
            on = "front"
        "#;
        let plan = crate::plan::read(text).expect("a plan");
        let report = crate::judge::build(&plan);
        let supply = Supply::build(&plan);
        let both = &report.figures.sharing.together[0];
        let sums = Adder::new(&report, &supply).of_set(both);
        let part = sums.last().expect("the part");
        assert_eq!((part.asks.millivolt_amps(), part.limit.millivolt_amps()), (2_400_000, 2_400_000));
        let source = sums.first().expect("the generator");
        assert_eq!(source.asks.millivolt_amps(), 2_160_000);
    }
}
