# Who shares what: changes that mend a plan, and asking before plugging in.

## Safety. One change. $first is the part or load.

change-more-distance = Stop the engine, and let it cool. Move the generator to a spot { $distance } or more from every tent, vehicle, door and window. Point the exhaust away from people. See if the cords still reach. If you need a longer cord, put it in the plan, and check again.
change-no-building = Do not connect the generator to any building’s wiring. Plug things straight into it or its box.
change-open-air = { $stands ->
        [enclosed] If the generator runs in a closed place now, get everyone out and call { $call }. Let only firefighters go in to stop it. Move it only when it is off and cold.
        [covered] Stop the engine. Move it only when it is cool.
       *[other] If the generator runs in a tent, porch, vehicle or shed now, get everyone out and call { $call }. Let only firefighters go in. Move it only when it is off and cold.
    } Set it down in the open, at least { $distance } from every tent, vehicle, door and window, with { $clear } clear on all sides. Have nothing over it but a high roof, open on all sides. Point the exhaust away from people. See if the cords still reach. If you need a longer cord, put it in the plan, and check again.
change-alarm = Put a carbon monoxide alarm that runs on a battery in every tent and camper where people sleep.
change-uncoil = Unwind the cord { $first }, and lay it out loosely.
change-run-alone = Stop every engine. Take off what joins the generators, and run one of them alone.
change-leave-home = Do not use { $first } here. Leave it at home, or unplug it and put it away.
change-set-aside = Unplug { $first } and everything on it, and { $wrong ->
        [yes] do not use it
       *[other] leave it unplugged
    }.
change-unplug = Unplug { $first }.
change-bonding-plug-out = Stop the engine. Take the bonding plug out: the generator is bonded already.
change-bonding-plug = Stop the engine. Plug the bonding plug into “{ $to }”, which has no GFCI.
change-replug = Plug { $first } into the outlet “{ $to }”.
change-move = { $some ->
    [yes] Plug any { $count } of the { $total } { $first } into { $to }, and leave the rest unplugged.
   *[no] Plug { $first } into { $to }.
  }
change-by-the-card = the outlet that the new card shows
change-take-turns = At { $to }, let { $first } take turns with { $with }: unplug one before you plug in the other.
change-another-hour = Run { $first } from { $to }, not from { $from }.
change-off-at-night = Run { $first } only from { $to }, and switch it off before people sleep.
change-other-cord = In place of the cord { $first }, use one marked for outdoors.{ $wires ->
        [none] {""}
        [4] {" "}It needs four wires, neutral and ground included.
       *[other] {" "}It needs a ground pin and a ground wire.
    }{ $wire ->
        [none] {""}
       *[other] {" "}It needs { $wire } wire or thicker.
    }{" "}{ cord-shapes }{ $length ->
        [none] {""}
       *[other] {" "}It is { $length } long.
    }{ $gfci ->
        [yes] {" "}It needs a GFCI (TEST and RESET buttons).
       *[no] {""}
    }{" "}We call it { $first } too.
change-as-the-card = Then print the card of the changed plan, and plug everything in where it shows.
change-protected-cord = Put a listed GFCI cord or adapter where { $first } plugs in. Or use a listed cord with a GFCI instead, no thinner and no longer. { cord-shapes }
change-protected-outlet = Plug a listed GFCI cord or adapter into { $sockets ->
        [one] one socket
       *[other] each of { $sockets } sockets
    } of { $first }. { cord-shapes }{ $named ->
        [yes] {" "}We call { $sockets ->
            [one] it
           *[other] them
        } { $names }.
       *[no] {""}
    }
change-three-way-cord = Plug a listed cord (with a testing lab’s mark) of { $length } into { $first }. It must have a GFCI (TEST and RESET buttons) and 12 AWG wire, and be marked for outdoors. { cord-shapes }{ $named ->
        [yes] {" "}We call it { $names }.
       *[no] {""}
    } A smaller AWG number means a thicker wire.
