//! Single-phase motors by horsepower and code letter.

use std::sync::LazyLock;

use serde::Deserialize;

use super::data::{self, Cited, Rows};
use super::source::Source;
use crate::quantity::{ApparentPower, Current, Voltage, narrow};

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct File {
    full_load: Rows<FullLoadText>,
    locked_rotor: Rows<LetterText>,
    locked_rotor_multiple: Multiple,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct FullLoadText {
    millihorsepower: u32,
    #[serde(rename = "name")]
    _name: String,
    amps: String,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct LetterText {
    letter: char,
    kva: String,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Multiple {
    source: Cited,
    multiple: i64,
}

/// The tables in this module.
#[derive(Debug)]
pub struct Motors {
    /// Full-load current at 115 V by thousandths of a horsepower, smallest first.
    pub full_load: Vec<(u32, Current)>,
    /// The source of `full_load`.
    pub full_load_source: Source,
    /// The greatest locked-rotor volt-amperes per horsepower, by code letter.
    pub locked_rotor: Vec<(char, ApparentPower)>,
    /// The source of `locked_rotor`.
    pub locked_rotor_source: Source,
    /// The ratio of locked-rotor to full-load current where there is no code letter.
    pub multiple: i64,
    /// The source of `multiple`.
    pub multiple_source: Source,
}

/// The tables, read once.
pub static MOTORS: LazyLock<Motors> = LazyLock::new(|| {
    let file: File = data::read("motors.toml", include_str!("motors.toml"));
    Motors {
        full_load: file
            .full_load
            .rows
            .iter()
            .map(|row| {
                let amps = Current::from_milliamps(data::count(&row.amps, 3));
                (row.millihorsepower, amps)
            })
            .collect(),
        full_load_source: file.full_load.source.into(),
        locked_rotor: file
            .locked_rotor
            .rows
            .iter()
            .map(|row| {
                // The table is in kVA; the count is in thousandths of a VA.
                let apparent = ApparentPower::from_millivolt_amps(data::count(&row.kva, 6));
                (row.letter, apparent)
            })
            .collect(),
        locked_rotor_source: file.locked_rotor.source.into(),
        multiple: file.locked_rotor_multiple.multiple,
        multiple_source: file.locked_rotor_multiple.source.into(),
    }
});

/// Returns the full-load current at 115 V (NEC table 430.248) of a motor this large, or of the next larger one in the
/// table. Beyond the table it is proportional to the last row, rounded up.
#[must_use]
pub fn full_load_at_115(millihorsepower: u32) -> Current {
    let rows = &MOTORS.full_load;
    rows.iter().find(|(listed, _)| *listed >= millihorsepower).map_or_else(
        || {
            let (listed, amps) = rows[rows.len() - 1];
            let up = i128::from(amps.milliamps()) * i128::from(millihorsepower);
            let listed = i128::from(listed);
            Current::from_milliamps(narrow((up + listed - 1) / listed))
        },
        |(_, amps)| *amps,
    )
}

/// Returns the code letter in a text, if the table has it. Of the letters up to V it lacks I, O and Q.
#[must_use]
pub fn code_letter(text: &str) -> Option<char> {
    let mut letters = MOTORS.locked_rotor.iter().map(|(letter, _)| *letter);
    letters.find(|letter| text.eq_ignore_ascii_case(letter.encode_utf8(&mut [0; 4])))
}

/// The code letter without an upper end. Its figure is the least that it stands for.
pub const NO_UPPER_END: char = 'V';

/// Returns the greatest locked-rotor apparent power per horsepower for a code letter (NEC table 430.7(B)), or the least
/// for V, which has no upper end. `None` if it is no code letter.
#[must_use]
pub fn locked_rotor_per_horsepower(letter: char) -> Option<ApparentPower> {
    MOTORS.locked_rotor.iter().find(|(listed, _)| *listed == letter.to_ascii_uppercase()).map(|(_, apparent)| *apparent)
}

/// Half the rated voltage of a motor that takes two legs: 115 V, as in 430.248. Its code letter is based on its own
/// rated voltage, not on that of the supply.
pub const RATED_VOLTS: Voltage = Voltage::from_millivolts(115_000);

/// Returns the locked-rotor apparent power of a motor, at the upper end of its code letter.
#[must_use]
pub fn locked_rotor(millihorsepower: u32, letter: char) -> Option<ApparentPower> {
    let per = locked_rotor_per_horsepower(letter)?;
    let up = i128::from(per.millivolt_amps()) * i128::from(millihorsepower);
    Some(ApparentPower::from_millivolt_amps(narrow((up + 999) / 1000)))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_printed_table_430_248() {
        let printed = [
            (167, 4400),
            (250, 5800),
            (334, 7200),
            (500, 9800),
            (750, 13_800),
            (1000, 16_000),
            (1500, 20_000),
            (2000, 24_000),
            (3000, 34_000),
        ];
        for (millihorsepower, milliamps) in printed {
            assert_eq!(full_load_at_115(millihorsepower).milliamps(), milliamps);
        }
        assert_eq!(MOTORS.full_load.len(), printed.len());
        // 1/6 and 1/3 hp, however their third decimal was rounded.
        assert_eq!(full_load_at_115(166).milliamps(), 4400);
        assert_eq!(full_load_at_115(333).milliamps(), 7200);
        // Between two rows the larger motor counts.
        assert_eq!(full_load_at_115(501).milliamps(), 13_800);
        assert_eq!(full_load_at_115(6000).milliamps(), 68_000);
    }

    #[test]
    fn half_a_horsepower_with_its_rotor_locked() {
        // NEC 430.251(A): 1/2 hp at 115 V, 58.8 A.
        let amps = full_load_at_115(500).milliamps() * MOTORS.multiple;
        assert_eq!(amps, 58_800);
    }

    #[test]
    fn code_letter_g_at_its_upper_end() {
        // 20 hp, 460 V, three-phase, code G (NEC table 430.7(B)): 125.8 kVA, 158 A.
        let apparent = locked_rotor(20_000, 'G').map(ApparentPower::millivolt_amps);
        assert_eq!(apparent, Some(125_800_000));
        // 125 800 / (460 x 1.7320508) = 157.89 A.
        let amps = 125_800_000_i128 * 10_000_000 / (460 * 17_320_508);
        assert_eq!((amps + 500) / 1000, 158);
        assert_eq!((amps + 50) / 100, 1579);
    }

    #[test]
    fn the_printed_table_430_7_b() {
        let printed = [
            ('A', 3140),
            ('B', 3540),
            ('C', 3990),
            ('D', 4490),
            ('E', 4990),
            ('F', 5590),
            ('G', 6290),
            ('H', 7090),
            ('J', 7990),
            ('K', 8990),
            ('L', 9990),
            ('M', 11_190),
            ('N', 12_490),
            ('P', 13_990),
            ('R', 15_990),
            ('S', 17_990),
            ('T', 19_990),
            ('U', 22_390),
            ('V', 22_400),
        ];
        for (letter, volt_amps) in printed {
            let per = locked_rotor_per_horsepower(letter).map(ApparentPower::millivolt_amps);
            assert_eq!(per, Some(volt_amps * 1000), "{letter}");
        }
        for none in ['I', 'O', 'Q', '?'] {
            assert_eq!(locked_rotor_per_horsepower(none), None, "{none}");
        }
    }
}
