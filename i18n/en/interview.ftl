# The interview. `ask-ID` is a question, under 60 columns; `.why` one line on why, or where to
# read the answer; `.help` is what `?` tells; `.row` the question's name on the review page.
#
# What people type is read alike in every language: units (W, ft, m, hp), "58 dBA, 23 ft" without
# "at", "22:00-06:00", "1/2 hp G" without "code"; a comma may be the decimal sign. In examples use
# those. `typed-` words and `pick-yes.also` are the reader's own; the English ones always work too.

progress = Part { $number } of { $total }: { $part }
# The same for the things to look at. “More”: what earlier answers led to.
progress-look = Look { $number } of { $total }
progress-look-more = More to look at: { $number } of { $total }
part-asked-generator = the generator
part-asked-outlets = its outlets
part-asked-loads = what you plug in
part-asked-site = the site
part-asked-gear = cords and boxes

# Said before the first question.
interview-welcome =
    Short questions, in five parts: your generator, its outlets, what you plug in, the site, your cords and boxes.
    To choose the answer in parentheses or marked *, press Enter. If you are not sure, pick “I don’t know”. We then assume the more dangerous answer, and say so. Ctrl-C stops and keeps your answers.

hint-list = Arrows or type, Enter. Esc: back
hint-many = Enter: mark, unmark. ← →: how many. Tab: go on. Esc: back
list-nothing = Nothing like that. Esc: all of them
# Together under 38 columns: a hint that wraps is drawn badly by a narrow terminal.
hint-keys = ?: help, Esc: back
hint-go-on = Enter: go on
hint-unknown = or unknown
hint-none = none
hint-enter-unknown = Enter: unknown
hint-between = ,{" "}

typed-unknown = unknown
    .also = i don't know, i dont know, don't know, dont know, idk, not sure, unsure
# The word between a level and its distance, as in "58 dBA at 23 ft".
typed-at = at
# Words ahead of a figure that is judged by eye, and past it, small letters, set apart by commas. The figure
# counts as typed. What makes it larger, smaller or doubtful, such as "at least", has no place here.
typed-about = about, around, roughly, approximately, approx., approx, circa, ca., ~, ≈
    .after = or so, more or less, give or take, roughly, approximately, approx., approx
# Words for units that somebody may type, small letters, set apart by spaces. Each attribute is
# named by the unit that is meant: feet, metres, inches, amperes, volts, watts, hours, minutes,
# US gallons, litres; steps to walk. A word that means anything else to anybody has no place here.
typed-unit = -
    .ft = feet foot
    .m = metres metre meters meter
    .in = inches inch
    .A = amps amp amperes ampere
    .V = volts volt
    .W = watts watt
    .h = hours hour
    .min = minutes minute
    .gal = gallons gallon
    .L = litres litre liters liter
    .step = steps step paces
typed-not-bought = not bought
    .also = to buy, not bought yet
typed-none = none
    .also = no, nothing
typed-picture = tree
    .also = picture

# `.also`: other ways to type it.
pick-yes = Yes
    .also = y
pick-no = No
    .also = n
pick-unknown = I don’t know
    .also = idk dont don't know not sure unknown
pick-look-first = I don’t know: stop, and go and look
pick-explain = ? Tell me more
pick-picture = Show what plugs into what so far
pick-removed = Remove this

label-place = { $id } ({ $shape })
about-gear = { $id }, { $what }
# Something in this part is not known, and taken for the unsafe case.
label-marked = ! { $row }
label-row = { $title }: { $shown }

# What a part is called until somebody names it, with a number behind it if need be: one short
# word in small letters, without spaces. The first four are outlets by their shape: the household
# kind, that for a camper, that which is twisted, the large ones. “our-camper” is the camper itself, and has a
# number only if there are two.
id-regular = regular
id-camper = camper-outlet
id-twist = twist
id-large = large
id-outlet = outlet
id-cord = cord
id-box = box
id-left = left
id-right = right
id-top = top
id-bottom = bottom
id-middle = middle
id-load = load
id-our-camper = our-camper
id-regular-cord = regular-cord
id-twist-cord = twist-cord
id-four-wire-cord = four-wire-cord
id-camper-cord = camper-cord
id-three-way = three-way
id-strip = strip
id-splitter = splitter
id-twist-splitter = twist-splitter
id-four-wire-splitter = four-wire-splitter
id-adapter = adapter
id-camper-adapter = camper-adapter
id-regular-adapter = regular-adapter
id-twist-adapter = twist-adapter
id-twist-box = twist-box
id-four-wire-box = four-wire-box
id-camper-box = camper-box
id-large-box = large-box
# A cord or box named by its color. $color and $word are English words, such as red and box, for the ending of the
# color; $called: what it is called without one.
id-colored = { $color }-{ $called }

shown-unknown = not known
shown-open-one = not asked
shown-unused = do not use yet
shown-in = in { $place }
shown-times = { $count } of them

suggest-generator-name = generator
suggest-load-name = Something
suggest-site-name = Camp weekend

# What somebody may answer, in the reader's units: { $measure } is metric or customary, in any message.
example-tank = { $measure ->
    [metric] 4.5 L
   *[customary] 1.2 gal
}
example-noise-far = { $measure ->
    [metric] 7 m
   *[customary] 23 ft
}
example-noise-near = { $measure ->
    [metric] 3 m
   *[customary] 10 ft
}
example-near = { $measure ->
    [metric] 12 m
   *[customary] 40 ft
}
example-altitude = { $measure ->
    [metric] 900 m
   *[customary] 4200 ft
}
example-sea = { $measure ->
    [metric] 0 m
   *[customary] 0 ft
}
example-air = { $measure ->
    [metric] 31 C
   *[customary] 88 F
}
example-length = { $measure ->
    [metric] 15 m
   *[customary] 50 ft
}

# ---- The generator

ask-generator-name = What do you call your generator?
    .why = The name goes on its label.
    .help = Any short name: its color, its owner. You can change it later.
    .row = Name

ask-generator-rated = How many watts does the generator make?
    .why = See its nameplate (label). If it has two numbers, type both: 2800 W, 3300 W.
    .help =
        Look for two numbers on its nameplate or in its manual. The smaller one is the running or rated power: what it can give for hours. The larger one is the peak. It lasts a few seconds, to start a motor. Type both, with a comma between.
        If you find only one number, type that. We then ask which of the two it is. The large number in its name is often the peak.
        If the nameplate gives only amps and volts, multiply them: 20 A at 120 V is 2400 W.
    .row = Rated power

