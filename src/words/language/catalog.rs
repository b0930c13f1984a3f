//! The messages of a language folder, one by one, for judging translations: the checks and the reviewer's sheet.

use std::collections::{BTreeMap, BTreeSet};

use fluent_syntax::ast::{
    Comment, Entry, Expression, InlineExpression, Message, Pattern, PatternElement, Resource, VariantKey,
};

use crate::words::{ABOUT, Folder, pages};

/// A message's value or one of its attributes.
#[derive(Clone, Debug)]
pub struct Item {
    /// The file that contains it.
    pub file: String,
    /// `key` or `key.attribute`.
    pub key: String,
    /// The text as written, without its key.
    pub written: String,
    /// The comments that apply to it: the file's, its group's and its own.
    pub context: Vec<String>,
    /// Whether a mistake in it could harm a reader.
    pub safety: bool,
    /// Who reviewed it, if anyone.
    pub reviewed: Option<String>,
    pub(super) pattern: Pattern<String>,
}

/// All messages and terms of one folder.
#[derive(Clone, Debug, Default)]
pub struct Catalog {
    /// The messages, in file order.
    pub items: Vec<Item>,
    /// Terms by name, without the leading hyphen.
    pub terms: BTreeMap<String, Pattern<String>>,
    /// Text that is not a message, as file and text.
    pub junk: Vec<(String, String)>,
    /// Keys and terms that occur twice, as file and name.
    pub twice: Vec<(String, String)>,
}

/// How a comment with a special meaning begins.
const SAFETY: &str = "Safety";
const REVIEWED: &str = "Reviewed:";

impl Catalog {
    /// Parses the files of a folder.
    pub fn of(folder: &Folder) -> Self {
        let mut catalog = Self::default();
        let mut seen = BTreeSet::new();
        for (file, text) in folder.files.iter().filter(|(file, _)| *file != ABOUT) {
            let resource: Resource<String> =
                match fluent_syntax::parser::parse(pages::messages(file, text).into_owned()) {
                    Ok(resource) | Err((resource, _)) => resource,
                };
            let mut whole = Vec::new();
            let mut section = Vec::new();
            for entry in resource.body {
                match entry {
                    Entry::ResourceComment(comment) => whole.push(line(&comment)),
                    Entry::GroupComment(comment) => section = vec![line(&comment)],
                    Entry::Comment(_) => {}
                    Entry::Junk { content } => catalog.junk.push((file.clone(), content)),
                    Entry::Term(term) => {
                        if !seen.insert(format!("-{}", term.id.name)) {
                            catalog.twice.push((file.clone(), term.id.name.clone()));
                        }
                        catalog.terms.insert(term.id.name, term.value);
                    }
                    Entry::Message(message) => {
                        if !seen.insert(message.id.name.clone()) {
                            catalog.twice.push((file.clone(), message.id.name.clone()));
                        }
                        let remarks: Vec<String> =
                            whole.iter().chain(&section).cloned().chain(message.comment.as_ref().map(line)).collect();
                        catalog.message(file, message, &remarks);
                    }
                }
            }
        }
        catalog
    }

    fn message(&mut self, file: &str, message: Message<String>, remarks: &[String]) {
        let marked = |mark: &str| remarks.iter().find_map(|remark| remark.strip_prefix(mark));
        let safety = marked(SAFETY).is_some();
        let reviewed =
            remarks.iter().rev().find_map(|remark| remark.strip_prefix(REVIEWED)).map(|who| who.trim().to_owned());
        let id = message.id.name;
        let value = message.value.map(|pattern| (id.clone(), pattern));
        let attributes =
            message.attributes.into_iter().map(|attribute| (format!("{id}.{}", attribute.id.name), attribute.value));
        for (key, pattern) in value.into_iter().chain(attributes) {
            self.items.push(Item {
                file: file.to_owned(),
                key,
                written: written(&pattern),
                context: remarks.to_owned(),
                safety,
                reviewed: reviewed.clone(),
                pattern,
            });
        }
    }

