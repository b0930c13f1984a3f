# Everything on paper: labels, card, cautions and worksheet.

## Errors of printing

print-error-words-incomplete = Some words are missing, so nothing was printed: { $faults }
print-error-no-glyph = “{ $text }” cannot be printed: we have no letter for { $characters }. Use other letters.
print-error-too-long = { $percent ->
    [0] { $document }: there is no room for “{ $text }”. Too many parts are plugged into one another.
   *[other] { $document }: “{ $text }” is too long to print large enough to read. Shorten it to about { $percent }% of its length.
  }
print-error-off-page = { $document }, page { $page }: “{ $text }” would run off the paper. Nothing was printed.
print-error-too-small = { $document }, page { $page }: “{ $text }” would be too small to read, at { $percent }% of the height it needs. Nothing was printed. Make it larger in your template, or remove it.
print-error-unknown-stock = There is no label sheet called “{ $name }”. Choose one of: { $known }.
print-error-bad-stock = The label sheet “{ $name }” cannot be used: { $message }
print-error-bad-start = The sheet has { $count } labels, so printing cannot start at { $start }.
print-error-template = The template { $file } failed at line { $line }, column { $column }: { $message }

## Shared

print-several = { $name } × { $count }
print-generator = Generator
print-cord = Cord
print-adapter = Adapter
print-box = Box
print-camper = Camper
print-for-hours = 3 hours or more
print-for-short = under 3 hours
print-for-any = with no time limit
print-brief-hours = 3 h or more
print-brief-short = under 3 h
# An old print is told from a new one by it: $code is five digits.
print-code = code { $code }
print-for-seconds = for a few seconds
print-all-for-hours = all together, 3 hours or more
print-all-for-any = all together, with no time limit
print-all-running = running, all together

## Safety. What sets a limit. $id is the part.

print-set-by-rated-power = Limited by the generator. Go over, and it shuts off or stalls.
print-set-by-rated-power-unguarded = Limited by the generator. Go over, and it can overheat without shutting off.
print-set-by-one-leg = Limited by one leg of the generator. Go over, and it can overheat without shutting off.
print-set-by-parallel-kit = Limited by the parallel kit. It might not trip if you go over.
print-set-by-breaker = Limited by the breaker at “{ $id }”. It trips if you go over.
print-set-by-trips-early = The breaker at “{ $id }” tripped just above this. Do not go over.
print-set-by-receptacle = Limited by the outlet “{ $id }”.
print-set-by-plug = Limited by the plug of “{ $id }”.
print-set-by-cord-ampacity = Limited by the wire of cord “{ $id }”.
print-set-by-cord-mark = Cords like “{ $id }” are often marked with this. Read its tag; the smaller number counts.
print-set-by-hot-cord = Cord “{ $id }” carries less in air this hot. Lay it in the shade.
print-set-by-hot-cord-guessed = We do not know how hot it gets, so we assumed { $air } at “{ $id }”. Lay it in the shade.
print-set-by-coiled-cord = Cord “{ $id }” is coiled, so it carries less. Uncoil all of it.
print-set-by-coiled-cord-guessed = We do not know if “{ $id }” is coiled, so we assumed it is. Uncoil all of it.
print-set-by-wiring = Limited by the wiring of “{ $id }”.
print-set-by-not-fed = Wrong voltage for its shape. Treat it as live.
print-set-by-share-breaker = 80% of breaker “{ $id }”. Go over, and it can trip.
print-set-by-share-trips-early = 80% of just below what the breaker at “{ $id }” tripped at.
print-set-by-share-receptacle = 80% of what “{ $id }” is rated for.
print-set-by-share-wiring = 80% of what the wiring of “{ $id }” carries.
print-set-by-two = 3 hours or more: { $hours } Under 3 hours: { $past }

## Safety. Labels

