# What this folder is. Programs read these lines; nobody is shown them but the name.

language-name = English
# "draft" until the last message is done: a draft is checked, and not offered to anyone.
language-state = complete
# The whole tag that the bare one stands for. Its region decides the marks of numbers and the units.
language-stands-for = en-US
# Words that no message may have, whole words in small letters: nothing printed here may promise
# that something cannot hurt.
language-never-say = safe safely safest harmless
