### Safety. Rules on what plugs in where.

FIT001 = { $fix ->
    [load] No receptacle takes the plug of { $about }
    [bonding-plug] No socket of the generator is left for its bonding plug
    [dead] What { $about } could plug into gives nothing for it
    [part] { $about } does not go into what it should plug into
    [loose] { $place } is plugged into nothing, so there is no power for { $about }
    [misplaced] { $place } does not take the plug of { $about }
    [hot] In air of { $air } the cord carries nothing for { $about }
   *[other] No free socket for { $about }
  }
    .why = { $fix ->
        [loose] What hangs on it gets no power, and nothing on it has been checked.
        [hot] A wire must get rid of its own heat. In air this hot it cannot: whatever hangs on that cord is too much.
        [lost] The plan puts more into { $place } than it has sockets. Nothing beyond { $about } has been checked.
        [bonding-plug] The plan says that a bonding plug is in, and it takes a socket for itself. All household sockets of the generator are taken.
        [dead] Something takes its plug. But that gets no power, or gives other volts than its shape says.
       *[other] Shapes differ so that a plug cannot meet the wrong volts or amps. A plug that does not fit is not meant to go there.
      }
    .fix-load = Check the shape of the plug. Use a listed cord or box that has the right receptacle and breaker. Never file, bend or cut a plug.
    .fix-dead = Leave it unplugged. Use a listed cord or box that has the right receptacle and breaker. Never change a plug.
    .fix-part = Check both shapes and correct the plan, or use a listed cord that fits both. Never file, bend or cut a plug.
    .fix-lost = Look where { $about } really plugs in and correct the plan. Never make room with a splitter or an adapter.
    .fix-loose = Plug { $place } in and say in the plan where, or plug { $about } in elsewhere. Then check again.
    .fix-misplaced = Use { $others } instead: the plug goes in there. Correct the plan. Never file, bend or cut a plug.
    .fix-hot = Plug nothing into that cord until it is cooler.
    .fix-bonding-plug = Leave one socket for it, or say in the plan that it stays out. Never make room with a splitter or an adapter.

FIT002 = { $first } looks bigger than it is
    .why = It ends in a { $shape } shape, but its plug is made for { $limit }. The limit stays { $limit }.
    .fix-plan = Plan with { $limit } for everything beyond { $first }, and mark it so.

FIT003 = { $about }: not the volts that the shape promises
    .why = A 240 V receptacle needs both sides of a 120/240 V generator: fed with one, it has 120 V on it. A 120 V receptacle needs a neutral. What feeds this one lacks it, and no adapter can make it. It is not dead.
    .fix-leave = Plug nothing into it, and treat it as live. Use an outlet that has what it needs. Never change a plug to make it fit.

FIT004 = { $fix ->
    [too-large] { $about } asks for more than its receptacle carries
    [life-large] No receptacle here carries { $about }
    [refused] No usable receptacle for { $about }
   *[other] No free receptacle for { $about }
  }
    .why = { $fix ->
        [too-large] It asks for { $demand }. The best receptacle it can use carries { $limit }.
        [life-large] { life-it } It asks for { $demand }. The best receptacle it can use carries { $limit }.
        [life-room] { life-it } Every receptacle that it can use is taken, or carries too little beside the rest.
        [refused] Where the plan puts it, or where its plug fits, it must not be plugged in.
       *[other] Every receptacle that it can use is taken, or carries too little beside the rest.
      }
    .fix-too-large = Leave it at home, use its lower setting, or use an outlet that carries { $demand }.
    .fix-no-room = Leave something at home: this, or what takes its place. Then check again.
    .fix-life-large = Use an outlet that carries { $demand }. If there is none: { life-cannot }
    .fix-life-room = Leave something else at home for it, and check again.
    .fix-refused = Clear what is wrong there first, plug it in elsewhere, or leave it at home.

FIT005 = Two shapes here are easy to mix up: { $one } and { $other }
    .why = In the dark a hand takes one for the other. { $one } gives { $volts }, { $other } gives { $volts-other }. Receptacles: { $about }.
    .fix-look = Put the printed labels on. Look at the drawn face before you push. A plug that needs force is in the wrong place.

FIT006 = { $fix ->
    [adapter] { $about } gives { $twice } where { $volts } is expected
    [leave] { $about } needs { $twice } and does not get it
    [look] Nobody knows if the generator gives { $twice }, which { $about } needs
   *[other] { $about } may get { $volts } only
  }
    .why = { $fix ->
        [adapter] It is fed with { $twice } and no neutral. A thing made for { $volts } takes four times its power there: it bursts or burns before a breaker trips.
        [leave] Its plug says { $twice }. What feeds it gives { $volts } at most. A motor hums, does not start and gets hot. No adapter makes { $twice } of { $volts }.
        [look] Its plug says { $twice }. Many small generators give { $volts } only. No adapter makes { $twice } of that.
       *[other] Its plug takes both { $volts } and { $twice }. Here only { $volts } arrives, so its { $twice } parts stay dead.
      }
    .fix-adapter = Plug nothing into it. Take the adapter or cord that ends in it out of the bin.
    .fix-leave = Leave it at home, or bring a generator that gives { $twice }. Never change a plug, and never join two outlets.
    .fix-look = Look for “240 V” on the generator's plate. Until then, leave it unplugged. Never change a plug, and never join two outlets.
    .fix-part = Look in its manual if it may run on { $volts } alone. If the manual does not say so, leave it unplugged.

FIT007 = { $fix ->
    [plate] { $about } has slots for { $twice }, and the plan says { $volts } only
    [maybe] Here may be { $twice }: { $about }
   *[other] Here is { $twice }: { $about }
  }
    .why = { $fix ->
        [plate] One of the two is not so. If the generator gives { $twice }, each { $volts } outlet has half of its power, and this plan counts all of it.
        [maybe] Nobody knows if the generator gives { $volts } or { $twice }. Things for { $volts } burn on { $twice }.
        [these] These need it: { $needs }. All other receptacles give { $volts }.
       *[other] Nothing in the plan needs it. All other receptacles give { $volts }.
      }
    .fix-nothing = Plug in there only cords, boxes and adapters that are listed for 120/240 V. Put the printed label on it.
    .fix-these = Plug in there only what its plate says is for { $twice }, and cords, boxes and adapters that are listed for 120/240 V.
    .fix-maybe = Look for “120/240 V” on the generator's plate. Until then, plug nothing into it but cords, boxes and adapters that are listed for 120/240 V.
    .fix-plate = Look for “120 V” or “120/240 V” on the generator's plate, and put it in the plan. Until then, use half of the power.
