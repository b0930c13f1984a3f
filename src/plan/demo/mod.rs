//! Two plans for `demo`: a weekend as a family might pack for it, and the same weekend with its faults cleared. People,
//! place and gear are invented.

/// The weekend as packed, with dangers in it.
pub const WEEKEND: &str = include_str!("weekend.toml");

/// The same weekend, without the dangers and warnings that its owners can clear.
pub const MENDED: &str = include_str!("weekend-mended.toml");

/// Returns a demo plan in the reader's language. `word` returns the message with a key: a name, `demo-name-ID` of a load,
/// `site` or `generator`, or a remark, which stands in the files as its key.
#[must_use]
pub fn named(text: &str, word: &dyn Fn(&str) -> String) -> String {
    let mut of = String::new();
    let mut out = String::new();
    for line in text.lines() {
        let named = line.starts_with("name = ") && !of.is_empty();
        match line.strip_prefix("id = \"") {
            Some(id) => id.trim_end_matches('"').clone_into(&mut of),
            None if line.starts_with('[') => line.trim_matches(['[', ']']).clone_into(&mut of),
            None => {}
        }
        match line.split_once("# demo-remark-") {
            _ if named => {
                out.push_str("name = ");
                out.push_str(&super::write::quoted(&word(&format!("demo-name-{of}"))));
            }
            Some((ahead, key)) => {
                let remark = word(&format!("demo-remark-{key}"));
                out.push_str(ahead);
                out.push_str("# ");
                out.push_str(&remark.replace('\n', "\n# "));
            }
            None => out.push_str(line),
        }
        out.push('\n');
    }
    out
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::plan::{Answer, LoadKind, read};

    #[test]
    fn both_read_without_problems() {
        for text in [WEEKEND, MENDED] {
            let plan = read(text).unwrap_or_else(|problems| panic!("{problems}"));
            assert!(plan.loads.len() >= 8);
        }
    }

    #[test]
    fn the_names_of_the_first_language_are_those_in_the_file() {
        let words = crate::words::Words::english();
        for text in [WEEKEND, MENDED] {
            let told = named(text, &|key| words.text(key));
            assert_eq!(read(&told).expect("it reads"), read(text).expect("it reads"));
            assert!(words.faults().is_empty(), "{:?}", words.faults());
            // Every line is either as in the file or has its remark in words.
            let said = |line: &&str| line.contains('#') || text.contains(*line);
            assert!(told.lines().all(|line| said(&line)) && !told.contains("demo-remark"), "{told}");
            let other = named(text, &|key| format!("« {key} »"));
            assert_eq!(other.matches("# «").count(), text.matches('#').count());
            let other = read(&other).expect("it reads");
            assert!(other.loads.iter().all(|load| load.name.contains("« ")));
            assert_eq!(other.site.name.as_str(), "« demo-name-site »");
        }
    }

    #[test]
    fn mending_takes_the_splitter_and_the_medical_load_away() {
        let (packed, mended) = (read(WEEKEND).unwrap(), read(MENDED).unwrap());
        let splitter = |plan: &crate::plan::Plan| {
            plan.cords.iter().any(|cord| {
                cord.ends().len() > 1 && cord.usable_plug().is_some_and(|plug| plug.0.rating().milliamps() > 20_000)
            })
        };
        let medical =
            |plan: &crate::plan::Plan| plan.loads.iter().any(|load| load.kind == Answer::Known(LoadKind::Medical));
        assert!(splitter(&packed) && !splitter(&mended));
        assert!(medical(&packed) && !medical(&mended));
        assert!(packed.site.sleepers_at.known() < mended.site.sleepers_at.known());
    }
}
