### Safety. Rules on air. Each message is a finding's title; .why gives the numbers, .fix-* what to do.

AIR001 = { $fix ->
    [measure] We do not know how close people are
   *[other] Exhaust is only { $distance } from people
  }
    .why = Carbon monoxide has no smell, and kills people in their sleep. Exhaust closer than { $ample } to people (neighbors too) can kill, and less than { $least } is the most dangerous.
    .fix-move = Stop the engine. Once it is cool, move the generator at least { $ample } from every tent, vehicle, door and window. Point the exhaust away from people.
    .fix-closed = If the generator is in a closed place, get everyone out, and call { $call }: only firefighters go in. If it is in the open, stop it yourself. Once it is cold, move it at least { $ample } from every tent, vehicle, door and window.
    .fix-farther = Stop the engine. Once it is cool, move the generator out to { $ample } or more, and point the exhaust away from people. Wind can carry exhaust farther than { $least }.
    .fix-measure = Measure from the exhaust to the nearest tent, vehicle, door or window, neighbors’ too. If it is under { $ample }, move the generator before you start it.

AIR002 = { $fix ->
    [look] Someone might sleep without a carbon monoxide alarm
   *[other] Someone sleeps without a carbon monoxide alarm
  }
    .why = The wind can turn and blow exhaust at you. Only a carbon monoxide alarm will wake you: a smoke alarm will not.
    .fix-alarm = Put a carbon monoxide alarm that runs on a battery in each tent and camper where people sleep. Press its test button each night: it must beep. If it sounds later, or anyone is dizzy, sick, weak or has a headache, get everyone outside and call { $call }.
    .fix-look = Look in every tent and camper for a carbon monoxide alarm that runs on a battery. Press its test button: it must beep. If it sounds later, or anyone is dizzy, sick, weak or has a headache, get everyone outside and call { $call }.

AIR003 = { $fix ->
    [out] The generator runs in a closed place
    [uncover] The generator is under or against something
    [look] The generator might be closed in or covered
   *[other] You did not say where the generator stands
  }
    .why = { $fix ->
        [out] Exhaust builds up in a tent, porch, vehicle or shed, even with the door open. It has carbon monoxide in it: you cannot smell that, and it kills.
        [uncover] Covers and walls hold exhaust in, and the carbon monoxide in it kills. A tarp on the generator can melt and catch fire.
       *[other] We do not know, so we assumed the worst. Exhaust builds up in a tent, porch, vehicle or shed, even with the door open, and kills.
      }
    .fix-out = If the generator runs in a closed place now, get everyone out, and call { $call }. Only firefighters go in to stop it. Never run it in a tent, porch or vehicle: only in the open, with { $clear } clear on all sides.
    .fix-uncover = Stop the engine, and take off any tarp or cover. Move the generator away from awnings, canopies and walls, { $clear } clear on all sides. A roof over it must be high, and open on all sides.
    .fix-look = Go and look before you start it. Put it in the open, or under a high roof open on all sides, with { $clear } clear around it. A canopy or an awning is not a high roof.
    .fix-choose = Put it in the open, or under a high roof open on all sides, with { $clear } clear around it. A canopy or an awning is not a high roof. Then put that in the plan.

AIR004 = Nothing keeps the rain off the generator
    .why = Water in its outlets can shock you. If you move it into a tent or onto a porch, the exhaust kills.
    .fix-roof = If it rains, stop the engine, and set it up again only under a high roof, open on all sides. Never put a tarp on it or just above it.

AIR005 = { $fix ->
    [bedside] The cord to { $about } is too short
    [at-set] { $about } is plugged in at the generator itself
    [stated] The cord to { $about } does not reach people
    [measure] We do not know if the cords reach
    [no-cord] Plugged in at the generator itself: { $about }
   *[longer] The cords are too short
  }
    .why = { $fix ->
        [bedside] As far as we know it reaches { $reach }, but the generator must stand { $needed } from the person. Someone will pull it closer, and exhaust kills.
        [at-set] Keep the generator { $needed } from the person who needs it. Without a cord, someone will move the generator closer.
        [stated] It reaches { $reach }, but the plan says that people are { $needed } away. Someone will pull the generator closer.
        [measure] As far as we know they reach { $reach }, but the generator must stand { $needed } from people. If they are shorter, someone will pull it closer.
        [no-cord] Keep the generator at least { $needed } from people. Without a cord, someone will move the generator closer.
       *[longer] They reach { $reach }, but the generator must stand { $needed } from people. Someone will pull it closer, and exhaust kills.
      }
    .fix-longer = Bring one cord that is long enough, and thick enough for what is plugged into it. Never move the generator closer instead.
    .fix-no-cord = { $open ->
        [no] Bring one GFCI cord (TEST and RESET buttons) that is long and thick enough.
       *[other] Plug these in at the generator, then step away, to the side the wind comes from. Or bring one cord that is long and thick enough.
      } Never move the generator closer instead.
    .fix-measure = Pace off the cords, and put their lengths in the plan. Never move the generator closer instead.
    .fix-bedside = Bring one cord that is long and thick enough, or a battery made for the device. Never move the generator closer instead.
    .fix-at-set = Plug it into a cord that is long and thick enough, or bring a battery made for the device. Never move the generator closer instead.
    .fix-stated = Measure again from the exhaust to people, and put that in the plan. Or bring a longer cord that is thick enough.

AIR006 = { $fix ->
    [when] The generator might run while people sleep: { $about }
   *[other] The generator runs while people sleep: { $about }
  }
    .why = People sleep from { $from } to { $to } ({ $night }), and exhaust will not wake them. If it must run then, keep it in the open, { $ample } or more from people who have a working carbon monoxide alarm.
    .fix-by-day = { night-instead } { night-sleep }
    .fix-life-by-day = { night-life } { night-sleep }
    .fix-life-charged = Charge the battery of { $life } during the day. Switch to it, and stop the engine before anyone goes to sleep.
    .fix-when = { night-decide } { night-instead }

night-told = the quiet hours
night-assumed = we do not know the hours, so we assumed these
