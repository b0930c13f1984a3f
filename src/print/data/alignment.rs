//! The alignment sheet, which shows where a printer places its print.

use serde::Serialize;

use super::super::stock::{StockData, millimetres};
use super::{Common, Context, PrintError};

/// The data of `alignment.typ`.
#[derive(Debug, Serialize)]
pub(super) struct Alignment {
    common: Common,
    stock: StockData,
    offset_across: f64,
    offset_down: f64,
    steps: Vec<String>,
}

pub(super) fn data(context: &Context<'_>) -> Result<Alignment, PrintError> {
    let stock = context.options.labels_on()?;
    let offset = context.options.offset;
    Ok(Alignment {
        common: context.common("alignment-title", &["alignment-head", "scale-bar"]),
        stock: stock.data(),
        offset_across: millimetres(offset.across),
        offset_down: millimetres(offset.down),
        steps: context.sentences(&["alignment-1", "alignment-2", "alignment-3"]),
    })
}
