# What can be wrong with a plan file, and with files as such. Each message is a title; `help`
# says what to do about it, and `help-near` does when there is a good guess at what was meant.

plan-problem = problem
plan-help = to fix
plan-first-here = first given here
plan-nothing-done = { $count ->
    [one] One problem in { $path }. Nothing was checked or printed.
   *[other] { $count } problems in { $path }. Nothing was checked or printed.
}
plan-more = { $count ->
    [one] And one more, not shown.
   *[other] And { $count } more, not shown.
}
list-or = { $first } or { $last }

# Kinds of value, as in "it should be ...".
plan-type-text = text in quotes
plan-type-quantity = a number with its unit, in quotes
plan-type-whole = a whole number
plan-type-number = a number
plan-type-yes-no = true or false
plan-type-yes-no-unknown = true, false or "unknown"
plan-type-date = a date or time without quotes
plan-type-list = a list in square brackets
plan-type-table = a table
plan-type-tables = a list of tables, each under its own heading

# The TOML itself.
plan-duplicate-key = This appears twice
    .help = Each key may appear only once under a heading. Keep one of the two. A second cord, box, outlet or load starts with its own heading, such as [[cord]].
plan-unquoted = This text has no quotes
    .help = Put it in double quotes. Only whole numbers, true and false go without.
plan-bad-string = The quotes or the text between them cannot be read
    .help = Start and end it on the same line with a double quote. Write a double quote inside as \" and a backslash as \\.
plan-bad-number = This number cannot be read
    .help = Put a number with a unit, a shape or a time in double quotes: "2800 W", "5-20R" or "07:00-07:20". A number without quotes is one such as 2 or 0.8.
plan-no-equals = There is no equals sign here
    .help = Write a key, an equals sign and a value, such as: coiled = false
plan-no-value = There is nothing after the equals sign
    .help = Write the value after it, or "unknown" if you do not know. Or remove the line.
plan-bad-list = This list cannot be read
    .help = Write it in square brackets with commas between, such as: ends = ["5-15R", "5-15R"]
plan-bad-inline = The part in curly brackets cannot be read
    .help = Write it in curly brackets with commas between, such as: motor = {"{"} hp = "1/2", code = "G" {"}"}
plan-bad-heading = This heading cannot be read
    .help = Put one bracket on each side of [site] and [generator]. Put two around what there can be several of, such as [[cord]].
plan-bad-key = This key cannot be read
    .help = A key has only letters, digits and underscores, and comes ahead of an equals sign.
plan-extra = There is something extra on this line
    .help = Put one key and one value on each line. A number with its unit goes in double quotes, such as "2800 W". A comment starts with #.
plan-too-deep = There are too many brackets inside brackets
    .help = No plan needs more than two. Look for one that was not closed.
plan-bad-character = There is a character here that a plan cannot have
    .help = Delete it and type the line again.
plan-syntax = This line cannot be read
    .help = Write a key, an equals sign and a value, such as: rated = "2800 W"

# The file as a whole.
plan-empty = There is nothing in this file
    .help = Run tallywatt with nothing after it. It asks you what it needs to know and writes the plan.
plan-no-format = The file does not say which format it uses
    .help = Put this at the top of the file: format = 1
plan-newer-format = A newer version of tallywatt wrote this plan: format { $found }. This one reads format { $ours }
    .help = Get a newer version of tallywatt. Do not just change the number: the rest could be misread, and a wrong number here can hurt someone.
plan-no-such-format = There is no format { $found }
    .help = Write: format = { $ours }
plan-too-many = There are { $found } { $what }, but a plan can have only { $most }
    .help = Make a plan for each generator, or remove what you never use.
    .parts = parts
    .loads = things to run
plan-missing-table = The plan says nothing about a { $table }
    .help = Add a part that starts with [{ $table }].

# Keys and values.
plan-missing-key = { $key } is missing here
    .help = Add a line such as: { $example }
plan-unknown-key = "{ $found } = " means nothing here
    .help = You can write: { $allowed }.
    .help-near = Did you mean { $nearest }? You can write: { $allowed }.
plan-unknown-heading = [{ $found }] means nothing here
    .help = You can write: { $allowed }.
    .help-near = Did you mean { $nearest }? You can write: { $allowed }.
