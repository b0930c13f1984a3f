# The command line: help, results and failures.

cli-about = Just type tallywatt: it asks you one question at a time, and prints at the end. It plans camp power from a portable generator: what each outlet can carry, what can run together and what is dangerous. It prints labels and a card that say so.
cli-after =
    What it tells you does not replace local codes or a licensed electrician.
cli-heading-commands = Commands
cli-heading-usage = Usage:
cli-heading-options = Options
cli-heading-arguments = Arguments
cli-more = For examples and exit statuses, run “{ $help }”.
cli-heading-examples = Examples:
cli-heading-status = Exit status:
# Behind its number in a list.
cli-status-done = done
cli-status-clear = nothing is worse than a caution
cli-status-warning = a warning, and no danger
cli-status-danger = a danger
cli-status-danger-or-lost = a danger, or something that you need has no outlet
cli-status-yes = yes
cli-status-no = no
cli-status-right = nothing is wrong
cli-status-wrong = something is wrong
cli-status-usage = we do not understand the command
cli-status-plan = the plan has a mistake
cli-status-write = we cannot write or print it
cli-status-stopped = you stopped it
cli-help = Show the help for a command
cli-help-command = The command; without one, the help for the whole program
cli-arg-answers = Read the answers from this file, one on each line, instead of asking; "-" reads standard input
cli-arg-plain = Ask in plain lines, one after another, for screen readers
cli-arg-language = The language of the screen and the prints, such as es or fr-CA; default: that of the plan or the system
cli-arg-units = Feet, gallons and °F, or meters, liters and °C; default: what the language’s region uses
cli-arg-color = Colors on the screen; "auto" uses them on a terminal, unless NO_COLOR is set
cli-arg-print-language = The language of the prints, if it is not that of the screen; list several (es,fr) to get prints in each
cli-arg-help = Show help; --help shows examples too
cli-arg-version = Show the version

cli-ask = Change a plan file by answering questions; comments you wrote in it stay where they are
cli-ask-plan = The plan file
cli-ask-answers = { cli-arg-answers }
cli-ask-plain = { cli-arg-plain }

# What stands for a value. Capitals.
cli-value-options = [OPTIONS]
cli-value-command = [COMMAND]
cli-value-card = SIZE
cli-value-code = CODE
cli-value-dir = FOLDER
cli-value-file = FILE
cli-value-format = FORMAT
cli-value-ink = INK
cli-value-language = LANGUAGE
cli-value-load = LOAD
cli-value-n = NUMBER
cli-value-new = NEW
cli-value-name = NAME
cli-value-new-toml = NEW.toml
cli-value-old = OLD
cli-value-paper = PAPER
cli-value-plan = PLAN
cli-value-print = PRINT
cli-value-right-down = RIGHT, DOWN
cli-value-signal = SIGNAL
cli-value-units = UNITS
cli-value-when = WHEN
cli-value-words = WORDS
cli-value-yyyy-mm-dd = YYYY-MM-DD
cli-values = [{ $values }]
cli-default = [default: { $value }]

# A call that is wrong.
usage-unknown-argument = there is no option or argument { $argument } here
usage-unknown-command = there is no command { $argument }
usage-wrong-value = { $argument } cannot be “{ $value }”
usage-no-value = { $argument } needs a value
usage-missing = { $argument } is missing
usage-conflict = { $argument } and { $other } cannot go together
usage-twice = { $argument } was given twice
usage-answers = use --answers only with the questions: alone, or with ask
usage-other = cannot understand this call: { $argument }
usage-allowed = Choose one of: { $allowed }.
usage-nearest = Did you mean { $nearest }?
usage-help = Run “{ $help }” to see the options.
usage-plan = That is a plan. To check it, run: { $command }
usage-plan-first = Name the plan first: { $command }
usage-date = Write a day of the calendar as YYYY-MM-DD, such as 2026-07-04, or "today".
usage-no-language = there is no language “{ $tag }” here