print-labels-title = Labels: { $site }
print-face-alt = Front of a { $shape } outlet
print-nothing-trips = Add up all amps on this. Past { $limit } it can overheat: no breaker trips.
print-nothing-below = Add up all amps on this. Past { $limit } it can overheat: the breaker trips only at { $amps }.
print-nothing-below-set = Add up all amps on this. Past { $limit } it can overheat: the generator shuts off only above { $amps }.
print-shock-yes = GFCI: YES. Press TEST before use.
print-shock-yes-at = GFCI: YES. Press TEST on “{ $at }” before use.
print-shock-no = GFCI: NO. Nothing here cuts off a shock.
print-shock-unknown = GFCI: NOT KNOWN. We assumed none. Look for TEST and RESET.
# Inside a camper, which has its own.
print-shock-camper = GFCI: none ahead. Press TEST on the camper’s own before use.
print-short-add-up = Add up the amps
print-short-gfci = GFCI: YES. Test first.
# Where there is least room.
print-tiny-gfci = GFCI: YES
print-tiny-no-gfci = GFCI: NO
print-tiny-gfci-unknown = GFCI: NOT KNOWN
print-plug-in = Plug in here
# On a label without room for all of them: the first ones.
print-plugs-more = { $loads } + { $count } more
# Nothing forbids to use it, but the plan has nothing for it: nobody is invited to.
print-idle = NOTHING PLANNED HERE
print-idle-how = Before you plug anything in here, put it in the plan and check again.
# The plan has something here that is too much, or must not be used.
print-leave-empty = LEAVE EMPTY
print-leave-empty-how = Plug nothing in here. What the plan has here is too much, or must not be used.
print-comes-from = Gets power from
print-leg = leg { $leg }
print-leg-unknown = leg not known
print-leg-unknown-brief = leg ?
# Where both feed it; and the same on a label with little room.
print-leg-both = legs A and B
print-leg-both-brief = A and B
# After the amps of a leg, in front of how long they hold.
print-on-both = on A and { $amps } on B, { $how_long }
# In a table of outlets.
print-amps-both-brief = A: { $amps }, B: { $amps }
print-legs = Legs
print-legs-value = A and B: the two halves of its power.
print-not-all-at-once = not all at once: { $loads }
print-not-together = { $loads }; not together: { $sets }
print-one-at-a-time = one at a time: { $loads }
print-only-these = ONLY { $parts } here. No appliances.
print-short-only = NO APPLIANCES HERE
print-short-only-camper = CAMPER’S MAIN BREAKER: { $amps }
print-short-only-generator = THIS GENERATOR ONLY
only-if-camper = ONLY for a camper whose own main breaker says { $amps } or less.
only-if-generator = ONLY with this generator: another can overload it.
print-bonding-plug = bonding plug
print-bonding-plug-stays = The bonding plug stays in. { $title }
# With what plugged in: a box, or a bonding plug in an outlet.
print-shock-blind = GFCI: NO. With “{ $joint }” plugged in, it stops no shock.
print-shock-blind-plug = GFCI: NO. With the bonding plug in “{ $joint }”, it stops no shock.
print-shock-doubtful = GFCI: NO. With “{ $joint }” plugged in, it might not stop a shock.
print-shock-doubtful-plug = GFCI: NO. With a bonding plug in “{ $joint }”, it might not stop a shock.
print-do-not-use = DO NOT USE
# Of two generators that must not be joined.
print-apart = DO NOT RUN IN PARALLEL
print-apart-brief = DO NOT JOIN
print-guarded = ONLY A GFCI CORD HERE
print-guarded-brief = GFCI CORD ONLY
# The GFCI cord goes in nearer the generator, ahead of this.
print-guarded-ahead = PLUG INTO A GFCI CORD
print-guarded-ahead-brief = GFCI CORD FIRST
# On a cord, of whatever is plugged in at its far end: one outlet or several.
print-guarded-cord = GFCI CORD ONLY AT FAR END
print-guarded-cord-do = Plug only a GFCI cord (TEST and RESET buttons) into each outlet of this cord. No appliance. Plug things into that GFCI cord.
# With that cord plugged in.
print-guarded-most = use at most { $amps }
print-guarded-do = { $fix } Use at most { $amps }.
print-behind = It gets its power from “{ $id }”, which you must not use.
print-dead-end = Do not use anything it feeds.
print-refused-alt = Prohibition sign: do not use { $id }
# Of a cord or box that must not be used: its outlets.
print-refused-ends = With { $ends }
print-do = Do this
print-fold = Fold here around the cord
print-flag-alt = The same again, for the other side of the cord
print-scale-bar = This bar must measure { $measure ->
        [metric] 50 mm
       *[customary] 1.97 in
    }. If not, print again at 100%.
print-shared-sockets = { $count ->
    [2] Both sockets share this limit.
   *[other] All { $count } sockets share this limit.
  }
