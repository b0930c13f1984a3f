### Safety. Rules on what plugs in where.

FIT001 = { $fix ->
    [load] No outlet takes the plug of { $any }
    [bonding-plug] No socket is left for the bonding plug
    [dead] No outlet that fits { $any } can run it
    [part] { $about } does not fit where it should plug in
    [loose] { $place } is not plugged in: no power for { $about }
    [unusable] Do not use { $place }, wherever you plug it in
    [misplaced] { $place } does not take the plug of { $any }
    [unknown] Do not use { $first } until you know its { $of ->
        [plug] plug
        [outlets] outlets
       *[both] shapes
    }
   *[other] No free socket for { $any }
  }
    .why = { $fix ->
        [unusable] { $rule ->
            [OVER001] It can overheat and catch fire before any breaker trips.
            [CORD004] It might have no ground wire. Then a broken wire inside can put full voltage on a metal case.
            [SHOCK005] It joins neutral to ground inside, or might. Then metal that you touch can carry current.
           *[other] What is wrong with it stays wrong in any outlet.
          }
        [unknown] We do not know { $of ->
            [plug] its plug
            [outlets] its outlets
           *[both] its plug or its outlets
        }, so we have not checked it or anything past it.
        [loose] What is plugged into it gets no power, and we have not checked it.
        [lost] The plan puts more into { $place } than it has sockets. We have not checked anything past { $about }.
        [bonding-plug] The plan says that a bonding plug is in, and it takes a socket for itself. All household sockets of the generator are taken.
        [dead] Something takes its plug. But that gets no power, or other volts than its shape promises.
       *[other] A plug that does not fit does not belong there: the shape keeps out the wrong volts or amps.
      }
    .fix-load = Use a listed cord or box that has the right outlet and breaker. Never file, bend or cut a plug.
    .fix-dead = Leave it unplugged. Use a listed cord or box with the right outlet and breaker. Never change a plug.
    .fix-part = { $adapted ->
        [yes] Plug it into { $outlet } with a listed adapter ({ $plug } to { $end }), and put that in the plan.
       *[no] Check both shapes and correct the plan, or use a listed cord that fits both.
      } Never file, bend or cut a plug.
    .fix-lost = Look where { $about } really plugs in, and correct the plan. { $fits ->
        [yes] If it has no room there, use { $sockets }, never a splitter or an adapter.
       *[no] { $free ->
            [yes] If it has no room there, plug { $past } into { $others } instead, never into a splitter or an adapter.
           *[no] { $household ->
                [yes] To make room, use only a listed three-way cord with a GFCI, never a splitter or an adapter.
               *[no] If it has no room there, use another outlet, never a splitter or an adapter, or leave it unplugged.
              }
          }
      }
    .fix-loose = Plug { $place } into { $fits ->
        [no] { $adapted ->
            [yes] { $outlet } with a listed adapter ({ $plug } to { $end })
           *[no] an outlet where it fits
          }
       *[yes] { $sockets }
      }{ $inside ->
        [yes] {""}
       *[no] , or plug { $about } into { $free ->
            [no] another outlet
           *[yes] { $others }
          }
      }. Write that in the plan, and check again.
    .fix-misplaced = { $free ->
        [no] Every other outlet that fits is taken, or cannot run it: leave it unplugged.
       *[yes] Use { $others } instead: the plug goes in there.
      } Correct the plan. Never file, bend or cut a plug.
    .fix-unusable = Do not use { $place }. Take it out of the plan, and plug in elsewhere what needs power.
    .fix-unknown = Put tape over its plug: DO NOT USE. Look at it from outside, and put what you see in the plan.
    .fix-bonding-plug = Leave one socket for it, or write in the plan that it is not in. Never put it in a splitter, an adapter or a cord.

FIT002 = { $first } carries less than its shape says
    .why = It ends in a { $shape } shape, but its plug is rated for { $plug }.
    .fix-plan = Past { $first }, plan with { $limit }{ $hours ->
        [yes] {" "}for three hours or more, and { $short } for less
       *[no] {""}
      }. Mark it so.

FIT003 = { $fix ->
    [look] There might be no { $twice } at { $about }
   *[other] { $about }: wrong voltage for its shape
  }
    .why = { $fix ->
        [look] It is for { $twice } only. Many small generators do not give it: then it is live, with the wrong voltage.
       *[other] It needs both halves of a 120/240 V generator, or a neutral, and does not get them. No adapter can add that, but it is live.
      }
    .fix-leave = Plug nothing into it, and treat it as live. Never change a plug to make it fit.
    .fix-look = Look for “{ $twice }” on the generator’s nameplate. Until then, plug nothing into it, and treat it as live.