cli-demo = Make all the prints for an example weekend, without asking questions
cli-demo-fixed = The same weekend with its dangers cleared
cli-demo-into = The folder to write into; default: tallywatt-demo

cli-check = Check plans and say what is wrong, worst first
cli-check-plans = Plan files; "-" reads one from standard input
cli-check-long = Say why too, and what each outlet can carry
cli-check-format = "text" for people; "json" for programs, one report per plan
cli-check-fail-on = End with status 0 unless a finding is this bad or worse

cli-print = Print a plan: labels for the gear, a card to hang up, cautions to check off, a worksheet of all numbers
cli-print-plan = The plan file; "-" reads it from standard input
cli-print-into = The folder to write into
cli-print-paper = The paper in the printer
cli-print-stock = The label sheet by name, such as letter-30 or roll-24, or your own file in .toml; an unknown name prints the list
cli-print-start-at = The first label to print on, if some are already used
cli-print-copies = How many of each label
cli-print-offset = Move the labels right and down, at most { $measure ->
        [metric] 10 mm
       *[customary] 0.39 in
    }, if the printer feeds off-center: { $measure ->
        [metric] "1 mm, -0.5 mm"
       *[customary] "0.04 in, -0.02 in"
    }
cli-print-alignment = Also print a page with rulers that shows where the labels land, to hold against a label sheet
cli-print-only = Make only this print; repeat the option for more
cli-print-card = The card’s size: one sheet for each side; or half a sheet (A5, half letter) or pocket size, to fold. For a phone: one narrow column, with pictures
cli-print-ink = "black" prints black on white, without color or gray
cli-print-date = The date to print on every sheet; its files are then made to be kept for years (PDF/A-2a)
cli-print-png = Also write a picture of each page, and contact.png with all of them
cli-print-templates = A folder with your own templates; "tallywatt templates" writes some to start from

cli-may = Ask before you plug in: can these be switched on, in what order, and what will a meter show
cli-may-plan = The plan file; "-" reads it from standard input
cli-may-loads = What you want to switch on, by name; put a name with spaces in quotation marks
cli-may-while = What is running already
cli-may-format = "text" for people; "json" for programs

cli-learned = Put into the plan what you saw at camp: what tripped, what got hot, a meter reading, hours on a tank
cli-learned-plan = The plan file; it is changed, and its comments stay
cli-learned-words = What you saw, such as: front tripped at 13 A
cli-learned-date = The day you saw it; default: today

cli-reprint = Say which labels and sheets of an old plan to print again for a new one
cli-reprint-old = The plan that you printed
cli-reprint-new = The plan as it is now

cli-mend = Find the easiest changes that clear dangers and keep everything that you need running, and say what is left
cli-mend-plan = The plan file; "-" reads it from standard input
cli-mend-into = Write the changed plan to this new file; an existing file is not touched
cli-mend-warnings = Clear the warnings too, as far as changes can
cli-mend-format = "text" for people; "json" for programs: the report, with the repairs

cli-templates = Write the templates of the prints into a folder, so that you can change them and print with your own
cli-templates-into = The folder to write into; existing files are not touched

cli-explain = Explain a rule: what it checks, why it is dangerous, the arithmetic, what to do
cli-explain-code = The rule’s code, such as AIR001; without it, all rules are listed

cli-words = For translators: print every message beside its translations, as a page for a browser
cli-words-languages = Language folders; default: all of them
cli-words-check = Say what is wrong with them instead
cli-words-from = Read the language folders here instead of those in the program

failure-lead = tallywatt:
failure-hint = Hint:
failure-output = cannot write the result: { $reason }
failure-output-full = there is no room left to write the result
failure-no-rule = there is no rule { $code }
failure-no-rule-hint = "tallywatt explain" lists them all.
failure-json = cannot write the report as JSON

