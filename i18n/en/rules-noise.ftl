### Safety. Rules on noise.

NOISE001 = { $fix ->
    [look] Nobody knows how loud the generator is
    [full-load] At full load it may be louder than many camps allow
   *[other] Louder than many camps allow
  }
    .why = { $fix ->
        [look] National parks allow { $limit } at { $distance }, and many camps do the same. Open-frame sets are mostly louder.
        [full-load] It makes about { $level } at { $distance } in the open, at the load it was measured at. For full load { $more } more were taken: { $full }. National parks allow { $limit } there, and many camps do the same. At full load that is so from { $from } on.
       *[other] It makes about { $level } at { $distance } in the open, at the load it was measured at. National parks allow { $limit } there, and many camps do the same. That is so from { $from } on, and from farther off at full load.
      }
    .fix-quieter = Run fewer things at once, use economy idle, and stand it on soft ground. Ask your host. Never box it in or cover it.
    .fix-full-load = Run fewer things at once, and stand it on soft ground, away from walls. Ask your host. Never box it in or cover it.
    .fix-look = Look for “dB” in its manual, with the distance it was measured at. Ask your host before you run it. Never box it in or cover it.

NOISE002 = Some things would run in quiet hours
    .why = The camp must be quiet from { $from } to { $to }. These run then: { $about }.
    .fix-move = Move them to other hours, or run them from a battery charged by day.
    .fix-life = Its hours stay. Ask your host before you come, or run it then from a battery made for it that was charged by day.
