### Safety. Rules on air. Each message is a finding's title; .why gives the numbers, .fix-* what to do.

AIR001 = { $fix ->
    [measure] Nobody has measured how far people are from the exhaust
   *[other] People are { $distance } from the generator's exhaust
  }
    .why = Keep at least { $least }; { $ample } is better. Exhaust holds carbon monoxide. You cannot see or smell it, and people asleep do not wake up. Neighbours' tents, campers and cars count too.
    .fix-move = Stop the engine. Move it at least { $ample } from every tent, vehicle, door and window. Point the exhaust away from people. Never run it in a tent, porch, garage or vehicle, or under an awning.
    .fix-closed = If it runs in something closed: everyone out, nobody goes in to stop it, call { $call }. Stand it outdoors, at least { $ample } from every tent, vehicle, door and window. Point the exhaust away from people.
    .fix-farther = Move it out to { $ample } or more, and point the exhaust away from people. Wind can carry exhaust over a bare { $least }.
    .fix-measure = Measure from the exhaust to the nearest tent, vehicle, door or window, neighbours' too. If it is under { $ample }, move the generator before you start it.

AIR002 = { $fix ->
    [look] Nobody knows if everyone sleeps with a carbon monoxide alarm
   *[other] Not everyone sleeps with a carbon monoxide alarm
  }
    .why = Exhaust can drift when the wind turns. You cannot smell it, and people asleep do not wake up. Only an alarm wakes them. A smoke alarm does not.
    .fix-alarm = Put a battery carbon monoxide alarm in every tent and camper where people sleep. Press its test button each evening. If it sounds, or anyone is dizzy, sick, weak or has a headache: everybody out into open air, and call { $call }. Stop the engine only if you can do it without breathing its exhaust.
    .fix-look = Look in every tent and camper before you start the engine. Each needs a battery carbon monoxide alarm whose test button works. If it sounds, or anyone is dizzy, sick, weak or has a headache: everybody out into open air, and call { $call }. Stop the engine only if you can do it without breathing its exhaust.

AIR003 = { $fix ->
    [out] The generator runs in a closed place
    [uncover] The generator is covered, or stands close to something
    [look] Nobody knows what is over and round the generator
   *[other] Nobody said what is over and round the generator
  }
    .why = { $fix ->
        [out] Exhaust gathers in a tent, porch, vehicle or shed, even with the door open. It kills without a smell. A tarp on the set melts and burns.
        [uncover] Exhaust gathers in a tent, porch, vehicle or shed, even with the door open. It kills without a smell. A tarp on the set melts and burns.
       *[other] So the worst was taken. If it is in a tent, porch, vehicle or shed, exhaust gathers there, even with the door open. It kills without a smell. A tarp on it melts and burns.
      }
    .fix-out = If it runs in there now: everyone out, and nobody goes in, not even to stop it. Call { $call } from outside. Run it only in the open, with { $clear } clear all round.
    .fix-uncover = Stop the engine. Take the tarp or cover off. Move it away from awnings and walls: { $clear } clear all round. A roof must be well above it and open on all sides.
    .fix-look = Go and look before you start it. It must stand in the open, or under a roof without walls, with { $clear } clear all round.
    .fix-choose = Stand it in the open, or under a roof without walls, with { $clear } clear all round. Then put that in the plan.

AIR004 = Nothing keeps the rain off the generator
    .why = Water in its outlets can shock whoever touches it. People then carry it into a tent or porch, and the exhaust kills them.
    .fix-roof = If it rains: stop it, or stand it on a dry, level place under a canopy or a tarp on high poles, open on all sides. Never a tarp on the set. Keep boxes, cord ends and plugs off wet ground and under cover too. Dry your hands before you touch any of it.

AIR005 = { $fix ->
    [bedside] The cord to { $about } is too short
    [at-set] { $about } is plugged in at the generator itself
    [stated] The cord to { $about } does not reach where people are
    [measure] Nobody knows if the cords reach far enough
    [no-cord] Nothing here is on a cord
   *[longer] The cords are too short to keep the generator away
  }
    .why = { $fix ->
        [bedside] It is known to reach { $reach }. The generator must stand { $needed } from whoever needs it. So somebody will pull it closer, and exhaust kills.
        [at-set] The generator must stand { $needed } from whoever needs it. Without a cord somebody will bring it closer, and exhaust kills.
        [stated] It reaches { $reach }. The plan says that people are { $needed } from the generator. So somebody will pull it closer than that.
        [measure] They are known to reach { $reach }. The generator must stand { $needed } from every tent, vehicle, door and window. If they are shorter, somebody will pull it closer.
        [no-cord] The generator must stand { $needed } from every tent, vehicle, door and window. Without a cord, whoever needs power there brings it closer.
       *[longer] They reach { $reach }. The generator must stand { $needed } from every tent, vehicle, door and window. So somebody will pull it closer.
      }
    .fix-longer = Bring one cord that is long enough, and thick enough for what hangs on it. Never move the generator closer instead.
    .fix-no-cord = Plug these in at the generator, then step away from its exhaust, upwind. Or bring one cord that is long enough, and thick enough. Never move the generator closer instead.
    .fix-measure = Pace the cords out and put their lengths in the plan. Never move the generator closer instead.
    .fix-bedside = Bring one cord that is long enough, and thick enough, or a battery made for the device. Never move the generator closer instead.
    .fix-at-set = Give it a place at the end of a cord that is long enough, and thick enough. If all ends are taken, bring one more cord, or a battery made for the device. Never move the generator closer instead.
    .fix-stated = Measure again from the exhaust to where people are, and put that in the plan. Or bring a longer cord that is thick enough.

AIR006 = { $fix ->
    [when] The generator may run while people sleep: { $about }
   *[other] The generator runs while people sleep: { $about }
  }
    .why = People sleep from { $from } to { $to } ({ $night }), and exhaust does not wake them. Then it needs open air, { $ample } or more to people, and a working alarm where they sleep.
    .fix-by-day = Charge a battery by day, and run this from it at night: { $about }. Stop the engine before anyone goes to sleep.
    .fix-life-by-day = Bring a battery made for { $life } that lasts all night, and charge it by day. Ask the doctor or supplier first. Then stop the engine before anyone goes to sleep.
    .fix-when = Say in the plan when this runs, and keep it out of the night. Or run it at night from a battery charged by day.

night-told = by the quiet hours
night-assumed = we do not know when, so we assumed this
