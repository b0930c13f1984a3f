### Safety. Rules on electric shock.

ground-wet = wet
ground-damp = damp
ground-dry = dry
ground-unknown = unknown to us, so we assumed wet

SHOCK001 = { $fix ->
    [free] No GFCI protects { $any }
    [first] No GFCI protects { $any }
    [named] Plug no appliance into { $any }
   *[other] No GFCI protects { $any }
  }
    .why = On this ground ({ $ground }), a bad cord or appliance can send power through your body, and no breaker cuts it off. A GFCI (TEST and RESET buttons) is made to cut the power at a leak of 6 thousandths of an amp.
    .fix-protect = Use only outlets, cords or boxes with TEST and RESET buttons (GFCI). Before each use, press TEST with a lamp plugged in. If the lamp stays on, do not use that outlet.
    .fix-better = Better: plug in a GFCI cord (TEST and RESET buttons) first, and your things into that cord. Or use an outlet that has these buttons. Before each use, press TEST with a lamp plugged in: the lamp must go out.
    .fix-camper = If you can, use an outlet or a cord with a GFCI. Codes ask for none at a camper outlet, since a camper can trip one with nothing wrong. If it keeps tripping, call a licensed electrician.
    .fix-free = Do not plug an appliance in here. Plug in only a GFCI cord (TEST and RESET buttons), and plug things into that cord.
    .fix-named = Plug in nothing here but { shock-named }. For an appliance, use an outlet or a cord with TEST and RESET buttons (GFCI).
    .fix-first = Unplug { $parts } from { $place }. Plug a GFCI cord (TEST and RESET buttons) into { $place }, and { $parts } into that.

# What alone may be plugged in. $plug: whether the bonding plug is with it, or alone.
shock-named = { $plug ->
    [alone] the bonding plug
    [yes] { $parts } and the bonding plug
   *[no] { $parts }
  }

SHOCK002 = A plug-in tester might mislead you here
    .why = We do not know if the neutral floats (is not joined to ground). If it does, the tester shows “open ground” and its button trips nothing, though the GFCI works.
    .fix-find-out = If you have a GFCI, press its own TEST button. Look in the manual for “floating” or “bonded neutral”. Do not join neutral and ground yourself.

SHOCK003 = { $fix ->
    [ask] This might feed a building’s wiring
   *[other] This would feed a building’s wiring
  }
    .why = Power goes out to the street at thousands of volts, and kills people who repair the lines. A cord with a plug on both ends has live, exposed blades.
    .fix-stop = Do not connect the generator to the building. Plug things into the generator by cords only. A licensed electrician must first install a transfer switch, which cuts the building off from the street.
    .fix-ask = Find out before you start it. If it will feed a building, do not connect it. A licensed electrician must first install a transfer switch, which cuts the building off from the street.

SHOCK004 = { $fix ->
    [plug] The bonding plug joins neutral to ground again
    [sets] Each generator joins neutral to ground
    [find-out] Neutral might be joined to ground in { $bonds } places
    [find-out-box] Neutral might be joined to ground in { $bonds } places
   *[other] { $about } joins neutral to ground in a second place
  }
    .why = { $fix ->
        [find-out] Neutral, the wire that carries power back, might be joined to ground in { $bonds } places: that is too many. Then metal that you touch carries current, and a GFCI can fail to trip.
        [find-out-box] Neutral, the wire that carries power back, might be joined to ground in { $bonds } places: that is too many. Then metal that you touch carries current, and a GFCI can fail to trip.
       *[other] Neutral, the wire that carries power back, is joined to ground in { $bonds } places: that is too many. Metal that you touch carries current, and a GFCI can fail to trip.
      }
    .fix-plug = Take the bonding plug out while the engine is off: this generator is bonded already. Do not join or change anything else.
    .fix-sets = Run the generators apart until their maker says that you may join bonded ones. Do not open or change them.
    .fix-box = Do not use { $any } until a licensed electrician has looked inside. Open nothing yourself.
    .fix-find-out = { $used ->
        [no] Do not use { $any } until you know.{" "}
        [yes] Until you know, count on no GFCI past { $any }.{" "}
       *[none] {""}
      }Look for “bonded” or “floating neutral” in the generator’s manual, and for a plug with no cord in its outlets. Do not open, join or rewire anything yourself.
    .fix-find-out-box = { SHOCK005.fix-unknown }

