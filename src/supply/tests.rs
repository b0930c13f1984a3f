//! Properties of the supply tree of any plan.

use proptest::prelude::*;

use super::*;
use crate::plan::arbitrary;
use crate::quantity::Quantity;

proptest! {
    #![proptest_config(ProptestConfig::with_cases(256))]

    #[test]
    fn limits_never_rise_on_the_way_down(plan in arbitrary::plan()) {
        let supply = Supply::build(&plan);
        for (at, node) in supply.nodes.iter().enumerate() {
            let Some(parent) = node.parent else { continue };
            prop_assert!(parent.0 < at, "parents come first");
            let (above, here) = (supply.limit(parent), supply.limit(NodeIx(at)));
            prop_assert!(here.short <= above.short);
            prop_assert!(here.continuous <= above.continuous);
            prop_assert!(here.continuous <= here.short);
            // Nor do the legs: nothing downstream uses a leg that its feed lacks.
            let feed = supply.node(parent).legs.all();
            prop_assert!(node.legs.all().iter().all(|leg| feed.contains(leg)));
            // Protection only gets tighter.
            if let Some((_, above)) = supply.node(parent).protected_at {
                prop_assert!(node.protected_at.is_some_and(|(_, here)| here <= above));
            }
            // The node that sets the limit is on the path and has exactly that rating.
            prop_assert!(supply.up(NodeIx(at)).any(|(ix, _)| ix == here.short_by.node));
            prop_assert_eq!(supply.node(here.short_by.node).rating, here.short);
        }
    }

    #[test]
    fn every_part_is_in_the_tree_or_in_the_list(plan in arbitrary::plan()) {
        let supply = Supply::build(&plan);
        let parts = plan
            .cords
            .iter()
            .map(|cord| &cord.id)
            .chain(plan.boxes.iter().map(|holder| &holder.id));
        for id in parts {
            let connected = supply.nodes.iter().any(|node| {
                node.id == *id
                    && node.kind.is_gear()
            });
            let apart = supply.detached.iter().any(|detached| detached.id == *id);
            prop_assert!(connected != apart, "{id}");
        }
        for (ix, node, _, sockets) in supply.receptacles() {
            prop_assert!(supply.fed_from(ix).count() <= usize::from(sockets), "{}", node.id);
        }
    }

    #[test]
    fn derating_never_adds(plan in arbitrary::plan()) {
        let supply = Supply::build(&plan);
        if let Some(marked) = plan.generator.rated.known() {
            // The marking is for one set; parallel sets add up.
            let all = marked.count() * plan.generator.sets();
            prop_assert!(supply.rated.count() <= all);
        }
        prop_assert!(supply.rated.count() >= 0);
        prop_assert!(supply.peak >= supply.rated);
    }
}
