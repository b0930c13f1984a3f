//! How long one plan takes from its text to its report, over a thousand varied plans:
//! `cargo bench --bench check`.
//!
//! The plans differ in their number of cords, boxes and loads and in how much of them is unknown.
//! Prints the time by the number of loads, and whether twice as many plans take twice as long.

use std::fmt::Write as _;
use std::time::{Duration, Instant};

const PLANS: u32 = 1000;

/// Numbers that look random and are the same each time: Marsaglia's xorshift of 32 bits.
struct Draw(u32);

impl Draw {
    fn below(&mut self, most: u32) -> u32 {
        self.0 ^= self.0 << 13;
        self.0 ^= self.0 >> 17;
        self.0 ^= self.0 << 5;
        self.0 % most
    }

    fn one_of<'a>(&mut self, list: &[&'a str]) -> &'a str {
        list[self.below(u32::try_from(list.len()).expect("a short list")) as usize]
    }
}

fn plan(number: u32) -> (String, u32) {
    let mut draw = Draw(number.wrapping_mul(2_654_435_761) | 1);
    for _ in 0..8 {
        draw.below(2);
    }
    let mut text = format!(
        "format = 1\nregion = \"north-america\"\n[site]\nname = \"x\"\nground = \"{}\"\n\
         sleepers_at = \"{} ft\"\naltitude = {}\nair = {}\nquiet_hours = \"22:00-06:00\"\n\
         [generator]\nname = \"g\"\nrated = \"{} W\"\nvoltage = \"120 V\"\nneutral = \"{}\"\n\
         noise = {{ level = \"60 dBA\", at = \"23 ft\" }}\n\
         runtime = [ {{ load = \"25 %\", lasts = \"8 h\" }}, {{ load = \"100 %\", lasts = \"3 h\" }} ]\n",
        draw.one_of(&["wet", "damp", "dry", "unknown"]),
        5 + draw.below(60),
        draw.one_of(&["\"0 ft\"", "\"6000 ft\"", "\"unknown\""]),
        draw.one_of(&["\"20 °C\"", "\"100 °F\"", "\"unknown\""]),
        1800 + 100 * draw.below(40),
        draw.one_of(&["floating", "bonded", "unknown"]),
    );
    text.push_str(
        "[[generator.outlet]]\nid = \"front\"\nshape = \"5-20R\"\nbreaker = \"20 A\"\n\
         gfci = true\n[[generator.outlet]]\nid = \"twist\"\nshape = \"L5-30R\"\n\
         breaker = \"30 A\"\n[[cord]]\nid = \"feed\"\nfrom = \"twist\"\nplug = \"L5-30P\"\n\
         ends = [\"L5-30R\"]\nwire = \"10 AWG\"\nconductors = 3\nlength = \"75 ft\"\n\
         [[box]]\nid = \"box\"\nfrom = \"feed\"\ninlet = \"L5-30P\"\n",
    );
    let branches = 1 + draw.below(6);
    for branch in 0..branches {
        let _ = write!(
            text,
            "[[box.outlet]]\nid = \"b{branch}\"\nshape = \"5-15R\"\nbreaker = \"15 A\"\ngfci = {}\n",
            draw.one_of(&["true", "false", "\"unknown\""])
        );
    }
    let cords = draw.below(branches + 1);
    for cord in 0..cords {
        let _ = write!(
            text,
            "[[cord]]\nid = \"c{cord}\"\nfrom = \"b{cord}\"\nplug = \"5-15P\"\n\
             ends = [\"5-15R\", \"5-15R\"]\nwire = {}\nlength = \"{} ft\"\ncoiled = {}\n",
            draw.one_of(&["\"12 AWG\"", "\"14 AWG\"", "\"16 AWG\"", "\"unknown\""]),
            10 + 5 * draw.below(19),
            draw.one_of(&["true", "false", "\"unknown\""]),
        );
    }
    let loads = 1 + draw.below(15);
    for load in 0..loads {
        let hour = draw.below(20);
        let _ = write!(
            text,
            "[[load]]\nid = \"l{load}\"\nname = \"L{load}\"\nkind = \"{}\"\nrunning = {}\n\
             plug = \"5-15P\"\nwanted = \"{}\"\nhours = [\"{hour:02}:00-{:02}:30\"]\n",
            draw.one_of(&["heater", "motor", "electronic", "lamp"]),
            draw.one_of(&[
                "\"60 W\"",
                "\"150 W\"",
                "\"400 W\"",
                "\"900 W\"",
                "\"1500 W\""
            ]),
            draw.one_of(&["must", "wish"]),
            hour + draw.below(4),
        );
    }
    (text, loads)
}

// A benchmark is about time; nothing that is computed depends on it.
#[allow(clippy::disallowed_methods)]
fn time_of(text: &str) -> Duration {
    let start = Instant::now();
    let plan = tallywatt::plan::read(text).unwrap_or_else(|errors| panic!("{errors:?}\n{text}"));
    let report = tallywatt::report::build(&plan);
    std::hint::black_box(report);
    start.elapsed()
}

fn main() {
    let plans: Vec<(String, u32)> = (0..PLANS).map(plan).collect();
    // The tables are read once in the life of the program.
    time_of(&plans[0].0);
    let mut times: Vec<(Duration, u32)> = plans
        .iter()
        .map(|(text, loads)| (time_of(text).min(time_of(text)), *loads))
        .collect();
    println!("loads plans      mean     worst");
    for loads in 1..=15 {
        let of: Vec<Duration> = times
            .iter()
            .filter(|(_, count)| *count == loads)
            .map(|(time, _)| *time)
            .collect();
        let Some(worst) = of.iter().max() else {
            continue;
        };
        let mean = of.iter().sum::<Duration>() / u32::try_from(of.len()).expect("few");
        println!("{loads:5} {:5} {mean:>9.2?} {worst:>9.2?}", of.len());
    }
    let all = |times: &[(Duration, u32)]| times.iter().map(|(time, _)| *time).sum::<Duration>();
    let half = times.len() / 2;
    println!(
        "first {half}: {:.2?}; all {PLANS}: {:.2?}",
        all(&times[..half]),
        all(&times)
    );
    times.sort_unstable();
    println!(
        "median {:.2?}, worst {:.2?}",
        times[times.len() / 2].0,
        times[times.len() - 1].0
    );
}
