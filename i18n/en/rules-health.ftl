### Safety. Rules on health.

HEALTH001 = Someone's health depends on this one generator: { $about }
    .why = A generator can stop at any time: it runs dry, it trips, or someone turns it off. A person asleep may not notice in time.
    .fix-battery = Bring a battery made for the device that lasts all night. Ask the doctor or supplier how long it may be off, and if it may run from a generator at all.