check-plan = { $name }
# Safety.
check-none = We found no problems in this plan. We can miss some.
check-dangers = Clear these before you start the engine:
check-next = What to do next
next-none = We found no dangers or warnings. Local codes (electrical law) still decide.
next-trouble = { $title }.
check-looks = Look at these too, in this order. Do not guess.
check-buy = Not bought yet
check-guessed = Where we do not know enough, we assumed the worst: look first.
check-found = Everything we found, worst first
check-long = For why, and for what each outlet can carry, run "tallywatt check --long" on this plan.
check-count = { $dangers ->
        [one] 1 danger
       *[other] { $dangers } dangers
    }, { $warnings ->
        [one] 1 warning
       *[other] { $warnings } warnings
    }, { $cautions ->
        [one] 1 caution
       *[other] { $cautions } cautions
    }, { $notices ->
        [one] 1 notice
       *[other] { $notices } notices
    }.
check-label-why = Why
check-label-look = Look
check-label-do = Do
check-label-also = Also fixes
trouble-too = { $troubles }
trouble-also = { $title } ({ $code })
trouble-assumed = Worst case: { $title }
trouble-assumed-why = We do not know, so we assumed the worst. { $why }
trouble-look = When you know, change your answer, and check again.
check-more = For more about any of these, run "tallywatt explain CODE".
check-limits = What each outlet can carry, with nothing else on
check-limit-amps = { $amps } (about { $watts })
check-limit-two = { $long } for 3 hours or more, limited by { $long_by }. { $short } for less than 3 hours, limited by { $short_by }.
# Safety.
check-limit-refused = DO NOT USE. See { $code }.
check-limit-guarded = Use only a GFCI cord (TEST and RESET buttons). See { $code }.
check-limit-guarded-ahead = Use it only with a GFCI cord (TEST and RESET buttons) plugged in ahead of it, nearer the generator. See { $code }.
check-limit-behind = DO NOT USE: { $count ->
        [one] it gets its
       *[other] they get their
    } power from “{ $id }”, which you must not use. See { $code }.
check-limit-one = { $long }. Limited by { $short_by }.
check-limit-same = { $long } for 3 hours or more, { $short } for less than 3 hours. Limited by { $short_by }.
check-limit-share = “{ $id }” ({ $reason }), at 80%
check-limit-share-own = { $reason }, at 80%
check-limit-by = “{ $id }” ({ $reason })
check-limit-only = Plug in nothing here but { $parts }. { $limit }
check-limit-bonding-plug = Plug in nothing here but the bonding plug.
check-assumed = We do not know these, so we assumed the unsafe case
# Safety.
check-defer = Local codes (electrical law) and a licensed electrician have the final say.

reason-rated-power = the power of the generator
# Safety.
reason-rated-power-unguarded = the generator: go over, and it might not shut off
reason-one-leg = one half of the generator: go over, and it might not shut off
reason-breaker = its breaker
reason-trips-early = its breaker, which trips too soon
reason-receptacle = the outlet’s own rating
reason-plug = the plug’s rating
reason-cord-ampacity = the cord’s wire; no breaker protects it
reason-cord-mark = the amps often marked on a cord this thin and long; read its tag, the smaller number counts
reason-coiled-cord = the coiled cord; no breaker protects it
reason-parallel-kit = the kit that joins the generators
reason-hot-cord = the cord in air this hot; no breaker protects it
reason-wiring = the box’s wiring
reason-not-fed = wrong voltage for its shape; treat it as live

demo-purpose = This example has mistakes in it on purpose. If it were yours, this is what to do:
demo-wrote = Written to { $dir }:
demo-file-labels = a label for each outlet, cord, box and the generator
demo-file-card = the card to laminate, two sides
demo-file-look = the look sheet: what to go and look at, with room to write
demo-file-cautions = the cautions sheet: what to check off, worst first
demo-file-worksheet = every number, for an electrician
demo-file-report = the report for other programs
demo-file-plan = the plan itself: change it and run "tallywatt print"
demo-other = "tallywatt demo --fixed" makes the same weekend with its dangers cleared.

