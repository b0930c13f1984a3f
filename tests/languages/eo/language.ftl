# A language for tests only: as small as a folder can be.

language-name = Esperanto
language-state = draft
language-stands-for = eo
language-never-say = sekura sekuraj sendanĝera
