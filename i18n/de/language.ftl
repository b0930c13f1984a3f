# What this folder is. See ../README.md.

language-name = Deutsch
language-state = complete
language-stands-for = de-DE
language-never-say = sicher sichere sicherer sicheres sicheren sicherem gefahrlos harmlos ungefährlich unbedenklich
