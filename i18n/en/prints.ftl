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
print-shared-sockets = All { $count } sockets share this limit.
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
