# What the rules take for an answer nobody gave.

assumed-too-near = too near
assumed-floating = floating

assume-ground = { $field }: not known, so { $value } was taken. Feel the ground where people stand, in the evening too.
assume-sleepers = { $field }: not known, so it was taken for { $value }. Measure from the exhaust to the nearest tent, vehicle, door or window.
assume-co-alarm = { $field }: not known, so { $value } was taken. Look in every tent and camper, and press the test button.
assume-building = { $field }: not known, so { $value } was taken. Ask everyone before you start the set.
assume-neutral = { $field }: not known, so { $value } was taken for the tests. Look in the manual for "floating" or "bonded neutral".
assume-cord-outdoor = { $field }: not known, so { $value } was taken. A jacket for outdoors has a "W" in its type letters or says so.
assume-box-bond = { $field }: not known, so it was taken that neutral and ground are joined inside. Do not open it: ask a licensed electrician.