    /// Returns the items by key. Those of later catalogs, such as a variant's, replace earlier ones.
    pub fn by_key<'c>(catalogs: impl IntoIterator<Item = &'c Self>) -> ByKey<'c> {
        catalogs.into_iter().flat_map(|catalog| &catalog.items).map(|item| (item.key.as_str(), item)).collect()
    }
}

fn line(comment: &Comment<String>) -> String {
    comment.content.join(" ").trim().to_owned()
}

/// Returns a pattern as it would be written in a file.
fn written(pattern: &Pattern<String>) -> String {
    let resource = Resource {
        body: vec![Entry::Message(Message {
            id: fluent_syntax::ast::Identifier { name: "x".to_owned() },
            value: Some(pattern.clone()),
            attributes: Vec::new(),
            comment: None,
        })],
    };
    let text = fluent_syntax::serializer::serialize(&resource);
    text.trim_start_matches("x =").trim().to_owned()
}

/// The parts of a pattern.
#[derive(Clone, Debug, Default)]
pub(super) struct Parts {
    /// The values it shows.
    pub(super) shown: BTreeSet<String>,
    /// The values it selects on, each with the names of its cases.
    pub(super) choices: Vec<(String, BTreeSet<String>)>,
    /// The terms it refers to.
    pub(super) terms: BTreeSet<String>,
    /// Its plain text, with all cases one after another.
    pub(super) text: String,
}

/// The items of a language by key.
pub(super) type ByKey<'c> = BTreeMap<&'c str, &'c Item>;

/// Returns the parts of an item, including those of messages it refers to.
pub(super) fn parts(item: &Item, all: &ByKey<'_>) -> Parts {
    let mut parts = Parts::default();
    Collecting { all, parts: &mut parts, depth: 0 }.pattern(&item.pattern);
    parts
}

/// The deepest nesting of messages that is followed. It ends a cycle.
const DEEPEST: usize = 5;

struct Collecting<'c> {
    all: &'c ByKey<'c>,
    parts: &'c mut Parts,
    depth: usize,
}

impl Collecting<'_> {
    fn pattern(&mut self, pattern: &Pattern<String>) {
        for element in &pattern.elements {
            match element {
                PatternElement::TextElement { value } => self.parts.text.push_str(value),
                PatternElement::Placeable { expression } => {
                    self.parts.text.push('\u{1}');
                    self.expression(expression);
                }
            }
        }
        self.parts.text.push(' ');
    }

    fn expression(&mut self, expression: &Expression<String>) {
        match expression {
            Expression::Inline(inline) => self.inline(inline),
            Expression::Select { selector, variants } => {
                match selector {
                    InlineExpression::VariableReference { id } => {
                        let cases = variants
                            .iter()
                            .map(|variant| match &variant.key {
                                VariantKey::Identifier { name } => name.clone(),
                                VariantKey::NumberLiteral { value } => value.clone(),
                            })
                            .collect();
                        self.parts.choices.push((id.name.clone(), cases));
                    }
                    other => self.inline(other),
                }
                for variant in variants {
                    self.pattern(&variant.value);
                }
            }
        }
    }

    fn inline(&mut self, inline: &InlineExpression<String>) {
        match inline {
            InlineExpression::VariableReference { id } => {
                self.parts.shown.insert(id.name.clone());
            }
            InlineExpression::TermReference { id, .. } => {
                self.parts.terms.insert(id.name.clone());
            }
            InlineExpression::MessageReference { id, attribute } => {
                let key = match attribute {
                    Some(attribute) => format!("{}.{}", id.name, attribute.name),
                    None => id.name.clone(),
                };
                if let Some(item) = self.all.get(key.as_str())
                    && self.depth < DEEPEST
                {
                    self.depth += 1;
                    self.pattern(&item.pattern);
                    self.depth -= 1;
                }
            }
            InlineExpression::Placeable { expression } => self.expression(expression),
            InlineExpression::FunctionReference { arguments, .. } => {
                for argument in &arguments.positional {
                    self.inline(argument);
                }
            }
            InlineExpression::StringLiteral { value } => self.parts.text.push_str(value),
            InlineExpression::NumberLiteral { .. } => {}
        }
    }
}
