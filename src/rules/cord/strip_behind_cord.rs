#![doc = include_str!("../../../i18n/en/explain/CORD007.md")]

use crate::plan::{Cord, Id};
use crate::rules::prelude::*;
use crate::supply::NodeIx;
use crate::tables::shape::Configuration;

pub(super) const RULE: Rule = Rule {
    code: "CORD007",
    name: "strip-behind-cord",
    area: "cord",
    worst: Signal::Caution,
    sources: &[cite::UL_XBYS],
    fixes: &["straight"],
    check,
    #[cfg(test)]
    fires: &[&[("[[box]]", BEHIND)]],
    #[cfg(test)]
    spares: &[&[], &[("[[box]]", STRAIGHT)], &[("[[box]]", THREE_ENDS)]],
};

#[cfg(test)]
const BEHIND: &str = "[[cord]]\nid = \"ext\"\nfrom = \"front\"\nplug = \"5-15P\"\nends = [\"5-15R\"]\n\
    wire = \"12 AWG\"\nconductors = 3\nlength = \"50 ft\"\noutdoor = true\ncoiled = false\n\
    [[cord]]\nid = \"strip\"\nfrom = \"ext\"\nplug = \"5-15P\"\n\
    ends = [\"5-15R\", \"5-15R\", \"5-15R\", \"5-15R\", \"5-15R\", \"5-15R\"]\n\
    wire = \"14 AWG\"\nconductors = 3\nlength = \"4 ft\"\noutdoor = true\ncoiled = false\n[[box]]";
#[cfg(test)]
const STRAIGHT: &str = "[[cord]]\nid = \"strip\"\nfrom = \"front\"\nplug = \"5-15P\"\n\
    ends = [\"5-15R\", \"5-15R\", \"5-15R\", \"5-15R\", \"5-15R\", \"5-15R\"]\n\
    wire = \"14 AWG\"\nconductors = 3\nlength = \"4 ft\"\noutdoor = true\ncoiled = false\n[[box]]";
#[cfg(test)]
const THREE_ENDS: &str = "[[cord]]\nid = \"ext\"\nfrom = \"front\"\nplug = \"5-15P\"\nends = [\"5-15R\"]\n\
    wire = \"12 AWG\"\nconductors = 3\nlength = \"50 ft\"\noutdoor = true\ncoiled = false\n\
    [[cord]]\nid = \"tap\"\nfrom = \"ext\"\nplug = \"5-15P\"\n\
    ends = [\"5-15R\", \"5-15R\", \"5-15R\"]\n\
    wire = \"14 AWG\"\nconductors = 3\nlength = \"2 ft\"\noutdoor = true\ncoiled = false\n[[box]]";

/// The number of ends that makes a power strip: outdoor cords have three at most.
const MANY: usize = 4;

fn is_strip(cord: &Cord) -> bool {
    let household =
        |shape: Configuration| matches!(shape, Configuration::N1_15 | Configuration::N5_15 | Configuration::N5_20);
    cord.plug.known().is_some_and(|plug| household(plug.0))
        && cord.ends().len() >= MANY
        && cord.ends().iter().all(|end| household(end.0))
}

/// Returns the cord into whose end this one is plugged, if it is a cord.
fn before(facts: &Facts<'_>, at: NodeIx) -> Option<Id> {
    let supply = facts.supply;
    let mut above = supply.up(at).skip(1).map(|(_, node)| node);
    // First the receptacle, then the part it belongs to.
    let _receptacle = above.next()?;
    let holder = above.next()?;
    holder.kind.is_cord().then(|| holder.id.clone())
}

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    for (at, node) in facts.supply.cords() {
        let strip = facts.plan.cord(&node.id).filter(|cord| is_strip(cord));
        let Some((strip, before)) = strip.zip(before(facts, at)) else {
            continue;
        };
        found.add(
            Signal::Caution,
            vec![strip.id.clone(), before],
            values([("places", Value::Count(strip.ends().len()))]),
            "straight",
            values([]),
        );
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::rules::testing::findings;

    #[test]
    fn the_strip_is_named_first_and_then_what_it_is_plugged_into() {
        let found = findings(&[("[[box]]", BEHIND)]);
        let found = found.iter().find(|it| it.code == "CORD007").expect("found");
        let about: Vec<_> = found.about.iter().map(Id::as_str).collect();
        assert_eq!(about, ["strip", "ext"]);
    }
}
