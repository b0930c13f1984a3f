### Safety. Rules on health.

HEALTH001 = { $fix ->
    [charged] Someone's health depends on a battery and this generator: { $about }
   *[other] Someone's health depends on this one generator: { $about }
  }
    .why = A generator can stop at any time: it runs dry, it trips, or someone turns it off. A person asleep may not notice in time.
    .fix-battery = Bring a battery made for the device that lasts all night. Ask the doctor or supplier how long it may be off, and if it may run from a generator at all.
    .fix-charged = Charge its battery before night. Try once, by day, that it takes over when you pull the plug. Keep the doctor's or supplier's number at hand.
