//! How long heat is given to go. Every message that names these minutes takes them from here.

/// Minutes that an engine is left off before its tank is opened: the longer of the published 15 to
/// 20. FEMA, generator advice, 2020 (from a secondary copy).
pub const ENGINE_MINUTES: u16 = 20;
/// Minutes that cool running water runs over a burn. ANZCOR guideline 9.1.3, at least 20 minutes
/// (confirmed); the British Burn Association's of 2018 say the same (from a secondary copy).
pub const BURN_MINUTES: u16 = 20;
