### Safety. Rules on electric shock.

ground-wet = wet
ground-damp = damp
ground-dry = dry
ground-unknown = not known, so taken as wet

SHOCK001 = { $fix ->
    [free] Use { $about } only with a GFCI cord
   *[other] No shock protection at { $about }
  }
    .why = The ground here is { $ground }. If a cord or appliance goes bad, current can pass through whoever touches it. A breaker will not trip in time. Ground-fault protection (GFCI) does, at 6 thousandths of an amp.
    .fix-protect = Use only receptacles with a TEST and a RESET button, or a cord or box that has them. Press TEST before each use: the power must go off.
    .fix-camper = Use an outlet or a cord with a GFCI. A camper may leak more than one allows, so that it trips with nothing wrong: at 30 A and 50 A outlets of camp sites codes ask for none. If it trips each time, ask a licensed electrician. Do not go on without.
    .fix-free = Plug no appliance in there. A cord with a GFCI built in may go there: use only its end.

SHOCK002 = A plug-in tester may mislead you: nobody knows if the neutral floats
    .why = If the neutral floats, the tester shows "open ground" and its button trips nothing, even though the protection works.
    .fix-find-out = Test with the TEST button on the receptacle itself. Look in the manual for "floating" or "bonded neutral", and put it in the plan. Do not join neutral and ground yourself.

SHOCK003 = { $fix ->
    [ask] Nobody knows if this will feed a building's wiring
   *[other] This would feed a building's wiring
  }
    .why = Power goes out through the building to the street, at thousands of volts. It kills people who repair the lines. A cord with two plugs has bare live blades.
    .fix-stop = Do not connect it. Plug things into the generator by cords only. A licensed electrician must fit transfer equipment first.
    .fix-ask = Find out before you start it. If the answer is yes, do not connect it: a licensed electrician must fit transfer equipment first.

SHOCK004 = { $fix ->
    [find-out] Neutral may be joined to ground in { $bonds } places: nobody knows
   *[other] Neutral is joined to ground in { $bonds } places
  }
    .why = It may be joined in one place only. With { $bonds }, metal that you touch carries current, and shock protection may trip for no reason or not at all.
    .fix-plug = Take the bonding plug out: this generator is bonded already.
    .fix-sets = Run the sets apart until their maker says that sets with a bonded neutral may be joined. Do not open or change them.
    .fix-box = Do not use { $first } until a licensed electrician has looked at it. Do not open it.
    .fix-find-out = Look in the generator's manual for "bonded" or "floating neutral", and for a bonding plug in its outlets. Have a licensed electrician look at boxes. Do not open them.

SHOCK005 = { $fix ->
    [known] Neutral is joined to ground inside { $first }
   *[other] Nobody knows how { $first } is wired inside
  }
    .why = Neutral and ground belong together at the generator, if anywhere. Joined in a box, metal that you touch can carry current, and shock protection may not work. Boxes: { $about }.
    .fix-known = Do not use { $first } until a licensed electrician has looked at it. Do not open it.
    .fix-unknown = Use a factory-made, listed box, or have a licensed electrician look at { $first }. Do not open it.

SHOCK006 = { $fix ->
    [home-made] Home-made box: { $about }
   *[other] Nobody knows who made this box: { $about }
  }
    .why = A home-made box has not been tested for rain, loose joints, thin wire or a missing ground. None of these shows from outside.
    .fix-home-made = Use a factory-made box with a testing laboratory's mark, or have a licensed electrician look at this one. Do not open it.
    .fix-look = Look for a testing laboratory's mark on the box. If there is none, have a licensed electrician look at it. Do not open it.

SHOCK007 = { $first } may trip although nothing is wrong
    .why = Every cord and appliance leaks a little. Here it adds up to about { $leak } ({ $least } is enough to trip; mA: thousandths of an amp). Wet joints leak more. Involved: { $about }.
    .fix-nearer = Use protection nearer to the appliances, with a shorter cord behind it and fewer things on it. Keep joints dry. If it trips, find out why. Never go round it.

SHOCK008 = { $count } shock protections in a row
    .why = They protect no better than one. A fault may trip any of them, so power may stay off after one RESET. From the generator on: { $about }.
    .fix-reset = If the power goes off, unplug the appliance first. Then press RESET on each, from the generator on. Test each with its own TEST button.

