### Safety. What the rules take for an answer nobody gave.

assumed-too-near = too near
assumed-covered = in or under something
assumed-floating = floating
assumed-loud = louder than many camps allow
assumed-quarter = a quarter of full load

assume-ground = Nobody knows how wet the ground is, so { $value } was taken. Feel the ground where people stand, in the evening too.
assume-sleepers = We do not know how far off people are, so we assumed that they are { $value }. Measure from the exhaust to the nearest tent, vehicle, door or window.
assume-people-sleep = We do not know if anyone sleeps here, so we assumed { $value }. Ask everyone, your neighbours too.
assume-stands = Nobody said what is over and round the generator, so it was taken to be { $value }. Stand it in the open, or under a roof with no walls.
assume-co-alarm = Nobody knows if everyone sleeps with a carbon monoxide alarm, so { $value } was taken. Look in every tent and camper, and press the test button.
assume-building = Nobody knows if the set is to feed a building, so { $value } was taken. Ask everyone before you start the set.
assume-neutral = Nobody knows if the set's neutral is joined to its frame, so { $value } was taken for the tests. Look in the manual for “floating” or “bonded neutral”.
assume-cord-outdoor = Nobody knows if “{ $part }” is for outdoors, so { $value } was taken. A jacket for outdoors has a “W” in its type letters or says so.
assume-box-bond = Nobody knows the inside of “{ $part }”, so it was taken that neutral and ground are joined there. Do not open it. Ask a licensed electrician.
assume-box-listed = Nobody knows if “{ $part }” is factory made and listed, so { $value } was taken. Look for a testing laboratory's mark on it.
assume-bonding-plug = Nobody knows if a bonding plug is in the generator, so { $value } was taken where that is worse. It is a plug without a cord, in an outlet of the set.
assume-noise-load = We do not know at what load the noise was measured, so we assumed { $value }.
assume-backup = Nobody said if “{ $part }” has a battery for the whole night, so { $value } was taken.
assume-parallel-kit = Nobody knows if the kit between the sets is the maker's for exactly these sets, so { $value } was taken. Its manual names the sets it is for.
assume-noise-full-load = We do not know how much louder the generator gets with more load, so we added { $value } for the busiest minute. Makers measure at part load, where it is quieter.
assume-noise = Nobody knows how loud the generator is, so it was taken to be { $value }. Look for “dB” in its manual, with a distance.
assume-noise-not-told = Nobody said how loud the generator is, so it was taken to be { $value }. Ask your host before you run it. Its manual says “dB”, with a distance.
assume-runtime = We do not know how long one tank lasts, so we assumed { $value }, as in a small generator at full load. Look for the running time in the manual.
assume-quiet-hours = We do not know when the camp must be quiet, so we assumed { $value }, and that people sleep then. Ask your host.
assume-night = We do not know when people sleep, so we assumed { $value }.
assume-bonding-plug-in = We do not know which outlet the bonding plug is in, so we assumed the worst: { $value }. Look for a plug with no cord in the generator’s outlets.
assume-single-socket = We do not know how many plugs “{ $part }” takes, so we assumed { $value }. Then its breaker is too big for it. If it takes two, write sockets = 2 in the plan.
