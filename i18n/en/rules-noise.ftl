### Safety. Rules on noise.

NOISE001 = { $fix ->
    [look] The generator might be too loud
    [quieter] Louder than many camps allow
   *[other] At its busiest it might be too loud
  }
    .why = { $fix ->
        [look] We do not know how loud it is, and open-frame generators are mostly louder than { $limit } at { $distance }. National parks and many camps allow no more.
        [quieter] It makes about { $level } at { $distance } in the open, at the load of the test. National parks and many camps allow { $limit } there.
       *[other] At its busiest we assumed { $more } more than measured: about { $busiest } at { $distance } in the open. National parks and many camps allow { $limit } there.
      }
    .fix-quieter = { $idle ->
        [no] Stand it on bare soil
       *[yes] Use economy idle, on bare soil
      }, away from walls. Ask your host. Never box it in or cover it.
    .fix-busiest = Run fewer things at once. Ask your host. Never box it in or cover it.
    .fix-alone = Stand it on bare soil, away from walls. Ask your host. Never box it in or cover it.
    .fix-look = Look for “dB” in its manual, with the distance it was measured at. Ask your host before you run it. Never box it in or cover it.

NOISE002 = { $fix ->
    [move-assumed] Running at night: { $about }
    [life-assumed] Running at night: { $about }
   *[other] Running in quiet hours: { $about }
  }
    .why = { $fix ->
        [move-assumed] We do not know when the camp must be quiet, so we assumed { $quiet }.
        [life-assumed] We do not know when the camp must be quiet, so we assumed { $quiet }.
       *[other] The camp must be quiet { $quiet }.
      }
    .fix-move = { night-instead }
    .fix-life = Before you come, ask the campground host if the generator may run then, and never shorten the hours of { $life }. { night-life }
    .fix-move-assumed = Ask the campground host when the camp must be quiet. { NOISE002.fix-move }
    .fix-life-assumed = Ask your host when the camp must be quiet and if generators may run then, and never shorten the hours of { $life }. { night-life }