ask-generator-peak = What is the most watts it can give for a few seconds?
    .why = Look on its nameplate for starting, surge or peak watts.
    .help =
        A motor draws two to six times its running power for a moment when it starts. A fridge has one. The peak tells us if the generator can start it.
    .row = Peak power

ask-generator-figure = Is that number its running or its peak power?
    .why = The number in a generator’s name is often the peak.
    .help =
        You gave one number. If it is part of the name, or the only one on the box, it is often the peak. The generator gives its peak for a few seconds. If “running”, “rated” or “continuous” is next to it, it is the running power.
        If you do not know, we assume that it is the peak, and that the running power is three quarters of it.
    .row = That number is
pick-generator-figure-running = The running power
pick-generator-figure-peak = The peak power

ask-generator-voltage = What voltage does it put out?
    .why = Most small generators put out 120 V only. See its nameplate.
    .help =
        A regular wall outlet is 120 V. A 120/240 V generator also has an outlet with four slots for large plugs. Or its nameplate says 120/240 V.
        Such a generator has two halves. Each 120 V outlet can use only one half of the power.
    .row = Voltage
pick-generator-voltage-120 = 120 V only
pick-generator-voltage-120-240 = 120 V and 240 V

# Safety.
ask-generator-neutral = Does its manual say “floating” or “bonded neutral”?
    .why = Neutral: the wire that carries power back. Not sure? Pick “I don’t know”.
    .help =
        It changes how you test the outlets. Look in the manual or near the outlets for “floating neutral” (joined to nothing) or “neutral bonded to frame”.
        Is there a plug with no cord (a bonding plug) in any outlet? Leave it in, and ask the owner. Never add one yourself, unless a licensed electrician tells you to.
        Do not open the generator or join anything yourself. If you do not know, we assume floating for the tests, and the worse of the two for shocks.
    .row = Neutral
pick-generator-neutral-floating = Floating: joined to nothing
pick-generator-neutral-plug = Bonding plug (no cord) in an outlet
pick-generator-neutral-bonded = Bonded: joined to the frame

ask-generator-inverter = Is it an inverter generator?
    .why = It says “inverter” on the case. Usually quiet, with a case all around.
    .help =
        An inverter generator is usually quiet, with a case all around, and has a switch that lets the engine slow down. Its nameplate or manual says “inverter”.
        An open-frame generator with a round tank on top usually is not one.
    .row = Inverter

ask-generator-sets = One generator, or two linked by a kit?
    .why = Two joined (in parallel) share the work. If not, make a plan for each.
    .help =
        Only some inverter generators can be joined, and only by the kit that their maker sells for them.
        Two generators that each have their own cords are not joined. Make a plan for each.
    .row = Generators joined
pick-generator-sets-1 = One, by itself
pick-generator-sets-2 = Two, joined by a kit
pick-generator-sets-3 = Three, joined by a kit
pick-generator-sets-4 = Four, joined by a kit

# Safety.
ask-generator-kit = Is it the maker’s own kit for these exact models?
    .why = Joined any other way, they can catch fire or leave live blades exposed.
    .help = The kit’s manual names the generators it is for. If yours are not named there, or you made the cord between them, the answer is no. If you do not know, we assume no.
    .row = Maker’s kit

ask-generator-limit = How many amps is the kit rated for?
    .why = Look on the kit, by its outlet or breaker. Example: 30 A.
    .help = If you do not know, we assume the kit is rated for no more than one generator gives.
    .row = Kit is rated for

ask-generator-fuel = What does it burn?
    .why = Fuel changes its power, and how long a tank lasts.
    .help = If it can burn more than one, pick the one you will bring. If you do not know, we assume propane. On propane a generator gives a little less power.
    .row = Fuel
pick-generator-fuel-gasoline = Gasoline
pick-generator-fuel-propane = Propane
pick-generator-fuel-diesel = Diesel

ask-generator-rated-on = Which fuel are those watts for?
    .why = On propane it gives about a tenth less. See its nameplate.
    .help = The manual of a generator for two fuels has two lines of watts. Which one did you type as its power? If you do not know, we assume it was for gasoline, and count a tenth less for propane.
    .row = Watts are for
pick-generator-rated-on-gasoline = Gasoline
pick-generator-rated-on-propane = Propane

ask-generator-tank = How much fuel does its tank hold?
    .why = See the manual. Example: { example-tank }.
    .help = For propane, type what your cylinder holds as liquid, or unknown.
    .row = Tank

ask-generator-runtime = How long does it run on one tank?
    .why = See the manual. Example: 25% 8.5 h, 100% 3.1 h.
    .help =
        Makers list run time at a percentage of rated load. Type the percentage, then the hours. Put commas between pairs.
        One pair is enough. Two are better.
    .row = Running time

ask-generator-noise = How loud is it, and how far away was that measured?
    .why = See the manual. Example: 58 dBA at { example-noise-far }, 25%.
    .help =
        The number alone says little: 58 dBA at { example-noise-far } is louder than 58 dBA at { example-noise-near }. Most makers measure at { example-noise-far } and a quarter load.
        You may leave out the percentage of load at the end.
    .row = Noise

# ---- Its outlets

ask-outlet-list = Its outlets: what do the holes look like?
    .why = Match holes, name (5-20R) and breaker. Type: fat, 4 slots; ? for drawings.
    .help =
        A breaker is the small button or switch near the outlet that shuts it off when too much is on. It has a number: 15, 20, 30. Check it: it is not always the number that goes with the outlet’s shape. If it is another one, or you cannot read it, pick “other number”.
        Look at the holes and at the name molded next to them. A side-by-side pair on one breaker counts as one. If it is on two breakers, mark 2.
    .row = Outlets
pick-outlet-list-done = Those are all of its outlets

ask-outlets-places = How are the matching outlets laid out?
    .why = We use this on the labels and the card.
    .help = If they are side by side, we call them left and right. If one is above another, top and bottom. With numbers, you choose which is 1 when you put the labels on.
    .row = Alike outlets
pick-outlets-places-across = { pick-out-places-across }
pick-outlets-places-down = { pick-out-places-down }
pick-outlets-places-number = { pick-out-places-number }

