//! Finds the lines of a plan file where its parts begin.

use std::collections::BTreeMap;

use toml::Spanned;
use toml::de::{DeTable, DeValue};

/// Returns the line, counting from 1, where each part of a plan file begins. Parts are named by their ids, the site and
/// the generator by the keys "site" and "generator".
#[must_use]
pub fn lines(text: &str) -> BTreeMap<String, usize> {
    let (root, _) = DeTable::parse_recoverable(text);
    let mut lines = BTreeMap::new();
    let mut put = |id: &str, value: &Spanned<DeValue<'_>>| {
        let line = text.get(..value.span().start).map_or(0, |before| before.matches('\n').count()) + 1;
        lines.entry(id.to_owned()).or_insert(line);
    };
    let root = root.get_ref();
    for key in ["site", "generator"] {
        root.get(key).into_iter().for_each(|value| put(key, value));
    }
    let mut all: Vec<&Spanned<DeValue<'_>>> = Vec::new();
    all.extend(root.get("generator").and_then(|value| value.get_ref().as_table()?.get("outlet")));
    all.extend(["cord", "box", "load"].into_iter().filter_map(|key| root.get(key)));
    while let Some(list) = all.pop() {
        for part in list.get_ref().as_array().into_iter().flatten() {
            let Some(table) = part.get_ref().as_table() else {
                continue;
            };
            if let Some(id) = table.get("id").and_then(|id| id.get_ref().as_str()) {
                put(id, part);
            }
            all.extend(table.get("outlet"));
        }
    }
    lines
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::plan::demo::WEEKEND;

    /// Each line is the heading of its part, and every part has one.
    #[test]
    fn parts_stand_where_they_are_said_to() {
        let lines = lines(WEEKEND);
        let all: Vec<&str> = WEEKEND.lines().collect();
        assert_eq!(lines.len(), WEEKEND.matches("\nid = ").count() + 2);
        for (id, line) in lines {
            let heading = all[line - 1];
            assert!(heading.starts_with('['), "{id}: {heading}");
            let own = format!("id = \"{id}\"");
            assert!(heading == format!("[{id}]") || all[line..line + 3].iter().any(|it| it.starts_with(&own)), "{id}");
        }
    }

    #[test]
    fn a_file_that_is_no_plan_has_no_parts() {
        assert!(lines("x = [").is_empty() && lines("cord = 3\nbox = [1, {}]").is_empty());
    }
}
