# For those who translate: "tallywatt words".

words-no-folder = There is no language folder “{ $tag }”.
words-missing = { $count ->
        [one] 1 message is missing
       *[other] { $count } messages are missing
    }
words-offered = { $tag }: in order, and offered to readers.
words-can-be-offered = { $tag }: in order. To offer it, set language-state to complete.
words-not-done = { $tag }: not done yet.

# $what is the part of the message, $model what it is held against.
words-problem-no-folder = there is no such folder
words-problem-junk = this cannot be read as a message: { $what }
words-problem-twice = it is there twice
words-problem-unused = nothing uses it here { $model }{ $what }
words-problem-missing = it is missing
words-problem-unknown-value = there is no value ${ $what } here
words-problem-lost-value = the value ${ $what } is not shown
words-problem-no-plural = it does not choose by the number ${ $what }
words-problem-no-case = the choice by ${ $what } lacks the case [{ $model }]
words-problem-unknown-case = the choice by ${ $what } has a case [{ $model }] that never comes
words-problem-unknown-term = there is no term -{ $what }
words-problem-fault = it cannot be put together: { $what }
words-problem-numbers = its numbers are ({ $what }) and should be ({ $model })
words-problem-never-say = it must not say “{ $what }”
words-problem-untranslated = it is still in English
words-problem-too-wide = it takes { $what } columns of { $model }
words-problem-bad-sign = it has the sign { $what }, which cannot be printed
words-problem-plain-space = a plain space stands in “{ $what }”: use a no-break space (U+00A0) between number and unit
words-problem-heading = the heading is “{ $what }” and should be “{ $model }”
words-problem-codes = it names ({ $what }) and should name ({ $model })

words-sheet-title = Messages side by side
words-sheet-how =
    We fill in the values in curly brackets. Keep them as they are, and move them where the language wants them. A choice has a line for each case. The one with a star is for all other cases.
    A hyphen and a name in curly brackets is a term of the trade from the language’s file terms.ftl. Correct it there, once.
    A double line at the left marks sentences that someone’s safety depends on. When you have read one and find it right, say so, with your name and the day.
words-sheet-state = { $tag } ({ $name }): { $reviewed } of { $safety } safety sentences reviewed by a native speaker of the trade.
words-sheet-about = About
words-sheet-safety = Safety
words-sheet-missing = not translated yet
words-sheet-reviewed = reviewed: { $who }
words-sheet-not-reviewed = not reviewed yet
