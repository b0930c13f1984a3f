//! The forms of typed answers: what each accepts, and why a text is refused.

use rust_decimal::Decimal;

use crate::plan::bounds::{self, Bounds, Whole};
use crate::plan::{Answer, Draw, Id, LONGEST_NAME, Leg, Noise, Refusal, Runtime, Span, can_print, hides};
use crate::quantity::{Current, Length, Power, Quantity, Ratio, Temperature, Unit, Volume, Wire};
use crate::tables::motors::code_letter;
use crate::tables::shape::Receptacle;

/// A form of typed answer.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Form {
    /// The rated power or the peak of a generator, or both.
    Watts,
    /// A power.
    Power(&'static Bounds<Power>),
    /// A current.
    Current(&'static Bounds<Current>),
    /// A length or distance.
    Length(&'static Bounds<Length>),
    /// A temperature.
    Temperature(&'static Bounds<Temperature>),
    /// A volume.
    Volume(&'static Bounds<Volume>),
    /// A bare ratio up to one.
    Ratio(&'static Bounds<Ratio>),
    /// A whole number of things.
    Count(Whole),
    /// A short text.
    Name,
    /// The id of a part.
    Ident,
    /// The print along a cord: wire size, number of conductors, and the letters of the jacket.
    Jacket,
    /// A wire size.
    Wire,
    /// A noise level at a distance, optionally at a share of load.
    Noise,
    /// Shares of load, and the hours that a tank lasts at each.
    Runtime,
    /// One or more spans between times of day.
    Spans,
    /// A draw in watts, amperes, or horsepower.
    Draw,
    /// A starting draw in watts or amperes.
    Start,
    /// The leg of each of several outlets, or one for all of them.
    Legs,
}

impl Form {
    /// Whether the reader's number format matters.
    #[must_use]
    pub const fn has_numbers(self) -> bool {
        !matches!(self, Self::Count(_) | Self::Name | Self::Ident | Self::Spans | Self::Legs)
    }

    /// Returns the unit that a bare number most likely has, or `None` if in doubt.
    ///
    /// The draw of a load above 100 is in watts, since no plug carries that many amperes.
    pub(super) fn likely_unit(self, number: Decimal) -> Option<Unit> {
        match self {
            Self::Watts | Self::Power(_) => Some(Unit::Watt),
            Self::Current(_) => Some(Unit::Ampere),
            Self::Length(_) => Some(Unit::Metre),
            Self::Temperature(_) => Some(Unit::Celsius),
            Self::Volume(_) => Some(Unit::Litre),
            Self::Draw | Self::Start => (number > Decimal::ONE_HUNDRED).then_some(Unit::Watt),
            _ => None,
        }
    }

    /// Checks that the text is an answer of this form, which a plan file would accept too.
    ///
    /// # Errors
    /// With the reason, when it is not.
    pub fn check(self, text: &str) -> Result<(), Refusal> {
        match self {
            Self::Watts => watts(text).map(drop),
            Self::Power(bounds) => quantity(text, bounds).map(drop),
            Self::Current(bounds) => quantity(text, bounds).map(drop),
            Self::Length(bounds) => quantity(text, bounds).map(drop),
            Self::Temperature(bounds) => quantity(text, bounds).map(drop),
            Self::Volume(bounds) => quantity(text, bounds).map(drop),
            Self::Ratio(bounds) => quantity(text, bounds).map(drop),
            Self::Count(bounds) => count(text, bounds).map(drop),
            Self::Name => name(text),
            Self::Ident => Id::new(text.trim()).map(drop).ok_or_else(|| Refusal::new("ident")),
            Self::Jacket => jacket(text).map(drop),
            Self::Wire => Wire::parse(text).map(drop).map_err(|_| Refusal::new("wire")),
            Self::Noise => noise(text).map(drop),
            Self::Runtime => runtime(text).map(drop),
            Self::Spans => spans(text).map(drop),
            Self::Draw => draw(text).map(drop),
            Self::Start => start(text).map(drop),
            Self::Legs => legs(text).map(drop),
        }
    }
}

/// Parses a quantity with its unit, within its bounds.
pub(super) fn quantity<Q: Quantity>(text: &str, bounds: &Bounds<Q>) -> Result<Q, Refusal> {
    bounds.read(text).map_err(|why| match why.key {
        "two-readings" | "out-of-range" => why,
        _ if Q::UNIT == Unit::One => Refusal { key: "ratio", ..why },
        _ => why,
    })
}

/// Parses a quantity as part of an answer.
///
/// `None` if the text is not such a quantity at all, so that another form may fit.
fn part<Q: Quantity>(text: &str, bounds: &Bounds<Q>) -> Option<Result<Q, Refusal>> {
    match bounds.read(text) {
        Err(why) if !matches!(why.key, "two-readings" | "out-of-range") => None,
        read => Some(read),
    }
}

/// The largest count that can be marked of one item. More is a slip.
pub(super) const MOST_PICKED: u8 = 12;

/// Parses "2 x kettle, phone" into counts and values. "done" means none.
pub(super) fn picks(text: &str) -> Result<Vec<(u8, &str)>, Refusal> {
    if text.trim() == "done" {
        return Ok(Vec::new());
    }
    let pieces = text.split(',').map(str::trim).filter(|it| !it.is_empty());
    pieces.map(pick).collect()
}

/// Parses one item of such a list.
pub(super) fn pick(piece: &str) -> Result<(u8, &str), Refusal> {
    match piece.split_once([' ', 'x', '×']) {
        Some((number, rest)) if number.bytes().all(|c| c.is_ascii_digit()) && !number.is_empty() => {
            let rest = rest.trim_start();
            let value = rest.strip_prefix(['x', '×']).map_or(rest, str::trim_start);
            // "30 A cord" does not begin with a count.
            if value == rest && !piece[number.len()..].starts_with(['x', '×']) {
                return Ok((1, piece));
            }
            let (least, most) = (1, u8::MAX);
            Ok((count(number, Whole { least, most })?, value))
        }
        _ => Ok((1, piece)),
    }
}

/// Formats one item of such a list.
pub(super) fn picked(count: u8, value: &str) -> String {
    if count == 1 { value.to_owned() } else { format!("{count} × {value}") }
}

/// Parses "2800 W", "2800 W, 3300 W" or "2800/3300 W" into the rated power and, with two figures, the peak.
pub(super) fn watts(text: &str) -> Result<(String, Option<String>), Refusal> {
    // A comma between digits is part of a number, so only a comma and a space separate figures.
    let text = text.replace(", ", ";");
    let pieces = text.split([';', '/']).map(str::trim);
    let pieces: Vec<&str> = pieces.filter(|piece| !piece.is_empty()).collect();
    let [one, other] = pieces.as_slice() else {
        return quantity(&text, &bounds::RATED).map(|_| (text, None));
    };
    // One unit may serve both figures.
    let unit = |piece: &str| piece.trim_start_matches(|c: char| !c.is_alphabetic()).to_owned();
    let whole = |piece: &str, beside: &str| {
        if unit(piece).is_empty() { format!("{piece} {}", unit(beside)) } else { piece.to_owned() }
    };
    let (one, other) = (whole(one, other), whole(other, one));
    let (first, second) = (quantity(&one, &bounds::RATED)?, quantity(&other, &bounds::PEAK)?);
    Ok(if first <= second { (one, Some(other)) } else { (other, Some(one)) })
}

pub(super) fn count(text: &str, bounds: Whole) -> Result<u8, Refusal> {
    text.trim().parse().ok().filter(|count| bounds.hold(*count)).ok_or_else(|| {
        Refusal::new("count").with("least", bounds.least.to_string()).with("most", bounds.most.to_string())
    })
}

fn name(text: &str) -> Result<(), Refusal> {
    let text = text.trim();
    if text.is_empty() {
        return Err(Refusal::new("name-empty"));
    }
    if text.chars().any(hides) {
        return Err(Refusal::new("name-signs"));
    }
    let strange: String = text.chars().filter(|c| !can_print(*c)).collect();
    if !strange.is_empty() {
        return Err(Refusal::new("name-letters").with("characters", strange));
    }
    if text.chars().count() > LONGEST_NAME {
        return Err(Refusal::new("name-long").with("most", LONGEST_NAME.to_string()));
    }
    Ok(())
}

/// What the print on a cord says.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Jacket {
    /// The size of its conductors.
    pub wire: Wire,
    /// The number of conductors, including ground.
    pub conductors: Option<u8>,
    /// Whether the letters mark it for outdoor use.
    pub outdoor: Option<bool>,
}

/// Parses "12/3", "SJTW 12/3", "12 AWG 3C", "14AWG/3C", "3 x 2.5 mm²" or "3G1.5".
///
/// The letter W for outdoor use is that of the flexible cord types of NEC table 400.4 (from memory, not verified).
pub(super) fn jacket(text: &str) -> Result<Jacket, Refusal> {
    let wrong = || Refusal::new("jacket");
    // A comma between digits is part of a number.
    let text = text.trim().replace(", ", "; ");
    let upper = text.to_uppercase().replace('²', "2");
    let mut outdoor = None;
    for word in upper.split(|c: char| !c.is_ascii_alphanumeric()) {
        let letters =
            word.len() >= 2 && word.starts_with(['S', 'H']) && word.chars().all(|c| "SJTEOWVPHRX".contains(c));
        if letters {
            outdoor = Some(word.contains('W'));
        }
    }
    let squeezed: String = upper.chars().filter(|c| !c.is_whitespace()).collect();
    let numbers = split_numbers(&squeezed);
    let conductors = |text: &str| count(text, bounds::CONDUCTORS).ok();
    for (at, (number, after)) in numbers.iter().enumerate() {
        let next = numbers.get(at + 1).map(|(next, tail)| (next.as_str(), *tail));
        // "12/3", "12AWG3C", "12AWG/3".
        let awg = after.strip_prefix("AWG").or_else(|| after.strip_prefix("GA"));
        if after.starts_with('/') && !after.starts_with("/C") || awg.is_some() {
            let wire = Wire::parse(&format!("{number} AWG")).map_err(|_| wrong())?;
            let several = next
                .filter(|(_, tail)| {
                    after.starts_with('/')
                        || tail.starts_with('C')
                        || tail.starts_with("/C")
                        || awg.is_some_and(|rest| rest.starts_with('/'))
                })
                .and_then(|(next, _)| conductors(next))
                // "3/C 12 AWG" has the count first.
                .or_else(|| {
                    at.checked_sub(1)
                        .and_then(|before| numbers.get(before))
                        .filter(|(_, tail)| tail.starts_with("/C") || tail.starts_with('C'))
                        .and_then(|(count, _)| conductors(count))
                });
            if after.starts_with('/') && several.is_none() {
                return Err(wrong());
            }
            return Ok(Jacket { wire, conductors: several, outdoor });
        }
        // "3G1.5", "3X2.5MM2".
        if let (true, Some((area, _))) = (*after == "G" || *after == "X", next) {
            let wire = Wire::parse(&format!("{area} mm²")).map_err(|_| wrong())?;
            return Ok(Jacket { wire, conductors: conductors(number), outdoor });
        }
        if after.starts_with("MM") || after.starts_with("SQMM") {
            let wire = Wire::parse(&format!("{number} mm²")).map_err(|_| wrong())?;
            return Ok(Jacket { wire, conductors: None, outdoor });
        }
    }
    Err(wrong())
}

/// Splits a text into its numbers, each with the text between it and the next.
fn split_numbers(text: &str) -> Vec<(String, &str)> {
    let mut found = Vec::new();
    let mut rest = text;
    while let Some(start) = rest.find(|c: char| c.is_ascii_digit()) {
        let tail = &rest[start..];
        let end = tail.find(|c: char| !(c.is_ascii_digit() || matches!(c, '.' | ','))).unwrap_or(tail.len());
        let number = tail[..end].replace(',', ".");
        let after = &tail[end..];
        let next = after.find(|c: char| c.is_ascii_digit()).unwrap_or(after.len());
        found.push((number, &after[..next]));
        rest = &after[next..];
    }
    found
}

/// Parses receptacle shapes separated by commas. `None` if any is not a known one.
pub(super) fn faces(text: &str) -> Option<Vec<Receptacle>> {
    text.split(',').map(Receptacle::named).collect()
}

/// Parses "58 dBA at 23 ft" or "58 dBA, 7 m, 25 %".
pub(super) fn noise(text: &str) -> Result<Noise, Refusal> {
    let wrong = || Refusal::new("noise");
    let text = text.replace(" at ", ",").replace('@', ",");
    let mut parts = text.split([',', ';']).map(str::trim).filter(|p| !p.is_empty());
    let level = part(parts.next().ok_or_else(wrong)?, &bounds::NOISE_LEVEL);
    let level = level.ok_or_else(wrong)??;
    let at = part(parts.next().ok_or_else(wrong)?, &bounds::NOISE_AT);
    let at = at.ok_or_else(wrong)??;
    let load = match parts.next() {
        None => Answer::Unknown,
        Some(share) => Answer::Known(part(share, &bounds::SHARE).ok_or_else(wrong)??),
    };
    if parts.next().is_some() {
        return Err(wrong());
    }
    Ok(Noise { level, at, load })
}

/// Parses "25 % 8.5 h, 100 % 3.1 h".
pub(super) fn runtime(text: &str) -> Result<Vec<Runtime>, Refusal> {
    let wrong = || Refusal::new("runtime");
    let found = text
        .split([',', ';'])
        .map(str::trim)
        .filter(|pair| !pair.is_empty())
        .map(|pair| {
            let (share, lasts) = pair.split_once('%').ok_or_else(wrong)?;
            let lasts = lasts.trim_start_matches(|c: char| c.is_whitespace() || matches!(c, ':' | '='));
            let load = part(&format!("{share}%"), &bounds::SHARE).ok_or_else(wrong)??;
            let lasts = part(lasts, &bounds::LASTS).ok_or_else(wrong)??;
            Ok(Runtime { load, lasts })
        })
        .collect::<Result<Vec<_>, _>>()?;
    if found.is_empty() || found.len() > 8 {
        return Err(wrong());
    }
    Ok(found)
}

/// Parses "22:00-06:00", "22-6" or "10pm-6am".
fn span(text: &str) -> Result<Span, Refusal> {
    let wrong = || Refusal::new("span");
    let text = text.replace(['–', '—'], "-").replace(" to ", "-");
    let (from, to) = text.split_once('-').ok_or_else(wrong)?;
    let from = minute(from).ok_or_else(wrong)? % Span::DAY;
    let to = minute(to).ok_or_else(wrong)?;
    Ok(Span { from, to: if to == 0 { Span::DAY } else { to } })
}

fn minute(text: &str) -> Option<u16> {
    let text = text.trim().to_lowercase();
    let (clock, half) = match (text.strip_suffix("am"), text.strip_suffix("pm")) {
        (Some(clock), _) => (clock.trim(), Some(0)),
        (_, Some(clock)) => (clock.trim(), Some(12)),
        _ => (text.as_str(), None),
    };
    let (hour, minute) = clock.split_once(':').unwrap_or((clock, "0"));
    let (hour, minute): (u16, u16) = (hour.parse().ok()?, minute.parse().ok()?);
    if hour > 24 || minute >= 60 {
        return None;
    }
    let hour = match half {
        Some(add) if (1..=12).contains(&hour) => hour % 12 + add,
        Some(_) => return None,
        None => hour,
    };
    let all = hour * 60 + minute;
    (all <= Span::DAY).then_some(all)
}

pub(super) fn spans(text: &str) -> Result<Vec<Span>, Refusal> {
    let found =
        text.split([',', ';']).filter(|part| !part.trim().is_empty()).map(span).collect::<Result<Vec<_>, _>>()?;
    if found.is_empty() || found.len() > 12 {
        return Err(Refusal::new("span"));
    }
    Ok(found)
}

/// What a load draws at the moment it starts, in the unit of its nameplate.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Start {
    /// In watts.
    Power(Power),
    /// In amperes.
    Current(Current),
}

/// Parses "4500 W", "39 A" or "LRA 39".
pub(super) fn start(text: &str) -> Result<Start, Refusal> {
    let lower = text.trim().to_lowercase();
    // Locked-rotor current is in amperes, so its unit may be missing.
    let amps = lower
        .strip_prefix("lra")
        .or_else(|| lower.strip_suffix("lra"))
        .map(|rest| rest.trim().trim_start_matches([':', '=']).trim_start())
        .map(|number| format!("{} a", number.trim_end_matches('a').trim_end()));
    let text = amps.as_deref().unwrap_or(text);
    if let Some(current) = part(text, &bounds::STARTING_CURRENT) {
        return current.map(Start::Current);
    }
    if let Some(power) = part(text, &bounds::STARTING) {
        return power.map(Start::Power);
    }
    Err(Refusal::new("start"))
}

/// Parses "A", "A B B A" or "aabb".
pub(super) fn legs(text: &str) -> Result<Vec<Leg>, Refusal> {
    let wrong = || Refusal::new("legs");
    let found = text
        .chars()
        .filter(|c| !c.is_whitespace() && !matches!(c, ',' | ';' | '-'))
        .map(|c| match c {
            'A' | 'a' => Ok(Leg::A),
            'B' | 'b' => Ok(Leg::B),
            _ => Err(wrong()),
        })
        .collect::<Result<Vec<_>, _>>()?;
    if found.is_empty() {
        return Err(wrong());
    }
    Ok(found)
}

/// Parses "1500 W", "12.5 A", "1/2 hp" or "1/2 hp code G".
pub(super) fn draw(text: &str) -> Result<Draw, Refusal> {
    let lower = text.trim().to_lowercase();
    if let Some((number, rest)) = lower.split_once("hp") {
        // Horsepower is not a quantity of its own. A bare ratio parses "1/2" and "1 1/2".
        let horses = part(number.trim(), &bounds::HORSEPOWER);
        let horses = horses.ok_or_else(|| Refusal::new("draw"))??;
        let rest = rest.trim().trim_start_matches(',').trim_start();
        let rest = rest.strip_prefix("code").unwrap_or(rest).trim();
        let code = match rest {
            "" => None,
            rest => Some(code_letter(rest).ok_or_else(|| Refusal::new("draw-code"))?),
        };
        return Ok(Draw::Motor {
            millihorsepower: u32::try_from(horses.permille()).map_err(|_| Refusal::new("draw"))?,
            code,
        });
    }
    if let Some(current) = part(text, &bounds::CURRENT) {
        return current.map(Draw::Current);
    }
    if let Some(power) = part(text, &bounds::RUNNING) {
        return power.map(Draw::Power);
    }
    plate(text)?.ok_or_else(|| Refusal::new("draw"))
}

/// Parses a line of a nameplate: "120V~ 60Hz 3A", "100-240V 1.5A" or "120 V 60 W".
///
/// Returns the largest power if there is one, and otherwise the largest current. `None` if the line is only for other
/// voltages, since its current does not hold at 120 V.
fn plate(text: &str) -> Result<Option<Draw>, Refusal> {
    let upper = text.to_uppercase();
    let (mut watts, mut amperes, mut volts) = (None, None, Vec::new());
    let mut numbers = split_numbers(&upper);
    // In "100-240V", the unit belongs to both numbers.
    let unit = |after: &str| {
        let letters = after.trim_start().chars();
        letters.take_while(char::is_ascii_alphabetic).collect::<String>()
    };
    for at in (1..numbers.len()).rev() {
        if matches!(numbers[at - 1].1.trim(), "-" | "/") {
            numbers[at - 1].1 = numbers[at].1;
        }
    }
    for (number, after) in numbers {
        match unit(after).as_str() {
            "W" => match part(&format!("{number} W"), &bounds::RUNNING) {
                Some(power) => watts = watts.max(Some(power?)),
                None => return Ok(None),
            },
            "A" | "AMP" | "AMPS" => match part(&format!("{number} A"), &bounds::CURRENT) {
                Some(current) => amperes = amperes.max(Some(current?)),
                None => return Ok(None),
            },
            "V" | "VAC" => match number.split('.').next().map(str::parse::<u32>) {
                Some(Ok(number)) => volts.push(number),
                _ => return Ok(None),
            },
            "HZ" | "VA" => {}
            _ => return Ok(None),
        }
    }
    let fits = volts.is_empty() || volts.iter().any(|volts| (90..=130).contains(volts));
    let draw = watts.map(Draw::Power).or_else(|| amperes.map(Draw::Current));
    Ok(draw.filter(|_| fits))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::Amount;

    #[test]
    fn the_print_on_a_cord() {
        let awg = |n, conductors, outdoor| Jacket { wire: Wire::Awg(n), conductors, outdoor };
        let area = |n, conductors| Jacket { wire: Wire::Area(n), conductors, outdoor: None };
        for (text, expected) in [
            ("12/3", awg(12, Some(3), None)),
            ("SJTW 12/3", awg(12, Some(3), Some(true))),
            ("16/3 SJT", awg(16, Some(3), Some(false))),
            ("sjoow 10/3", awg(10, Some(3), Some(true))),
            ("14 AWG", awg(14, None, None)),
            ("14AWG/3C", awg(14, Some(3), None)),
            ("3/C 12 AWG SOOW", awg(12, Some(3), Some(true))),
            ("16 AWG 2C SPT-2", awg(16, Some(2), Some(false))),
            ("10/4", awg(10, Some(4), None)),
            ("3G1.5", area(1500, Some(3))),
            ("3 x 2,5 mm²", area(2500, Some(3))),
            ("4 mm2", area(4000, None)),
        ] {
            assert_eq!(jacket(text), Ok(expected), "{text}");
        }
        for bad in ["", "thick", "12", "12/9", "SJTW", "99/3", "3G70000000000000000000000000000"] {
            assert!(jacket(bad).is_err(), "{bad}");
        }
    }

    #[test]
    fn a_reader_is_told_only_of_their_own_units() {
        use crate::words::{Units, Words};
        for (units, own, others) in [(Units::Customary, "ft, in, yd, mi", "°F"), (Units::Metric, "m, cm, mm, km", "°C")]
        {
            let words = Words::new("en", units).expect("a language");
            assert_eq!(words.units_for(Unit::Metre), own);
            assert_eq!(words.units_for(Unit::Celsius), others);
        }
    }

    #[test]
    fn a_bare_number_is_told_its_units() {
        let power = Form::Power(&bounds::RATED);
        let reject = power.check("2800").unwrap_err();
        assert_eq!(reject.key, "no-unit");
        for value in [("found", "2800".into()), ("units", Unit::Watt.into())] {
            assert!(reject.values.contains(&value), "{reject:?}");
        }
        assert_eq!(power.check("2800 V").unwrap_err().key, "unknown-unit");
    }

    #[test]
    fn what_a_plan_cannot_have_is_told_its_bounds() {
        let reject = Form::Noise.check("200 dBA at 7 m").unwrap_err();
        assert_eq!(reject.key, "out-of-range");
        let most = Amount::of(bounds::NOISE_LEVEL.most);
        assert!(reject.values.contains(&("most", most.into())));
        let current = Form::Current(&bounds::BREAKER);
        for text in ["0 A", "0.5 A", "401 A", "99999999999999 A"] {
            let reject = current.check(text).unwrap_err();
            assert_eq!(reject.key, "out-of-range", "{text}");
            let least = Amount::of(Current::from_milliamps(1000));
            let most = Amount::of(Current::from_milliamps(400_000));
            for value in [("least", least.into()), ("most", most.into())] {
                assert!(reject.values.contains(&value), "{text}");
            }
        }
        for text in ["15 hp", "500 A", "120V 500A", "101 kW", "0 W"] {
            assert_eq!(draw(text).unwrap_err().key, "out-of-range", "{text}");
        }
        for text in ["25 % 5000 h", "120 % 3 h", "0 % 3 h"] {
            assert_eq!(runtime(text).unwrap_err().key, "out-of-range", "{text}");
        }
        assert!(Form::Count(bounds::SOCKETS).check("21").is_err());
        assert!(Form::Length(&bounds::LENGTH).check("2 km").is_err());
    }

    #[test]
    fn a_plate_from_the_other_half_of_the_world_is_asked_back() {
        for text in ["1.500 W", "1,500 W", "120V 1,500W", "120 V 1.875 W"] {
            assert_eq!(draw(text).unwrap_err().key, "two-readings", "{text}");
        }
        let reject = Form::Length(&bounds::SLEEPERS_AT).check("6,096 m");
        assert_eq!(reject.unwrap_err().key, "two-readings");
    }

    #[test]
    fn draws_in_watts_amperes_and_horsepower() {
        assert_eq!(draw("1.5 kW"), Ok(Draw::Power(Power::from_milliwatts(1_500_000))));
        assert_eq!(draw("12.5 A"), Ok(Draw::Current(Current::from_milliamps(12_500))));
        for (text, code) in [("1/2 hp", None), ("1/2 HP, code g", Some('G')), ("1/2hp G", Some('G'))] {
            assert_eq!(draw(text), Ok(Draw::Motor { millihorsepower: 500, code }), "{text}");
        }
        let amperes = |milliamps| Ok(Draw::Current(Current::from_milliamps(milliamps)));
        for (text, expected) in [
            ("INPUT 120V 3A", amperes(3000)),
            ("120V~ 60Hz 3A", amperes(3000)),
            ("100-240 V 50/60 Hz 1.5 A", amperes(1500)),
            ("120VAC 60Hz 1200W", Ok(Draw::Power(Power::from_milliwatts(1_200_000)))),
        ] {
            assert_eq!(draw(text), expected, "{text}");
        }
        for bad in ["1500", "lots", "0 W", "1/2 hp code Q", "1 hp GG", "230 V 3 A", "5 m 3 A", "120 V 0 A"] {
            assert!(draw(bad).is_err(), "{bad}");
        }
    }

    #[test]
    fn of_two_figures_the_larger_is_the_peak_and_one_unit_does_for_both() {
        for text in ["2800 W, 3300 W", "2800 W, 3300", "2800/3300 W", "3300 W / 2800", "2.8 kW, 3300 W"] {
            let (running, peak) = watts(text).expect(text);
            let parsed = |text: &str| Power::parse(text, crate::quantity::Round::Down).expect("a power");
            assert_eq!(parsed(&running), Power::from_milliwatts(2_800_000), "{text}");
            assert_eq!(parsed(&peak.expect("two")), Power::from_milliwatts(3_300_000), "{text}");
        }
        assert!(watts("2800, 3300").is_err());
    }

    #[test]
    fn starts_in_watts_and_in_amperes() {
        for (text, expected) in [
            ("4.5 kW", Start::Power(Power::from_milliwatts(4_500_000))),
            ("39 A", Start::Current(Current::from_milliamps(39_000))),
            ("LRA 39", Start::Current(Current::from_milliamps(39_000))),
            ("lra: 39.5 A", Start::Current(Current::from_milliamps(39_500))),
            ("39 LRA", Start::Current(Current::from_milliamps(39_000))),
        ] {
            assert_eq!(start(text), Ok(expected), "{text}");
        }
        for bad in ["39", "LRA", "lots", "500 A", "0 W", "39 V", "1,500 W"] {
            assert!(start(bad).is_err(), "{bad}");
        }
    }

    #[test]
    fn one_leg_for_all_or_one_for_each() {
        use Leg::{A, B};
        for (text, expected) in [
            ("A", vec![A]),
            ("b", vec![B]),
            ("A B B A", vec![A, B, B, A]),
            ("aabb", vec![A, A, B, B]),
            ("A, B", vec![A, B]),
        ] {
            assert_eq!(legs(text), Ok(expected), "{text}");
        }
        for bad in ["", "C", "leg A", "1", "A1", " "] {
            assert!(legs(bad).is_err(), "{bad}");
        }
    }

    #[test]
    fn times_of_day() {
        for text in ["22:00-06:00", "22-6", "10pm-6am", "10 pm to 6 am", "22:00–06:00"] {
            assert_eq!(span(text), Ok(Span { from: 1320, to: 360 }), "{text}");
        }
        assert_eq!(span("0-24"), Ok(Span { from: 0, to: 1440 }));
        for bad in ["22", "25-6", "10:75-11", "13pm-2am", "night", "2200-0600", "65535-1", "65535pm-1", "1-24:65535"] {
            assert!(span(bad).is_err(), "{bad}");
        }
    }

    #[test]
    fn levels_and_running_times() {
        let found = noise("58 dBA at 23 ft, 25 %").unwrap();
        assert_eq!(found.level.millidecibels(), 58_000);
        assert_eq!(found.at.millimetres(), 7011);
        assert!(found.load.is_known());
        assert_eq!(noise("58 dB, 7 m").unwrap().load, Answer::Unknown);
        assert!(noise("58").is_err() && noise("58 dBA").is_err());
        let found = runtime("25 % 8.5 h, 100%: 3.1 h").unwrap();
        assert_eq!(found[1].lasts.millihours(), 3100);
        assert!(runtime("8 h").is_err() && runtime("120 % 3 h").is_err());
    }
}
