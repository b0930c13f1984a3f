# What this folder is. See ../README.md.

language-name = français
language-state = complete
# The rules are North American, so French without a region is that of Canada.
language-stands-for = fr-CA
language-never-say = sûr sûre sûrs sûres sécuritaire sécuritaires sécurisé sécurisée sécurisés sécurisées inoffensif inoffensive inoffensifs inoffensives
