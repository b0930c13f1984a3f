//! Merging changes to a plan back into its file, with comments, order, and everything else preserved.
//!
//! Tested together with [`super::reopen`].

use toml::{Table, Value};
use toml_edit::{Array, ArrayOfTables, DocumentMut, Item, TableLike};

use crate::plan::{self, Plan};

/// Returns the file with the differences between two plans applied, and everything else as it was, comments and order
/// included.
///
/// `None` if `original` is not TOML.
#[must_use]
pub fn merge(original: &str, before: &Plan, after: &Plan) -> Option<String> {
    let mut document: DocumentMut = original.parse().ok()?;
    let before: Table = toml::from_str(&plan::write(before)).ok()?;
    let after: Table = toml::from_str(&plan::write(after)).ok()?;
    merge_table(document.as_table_mut(), &before, &after);
    Some(document.to_string())
}

/// A list of parts with ids, either an array of tables with headings or an inline array.
trait Parts {
    fn count(&self) -> usize;
    fn part(&mut self, at: usize) -> Option<&mut dyn TableLike>;
    fn leave_out(&mut self, at: usize);
    fn add(&mut self, part: &Table);
}

impl Parts for ArrayOfTables {
    fn count(&self) -> usize {
        self.len()
    }

    fn part(&mut self, at: usize) -> Option<&mut dyn TableLike> {
        self.get_mut(at).map(|table| table as &mut dyn TableLike)
    }

    fn leave_out(&mut self, at: usize) {
        self.remove(at);
    }

    fn add(&mut self, part: &Table) {
        self.push(table_of(part));
    }
}

impl Parts for Array {
    fn count(&self) -> usize {
        self.len()
    }

    fn part(&mut self, at: usize) -> Option<&mut dyn TableLike> {
        let table = self.get_mut(at)?.as_inline_table_mut()?;
        Some(table)
    }

    fn leave_out(&mut self, at: usize) {
        self.remove(at);
    }

    fn add(&mut self, part: &Table) {
        self.push(table_of(part).into_inline_table());
    }
}

/// Returns the part with this id and its index.
fn part_of<'a>(target: &'a mut dyn Parts, id: &str) -> Option<(usize, &'a mut dyn TableLike)> {
    let at = (0..target.count()).find(|at| {
        let part = target.part(*at);
        part.and_then(|part| part.get("id")?.as_str()) == Some(id)
    })?;
    target.part(at).map(|part| (at, part))
}

fn merge_table(target: &mut dyn TableLike, before: &Table, after: &Table) {
    for key in before.keys().filter(|key| !after.contains_key(*key)) {
        target.remove(key);
    }
    for (key, new) in after {
        let old = before.get(key);
        if old == Some(new) {
            continue;
        }
        let empty = Table::new();
        let list = || old.and_then(Value::as_array).map_or(&[][..], Vec::as_slice);
        match (new, target.get_mut(key)) {
            (Value::Table(new), Some(item)) if item.is_table_like() => {
                let old = old.and_then(Value::as_table).unwrap_or(&empty);
                if let Some(inner) = item.as_table_like_mut() {
                    merge_table(inner, old, new);
                }
            }
            (Value::Array(new), Some(Item::ArrayOfTables(inner))) => {
                merge_list(inner, list(), new);
            }
            // Parts without ids cannot be told apart. Such a list is replaced whole, since the interview asks for
            // everything in it.
            (Value::Array(new), Some(Item::Value(toml_edit::Value::Array(inner))))
                if new.iter().chain(list()).all(|part| id_of(part).is_some()) =>
            {
                merge_list(inner, list(), new);
            }
            // The list was "unknown" until now. Each part gets a heading of its own.
            (Value::Array(_), Some(Item::Value(toml_edit::Value::String(_)))) => {
                target.insert(key, item_of(key, new));
            }
            (_, Some(Item::Value(there))) => {
                let mut value = value_of(new);
                *value.decor_mut() = there.decor().clone();
                *there = value;
            }
            (_, _) => {
                target.insert(key, item_of(key, new));
            }
        }
    }
}

fn id_of(value: &Value) -> Option<&str> {
    value.get("id").and_then(Value::as_str)
}

fn merge_list(target: &mut dyn Parts, before: &[Value], after: &[Value]) {
    let has = |all: &[Value], id: Option<&str>| all.iter().any(|other| id_of(other) == id);
    // If the number of parts is the same, a new id in the place of an old one is a rename.
    let same_count = before.len() == after.len();
    let renamed: Vec<(&Value, &Value)> = before
        .iter()
        .zip(after)
        .filter(|(old, new)| same_count && !has(after, id_of(old)) && !has(before, id_of(new)))
        .collect();
    let empty = Table::new();
    for old in before {
        let Some(id) = id_of(old) else { continue };
        let new_name = renamed.iter().find(|(one, _)| id_of(one) == Some(id));
        let new = new_name.map(|(_, new)| *new).or_else(|| after.iter().find(|new| id_of(new) == Some(id)));
        let Some((place, part)) = part_of(target, id) else {
            continue;
        };
        if let Some(new) = new {
            let tables = (old.as_table(), new.as_table());
            merge_table(part, tables.0.unwrap_or(&empty), tables.1.unwrap_or(&empty));
        } else {
            target.leave_out(place);
        }
    }
    for new in after {
        let known = has(before, id_of(new)) || renamed.iter().any(|(_, one)| one == &new);
        if let (false, Some(table)) = (known, new.as_table()) {
            target.add(table);
        }
    }
}

/// Builds a table without a position, so that it is written after the existing ones.
fn table_of(from: &Table) -> toml_edit::Table {
    let mut table = toml_edit::Table::new();
    table.decor_mut().set_prefix("\n");
    // As people write them: id first, then name.
    let rank = |key: &str| match key {
        "id" => 0,
        "name" => 1,
        _ => 2,
    };
    let mut entries: Vec<(&String, &Value)> = from.iter().collect();
    entries.sort_by_key(|(key, _)| rank(key));
    for (key, value) in entries {
        table.insert(key, item_of(key, value));
    }
    table
}

fn item_of(key: &str, value: &Value) -> Item {
    match value {
        Value::Table(inner) if matches!(key, "site" | "generator") => Item::Table(table_of(inner)),
        Value::Array(all) if matches!(key, "outlet" | "cord" | "box" | "load") => {
            let mut tables = ArrayOfTables::new();
            for table in all.iter().filter_map(Value::as_table) {
                tables.push(table_of(table));
            }
            Item::ArrayOfTables(tables)
        }
        value => Item::Value(value_of(value)),
    }
}

fn value_of(value: &Value) -> toml_edit::Value {
    match value {
        Value::String(text) => text.as_str().into(),
        Value::Integer(number) => (*number).into(),
        Value::Float(number) => (*number).into(),
        Value::Boolean(yes) => (*yes).into(),
        Value::Datetime(time) => time.to_string().into(),
        Value::Array(all) => toml_edit::Value::Array(all.iter().map(value_of).collect()),
        Value::Table(table) => {
            toml_edit::Value::InlineTable(table.iter().map(|(key, value)| (key.clone(), value_of(value))).collect())
        }
    }
}
