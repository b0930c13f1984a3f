//! The core against outside sources: published tables, worked examples and oracle cases.

// Tests read plain files and print what they counted.
#![allow(clippy::disallowed_methods, clippy::disallowed_macros)]

#[path = "core/demo.rs"]
mod demo;
#[path = "core/files.rs"]
mod files;
#[path = "core/invariants.rs"]
mod invariants;
#[path = "core/languages.rs"]
mod languages;
#[path = "core/plan.rs"]
mod plan;
#[path = "core/power_flow/mod.rs"]
mod power_flow;
#[path = "core/published.rs"]
mod published;
#[path = "core/rules.rs"]
mod rules;
#[path = "core/sharing/mod.rs"]
mod sharing;
#[path = "core/supply.rs"]
mod supply;
