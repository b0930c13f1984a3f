### Safety. Rules on health.

HEALTH001 = { $fix ->
    [charged] Someone’s health depends on this battery and generator: { $about }
    [find-out] Someone’s health might depend on this: { $about }
   *[other] Someone’s health depends on this one generator: { $about }
  }
    .why = A generator can stop at any time: it runs out of fuel, a breaker trips, someone turns it off. A sleeping person might not notice until it is too late.
    .fix-battery = Bring a battery that is made for the device and lasts all night. Ask the doctor or supplier how long the device can be off, and if a generator and extension cord can run it. If oxygen is used: no smoking, and keep flames and heaters { $flames } or more from it.
    .fix-charged = Charge the device’s battery before night. Unplug the device once during the day: its battery must keep it running. If oxygen is used: no smoking, and keep flames and heaters { $flames } or more from it.
    .fix-find-out = Ask its owner what it does. If someone’s health depends on it, bring a battery that is made for it and lasts all night. If oxygen is used: no smoking, and keep flames and heaters { $flames } or more from it.

HEALTH002 = { $fix ->
    [when] Heat might be on while people sleep: { $about }
   *[other] Heat is on while people sleep: { $about }
  }
    .why = From { $from } to { $to } ({ $night }) nobody watches it, and cloth burns fast. Fire departments say: turn heaters off before you sleep.
    .fix-off = First warm the tent or the bed, then unplug what makes heat. Leave an electric blanket on only if its instructions say you may sleep with it on.
    .fix-cook = Cook before anyone goes to sleep. Then switch it off and unplug it.
    .fix-when = { night-decide } Switch it off and unplug it before anyone goes to sleep.
