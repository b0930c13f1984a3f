# Who shares what: changes that mend a plan, and asking before plugging in.

## Safety. One change. $first is the part or load.

change-more-distance = Move the generator at least { $distance } from every tent, vehicle, door and window. Point the exhaust away from people. See if the cords still reach: a longer cord changes the plan.
change-no-building = Do not connect the generator to any building’s wiring. Plug things straight into it or its box.
change-open-air = { $stands ->
        [enclosed] If it runs in there now, get everyone out, let nobody go in to stop it, and call { $call }. Once it is off and cold, carry it outdoors.
        [covered] Stop the engine. When it is cool, carry it into the open.
       *[other] If it runs in a tent, porch, vehicle or shed now, get everyone out, let nobody in, and call { $call }. Once it is off and cold, carry it into the open.
    } Stand it at least { $distance } from every tent, vehicle, door and window, with { $clear } clear on all sides. Have nothing over it but a roof well above, open on all sides. Point the exhaust away from people. See if the cords still reach: a longer cord changes the plan.
change-alarm = Put a carbon monoxide alarm that runs on a battery in every tent and camper where people sleep.
change-uncoil = Unwind { $first }, and lay it out loosely.
change-run-alone = Stop every engine. Take off what joins the generators, and run one of them alone.
change-leave-home = Do not use { $first } here. Leave it at home, or unplug it and put it away.
change-set-aside = Unplug { $first } and everything on it, and { $wrong ->
        [yes] do not use it
       *[other] leave it unplugged
    }.
change-unplug = Unplug { $first }.
change-bonding-plug-out = Stop the engine. Take the bonding plug out: the generator is bonded already.
change-bonding-plug = Stop the engine. Plug the bonding plug into “{ $to }”, which has no GFCI.
change-replug = Plug { $first } into “{ $to }”.
change-move = Plug { $first } into { $to }.
change-by-the-card = where the card shows
change-take-turns = At { $to }, let { $first } take turns with { $with }: unplug one before you plug in the other.
change-another-hour = Run { $first } at { $to } instead of { $from }.
change-off-at-night = Run { $first } at { $to } only, and switch it off before people sleep.
change-shorter-cord = Use a cord of { $length } in place of { $first }.
change-outdoor-cord = Use a cord marked for outdoors in place of { $first }.
change-grounded-cord = Use a cord with a ground pin and a ground wire in place of { $first }.
change-thicker-cord = Use a cord of { $wire } in place of { $first }.
change-protected-cord = Put a listed GFCI cord or adapter where { $first } plugs in, or use a listed cord with a GFCI instead.
change-protected-outlet = Put a listed GFCI cord or adapter into { $sockets ->
        [one] one socket
       *[other] { $sockets } sockets
    } of { $first }. Plug things only into that.
change-three-way-cord = Plug a listed three-way cord of { $length } with a GFCI into { $first }: 12 AWG, marked for outdoors.
change-smaller-appliance = Use an appliance of { $power } or less in place of { $first }.
change-box-for-splitter = Use a listed distribution box, with a breaker and a GFCI for each outlet, in place of { $first }.
change-listed-box = Use a factory-made, listed box, with a breaker and a GFCI for each outlet, in place of { $first }.
change-new-box = Plug a listed distribution box, with a breaker and a GFCI for each outlet, into { $first }.

## tallywatt mend

mend-title = How to clear it, in the order to do it
mend-nothing = There is no danger to clear, and all that must run has an outlet. Nothing is changed.
mend-cost = { $cost ->
        [one] 1 point
       *[other] { $cost } points
    }
mend-with-cost = { $change } ({ $cost })
mend-total = In all { $cost ->
        [one] 1 point
       *[other] { $cost } points
    }. A point is about a minute’s work with what you have; what you must buy costs more.
mend-before = As it is now
mend-after = With all of it done
mend-tally = { $dangers ->
        [0] no dangers
        [one] 1 danger
       *[other] { $dangers } dangers
    }, { $warnings ->
        [0] no warnings
        [one] 1 warning
       *[other] { $warnings } warnings
    }, { $musts ->
        [0] all that must run has an outlet
        [one] 1 thing that must run cannot
       *[other] { $musts } things that must run cannot, or not when you want them
    }
