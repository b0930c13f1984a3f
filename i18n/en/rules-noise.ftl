### Safety. Rules on noise.

NOISE001 = Louder than many camps allow
    .why = It makes about { $level } at { $distance } in the open. National parks allow { $limit } there, and many camps do the same.
    .fix-quieter = Run fewer things at once, use economy idle, and stand it on soft ground. Ask your host. Never box it in or cover it.

NOISE002 = Some things would run in quiet hours
    .why = The camp must be quiet from { $from } to { $to }. These run then: { $about }.
    .fix-move = Move them to other hours, or run them from a battery charged by day. Ask your host first if someone's health depends on it.
