//! What goes wrong beside a generator, and what is to be done then, by published guidance.
//!
//! The only list of emergencies: card and cautions show these, in this order and in the same words.
//! Emergency `x` is headed by the message `print-emergency-x`; a step is a message likewise, written
//! once for all the emergencies that it belongs to.

/// The number that calls fire service and ambulance in North America. Common knowledge, no source.
pub const CALL: &str = "911";

/// One of them.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Emergency {
    /// Its name in messages.
    pub name: &'static str,
    /// What to do, the first thing first.
    pub steps: &'static [&'static str],
    /// How many steps are done before what a life depends on goes on its battery: 0 where the engine stops before
    /// anybody is in danger, so that there is time. `None` where everyone gets away from there.
    pub battery_after: Option<usize>,
}

/// All of them, what kills soonest first.
pub const EMERGENCIES: &[Emergency] = &[
    // - CDC, carbon monoxide poisoning: headache, dizziness, weakness, sickness; sleepers die before
    //   they feel any (from a secondary copy, the words of its film).
    // - US CPSC, carbon monoxide questions and answers: out into fresh air, call, count heads, back in
    //   only when the responders permit it (from a secondary copy).
    // - American Red Cross, generator advice: into fresh air at the first dizziness, sickness or weakness
    //   (from a secondary copy).
    // - St John Ambulance, carbon monoxide poisoning: into fresh air, and whoever helps stays out of the
    //   fumes (confirmed). Cheshire Fire and Rescue Service: out of the bad air at once (confirmed). Nobody goes
    //   in where the gas is: who helps is the next to fall.
    // - American Heart Association, adult CPR: not breathing or only gasping, push hard and fast in the
    //   middle of the chest, AED (from secondary copies). Only of who is out in the fresh air: a step that follows “do
    //   not go in” sends nobody in.
    Emergency {
        name: "alarm",
        steps: &["alarm-out", "alarm-call", "alarm-sleeper", "alarm-cpr", "alarm-engine", "alarm-back"],
        battery_after: None,
    },
    // - USDA Agricultural Research Service, electrical safety: do not touch, call 911, shut off the
    //   power, CPR (confirmed).
    // - DGUV Information 204-006, section 13: the current goes off first in any case, and a doctor sees
    //   whoever had it (confirmed).
    // - CPR as above.
    Emergency {
        name: "shock",
        steps: &["shock-off", "shock-touch", "cpr", "shock-doctor"],
        // The engine that is stopped for one feeds what another breathes with. Somebody else sees to that: the call
        // does not wait.
        battery_after: Some(1),
    },
    // - South Carolina State Fire Marshal, when to use an extinguisher: small, not growing, everyone
    //   away, 911 called, one's back to a clear way out (confirmed). US Fire Administration the same
    //   (from a secondary copy).
    // - NFPA 10, classes of fire: burning liquids are class B, what is live is class C, and water is for
    //   class A alone (from memory, not verified).
    // - City of Bend, Oregon, Fire and Rescue: stop, drop, roll (confirmed).
    // - Burns: see [`super::cooling`]. American Heart Association and American Red Cross, first aid
    //   guidelines, 2024: running water as soon as can be (from a secondary copy).
    Emergency {
        name: "fire",
        steps: &["fire-away", "fire-engine", "fire-water", "fire-extinguisher", "fire-clothes", "burns"],
        battery_after: None,
    },
    // Common practice, no source.
    Emergency {
        name: "breaker",
        steps: &["breaker-stop", "breaker-feel", "breaker-once", "breaker-off"],
        battery_after: Some(0),
    },
];