mend-turns = Not everything can run whenever you want it. The new card shows whose turn it is.
mend-proven = No cheaper mix of the listed changes clears as much.
mend-unproven = Something cheaper may do as much: we did not try everything.
mend-left = No listed change clears the rest. “tallywatt check” shows what is left.
mend-stays = Still there
mend-wrote = The changed plan is written to { $path }. Notes from the old file are not in it.
mend-kept = We did not write { $path }: the plan is as it was.
mend-people = This changes the plan, not the gear. You still have to do each step. Then look again, and only then start the engine.
mend-try = “--into NEW.toml” writes the changed plan to a new file.
mend-exists = { $path } is there already, so we wrote nothing. Name a new file.

print-ws-mend = Changes that would clear the dangers
print-ws-mend-before = As it is now: { $tally }.
print-ws-mend-after = With all of it done: { $tally }.
print-ws-mend-all = All of it
print-ws-column-change = Change
print-ws-column-points = Points

## Loads of one entry, counted. $name is what the user calls them.

load-some = any { $count } of the { $total } { $name }
load-all = { $total ->
        [2] both { $name }
       *[other] all { $total } { $name }
    }
load-at = { $loads } at “{ $at }”

## Safety. tallywatt may

may-yes = YES: you may switch on { $wanted }.
may-yes-while = YES: you may switch on { $wanted } while { $running } { $count ->
        [one] runs
       *[other] run
    }.
may-no = NO: do not switch on { $wanted }.
may-no-while = NO: do not switch on { $wanted } while { $running } { $count ->
        [one] runs
       *[other] run
    }.
may-dangers = This plan has { $count ->
        [one] a danger
       *[other] { $count } dangers
    } ({ $codes }). Leave the engine off until you clear it. “tallywatt check” tells how.
may-but = But: { $title } ({ $code }).
may-but-amps = By amps alone they would fit. That does not make the danger go away.
may-life = Someone’s health depends on { $life }. Switch off { $others } first, and ask again.
may-no-place = No outlet in this plan for { $names }: { $reason }.
may-taken = { $names } { $count ->
        [one] shares its socket
       *[other] share their sockets
    } with something else that you named. Unplug that first, and plug in one at a time.
may-nothing = Everything you named is on already.
may-over-short = { $at } can handle { $limit }. These need { $asks }: { $over } too much.
may-over-hours = { $at } can handle { $limit }. Some of these run for three hours or more, which counts extra: { $asks }, { $over } too much.
may-over-starting = When { $by } starts with the rest on, the generator must give { $asks }. Its peak is { $limit }: { $over } too much.
may-order-only = In one order each would start. But anything with a thermostat or a motor starts again by itself, and that would be too much.
may-the-set = The generator
may-part = “{ $id }”
may-order = Switch on in this order
may-order-step = { $name } at “{ $at }”: up to { $amps } in that moment
may-any-order = Any other order works too. This one has the lowest peak.
may-meter = With all of it on, expect
may-meter-breaker = through the breaker of “{ $breaker }”: up to { $amps }. Do not open anything to measure it.
may-meter-receptacle = on a plug-in meter at “{ $receptacle }”: { $volts } or a little more, if the generator gives { $nominal }
may-meter-if = If you see more amps or clearly fewer volts, stop the engine. Then feel the cords and plugs, and look for what is different.
may-as-placed = This assumes that everything is plugged in as the card shows.
may-no-load = No load is called { $asked }.
may-no-load-nearest = Did you mean “{ $nearest }”?
may-no-load-known = There are { $known }.

## What may run together, as check shows it. Names are joined by “+” or commas.

share-danger = This list goes by amps alone. Clear every danger first: until then, leave the engine off.
share-all = All of it may be on at once.
share-together = What may run at once: all of one line, and nothing else with it
share-never = Never together
share-alone = { $name }, not even alone
share-more = and { $count } more, all on the worksheet
share-incomplete = The list is not complete. Run together only what it lists.
share-start = Switch on in this order
share-start-step = { $name }: up to { $peak } in that moment
share-off = While { $life } runs, leave off: { $off }.
share-turns = Not everything can run whenever you want it. Take turns

## Whether the order of switching on matters. $extra: what only its starting keeps out.

start-any-order = Any other order works too. This one has the lowest peak.
start-leave-off = Leave { $extra } off while these are on: what starts again by itself would then need more than the generator’s peak.
stop-order = Switch off the largest first: { $names }.

print-turns-title = Take turns
print-ws-stop-row = Switch off
print-ws-off-row = Stays off
print-ws-start-verdict-row = Order of switching on