FIT004 = { $fix ->
    [too-large] { $first } needs more than its outlet can give
    [life-large] No outlet here can run { $any }
    [refused] No usable outlet for { $any }
    [refused-here] The plan has the wrong outlet for { $about }
   *[other] No usable outlet is free for { $any }
  }
    .why = { $fix ->
        [too-large] It needs { $demand }. { $planned ->
            [yes] Its outlet in the plan gives { $limit }.
           *[other] The best outlet it can use gives { $limit }.
        }
        [life-large] { life-it } It needs { $demand }, but the best outlet it can use gives { $limit }.
        [life-room] { life-it } Every outlet for it is taken, has too little left, or has no GFCI.
        [refused] { $planned ->
            [yes] You must not plug it in where the plan has it. No free outlet that you may use can run it.
           *[other] Something is wrong at every outlet that could run it.
        }
        [refused-here] You must not plug it in where the plan has it. Free, and able to run it: { $free }.
       *[other] Every outlet for it is taken, has too little left, or has no GFCI.
      }
    .fix-too-large = Leave it at home, use its lower setting, or use an outlet that can give { $demand }.
    .fix-no-room = Leave { $about } at home, or leave something else at home to free an outlet for it. Then check again.
    .fix-life-large = Use an outlet that can give { $demand }, or do not rely on this generator for { $about }. Stay where there is utility power, or use your supplier’s backup. Never change the device’s setting.
    .fix-life-room = Leave something else at home for it, and check again.
    .fix-refused = { $life ->
        [yes] First clear what is wrong there. Until then, run it from a battery made for it, and do not rely on this generator.
       *[no] First clear what is wrong there, or leave it at home.
      }
    .fix-refused-here = Plug it in at { $free } instead, put that in the plan, and check again. Or clear what is wrong with its own outlet first.

FIT005 = Easy to mix up: { $one } and { $other }
    .why = In the dark you can take one for the other. { $one } gives { $volts }, and { $other } gives { $volts-other }. Outlets: { $about }.
    .fix-look = Put the printed labels on. Look at the drawn face before you push. If a plug needs force, it is in the wrong place.

FIT006 = { $fix ->
    [adapter] { $about } gives { $twice } where { $volts } belongs
    [leave] { $about } needs { $twice } and does not get it
    [look] { $about } needs { $twice } and might not get it
   *[other] { $about } might get { $volts } only
  }
    .why = { $fix ->
        [adapter] It is fed with { $twice } and no neutral. A thing made for { $volts } takes four times its power there, and burns before a breaker trips.
        [leave] { $inside ->
            [yes] It is made for { $twice }
           *[no] Its plug says { $twice }
          }, but it gets { $volts } at most, and no adapter can change that. A motor hums, does not start and overheats.
        [look] { $inside ->
            [yes] It is made for { $twice }
           *[no] Its plug says { $twice }
          }. Many small generators give { $volts } only, and no adapter can change that.
       *[other] { $inside ->
            [yes] It takes both { $volts } and { $twice }
           *[no] Its plug takes both { $volts } and { $twice }
          }. Here only { $volts } arrives, so its { $twice } parts do not work.
      }
    .fix-adapter = Plug nothing into it. Leave the adapter or cord that ends in it at home.
    .fix-leave = { $inside ->
        [yes] Leave it switched off
       *[no] Leave it at home
      }, or bring a generator that gives { $twice }. Never change a plug, and never join two outlets.
    .fix-look = Look for “240 V” on the generator’s nameplate. Until then, leave it { $inside ->
        [yes] switched off
       *[no] unplugged
      }. Never change a plug or join two outlets.
    .fix-part = Look in its manual if it can run on { $volts } alone. If the manual does not say so, leave it { $inside ->
        [yes] switched off
       *[no] unplugged
      }.

FIT007 = { $fix ->
    [plate] Slots for { $twice }, but the plan says { $volts }: { $about }
    [maybe] There might be { $twice } here: { $about }
   *[other] There is { $twice } here: { $about }
  }
    .why = { $fix ->
        [plate] One of the two is wrong. All figures here are for { $volts }: if it gives { $twice }, each { $volts } outlet has only half of its power.
        [maybe] We do not know if the generator gives { $volts } or { $twice }. Things made for { $volts } burn up on { $twice }.
        [these] These need it: { $needs }. All other outlets give { $volts }.
       *[other] Nothing in the plan needs it. All other outlets give { $volts }.
      }
    .fix-nothing = Plug in only cords, boxes and adapters that are listed for 120/240 V. Put the printed label on it.
    .fix-these = Plug in only things whose nameplate says { $twice }, or cords, boxes and adapters listed for 120/240 V.
    .fix-maybe = Look for “120/240 V” on the generator’s nameplate. Until then, plug in only cords, boxes and adapters that are listed for 120/240 V.
    .fix-plate = Before you start the engine, look for “120 V” or “120/240 V” on its nameplate. If it says “120/240 V”, put that in the plan, and print new labels and a new card.
