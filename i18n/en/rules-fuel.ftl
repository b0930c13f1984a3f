### Safety. Rules on fuel.

FUEL001 = { $fix ->
    [find-out] We do not know if one tank lasts
    [life-find-out] We do not know if one tank lasts
   *[other] One tank does not last
  }
    .why = { $fix ->
        [find-out] From { $from } to { $to } there is no break to refuel. We do not know how long a tank lasts, so we assumed { $tank }, as in a small generator at full load.
        [life-find-out] From { $from } to { $to } there is no break to refuel. We do not know how long a tank lasts, so we assumed { $tank }, as in a small generator at full load.
        [life-pause] From { $from } to { $to } there is no break to refuel, and that burns { $burns } of a tank. Where a life depends on it, count on { $usable }.
       *[other] From { $from } to { $to } there is no break to refuel, and that burns { $burns } of a tank. Fuel on a hot engine catches fire.
      }
    .fix-pause = Plan a break of half an hour by day. Stop the engine and let it cool for { $cooling } minutes before you add fuel. No rain, no flames.
    .fix-find-out = Look for the hours on one tank in the manual, and put them in the plan. Until then, plan a break by day: engine off, cool for { $cooling } minutes, no rain, no flames.
    .fix-life-pause = First put { $life } on a battery made for it, or on the supplier's reserve. With neither, do not rely on this generator for it. Then: { FUEL001.fix-pause }
    .fix-life-find-out = First put { $life } on a battery made for it, or on the supplier's reserve. With neither, do not rely on this generator for it. Then: { FUEL001.fix-find-out }

FUEL002 = Dry ground: sparks and a hot muffler can light it
    .why = Glowing bits leave the exhaust, and the muffler lights grass that touches it. While fires are restricted, engines may be forbidden.
    .fix-arrester = Ask your host if fires are restricted, and if engines may run today. Look for an approved spark arrester in the exhaust. Stand the generator on bare soil or rock, { $clear } clear all round, with water or an extinguisher there.

FUEL003 = A day needs more than one tank
    .why = { $fix ->
        [store-propane] A day of this plan burns { $burns } of a tank, so a spare cylinder stands in the camp. Gas that leaks sinks, and creeps along the ground to anything hot.
       *[other] A day of this plan burns { $burns } of a tank, so spare fuel stands in the camp. Its vapor creeps along the ground to anything hot.
      }
    .fix-store = Keep it in an approved, closed can in the shade, far from the generator, flames and tents. Refuel with the engine off and cool. If you spill some, move away and let the vapor clear before you start.
    .fix-store-propane = Stand it upright outdoors in the shade, far from the generator, flames and tents. Change it with the engine off and cool and the valve closed. If you smell gas, close the valve, move away and let it clear.