# Where nobody said how many plugs the outlet takes.
print-shared-plugs = All plugs here share this limit.
print-shared-outlets = Shared with { $others }.
print-shared-ends = All { $count } ends of “{ $owner }” together: { $amps }. Not each.
print-shared-box = All of “{ $owner }” together: { $amps }.
print-short-shared = { $at }: { $amps } total
print-short-shared-here = For all plugs here, added up
print-plug-into = Plug into
print-plug-into-shared = “{ $at }”: { $amps } in all, shared with { $others }
print-plug-into-nothing = nothing in this plan
print-feeds = Feeds
# What runs in a camper.
print-inside = Inside
print-cord-facts = { $wire } · { $length }
print-wire-unknown = wire size unknown
print-length-unknown = length unknown
print-cord-unknown = size, length unknown
print-box-headline = Power in: { $inlet }
print-camper-headline = Plug { $inlet }
print-generator-headline = { $rated } running · { $peak } for a few seconds
print-generator-headline-one = { $rated } running
print-neutral = Neutral
print-neutral-bonded = Joined to the frame (bonded).
print-neutral-floating = Floating (joined to nothing). A plug-in tester can show OPEN GROUND here.
print-neutral-plug = Floating, joined to ground by a bonding plug.
print-neutral-plug-unknown = Floating, unless a bonding plug is in an outlet. Look for one.
print-neutral-unknown = Unknown. Look in the manual for “floating” or “bonded neutral”.
print-reachable = Through the outlets you use
print-reachable-value = { $reachable } of { $rated }
print-rated-guessed = Its power
print-rated-guessed-value = Unknown. We assumed { $taken }. Read its nameplate.
print-rated-guessed-less = Unknown. We assumed { $taken }: { $left } is left at this elevation and heat. Read its nameplate.
print-tank = One tank lasts
print-tank-value = about { $hours }
print-tank-value-with = about { $hours } at the busiest time, with { $with } on
print-refuel = Refuel
print-refuel-value = Stop the engine and let it cool { $cooling } minutes. Never refuel a running engine.
print-air = Exhaust
print-air-value = It kills, and you cannot smell it. Outdoors only, pointing away, at least { $ample } from every tent, vehicle, door, window and person.

print-air-brief = Exhaust kills: stay { $ample } away.

## Alignment page

print-alignment-title = Where the labels land
print-alignment-head = Where the labels land
print-alignment-1 = Print this at 100% on plain paper. Hold it with a sheet of labels up to the light.
print-alignment-2 = If the frames are too far left or too high, read on the rulers by how much. Then print again with --offset { $measure ->
        [metric] "1 mm, 0.5 mm"
       *[customary] "0.04 in, 0.02 in"
    }: first to the right, then down.
print-alignment-3 = If they are too far right or too low, put a minus ahead of that number.

## Safety. Card

print-card-title = Card: { $site }
print-card-one = Side 1: plug in
print-card-two = Side 2: when something goes wrong
print-card-alarm = Put a CO alarm where you sleep.
# At the foot of the exhaust panel: whoever has no time finds the other side by it.
print-card-now = CO alarm, dizzy or headache? Get everyone out. Call { $call }.
print-card-turn = Turn this card over.
# Where the other side is not on the back.
print-card-see = See side 2.
# Of a side with more than one page: at the foot of the first, and over the next.
print-card-on = Side 1 goes on
print-card-call = Call { $call }
# To be filled in by hand.
print-card-site = Site number
print-card-ranger = Ranger
print-card-hospital = Hospital
print-card-flip = Print on both sides, flipped on the long edge.
print-card-fold = Print on one side. Fold in the middle, with the print outside.
print-card-trim = Trim at the corner marks. The pouch seals { $measure ->
        [metric] 3 mm
       *[customary] 1/8 in
    } on each side.
print-card-danger = { $count ->
    [one] 1 danger in this plan. Fix it before you start the generator: see the cautions sheet.
   *[other] { $count } dangers in this plan. Fix them before you start the generator: see the cautions sheet.
  }
print-no-breaker = Add up amps: past { $limit } nothing trips in time
# On a small card.
print-no-breaker-brief = Add up amps: nothing trips
print-row-gfci = GFCI
print-loose = Not plugged in:
print-unplaced = DO NOT PLUG IN: { $loads }. No outlet in this plan will do.
print-too-large = DO NOT PLUG IN: { $loads }. It is too much for its outlet or the generator.
print-felt-hot = DO NOT PLUG IN: { $loads }. It or its outlet got hot, or gave a shock.
print-none-free = DO NOT PLUG IN: { $loads }. No free outlet that you may use will do.
# Every outlet left is one that must not be used.
print-refused = DO NOT PLUG IN: { $loads }. Every outlet that fits is full or must not be used.
print-misplaced = DO NOT PLUG THESE IN where this plan has them: { $loads }. Another outlet can run each.
# Of what someone’s health depends on.
print-life-battery = { $life }: have a battery ready that is made for it and lasts all night.
print-unplaced-life = Run { $life } only on a battery made for it that lasts all night.
print-unplaced-life-maybe = If someone’s health depends on { $life }: run that only on a battery made for it that lasts all night.
print-together-title = Together
print-together-title-danger = Together, once no danger is left
print-together-one = You may run all of these at the same time, and nothing else: { $loads }.
print-together-how = You may run everything with a dot at the same time, and nothing else.
print-together-pick = Pick one column.
print-together-number = A number: you may run that many of them, whichever you like.
# What a dot is called to those who listen.
print-together-dot = may run
print-more = Or another group: { $count } more on the worksheet.
print-more-left-out = Other groups are possible. To ask about one, run tallywatt may.
# On a small card, in place of the table.
print-together-elsewhere = What may run together: see the worksheet.
print-never-more = … and { $count } more that never run together, on the worksheet.
print-never-unlisted = We did not work out every mix. To ask about one, run tallywatt may.
# A group of the worksheet, and when the plan needs it.
print-choice = { $number } ({ $times })
print-when-breakfast = breakfast
print-when-midday = midday
print-when-afternoon = afternoon
print-when-evening = evening
print-when-night = night
print-never-title = Never together
print-never-how = Each line below: never run all of it at the same time.
# What a meter reads at a box or outlet, at least.
print-start-meter = { $on ->
    [all] With everything on
   *[column] With everything in column 1 on
  }, a plug-in meter in “{ $at }” should read { $volts } or more (if the generator gives { $nominal }). If it reads much less, switch something off.