ask-outlet-face = Which outlet, and what number is on its breaker?
    .why = To search, type 30 or twist or regular.
    .help =
        A breaker is the small button or switch near the outlet that shuts it off when too much is on. It has a number: 15, 20, 30. Check it: it is not always the number that goes with the outlet’s shape. If it is another one, or you cannot read it, pick “other number”.
        Look at the holes and at the name molded next to them. A pair of the same outlets side by side is one kind. Name outlets on different breakers one at a time.
    .row = Shape
# Under 37 columns: a longer row is cut on a narrow terminal.
pick-face-usual = { $shape } ({ $code }), breaker { $amps } A
pick-face-other = { $shape } ({ $code }), other number
pick-face-end = { $shape } ({ $code })

ask-outlet-breaker = What number is on its breaker?
    .why = { $about }. A button or switch, marked like 20 A.
    .help =
        A breaker is the small button or switch near the outlet that shuts it off when too much is on. It has a number: 15, 20, 30. Type it with its unit: 20 A.
        Check it: it is not always the number that goes with the outlet’s shape. If there is no number, type unknown. We then assume that nothing protects the cords, and say so.
    .row = Breaker

ask-outlet-name = What do you want to call this outlet?
    .why = { $about }. Short, no spaces: front, twist.
    .help = Letters and digits, - and _, no spaces. It goes on the label next to the outlet.
    .row = Name

ask-outlet-sockets = How many plugs does it take?
    .why = { $about }. A pair takes 2.
    .help = Count the places for a plug on this one breaker.
    .row = Plugs

ask-outlet-leg = Which half of the generator feeds it?
    .why = { $about }. See the diagram in the manual.
    .help = A 120/240 V generator has two halves, A and B. If you do not know, we assume the worse one.
    .row = Half
pick-outlet-leg-a = Half A
pick-outlet-leg-b = Half B

ask-outlets-gfci = Which outlets have a TEST and a RESET button?
    .why = Those are GFCIs, made to cut the power if someone gets a shock.
    .help =
        The two buttons are on the outlet itself, or on the panel with the letters GFCI or “ground fault”. A breaker with only one button is not a GFCI.
        A GFCI is made to cut the power fast if current leaks through a person. It can fail: press TEST before each use.
        If you do not know, we assume there is no such protection, and say so.
    .row = GFCI
pick-outlets-gfci-all = All of them
pick-outlets-gfci-none = None
pick-outlets-gfci-some = Some: I will say which

ask-outlets-odd = Is anything odd about the breakers?
    .why = If two outlets share one, or a breaker trips too soon, you get less power.
    .help =
        Two outlets might share one breaker. Then the power you use at one is not left for the other. The manual’s diagram shows it. So does a panel with fewer breakers than outlets.
        If a breaker has tripped below its number, we stay below that lower number from then on.
    .row = Breakers
pick-outlets-odd-no = Nothing that I know of
pick-outlets-odd-share = Two or more outlets share one
pick-outlets-odd-early = One trips too soon
pick-outlets-odd-both = Both: shared, and too soon

ask-outlet-gfci = Does this one have TEST and RESET buttons?
    .why = { $about }.
    .help = The two buttons are on the outlet, or next to it on the panel.
    .row = GFCI

ask-outlets-bonding = Which outlet is the bonding plug in?
    .why = In an outlet with TEST and RESET, it can keep the GFCI from tripping.
    .help =
        A bonding plug is a plug with no cord. Look at the household outlets of the generator.
        It belongs in an outlet that has no TEST and RESET buttons. Do not open or wire anything.
    .row = Bonding plug in

ask-outlet-shares = Which outlet’s breaker is this outlet on?
    .why = { $about }. Switch one breaker off and see what goes off.
    .help = Put a lamp in each outlet and switch one breaker off. The outlets that go dark are on that breaker.
    .row = Shares the breaker of
pick-outlet-shares-own = Its own

ask-outlet-trips = How many amps were on when it tripped?
    .why = { $about }. Example: 17 A. If it has not tripped, type none.
    .help = Add up everything that was on when it tripped: watts divided by 120 is amps. If it has never tripped below its number, type none.
    .row = Has tripped at
pick-outlet-trips-none = never early

# ---- What is to run

ask-load-list = What will you plug in?
    .why = Type to search: kettle, phone. Mark all, or pick a ready-made list.
    .help =
        The watts are typical, at the upper end. The nameplate on the appliance is better: pick the appliance here, and change its watts on the last page.
        A ready-made list names several things at once. Remove later what you do not have. If you have two, mark 2.
        If it is not in the list, pick “Something else”.
    .row = What
pick-load-list-done = That is everything

ask-load-what = What will you plug in?
    .why = Type to search: kettle, phone.
    .help = If it is not in the list, pick “Something else”.
    .row = What
pick-load-what-own = Something else: I will type it in
pick-load-what-occasion = { $name }: { $count } things
    .also = usual preset list occasion
pick-load-what-appliance = { $name }, { $watts } W

ask-load-name = What is it called?
    .why = The name goes on the card.
    .help = Any short name: air pump, Sam’s amplifier.
    .row = Name

ask-load-kind = What kind of appliance is it?
    .why = { $about }. Motors need more power to start.
    .help = If it has both a motor and a heater, like a hair dryer, pick whichever uses more power. We assume that things people cook with do not run at night. Other heat might. If someone’s health depends on it, a wheelchair too, always pick that. If you do not know, we assume the worst of every kind, and that someone’s health might depend on it.
    .row = Kind
pick-load-kind-heater = Heat: rooms, beds, hair, tools
pick-load-kind-cooker = Cooks, or heats water
pick-load-kind-motor = Has a motor: pumps, cools, cuts
pick-load-kind-electronic = Electronics: phone, TV, sound
pick-load-kind-lamp = Light
pick-load-kind-medical = Someone’s health depends on it

ask-load-draw = How much power does it use? See its nameplate.
    .why = { $about }. Examples: 1500 W, 12.5 A or 1/2 hp.
    .help =
        The nameplate is on the back or the bottom. W is watts. A is amps at 120 V, or at 240 V for an appliance that uses 240 V. For a motor you may type horsepower, and its code letter if the nameplate has one: 1/2 hp code G.
        A charger’s nameplate has two lines: use INPUT, not output. You may type it just as it is printed: 100-240V 50/60Hz 1.5A.
    .row = Uses

