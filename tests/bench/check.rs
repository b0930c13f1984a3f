//! Times a plan from text to report, over a thousand varied plans: `cargo bench --bench check`.
//!
//! Runs in this process, one plan after another, without reading files or making words. The plans vary in nearly
//! everything that affects the report: the generator, one leg or two, no box, one or several, cords chained to cords
//! and splitters, loads of every kind in watts, amperes and horsepower, with and without hours, and how much is
//! unknown. Each is timed twice, the first time cold, and both times are shown. Every plan must read, and the reports
//! must differ.
//!
//! Prints the mean and worst time by number of loads, the median, 99th percentile and worst overall, the same without
//! the search for the best sharing, the slowest plans, and whether a thousand plans take ten times as long as a
//! hundred.

// A benchmark prints and reads a clock.
#![allow(clippy::disallowed_methods, clippy::disallowed_macros)]

use std::collections::BTreeSet;
use std::fmt::Write as _;
use std::time::{Duration, Instant};

#[allow(missing_docs)]
mod draw;

use draw::Draw;

const PLANS: u32 = 1000;
/// The limit for one plan, on a current machine and optimized.
const BAR: Duration = Duration::from_millis(5);

/// A plan being built: its text, and the receptacles that take 5-15 plugs.
struct Sketch {
    draw: Draw,
    text: String,
    household: Vec<String>,
    loads: u32,
}

impl Sketch {
    fn plan(number: u32) -> Self {
        let mut sketch = Self {
            draw: Draw::new(number),
            text: String::from("format = 1\nregion = \"north-america\"\n"),
            household: Vec::new(),
            loads: 0,
        };
        sketch.site();
        let two_legs = sketch.set();
        for number in 0..sketch.draw.one_of(&["0", "1", "1", "1", "2", "3"]).parse().expect("a digit") {
            sketch.distribution_box(number, two_legs);
        }
        for number in 0..sketch.draw.below(6) {
            sketch.cord(number);
        }
        // Most camps have up to ten entries, some of them for several of a kind. Few have more.
        let most = if sketch.draw.below(5) == 0 { 15 } else { 10 };
        sketch.loads = 1 + sketch.draw.below(most);
        for number in 0..sketch.loads {
            sketch.load(number);
        }
        sketch
    }

    fn site(&mut self) {
        let draw = &mut self.draw;
        let _ = write!(
            self.text,
            "[site]\nname = \"x\"\nground = \"{}\"\nsleepers_at = {}\naltitude = {}\nair = {}\n\
             quiet_hours = \"22:00-06:00\"\nco_alarm = {}\n",
            draw.one_of(&["wet", "damp", "dry", "unknown"]),
            draw.one_of(&["\"12 ft\"", "\"22 ft\"", "\"60 ft\"", "\"unknown\""]),
            draw.one_of(&["\"0 ft\"", "\"6000 ft\"", "\"unknown\""]),
            draw.one_of(&["\"20 °C\"", "\"100 °F\"", "\"unknown\""]),
            draw.one_of(&["true", "false", "\"unknown\""]),
        );
    }

    /// Adds the generator and returns whether it has two legs.
    fn set(&mut self) -> bool {
        let draw = &mut self.draw;
        let two_legs = draw.below(3) == 0;
        let rated = if two_legs { 4500 } else { 1800 } + 100 * draw.below(40);
        let _ = write!(
            self.text,
            "[generator]\nname = \"g\"\nrated = \"{rated} W\"\npeak = \"{} W\"\n\
             voltage = \"{}\"\nneutral = \"{}\"\ninverter = {}\ntank = \"2 gal\"\n\
             noise = {{ level = \"60 dBA\", at = \"23 ft\" }}\nruntime = [ {{ load = \"25 %\", \
             lasts = \"8 h\" }}, {{ load = \"100 %\", lasts = \"3 h\" }} ]\n\
             [[generator.outlet]]\nid = \"front\"\nshape = \"5-20R\"\nbreaker = {}\ngfci = {}\n\
             [[generator.outlet]]\nid = \"twist\"\nshape = \"{}\"\nsockets = 3\nbreaker = {}\n",
            rated + 100 * draw.below(12),
            if two_legs { "120/240 V" } else { "120 V" },
            draw.one_of(&["floating", "bonded", "unknown"]),
            draw.one_of(&["true", "false", "\"unknown\""]),
            draw.one_of(&["\"20 A\"", "\"20 A\"\ntrips_at = \"17 A\"", "\"unknown\""]),
            draw.one_of(&["true", "false", "\"unknown\""]),
            if two_legs { "L14-30R" } else { "L5-30R" },
            draw.one_of(&["\"30 A\"", "\"30 A\"", "\"unknown\""]),
        );
        self.household.push("front".to_owned());
        two_legs
    }

