//! The reviewer's sheet: a web page that shows every message beside its translations, with what it is about and who
//! reviewed it.

use std::fmt::Write as _;

use super::catalog::{ByKey, Catalog, Item};
use crate::words::{FIRST_LANGUAGE, Library, Words};

const STYLE: &str = "
body{font:15px/1.4 sans-serif;margin:2em}
table{border-collapse:collapse;width:100%;table-layout:fixed}
td,th{border:1px solid #999;padding:.4em;vertical-align:top;text-align:left;
overflow-wrap:anywhere;white-space:pre-wrap}
th{position:sticky;top:0;background:#eee}
tr.safety td:first-child{border-left:8px double #000}
code{font-size:85%}small{color:#444}
@media print{th{position:static}tr{break-inside:avoid}}
";

/// Returns the sheet for these languages, written in the language of `words`.
pub fn sheet(library: &Library, tags: &[&str], words: &Words) -> String {
    let catalogs: Vec<(&str, Catalog)> =
        tags.iter().filter_map(|tag| Some((*tag, Catalog::of(library.folder(tag)?)))).collect();
    let catalogs: Vec<(&str, ByKey<'_>)> =
        catalogs.iter().map(|(tag, catalog)| (*tag, Catalog::by_key([catalog]))).collect();
    let first = library.folder(FIRST_LANGUAGE).map(Catalog::of);
    let models = first.as_ref().map_or(&[][..], |first| &first.items);

    let title = escaped(&words.text("words-sheet-title"));
    let mut out = format!(
        "<!doctype html>\n<html lang=\"{}\"><meta charset=\"utf-8\"><title>{title}</title>\
         <style>{STYLE}</style>\n<h1>{title}</h1>\n",
        words.language(),
    );
    for line in words.text("words-sheet-how").lines() {
        let _ = writeln!(out, "<p>{}</p>", escaped(line));
    }
    for (tag, own) in &catalogs {
        let folder = library.folder(tag);
        let (safety, reviewed) = counts(models, own);
        let line = words.with(
            "words-sheet-state",
            [
                ("tag", (*tag).into()),
                ("name", folder.map_or("", |it| it.name()).into()),
                ("safety", safety.into()),
                ("reviewed", reviewed.into()),
            ],
        );
        let _ = writeln!(out, "<p>{}</p>", escaped(&line));
    }
    let mut file = "";
    for model in models {
        if model.file != file {
            if !file.is_empty() {
                out.push_str("</table>\n");
            }
            file = &model.file;
            let _ = write!(
                out,
                "<h2>{}</h2>\n<table><tr><th>{}<th lang=\"{FIRST_LANGUAGE}\">{FIRST_LANGUAGE}",
                escaped(file),
                escaped(&words.text("words-sheet-about"))
            );
            for (tag, _) in &catalogs {
                let _ = write!(out, "<th>{tag}");
            }
            out.push_str("</tr>\n");
        }
        row(&mut out, model, &catalogs, words);
    }
    out.push_str("</table>\n</html>\n");
    out
}

/// Returns how many safety messages the translation has, and how many of those were reviewed.
fn counts(models: &[Item], own: &ByKey<'_>) -> (usize, usize) {
    let safety: Vec<_> =
        models.iter().filter(|model| model.safety).filter_map(|model| own.get(model.key.as_str())).collect();
    let reviewed = safety.iter().filter(|item| item.reviewed.is_some()).count();
    (safety.len(), reviewed)
}

fn row(out: &mut String, model: &Item, catalogs: &[(&str, ByKey<'_>)], words: &Words) {
    let class = if model.safety { " class=\"safety\"" } else { "" };
    let _ = write!(out, "<tr{class}><td><code>{}</code>", escaped(&model.key));
    if model.safety {
        let _ = write!(out, "\n<b>{}</b>", escaped(&words.text("words-sheet-safety")));
    }
    for remark in &model.context {
        let _ = write!(out, "\n<small>{}</small>", escaped(remark));
    }
    let _ = write!(out, "<td lang=\"{FIRST_LANGUAGE}\">{}", escaped(&model.written));
    for (tag, own) in catalogs {
        let _ = write!(out, "<td lang=\"{tag}\">");
        let Some(item) = own.get(model.key.as_str()) else {
            // A variant omits what does not differ from its language.
            if !tag.contains('-') {
                let missing = words.text("words-sheet-missing");
                let _ = write!(out, "<b>{}</b>", escaped(&missing));
            }
            continue;
        };
        let _ = write!(out, "{}", escaped(&item.written));
        if model.safety || item.reviewed.is_some() {
            let who = match &item.reviewed {
                Some(who) => words.with("words-sheet-reviewed", [("who", who.as_str().into())]),
                None => words.text("words-sheet-not-reviewed"),
            };
            let _ = write!(out, "\n<small>{}</small>", escaped(&who));
        }
    }
    out.push_str("</tr>\n");
}

fn escaped(text: &str) -> String {
    text.replace('&', "&amp;").replace('<', "&lt;").replace('>', "&gt;")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_safety_message_says_who_has_reviewed_it() {
        let mut library = Library::default();
        let english = "# Safety\na = Stop < now\nb = Wait\n";
        library.add("en", "a.ftl", english);
        library.add("de", "a.ftl", "a = Halt\n");
        library.add("fr", "a.ftl", "# Reviewed: N. N., 2026-11-25\na = Halte\nb = Attends\n");
        let words = Words::english();
        let page = sheet(&library, &["de", "fr"], &words);
        assert_eq!(words.faults(), Vec::<String>::new());
        let rows: Vec<&str> = page.split("<tr").filter(|row| row.contains("<code>")).collect();
        assert!(rows[0].contains("Stop &lt; now"), "{}", rows[0]);
        let nobody = words.text("words-sheet-not-reviewed");
        let somebody = words.with("words-sheet-reviewed", [("who", "N. N., 2026-11-25".into())]);
        assert!(rows[0].contains(&format!("Halt\n<small>{nobody}")), "{}", rows[0]);
        assert!(rows[0].contains(&format!("Halte\n<small>{somebody}")), "{}", rows[0]);
        let missing = words.text("words-sheet-missing");
        assert!(rows[1].contains(&format!("<td lang=\"de\"><b>{missing}")), "{}", rows[1]);
        assert!(!rows[1].contains("safety"), "{}", rows[1]);
    }
}
