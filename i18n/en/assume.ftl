### Safety. What was taken for an answer nobody gave. Each message says what is not known, what was taken,
### and how to find the real answer. { $part } is the part or load it is about; { $field } is the
### line of the plan file, for those who edit it by hand.

assumed-yes = yes
assumed-no = no
assumed-none = none
assumed-leg-a = leg A
assumed-leg-b = leg B
assumed-worst-kind = the worst of every kind
assumed-one-leg = one leg

# $text is one of the sentences below, $parts the others it holds for.
assume-also = { $text } The same for { $parts }.

assume-altitude = Nobody knows how high the site lies, so { $value } was taken. A set loses power in thin air. A map or a phone tells your altitude.
assume-air = Nobody knows how hot it gets, so { $value } was taken. A set loses power in hot air. Give the hottest air you expect.
assume-rated = Nobody knows how much the generator can keep up, so { $value } was taken, as from the smallest sets. Look for “running” or “rated” watts on its plate: it decides nearly everything here.
assume-rated-of-peak = We do not know how much the generator can keep up, so we assumed { $value }, three quarters of its peak. Look for “running” or “rated” watts on its plate: it decides nearly everything here.
assume-voltage = Nobody knows which voltage the generator gives, so { $value } was taken: then each 120 V outlet reaches only half of the power. Look for “120 V” or “120/240 V” on its plate.
assume-inverter = Nobody knows if the generator is an inverter set, so { $value } was taken: then it may not cut out by itself when too much is on. For a short circuit the opposite was taken, which is worse there. Look for “inverter” on it.
assume-peak = Nobody knows the generator's peak power. For what starts, no more than its running power of { $value } was taken; for what could burn, more. Look for “peak”, “starting” or “max” on the set.
assume-no-gfci = Nobody knows if “{ $part }” has shock protection, so none was counted. Look for buttons marked TEST and RESET.
assume-no-breaker = Nobody knows if “{ $part }” has a breaker of its own, so none was counted. Look beside it for a button or switch marked with amps.
assume-breaker-unknown = Nobody knows the breaker of “{ $part }”. It was counted as no protection, and as no more amps than the outlet's shape allows. Look for a button or switch marked with amps.
assume-leg = Nobody knows which leg “{ $part }” is on, so { $value } was taken, with all others like it. That is the least power they can have together.
assume-box-wire = Nobody knows the wire inside the box behind “{ $part }”, so { $value } was taken, the thinnest. Do not open the box to look. Ask whoever made it, or a licensed electrician.
assume-cord-wire = Nobody knows the wire size of “{ $part }”, so { $value } was taken, the thinnest. The size is printed along the cord, as in “12/3” or “12 AWG”.
assume-cord-conductors = Nobody knows how many wires “{ $part }” has, so { $value } were counted: no ground wire. It is printed along the cord: “12/3” has three.
assume-cord-length = Nobody knows how long “{ $part }” is, so { $value } was taken for the volts, and nothing for how far it reaches. Pace it out: count each step as { $step }.
assume-cord-coiled = Nobody knows if “{ $part }” lies flat in use, so it was taken for coiled. Coiled, it carries only a third. Unroll it fully, and say so in the plan.
assume-load-kind = Nobody knows what “{ $part }” mostly does, so { $value } was taken: it may use as much as a heater and start as hard as a motor, and someone's health may depend on it. Ask its owner.
assume-load-plug = Nobody knows the plug of “{ $part }”, so { $value } was taken, the usual one.
assume-load-one-leg = Nobody knows how “{ $part }” shares itself out between the two legs, so all of it was put on { $value }, whichever that is. A plate that tells the amps of each leg would tell: write them as current. Run less in it at a time.
assume-load-voltage = We do not know if “{ $part }” uses 240 V only or 120 V as well, so we put all of it on { $value }, whichever that is. Look on its plate for “240 V” or “120/240 V”. Run less in it at a time.
assume-power-factor = Nobody knows the power factor of “{ $part }”, so { $value } was taken for its kind. It draws more current than its watts show.
assume-running = Nobody knows what “{ $part }” uses, so { $value } was taken, the most for its kind and plug. Look on its label for W, or for A.
assume-starting = Nobody knows what “{ $part }” needs to start, so { $value } was taken for its kind. Anything with a motor needs far more to start than to run.
assume-starting-code-v = The code letter V of “{ $part }” has no upper end, so { $value } to start was taken, the least it may be. It may need more: watch and listen as it starts.
assume-continuous = Nobody knows how long “{ $part }” runs, so it was taken to run for three hours or more at a stretch. That lowers what it may use.
assume-all-day = Nobody knows when “{ $part }” runs, so { $value } a day were counted.

# Which of these to find out first. { $assumption } is one of the sentences above, whole.
decides-dangers = Find this out first: it decides most. { $assumption } { $dangers ->
        [one] A good answer clears a danger.
       *[other] A good answer clears { $dangers } dangers.
    }
decides-warnings = Find this out first: it decides most. { $assumption } { $warnings ->
        [one] A good answer clears a warning.
       *[other] A good answer clears { $warnings } warnings.
    }
decides-limits = Find this out first: it decides most. { $assumption } A good answer lets you use more.
assume-parallel-limit = Nobody knows what the kit between the sets passes, so { $value } was taken, as from one set. Read the amps on the kit.
assume-rated-on = On propane a set gives about a tenth less than on gasoline. So { $value } was taken. If its plate gives watts for propane, put rated_on = "propane" in the plan.
