### Safety. What was learned at camp.

# What people type for it, with spaces between.
learned-word-alarm = alarm alarms monoxide co headache headaches dizzy dizziness sick nausea nauseous faint fainted vomit vomiting unconscious
learned-word-fire = fire fires flame flames
learned-word-shock = shock shocked shocks tingle tingles tingled zap zaps zapped electrocuted
learned-word-hot = hot soft melt melts melted melting burn burns burned burning brown scorched smoke smokes smoked smoking smell smells smelled spark sparks sparked sizzle sizzles buzz buzzes buzzing
learned-word-warm = warm
learned-word-very = too very really
learned-word-not = not no never nothing without didn’t didn't don’t don't wasn’t wasn't won’t won't
learned-word-trip = trip trips tripped tripping popped
# The numbers from one to twenty, then thirty and forty, each with its other forms after a slash. A half makes another
# number of what comes with it.
learned-word-number = one/an two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen twenty thirty forty
learned-word-half = half
learned-tripped = It tripped at { $amps }, so from now on the plan lets { $counted } at most through { $part }. Stop the engine, then feel the breaker and the plugs. If anything is hot, brown or smells, do not use it.
# $demand: what the plan runs there at once.
learned-tripped-planned = The plan has { $demand } there, and the breaker tripped. From now on, the plan lets { $counted } at most through { $part }. Stop the engine, then feel the breaker and the plugs. If anything is hot, brown or smells, do not use it.
learned-tripped-known = The plan already lets only { $marked } through { $part }. Nothing changes.
learned-tripped-made = The breaker of { $part } is marked { $marked }. At { $amps } it did its job: too much was on. Switch on less at once.
learned-hot = Stop the engine, and unplug what is hot. The plan now says: do not use { $part }.
learned-warm = A part at its limit gets a little warm. Lay cords out straight. Stop the engine soon, and feel { $part } again. If it is hot or soft, do not use it, and type “hot” here.
learned-meter-low = You read { $volts } at { $part }. We expected { $least } or more with everything on. If anything smells or smokes, stop the engine now. If not, first put the meter into an outlet of the generator, with the same things on. If it shows less than { $source } there too, the generator is overloaded, or something is wrong with it. Switch things off, and measure both again. If it shows more than { $more }, a plug, cord or box on the way to { $part } is bad. Then stop the engine, and feel each one. Do not use what is hot, soft, brown or loose.
learned-meter-high = You read { $volts } at { $part }. More than { $least } can burn out what is plugged in, and might mean a broken neutral. Stop the engine, and unplug everything. Have the generator checked, and each cord and box on the way to { $part }, before you use them again.
learned-meter-raised = You read { $volts } at { $part }. More than { $least } can harm electronics. Unplug them, and measure again with the rest on. If it still shows more, have the generator checked.
learned-meter-fine = We expected { $least } or more at { $part } with everything on. You read { $volts }. If less was on, measure again with all of it on.
learned-meter-unknown = The plan runs nothing at { $part }, so we cannot say what a meter should read there. Below { $least }, switch things off: motors can overheat.
learned-ran-less = From now on, the plan counts on { $hours } a tank at most.
learned-ran-more = At some time of the day, the plan already counts on { $hours } a tank or less. It keeps that lower figure.
learned-ran-unknown = The plan does not say how long a tank lasts at which load, so this changes nothing yet. Look in the manual, and put those hours into the plan.
learned-print = Before you plug in, print and put up again: { $what }.
learned-no-print = You do not need to print anything again.
learned-same = First do what it says above. For the plan this is only a note: the card, “tallywatt check” and “tallywatt may” do not count it.
learned-labels = { $count ->
    [one] the label { $names }
   *[other] the labels { $names }
  }
learned-card = { $side ->
    [0] the card
   *[other] the card (new on side { $side })
  }
learned-cautions = the cautions
learned-look = the look sheet
learned-worksheet = the worksheet
learned-wrote = We noted it in { $path }.
learned-no-part = We cannot tell which part you mean. Name an outlet, cord or box as its label does. If anything is hot or smells, stop the engine and unplug it first.
learned-parts = You named several parts: { $parts }. Name one.
learned-no-figure = We found no amps, volts or hours that we understand, or two of a kind.
learned-no-amps = The plan runs nothing at { $parts }, so we need to know at how many amps it tripped. Add up the amps of all that was on there.
learned-say-amps = Then type it like this: tallywatt learned { $plan } { $id } tripped at 13 A
learned-no-breaker = The plan has no breaker for { $parts }. Name the outlet that the breaker is for.
learned-say = Say it like one of these. A breaker: “front tripped”, or “front tripped at 13 A” if you know the amps of all that was on. A meter: “box-left 109 V”. A full tank: “ran 7 h”. Heat or smell: “tents hot”. Also: “GFCI front tripped”, “CO alarm”, “shock at front”.
learned-tripped-unknown = We do not know what number is on the breaker of { $part }, so { $amps } changes nothing. Look at it, and put that number into the plan.
learned-meter-compare = You read { $volts } at { $part }. We expected { $least } or more with everything on. Now put the meter into an outlet of the generator, with the same things on. If it shows more than { $more }, a plug, cord or box on the way is bad. Then stop the engine, and feel each one.
learned-meter-source = You read { $volts } at { $part }. Below { $least }, the generator is overloaded, or something is wrong with it. Switch things off. If it stays low, have the generator checked.
learned-meter-none = A meter that shows nothing does not mean that { $part } is dead. A breaker or a GFCI might be off, or a wire broken. Stop the engine before you touch a plug there.
learned-gfci = A GFCI cut the power at { $part }: something plugged in past it might leak. Unplug all of that. Press RESET once. Plug things in one at a time, and do not use what trips it again.
learned-shock = Stop the engine, then unplug the cord at the generator. Call { $call } if it just happened. See a doctor after any shock, even a small one. Have a licensed electrician look at the generator, the cord and the appliance before anyone uses them. Then type where, so that the plan knows it: “shock at kettle”.
learned-shock-at = Stop the engine, then unplug the cord at the generator. Call { $call } if it just happened. See a doctor after any shock, even a small one. The plan now says: do not use { $part }. Do not use anything else that was plugged in there. Have a licensed electrician look at all of it.
learned-alarm = Get everyone into fresh air, now. Call { $call }, and say: carbon monoxide. Nobody goes back in until the fire department says so.
learned-fire = Get everyone away, now. Call { $call }. Stop the engine only if the way to it is clear. Put no water on burning fuel, or on anything that might have power.
learned-not = We understand only what happened, so leave out what did not. A reading by a meter counts only with everything on.
learned-no-trip = If a breaker tripped, say so: “front tripped at 13 A”. Amps alone change nothing.
learned-take-off = { $count ->
    [one] Take off the label { $names }: there is none any more.
   *[other] Take off the labels { $names }: there are none any more.
  }
