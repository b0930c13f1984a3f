### Safety. Rules on power.

# When things are on together: at the head of a sentence, and in one, with the space ahead of it.
when-first = { $timed ->
    [yes] At { $time }
   *[no] At any hour
  }
when = { $timed ->
    [yes] {" "}at { $time }
   *[no] {""}
  }

POWER001 = { $fix ->
    [hours] The generator cannot run all this together
    [leg-alone] One half of the generator cannot run { $about }
    [alone] The generator cannot run { $about }
    [amps-alone] The generator cannot run { $about }
    [life-alone] This generator cannot run { $about }
    [life-off] Too much is on along with { $life }{ when }
    [life-turns] Too much is on along with { $life }{ when }
    [leg] One half of the generator is overloaded{ when }
    [leg-turns] One half of the generator is overloaded{ when }
    [leg-look] Half of the generator might be overloaded{ when }
    [leg-cord] Half of the generator might be overloaded{ when }
   *[other] Too much is on together{ when }
  }
    .why = { $fix ->
        [hours] You did not say when these run, so we counted them all at the same time: { $about }. They need { $demand } together, but the generator can supply { $limit }.
        [turns] These need { $demand } together: { $about }. The generator can supply { $limit }, so it is { $over } too much.
        [leg-alone] It draws { $demand } on one half. Each half can supply { $limit }, so it is { $over } too much on either half.
        [alone] It needs { $demand }. The generator can supply { $limit }, so it is { $over } too much.
        [amps-alone] It draws { $demand }. The generator can supply { $limit }, so it is { $over } too much.
        [life-alone] { life-it } It needs { $demand }, but the generator can supply { $limit } for it at most: { $over } short.
        [life-off] { life-on } The generator can supply { $limit }, but these need { $demand }, which is { $over } too much: { $about }.
        [life-turns] { life-on } The generator can supply { $limit }, but these need { $demand }, which is { $over } too much: { $about }.
        [leg] These draw { $demand } on one half: { $about }. Each half can supply { $limit }, so it is { $over } too much.
        [leg-turns] These draw { $demand } on one half: { $about }. Each half can supply { $limit }, so it is { $over } too much.
        [leg-look] If all of these are on one half, they draw { $demand } there: { $about }. Each half can supply { $limit }, so it is { $over } too much.
        [leg-cord] If all of these are on one half, they draw { $demand } there: { $about }. Each half can supply { $limit }, so it is { $over } too much.
       *[other] These draw { $demand } together: { $about }. The generator can supply { $limit }, so it is { $over } too much.
      }
    .fix-turns = Run them in turns, or leave one at home. In the plan, give each its own hours. Move { $first } first: it needs the most.
    .fix-hours = Run them in turns: the card shows what goes together. Or put in the plan when each one runs.
    .fix-leg = Move { $move } to an outlet on the other half, or run these in turns.
    .fix-leg-turns = Run these in turns, or leave one at home.
    .fix-leg-look = Find out which half each outlet is on, and put it in the plan. Until then, run these in turns.
    .fix-leg-cord = Run these in turns. No plan knows which half each end of a cord is on. Ask a licensed electrician before you run them together.
    .fix-leg-alone = Leave { $about } at home, use its lower setting, or bring a bigger generator.
    .fix-amps = Run them one after another. In the plan, give each its own hours. Move { $first } first: it draws the most.
    .fix-alone = { POWER001.fix-leg-alone }
    .fix-amps-alone = { POWER001.fix-leg-alone }
    .fix-life-alone = { life-cannot }
    .fix-life-off = { life-off }
    .fix-life-turns = { life-turns }

