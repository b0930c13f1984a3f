# Spanish of Spain: only what differs from ../es.

language-name = español (España)
language-state = complete
language-regions = ES AD GI GQ EA IC
