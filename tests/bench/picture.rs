//! A chart of time against size: loads on the x-axis, time on a logarithmic y-axis.

use std::fmt::Write as _;
use std::time::Duration;

/// A case.
#[derive(Clone, Copy, Debug)]
pub struct Point {
    pub loads: usize,
    pub ours: Duration,
    /// The time of the general solver, or `None` if it found no answer within its limit.
    pub general: Option<Duration>,
}

const WIDTH: f64 = 720.0;
const HEIGHT: f64 = 460.0;
const LEFT: f64 = 70.0;
const RIGHT: f64 = 20.0;
const TOP: f64 = 50.0;
const BOTTOM: f64 = 50.0;
const MOST_LOADS: f64 = 42.0;
/// Powers of ten in seconds: 10 µs to 100 s.
const LOW: f64 = -5.0;
const HIGH: f64 = 2.0;

#[allow(clippy::cast_precision_loss)] // tens of loads
fn across(loads: usize) -> f64 {
    LEFT + (WIDTH - LEFT - RIGHT) * loads as f64 / MOST_LOADS
}

fn up(seconds: f64) -> f64 {
    let share = (seconds.max(1e-9).log10().clamp(LOW, HIGH) - LOW) / (HIGH - LOW);
    HEIGHT - BOTTOM - (HEIGHT - TOP - BOTTOM) * share
}

/// Returns the chart as SVG. Writing to a string cannot fail.
#[must_use]
pub fn svg(points: &[Point], limit: Duration) -> String {
    let mut out = format!(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {WIDTH} {HEIGHT}\" \
         font-family=\"sans-serif\" font-size=\"12\">\n\
         <rect width=\"{WIDTH}\" height=\"{HEIGHT}\" fill=\"white\"/>\n\
         <text x=\"{LEFT}\" y=\"22\" font-size=\"15\" font-weight=\"bold\">\
         Best placing, proved: time against loads</text>\n"
    );
    for (power, name) in (-5_i32..=2).zip(["10 µs", "100 µs", "1 ms", "10 ms", "100 ms", "1 s", "10 s", "100 s"]) {
        let y = up(10_f64.powi(power));
        let _ = writeln!(
            out,
            "<path d=\"M{LEFT} {y:.1}H{:.1}\" stroke=\"#ddd\"/>\
             <text x=\"{:.1}\" y=\"{:.1}\" text-anchor=\"end\">{name}</text>",
            WIDTH - RIGHT,
            LEFT - 6.0,
            y + 4.0
        );
    }
    for loads in (0..=40).step_by(5) {
        let x = across(loads);
        let _ = writeln!(
            out,
            "<text x=\"{x:.1}\" y=\"{:.1}\" text-anchor=\"middle\">{loads}</text>",
            HEIGHT - BOTTOM + 18.0
        );
    }
    let _ = writeln!(
        out,
        "<text x=\"{:.1}\" y=\"{:.1}\" text-anchor=\"middle\">loads</text>",
        f64::midpoint(LEFT, WIDTH - RIGHT),
        HEIGHT - 10.0
    );
    // The limits: 5 ms up to 15 loads, 1 s beyond.
    for (from, to, seconds) in [(0, 15, 0.005), (20, 40, 1.0)] {
        let _ = writeln!(
            out,
            "<path d=\"M{:.1} {y:.1}H{:.1}\" stroke=\"black\" stroke-dasharray=\"6 4\"/>",
            across(from),
            across(to),
            y = up(seconds)
        );
    }
    for point in points {
        let x = across(point.loads);
        let y = up(point.ours.as_secs_f64());
        let _ = writeln!(out, "<circle cx=\"{x:.1}\" cy=\"{y:.1}\" r=\"4\" fill=\"#0050a0\"/>");
        if let Some(time) = point.general {
            let y = up(time.as_secs_f64());
            let _ = writeln!(
                out,
                "<path d=\"M{:.1} {:.1}h8v8h-8z\" fill=\"none\" stroke=\"#b04000\" \
                 stroke-width=\"1.5\"/>",
                x - 4.0,
                y - 4.0
            );
        } else {
            // No answer: a cross at the time limit.
            let y = up(limit.as_secs_f64());
            let _ = writeln!(
                out,
                "<path d=\"M{:.1} {:.1}l9 9m0 -9l-9 9\" stroke=\"#b04000\" \
                 stroke-width=\"1.5\"/>",
                x - 4.5,
                y - 4.5
            );
        }
    }
    let (x, y) = (LEFT + 200.0, 38.0);
    let _ = writeln!(
        out,
        "<circle cx=\"{LEFT}\" cy=\"{:.1}\" r=\"4\" fill=\"#0050a0\"/>\
         <text x=\"{:.1}\" y=\"{y}\">this program</text>\
         <path d=\"M{:.1} {:.1}h8v8h-8z\" fill=\"none\" stroke=\"#b04000\"/>\
         <text x=\"{x}\" y=\"{y}\">a general MILP solver (cross: no answer)   - - the bars</text>",
        y - 4.0,
        LEFT + 10.0,
        x - 16.0,
        y - 8.0,
    );
    out.push_str("</svg>\n");
    out
}