ask-load-count = How many of them?
    .why = { $about }. Each with its own plug.
    .help = Ten strings of lights plugged into each other are one plug; ten chargers are ten.
    .row = How many

ask-load-starting = How much does it draw at the moment it starts?
    .why = { $about }. Examples: 2400 W, LRA 39; or unknown.
    .help = The nameplate might say starting, surge or LRA (locked rotor amps). Type watts as 2400 W, amps as 39 A or LRA 39, just as the nameplate has them. If you do not know, we assume a cautious figure for its kind, and say so.
    .row = Starting

ask-load-factor = What number follows PF on its nameplate?
    .why = { $about }. Between 0.1 and 1. A low one means more amps.
    .help = PF is the power factor. The nameplate might also say cos φ. For things that only heat it is 1. If you do not know, we assume a cautious figure.
    .row = Power factor

ask-load-continuous = Does it run three hours or more at a stretch?
    .why = { $about }. Long use heats cords and breakers.
    .help = A fridge, a heater at night, lights for the evening: yes. A kettle: no.
    .row = Three hours or more

# Safety.
ask-load-backup = What keeps it running if the generator stops?
    .why = { $about }. Generators stop, at night too.
    .help =
        A generator runs out of fuel, a breaker trips, or someone shuts it off. A person who is asleep might not notice.
        Its battery: one that is made for this device and lasts the whole night. A car battery with an inverter, or a battery you have never tried, does not count.
        If you do not know, we assume that nothing does.
    .row = When power stops
pick-load-backup-battery = Its battery, all night
pick-load-backup-none = No battery, or not all night

ask-load-plug = What plug does it have?
    .why = { $about }. Most have the household plug.
    .help = Two blades and a round pin: 5-15P. Two blades only: 1-15P.
    .row = Plug

ask-load-voltage = Which voltage does it use?
    .why = { $about }. Its nameplate says 120 V, 240 V or 120/240 V.
    .help = Its plug brings 120 V and 240 V. What uses 120 V, as most things in a camper do, is on one half of the generator. An appliance for 240 V only, such as a water heater, loads both halves alike. One for 120/240 V, such as a clothes dryer, might put everything on one half. If you do not know, we assume the worst.
    .row = Volts it uses
pick-load-voltage-120 = 120 V only
pick-load-voltage-240 = 240 V only
pick-load-voltage-120-240 = Both 120 V and 240 V

ask-load-wanted = How important is it?
    .why = { $about }. When power runs short, the rest waits.
    .help = What must run always gets power first. The rest takes a turn when there is some left.
    .row = Importance
pick-load-wanted-must = It must run
pick-load-wanted-wish = Nice to have: it can wait

ask-load-hours = When does it run?
    .why = { $about }. Example: 07:00-07:20, 19-21. At any time: none.
    .help = Type times of day, from and to, with commas between. With none, we assume it can run at any time.
    .row = Hours
pick-load-hours-none = any time

ask-load-on = Where is it plugged in?
    .why = { $about }. Let us choose, or say where it must be.
    .help = Only free outlets its plug fits are shown. If you let us choose, the plan finds the outlets where most can run together.
    .row = Plugged into
pick-load-on-any = Find the best outlet for it

# ---- The site

ask-site-name = What is this weekend called?
    .why = The name goes on every page you print.
    .help = Example: Juniper Cove weekend.
    .row = Name

# Safety.
ask-site-ground = How wet is the ground where you use the gear?
    .why = Wet ground makes a shock far more dangerous.
    .help = Wet: rain, wet grass, puddles, wet bare feet. Damp: dew or damp soil. Dry: a dry floor under a roof. If it might rain, pick wet.
    .row = Ground
pick-site-ground-wet = Wet: rain, wet grass, puddles
pick-site-ground-damp = Damp: dew, damp soil
pick-site-ground-dry = Dry: a dry floor under a roof

# Safety.
ask-site-sleepers = How far from the generator are the nearest people?
    .why = Exhaust kills people as they sleep. Type the distance: { example-near }.
    .help =
        Measure from the generator to the nearest tent, vehicle or building with people in it, your neighbors’ too. Where nobody sleeps, such as at a market, measure to where people stand. Count each step as { $step }. It is better to guess too short than too long.
        Exhaust has carbon monoxide in it, which you cannot smell. If you do not know the distance, we assume that it is too close, and say so.
    .row = Nearest people

ask-site-stands = What is above and around the generator?
    .why = Exhaust has to get away. If it rains, stop the engine.
    .help =
        If you would move it when it rains, answer for that place.
        In the open: nothing over it, and { $clear } clear on all sides. Under a roof: a roof high above it, open on all sides.
        A tent with an open door, a porch, a trailer, an open garage or a box count as inside. People have died in all of them. A tarp or cover on the generator counts as covered. So does an awning or a pop-up canopy over it, or a wall close to it.
        If you do not know, we assume it is in or under something, and say so.
    .row = Generator is
pick-site-stands-open = In the open, { $clear } clear all around
pick-site-stands-roof = Under a high roof with open sides
pick-site-stands-covered = Tarp, canopy or awning; or by a wall
pick-site-stands-enclosed = In a tent, porch, vehicle or shed

# Safety.
ask-site-alarm = Is there a carbon monoxide alarm where people sleep?
    .why = One in each tent or vehicle, working, with fresh batteries.
    .help = It is not a smoke alarm: it says CO or carbon monoxide on it. Press its test button. If one sleeping place has none, the answer is no. Pick “Nobody …” only if nobody sleeps here, neighbors included: a market or a work party during the day.
    .row = Carbon monoxide alarm
pick-site-alarm-yes = Yes, in each one
pick-site-alarm-no = No, or not in each one
pick-site-alarm-nobody = Nobody will sleep here or nearby

# Safety.
ask-site-building = Will it feed the wiring of a house or cabin?
    .why = That can kill workers on the power line, and you.
    .help = Answer No if you only plug things into the generator, its cords and boxes. Answer Yes if any cord goes from it to a building’s wall outlet, inlet or panel. Never run such a cord. Only a licensed electrician may connect a generator to a building. It takes a transfer switch, which cuts the building off from the street. If you do not know, we assume yes.
    .row = Feeds a building