print-start-meter-outlet = { $on ->
    [all] With everything on
   *[column] With everything in column 1 on
  }, a plug-in meter at “{ $at }” should read { $volts } or more (if the generator gives { $nominal }). If it reads much less, switch something off.
print-setup-title = Set up
print-setup-alarm = Put a working carbon monoxide alarm where people sleep.
print-setup-alarm-test = Press the test button of each carbon monoxide alarm where people sleep: it must beep.
print-setup-place = Put the generator outdoors, at least { $ample } from every tent, vehicle, door, window and person. Point the exhaust away from all of them.
print-setup-clear = Dry, level ground, { $clear } clear on all sides. Nothing over the generator except a high roof with open sides.
print-setup-look = Look at every cord and plug. Do not use a cut or scorched cord, a loose plug, or one with its round pin broken off.
print-setup-uncoil = Uncoil every cord fully. Keep plugs out of wet grass.
print-setup-plug = Leave appliances unplugged. Start at the generator: plug in cords and boxes, only as side 1 shows.
print-setup-plug-skip = Skip what says { print-do-not-use }.
print-setup-plug-guarded = Where it says { print-guarded }, plug in a GFCI cord first.
print-setup-plug-ahead = Where it says { print-guarded-ahead }, put a GFCI cord between that part and the generator.
print-setup-start = Start the engine. Let it run for two minutes.
print-setup-test = Do everything under “Test”, every time.
print-setup-load = Now plug in appliances, switched off, only where side 1 shows. Switch them on one at a time.
print-test-title = Test
print-test-button = At every GFCI (TEST and RESET buttons), plug in a lamp. Press TEST: it must click, and the lamp must go out. If not, do not use that outlet.
print-test-reset = Press RESET. The lamp must light again.
print-test-none = We know of no outlet of yours with a GFCI that works. On wet ground use only a GFCI cord that is listed (with a test lab’s mark).
print-stop-title = Stop and refuel
print-stop-life = First switch { $life } to battery power. If no battery works, wake whoever needs it.
# After the engine is stopped and help is called, where someone’s health depends on { $life }.
print-stopped-life = Have someone switch { $life } to battery power.
print-stop-1 = Switch things off, the largest first. Then stop the engine.
print-stop-2 = Let it cool { $cooling } minutes. Then refuel, away from flames and people.
print-stop-3 = If fuel spills, get back. Start the engine only after the vapor is gone. Store fuel outdoors, away from tents.
print-stop-2-propane = Let it cool { $cooling } minutes. Close the valve. Then change the cylinder, away from flames and people.
print-stop-3-propane = Smell gas? Close the valve, move away, and let it clear. Keep cylinders upright, outdoors, away from tents.
print-plot-title = Farther away
print-plot-how = If cord “{ $cord }” were longer than { $length }, and the generator that much farther away. The dot is this plan.
print-plot-how-volts = If cord “{ $cord }” were longer than { $length }. The dot is this plan.
print-plot-volts = Volts left for { $load }
print-plot-noise = Noise where people sleep, at the busiest minute
print-plot-lost = { $percent } lost
print-plot-along = Length of cord “{ $cord }”
print-plot-alt = Curves. The dot is this plan: with cord “{ $cord }” of { $length }, { $load } is left with { $volts }.
print-plot-alt-noise = Where people sleep it is { $noise } loud.
print-defer = Local codes and a licensed electrician have the final say. Do not open or rewire anything, or join neutral and ground.

## Safety. What to do when something goes wrong: the same on the card and the cautions. $call is the emergency number.

