### Safety. Rules on air. Each message is a finding's title; .why gives the numbers, .fix-* what to do.

AIR001 = { $fix ->
    [measure] We do not know how close people are
   *[other] Exhaust is only { $distance } from people
  }
    .why = Keep exhaust at least { $least } from people, neighbors too; { $ample } is better. You cannot see or smell its carbon monoxide, and it kills people in their sleep.
    .fix-move = Stop the engine. Move the generator at least { $ample } from every tent, vehicle, door and window. Point the exhaust away from people.
    .fix-closed = If it runs in a closed place, get everyone out, let nobody go in to stop it, and call { $call }. Once it is off and cold, stand it outdoors, at least { $ample } from every tent, vehicle, door and window. Point the exhaust away from people.
    .fix-farther = Move the generator out to { $ample } or more. Point the exhaust away from people. Wind can carry exhaust farther than { $least }.
    .fix-measure = Measure from the exhaust to the nearest tent, vehicle, door or window, neighbors’ too. If it is under { $ample }, move the generator before you start it.

AIR002 = { $fix ->
    [look] Some sleepers may have no carbon monoxide alarm
   *[other] Not everyone sleeps with a carbon monoxide alarm
  }
    .why = Exhaust drifts when the wind turns, and you cannot smell it. Only a carbon monoxide alarm wakes sleepers; a smoke alarm does not.
    .fix-alarm = Put a battery-powered carbon monoxide alarm in every tent and camper where people sleep, and test it each evening. If it sounds, or anyone is dizzy, sick, weak or has a headache, get everyone into open air and call { $call }. Stop the engine only if you can do it without breathing its exhaust.
    .fix-look = Look in every tent and camper for a battery-powered carbon monoxide alarm, and press its test button. If it sounds, or anyone is dizzy, sick, weak or has a headache, get everyone into open air and call { $call }. Stop the engine only if you can do it without breathing its exhaust.

AIR003 = { $fix ->
    [out] The generator runs in a closed place
    [uncover] The generator is under or against something
    [look] The generator may be closed in or covered
   *[other] You did not say where the generator stands
  }
    .why = { $fix ->
        [out] Exhaust builds up in a tent, porch, vehicle or shed, even with the door open, and kills without a smell. A tarp on the generator can melt and catch fire.
        [uncover] Exhaust builds up in a tent, porch, vehicle or shed, even with the door open, and kills without a smell. A tarp on the generator can melt and catch fire.
       *[other] We do not know, so we assumed the worst: a tent, porch, vehicle or shed fills with exhaust, even with the door open. Exhaust kills without a smell, and a tarp on the generator can melt and catch fire.
      }
    .fix-out = If it runs in there now, get everyone out, let nobody go in to stop it, and call { $call }. Run it only in the open, with { $clear } clear on all sides.
    .fix-uncover = Stop the engine, and take the tarp or cover off. Move it away from awnings and walls, with { $clear } clear on all sides. A roof must be well above it and open on all sides.
    .fix-look = Go and look before you start it. Stand it in the open, or under a roof without walls, with { $clear } clear on all sides.
    .fix-choose = Stand it in the open, or under a roof without walls, with { $clear } clear on all sides. Then put that in the plan.

AIR004 = Nothing keeps the rain off the generator
    .why = Water in its outlets can shock anyone who touches it. Then people move it into a tent or onto a porch, and the exhaust kills them.
    .fix-roof = If it rains, stop it, or stand it dry and level under a canopy or high tarp, open on all sides. Never put a tarp on the generator itself. Keep boxes, plugs and cord ends under cover and off wet ground, and touch them only with dry hands.

AIR005 = { $fix ->
    [bedside] The cord to { $about } is too short
    [at-set] { $about } is plugged in at the generator itself
    [stated] The cord to { $about } does not reach people
    [measure] We do not know if the cords reach
    [no-cord] Nothing here is on a cord
   *[longer] The cords are too short
  }
    .why = { $fix ->
        [bedside] As far as we know it reaches { $reach }, but the generator must stand { $needed } from the person who needs it. Someone will pull the generator closer, and exhaust kills.
        [at-set] The generator must stand { $needed } from the person who needs it. Without a cord, someone will bring it closer, and exhaust kills.
        [stated] It reaches { $reach }, but the plan says that people are { $needed } from the generator. Someone will pull the generator closer, and exhaust kills.
        [measure] As far as we know they reach { $reach }, but the generator must stand { $needed } from every tent, vehicle, door and window. If they are shorter, someone will pull the generator closer.
        [no-cord] The generator must stand { $needed } from every tent, vehicle, door and window. Without a cord, whoever needs power there brings it closer.
       *[longer] They reach { $reach }, but the generator must stand { $needed } from every tent, vehicle, door and window. Someone will pull the generator closer, and exhaust kills.
      }
    .fix-longer = Bring one cord that is long enough, and thick enough for what is plugged into it. Never move the generator closer instead.
    .fix-no-cord = Plug these in at the generator, then step away from its exhaust, upwind. Or bring one cord that is long and thick enough. Never move the generator closer instead.
    .fix-measure = Pace off the cords, and put their lengths in the plan. Never move the generator closer instead.
    .fix-bedside = Bring one cord that is long and thick enough, or a battery made for the device. Never move the generator closer instead.
    .fix-at-set = Plug it in at the end of a cord that is long and thick enough. If all ends are taken, bring one more cord, or a battery made for the device. Never move the generator closer instead.
    .fix-stated = Measure again from the exhaust to where people are, and put that in the plan. Or bring a longer cord that is thick enough.

AIR006 = { $fix ->
    [when] The generator may run while people sleep: { $about }
   *[other] The generator runs while people sleep: { $about }
  }
    .why = People sleep from { $from } to { $to } ({ $night }), and exhaust does not wake them. At night it needs open air, { $ample } or more to people, and a working alarm where they sleep.
    .fix-by-day = Charge a battery by day, and run this from it at night: { $about }. Stop the engine before anyone goes to sleep.
    .fix-life-by-day = Bring a battery made for { $life } that lasts all night, and charge it by day. Ask the doctor or supplier first. Then stop the engine before anyone goes to sleep.
    .fix-when = Write in the plan when this runs, and keep it out of the night. Or run it at night from a battery charged by day.

night-told = by the quiet hours
night-assumed = we do not know when, so we assumed this
