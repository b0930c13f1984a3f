### Safety. What we assume for an answer that is not there. Each message says what we do not know, what we
### assumed, and how to find the real answer. { $part } is the part or load it is about; { $field } is the
### line of the plan file, for those who edit it by hand.

assumed-yes = yes
assumed-no = no
assumed-none = none
assumed-leg-both = both halves
assumed-worst-kind = the worst of every kind
assumed-one-leg = one half

# $text is one of the sentences below, $parts the others it holds for.
assume-also = { $text } The same goes for { $parts }.

assume-altitude = We do not know the elevation here, so we assumed { $value }. A generator loses power in thin air.
    .look = Look up the elevation on a map or a phone.
assume-air = We do not know how hot it gets, so we assumed { $value }. A generator loses power in hot air.
    .look = Look in the forecast for the hottest temperature while you are there.
assume-rated = We do not know how much the generator can supply, so we assumed { $value }, like a very small generator. Nearly everything here depends on that number.
    .look = Look for “running” or “rated” watts on its nameplate.
assume-rated-of-peak = We do not know how much the generator can supply, so we assumed { $value }, three quarters of its peak. Nearly everything here depends on that number.
    .look = Look for “running” or “rated” watts on its nameplate.
assume-voltage = We do not know which voltage the generator gives, so we assumed { $value }. If so, each 120 V outlet gets only half of the power.
    .look = Look for “120 V” or “120/240 V” on its nameplate.
assume-inverter = We do not know if the generator is an inverter, so we assumed the worse case each time. It might not stop itself when too much is on, and breakers might not trip when bare wires touch (a short circuit).
    .look = Look for “inverter” on it.
assume-peak = We do not know the generator’s peak power, so to start things we assumed only its running power, { $value }. To judge if parts overheat, we assumed more.
    .look = Look for “peak”, “starting” or “max” on the generator.
assume-no-gfci = We do not know if “{ $part }” has a GFCI, so we assumed none.
    .look = Look for buttons marked TEST and RESET.
assume-no-breaker = We do not know if “{ $part }” has a breaker of its own, so we assumed none.
    .look = Look beside it for a button or switch marked with amps.
assume-breaker-unknown = We do not know how big the breaker of “{ $part }” is. So we assumed that it will not trip in time, and that the outlet supplies only what its shape is rated for.
    .look = Look for a button or switch marked with amps.
assume-camper-main = We do not know the main breaker of “{ $part }”, so we assumed { $value }, what its plug is made for.
    .look = Look inside where you switch its breakers: one is marked “Main”. Read its amps. Do not unscrew anything.
assume-leg = We do not know which half feeds “{ $part }”, so we counted its load on { $value }. That is the worst case.
    .look = Look in the manual for which outlets share a half (leg).
assume-box-wire = We do not know how thick the wire to “{ $part }” is inside its box, so we assumed { $value }, the thinnest.
    .look = Read its papers, or ask whoever made it, or a licensed electrician. Do not open it.
assume-cord-wire = We do not know the wire size of “{ $part }”, so we assumed { $value }, the thinnest.
    .look = Read the print along the cord: “12/3” means wire size 12 AWG, and three wires.
assume-cord-conductors = We do not know how many wires “{ $part }” has, so we assumed { $value }: no ground wire.
    .look = Read the print along the cord: “12/3” means wire size 12 AWG, and three wires.
assume-cord-length = We do not know how long “{ $part }” is. To figure lost volts, we assumed { $value }. For how far it reaches, we counted nothing.
    .look = Pace it off: count each step as { $step }.
assume-cord-coiled = We do not know if “{ $part }” is fully unwound in use, so we assumed that it is coiled. Coiled, it can carry only a third as much.
    .look = Unwind it fully. Then answer no to “Coiled”.
assume-load-kind = We do not know what “{ $part }” mostly does, so we assumed { $value }. It might draw as much as a heater and start like a motor, and someone’s health might depend on it.
    .look = Ask its owner.
assume-load-plug = We do not know the plug of “{ $part }”, so we assumed { $value }, the most common one.
    .look = Look at its plug.
assume-load-one-leg = We do not know how much “{ $part }” draws from each half (leg), so we put it all on { $value }.
    .look = If its nameplate gives amps for each half, write them in the plan as current. Until then, run less in it at a time.
assume-load-voltage = We do not know if “{ $part }” uses 240 V alone or also 120 V, so we put it all on { $value }.
    .look = Look on its nameplate for “120 V”, “240 V” or “120/240 V”. Until then, run less in it at a time.