SHOCK009 = Two faults here could shock someone with nothing tripping
    .why = The neutral floats, or nobody knows. Then a first fault shows nothing at all. A second one, in another appliance, can put full voltage between two metal cases. Without protection here: { $about }.
    .fix-protect = Plug all of them into receptacles with a TEST and a RESET button. Stop using anything that tingles, is cut or is scorched. Do not join neutral and ground yourself.

SHOCK010 = { $fix ->
    [camper] A bonding plug may be one joint too many for { $about }
   *[other] A bonding plug must not stay in when a set feeds a building
  }
    .why = The plug joins neutral to ground at the generator. { $fix ->
        [camper] Some campers do the same inside. With two joints, metal that you touch carries current.
       *[other] The building does the same. With two joints, metal that you touch carries current.
      }
    .fix-building = Do not connect it. A licensed electrician must fit transfer equipment first, and says if the plug stays out.
    .fix-camper = Ask the camper's maker or a licensed electrician before you connect it with the plug in. Do not join neutral and ground yourself.

SHOCK011 = { $fix ->
    [count] Nobody knows if { $about } has a neutral wire
   *[other] The neutral wire may be missing in { $about }
  }
    .why = It passes on both halves of 120/240 V. Without its neutral, things made for 120 V can get nearly 240 V. They burn, and no breaker trips.
    .fix-leave = Do not use it. Use a cord with four wires, such as 10/4.
    .fix-count = Read the print on the jacket: 10/4 has four wires, 10/3 has three. Leave it out until you know.

SHOCK012 = No shock protection along { $about }
    .why = Shock protection (GFCI) covers what is behind it. { $length } of cord lie before it. Where the cord is cut or a joint is wet, current can pass through whoever touches it, and nothing trips in time.
    .fix-dry = Keep every joint of it off the ground and dry. Do not touch, plug or move it while the engine runs. Look along its whole length before each use: cut or crushed, leave it out.

SHOCK013 = { $fix ->
    [plug] The GFCI at “{ $device }” cannot see a fault
    [plug-alone] A GFCI can cut off the bonding plug
    [if-any] Do not count on a GFCI at “{ $device }”
    [box] The GFCI at “{ $device }” cannot see a fault
   *[other] The GFCI at “{ $device }” may not see a fault
  }
    .why = { $fix ->
        [plug] The bonding plug in “{ $joint }” is behind that GFCI, so fault current comes back through it. It does not trip, while its TEST button works. The ground here is { $ground }.
        [plug-look] We do not know which outlet the bonding plug is in: it may be in “{ $joint }”. Behind that GFCI, it keeps it from tripping. The ground here is { $ground }.
        [plug-alone] The bonding plug in “{ $joint }” is behind a GFCI. If that GFCI trips, neutral and ground are apart again, and nobody sees it.
        [if-any] We do not know if “{ $device }” has a GFCI. Neutral and ground are joined at “{ $joint }” behind it, or may be: then a GFCI does not trip, while its TEST button works. The ground here is { $ground }.
        [box] “{ $joint }” joins neutral to ground behind that GFCI, so fault current comes back through it. It does not trip, while its TEST button works. The ground here is { $ground }.
       *[other] We do not know if “{ $joint }” joins neutral to ground inside, so we assumed it does. Then that GFCI does not trip. The ground here is { $ground }.
      }
    .fix-plug = Stop the engine. Move the bonding plug to a generator outlet that has no TEST and RESET buttons. If there is none, plug nothing else in at “{ $device }”.
    .fix-plug-look = Look at the generator’s outlets for a plug with no cord. If there is one, leave it, write in the plan which outlet it is in, and ask a licensed electrician where it belongs. If there is none, say so in the plan, and add none.
    .fix-plug-alone = Plug nothing else in at “{ $joint }”. If its GFCI trips, stop the engine and find out why.
    .fix-box = Do not use “{ $joint }” until a licensed electrician has looked at it. Do not open it.
    .fix-box-look = Look on “{ $joint }” for a testing laboratory’s mark: a listed box keeps the two apart. If there is none, do not use it until a licensed electrician has looked at it. Do not open it.
    .fix-if-any = Look at “{ $device }” for a TEST and a RESET button, and write it in the plan. Do not rely on them: use a cord with a GFCI built in.