    /// Adds a box on its feed cord, with up to eight outlets.
    fn distribution_box(&mut self, number: u32, two_legs: bool) {
        let draw = &mut self.draw;
        let shape = if two_legs { "L14-30" } else { "L5-30" };
        let _ = write!(
            self.text,
            "[[cord]]\nid = \"feed{number}\"\nfrom = \"twist\"\nplug = \"{shape}P\"\n\
             ends = [\"{shape}R\"]\nwire = {}\nconductors = {}\nlength = \"{} ft\"\ncoiled = {}\n\
             [[box]]\nid = \"box{number}\"\nfrom = \"feed{number}\"\ninlet = \"{shape}P\"\n\
             listed = {}\n",
            draw.one_of(&["\"10 AWG\"", "\"8 AWG\"", "\"12 AWG\"", "\"unknown\""]),
            draw.one_of(&["3", "4", "\"unknown\""]),
            25 + 5 * draw.below(26),
            draw.one_of(&["false", "false", "\"unknown\""]),
            draw.one_of(&["true", "true", "false", "\"unknown\""]),
        );
        for outlet in 0..=draw.below(8) {
            let id = format!("b{number}-{outlet}");
            let _ = write!(
                self.text,
                "[[box.outlet]]\nid = \"{id}\"\nshape = \"{}\"\nbreaker = {}\ngfci = {}\n",
                draw.one_of(&["5-15R", "5-20R"]),
                draw.one_of(&["\"15 A\"", "\"20 A\"", "\"unknown\""]),
                draw.one_of(&["true", "false", "\"unknown\""]),
            );
            if two_legs {
                let leg = draw.one_of(&["\"A\"", "\"B\"", "\"unknown\""]);
                let _ = writeln!(self.text, "leg = {leg}");
            }
            self.household.push(id);
        }
    }

    /// Adds a cord or splitter on any earlier receptacle, including those of other cords.
    fn cord(&mut self, number: u32) {
        let draw = &mut self.draw;
        let ends = 1 + draw.below(3);
        let many = u32::try_from(self.household.len()).expect("few");
        let from = self.household[draw.below(many) as usize].clone();
        let _ = write!(
            self.text,
            "[[cord]]\nid = \"c{number}\"\nfrom = \"{from}\"\nplug = \"5-15P\"\nends = [{}]\n\
             wire = {}\nconductors = {}\nlength = \"{} ft\"\ncoiled = {}\noutdoor = {}\n",
            vec!["\"5-15R\""; ends as usize].join(", "),
            draw.one_of(&["\"12 AWG\"", "\"14 AWG\"", "\"16 AWG\"", "\"2.5 mm²\"", "\"unknown\""]),
            draw.one_of(&["3", "3", "2", "\"unknown\""]),
            10 + 5 * draw.below(19),
            draw.one_of(&["true", "false", "\"unknown\""]),
            draw.one_of(&["true", "false", "\"unknown\""]),
        );
        if ends == 1 {
            self.household.push(format!("c{number}"));
        } else {
            self.household.extend((1..=ends).map(|end| format!("c{number}.{end}")));
        }
    }

    fn load(&mut self, number: u32) {
        let draw = &mut self.draw;
        let (kind, running) = match draw.below(6) {
            0 => ("motor", draw.one_of(&["{ hp = \"1/4\", code = \"G\" }", "{ hp = \"1/2\" }"])),
            1 => ("electronic", draw.one_of(&["\"0.8 A\"", "\"2.5 A\"", "\"unknown\""])),
            2 => ("lamp", draw.one_of(&["\"8 W\"", "\"60 W\""])),
            3 => ("medical", draw.one_of(&["\"45 W\"", "\"90 W\""])),
            4 => ("motor", draw.one_of(&["\"150 W\"", "\"725 W\"", "\"unknown\""])),
            _ => ("heater", draw.one_of(&["\"400 W\"", "\"900 W\"", "\"1500 W\"", "\"unknown\""])),
        };
        let field = match running {
            motor if motor.starts_with('{') => "motor",
            amperes if amperes.ends_with("A\"") => "current",
            _ => "running",
        };
        let _ = write!(
            self.text,
            "[[load]]\nid = \"l{number}\"\nname = \"L{number}\"\nkind = \"{kind}\"\n\
             {field} = {running}\nplug = \"5-15P\"\nwanted = \"{}\"\ncount = {}\n",
            draw.one_of(&["must", "must", "wish"]),
            draw.one_of(&["1", "1", "1", "1", "1", "1", "2", "3"]),
        );
        if draw.below(4) > 0 {
            let hour = draw.below(20);
            let _ = writeln!(self.text, "hours = [\"{hour:02}:00-{:02}:30\"]", hour + draw.below(4));
        }
    }
}

