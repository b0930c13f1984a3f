# Rules on air. Each message is a finding's title; .why gives the numbers, .fix-* what to do.

AIR001 = { $fix ->
    [measure] Nobody has measured how far people sleep from the exhaust
   *[other] People are { $distance } from the generator's exhaust
  }
    .why = Keep at least { $least }; { $ample } is better. Exhaust holds carbon monoxide. You cannot see or smell it, and people asleep do not wake up. Neighbours' tents, campers and cars count too.
    .fix-move = Stop the engine. Move it at least { $ample } from every tent, vehicle, door and window. Point the exhaust away from people. Never run it in a tent, porch, garage or vehicle, or under an awning.
    .fix-farther = Move it out to { $ample } or more, and point the exhaust away from people. Wind can carry exhaust over a bare { $least }.
    .fix-measure = Measure from the exhaust to the nearest tent, vehicle, door or window, neighbours' too. If it is under { $ample }, move the generator before you start it.

AIR002 = Not everyone sleeps with a carbon monoxide alarm
    .why = Exhaust can drift when the wind turns. You cannot smell it, and people asleep do not wake up. Only an alarm wakes them. A smoke alarm does not.
    .fix-alarm = Put a battery carbon monoxide alarm in every tent and camper where people sleep. Press its test button each evening. If it sounds: everybody out, engine off, call for help.