plan-wrong-type = { $key } is { $found } here
    .help = It should be { $wanted }.
    .help-near = It should be { $wanted }, such as: { $example }
plan-unknown-not-allowed = { $key } cannot be unknown
    .help = We cannot work anything out without it. Look at the appliance’s label, or ask its owner.
    .help-near = Remove the line instead.
plan-empty-text = { $key } is empty
    .help = Write something between the quotes, or remove the line.
plan-bad-text = { $key } is too long to print, or has characters that cannot be printed
    .help = Use one line of up to { $most } characters.
plan-no-unit = { $key } has no unit: { $found } what?
    .help = Write it in quotes with its unit, such as "{ $example }". Units: { $allowed }.
plan-unknown-unit = { $key } is not measured in { $found }
    .help = Write a plain number, then its unit. Units: { $allowed }. Check for a letter in the number.
plan-volt-amperes = { $key } is given in { $found }, and volt-amperes are not watts
    .help = Look for the watts on the appliance’s label. For a load you may give the amps instead, as current = "12.5 A".
plan-no-number = { $key } has no number: { $found }
    .help = Write a number and a unit, such as "{ $example }".
plan-no-plain-number = { $key } has no number that can be read: { $found }
    .help = Write a plain number, such as "{ $example }".
plan-two-readings = { $key } can mean two things: { $found }
    .help = Some people read it as { $decimals } and others as { $thousands }. Write "{ $decimals }" or "{ $thousands }", whichever you mean.
plan-out-of-range = { $key } cannot be { $found }
    .help = Use a value from { $least } to { $most }. Check for a typo or the wrong unit.
plan-wire-size = No wire has the size { $found }
    .help = Gauges go from 0 to 30 AWG, as whole numbers. Sizes in mm² go from 0.1 to 400. The size is printed on the cord.
plan-not-a-choice = { $key } cannot be { $found }
    .help = Write one of these: { $allowed }.
    .help-near = Did you mean { $nearest }? Write one of these: { $allowed }.
plan-not-a-language = { $found } is not the tag of a language
    .help = Write one such as "en", "es", "fr-CA" or "de", or remove the line.
plan-unknown-shape = We do not know the shape { $found }
    .help = Shapes for { $key }: { $allowed }.
    .help-near = Did you mean { $nearest }? Shapes for { $key }: { $allowed }.
plan-wrong-half = { $found } is an outlet, but a plug is expected here
    .help = A name that ends in P is a plug, with blades. One that ends in R is an outlet, with slots. Here it would be { $meant }.
plan-wrong-half-receptacle = { $found } is a plug, but an outlet is expected here
    .help = A name that ends in P is a plug, with blades. One that ends in R is an outlet, with slots. Here it would be { $meant }.
plan-two-plugs = { $found } is a plug, and a cord ends in an outlet
    .help = If you meant the outlet, write { $meant }. A cord with a plug at both ends has live exposed blades and can kill. Do not use it. Do not make one.
plan-bad-hours = { $key } cannot be { $found }
    .help = Write two times of day on the 24-hour clock with a hyphen between, such as "18:00-22:00". They can pass midnight, such as "22:00-06:00".
plan-motor-code = No motor has the code letter { $found }
    .help = It is one letter from A to V, except I, O and Q. On the motor’s label it comes after the word "code". Remove the line if there is none.
plan-two-draws = { $second } repeats { $first }
    .help = Keep the one that is on the label, and remove the other.
plan-place-for-no-plug = { $place } names an outlet, but { $plug } says that there is no plug
    .help = Look at the generator. If a bonding plug is in, write { $plug } = true. If none is in, remove the line { $place }.
plan-bonding-plug-elsewhere = “{ $key }” names “{ $found }”, but a bonding plug goes only into a household outlet of the generator
    .help = The generator in this plan has no household outlet, so remove the line. If the plug is in a cord, a box or an adapter, stop the engine, then pull it out. Ask a licensed electrician before you use it.
    .help-near = Write one of { $allowed } if the plug is in there. If it is in a cord, a box or an adapter, stop the engine, then pull it out, and write bonding_plug = false. Ask a licensed electrician before you use it.
