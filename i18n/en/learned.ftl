### Safety. What was learned at camp.

# What people type for it, with spaces between.
learned-word-alarm = alarm alarms monoxide co
learned-word-shock = shock shocked shocks tingle tingles tingled
learned-word-hot = hot soft melt melts melted melting burn burns burned burning brown scorched smoke smokes smoked smoking smell smells smelled spark sparks sparked
learned-word-warm = warm
learned-word-very = too very really
learned-word-not = not no never nothing without didn’t didn't don’t don't wasn’t wasn't won’t won't
learned-word-trip = trip trips tripped tripping popped
learned-tripped = From now on, the plan lets { $amps } at most through { $part }. Feel around the breaker and the plugs: if anything is hot, brown or smells, do not use it.
learned-tripped-known = The plan already lets only { $marked } through { $part }. Nothing changes.
learned-tripped-made = The breaker of { $part } is marked { $marked }. At { $amps } it did its job: too much was on. Switch on less at once.
learned-hot = Stop the engine, and unplug { $part }. The plan now says: do not use it.
learned-warm = A little warmth is normal where all that a part is rated for runs through it. Lay cords out straight. Feel { $part } again soon. If it is hot or soft, stop the engine and type “hot” here.
learned-meter-low = You read { $volts } at { $part }. We expected { $least } or more with everything on. Something on the way is bad. Stop the engine, and feel each plug and cord back to the generator. Do not use what is hot, soft, brown or loose.
learned-meter-high = You read { $volts } at { $part }. More than { $least } can burn out what is plugged in, and might mean a broken neutral. Stop the engine, and have the generator checked.
learned-meter-fine = We expected { $least } or more at { $part } with everything on. You read { $volts }. If less was on, measure again with all of it on.
learned-meter-unknown = The plan runs nothing at { $part }, so we cannot say what a meter should read there. Below { $least }, switch things off: motors can overheat.
learned-ran-less = From now on, the plan counts on { $hours } a tank at most.
learned-ran-more = The plan already counts on less than { $hours } at some time of the day, or on just as much. It stays on the careful side.
learned-ran-unknown = The plan does not say how long a tank lasts at which load, so this changes nothing yet. Look in the manual, and put those hours into the plan.
learned-print = Print again, and put up before you plug in: { $what }.
learned-no-print = You do not need to print anything again.
learned-labels = { $count ->
    [one] the label { $names }
   *[other] the labels { $names }
  }
learned-card = the card
learned-cautions = the cautions
learned-look = the look sheet
learned-worksheet = the worksheet
learned-wrote = We wrote it into { $path }.
learned-no-part = We cannot tell which part you mean.
learned-parts = You named several parts: { $parts }. Name one.
learned-no-figure = We found no amps, volts or hours that we understand, or two of a kind.
learned-no-breaker = The plan has no breaker for { $parts }. Name the outlet that the breaker is for.
learned-say = Say it in one of these ways. Add up what was on: “front tripped at 13 A”. By a meter: “box-left 109 V”. With a full tank: “ran 7 h”. By touch: “tents hot”.
learned-tripped-unknown = We do not know what number is on the breaker of { $part }, so { $amps } changes nothing. Look at it, and put that number into the plan.
learned-meter-compare = You read { $volts } at { $part }. We expected { $least } or more with everything on. Now read an outlet of the generator, with the same things on. If it shows more than { $more }, something on the way is bad: stop the engine, and feel each plug and cord.
learned-meter-source = You read { $volts } at { $part }. Below { $least }, the generator carries too much, or is not in order. Switch things off. If it stays low, have the generator checked.
learned-meter-none = A meter that shows nothing does not mean that { $part } is dead. A breaker or a GFCI might be off, or a wire broken. Stop the engine before you touch a plug there.
learned-gfci = A GFCI cut the power at { $part }: something plugged in past it might leak. Unplug all of that. Press RESET once. Plug things in one at a time, and do not use what trips it again.
learned-shock = Stop the engine, then unplug. Whoever got a shock sees a doctor. Have a licensed electrician look at the generator, the cord and the thing before anyone uses them.
learned-shock-at = Stop the engine, then unplug. Whoever got a shock sees a doctor. Do not use { $part }, or what was plugged in there. Have a licensed electrician look at them first.
learned-alarm = Get everyone into fresh air, now. Call { $call }, and say: carbon monoxide. Nobody goes back in until the fire department says so.
learned-not = Say what did happen, not what did not. For a meter, everything has to be on.
learned-no-trip = If a breaker tripped, say so: “front tripped at 13 A”. Amps alone change nothing.
learned-take-off = { $count ->
    [one] Take off the label { $names }: there is none any more.
   *[other] Take off the labels { $names }: there are none any more.
  }
