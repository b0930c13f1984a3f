### Safety. Rules on voltage.

VOLT001 = { $fix ->
    [start] Voltage dips too far when { $first } starts
   *[other] Voltage is low at { $first }
  }
    .why = { $fix ->
        [start] It drops by { $drop } ({ $percent }) for a moment. Many motors fail to start below a dip of { $much }, and lamps go dim. Places: { $about }.
       *[other] The cords lose { $drop } ({ $percent }), which leaves { $left }. Aim for { $noted } or less; more than { $much } makes motors run hot. These are advice, not law. Places: { $about }.
      }
    .fix-thicker = Use a shorter cord or a thicker one (a smaller AWG number is thicker).
    .fix-start = Use a shorter or thicker cord, and start { $first } while everything else is off.
