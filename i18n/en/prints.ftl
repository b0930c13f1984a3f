# Everything on paper: labels, card, cautions and worksheet.

## Errors of printing

print-error-words-incomplete = Some words are missing, so nothing was printed: { $faults }
print-error-no-glyph = “{ $text }” cannot be printed: there is no letter for { $characters }. Write it with other letters.
print-error-too-long = { $document }: “{ $text }” is too long to print large enough to read. Shorten it to about { $percent } % of its length.
print-error-off-page = { $document }, page { $page }: “{ $text }” would run off the paper. Nothing was printed.
print-error-unknown-stock = There is no label sheet called “{ $name }”. There are { $known }.
print-error-bad-stock = The label sheet “{ $name }” cannot be used: { $message }
print-error-bad-start = The sheet has { $count } labels, so printing cannot start at { $start }.
print-error-template = The template { $file } failed at line { $line }, column { $column }: { $message }

## Shared

print-several = { $name } × { $count }
print-generator = Generator
print-cord = Cord
print-box = Box
print-for-hours = for hours
print-for-short = for a short time
print-up-to = Up to
print-limit = Limit

## What sets a limit. $id is the part.

print-set-by-rated-power = The generator sets this limit and cuts out past it.
print-set-by-one-leg = This reaches only one half of the generator, which cuts out past it.
print-set-by-breaker = The breaker at { $id } sets this limit and trips past it.
print-set-by-trips-early = The breaker at { $id } trips early. This is where it was seen to trip.
print-set-by-receptacle = The receptacle { $id } sets this limit.
print-set-by-plug = The plug of { $id } sets this limit.
print-set-by-cord-ampacity = The wire of cord { $id } sets this limit.
print-set-by-coiled-cord = Cord { $id } is coiled, so it carries less. Uncoil it all.
print-set-by-wiring = The wiring of { $id } sets this limit.
print-set-by-not-fed = Nothing feeds this.

## Labels

print-labels-title = Labels: { $site }
print-face-alt = Front of a { $shape } receptacle
print-trips = It trips.
print-nothing-trips = NOTHING TRIPS FOR YOU. Add up the amps yourself.
print-shock = Shock protection
print-shock-yes = Shock protection (GFCI): YES. Press its TEST button before use.
print-shock-no = Shock protection (GFCI): NO.
print-plug-in = Plug in here
print-plug-in-nothing = nothing planned
print-comes-from = Fed by
print-do-not-use = DO NOT USE
print-why = Why
print-do = Do this
print-fold = Fold here round the cord
print-scale-bar = This bar must measure 50 mm (1.97 in). If not, print again at 100 %.
print-shared-sockets = { $count ->
    [2] Both sockets share this limit.
   *[other] All { $count } sockets share this limit.
  }
print-shared-outlets = It is shared with { $others }.
print-plug-into = Plug into
print-feeds = Feeds
print-uncoil = Lay out
print-uncoil-value = Uncoil it all. Keep it off wet ground where people walk.
print-cord-facts = { $wire } · { $length }
print-wire-unknown = wire size unknown
print-length-unknown = length unknown
print-box-headline = Inlet { $inlet }
print-box-outlet = up to { $amps } · { $watts } for hours
print-generator-alt = The generator
print-generator-headline = { $rated } for hours · { $peak } for seconds
print-neutral = Neutral
print-neutral-bonded = Joined to the frame (bonded).
print-neutral-floating = Floating: a plug-in tester shows OPEN GROUND here.
print-neutral-plug = Floating, joined to ground by a bonding plug.
print-neutral-unknown = Unknown. Ask a licensed electrician.
print-reachable = Through the outlets in use
print-reachable-value = { $reachable } of { $rated } can be reached
print-tank = One tank
print-tank-value = about { $hours }
print-refuel = Refuel
print-refuel-value = Off and cool for 20 minutes. Never while it runs.
print-air = Exhaust
print-air-value = Kills without a smell. 20 ft or more from anyone, pointing away. Never indoors.

## Card

