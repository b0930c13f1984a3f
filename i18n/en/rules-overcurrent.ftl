### Safety. Rules on overcurrent: what trips, and what only gets hot.

OVER001 = { $fix ->
    [unknown] No known breaker protects { $first }
    [splitter] { $first } puts small receptacles behind a big breaker
    [single] { $first } is a single 15 A receptacle on a bigger breaker
    [own] Nobody knows the breaker of { $about }
    [camper] The breaker is too big for the adapter { $first }
   *[other] The breaker is too big for { $first }
  }
    .why = { $fix ->
        [unknown] Nobody knows at how many amps this path trips. The weakest part is { $known ->
            [no] taken to be made
           *[yes] made
          } for { $rating }. If nothing trips there, it can burn. Parts: { $about }.
        [own] The generator itself keeps up { $demand } and stops past that. What it feeds here is rated for { $rating } or more.
        [camper] The adapter is rated for { $rating }. The breaker ahead of it trips only above { $breaker }.
       *[other] The weakest part here is { $known ->
            [no] taken to be made
           *[yes] made
          } for { $rating }. The breaker before it trips only above { $breaker }. In between nothing trips: the part gets hot and can burn. Parts: { $about }.
      }
    .fix-splitter = Do not use { $first }, whatever is plugged in. Use a listed distribution box with a breaker for each receptacle.
    .fix-receptacle = Do not use { $first }. Have a licensed electrician look at its breaker.
    .fix-single = Keep what is plugged in here to { $rating }. Have a licensed electrician look at it.
    .fix-cord = Do not use { $first } here. Use a cord made for { $breaker }, or plug it in where the breaker is { $fits } or less.
    .fix-thicker = Do not use { $first } here. Use a cord made for { $breaker }.
    .fix-inlet = Do not use { $first } here. Feed it from an outlet whose breaker is { $fits } or less.
    .fix-wiring = Do not use { $first }: the breaker ahead of it must fit its wire. Have a licensed electrician look at it.
    .fix-unknown = Read the number on the breaker or in the manual and put it in the plan. Until then, leave { $first } unused.
    .fix-own = Read the number on the breaker or in the manual and put it in the plan.
    .fix-camper = Look for the camper's own main breaker: it must say { $rating } or less. If you do not find it, do not use { $first }. Plug nothing but the camper into it.

OVER002 = Too much for hours on { $first }
    .why = { $first } is made for { $rating }, and for { $limit } when it runs three hours or more. At { $time } it carries { $demand }, and { $long } of that runs for hours. Involved: { $about }.
    .fix-move = Move one of these to another breaker, turn it down, or give it a rest before three hours are over.
    .fix-rest = Turn it down, or give it a rest before three hours are over.
    .fix-life = Never turn { $life } down or pause it. Move everything else here to another breaker, or find a receptacle that carries it for hours.

OVER003 = { $first } carries less than its breaker allows
    .why = { $first } carries { $limit }, and the breaker ahead of it trips only above { $breaker }. That is allowed for this cord, but no breaker stops you from overloading it.
    .fix-add-up = Add up what is plugged in beyond { $first }. Keep it at { $limit } or less. Read the amps on the cord’s tag; the smaller counts.

OVER005 = { $fix ->
    [set] On a short circuit the generator stops, not the breaker
    [look] We do not know if a short circuit trips the breaker
   *[other] The wire is so long and thin that a short circuit may not trip the breaker
  }
    .why = { $fix ->
        [set] The generator's own shutdown acts first: it drives about { $fault } into a short circuit at most. A UL 489 breaker of { $breaker } trips soon only above { $soon }. Places: { $about }.
        [look] We do not know if this is an inverter generator, so we assumed that it drives no more than about { $fault } into a short circuit. A UL 489 breaker of { $breaker } trips soon only above { $soon }. Places: { $about }.
       *[other] At its end a short circuit draws only about { $fault }. A UL 489 breaker of { $breaker } trips soon only above { $soon }. Until then the wire and the bad spot get hot. Places: { $about }.
      }
    .fix-set = Know how to stop the engine. If lamps suddenly dim or something smells hot: stop the engine, unplug, then look.
    .fix-look = Look for the word “inverter” on the generator. If lamps suddenly dim or something smells hot: stop the engine, unplug, then look.
    .fix-wire = Use a shorter or thicker cord. If something smells hot: stop the engine, unplug, then look.

OVER006 = Too much at once for { $first }
    .why = At { $time } these draw { $demand } there, and it holds { $limit }: { $loads }. { $what }
    .fix-turns = Run these in turns. Or move { $largest } to a receptacle with another breaker.
    .fix-hours = Say in the plan when each of these runs. Or run them in turns.
    .fix-life-off = { life-off }
    .fix-life-turns = { life-turns }
    .fix-life-apart = Plug { $life } into receptacles with different breakers. Never set any of them lower.

# What stops it, at the end of the sentence above.
overload-trips = Its breaker trips, and everything behind it goes dark.
overload-early = Its breaker has tripped below its marking.
overload-hot = No known breaker stops that: it gets hot.