print-emergency-title = When something goes wrong
print-emergency-fire = Fire
print-emergency-fire-away = Get everyone away. Wake everyone. Call { $call }.
print-emergency-fire-engine = Stop the engine only if the way to it is clear.
print-emergency-fire-water = Do not put water on burning fuel, or on anything that might have power.
print-emergency-fire-extinguisher = Use an ABC extinguisher only on a small fire, only with the way out behind you. If it grows, leave.
print-emergency-fire-clothes = Clothes on fire: stop, drop, roll.
print-emergency-burns = Burns: hold them under cool running water for { $burn } minutes.
print-emergency-alarm = CO alarm, or anyone dizzy, sick, weak or with a headache
print-emergency-alarm-out = Even if only one person feels sick, get everyone into fresh air right away. Wake everyone. Count heads.
print-emergency-alarm-call = Call { $call }. Say: carbon monoxide.
print-emergency-alarm-sleeper = If someone will not wake up: from outside, open every door, window and tent flap wide. Do not go in: you can pass out too. Wait for the fire department.
print-emergency-alarm-cpr = Only in fresh air: if someone is not breathing or only gasps, start CPR. Push hard and fast in the middle of the chest. Send for an AED (defibrillator).
print-emergency-cpr = If the person is not breathing or only gasps, start CPR. Push hard and fast in the middle of the chest. Send someone for an AED (defibrillator).
print-emergency-alarm-engine = Stop the engine only if you can stay out of the exhaust.
print-emergency-alarm-back = Nobody goes back in until the fire department says so, even if they feel better.
print-emergency-shock = Someone gets a shock
print-emergency-shock-off = Do not touch the person yet. Stop the engine. Then unplug the cord at the generator.
print-emergency-shock-touch = Call { $call }. Touch the person only with the engine off and the cord unplugged.
print-emergency-shock-doctor = See a doctor after any shock, even a small one.
print-emergency-breaker = A breaker trips
print-emergency-breaker-stop = Stop the engine before you touch any cord.
print-emergency-breaker-feel = Feel along the cord and plugs. If anything is hot or soft, or smells burned, do not use it again.
print-emergency-breaker-once = Switch off everything that this breaker feeds. Start the engine again. Push the breaker back on, one time only. Then run fewer things.
print-emergency-breaker-off = If it trips again, leave that breaker off and use nothing on it.

## Safety. The sheet of what to go and look at.

print-look-title = Look at these: { $site }
print-look-how = Take this sheet and a light to the gear, with the engine off. Look only from outside, and open nothing. Check a box or write what you see. Leave the rest blank. Do not guess. What a line clears counts on those above it.
print-look-light = If print is faint, light it from the side, turn it, and zoom in on a photo of it.
print-look-count = Outlets that are alike are numbered from the left, row by row from the top.
# What is asked of one outlet: $about names it.
print-look-of = { $about }: { $question }
print-look-none = There is nothing to look at: the plan says all that matters.
print-look-buy = Not bought yet: look on the package
print-look-first = Look at these first. Do not guess.
print-look-after = Then change your answers: run “tallywatt ask” on this plan, pick “Look at what we do not know”, and print again.
# $lines: the numbers of lines on that sheet.
print-look-see = See the look sheet, { $count ->
        [one] line { $lines }.
       *[other] lines { $lines }.
    }
print-next-title = What to do next

## Safety. Cautions

print-cautions-title = Cautions: { $site }
print-cautions-summary =
    { $danger ->
      [0] No dangers
      [one] 1 danger
     *[other] { $danger } dangers
    }. { $warning ->
      [0] No warnings
      [one] 1 warning
     *[other] { $warning } warnings
    }. { $rest ->
      [0] No cautions or notices
      [one] 1 caution or notice
     *[other] { $rest } cautions and notices
    }.
print-cautions-rules = { $count ->
    [one] Rule: { $codes }
   *[other] Rules: { $codes }
  }
print-cautions-stop = Do not start the generator until each of these is fixed.
print-cautions-always = Check off each point every time you set up.
print-cautions-generator = At the generator
print-cautions-people = Where people sleep
print-cautions-gear = Cords, boxes and outlets
print-cautions-fuel = Fuel
print-cautions-leaving = When you leave
print-look = Look first
print-look-then = Where it says “{ print-look }”, look. Then change your answer in the plan, and check again.
print-symbol-general = Warning sign
print-symbol-electric = Warning sign: electricity
print-symbol-hot = Warning sign: heat
print-symbol-toxic = Warning sign: poison
print-symbol-fire = Warning sign: fire
print-ws-no-danger = We found no danger. That is no promise.
print-none-found = We found nothing in this plan. That is no promise. The points above count all the same.
print-always-1 = Use the generator only outdoors, exhaust pointing away, at least { $ample } from every tent, vehicle, door, window and person. Exhaust has carbon monoxide in it. You cannot smell that, and it kills.
print-always-2 = Put a carbon monoxide alarm where people sleep. Press its test button: it must beep.
print-always-3 = Uncoil every cord, and keep it off wet ground. Do not use a cut or scorched cord, a loose plug, or one with its round pin broken off.
print-always-4 = Test every GFCI (TEST and RESET buttons) with a lamp plugged in: the lamp must go out.
print-always-5 = Never plug a generator into a building’s wiring.
print-always-6 = Before refueling: stop the engine and let it cool { $cooling } minutes. No flames.
print-always-7 = Before you leave: stop the engine, let it cool { $cooling } minutes, and unplug everything. Never leave while it runs.

## Worksheet