assume-load-amps-voltage = We do not know if “{ $part }” uses 120 V or 240 V, so we counted its amps on { $value }.
    .look = Look on its nameplate for “120 V”, “240 V” or “120/240 V”.
assume-power-factor = We do not know the power factor of “{ $part }”, so we assumed { $value } for its kind. It draws more current than its watts show.
    .look = Look on its nameplate for amps (A).
assume-running = We do not know what “{ $part }” uses, so we assumed { $value }, the most for its kind and plug.
    .look = Look on its nameplate for W, or for A.
assume-starting = We do not know what “{ $part }” needs to start, so we assumed { $value } for its kind. Anything with a motor needs far more to start than to run.
    .look = Look on its nameplate or in its manual for starting watts or amps.
assume-starting-code-v = The code letter V of “{ $part }” has no upper end, so we assumed { $value } to start, the least. It might need more: watch and listen as it starts.
assume-continuous = We do not know how long “{ $part }” runs, so we assumed three hours or more at a stretch. For that long, its outlet can supply less.
    .look = Think how long it runs without a break.
assume-all-day = We do not know when “{ $part }” runs, so we assumed { $value } a day.
    .look = Decide when it runs.

# One thing to look at: $what is looked at, $ask says for what. The sentences after it say what that may clear.
look-at = { $what }: { $ask }
look-generator = The generator
# What is gone after a look: $found is made of the clauses look-if-…, $gone is one of look-gone-….
look-then = If { $found }, { $gone }.
look-then-cord = If { $found }, “{ $part }” carries { $amps }, and { $gone }.
look-then-cord-only = If { $found }, “{ $part }” carries { $amps }.
look-gone-dangers = { $count ->
        [one] this danger is gone: { $titles }
       *[other] these dangers are gone: { $titles }
    }
look-gone-warnings = { $count ->
        [one] this warning is gone: { $titles }
       *[other] these warnings are gone: { $titles }
    }
look-gone-cautions = this is gone: { $titles }
look-only = { $count ->
        [one] this is only { $signal }: { $titles }
       *[other] these are only { $signal }: { $titles }
    }
look-if-gfci = TEST and RESET are there
look-if-listed = a testing lab’s mark is on it
look-if-print = it says { $prints }
look-if-conductors = it has { $value } wires
look-if-outdoor = “W” or “outdoor” is there
look-if-breaker = it says { $value } or less
look-if-altitude = it is { $value } or lower
look-if-sleepers_at = it is { $value } or more
look-if-length = it is { $value } or shorter
look-if-coiled = it is fully unwound
look-if-stands = it is in the open or under a high roof
look-if-co_alarm = each has one that beeps
look-if-well = it turns out well
look-clears-dangers = { $dangers ->
        [one] If it turns out well, one danger is gone.
       *[other] If it turns out well, { $dangers } dangers are gone.
    }
look-clears-warnings = { $warnings ->
        [one] If it turns out well, one warning is gone.
       *[other] If it turns out well, { $warnings } warnings are gone.
    }
assume-parallel-limit = We do not know what the kit between the generators carries, so we assumed { $value }, as from one generator.
    .look = Read the amps on the kit.
assume-rated-on = On propane a generator gives about a tenth less than on gasoline, so we assumed { $value }.
    .look = If its nameplate gives watts for propane, put rated_on = "propane" in the plan.

# What is not bought yet: $list is what has to be on its package, from the messages below.
look-buy = Buy one with all of this on the package: { $list }.
buy-another = Do not buy it as the plan has it: like that, it is a danger here.
buy-plug = plug { $value }
buy-inlet = inlet { $value } (where power goes in)
buy-ends = outlet end { $value }
buy-outlet = outlets { $value }
buy-outdoor = “outdoor”, or a W in its letters
buy-wire = wire size { $value }, or a smaller AWG number (thicker wire)
buy-conductors = { $value } wires
buy-length = { $value } or less
buy-reach = { $value } or more, so that it reaches
buy-long = { $value } long
buy-listed = a testing lab’s mark
buy-gfci = TEST and RESET buttons (GFCI)
buy-rated = { $value } or more of running (rated) power
buy-peak = { $value } or more of peak power
buy-voltage = { $value }
buy-inverter = “inverter”
buy-co_alarm = carbon monoxide alarm on batteries with a testing lab’s mark, one for each tent or camper
