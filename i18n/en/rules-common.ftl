### Safety. Words that several rules share.

not-known = not known

## Safety. What a life depends on. $about or $life: the devices. $off: what stays off for them.
## $sure is "yes" where somebody said of which kind they are.

life-cannot = Do not rely on this generator for { $about }. Stay where there is utility power, or use the supplier's reserve. Never change the device's setting.
life-off = Leave { $off } off while { $life } runs. What a life depends on takes no turns and is never set lower.
life-turns = Leave { $life } on, and never set it lower. Run the others in turns.
life-it = { $sure ->
    [yes] Someone's health depends on it.
   *[no] Nobody knows if someone's health depends on it.
  }
life-on = { $sure ->
    [yes] Someone's health depends on { $life }.
   *[no] Nobody knows if someone's health depends on { $life }.
  }
