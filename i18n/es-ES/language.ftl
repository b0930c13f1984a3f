# Spanish of Spain: only what differs from ../es.

language-name = español (España)
language-state = draft
language-regions = ES AD GI GQ EA IC
