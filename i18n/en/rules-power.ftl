### Safety. Rules on power.

POWER001 = { $fix ->
    [hours] The generator cannot run all of this at once
    [leg-alone] One side of the generator cannot keep up { $about }
    [alone] The generator cannot keep up { $about }
    [amps-alone] The generator cannot keep up { $about }
    [life-alone] This generator cannot run { $about }
    [life-off] Too much is on beside { $life } at { $time }
    [life-turns] Too much is on beside { $life } at { $time }
    [leg] One side of the generator is asked for too much at { $time }
   *[other] Too much is on at once at { $time }
  }
    .why = { $fix ->
        [hours] Nobody said when these run, so they all count at once: { $about }. Together they ask for { $demand }. The generator can keep up { $limit }.
        [turns] These ask for { $demand } together: { $about }. The generator can keep up { $limit }, so it is { $over } too much.
        [leg-alone] It draws { $demand } on one side. Each side gives { $limit } and no more, so it is { $over } too much, on either side.
        [alone] It asks for { $demand } by itself. The generator can keep up { $limit }, so it is { $over } too much.
        [amps-alone] It draws { $demand } by itself, more than its watts suggest. The generator gives { $limit }, so it is { $over } too much.
        [life-alone] { life-it } It asks for { $demand }, and the generator can keep up { $limit } for it at most: { $over } short.
        [life-off] { life-on } These ask for { $demand } together: { $about }. The generator can keep up { $limit }, so it is { $over } too much.
        [life-turns] { life-on } These ask for { $demand } together: { $about }. The generator can keep up { $limit }, so it is { $over } too much.
        [leg] These load one side: { $about }. They draw { $demand } on one side and each side gives { $limit }, so it is { $over } too much.
       *[other] These draw { $demand } together: { $about }. The generator gives { $limit }, so it is { $over } too much. Some draw more than their watts suggest.
      }
    .fix-turns = Run them in turns. Give each its hours, or leave one at home. Look at { $first } first: it asks for the most.
    .fix-hours = Run them in turns: the card shows what goes together. Or say in the plan when each one runs.
    .fix-leg = Move { $first } to a receptacle on the other side, or run these in turns.
    .fix-leg-alone = Leave { $about } at home, use its lower setting, or bring a bigger generator.
    .fix-amps = Run them in turns. Look at { $first } first: it draws the most.
    .fix-alone = { POWER001.fix-leg-alone }
    .fix-amps-alone = { POWER001.fix-leg-alone }
    .fix-life-alone = { life-cannot }
    .fix-life-off = { life-off }
    .fix-life-turns = { life-turns }

POWER002 = { $fix ->
    [alone] The generator cannot start { $about }
    [amps-alone] The generator cannot start { $about }
    [leg-alone] One leg of the generator cannot start { $about }
    [again] These may not all stay on together
    [amps-again] These may not all stay on together
    [life-alone] This generator cannot start { $about }
    [life-together] This generator cannot start all of these: { $life }
    [life-off] Whatever starts beside { $life } may stop it
    [life-turns] Whatever starts beside { $life } may stop it
   *[other] Not all of these can start
  }
    .why = { $fix ->
        [alone] Starting { $first } alone takes { $demand } for a moment. The generator's peak is { $limit }, so it is { $over } short.
        [amps-alone] Starting { $first } alone takes { $demand } for a moment. The generator's peak power is { $limit }, so it is { $over } short.
        [leg-alone] Starting { $first } alone takes { $demand } for a moment. The set has two legs, each with half of its power. One leg gives { $limit } at most, so it is { $over } short.
        [again] At { $time } these run together: { $about }. When { $first } starts last, it takes { $demand }. The most that the generator gives there is { $limit }, so it is { $over } short. Started first, it fits. But what has a thermostat or a motor starts again by itself.
        [amps-again] At { $time } these run together: { $about }. When { $first } starts last, it takes { $demand }. The most that the generator gives there is { $limit }, so it is { $over } short. Started first, it fits. But what has a thermostat or a motor starts again by itself.
        [life-alone] { life-it } Starting it takes { $demand } for a moment. The most that the generator gives there is { $limit }, so it is { $over } short.
        [life-together] { life-on } At { $time } these run together: { $about }. The worst moment takes { $demand }. The most that the generator gives there is { $limit }, so it is { $over } short.
        [life-off] { life-on } At { $time } these run together: { $about }. The worst moment takes { $demand }. The most that the generator gives there is { $limit }, so it is { $over } short.
        [life-turns] { life-on } At { $time } these run together: { $about }. The worst moment takes { $demand }. The most that the generator gives there is { $limit }, so it is { $over } short.
        [amps-fewer] At { $time } these run together: { $about }. The worst moment takes { $demand }. The most that the generator gives there is { $limit }, so it is { $over } short in any order.
       *[other] At { $time } these run together: { $about }. The worst moment takes { $demand }. The peak is { $limit }, so it is { $over } short in any order.
      }
    .fix-alone = Leave { $about } at home, or bring a bigger generator.
    .fix-again = Run these in turns, as the card shows. Switch { $first } on while something else is off.
    .fix-fewer = Switch { $first } on while something else is off, and run these in turns.
    .fix-leg-alone = { POWER002.fix-alone }
    .fix-amps-alone = { POWER002.fix-alone }
    .fix-amps-again = { POWER002.fix-again }
    .fix-amps-fewer = { POWER002.fix-fewer }
    .fix-life-alone = { life-cannot }
    .fix-life-together = Do not rely on this generator for { $life }. Stay where there is utility power, or use the supplier's reserve. Never change a device's setting.
    .fix-life-off = { life-off }
    .fix-life-turns = { life-turns }

