# What was taken for an answer nobody gave. Each message says what the field is, what was taken,
# and how to find the real one.

assumed-yes = yes
assumed-no = no
assumed-none = none
assumed-leg-a = leg A

assume-altitude = { $field }: not known, so { $value } was taken. A set loses power in thin air. A map or a phone tells your altitude.
assume-air = { $field }: not known, so { $value } was taken. A set loses power in hot air. Give the hottest air you expect.
assume-peak = { $field }: not known, so no more than the running power of { $value } was taken. Look for "peak", "starting" or "max" on the set.
assume-no-gfci = { $field }: not known, so no shock protection was counted. Look for buttons marked TEST and RESET.
assume-no-breaker = { $field }: not known, so no breaker was counted here. Look for a button or switch beside the outlet marked with amps.
assume-breaker-unknown = { $field }: not known, so no protection was counted, and no more current than the outlet's own shape allows. Look for a button or switch marked with amps.
assume-leg = { $field }: not known, so { $value } was taken for all such outlets. That is the least power they can have together.
assume-box-wire = { $field }: not known, so { $value } was taken, the thinnest. Do not open the box to look: ask whoever made it, or a licensed electrician.
assume-cord-wire = { $field }: not known, so { $value } was taken, the thinnest. The size is printed along the cord, as in "12/3" or "12 AWG".
assume-cord-conductors = { $field }: not known, so { $value } were taken: no ground wire. It is printed along the cord: "12/3" has three.
assume-cord-length = { $field }: not known, so { $value } was taken. Pace it out: one step is about 2.5 ft.
assume-cord-coiled = { $field }: not known, so the cord was taken for coiled, which lets it carry only a third. Unroll it fully, and say so.
assume-load-plug = { $field }: not known, so a { $value } was taken, the usual one.
assume-power-factor = { $field }: not known, so { $value } was taken for its kind. It draws more current than its watts show.
assume-running = { $field }: not known, so { $value } was taken for its kind. Look on its label for W, or for A.
assume-starting = { $field }: not known, so { $value } was taken for its kind. Motors need far more to start than to run.
assume-continuous = { $field }: not known, so it was taken to run for three hours or more at a stretch. That lowers the limits.
assume-all-day = { $field }: not known, so it was counted for { $value } a day.