plan-less-than = { $key } is less than { $other }: { $found } is below { $least }
    .help = { $key } cannot be the smaller one. Check for a typo, or for two values that changed places.

# Names.
plan-bad-id = { $found } cannot be an id
    .help = An id has up to 40 letters, digits, hyphens and underscores, and starts with a letter or digit.
    .help-near = An id has up to 40 letters, digits, hyphens and underscores, and starts with a letter or digit. You could use "{ $nearest }".
plan-duplicate-id = The id { $id } is already used: line { $line } has it
    .help = Every outlet, cord, box and load needs its own id. It is printed on its label.
plan-sets-id = The id { $id } is already used: reports use it for the generator itself
    .help = Every outlet, cord, box and load needs its own id. Give this one another.
plan-unknown-reference = “{ $key }” names “{ $found }”, but the plan has no such outlet
    .help = Write the id of an outlet or cord that is in the plan. If it is not plugged in yet, remove the line.
    .help-near = Did you mean { $nearest }? If it is not plugged in yet, remove the line.
plan-unknown-share = “{ $key }” names “{ $found }”, but there is no such outlet here
    .help = Write the id of the outlet whose breaker it shares. If it has its own breaker, remove the line.
    .help-near = Did you mean { $nearest }? If it has its own breaker, remove the line.
plan-not-a-receptacle = “{ $key }” names “{ $found }”, but nothing can be plugged in there
    .help = Write the id of an outlet or cord.
    .help-near = Its outlets are { $allowed }.
plan-plug-inside = “{ $camper }” is a camper, and what runs inside needs no plug here
    .help = Remove the line with the plug.
plan-loop = { $through } are plugged into each other in a loop
    .help = One of them must be plugged into an outlet of the generator, directly or through others.
plan-loop-self = { $through } is plugged into itself
    .help = It must be plugged into an outlet of the generator, directly or through others.
plan-bad-share = It cannot share the breaker of { $found }
    .help = An outlet can share only with one of the same generator or box that does not share with another itself. There is none here, so remove the line.
    .help-near = An outlet can share only with one of the same generator or box that does not share with another itself: { $allowed }.
plan-share-differs = It shares the breaker of { $with }, but says something else about that breaker
    .help = Give the size of the breaker at { $with }, and remove it here.
plan-no-outlets-generator = The generator has no outlet
    .help = Add each of its outlets with a part that starts with [[generator.outlet]].
plan-no-outlets-box = This box has no outlet
    .help = Add each of its outlets below it, with a part that starts with [[box.outlet]].
plan-no-outlets-cord = This cord has no outlet at its end
    .help = Name the shape of each, such as: ends = ["5-15R"]

# Files.
store-not-found = There is no file { $path }
    .help = Check how the name is spelled, and which folder you are in.
store-no-folder = There is no folder to put { $path } in
    .help = Make the folder first, or name another.
store-not-allowed = You are not allowed to read or change { $path }
    .help = Check its permissions, or name another file.
store-exists = { $path } already exists
    .help = Name another place. The file that is there is unchanged.
store-not-ours = { $path } is not as we wrote it, or not ours at all
    .help = We wrote nothing, so that nothing of yours is lost. Name another folder, or move that file.
store-changed = { $path } has changed since we read it
    .help = We wrote nothing. Run the same command again.
store-silent = { $path } is a pipe, and nothing writes to it
    .help = Start what writes to it first, or name a file.
store-full = There is no room left on the disk for { $path }
    .help = Make room and try again. What was there is unchanged.
store-is-a-folder = { $path } is a folder, not a file
    .help = Name a file.
store-not-a-folder = Part of { $path } is a file, not a folder
    .help = Name another folder.
store-bad-name = { $path } cannot be the name of a file
    .help = Name a file in a folder.
store-too-large = { $path } is much too large for a plan
    .help = A plan is a short text. Is this the right file?
store-not-text = { $path } is not plain text: line { $line } has bytes that are not UTF-8
    .help = Save it from your editor as plain text in UTF-8. Is this the right file?
store-in-use = Another tallywatt has { $path } open
    .help = Finish or close the other one first.
store-cannot-read = cannot read { $path }: { $reason }
    .help = Try again, or name another file.
store-cannot-write = cannot write { $path }: { $reason }
    .help = Try again, or name another place. What was there is unchanged.