// Only the benchmark's timing depends on the clock.
fn time_of(text: &str) -> (Duration, String) {
    let start = Instant::now();
    let plan = tallywatt::plan::read(text).unwrap_or_else(|errors| panic!("{errors:?}\n{text}"));
    let report = tallywatt::judge::build(&plan);
    let time = start.elapsed();
    (time, report.to_json().expect("a report is JSON"))
}

/// Returns how much of that time goes to the search for who plugs in where and what may run together, which has its own
/// benchmark (`--bench sharing`). The best of two.
fn sharing_of(text: &str) -> Duration {
    let plan = tallywatt::plan::read(text).unwrap_or_else(|errors| panic!("{errors:?}\n{text}"));
    let supply = tallywatt::supply::Supply::build(&plan);
    let verdicts = tallywatt::verdict::Verdicts::of(&plan, &supply);
    let (units, _) = tallywatt::loads::units(&plan);
    let once = || {
        let start = Instant::now();
        std::hint::black_box(tallywatt::sharing::share(&plan, &supply, &verdicts, &units));
        start.elapsed()
    };
    once().min(once())
}

fn main() {
    let plans: Vec<Sketch> = (0..PLANS).map(Sketch::plan).collect();
    let mut reports = BTreeSet::new();
    let mut first = Vec::new();
    let mut times: Vec<(Duration, u32)> = Vec::new();
    let mut rest = Vec::new();
    for plan in &plans {
        let (cold, report) = time_of(&plan.text);
        first.push(cold);
        let best = cold.min(time_of(&plan.text).0);
        times.push((best, plan.loads));
        rest.push(best.saturating_sub(sharing_of(&plan.text)));
        reports.insert(report);
    }
    assert!(reports.len() * 100 >= plans.len() * 99, "only {} reports differ", reports.len());
    println!("{} plans, {} different reports", plans.len(), reports.len());
    println!("loads  plans      mean     worst");
    for loads in 1..=15 {
        let of: Vec<Duration> = times.iter().filter(|(_, count)| *count == loads).map(|(time, _)| *time).collect();
        let Some(worst) = of.iter().max() else {
            continue;
        };
        let mean = of.iter().sum::<Duration>() / u32::try_from(of.len()).expect("few");
        println!("{loads:5} {:6} {mean:>9.2?} {worst:>9.2?}", of.len());
    }
    let hundred: Duration = times[..100].iter().map(|(time, _)| *time).sum();
    let all: Duration = times.iter().map(|(time, _)| *time).sum();
    println!(
        "first 100: {hundred:.2?}; all {PLANS}: {all:.2?}, {:.2} times a tenth of them",
        all.as_secs_f64() / (10.0 * hundred.as_secs_f64())
    );
    // The numbers of the slowest plans, for looking into one.
    let mut slowest: Vec<usize> = (0..times.len()).collect();
    slowest.sort_by_key(|number| std::cmp::Reverse(times[*number].0));
    let told = slowest.iter().take(8);
    let told: Vec<String> = told.map(|number| format!("{number} {:.2?}", times[*number].0)).collect();
    println!("slowest plans: {}", told.join(", "));
    let over = times.iter().filter(|(time, _)| *time > BAR).count();
    let spread = |times: &mut Vec<Duration>| {
        times.sort_unstable();
        let at = |of_hundred: usize| times[(times.len() * of_hundred / 100).min(times.len() - 1)];
        format!("p50 {:.2?}, p99 {:.2?}, worst {:.2?}", at(50), at(99), at(100))
    };
    println!("the first time: {}", spread(&mut first));
    let mut best = times.into_iter().map(|(time, _)| time).collect();
    println!("best of two:    {}", spread(&mut best));
    println!("over {BAR:?}: {over}");
    let over = rest.iter().filter(|time| **time > BAR).count();
    println!("without sharing: {}", spread(&mut rest));
    println!("over {BAR:?}: {over}");
}
