### Safety. Rules on fuel.

# How many tanks that is. $amount is $count as the reader writes it.
tanks = { $count ->
    [one] { $amount } tank
   *[other] { $amount } tanks
  }

FUEL001 = { $fix ->
    [find-out] We do not know if one tank lasts
    [life-find-out] We do not know if one tank lasts
   *[other] One tank runs out before the next break
  }
    .why = { $fix ->
        [find-out] From { $from } to { $to } there is no break to refuel. { $timed ->
            [yes] We do not know the generator’s running power, so for one tank we assumed { $tank }.
           *[no] For one tank we assumed { $tank }, as in a small generator at full load.
          }
        [life-find-out] From { $from } to { $to } there is no break to refuel. { $timed ->
            [yes] We do not know the generator’s running power, so for one tank we assumed { $tank }.
           *[no] For one tank we assumed { $tank }, as in a small generator at full load.
          }
        [life-pause] The generator runs from { $from } to { $to } with no break. That takes { $burns }: where a life depends on it, count on { $usable } of a tank at most.
       *[other] The generator runs from { $from } to { $to } with no break. That takes { $burns }, and refueling a hot engine can start a fire.
      }
    .fix-pause = Plan a half-hour break in that time, but not at night, or run fewer things. Before you refuel, let the stopped engine cool for { $cooling } minutes. Never refuel in the rain or near flames.
    .fix-find-out = { $timed ->
        [yes] Put in the plan the “running” or “rated” watts from the generator’s nameplate.
       *[no] Put in the plan how many hours one tank lasts, as the manual says.
      } Until then, plan a break between those times, but not at night. Before you refuel, let the stopped engine cool for { $cooling } minutes, away from rain and flames.
    .fix-life-pause = Put { $life } on a battery made for it or your supplier’s backup, or do not rely on this generator. Then plan a half-hour break between those times, not at night: engine off, cool for { $cooling } minutes, no rain, no flames.
    .fix-life-find-out = Put { $life } on a battery made for it or your supplier’s backup, or do not rely on this generator. { $timed ->
        [yes] Put in the plan the “running” or “rated” watts from the generator’s nameplate.
       *[no] Write in the plan how many hours one tank lasts.
      } Until then, plan a break between those times, not at night: engine off, cool for { $cooling } minutes, no rain, no flames.

FUEL002 = Sparks can set the dry ground on fire
    .why = Sparks leave the exhaust, and a hot muffler lights grass that touches it. During a fire ban, engines might be forbidden.
    .fix-arrester = Ask the campground host or a ranger if there is a fire ban, and if generators may run. Put the generator on bare soil or rock, { $clear } clear on all sides, with water or an extinguisher there. See in its manual if the exhaust has an approved spark arrester.

FUEL003 = You burn more than one tank a day
    .why = { $fix ->
        [store-propane] This plan burns { $burns } a day, so you will have a spare cylinder in camp. Leaking gas creeps along the ground to anything hot.
       *[other] This plan burns { $burns } a day, so you will have spare fuel in camp. Its vapor creeps along the ground to anything hot.
      }
    .fix-store = Keep the spare fuel in an approved, closed can in the shade, far from the generator, flames and tents. Refuel with the engine off and cool. If fuel spills, get back until the vapor is gone: only then may the engine start.
    .fix-store-propane = Stand the spare cylinder upright outdoors in the shade, far from the generator, flames and tents. The engine is off and cool when you change it. If you smell gas, close the valve, and get back until the smell is gone: only then may the engine start.