change-smaller-appliance = { $starts ->
    [yes] In place of { $first }, use an appliance that needs { $power } or less to run and { $starting } or less to start. Do not plug in the { $old } one.
   *[no] Use an appliance of { $power } or less in place of { $first }, not the { $old } one.
  }{ $apart ->
    [yes] {" "}People use it away from the generator, so do not move it there.
   *[no] {""}
  }
change-box-for-splitter = { $length ->
        [none] In place of { $first }, use a factory-made box with a testing lab’s mark (“listed”).
       *[other] In place of { $first }, use a listed { $length } cord of { $wire } wire, marked for outdoors. Its plug and its end have the shape of the box’s inlet. We call it { $names }. Plug a factory-made box with a testing lab’s mark (“listed”) into its end.
    } { box-shapes }
change-listed-box = In place of { $first }, use a factory-made box with a testing lab’s mark (“listed”). { box-shapes }
change-new-box = Plug a factory-made box with a testing lab’s mark (“listed”) into { $first }. { box-shapes }

# What to look for on a cord or box to buy. $ends are its sockets.
cord-shapes = Its plug: { $plug }. Its sockets: { $ends }.
box-shapes = Its inlet: { $plug }. Its sockets: { $ends }. Each outlet needs a GFCI, and a breaker of no more amps than its own. We call it { $box }, and its outlets { $outlets }.

## tallywatt mend

mend-look = Look first, with the engine off, before you buy or change anything. Then change your answers, and check again.
mend-title = { $how ->
        [plan] Change your plan.
        [closed] Do these steps in this order, with the engine off. Never go into a closed place to stop it.
       *[gear] Stop the engine. Then do these steps in this order.
    }{ $all ->
        [0] {""}
        [one] {" "}This clears { $cleared } of 1 danger.
       *[other] {" "}This clears { $cleared } of { $all } dangers.
    }
mend-nothing = There is no danger to clear, and everything that must run has an outlet. Nothing is changed.
mend-before = As it is now
mend-after = After these steps
mend-tally = { $dangers ->
        [0] no dangers
        [one] 1 danger
       *[other] { $dangers } dangers
    }, { $warnings ->
        [0] no warnings
        [one] 1 warning
       *[other] { $warnings } warnings
    }, { $musts ->
        [0] everything that must run and is with you has an outlet
        [one] 1 thing that you need cannot run when you want it
       *[other] { $musts } things that you need cannot run when you want them
    }{ $home ->
        [0] {""}
        [one] , 1 thing stays at home
       *[other] , { $home } things stay at home
    }
mend-turns = Not everything can run whenever you want it. The new card shows what runs when.
mend-proven = We found no easier way.
mend-unproven = There might be an easier way: we did not try everything.
mend-left = We know of no change that clears the rest.
mend-stopped = We stopped before we had tried everything: there might be an easier way, or a change that clears the rest.{ $changed ->
        [no] {""}
       *[yes] {" "}Run “tallywatt mend” on the changed plan too: it might find more.
    }
mend-stays = Not cleared
mend-wrote = We wrote the changed plan to { $path }, without the notes of the old file. Now print the new card: { $command }. Throw the old card away.
mend-kept = Nothing in the plan changed, so we did not write { $path }.
mend-people = Your gear is not changed yet: do each step yourself. Then check again. Start the engine only if no danger is left.
mend-people-left = Your gear is not changed yet: do each step yourself. These steps do not clear every danger. Do not start the engine until you clear the rest and check again.
mend-try = To save the changed plan as a new file: { $command }

print-ws-mend = Changes that would clear the dangers
print-ws-mend-before = As it is now: { $tally }.
print-ws-mend-after = After these steps: { $tally }.
print-ws-mend-all = All of it
print-ws-column-change = Change
print-ws-column-points = Points

## Loads of one entry, counted. $name is what the user calls them.

load-some = any { $count } of the { $total } { $name }
load-at = { $loads } at “{ $at }”

## Safety. tallywatt may

may-yes = YES: you may switch on { $wanted }, with everything else off.
may-yes-while = YES: you may switch on { $wanted } while { $running } { $count ->
        [one] runs
       *[other] run
    }, with everything else off.
