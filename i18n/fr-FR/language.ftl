# French of Europe: only what differs from ../fr.

language-name = français (Europe)
language-state = complete
language-regions = FR BE CH LU MC