print-card-title = Card: { $site }
print-card-one = Side 1. Who feeds whom, and what may run together
print-card-two = Side 2. Setting up, testing, and when something goes wrong
print-weakest = WEAKEST LINK
print-gfci = GFCI
print-no-breaker = nothing trips
print-column-plugged = Plugged in
print-column-limit = Amps for hours, then for a short time
print-outlet-facts = { $shape } · breaker { $breaker }
print-tree-alt = Who feeds whom, from the generator outwards: { $parts }
print-tree-alt-part = { $id } up to { $amps } for hours
print-loose = Not plugged in:
print-unplaced = Found no place, leave switched off:
print-together-title = Together
print-together-how = Pick one column. Whatever has a dot in it may run at once. Nothing else.
print-more = … and { $count } more, on the worksheet.
print-never-title = Never together
print-start-title = Switch on in this order
print-start-peak = up to
print-start-too-much = Starting all of these asks for more than the generator gives. Leave the last ones off.
print-setup-title = Set up
print-setup-alarm = Put a working carbon monoxide alarm where people sleep.
print-setup-place = Stand the generator outdoors, { $ample } or more from every tent, vehicle and door. Never under { $least }. Exhaust points away from people.
print-setup-clear = Keep { $clear } clear all round it. Dry ground, level, nothing over it.
print-setup-look = Look at every cord and plug. Cut, scorched, loose or missing a ground pin: leave it out.
print-setup-uncoil = Uncoil every cord fully. No plug lies in wet grass.
print-setup-start = Everything off. Start the engine. Let it run for two minutes.
print-setup-plug = Plug in from the generator outwards, as side 1 shows.
print-setup-test = Do the test on the right, every time.
print-setup-load = Switch on one thing at a time, in the order of side 1.
print-test-title = Test
print-test-button = Press TEST on every GFCI. It must click and cut the power. If not, do not use it.
print-test-reset = Press RESET. Power comes back.
print-test-none = None of your receptacles has shock protection (GFCI). On wet ground use only through a listed GFCI cord.
print-test-bonded = A plug-in tester must read CORRECT at every receptacle.
print-test-bonded-button = The tester’s own GFCI button must cut the power too.
print-test-floating = A plug-in tester reads OPEN GROUND. On this floating-neutral generator that is how it is made. Do not try to mend it.
print-test-floating-button = The tester’s own GFCI button does nothing here. Only the TEST button on the GFCI itself counts.
print-test-unknown = Nobody has said whether this generator’s neutral is floating or bonded. Look in its manual or ask a licensed electrician.
print-test-unknown-button = Until then trust only the TEST button on the GFCI itself.
print-stop-title = Stop and refuel
print-stop-1 = Switch things off, the largest first. Then stop the engine.
print-stop-2 = Wait 20 minutes until it is cool. Then refuel, away from flames and people.
print-stop-3 = Wipe up spills. Store fuel outdoors, away from tents.
print-distance-title = Distances
print-distance-people = Exhaust to people
print-distance-people-value = { $ample }, never under { $least }
print-distance-clear = Clear all round
print-distance-quiet = Below 60 dB(A) from
print-trouble-breaker = A breaker trips
print-trouble-breaker-1 = Switch off everything on it.
print-trouble-breaker-2 = Feel along cord and plugs. Hot, soft or smelly: take it out of use.
print-trouble-breaker-3 = Reset it once. Switch on fewer things.
print-trouble-breaker-4 = It trips again with nothing on: leave it off.
print-trouble-tester = A tester reads wrong
print-trouble-tester-1 = Compare with “Test” above. Some readings are right for your generator.
print-trouble-tester-2 = Any other reading: unplug that part and test the one before it.
print-trouble-tester-3 = The first part that reads wrong stays out of use.
print-trouble-tester-4 = Never open or rewire it. A licensed electrician does that.
print-trouble-alarm = An alarm sounds, or heads ache
print-trouble-alarm-1 = Everyone out into open air at once. Wake the sleepers. Count heads.
print-trouble-alarm-2 = Call emergency services. Say: carbon monoxide.
print-trouble-alarm-3 = Stop the engine only if you can do it without breathing its exhaust.
print-trouble-alarm-4 = Nobody goes back in, even if they feel better.
print-trouble-shocked = Someone is shocked
print-trouble-shocked-1 = Do not touch them while they touch the power.
print-trouble-shocked-2 = Stop the engine, or pull the plug at the generator.
print-trouble-shocked-3 = Call emergency services. Not breathing: start chest compressions.
print-trouble-shocked-4 = Every shock is seen by a doctor, even a small one.
print-defer = Local codes and a licensed electrician decide. Never open, rewire or bond anything yourself.

## Cautions

print-cautions-title = Cautions: { $site }
print-cautions-head = Cautions
print-cautions-summary = { $danger ->
    [0] No dangers found
    [one] 1 danger
   *[other] { $danger } dangers
  }, { $warning ->
    [0] no warnings
    [one] 1 warning
   *[other] { $warning } warnings
  }, { $rest } more to know.
print-cautions-tick = Worst first. Tick each one at every set-up. A danger that is not mended means: do not start the generator.
print-authority = Authority
print-always-title = At every set-up, whatever the plan says
print-none-found = Nothing was found in this plan. That is no promise: the points below hold all the same.
print-always-1 = Exhaust kills without a smell. Outdoors only, far from people, pointing away. Alarm where people sleep.
print-always-2 = Every cord uncoiled, whole, with its ground pin, off wet ground.
print-always-3 = TEST button pressed on every GFCI.
print-always-4 = Never plug a generator into a building’s wiring.
print-always-5 = Off and cool for 20 minutes before refuelling. No flames.
print-always-6 = Nothing opened, rewired or bonded by anyone but a licensed electrician.
