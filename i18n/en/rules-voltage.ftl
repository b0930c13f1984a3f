### Safety. Rules on voltage.

VOLT001 = { $fix ->
    [start] Voltage dips too far when { $first } starts
    [start-alone] Voltage dips too far when { $first } starts
   *[other] Voltage is low at { $first }
  }
    .why = { $fix ->
        [start] It drops by { $drop } ({ $percent }) for a moment. Many motors fail to start below a dip of { $much }, and lamps go dim. Places: { $about }.
        [start-alone] It drops by { $drop } ({ $percent }) for a moment. Many motors fail to start below a dip of { $much }, and lamps go dim. Places: { $about }.
        [range-b] The cords lose { $drop } ({ $percent }), which leaves { $left }. Things here are made for { $least } or more. Down to { $least-b } they put up with it for a time; motors run hot. Places: { $about }.
        [below-b] The cords lose { $drop } ({ $percent }), which leaves { $left }. Below { $least-b } motors may stall and burn out, and electronics may stop. Places: { $about }.
       *[other] The cords lose { $drop } ({ $percent }), which leaves { $left }. Aim for { $noted } or less; more than { $much } makes motors run hot. These are advice, not law. Places: { $about }.
      }
    .fix-thicker = Use a shorter cord or a thicker one (a smaller AWG number is thicker).
    .fix-range-b = Use a shorter cord or a thicker one (a smaller AWG number is thicker) soon. Until then, run less there at once.
    .fix-below-b = Do not run fridges, pumps or other motors there. Use a shorter cord or a thicker one (a smaller AWG number is thicker), or run less there at once.
    .fix-start = Use a shorter or thicker cord, and start { $first } while everything else is off.
    .fix-start-alone = Use a shorter or a thicker cord for { $first } (a smaller AWG number is thicker). Switching other things off is not enough.