SHOCK005 = { $fix ->
    [known] Neutral is joined to ground inside { $about }
   *[other] Neutral might be joined to ground inside { $about }
  }
    .why = The neutral wire carries power back; the ground wire should carry none. If a box joins the two inside, metal that you touch can carry power, and a GFCI can fail.
    .fix-known = Do not use { $any } until a licensed electrician has looked inside. Open nothing yourself. Never join neutral and ground.
    .fix-unknown = { $used ->
        [no] Do not use { $any } until you know.
       *[yes] Until you know, count on no GFCI past { $any }.
      } Look for “neutral bonded” or “isolated neutral” in the papers of { $about }, or ask the maker or a licensed electrician. Open nothing yourself.

SHOCK006 = { $fix ->
    [home-made] Homemade box: { $about }
   *[other] We do not know who made this: { $about }
  }
    .why = A homemade box has no test for rain, loose connections, thin wire or a missing ground. You cannot see any of these from outside.
    .fix-home-made = Use a factory-made box with a testing lab’s mark, or have a licensed electrician look at this one. Do not open it.
    .fix-look = Look on the box for a testing lab’s mark. If there is none, have a licensed electrician look at it. Do not open it.

SHOCK007 = { $first } might trip with nothing wrong
    .why = Cords and appliances leak a little: here about { $leak }, and { $least } can trip it (mA: thousandths of an amp). Wet connections leak more. Look at: { $about }.
    .fix-nearer = Use a GFCI nearer to the appliances, with a shorter cord, dry connections and fewer things on it. If it trips, find out why, and never bypass it.

SHOCK008 = { $count } GFCIs, one after another
    .why = They protect no better than one. Any of them might trip, so power might stay off after one RESET. From the generator on: { $about }.
    .fix-reset = If the power goes off, unplug the appliance first. Then press RESET on each, the one nearest the generator first. Press TEST on each to test it.

SHOCK009 = Two broken things together could shock someone
    .why = The neutral floats, or we do not know: the first broken thing gives no sign. A second can put full voltage between two metal cases. Without a GFCI: { $about }.
    .fix-protect = Plug all of them into outlets with TEST and RESET buttons (GFCI). Stop using anything that tingles, is cut or is scorched. Do not join neutral and ground yourself.

SHOCK010 = { $fix ->
    [camper] A bonding plug might be wrong for { $about }
   *[other] Bonding plug in a generator feeding a building
  }
    .why = The plug joins neutral to ground at the generator. { $fix ->
        [camper] If the camper does the same inside, metal that you touch carries current.
       *[other] The building does the same, so metal that you touch carries current.
      }
    .fix-building = Do not connect the generator to the building. A licensed electrician must first install a transfer switch, which cuts the building off from the street. Ask if the bonding plug must come out.
    .fix-camper = Ask the camper’s maker or a licensed electrician before you connect it with the plug in. Do not join neutral and ground yourself.

SHOCK011 = { $fix ->
    [count] We do not know if { $about } has a neutral
   *[other] The neutral wire might be missing in { $about }
  }
    .why = It carries both halves of 120/240 V. Without its neutral, things made for 120 V can get nearly 240 V and burn up, and no breaker trips.
    .fix-leave = Do not use it. Use a cord with four wires, such as 10/4.
    .fix-count = Read the print on the cord: 10/4 has four wires, 10/3 has three. Do not use it until you know.

SHOCK012 = The GFCI does not protect this cord: { $about }
    .why = A GFCI protects only what is past it: not the { $length } of cord between it and the generator. Where that cord is cut or wet, power can pass through your body, and nothing trips in time.
    .fix-dry = Keep its connections dry and off the ground. Do not touch it, plug it in or move it while the engine runs. Never use it cut or crushed.
    .fix-first = Better: a GFCI cord (TEST and RESET buttons) goes in first. Plug it into { $place }, and { $about } into it. Until then, keep its connections dry and off the ground, and do not touch it while the engine runs.