POWER003 = { $stranded } of the generator's power cannot reach you
    .why = The generator can keep up { $rated }. The outlets in use pass on { $reachable } ({ $about }). The rest stays behind.
    .fix-outlet = To reach { $reach }, use the outlet “{ $outlet }” as well. Run a cord of its own from it. Never join two outlets.
    .fix-socket = To reach { $reach }, run a second cord of its own from another socket of “{ $outlet }”. Never join two outlets, or the ends of two cords.
    .fix-accept = Plan with { $reachable }. No other outlet of this generator would give you more.

POWER004 = The breaker of { $first } trips early
    .why = It is marked { $marked }, but it has tripped at { $trips }. Every limit here counts it as { $trips }.
    .fix-service = Plan with { $trips }. Have a service shop or a licensed electrician look at it. Stop using it if it smells, turns brown or gets hot.

POWER005 = Running power and peak power are nearly the same
    .why = The plan says it keeps up { $rated } and peaks at { $peak }. On most sets the running power is clearly less. The large number on the box is the peak.
    .fix-plate = Read the plate: look for "running", "rated" or "continuous" watts. Put that number in the plan.

POWER006 = Nearly all of it hangs on one side of the generator
    .why = At { $time } one side carries { $heavy } and the other { $light }. Each side gives { $leg } and no more, and half of the generator idles. Involved: { $about }.
    .fix-move = Move { $first } to a receptacle on the other side, if you can.

POWER007 = Economy idle may stall { $first }
    .why = It takes { $starting } for a moment to start, and the generator keeps up { $rated }. At economy idle the engine turns slowly and needs a second or two to catch up.
    .fix-off = Switch economy idle off before { $first } starts, and leave it off while it starts and stops by itself.

POWER008 = { $fix ->
    [sum] { $sets } sets run as one
   *[other] Sets that may not be made to run as one
  }
    .why = { $fix ->
        [sum] Together they keep up { $rated }, which is { $leg }. The kit between them and the outlets may pass less than the sets could give.
       *[other] Sets that do not keep step drive current into each other and burn. A cord with two plugs has live bare blades when one end is pulled out.
      }
    .fix-apart = Run them apart, each with its own cords. Join only inverter sets of 120 V, with the maker's kit for exactly these sets.
    .fix-look = Run them apart until you know: all must be inverter sets of 120 V, and the kit must be the maker's for exactly these sets.
    .fix-sum = Stop every engine before you join or part them. At one of them at most may neutral be joined to ground: ask their maker or a licensed electrician.

POWER009 = { $about } draws more than its plug carries
    .why = It draws { $demand }. Its plug, { $plug }, is rated for { $limit }.
    .fix-plate = Read its plate again, and look at its plug. Leave it unplugged until the two agree. Do not use a plug that somebody else put on.
