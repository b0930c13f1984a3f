### Safety. What was learned at camp.

# What people type for it, with spaces between.
learned-word-hot = hot soft melted burned
learned-word-warm = warm
learned-tripped = From now on, the plan counts on { $part } to trip at { $amps }, not at { $marked }. Stick on the new labels before you plug in again.
learned-tripped-known = The plan already counts on { $part } to trip at { $marked }. Nothing changes.
learned-tripped-made = The breaker of { $part } is marked { $marked }. At { $amps } it did its job: too much was on. Switch on less at once.
learned-hot = Stop the engine, and unplug { $part }. The plan now says: do not use it.
learned-warm = A little warmth is normal in a cord that carries all it is rated for. Lay it out straight. Check { $part } again soon. If it is hot or soft, stop the engine and type “hot” here.
learned-meter-low = You read { $volts } at { $part }. We expected { $least } or more with everything on. Something on the way is bad. Stop the engine, and feel each plug and cord back to the generator. Do not use what is hot, soft, brown or loose. If all are cool, have the generator checked.
learned-meter-high = You read { $volts } at { $part }. More than { $least } can burn out what is plugged in, and might mean a broken neutral. Stop the engine, and have the generator checked.
learned-meter-fine = We expected { $least } or more at { $part } with everything on. You read { $volts }: no sign of a bad connection.
learned-meter-unknown = The plan runs nothing at { $part }, so we cannot say what a meter should read there. Below { $least }, switch things off: motors can overheat.
learned-ran-less = From now on, the plan counts on { $hours } a tank at most.
learned-ran-more = The plan already counts on less than { $hours } at some time of the day, or on just as much. It stays on the careful side.
learned-ran-unknown = The plan does not say how long a tank lasts at which load, so this changes nothing yet. Look in the manual, and put those hours into the plan.
learned-print = Print again: { $what }.
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
learned-no-figure = We found no amps, volts or hours that we understand.
learned-no-breaker = The plan has no breaker for { $parts }. Name the outlet that the breaker is for.
learned-say = Say it in one of these ways. Add up what was on: “front tripped at 13 A”. By a meter: “box-left 109 V”. With a full tank: “ran 7 h”. By touch: “tents hot”.