print-ws-title = Worksheet: { $site }
print-ws-intro = Every number on the labels and the card, with how to work it out again by hand. We round limits down. We round needs up. Nothing here was measured. A number after a figure is its source, listed at the end. A figure without a mark is worked out from the others.
print-ws-source = From
print-ws-not-known = not known
print-ws-power = Power of the generator
print-ws-symbols-power = P₀ marked power, P₀′ power here; h elevation, t air temperature; k loss for each step Δ above h₀ or t₀
print-ws-symbols-limits = I amps: h for hours, s for a short time, c what the part carries; s share for hours; ′ of what feeds it; P watts, U volts
print-ws-symbols-cords =
    R ohms there and back, r ohms of one wire for each { $measure ->
        [metric] meter
       *[customary] foot
    }, l length; I amps: p the plug, w the wire, m the amps often marked; a share in this air; the third only when coiled
print-ws-symbols-loads = I amps, P watts, U volts, λ power factor; st at the start, k times as many amps
print-ws-symbols-longest =
    l length, d share of the volts lost, U volts, I amps, r ohms of one wire for each { $measure ->
        [metric] meter
       *[customary] foot
    }
print-ws-symbols-drops = ΔU volts lost, d their share, I amps, R ohms, U volts
print-ws-symbols-energy = E watt-hours, P watts, t hours run; n tanks, t₀ how long one lasts at that demand; V fuel, V₀ what one tank holds
print-ws-symbols-noise = L level at distance d, L₀ the published level at distance d₀; max at the busiest minute; x the load then, b the load it was measured at, both in percent and no less than 25
print-ws-power-formula = Power left = marked × (1 − elevation loss − heat loss). Elevation: { $altitude-percent }% for each { $altitude-per } above { $altitude-above }. Heat: { $air-percent }% for each { $air-per } above { $air-above }.
print-ws-power-thumb = By rule of thumb: { $altitude-percent }% for each { $altitude-per } above { $altitude-above }, and { $air-percent }% for each { $air-per } above { $air-above }.
print-ws-power-less = We use the smaller of the two. On propane, first a tenth less, unless the nameplate is for propane. Generators in parallel add up to what their kit is rated for.
print-ws-power-loss-formula = Elevation loss + heat loss, by the formula
print-ws-power-loss-thumb = Elevation loss + heat loss, by rule of thumb
print-ws-power-marked = Marked running power
print-ws-power-peak-marked = Marked peak power
print-ws-power-altitude = Elevation
print-ws-power-air = Air
print-ws-power-rated = Running power here
print-ws-power-peak = Peak power here
print-ws-power-propane = On propane: nine tenths of the marked power
print-ws-power-reachable = Deliverable through the outlets you use
print-ws-power-stranded = Not deliverable
print-ws-limits = Limit of every outlet
print-ws-limits-long = For hours = the least of: each amps in the row × its share, and the hours figure of what feeds it. No share means all of it.
print-ws-limits-short = Short = the least of: each amps in the row, and the short figure of what feeds it.
print-ws-limits-watts = Watts (on page 1) = amps × volts.
print-ws-limits-80 = On 15, 20 or 30 A circuits with several outlets, the code limits each outlet to 12, 16 or 24 A. That goes for all that one outlet feeds (210.21(B)(2)), and for each thing plugged in (210.23(B)(1) and (C)). Here that is the limit for hours. For a short time the whole marking counts.
print-ws-limits-first = The first line is the generator: its running power here ÷ volts; with two legs, half on each. What a cord carries is worked out in the next section.
print-ws-reason-rated-power = running power
print-ws-reason-rated-power-unguarded = running power
print-ws-reason-one-leg = one leg
print-ws-reason-parallel-kit = parallel kit
print-ws-reason-breaker = breaker
print-ws-reason-trips-early = breaker, as seen to trip
print-ws-reason-receptacle = outlet
print-ws-reason-plug = plug
print-ws-reason-cord-ampacity = wire
print-ws-reason-cord-mark = often marked
print-ws-reason-coiled-cord = wire, coiled
print-ws-reason-hot-cord = wire, in hot air
print-ws-reason-wiring = wiring
print-ws-reason-not-fed = wrong voltage
print-ws-cords = Cords
print-ws-cords-ohms =
    Ohms = ohms for each { $measure ->
        [metric] meter
       *[customary] foot
    } × length × 2, there and back, at { $hot }.
