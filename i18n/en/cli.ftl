# The command line: help, results and failures.

cli-about = Plans a portable generator for a camp: what each receptacle can carry, what may run together, what is dangerous, and the labels and the card that say so.
cli-after =
    With no command, tallywatt asks you one question at a time and prints at the end.

    What it tells you does not replace local codes or a licensed electrician.
cli-heading-commands = Commands
cli-heading-usage = Usage:
cli-heading-options = Options
cli-heading-arguments = Arguments
cli-arg-answers = Answers to the questions, one a line, instead of asking; "-" reads standard input
cli-arg-plain = Ask line by line with nothing redrawn, as screen readers like it
cli-arg-language = The language to speak and print in, such as es or fr-CA, whatever the plan and the system say
cli-arg-units = Feet, gallons and °F, or metres, litres and °C; left out, as the language's region has it
cli-arg-print-language = The language of the prints, if not that of the screen; several make a set each: es,fr
cli-arg-help = Show this help
cli-arg-version = Show the version

cli-ask = Change a plan file by answering questions; its comments and its order stay
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
cli-value-name = NAME
cli-value-new-toml = NEW.toml
cli-value-paper = PAPER
cli-value-plan = PLAN
cli-value-print = PRINT
cli-value-right-down = RIGHT, DOWN
cli-value-units = UNITS
cli-value-yyyy-mm-dd = YYYY-MM-DD
cli-values = [{ $values }]
cli-default = [usual: { $value }]

# A call that is wrong.
usage-unknown-argument = there is nothing called { $argument } here
usage-unknown-command = there is no command { $argument }
usage-wrong-value = { $argument } cannot be “{ $value }”
usage-no-value = { $argument } needs a value
usage-missing = this is missing: { $argument }
usage-conflict = { $argument } and { $other } cannot go together
usage-twice = { $argument } is there twice
usage-answers = --answers goes only with the questions: alone, or with ask
usage-other = this call cannot be understood: { $argument }
usage-allowed = It can be { $allowed }.
usage-nearest = Did you mean { $nearest }?
usage-help = “tallywatt --help” tells what there is.
usage-no-language = there is no language “{ $tag }” here

cli-demo = Make every print for a made-up weekend, with no question asked
cli-demo-fixed = The same weekend with its dangers cleared
cli-demo-into = The folder to write into, if not tallywatt-demo

cli-check = Check plans and say what is wrong, worst first
cli-check-plans = Plan files; "-" reads one from standard input
cli-check-format = "text" for people; "json" for programs, one report a plan

cli-print = Print the labels, the card, the cautions and the worksheet of a plan
cli-print-plan = The plan file; "-" reads it from standard input
cli-print-into = The folder to write into
cli-print-paper = The paper in the printer
cli-print-stock = The label sheet by name, such as letter-30 or roll-24 (a wrong name lists them all), or a file of your own that ends in .toml
cli-print-start-at = The first label position to use on a part-used sheet
cli-print-copies = How many of each label
cli-print-offset = Move the labels right and down on their sheet, at most 10 mm, for a printer that feeds askew: "1 mm, -0.5 mm"
cli-print-alignment = Also print a page with rulers that shows where the labels fall, to hold against a label sheet
cli-print-only = Only this print; may be given more than once
cli-print-card = The card's size: a sheet for each side; half a sheet (A5, half letter) or pocket size, to fold
cli-print-ink = "black" prints black on white, without colours and greys
cli-print-date = The date to print on every sheet, which also makes the files PDF/A-2a; left out, none is printed
cli-print-png = Also write a picture of each page, and contact.png with all of them
cli-print-templates = A folder with templates of your own; "tallywatt templates" writes those to start from

cli-may = Ask before plugging in: may these be switched on, in what order, and what does a meter show
cli-may-plan = The plan file; "-" reads it from standard input
cli-may-loads = What is to be switched on: ids or names, in quotation marks if they have spaces
cli-may-while = What runs already
cli-may-format = "text" for people; "json" for programs

cli-mend = Find the least trouble that clears every danger and lets all that must run, run
cli-mend-plan = The plan file; "-" reads it from standard input
cli-mend-into = Write the changed plan to this new file; a file that is there is left alone
cli-mend-warnings = Clear the warnings too, as far as changes can
cli-mend-format = "text" for people; "json" for programs: the report, with the repairs

cli-templates = Write the templates of the prints into a folder, to change them and print with your own
cli-templates-into = The folder to write into; a file that is there is left alone

cli-explain = Explain a rule: what it checks, why it hurts, the arithmetic, what to do
cli-explain-code = The rule's code, as in AIR001; left out, all rules are listed

