### Safety. Rules on voltage.

VOLT001 = { $fix ->
    [start] Voltage dips too far when { $first } starts
    [start-alone] Voltage dips too far when { $first } starts
   *[other] Voltage is low at { $first }
  }
    .why = { $fix ->
        [start] It drops by { $drop } ({ $percent }) for a moment. Many motors fail to start if it drops more than { $much }, and lights go dim. Places: { $about }.
        [start-alone] It drops by { $drop } ({ $percent }) for a moment. Many motors fail to start if it drops more than { $much }, and lights go dim. Places: { $about }.
        [range-b] The cords lose { $drop } ({ $percent }), which leaves { $left }. Things here are made for { $least } or more; down to { $least-b } they run for a time, but motors run hot. Places: { $about }.
        [below-b] The cords lose { $drop } ({ $percent }), which leaves { $left }. Below { $least-b } motors might stall and burn out, and electronics might stop. Places: { $about }.
       *[other] The cords lose { $drop } ({ $percent }), which leaves { $left }. Aim for { $noted } or less: more than { $much } makes motors run hot (advice, not law). Places: { $about }.
      }
    .fix-thicker = Use a shorter cord or a thicker one (a smaller AWG number means a thicker wire).
    .fix-range-b = Change soon to a shorter or thicker cord (a smaller AWG number means a thicker wire). Until then, run less there at the same time.
    .fix-below-b = Do not run fridges, pumps or other motors there. Use a shorter or thicker cord (a smaller AWG number means a thicker wire), or run less there at the same time.
    .fix-start = Use a shorter or thicker cord, and start { $first } while everything else is off.
    .fix-start-alone = Use a shorter or thicker cord for { $first } (a smaller AWG number means a thicker wire). Switching other things off is not enough.