ask-site-altitude = What is the elevation?
    .why = Thin air cuts the generator’s power. Example: { example-altitude }.
    .help = Look on a map or a phone. Near the sea, type { example-sea }. If you are not sure, guess high, not low.
    .row = Elevation

ask-site-air = What is the hottest it will get?
    .why = Heat cuts the generator’s power. Example: { example-air }.
    .help = Type the forecast’s high, or more if the generator is in the sun.
    .row = Hottest air

ask-site-quiet = When must the camp be quiet?
    .why = Example: 10pm-6am, or 22:00-06:00. If never, type none.
    .help = Many camps do not allow generators at night. Ask at the gate. 10pm-6am works too. If a sign gives generator hours, such as 8am-10am and 4pm-8pm, type the rest of the day: 10am-4pm, 8pm-8am.
    .row = Quiet hours
pick-site-quiet-none = none

# ---- Cords, adapters and boxes

ask-gear-list = What cords, adapters and boxes do you have?
    .why = Mark all of them, even what you do not plan to use.
    .help = List the oddball adapters too: they are often the dangerous ones. The name in parentheses, such as L5-30, is molded near the holes or blades. If you have two, mark 2.
    .row = What
pick-gear-list-done = That is everything

ask-gear-what = What cords, adapters and boxes do you have?
    .why = Pick what it is.
    .help = List the oddball adapters too: they are often the dangerous ones. The name in parentheses, such as L5-30, is molded near the holes or blades.
    .row = What
pick-gear-what-extension = Extension cord, household (5-15)
pick-gear-what-three-way = Household cord with 3 ends (5-15)
pick-gear-what-strip = Power strip, 6 outlets (5-15)
pick-gear-what-twist-30 = 30 A twist cord (L5-30)
pick-gear-what-camper-30 = 30 A camper cord (TT-30)
pick-gear-what-twist-30-four = 30 A twist cord, 4 blades (L14-30)
pick-gear-what-split-30 = Splitter L5-30 to 3 household
pick-gear-what-split-30-four = Splitter L14-30 to 4 household
pick-gear-what-camper-to-twist = Adapter L5-30 plug to TT-30
pick-gear-what-camper-to-home = Adapter 5-15 plug to TT-30
pick-gear-what-home-to-camper = Adapter TT-30 plug to 5-15
pick-gear-what-four-to-twist = Adapter L14-30 plug to L5-30
pick-gear-what-cord = Another cord or adapter
    .also = wire lead pigtail
pick-gear-what-box-twist-30 = Box with breakers, L5-30 plug
pick-gear-what-box-camper-30 = Box with breakers, TT-30 plug
pick-gear-what-box-twist-30-four = Box with breakers, L14-30 plug
pick-gear-what-box-50 = Box with breakers, 14-50 plug
pick-gear-what-box = Another box with breakers
    .also = gray grey metal panel distribution
pick-gear-what-camper = Camper or motorhome (RV)
    .also = trailer van

ask-gear-plug = What plug is on it?
    .why = { $about }: the end with blades.
    .help = Look for the name molded between the blades.
    .row = Plug

# Safety.
ask-gear-main = What number is on its main breaker?
    .why = { $about }: the switch marked “Main”, with amps.
    .help = It is inside, where you switch the other breakers. Do not unscrew anything. If you do not know, we assume what its plug is made for.
    .row = Main breaker

ask-gear-inside = Which of these run inside?
    .why = { $about }. Mark what is wired in or plugged in there.
    .help = Mark everything that runs inside, such as its air conditioner, its water heater or a laptop. All of it goes through the camper’s plug and its main breaker, and needs no outlet of its own.
    .row = Runs inside
pick-gear-inside-done = That is all that runs inside

ask-gear-ends = What outlets are at its other end?
    .why = { $about }. Mark each, and how many of it.
    .help = Look at the holes and at the name molded next to them. Mark each shape. If there are more of the same, mark how many.
    .row = Ends
pick-gear-ends-done = Those are all of its ends

# Safety.
ask-gear-jacket = What is printed along the cord?
    .why = { $about }. Example: SJTW 12/3. Just 12/3 is enough.
    .help =
        The print runs along the cord, over and over. 12/3 means three wires of size 12. A smaller size number (AWG, for American Wire Gauge) is a thicker wire. The letters tell what the outside is made of: with a W in them, you may use it outdoors.
        Metric cords say 3G1.5 or 3x2.5 mm2.
        If you cannot read it, type unknown. We then assume a thin indoor cord, and say so.
    .row = Printed on it

ask-gear-length = How long is it?
    .why = { $about }. Example: { example-length }.
    .help = Stretch your arms wide: fingertip to fingertip is about your height. Count how many of those the cord is long. If you still have to buy it, type how far it must reach.
    .row = Length

# Safety.
ask-gear-outdoor = Is it marked for outdoor use?
    .why = { $about }. Sun and water crack an indoor cord.
    .help = Look for “outdoor” on its tag, or a W in the letters along the cord.
    .row = Outdoor

# Safety.
ask-gear-coiled = Will some of it stay coiled or on a reel?
    .why = { $about }. A coil cannot cool, and can melt.
    .help = Always lay the whole cord out. If some of it stays on a reel or in a heap, the answer is yes.
    .row = Coiled

# Safety.
ask-hot = Did it, or a plug in it, ever get hot or soft?
    .why = { $about }. A loose connection heats up, and can start a fire.
    .help = Warm is normal with a heavy load. If you could not keep your hand on it, or it is brown or soft, answer yes. We then say not to use it.
    .row = Got hot

ask-bought = Do you have it already?
    .why = If you still have to buy it, we list what to look for.
    .help = Answer No for what you only plan to buy. Answer what you know of it, and “I don’t know” for the rest. We then list what has to be on its package.
    .row = Have it already
pick-not-bought = Not bought yet

# Safety.
ask-gear-gfci = Does it have TEST and RESET buttons?
    .why = { $about }. They mean it has a GFCI built in.
    .help = Look for a small box on the cord with two buttons and the letters GFCI.
    .row = GFCI

# Safety.
ask-gear-listed = Is the box factory made, with a test lab’s mark?
    .why = { $about }. A homemade box might lack what protects you.
    .help = Look for the mark of a testing laboratory on its label: the box is then “listed”. A box that someone built is not listed, however well they built it.
    .row = Factory made, listed

