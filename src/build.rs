//! Tells Cargo to rebuild when a label sheet or a message file is added. Cargo follows the files that were built in,
//! but not files added to their folders.

// Cargo is told by printing.
#![allow(clippy::disallowed_macros)]

fn main() {
    for folder in ["i18n", "label-templates"] {
        println!("cargo::rerun-if-changed={folder}");
    }
}
