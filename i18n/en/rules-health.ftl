### Safety. Rules on health.

HEALTH001 = { $fix ->
    [charged] Someone's health depends on a battery and this generator: { $about }
    [find-out] Nobody knows if someone's health depends on it: { $about }
   *[other] Someone's health depends on this one generator: { $about }
  }
    .why = A generator can stop at any time: it runs dry, it trips, or someone turns it off. A person asleep may not notice in time.
    .fix-battery = Bring a battery made for the device that lasts all night. Ask the doctor or supplier how long it may be off, and if it may run from a generator and an extension cord at all. Oxygen: no smoking, flame or heater within { $flames }.
    .fix-charged = Charge its battery before night. Try once, by day, that it takes over when you pull the plug. Oxygen: no smoking, flame or heater within { $flames }.
    .fix-find-out = Ask its owner what it does, and put its kind in the plan. If someone's health depends on it, bring a battery made for it that lasts all night. Oxygen: no smoking, flame or heater within { $flames }.

HEALTH002 = { $fix ->
    [when] This makes heat, and may run while people sleep: { $about }
   *[other] This makes heat, and runs while people sleep: { $about }
  }
    .why = From { $from } to { $to } ({ $night }) nobody watches it. Bedding slides onto it, or a pot boils dry, and cloth burns fast. Fire services say: heaters off before you sleep.
    .fix-off = Warm the tent or the bed first, then switch off and unplug. Only a blanket whose maker allows it all night may stay on, as its instructions say.
    .fix-cook = Cook before anyone goes to sleep. Then switch it off and unplug it.
    .fix-when = Decide when it runs, not at night, and say so in the plan. Switch it off and unplug it before you sleep.