cli-words = For translators: print every message beside its translations, as a page for a browser
cli-words-languages = Language folders; left out, all of them
cli-words-check = Say what is wrong with them instead
cli-words-from = Read the language folders in this folder instead of those in the program

failure-lead = tallywatt:
failure-hint = Hint:
failure-read = cannot read { $path }
failure-no-rule = there is no rule { $code }
failure-no-rule-hint = "tallywatt explain" lists them all.
explain-language = The pages of the rules are in English only. The check and the prints speak your language.
failure-json = cannot write the report as JSON
failure-worse-than-nothing = the plan cannot be checked before these are mended

check-plan = { $name }
# Safety.
check-none = No rule has anything to say about this plan. That is not proof that nothing is wrong: local codes and a licensed electrician decide.
check-dangers = Clear these before the engine starts:
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
check-label-also = Also
trouble-also = { $title } ({ $code })
trouble-assumed = { $title } (we do not know)
trouble-assumed-why = In the worst case: { $why }
trouble-look = If you find better, write it in the plan: then this changes.
check-label-by = By
check-more = "tallywatt explain CODE" tells more about any of these.
check-limits = What each receptacle can carry
check-limit-two = { $long } for hours, set by { $long_by }. { $short } for a short time, set by { $short_by }.
# Safety.
check-limit-refused = DO NOT USE. See { $code }.
check-limit-guarded = Only a cord with a GFCI built in. See { $code }.
check-limit-behind = DO NOT USE what hangs on { $id }. See { $code }.
check-limit-one = { $long }. Set by { $short_by }.
check-limit-same = { $long } for hours, { $short } for a short time. Set by { $short_by }.
check-limit-share = 80 % of { $id } ({ $reason })
check-limit-share-own = 80 % of { $reason }
check-limit-by = { $id } ({ $reason })
check-limit-only = Nothing goes here but { $parts }. { $limit }
check-limit-bonding-plug = Nothing goes here but the bonding plug.
check-assumed = Taken for the unsafe case, because nobody knows
# Safety.
check-defer = Local codes and a licensed electrician decide. This tool does not.

reason-rated-power = what the set can give
# Safety.
reason-rated-power-unguarded = what the set can give; it may not cut out by itself
reason-one-leg = half of the set, one leg
reason-one-leg-unguarded = half of the set, one leg; it may not cut out by itself
reason-breaker = its breaker
reason-trips-early = a breaker seen to trip early
reason-receptacle = the receptacle's own rating
reason-plug = the plug's rating
reason-cord-ampacity = the cord's wire; no breaker watches it
reason-cord-mark = the usual mark of a cord this thin and long; read its tag, the smaller counts
reason-coiled-cord = the cord is coiled; no breaker watches it
reason-parallel-kit = the kit between the sets
reason-hot-cord = the cord in air this hot; no breaker watches it
reason-wiring = the box's wiring
reason-not-fed = not the volts of its shape; treat it as live

demo-wrote = Written to { $dir }:
demo-file-labels = one label for each receptacle, cord, box and the set
demo-file-card = the card to laminate, two sides
demo-file-cautions = the tick list, worst first
demo-file-worksheet = every number, for an electrician
demo-file-report = the report for other programs
demo-file-plan = the plan itself: change it and run "tallywatt print"
demo-most = What matters most:
demo-other = "tallywatt demo --fixed" makes the same weekend with its dangers cleared.

summary-worst = { $signal }: { $title }. { $dangers ->
        [0] No dangers.
        [one] It is the only danger.
       *[other] { $dangers } dangers in all.
    }
summary-calm = No rule found a danger or a warning. Local codes still decide.
summary-usable = The set can give { $rated } there, and the outlets in use reach all of it.
summary-stranded = The set can give { $rated } there, but the outlets in use reach only { $reachable }.
# Safety.
summary-never = Never at the same time: { $sets }.
summary-never-more = { $sets }; and { $more } more on the card
summary-together = Everything on the list may run at the same time.
summary-no-place = No place in this plan for { $names }.

print-wrote = Written to { $dir }:
print-card-sheets = The card takes { $count } sheets: one is too small for this plan. Each says which it is. Keep them together.
print-card-sheets-half = { print-card-sheets } A larger card may need fewer: "--card sheet".
print-card-sheets-pocket = { print-card-sheets } A larger card may need fewer: "--card half" or "--card sheet".

templates-exist = { $path } is there already. Nothing was written.
templates-how = Change what you like. Then print with "tallywatt print PLAN --into DIR --templates { $dir }". A template that is not in the folder is the one of the program.
templates-none = there are no templates in { $path }
templates-none-hint = "tallywatt templates --into DIR" writes those to start from.