# Safety.

working = Working. Ctrl-C stops it, and nothing is written.
print-wrote = Written to { $dir }:
print-look-gone = We took the old { $file } out of the folder: there is nothing left to look at.
# Safety.
print-dangers-left = { $count ->
        [one] 1 danger is
       *[other] { $count } dangers are
    } still in this plan. Do not start the generator until { $count ->
        [one] you have fixed it
       *[other] you have fixed every one
    }. The cautions sheet shows how.
print-card-sheets = The card takes { $count } sheets: one is too small for this plan. Each sheet says which one it is. Keep them together.
print-card-sheets-half = { print-card-sheets } A larger card might need fewer: "--card sheet".
print-card-sheets-pocket = { print-card-sheets } A larger card might need fewer: "--card half" or "--card sheet".
print-labels-used = { $count ->
        [one] There is 1 label.
       *[other] There are { $count } labels.
    } { $next ->
        [0] Printed, they fill the last label sheet.
       *[other] Once you print, the next free one on the last sheet is number { $next }: next time, start there with "--start-at { $next }".
    }

templates-how = Change what you like. Then print with "tallywatt print PLAN --into DIR --templates { $dir }". If the folder lacks a template, the program uses its own.
templates-none = there are no templates in { $path }
templates-none-hint = "tallywatt templates --into DIR" writes some to start from.
templates-failed-hint = The templates in { $path } might be from another version of tallywatt. Run "tallywatt templates --into DIR" with a new folder, make your changes there again, and print with that folder.

# The names in the example plan. The first language has those that are in the file.
demo-name-site = Juniper Cove weekend
demo-name-generator = the blue one
demo-name-kettle = Kettle
demo-name-toaster = Toaster
demo-name-griddle = Griddle
demo-name-coolbox = Cooler
demo-name-blanket = Electric blanket
demo-name-cpap = CPAP machine
demo-name-cpap-battery = CPAP battery
demo-name-lamps = String lights
demo-name-chargers = Phone and camera chargers
demo-name-fan = Fan
demo-name-pump = Air mattress pump
# The remarks in the example plans.
demo-remark-packed =
    An example family weekend: one small generator, one bin of cords, more to run than it can supply.
    Several things here are wrong on purpose. “tallywatt check” on this file says which.
demo-remark-ground = the grass by the lake never dries before noon
demo-remark-sleepers = the nearest tent
demo-remark-tripped = last summer, toaster and kettle together
demo-remark-kitchen = The heavy cord to the camp kitchen.
demo-remark-splitter = A three-way splitter from a yard sale. It has no breakers of its own.
demo-remark-living-room = The cord from the living room, to the tents.
demo-remark-through = It carries the full 30 A on to a second box. No breaker of its own.
demo-remark-put-right =
    The same example weekend, put right with what the family has or can get cheaply.
    Each change is marked with “now”.
demo-remark-now-far = now well away from the tents, exhaust pointing away
demo-remark-now-alarms = now one in every tent
demo-remark-now-roof = now under a high roof on poles, open on all sides
demo-remark-now-home = The three-way splitter now stays at home.
demo-remark-now-cord = Now an outdoor cord to the tents, with a GFCI in its plug.
demo-remark-now-socket = Now in the other socket, so that only GFCI cords are plugged in there.
demo-remark-now-empty = It carries the full 30 A on to a second box. No breaker of its own. Now left empty, cover shut.
demo-remark-now-toaster = now after the kettle
demo-remark-now-supper = now pancakes are for supper
demo-remark-now-shut = Now shut tight overnight, and while the engine cools for refueling.
demo-remark-now-warm = now it warms the bed, and is off at night
demo-remark-now-battery = The breathing machine now runs on its own battery at night. This charges it during the day.
