### Safety. Words that several rules share.

not-known = not known

## Safety. What to do instead of running at night. $about: what runs; $life: the devices a life depends on.

night-decide = In the plan, give each its hours, with none at night.
night-instead = Run { $about } at other hours, or from a battery charged during the day.
night-life = Ask the doctor or supplier about a battery that runs { $life } all night, charged during the day.
night-sleep = Stop the engine before anyone goes to sleep.

## Safety. What a life depends on. $about or $life: the devices. $off: what stays off for them.
## $sure is "yes" where somebody said of which kind they are.

life-cannot = Do not rely on this generator for { $about }. Stay where there is utility power, or use your supplier’s backup. Never change the device’s setting.
life-off = Leave { $off } off while { $life } runs. Never turn down or pause what a life depends on.
life-turns = Never turn down or unplug { $life } to make room for the others. Run the others in turns.
life-it = { $sure ->
    [yes] Someone’s health depends on it.
   *[no] We do not know if someone’s health depends on it.
  }
life-on = { $sure ->
    [yes] Someone’s health depends on { $life }.
   *[no] We do not know if someone’s health depends on { $life }.
  }
