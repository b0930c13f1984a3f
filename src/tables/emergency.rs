//! Emergencies around a generator and what to do in each, by published guidance.
//!
//! This is the only list of emergencies. Card and cautions show these, in this order and in the same words. Emergency
//! `x` has the heading `print-emergency-x`. Each step is a message too, written once for all emergencies that share it.

/// The number for the fire service and ambulance in North America. Common knowledge, no source.
pub const CALL: &str = "911";

/// An emergency.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Emergency {
    /// Its name in messages.
    pub name: &'static str,
    /// What to do, the first step first.
    pub steps: &'static [&'static str],
    /// How many steps come before switching medical equipment to its battery. 0 if the engine stops before anybody is
    /// in danger, so that there is time. `None` if everyone leaves the place.
    pub battery_after: Option<usize>,
}

/// All emergencies, what kills soonest first.
pub const EMERGENCIES: &[Emergency] = &[
    // - CDC, carbon monoxide poisoning: headache, dizziness, weakness, nausea; sleepers die before they feel any of it
    //   (from a secondary copy, the words of its film).
    // - US CPSC, carbon monoxide questions and answers: out into fresh air, call, count heads, back in only when the
    //   responders permit it (from a secondary copy).
    // - American Red Cross, generator advice: into fresh air at the first dizziness, nausea or weakness (from a
    //   secondary copy).
    // - St John Ambulance, carbon monoxide poisoning: into fresh air, and helpers stay out of the fumes (confirmed).
    //   Cheshire Fire and Rescue Service: out of the bad air at once (confirmed). Nobody goes in where the gas is,
    //   since a helper is the next to collapse.
    // - American Heart Association, adult CPR: not breathing or only gasping, push hard and fast in the middle of the
    //   chest, AED (from secondary copies). Only for somebody who is out in the fresh air: a step that follows “do not
    //   go in” sends nobody in.
    Emergency {
        name: "alarm",
        steps: &["alarm-out", "alarm-call", "alarm-sleeper", "alarm-cpr", "alarm-engine", "alarm-back"],
        battery_after: None,
    },
    // - USDA Agricultural Research Service, electrical safety: do not touch, call 911, shut off the power, CPR
    //   (confirmed).
    // - DGUV Information 204-006, section 13: in any case the power goes off first, and the victim sees a doctor
    //   (confirmed).
    // - CPR as above.
    Emergency {
        name: "shock",
        steps: &["shock-off", "shock-touch", "cpr", "shock-doctor"],
        // The engine that is stopped for one person may power another's breathing aid. Somebody else sees to that, so
        // the call does not wait.
        battery_after: Some(1),
    },
    // - South Carolina State Fire Marshal, when to use an extinguisher: small, not growing, everyone away, 911 called,
    //   your back to a clear way out (confirmed). US Fire Administration the same (from a secondary copy).
    // - NFPA 10, classes of fire: burning liquids are class B, live equipment is class C, and water is for class A only
    //   (from memory, not verified).
    // - City of Bend, Oregon, Fire and Rescue: stop, drop, roll (confirmed).
    // - Burns: see [`super::cooling`]. American Heart Association and American Red Cross, first aid guidelines, 2024:
    //   running water as soon as possible (from a secondary copy).
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
