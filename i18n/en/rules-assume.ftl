### Safety. What the rules assume for an answer that is not there.

assumed-too-near = too close
assumed-covered = inside or under something
assumed-floating = floating
assumed-loud = louder than many camps allow
assumed-quarter = a quarter of full load

assume-ground = We do not know how wet the ground is, so we assumed { $value }. Feel the ground where people stand, in the evening too.
assume-sleepers = We do not know how far away people are, so we assumed that they are { $value }. Measure from the exhaust to the nearest tent, vehicle, door or window.
assume-people-sleep = We do not know if anyone sleeps here, so we assumed { $value }. Ask everyone, your neighbors too.
assume-stands = We do not know what is over and around the generator, so we assumed that it is { $value }. Put it in the open, or under a high roof open on all sides.
assume-co-alarm = We do not know if everyone sleeps with a carbon monoxide alarm, so we assumed { $value }. Look in every tent and camper, and press the test button.
assume-building = We do not know if the generator will feed a building, so we assumed { $value }. Before you start it, ask everyone in camp if it is hooked up to a building.
assume-neutral = We do not know if the generator’s neutral is joined to its frame. For the tests we assumed { $value }, and the worse of the two for shocks. Look in the manual for “floating” or “bonded neutral”.
assume-cord-outdoor = We do not know if “{ $part }” is for outdoors, so we assumed { $value }. An outdoor cord has a “W” in the letters printed on it, or says so.
assume-box-bond = We do not know how “{ $part }” is wired, so we assumed that neutral and ground are joined inside. Do not open it. Ask a licensed electrician.
assume-box-listed = We do not know if “{ $part }” is factory made and listed, so we assumed { $value }. Look on it for the mark of a testing lab.
assume-bonding-plug = We do not know if a bonding plug is in the generator, so we assumed { $value } wherever that is worse. It is a plug with no cord, in an outlet of the generator.
assume-noise-load = We do not know at what load the noise was measured, so we assumed { $value }.
assume-backup = We do not know if “{ $part }” has a battery for the whole night, so we assumed { $value }.
assume-parallel-kit = We do not know if the maker sells this kit for exactly these generators, so we assumed { $value }. The manual of the kit names the generators it is for.
assume-noise-full-load = We do not know how much louder it gets with more load, so we added { $value } for the busiest minute. Makers measure at part load, where it is quieter.
assume-noise = We do not know how loud the generator is, so we assumed { $value }. Look for “dB” in its manual, with a distance.
assume-noise-not-told = We do not know how loud the generator is, so we assumed { $value }. Ask your host before you run it. Its manual says “dB”, with a distance.
assume-runtime = We do not know how long a tank lasts, so we assumed { $value }, as in a small generator at full load. Look in the manual for the running time.
assume-quiet-hours = We do not know when the camp must be quiet, so we assumed { $value }, and that people sleep then. Ask your host.
assume-night = We do not know when people sleep, so we assumed { $value }.
assume-bonding-plug-in = We do not know which outlet the bonding plug is in, so we assumed the worst: { $value }. Look for a plug with no cord in the generator’s outlets.
assume-single-socket = We do not know how many plugs “{ $part }” takes, so we assumed { $value }. Then its breaker is too big for it. If it takes two, write sockets = 2 in the plan.
