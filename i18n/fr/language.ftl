# What this folder is. See ../README.md.

language-name = français
language-state = draft
# The rules are North American, so French without a region is that of Canada.
language-stands-for = fr-CA
language-never-say = sûr sûre sûrs sûres sécuritaire sécuritaires inoffensif inoffensive inoffensifs inoffensives