POWER002 = { $fix ->
    [alone] The generator cannot start { $about }
    [amps-alone] The generator cannot start { $about }
    [leg-alone] One half of the generator cannot start { $about }
    [again] These cannot all stay on together
    [amps-again] These cannot all stay on together
    [life-alone] This generator cannot start { $about }
    [life-together] This generator cannot start all of these: { $life }
    [life-off] Starting anything else could shut off { $life }
    [life-turns] Starting anything else could shut off { $life }
   *[other] Not all of these can start
  }
    .why = { $fix ->
        [alone] Starting { $first } alone takes { $demand } for a moment. The generator’s peak here is { $limit }, so it is { $over } short.
        [amps-alone] Starting { $first } alone takes { $demand } for a moment. The generator’s peak here is { $limit }, so it is { $over } short.
        [leg-alone] Starting { $first } alone takes { $demand } for a moment. One half of the generator gives { $limit } at most, so it is { $over } short.
        [again] { when-first } there is enough power if { $first } starts first, but a thermostat or a motor starts again by itself. If it starts last, it needs { $demand }, and the generator gives at most { $limit }: { $over } short. Together: { $about }.
        [amps-again] { when-first } there is enough power if { $first } starts first, but a thermostat or a motor starts again by itself. If it starts last, it needs { $demand }, and the generator gives at most { $limit }: { $over } short. Together: { $about }.
        [life-alone] { life-it } Starting it takes { $demand } for a moment, but the generator gives at most { $limit }: { $over } short.
        [life-together] { life-on } { when-first } these need up to { $demand } as one starts, but the generator gives at most { $limit }: { $over } short. Together: { $about }.
        [life-off] { life-on } { when-first } these need up to { $demand } as one starts, but the generator gives at most { $limit }: { $over } short. Together: { $about }.
        [life-turns] { life-on } { when-first } these need up to { $demand } as one starts, but the generator gives at most { $limit }: { $over } short. Together: { $about }.
        [amps-fewer] { when-first } these need up to { $demand } as one starts. The generator gives at most { $limit }, so it is { $over } short in any order. Together: { $about }.
       *[other] { when-first } these need up to { $demand } as one starts. The peak here is { $limit }, so it is { $over } short in any order. Together: { $about }.
      }
    .fix-alone = Leave { $about } at home, or bring a bigger generator.
    .fix-again = Run these in turns, as the card shows. Switch something off before { $first } goes on.
    .fix-fewer = Switch something off before { $first } goes on, and run these in turns.
    .fix-leg-alone = { POWER002.fix-alone }
    .fix-amps-alone = { POWER002.fix-alone }
    .fix-amps-again = { POWER002.fix-again }
    .fix-amps-fewer = { POWER002.fix-fewer }
    .fix-life-alone = { life-cannot }
    .fix-life-together = Do not rely on this generator for { $life }. Stay where there is utility power, or use your supplier’s backup. Never change a device’s setting.
    .fix-life-off = { life-off }
    .fix-life-turns = { life-turns }

POWER003 = You cannot use { $stranded } of the generator’s { $rated }
    .why = The generator can supply { $rated }. The outlets that you use can deliver only { $reachable } ({ $about }).
    .fix-outlet = To get { $reach }, add a separate cord from the outlet “{ $outlet }” to the plan, and check again. Never join two outlets.
    .fix-socket = To reach { $reach }, put a second cord from another socket of “{ $outlet }” in the plan, and check again. Never join two outlets, or the ends of two cords.
    .fix-accept = Plan with { $reachable }. The outlets and gear that you may use give no more.

POWER004 = { $fix ->
    [late] The breaker for { $first } tripped above its number
   *[other] The breaker for { $first } trips too soon
  }
    .why = { $fix ->
        [late] It is marked { $marked }, but it tripped only at { $trips }. Any breaker lets more through for a short time, so we still count { $marked }.
       *[other] It is marked { $marked }, but it tripped at { $trips }. Plan with { $counted } at most, but do not trust it to trip there again.
      }
    .fix-service = Have a service shop or a licensed electrician look at it. Stop using it if it smells, turns brown or gets hot.
    .fix-late = Plan with { $marked }, the number on it. If it carries more than that for an hour, stop using it until a licensed electrician has looked at it.

POWER005 = Running and peak power are nearly the same
    .why = The plan gives { $rated } running and { $peak } peak. On most generators the running power is clearly less: the big number on the carton is the peak.
    .fix-plate = Read the nameplate: look for “running”, “rated” or “continuous” watts. Put that number in the plan.

POWER006 = One half of the generator carries nearly everything
    .why = { when-first } one half carries { $heavy } and the other { $light }. Each half can supply { $leg } and no more, so half of the power goes unused. Look at: { $about }.
    .fix-move = Move { $first } to an outlet on the other half, if you can.

POWER007 = { $first } might stall the engine on economy idle
    .why = It takes { $starting } to start, and the generator can supply { $rated }. On economy idle the engine runs slowly, and needs a second or two to speed up.
    .fix-off = Turn economy idle off before you run { $first }. Leave it off.

POWER008 = { $fix ->
    [sum] { $sets } generators run in parallel
   *[other] These generators might burn up in parallel
  }
    .why = { $fix ->
        [sum] Together they can supply { $rated }, which is { $leg }. The kit between them and the outlets might give less than that.
       *[other] Generators that are out of step push current into each other and burn up. A cord with a plug on both ends has live, exposed blades.
      }
    .fix-apart = Run them apart, each with its own cords. Join only 120 V inverter generators, with the maker’s kit for exactly these generators.
    .fix-look = Run them apart until you know. All must be 120 V inverter generators, and the kit must be the maker’s for exactly these generators.
    .fix-sum = Stop every engine before you join or part them. Ask their maker or a licensed electrician if neutral is joined to ground in more than one: that is too many. Do not join neutral and ground yourself.

POWER009 = { $fix ->
    [motor] { $about } might draw more than its plug carries
   *[other] { $about } draws more than its plug carries
  }
    .why = { $fix ->
        [motor] By its horsepower we count { $demand }. Its plug, { $plug }, is rated for { $limit }.
       *[other] It draws { $demand }. Its plug, { $plug }, is rated for { $limit }.
      }
    .fix-plate = Read its nameplate again, and look at its plug. Do not use it until the two agree, or if someone changed its plug.
    .fix-motor = Read the amps on its nameplate, and put them in the plan. If they are more than { $limit }, do not use it with this plug.