# Safety.
ask-gear-bond = Inside the box, is the neutral joined to ground?
    .why = { $about }. Its papers say so. Do not open it.
    .help = The neutral carries the power back. The ground wire is there for safety. Look for “neutral bonded” or “isolated neutral” in its papers. Do not open it to find out. If you do not know, we tell you what that means.
    .row = Neutral joined inside

ask-gear-from = What is it plugged into?
    .why = { $about }. If you can choose, nearest the generator is best.
    .help = Only free outlets its plug fits are shown. If there is none, or you do not use it, pick “Nothing”.
    .row = Plugged into
pick-gear-from-none = Nothing: we do not use it

ask-gear-color = What color is it?
    .why = { $about }. It goes on its label.
    .help = A camp has many cords. By its color, everyone finds the right one. If it has no clear color, wrap tape of one color around both ends, and pick that. Or pick “Something else”, and type your own word.
    .row = Color
pick-gear-color-orange = Orange
pick-gear-color-yellow = Yellow
pick-gear-color-green = Green
pick-gear-color-black = Black
pick-gear-color-blue = Blue
pick-gear-color-red = Red
pick-gear-color-gray = Gray
pick-gear-color-white = White
pick-gear-color-brown = Brown
pick-gear-color-own = Something else: I will type it
pick-gear-color-none = None of these: no name

ask-gear-name = What do you call it?
    .why = { $about }. Its label says that, to tell it apart: striped.
    .help = Letters and digits, - and _. It goes on its label, so that you know which is which.
    .row = Name

ask-out-list = Which outlets does the box have?
    .why = { $about }. Mark each, and how many. A pair on one breaker counts as 1.
    .help = Mark each shape with the number on its breaker. If there are more of the same, each on its own breaker, mark how many. Count breakers, not holes.
    .row = Outlets
pick-out-list-done = That is all of its outlets

ask-out-face = Which outlets, and what number is on each breaker?
    .why = { $about }.
    .help = Outlets of the same shape with the same breaker are one kind.
    .row = Shape

ask-out-count = How many like that, each with its own breaker?
    .why = { $about }. A pair on one breaker counts as 1.
    .help = Count breakers, not holes.
    .row = How many

# Safety.
ask-out-breaker = { $about }: what number is on each breaker?
    .why = Example: 20 A. If it has no breaker, type none.
    .help = A splitter without breakers protects nothing: type none. If there are breakers without a number you can read, type unknown.
    .row = Breaker
pick-out-breaker-none = no breaker

# Safety.
ask-out-gfci = { $about }: TEST and RESET buttons?
    .why = Made to cut power if someone gets a shock.
    .help = Look on the outlet itself or on its breaker, with the letters GFCI. If only some have them, answer no.
    .row = GFCI

ask-out-places = How are its outlets arranged?
    .why = { $about }. We use this on the labels and the card.
    .help = If they are side by side, we call them left and right. If one is above another, top and bottom. With numbers, you choose which is 1 when you put the labels on.
    .row = Arranged
pick-out-places-across = Side by side: left, right
pick-out-places-down = One above another: top, bottom
pick-out-places-number = By number: 1, 2

ask-out-leg = { $about }: which half of the generator feeds each?
    .why = A or B; or one letter for each, A A B B.
    .help = A 120/240 V generator has two halves, A and B. A box divides its outlets between them. Its papers show which outlet is on which half. Do not open the box. One letter is for all of them. Or type one for each, from the first to the last: A A B B. If you do not know, we assume that all are on A: then they have the least power together.
    .row = Half

# Safety.
ask-out-wire = { $about }: what wire size do its papers give?
    .why = Like 12 AWG, in its papers. Never open the box.
    .help = Only its papers say. AWG is the wire size: a smaller number is a thicker wire. Do not open the box to find out.
    .row = Wire

# ---- The shapes, in short

face-5-15R = Regular outlet
    .also = household wall flat normal
face-5-20R = Regular T slot
    .also = household wall sideways
face-TT-30R = Camper (RV)
    .also = motorhome trailer fat
face-L5-20R = 3-slot twist
    .also = round twisty locking three slots 3 slots
face-L5-30R = 3-slot twist
    .also = round twisty locking three slots 3 slots
face-L14-20R = 4-slot twist
    .also = round twisty locking four slots 4 slots
face-L14-30R = 4-slot twist
    .also = round twisty locking four slots 4 slots
face-14-30R = 4-slot large
    .also = big square dryer fat four slots 4 slots
face-14-50R = 4-slot large
    .also = big square motorhome fat four slots 4 slots
face-6-20R = 240 V only
    .also = sideways
face-1-15R = No ground
    .also = old two slots flat

shape-5-15R = Regular outlet, 15 A (5-15R)
shape-5-20R = Regular, one T-shaped slot, 20 A (5-20R)
shape-TT-30R = Camper (RV), 30 A (TT-30R)
shape-L5-20R = Twist, 3 slots, 20 A (L5-20R)
shape-L5-30R = Twist, 3 slots, 30 A (L5-30R)
shape-L14-20R = Twist, 4 slots, 20 A (L14-20R)
shape-L14-30R = Twist, 4 slots, 30 A (L14-30R)
shape-14-30R = Straight, 4 slots, 30 A (14-30R)
shape-14-50R = Straight, 4 slots, 50 A (14-50R)
shape-6-20R = 240 V only, 20 A (6-20R)
shape-1-15R = Household, no ground, 15 A (1-15R)
shape-5-15P = Household, 3 pins, 15 A (5-15P)
shape-5-20P = One blade turned, 20 A (5-20P)
shape-TT-30P = Camper, 30 A (TT-30P)
shape-L5-20P = Twist, 3 blades, 20 A (L5-20P)
shape-L5-30P = Twist, 3 blades, 30 A (L5-30P)
shape-L14-20P = Twist, 4 blades, 20 A (L14-20P)
shape-L14-30P = Twist, 4 blades, 30 A (L14-30P)
shape-14-30P = Straight, 4 blades, 30 A (14-30P)
shape-14-50P = Straight, 4 blades, 50 A (14-50P)
shape-6-20P = 240 V only, 20 A (6-20P)
shape-1-15P = Household, no ground, 15 A (1-15P)

