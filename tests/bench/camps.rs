//! Plans of camps by size, identical in every run: this many loads on this many boxes.
//!
//! Generator and gear are about what such a camp would have. The generator delivers half of what all loads draw
//! together, and there are a few more sockets than loads.

use std::fmt::Write as _;

use super::draw::Draw;

/// The size of a camp, and what is known about it.
#[derive(Clone, Copy, Debug)]
pub struct Camp {
    /// The number of loads, each a separate entry.
    pub loads: u32,
    /// The number of boxes that feed them.
    pub boxes: u32,
    /// Whether each load has hours.
    pub hours: bool,
    /// Whether everything is known. Otherwise nothing is known about the site, and only part of the gear and loads.
    pub known: bool,
}

/// The kind, the draw and the watts of each load.
const THINGS: [(&str, &str, u32); 10] = [
    ("lamp", "running = \"12 W\"", 12),
    ("lamp", "running = \"60 W\"", 60),
    ("electronic", "running = \"45 W\"", 45),
    ("electronic", "running = \"150 W\"", 150),
    ("motor", "running = \"90 W\"\nstarting = \"400 W\"", 90),
    ("motor", "running = \"150 W\"\nstarting = \"900 W\"", 150),
    ("motor", "running = \"600 W\"\nstarting = \"1500 W\"", 600),
    ("heater", "running = \"900 W\"", 900),
    ("heater", "running = \"1200 W\"", 1200),
    ("electronic", "running = \"300 W\"", 300),
];

impl Camp {
    /// Returns the text of the plan.
    pub fn plan(self) -> String {
        let mut draw = Draw::new(self.loads * 64 + self.boxes);
        let mut loads = String::new();
        let mut drawn = 0;
        for number in 0..self.loads {
            drawn += self.load(&mut draw, &mut loads, number);
        }
        let rated = (drawn / 200 * 100).clamp(2000, 90_000);
        let (site, neutral) = if self.known {
            (
                "ground = \"wet\"\nsleepers_at = \"60 ft\"\naltitude = \"0 ft\"\nair = \"20 °C\"\n\
                 quiet_hours = \"22:00-06:00\"\nco_alarm = true\n",
                "neutral = \"bonded\"\ninverter = false\n",
            )
        } else {
            ("", "")
        };
        let mut text = format!(
            "format = 1\nregion = \"north-america\"\n[site]\nname = \"x\"\n{site}\
             [generator]\nname = \"g\"\nrated = \"{rated} W\"\npeak = \"{} W\"\n\
             voltage = \"120/240 V\"\n{neutral}tank = \"5 gal\"\n\
             [[generator.outlet]]\nid = \"front\"\nshape = \"5-20R\"\nsockets = 2\n\
             breaker = \"20 A\"\ngfci = true\n\
             [[generator.outlet]]\nid = \"twist\"\nshape = \"L14-30R\"\nsockets = 20\n\
             breaker = \"30 A\"\ngfci = true\n",
            rated + rated / 4,
        );
        for number in 0..self.boxes {
            self.distribution_box(&mut draw, &mut text, number);
        }
        text + &loads
    }

    /// Adds a box on its feed cord, with one duplex outlet for every two of its loads and one more, and a splitter on
    /// the first outlet.
    fn distribution_box(self, draw: &mut Draw, text: &mut String, number: u32) {
        let wire = if self.known || number.is_multiple_of(2) { "10 AWG" } else { "unknown" };
        let _ = write!(
            text,
            "[[cord]]\nid = \"feed{number}\"\nfrom = \"twist\"\nplug = \"L14-30P\"\n\
             ends = [\"L14-30R\"]\nwire = \"{wire}\"\nconductors = 4\nlength = \"{} ft\"\n\
             coiled = false\noutdoor = true\n\
             [[box]]\nid = \"box{number}\"\nfrom = \"feed{number}\"\ninlet = \"L14-30P\"\nlisted = true\n",
            50 + 5 * draw.below(10),
        );
        let outlets = self.loads.div_ceil(2 * self.boxes) + 1;
        for outlet in 0..outlets {
            let known = self.known || outlet % 3 != 0;
            let (breaker, gfci) =
                if known { (draw.one_of(&["\"15 A\"", "\"20 A\""]), "true") } else { ("\"unknown\"", "\"unknown\"") };
            let _ = write!(
                text,
                "[[box.outlet]]\nid = \"b{number}-{outlet}\"\nshape = \"5-20R\"\nsockets = 2\n\
                 breaker = {breaker}\ngfci = {gfci}\nleg = \"{}\"\n",
                if outlet % 2 == 0 { "A" } else { "B" },
            );
        }
        let _ = write!(
            text,
            "[[cord]]\nid = \"split{number}\"\nfrom = \"b{number}-0\"\nplug = \"5-15P\"\n\
             ends = [\"5-15R\", \"5-15R\", \"5-15R\"]\nwire = \"12 AWG\"\nconductors = 3\n\
             length = \"{} ft\"\ncoiled = false\noutdoor = true\n",
            25 + 5 * draw.below(6),
        );
    }

    /// Adds a load and returns its watts.
    fn load(self, draw: &mut Draw, text: &mut String, number: u32) -> u32 {
        let (kind, draws, watts) = THINGS[draw.below(10) as usize];
        let wanted = draw.one_of(&["must", "wish", "wish"]);
        let _ = write!(
            text,
            "[[load]]\nid = \"l{number}\"\nname = \"L{number}\"\nkind = \"{}\"\n{draws}\n\
             plug = \"5-15P\"\nwanted = \"{wanted}\"\n",
            if self.known || !number.is_multiple_of(4) { kind } else { "unknown" },
        );
        if self.known {
            let _ = writeln!(text, "continuous = {}", draw.one_of(&["true", "false"]));
        }
        if self.hours {
            let from = draw.below(20);
            let _ = writeln!(text, "hours = [\"{from:02}:00-{:02}:30\"]", from + draw.below(4));
        }
        watts
    }
}