print-ws-cords-amps = Amps: the least of plug rating, wire ampacity and, with a household plug, the amps often marked for that gauge and length. In air above { $air } only a share of the ampacity counts, and a third of that when coiled. Read the amps on the cord’s tag; the smaller number counts.
print-ws-cords-two = Two conductors carry current. The ground does not count. A neutral between two hots does not either: it carries only their difference (NEC 400.5(A), 2023).
print-ws-protection = Parts smaller than their breaker
print-ws-protection-how = Page 1 has the breaker of each part. It must be no larger than the part’s rating. For these parts it is larger, or there is none. We name the rule that allows it.
print-ws-part-receptacle = outlet
print-ws-part-cord = cord
print-ws-by-generator = the generator itself: it cannot supply more
print-ws-by-cord-set = NEC 240.5(B)(3): listed cord set, within its listing; else (B)(4): 16 AWG or thicker, up to 20 A
print-ws-by-receptacles = NEC 210.21(B)(3): two or more 15 A outlets on 20 A
print-ws-by-appliance-cord = NEC 240.5(B)(1): own cord of a listed appliance
print-ws-by-listing = the listing of the box
print-ws-by-camper-main = only the camper’s own main breaker
print-ws-by-single = NEC 210.21(B)(1) wants a smaller breaker: keep to the outlet’s rating
print-ws-by-nothing = NOTHING: do not use it
print-ws-loads = Loads
print-ws-loads-amps = Amps = watts ÷ (volts × power factor), rounded up. The watts of a heater are for 125 V. If its household plug carries them there, we count at most the plug’s amps × volts. A power factor that we assumed never makes more amps count than the plug carries.
print-ws-loads-start = Starting: watts as given, or the nameplate’s starting amps × volts, or amps × the figure for its kind. Or the kVA of a motor’s code letter ÷ 115 V or 230 V: then its volt-amperes count as watts.
print-ws-loads-leg = An appliance with both hots and a neutral counts with all of it on one leg, at 120 V, whichever leg. If its plug does not carry that: what the plug carries on each leg, or half of the load if more.
print-ws-drops = Voltage drop
print-ws-drops-formula = Volts lost = amps × ohms, added up over every cord on the way. As the voltage drops, heaters draw fewer amps and everything else draws more. Those amps are shown here.
print-ws-drops-start = While something starts: the amps of the loads at full voltage, and of the one that starts its starting amps.
print-ws-drops-legs = On two legs, the amps of one leg count there and back, as if the other leg were off. With both loaded, less is lost.
print-ws-sharing = What can run together
print-ws-sharing-formula = A group can run together when the sum of its amps stays within the limit of every part on every path. Its watts must stay within the generator’s limit.
print-ws-sharing-times = By time of day, the groups are { $groups }.
print-ws-sharing-more = We left out { $count } more groups that can run together. At no part is any of them fuller than those in the list.
print-ws-sharing-incomplete = The list is not complete. Only what is listed may run together.
print-ws-sums = The sums that decide
print-ws-symbols-sums = S volt-amps: k of what runs for less than three hours, h of what runs longer, st of the one that starts; s share for hours of the part; c what the part carries, pk the peak of the generator
print-ws-sums-how = At each part: add up the volt-amps (amps × volts) of what passes it. First divide those of what runs for three hours or more by the part’s share for hours. The limit is what the part carries × volts.
print-ws-sums-start = At switching on: the volt-amps of everything that runs. Then, for the one load that adds the most, its starting volt-amps less its running ones. Volt-amps count as watts.
print-ws-sums-which = Of each group that can run together: the generator, and the part after it that is fullest. Of each that cannot: the part that is furthest over its limit. For each such part we show two groups: the fullest that can run, and the one that is the least too much.
print-ws-sum-peak = at the start
print-ws-sum-leg = { $part }, leg { $leg }
print-ws-starts = Switching on: peaks, and what a meter reads
print-ws-symbols-starts = S volt-amps: on what is already on, st of the one that starts, pk the peak
print-ws-starts-how = Peak = volt-amps of what is already on + starting volt-amps of the one that starts. Volt-amps count as watts, so the real watts are no more.
print-ws-starts-then = “Then” is what is on once it has started: already on + its running volt-amps. The next row starts from that. Things of one kind share one row, with the figures of the last of them.
print-ws-starts-more = Only the first { $count } steps are shown here.
print-ws-column-set = Group
print-ws-column-adds-up = S, load by load
print-ws-column-on-and-starts = Already on + starting
print-ws-column-sum = Sum
print-ws-column-limit = Limit
print-ws-column-then = Then
print-ws-together-row = Together, group { $number }
print-ws-never-row = Never together { $number }
print-ws-set = group { $number }
print-ws-unplaced-row = No outlet for { $load }
print-ws-no-receptacle-fits = no free outlet fits its plug
print-ws-no-room = no usable outlet is free
print-ws-too-large = none that it may use can supply enough for it
print-ws-impossible = the plan says it draws more than its own plug is rated for
print-ws-hot = it or its outlet got hot, or gave a shock
print-ws-no-power = what it is plugged into is plugged into nothing
print-ws-refused = every outlet that fits it is full or must not be used
print-ws-energy = Energy and fuel
print-ws-energy-formula = Watt-hours = watts × hours, added up over the day. Tanks = hours ÷ hours of one tank at that demand, added up. Fuel = tanks × what one tank holds, for each generator.
print-ws-energy-between = One tank: between two published times, tanks burned in an hour (1 ÷ time) are on a straight line over the load. We add a tenth, up to those of the next published load. Above the greatest load the time falls in proportion. Below the least it gets no longer.
print-ws-energy-published = Published time on one tank at { $load } load
print-ws-energy-day = Energy in a day
print-ws-energy-tank = One tank lasts, at the greatest demand
print-ws-energy-fuel = Fuel in a day
print-ws-energy-peak = Greatest demand, from { $hour }
print-ws-energy-burns = At { $watts }: share of a tank
print-ws-energy-tanks = Share of a tank in a day
print-ws-energy-stretch = Longest run without a refueling break, { $span }
print-ws-energy-size = One tank holds
print-ws-noise = Noise
print-ws-noise-formula = Level = published level − 20 × log₁₀(distance ÷ published distance). Trees, slopes and walls change it.
print-ws-noise-free-field = In the open, from a small source: 6 dB less for each doubling of the distance.
print-ws-noise-published = Published level
print-ws-noise-load = Load it was measured at
print-ws-noise-sets = { $sets } such generators side by side add
print-ws-noise-busiest-load = Load at the busiest minute
print-ws-noise-busiest = What that load adds
print-ws-noise-sleepers = Where people sleep
print-ws-noise-50ft = Where national parks measure
print-ws-noise-sleepers-busiest = Where people sleep, at the busiest minute
print-ws-noise-50ft-busiest = Where national parks measure, at the busiest minute
print-ws-noise-sets-formula = Generators side by side: 10 × log₁₀(their number) more.
print-ws-noise-busiest-formula = At the busiest minute: level + what more load adds. No plate says how much: we assumed 10 dB(A) from a quarter of full load, or less, to full load. In between: 10 dB(A) × (load then − load it was measured at) ÷ 75%.
print-ws-assumed = What we assumed
print-ws-assumed-how = What we did not know, we assumed to be the unsafe case.
print-ws-column-what = What
print-ws-column-figure = Figure
print-ws-column-part = Part
print-ws-column-fed-by = Fed by
print-ws-column-factor = λ
print-ws-column-breaker = Breaker
print-ws-column-breaker-at = Breaker of
print-ws-column-protected-by = Protected by
print-ws-column-plug-amps = Plug
print-ws-column-hours = Hours, A
print-ws-column-short = Short, A
print-ws-column-hours-watts = Hours, W
print-ws-column-short-watts = Short, W
print-ws-column-cord = Cord
print-ws-column-wire = Wire
print-ws-column-wire-amps = Wire
print-ws-column-length = Length
print-ws-column-ohms = R
print-ws-column-ohms-kilofoot = r, 1000 ft
print-ws-column-ohms-kilometre = r, 1 km
print-ws-column-rating = Carries
print-ws-column-load = Load
print-ws-column-at = At
print-ws-column-watts = Watts
print-ws-column-watts-hours = Watts × hours
print-ws-column-volts = Volts
print-ws-column-amps = Amps
print-ws-column-amps-ohms = I × R, cord by cord
print-ws-column-start-watts = Start, W
print-ws-column-start-amps = Start, A
print-ws-column-start-times = k
print-ws-column-lost = Lost
print-ws-column-lost-percent = Share
print-ws-column-left = Left
print-ws-column-level = Level
print-ws-column-which = Which
print-ws-column-coiled = Coiled
print-ws-column-mark = Tag
print-ws-column-value = Value
print-ws-column-assumption = Assumption
print-ws-column-air-share = Air
print-ws-column-distance = Distance
print-ws-marks = After a figure:
print-ws-mark-plan = P
print-ws-mark-plan-is = from your plan
print-ws-mark-assumed = N
print-ws-mark-assumed-is = not known, so we assumed it

## Worksheet, page 1

print-ws-diagram = One-line diagram
print-ws-diagram-fed = { $part }, fed by { $from }
print-ws-case-marked = { $name }, as marked
print-ws-case-here = Here
print-ws-case-powers = running { $running }, peak { $peak }
print-ws-case-powers-here = running { $running } ({ $kilowatts } kW), peak { $peak }, at { $elevation } and { $air }
print-ws-case-system = Voltage
print-ws-case-legs = { $volts } on each of two legs
print-ws-case-joined = Joined to ground in
print-ws-breaker-at = { $amps } ({ $at })
print-ws-gfci-works = at { $by }
print-ws-gfci-no = NO
print-ws-gfci-unknown = NOT KNOWN
print-ws-symbol-generator = generator
print-ws-symbol-box = box
print-ws-column-type = Type
print-ws-column-gfci = GFCI
print-ws-column-parts = Parts
print-ws-dangers = Dangers
print-ws-assumed-more = { $count } more near the end.
print-ws-rules = Rules that found something, with their sources
print-ws-sources = Sources
print-ws-sign-name = Checked by
print-ws-sign-license = License
print-ws-sign-date = Date
print-ws-sign-signature = Signature