# At most 38 columns and 13 lines, so that a question fits below it. Drawn as on the labels.
drawn-faces =
    Match the name printed by the holes,
    not just the drawing. We drew these
    from memory. Yours can be upside down.
    {" "}
    {" "}5-15R   5-20R   TT-30R  6-20R
    {" "}|   |  -|   |   /   \   |   -
    {" "}  o       o       o       o
    {" "}
    {" "}L5-30R  L14-30R 14-50R  1-15R
    {" "}(   )     --      |     |   |
    {" "}        (   )   |   |
    {" "}  --      --      o
    L5-20R, L14-20R: same, but smaller.
# The same for plugs, seen from their blades: left and right are changed.
drawn-plugs =
    Match the name between the blades, not
    just the drawing. We drew these from
    memory. Yours can be upside down.
    {" "}
    {" "}5-15P   5-20P   TT-30P  6-20P
    {" "}|   |   |   -   /   \   -   |
    {" "}  o       o       o       o
    {" "}
    {" "}L5-30P  L14-30P 14-50P  1-15P
    {" "}(   )     --      |     |   |
    {" "}        (   )   |   |
    {" "}  --      --      o
    L5-20P, L14-20P: same, but smaller.

# ---- The review page

ask-review = Is this right?
    .why = Pick a line to change it. A ! marks where we assumed the worst.
    .help = Each line is a part of your plan. Pick one to see and change its answers. At a !, we assumed the more dangerous case, and the check says so. The number at “Look” counts the questions about that.
pick-review-check = Check this plan
# $count: how many questions that is.
pick-review-look = Look at what we do not know ({ $count })
pick-review-add = Add an outlet, appliance or cord
pick-review-add-outlet = Add an outlet
pick-review-add-load = Add something to plug in
pick-review-add-gear = Add a cord, adapter or box
pick-review-quit = Stop for now, keep my answers
pick-review-stay = Go on with the plan

ask-review-add = What do you want to add?
    .why = Its questions come next.
    .help = Esc goes back to the whole plan.

ask-review-quit = Stop for now?
    .why = We keep your answers.
    .help = Esc goes back to the whole plan.

ask-review-part = { $about }: what do you want to change?
    .why = Pick a line to answer it again.
    .help = Esc goes back to the whole plan.
pick-review-back = Nothing more here: back

part-generator = Generator
part-fuel = Fuel and noise
part-outlets = GFCIs
part-site = Site
part-load = Something else
part-out = Outlets of { $box }

# ---- Between questions

# A bare number, with the unit it was taken in.
note-unit = That is { $answer }.
note-added = Added { $count }: { $things }.
# Of generators that run as one.
note-joined = We count { $rated } for each generator. If that is for all of them together, go back and type the watts of one.
note-load-left = Your list adds up to { $all } of { $rated } so far. { $left } left, less at high elevation or in hot weather.
note-load-named = Your list adds up to { $all } so far. We do not know how much the generator gives.
note-load-turns = All together they need { $all }, but the generator gives { $rated }. They must take turns.
note-load-cannot-start = { $load }: it takes { $starting } for a moment to start. The generator gives { $peak } at most: it cannot start it.
note-load-too-large = { $load } alone draws { $this }. The generator gives { $rated }: it cannot run it.

# Safety. The first line stands out.
note-danger =
    { $signal }: { $title }
    Why: { $why }
    Do: { $fix }
# Safety. The same where the title says already what we do not know.
note-danger-unknown =
    { $signal }: { $title }
    Do: { $fix }
# $more: the parts that it was not told of before; $named: whether the title names them.
note-danger-also = { $named ->
        [yes] { $signal }, also: { $title }
       *[no] { $signal }, also for { $more }: { $title }
    }
# It was a danger, and is not gone.
note-danger-milder =
    Now only { $signal }: { $title }
    Do: { $fix }
note-danger-gone = That danger is gone: { $title }
# Only because these parts are in no outlet now; $named: whether the title names them.
note-danger-unplugged = { $named ->
        [yes] Not plugged in now, so no danger for now: { $title }
       *[no] Not plugged in now: { $more }. So this is no danger for now: { $title }
    }

picture-set = { $name }
picture-place = - { $id } ({ $shape }): { $amps }
picture-refused = - { $id } ({ $shape }): do not use
picture-guarded = - { $id } ({ $shape }): plug in only a GFCI cord
picture-guarded-ahead = - { $id } ({ $shape }): plug a GFCI cord in ahead of it
picture-load = * { $load }
picture-unplaced = No outlet so far for: { $ids }
picture-loose = Not plugged in: { $ids }

note-unknown = Noted: “I don’t know”.
# Safety. $part: the id of a cord or box, and what it is; $rest: what is plugged in past it, and $count how many.
note-unplugged = { $part }: in the plan it stays unplugged{ $count ->
        [0] {""}
       *[other] , and nothing past it has power: { $rest }
    }. So we have not checked it. Do not use it until you know. Then pick its line on the last page.
# It fits one place, and nobody is asked. $part, $place: ids.
note-plugged = “{ $part }” goes into “{ $place }”, the only free outlet that fits.
# Safety.
note-fits-nowhere = No outlet so far takes the plug of “{ $part }”. Unless you add one that does, leave it unplugged. Never file, bend or cut a plug.
# Safety. $adapters: one or more of the list, each in quotation marks.
note-fits-by-adapter = No outlet so far takes the plug of “{ $part }”. This adapter would: { $adapters }. Use only a listed one, and mark it with your cords. Never file, bend or cut a plug.
# What was read on a cord. $wire: 12 AWG; $count: how many wires, or unknown.
note-jacket = We read: wire size { $wire }{ $count ->
        [unknown] {""}
       *[other] , { $count } wires
    }{ $outdoor ->
        [yes] , outdoor
        [no] , indoor
       *[unknown] {""}
    }.

note-first-line = We took only the first line of that.
note-not-bought = At the end we list what to look for when you buy it.
plain-list-long = There are { $count } to choose from. Type part of a name to see those that match.
plain-list-found = These match. Type a number, or more of the name.
plain-not-text = We cannot read a letter in that line. Type it again.
plain-keys = Type a number or part of a name. ?: help, <: back
plain-many-keys = Type numbers or names, with commas between. 2 x 5 is two of number 5. ?: help, <: back
plain-line-keys = ?: help, <: back
plain-row = { $number }. { $text }
plain-default = Enter: { $text }

