//! Compares a language folder with the first language: what is missing, what is wrong, and a sheet on which a native
//! speaker sees both side by side.

pub mod catalog;
mod check;
mod formats;
mod marked;
mod sheet;
#[cfg(test)]
pub(super) mod style;

pub use catalog::{Catalog, Item};
pub use check::{Kind, Problem, check};
pub use marked::{marked, unmarked};
pub use sheet::sheet;
