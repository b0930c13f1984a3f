//! Cooling times. Every message that names these minutes takes them from here.

/// The minutes an engine stays off before its tank is opened: the longer of the published 15 to 20. FEMA, generator
/// advice, 2020 (from a secondary copy).
pub const ENGINE_MINUTES: u16 = 20;
/// The minutes for which a burn is cooled under running water. ANZCOR guideline 9.1.3, at least 20 minutes (confirmed);
/// the British Burn Association says the same in 2018 (from a secondary copy).
pub const BURN_MINUTES: u16 = 20;