reject-choice = Please pick one from the list.
reject-nothing-inside = Nothing at all? If nothing runs inside, press Enter again.
reject-mark-one = Mark at least one.
reject-ready-made = A ready-made list counts once. For two of one thing, mark 2 of that thing.
reject-yes-no = Please answer yes or no.
reject-empty-text = Please type a number with its unit ({ $units }).
reject-no-number = Start with a number, then its unit ({ $units }).
reject-no-unit = “{ $found }” has no unit. Add one: { $units }.
reject-unknown-unit = “{ $found }” does not fit here. Use one of: { $units }.
# Safety. $decimals is the one reading, $thousands the other.
reject-two-readings = { $found } can mean { $decimals } or { $thousands }. Please type one of these.
reject-out-of-range = { $field } must be from { $least } to { $most }. Check for a typo or the wrong unit.
reject-zero = It must be more than zero.
reject-ratio = A number from { $least } to { $most }, such as 0.8.
reject-count = A whole number from { $least } to { $most }.
reject-ident = Letters and digits, - and _, no spaces, at most 40.
reject-ident-taken = Another part has that name. Pick a different one.
reject-name-empty = Please type a name.
reject-name-long = At most { $most } letters, so that it fits on a label.
reject-name-signs = A name cannot have that character.
reject-name-letters = We have no letters to print { $characters }. Use other letters.
reject-wire = A wire size, such as 12 AWG or 2.5 mm².
reject-jacket = Such as 12/3, SJTW 12/3, 14 AWG or 3G1.5; or unknown.
reject-noise = Level, then distance: 58 dBA at { example-noise-far }. Or unknown.
reject-runtime = A percentage, then hours: 25% 8.5 h, 100% 3.1 h. Or unknown.
reject-span = From and to: 10pm-6am, or 22:00-06:00.
reject-draw = Watts, amps or horsepower: 1500 W, 12.5 A, 1/2 hp.
reject-draw-code = The code letter is one letter from A to V: 1/2 hp code G.
reject-start = Watts or amps: 2400 W, 39 A or LRA 39. Or unknown.
# Safety. $amps is more than $rating, which its plug, $plug, is rated for.
reject-plug-amps = That is { $amps }. Its plug, { $plug }, is rated for { $rating }. No maker sells that: the plug or the number is wrong. Read its nameplate again, and look at its plug.
reject-legs = A or B for all of them, or one letter for each: A A B B. Or unknown.
reject-legs-count = One letter for all of them, or { $count } letters, one for each.
reject-peak = The peak is never lower than the rated power, { $rated }. Or type unknown.
reject-starting = Starting never takes less than running, { $running }. Or type unknown.
reject-trips = That is above the breaker’s number, { $marked }. Too early means below it.
reject-shares = One breaker has one number. Here it is { $own }, there { $other }. Go back and fix it, or pick another.
reject-unknown-shape = Compare it with these drawings. If none looks like it, plug nothing into it and keep it out of the plan. Put tape over it: DO NOT USE. Then pick one that you know, or go on. If you know none of them, ask someone who does: Ctrl-C stops and keeps your answers.
reject-no-unknown = We cannot go on without this one. Type ? for where to find it.
reject-no-skip = This one needs an answer. Type ? for help.
reject-first = This is the first question. Ctrl-C stops and keeps your answers.
reject-full = A plan cannot hold any more.

interview-no-terminal = the questions need a terminal or answers, and there is neither here
interview-no-terminal-help = Check a plan file instead: tallywatt check PLAN. Or give the answers in a file, one on each line: tallywatt --answers FILE.
interview-too-large = { $path } has more parts than the questions can go through
interview-too-large-help = Change it with a text editor, then: { $command }.
interview-saved = Saved { $path }. To print: { $command }
interview-goes-on = Going on with your unsaved changes to this plan.
interview-no-home = there is no folder for them; set TALLYWATT_DATA to one
interview-terminal = the terminal stopped working: { $reason }
interview-not-kept = We cannot keep your answers as you go ({ $reason }). If you stop before the end, they are gone. You can still save the plan at the end.
interview-draft-lost = We cannot read the draft { $path }. We left it as it is.
interview-stopped-lost = Stopped. Your answers were not kept.
interview-kept = Your answers are kept, in the draft “{ $draft }”.
interview-stopped = stopped; nothing was changed
interview-resume = Run tallywatt again to go on from there.
interview-resume-question = Go on with an unfinished plan?
interview-resume-why = We keep each one until you print it.
interview-resume-help = Pick one by its number or the start of its row. You go on where you stopped. We keep the others.
# Cut after 36 columns on a small screen, so what tells drafts apart comes first and the age last.
interview-resume-row = { $draft }, { $date }: { $name }, { $age }
interview-resume-row-bare = { $draft }, { $date }, { $age }
interview-age-minutes = { $count ->
        [0] just now
        [one] 1 minute ago
       *[other] { $count } minutes ago
    }
interview-age-hours = { $count ->
        [one] 1 hour ago
       *[other] { $count } hours ago
    }
interview-age-days = { $count ->
        [one] yesterday
       *[other] { $count } days ago
    }
interview-resume-new = Start a new plan

interview-effect = What your change did:
interview-effect-gone = - gone: { $signal }, { $title }
interview-effect-new = - new: { $signal }, { $title }
interview-effect-none = - the findings are the same as before
interview-file-changed = Someone else changed { $path } in the meantime. We added your changes to the new version. Please check it again.
interview-after = What do you want to do now?
    .why = What to do first is above.
    .none = Print it, and put the labels up before you plug in.
interview-after-save = Save the plan file
interview-after-print = Print the labels, card and cautions
interview-after-look = Look at what we do not know
interview-after-all = Show all that we found
interview-after-mend = Show the easiest changes that help
interview-after-take = Take changes, one by one
interview-take = Which changes do you take into the plan?
    .why = All are marked. Unmark those that you will not make.
interview-take-done = Take what is marked
interview-after-change = Change something
interview-after-leave = Stop for now, keep my answers
interview-folder = Which folder should they go in?
    .why = We make it if it is not there. The plan goes there too.
    .help = Type a name, such as: prints. Press Enter to use the name shown. A folder that holds another plan will not do.
interview-folder-taken = { $dir } already holds a plan. Please name another folder.
