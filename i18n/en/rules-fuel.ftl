### Safety. Rules on fuel.

FUEL001 = { $fix ->
    [find-out] Nobody knows if one tank lasts
    [life-find-out] Nobody knows if one tank lasts
   *[other] One tank does not last
  }
    .why = { $fix ->
        [find-out] Something is to run for { $stretch } without a break. At full load, small sets last about { $tank } on one tank. Fuel spilled on a hot engine catches fire.
        [life-find-out] Something is to run for { $stretch } without a break. At full load, small sets last about { $tank } on one tank. Fuel spilled on a hot engine catches fire.
       *[other] Something is to run for { $stretch } without a break. One tank lasts about { $tank }. Fuel spilled on a hot engine catches fire.
      }
    .fix-pause = Plan a break in daylight. Stop the engine and let it cool for { $cooling } minutes before you open the tank. Not in rain, no flames.
    .fix-find-out = Look for the hours on one tank in the manual, and put them in the plan. Until then, plan a break in daylight: engine off, cool for { $cooling } minutes, not in rain, no flames.
    .fix-life-pause = First put { $life } on a battery made for it, or on the supplier's reserve. With neither, do not rely on this generator for it. Then: { FUEL001.fix-pause }
    .fix-life-find-out = First put { $life } on a battery made for it, or on the supplier's reserve. With neither, do not rely on this generator for it. Then: { FUEL001.fix-find-out }

FUEL002 = Dry ground: sparks and a hot muffler can light it
    .why = Glowing bits leave the exhaust, and the muffler lights grass that touches it. Keep { $clear } clear all round.
    .fix-arrester = Stand it on bare ground or rock. Look for a spark arrester in the exhaust. Keep water or an extinguisher there. Ask the host if engines may run today.

FUEL003 = A day needs more than one tank
    .why = The plan burns about { $day } a day, and the tank holds { $tank }. So spare fuel stands in the camp. Its vapour creeps along the ground to anything hot.
    .fix-store = Keep it in an approved, closed can in the shade, well away from the set, flames and tents. Refuel with the engine off and cool.