SHOCK013 = { $fix ->
    [plug] The GFCI at “{ $device }” cannot stop a shock
    [plug-alone] A GFCI can cut off the bonding plug
    [plug-first] A GFCI can cut off the bonding plug
    [plug-better] A GFCI can cut off the bonding plug
    [if-any] A GFCI at “{ $device }” might not stop a shock
    [if-none] A GFCI at “{ $device }” might not stop a shock
    [box] The GFCI at “{ $device }” cannot stop a shock
   *[other] The GFCI at “{ $device }” might not stop a shock
  }
    .why = { $fix ->
        [plug] The bonding plug in “{ $joint }” is past that GFCI: its TEST button works, but a shock does not trip it. The ground here is { $ground }.
        [plug-look] We do not know if a bonding plug is in “{ $joint }”, so we assumed it is. Past that GFCI, the plug keeps it from tripping (the ground here is { $ground }).
        [plug-where] We do not know which outlet the bonding plug is in, so we assumed “{ $joint }”. Past that GFCI, the plug keeps it from tripping (the ground here is { $ground }).
        [plug-out] A bonding plug in “{ $joint }” can keep that GFCI from tripping at a shock. The ground here is { $ground }.
        [plug-alone] The bonding plug in “{ $joint }” is past a GFCI. If that GFCI trips, neutral and ground come apart, and you cannot see it.
        [plug-first] The bonding plug in “{ $joint }” is past a GFCI. If that GFCI trips, neutral and ground come apart, and you cannot see it.
        [plug-better] The bonding plug in “{ $joint }” is past a GFCI. If that GFCI trips, neutral and ground come apart, and you cannot see it.
        [box] “{ $joint }” joins neutral to ground past that GFCI: its TEST button works, but a shock might not trip it. The ground here is { $ground }.
        [if-any] Neutral and ground might be joined at “{ $joint }”: then a GFCI at “{ $device }” does not trip. The ground here is { $ground }.
        [if-none] Neutral and ground might be joined at “{ $joint }”: then a GFCI at “{ $device }” does not trip. The ground here is { $ground }.
        [shared] Neutral and ground are joined at “{ $joint }”. We do not know if one GFCI serves both, so we assumed that a shock trips nothing (the ground here is { $ground }).
       *[other] We do not know if “{ $joint }” joins neutral to ground inside, so we assumed it does. Then that GFCI does not trip (the ground here is { $ground }).
      }
    .fix-plug = Stop the engine. Move the bonding plug to a generator outlet with no TEST and RESET buttons, on a breaker of its own. If there is none, { $wet ->
        [no] better plug
       *[yes] plug
      } nothing else in at “{ $device }” but a GFCI cord (TEST and RESET buttons).
    .fix-plug-look = Look in the generator’s outlets for a plug with no cord, and put in the plan what you find. Ask a licensed electrician before you add one or take it out.
    .fix-plug-where = Stop the engine. See which outlet the bonding plug is in. Put it into a generator outlet with no TEST and RESET buttons, on a breaker of its own.
    .fix-plug-alone = Plug nothing else in at “{ $joint }” but a GFCI cord (TEST and RESET buttons). If the outlet’s own GFCI trips, stop the engine and find out why.
    .fix-plug-better = Better: plug nothing else in at “{ $joint }” but a GFCI cord (TEST and RESET buttons). If the outlet’s own GFCI trips, stop the engine and find out why.
    .fix-plug-first = Put a GFCI cord (TEST and RESET buttons) between { $parts } and “{ $joint }”. If the outlet’s own GFCI trips, stop the engine and find out why.
    .fix-plug-out = Stop the engine. Take the bonding plug out: this generator is bonded already. It is a plug with no cord, in one of the generator’s outlets.
    .fix-box = Do not use “{ $joint }” until a licensed electrician has looked at it. Do not open it.
    .fix-box-look = { $used ->
        [yes] Until you know, count on no GFCI at “{ $device }”.
       *[no] Do not use “{ $joint }” until you know.
      } Look for “neutral bonded” or “isolated neutral” in its papers, or ask the maker. Open nothing yourself.
    .fix-shared = If TEST on “{ $device }” cuts off “{ $joint }” too, one GFCI serves both. Stop the engine, and move the bonding plug to an outlet that shares no breaker with anything in use. If there is none, { $wet ->
        [no] better plug
       *[yes] plug
      } only a GFCI cord (TEST and RESET buttons) into “{ $device }”.
    .fix-if-any = TEST and RESET buttons on “{ $device }” itself are not enough. Plug appliances into a GFCI cord, and that cord into { $parts }. See if “{ $device }” has the buttons, and put that in the plan.
    .fix-if-none = Do not use { $any }: other findings tell what else is wrong. Even if “{ $device }” has TEST and RESET buttons, they might not cut the power when someone gets a shock.
