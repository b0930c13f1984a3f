# What this folder is. See ../README.md.

language-name = español
language-state = complete
# The rules are North American, so Spanish without a region is that of North America.
language-stands-for = es-US
language-never-say = seguro segura seguros seguras inofensivo inofensiva inofensivos inofensivas inocuo inocua
