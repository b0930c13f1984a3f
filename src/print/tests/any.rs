//! Every plan prints, whatever it says. A camper with an odd plan needs the prints most.

use proptest::prelude::*;
use proptest::test_runner::{Config, TestRunner};

use super::hostile::languages;
use super::*;
use crate::plan::arbitrary;

/// Replaces names with ones that every font can print. [`super::hostile`] tests the others.
fn with_plain_names(mut plan: Plan) -> Plan {
    for name in [&mut plan.site.name, &mut plan.generator.name] {
        if !name.is_empty() {
            "Juniper Cove".clone_into(name);
        }
    }
    for (number, load) in plan.loads.iter_mut().enumerate() {
        load.name = format!("Cooler {number}");
    }
    plan
}

/// All prints, in each language and card size in turn.
#[test]
fn every_plan_prints() {
    let languages = languages();
    let cards = [CardSize::Sheet, CardSize::Half, CardSize::Pocket, CardSize::Phone];
    let turn = std::cell::Cell::new(0);
    let mut runner =
        TestRunner::new(Config { cases: 9, failure_persistence: None, max_shrink_iters: 0, ..Config::default() });
    let plans = prop_oneof![1 => arbitrary::plan(), 3 => arbitrary::camp()];
    runner
        .run(&plans.prop_map(with_plain_names), |plan| {
            let now = turn.get();
            turn.set(now + 1);
            let words = &languages[now % languages.len()];
            let options = Options {
                card: cards[(now + now / cards.len()) % cards.len()],
                paper: [Paper::Letter, Paper::A4][now % 2],
                ..Options::default()
            };
            let report = crate::judge::judge(&plan);
            render(&plan, &report, words, &options).map(|_| ()).map_err(|error| {
                let text = crate::plan::write(&plan);
                let language = words.language();
                TestCaseError::fail(format!("{language}, {:?}: {error}\n{text}", options.card))
            })
        })
        .expect("printed");
}

/// A long id may be refused on small labels and narrow tape. Our own sentences never are.
#[test]
fn every_plan_prints_on_every_stock_or_an_id_is_named() {
    let stocks = Stock::names();
    let languages = languages();
    let turn = std::cell::Cell::new(0);
    let cases = u32::try_from(stocks.len()).expect("few");
    let mut runner =
        TestRunner::new(Config { cases, failure_persistence: None, max_shrink_iters: 0, ..Config::default() });
    runner
        .run(&arbitrary::camp().prop_map(with_plain_names), |plan| {
            let now = turn.get();
            turn.set(now + 1);
            let stock = &stocks[now % stocks.len()];
            let options = Options {
                stock: Some(Stock::named(stock).expect("a stock")),
                only: vec![Document::Labels],
                ..Options::default()
            };
            let report = crate::judge::judge(&plan);
            let ids: Vec<_> = report.figures.limits.iter().map(|limit| &limit.id).collect();
            let of_user = |text: &str| ids.iter().any(|id| text.contains(id.as_str()));
            let words = &languages[(now + now / stocks.len()) % languages.len()];
            match render(&plan, &report, words, &options) {
                Ok(_) => Ok(()),
                Err(PrintError::TooLong { misfits, .. }) if misfits.iter().all(|misfit| of_user(&misfit.text)) => {
                    Ok(())
                }
                Err(error) => Err(TestCaseError::fail(format!(
                    "{stock}, {}: {error}\n{}",
                    words.language(),
                    crate::plan::write(&plan)
                ))),
            }
        })
        .expect("printed, or an id is too long");
}

/// A spare cord about which nothing is known has the longest facts on its flag.
#[test]
fn a_cord_that_nobody_knows_prints_on_the_narrowest_stock() {
    let (mut plan, _) = small();
    plan.cords.push(Cord {
        id: Id::new("cord-1").expect("an id"),
        from: None,
        wire: Answer::Unknown,
        length: Answer::Unknown,
        ..plan.cords[0].clone()
    });
    let report = crate::judge::judge(&plan);
    for stock in ["letter-30", "roll-12"] {
        for words in languages() {
            let options = Options {
                stock: Some(Stock::named(stock).expect("a stock")),
                only: vec![Document::Labels],
                ..Options::default()
            };
            let printed = render(&plan, &report, &words, &options);
            assert!(printed.is_ok(), "{stock}, {}: {:?}", words.language(), printed.err());
        }
    }
}

/// The longest name a plan may have, in the widest letters or with as many words as a family has, takes more lines but
/// is never refused.
#[test]
fn every_name_that_is_read_prints_on_every_size() {
    let wide = "W".repeat(LONGEST_NAME);
    let many = "Aunt Wilhelmina Montgomery’s Western Meadow Family Weekend W";
    assert_eq!(many.chars().count(), LONGEST_NAME);
    for name in [&wide, many] {
        let (mut plan, _) = demo(crate::plan::demo::MENDED);
        renamed(&mut plan, name);
        let plan = crate::plan::read(&crate::plan::write(&plan)).expect("a plan that is read");
        let report = crate::judge::build(&plan);
        for card in [CardSize::Sheet, CardSize::Half, CardSize::Pocket, CardSize::Phone] {
            for paper in [Paper::Letter, Paper::A4] {
                let only = match card {
                    CardSize::Sheet => Document::ALL.to_vec(),
                    _ => vec![Document::Card],
                };
                let options = Options { paper, only, card, ..Options::default() };
                let files = print(&plan, &report, &options)
                    .unwrap_or_else(|error| panic!("{name} {card:?} {paper:?}: {error}"));
                show(&files, &format!("name-{card:?}-{paper:?}"));
                // A title contains no marks for possible line breaks.
                let pdfs = files.iter().filter(|(name, _)| name.ends_with("pdf"));
                for (_, pdf) in pdfs {
                    let pdf = pdf_extract::Document::load_mem(pdf).expect("a PDF");
                    let info = pdf.trailer.get(b"Info").expect("what it is");
                    let info = pdf.get_object(info.as_reference().expect("elsewhere"));
                    let info = info.and_then(pdf_extract::Object::as_dict).expect("what");
                    let title = info.get(b"Title").expect("a title");
                    let title = pdf_extract::decode_text_string(title).expect("text");
                    assert!(title.contains(name), "{title}");
                }
            }
        }
    }
}