may-no = NO: do not switch on { $wanted }.
# Each of them may run alone.
may-no-together = NO: do not run { $wanted } at the same time.
may-no-while = NO: do not switch on { $wanted } while { $running } { $count ->
        [one] runs
       *[other] run
    }.
may-stays-on = Someone’s health { $known ->
        [yes] depends
       *[no] might depend
    } on { $life }, so we counted it as on. Never turn it off to make room.
may-dangers = This plan has { $count ->
        [one] a danger
       *[other] { $count } dangers
    } (see { $codes }). If the engine is running, stop it. Never go into a closed place to do that. Keep the engine off until no danger is left. To see how, run “tallywatt check”.
may-but = The plan also has { $signal ->
        [warning] a warning
       *[other] a caution
    } ({ $code }). { $title }.
may-but-amps = There is enough power, but a danger is still there. Keep the engine off.
may-life = Someone’s health depends on { $life }. Switch off { $others } first, and ask again.
may-no-place = This plan has no outlet for { $names }: { $reason }.
may-refused = Do not plug in { $names }: every outlet that fits is full or must not be used. Run “tallywatt check” to see why.
may-wrong-place = Do not plug in { $names } where the plan has it. Free, and able to run it: { $free }. Put that in the plan, and ask again.
may-taken = { $names } { $count ->
        [one] shares its socket
       *[other] share their sockets
    } with something else that you named. Unplug that first, and plug in one at a time.
may-nothing = Everything you named is on already.
may-over-short = { $of ->
    [set] The generator can supply { $limit }.
   *[part] The limit at { $at } is { $limit }.
  } These need { $asks }: { $over } too much.
may-over-hours = { $of ->
    [set] The generator can supply { $limit } for three hours or more.
   *[part] The limit at { $at } is { $limit } for three hours or more.
  } These count as { $asks }: { $over } too much.
may-over-starting = When { $by } starts with the rest on, the generator must supply { $asks }. Its peak is { $limit }: { $over } too much.
may-over-starting-alone = Starting { $by } alone takes { $asks }. The generator’s peak is { $limit }: { $over } too much.
may-order-only = If you switch them on in the right order, each one starts. But anything with a thermostat or a motor starts again by itself later, and that would be too much.
may-the-set = The generator
may-part = “{ $id }”
# Amps of a part that both legs of the generator feed: those that it carries, what is asked of one of them, and
# what passes each at most.
amps-both = { $amps } on A and { $amps } on B
amps-one-leg = { $amps } on one leg
amps-both-at-most = { $amps } on A and up to { $amps } on B
amps-all = { $amps } in all
may-order = Switch on in this order
may-order-step = { $name } at “{ $at }”: the generator then supplies up to { $amps }
may-any-order = Any other order works too. This one has the lowest peak.
may-meter = When everything is on, expect
may-meter-breaker = through the breaker of “{ $breaker }”: up to { $amps }
may-meter-receptacle = on a plug-in meter at “{ $receptacle }”: { $volts } or a little more, if the generator gives { $nominal }
may-meter-if = Do not open anything to measure. If a plug-in meter reads higher amps for over a few seconds, or much lower volts, stop the engine. Then feel the cords and plugs, and see if something else is plugged in.
may-as-placed = This assumes that everything is plugged in as the card shows.
may-no-load = This plan has no { $asked }.
may-no-load-nearest = Did you mean “{ $nearest }”?
may-no-load-known = It has: { $known }.

## What may run together, as check shows it. Names are joined by “+” or commas.

share-danger = The next list looks only at power, not at danger. Leave the engine off until you have cleared every danger.
share-all = As far as power goes, all of it can be on at the same time.
share-together = You may run everything on one line at the same time, and nothing else.
share-never = Never together
share-alone = { $name }: not even by itself, as planned now
share-more = and { $count } more, all on the worksheet
share-incomplete = The list is not complete. Run together only what it lists.
share-off = While { $life } runs, leave off: { $off }.
share-turns = Not everything can run whenever you want it. Take turns
# A line of the turns.
share-turn-without = { $loads } (only while nobody needs { $life })
share-no-turns = { $life } takes no turns: never turn it off to make room.

print-turns-title = Take turns
