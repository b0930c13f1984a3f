//! What is on each half of a 120/240 V generator, as far as anybody knows which half an outlet or a cord end is on.

use super::Facts;
use super::demand::Need;
use crate::plan::{Id, Leg};
use crate::supply::Legs;

/// The loads that are on at once, by half.
pub(super) struct Halves<'n, 'a> {
    on: &'n [Need<'a>],
    /// What each load draws on half A and half B, known or assumed.
    draws: Vec<[i64; 2]>,
    /// Whether each load's half is unknown.
    unknown: Vec<bool>,
    /// Whether any of the unknown halves is that of a cord end.
    of_cords: bool,
    /// Whether the generator is known to have two halves.
    two: bool,
}

impl<'n, 'a> Halves<'n, 'a> {
    pub fn of(facts: &Facts<'a>, on: &'n [Need<'a>]) -> Self {
        let assumed = |need: &Need<'_>| -> Vec<&str> {
            let up = need.at.into_iter().flat_map(|at| facts.supply.up(at));
            let ids: Vec<&Id> = up.map(|(_, node)| &node.id).collect();
            let all = facts.supply.assumed.iter();
            let of = all.filter(|it| ids.iter().any(|id| it.is_leg_of(id)));
            of.map(|it| it.field.as_str()).collect()
        };
        let draws: Vec<[i64; 2]> = on
            .iter()
            .map(|need| {
                let of = |leg| facts.apparent_on_leg([need], leg).millivolt_amps();
                [of(Leg::A), of(Leg::B)]
            })
            .collect();
        let one = |need: &Need<'_>| {
            let legs = need.at.map(|at| facts.supply.node(at).legs);
            matches!(legs, Some(Legs::One(_)))
        };
        Self {
            on,
            unknown: (on.iter()).map(|need| one(need) && !assumed(need).is_empty()).collect(),
            draws,
            of_cords: on.iter().any(|need| assumed(need).iter().any(|it| it.starts_with("cord."))),
            two: facts.supply.assumed.iter().all(|it| it.field != "generator.voltage"),
        }
    }

    pub fn known(&self) -> bool {
        self.two && !self.unknown.contains(&true)
    }

    /// Returns what to look up if a half was assumed.
    pub fn assumed(&self) -> Option<&'static str> {
        self.unknown.contains(&true).then(|| self.look())
    }

    /// Returns the least that the fuller half can draw, however the loads of unknown half are spread. `None` if there
    /// may be only one half, or too many such loads to try.
    pub fn least(&self) -> Option<i64> {
        const TRIED: usize = 12;
        let free: Vec<usize> = (0..self.on.len()).filter(|at| self.unknown[*at]).collect();
        if !self.two || free.len() > TRIED {
            return None;
        }
        let sum = |leg: usize| -> i64 {
            let fixed = (0..self.on.len()).filter(|at| !self.unknown[*at]);
            fixed.map(|at| self.draws[at][leg]).sum()
        };
        let fixed = [sum(0), sum(1)];
        let fuller = |choice: u32| {
            let mut both = fixed;
            for (bit, at) in free.iter().enumerate() {
                let draw = self.draws[*at];
                both[usize::from(choice >> bit & 1 == 1)] += draw[0].max(draw[1]);
            }
            both[0].max(both[1])
        };
        (0..1_u32 << free.len()).map(fuller).min()
    }

    /// Returns the loads that draw on the fuller half.
    pub fn fuller(&self) -> Vec<Need<'a>> {
        let (from, ..) = self.sides();
        let on = self.on.iter().zip(&self.draws);
        on.filter(|(_, draws)| draws[from] > 0).map(|(need, _)| *need).collect()
    }

    /// Returns the index of the fuller half, the index of the other, and the other as a leg.
    fn sides(&self) -> (usize, usize, Leg) {
        if self.sum(0) > self.sum(1) { (0, 1, Leg::B) } else { (1, 0, Leg::A) }
    }

    fn sum(&self, leg: usize) -> i64 {
        self.draws.iter().map(|draws| draws[leg]).sum()
    }

    /// Returns the smallest load on the fuller half alone that can move to an outlet on the other half so that both
    /// halves have enough.
    pub fn to_move(&self, facts: &Facts<'_>, limit: i64) -> Option<&Id> {
        let (from, to, other) = self.sides();
        let helps = |at: &usize| {
            let draw = self.draws[*at][from];
            let fit = self.sum(from) - draw <= limit && self.sum(to) + draw <= limit;
            self.draws[*at][to] == 0 && fit
        };
        let moves = (0..self.on.len()).filter(helps);
        let mut moves: Vec<usize> = moves.filter(|at| facts.moves_to(&self.on[*at], other)).collect();
        moves.sort_by_key(|at| self.draws[*at][from]);
        moves.first().map(|at| &self.on[*at].load.id)
    }

    /// Returns what to look up before anything is moved. The half of an outlet can be found out and put in the plan;
    /// the half of a cord end cannot be put in the plan.
    pub fn look(&self) -> &'static str {
        if self.of_cords { "leg-cord" } else { "leg-look" }
    }
}
