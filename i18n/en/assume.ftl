### Safety. What we assume for an answer that is not there. Each message says what we do not know, what we
### assumed, and how to find the real answer. { $part } is the part or load it is about; { $field } is the
### line of the plan file, for those who edit it by hand.

assumed-yes = yes
assumed-no = no
assumed-none = none
assumed-leg-a = half A
assumed-leg-b = half B
assumed-worst-kind = the worst of every kind
assumed-one-leg = one half

# $text is one of the sentences below, $parts the others it holds for.
assume-also = { $text } The same for { $parts }.

assume-altitude = We do not know the elevation here, so we assumed { $value }. A generator loses power in thin air. A map or a phone tells your elevation.
assume-air = We do not know how hot it gets, so we assumed { $value }. A generator loses power in hot air. Give the hottest temperature you expect.
assume-rated = We do not know how much the generator can supply, so we assumed { $value }, like a very small generator. Look for “running” or “rated” watts on its nameplate. Nearly everything here depends on that number.
assume-rated-of-peak = We do not know how much the generator can supply, so we assumed { $value }, three quarters of its peak. Look for “running” or “rated” watts on its nameplate. Nearly everything here depends on that number.
assume-voltage = We do not know which voltage the generator gives, so we assumed { $value }. Then each 120 V outlet can use only half of the power. Look for “120 V” or “120/240 V” on its nameplate.
assume-inverter = We do not know if the generator is an inverter, so we assumed the worse case each time. It might not stop itself when too much is on, and breakers might not trip when bare wires touch (a short circuit). Look for “inverter” on it.
assume-peak = We do not know the generator’s peak power. We assumed only its running power, { $value }, to start things, and more where parts could overheat. Look for “peak”, “starting” or “max” on the generator.
assume-no-gfci = We do not know if “{ $part }” has a GFCI, so we assumed none. Look for buttons marked TEST and RESET.
assume-no-breaker = We do not know if “{ $part }” has a breaker of its own, so we assumed none. Look beside it for a button or switch marked with amps.
assume-breaker-unknown = We do not know how big the breaker of “{ $part }” is. So we assumed that it will not trip in time, and that it gives no more amps than the outlet’s shape allows. Look for a button or switch marked with amps.
assume-leg = We do not know which half feeds “{ $part }”, so we assumed { $value } for all like it. That is the least power they can have together.
assume-box-wire = We do not know how thick the wire to “{ $part }” is inside its box, so we assumed { $value }, the thinnest. Ask whoever made the box, or a licensed electrician. Do not open it.
assume-cord-wire = We do not know the wire size of “{ $part }”, so we assumed { $value }, the thinnest. Read the print along the cord, as in “12/3” or “12 AWG”.
assume-cord-conductors = We do not know how many wires “{ $part }” has, so we assumed { $value }: no ground wire. Read the print along the cord: “12/3” has three.
assume-cord-length = We do not know how long “{ $part }” is. So we figured the lost volts as if it were { $value } long, and assumed that it is too short to reach. Pace it off: count each step as { $step }.
assume-cord-coiled = We do not know if “{ $part }” lies flat in use, so we assumed that it is coiled. Coiled, it carries only a third. Unwind it fully, and then change your answer.
assume-load-kind = We do not know what “{ $part }” mostly does, so we assumed { $value }. It might draw as much as a heater and start like a motor, and someone’s health might depend on it. Ask its owner.
assume-load-plug = We do not know the plug of “{ $part }”, so we assumed { $value }, the most common one.
assume-load-one-leg = We do not know how much “{ $part }” draws from each half (leg), so we put it all on { $value }. If its nameplate gives amps for each half, write them in the plan as current. Until then, run less in it at a time.
assume-load-voltage = We do not know if “{ $part }” uses 240 V alone or also 120 V, so we put it all on { $value }. Look on its nameplate for “240 V” or “120/240 V”. Until then, run less in it at a time.
assume-power-factor = We do not know the power factor of “{ $part }”, so we assumed { $value } for its kind. It draws more current than its watts show.
assume-running = We do not know what “{ $part }” uses, so we assumed { $value }, the most for its kind and plug. Look on its nameplate for W, or for A.
assume-starting = We do not know what “{ $part }” needs to start, so we assumed { $value } for its kind. Anything with a motor needs far more to start than to run.
assume-starting-code-v = The code letter V of “{ $part }” has no upper end, so we assumed { $value } to start, the least. It might need more: watch and listen as it starts.
assume-continuous = We do not know how long “{ $part }” runs, so we assumed three hours or more at a stretch. That lowers what it may use.
assume-all-day = We do not know when “{ $part }” runs, so we assumed { $value } a day.

# Which of these to find out first. { $assumption } is one of the sentences above, whole.
decides-dangers = Find this out first: it matters most. { $assumption } If it is better than we assumed, { $dangers ->
        [one] one danger might go away.
       *[other] { $dangers } dangers might go away.
    } Do not guess.
decides-warnings = Find this out first: it matters most. { $assumption } If it is better than we assumed, { $warnings ->
        [one] one warning might go away.
       *[other] { $warnings } warnings might go away.
    } Do not guess.
decides-limits = Find this out first: it matters most. { $assumption } If it is better than we assumed, you can use more. Do not guess.
assume-parallel-limit = We do not know what the kit between the generators carries, so we assumed { $value }, as from one generator. Read the amps on the kit.
assume-rated-on = On propane a generator gives about a tenth less than on gasoline, so we assumed { $value }. If its nameplate gives watts for propane, put rated_on = "propane" in the plan.
