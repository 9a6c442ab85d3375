plan-headline = { $points ->
    [one] 1 point
   *[other] { $points } points
 } in { $bays ->
    [one] 1 bay
   *[other] { $bays } bays
 } within { $minutes ->
    [one] 1 minute
   *[other] { $minutes } minutes
 }
plan-time = About { $usual } min at the bays, walking among them; { $quick } to { $slow } min by the pace of the hand.
plan-pace-table = No steps of this rig's own walks yet: the pace is a common one.
plan-pace-own = The pace is drawn from { $count ->
    [one] 1 step
   *[other] { $count } steps
 } of this rig's own walks.
plan-glance = Eyes and fingers alone over all that waits: about { $minutes } min.
plan-over = What must be done takes { $minutes } min more than there is. Only that stands here: find the minutes, decide about a finding, or take back a priority.
plan-proved = Proved: no plan for this time is worth more.
plan-gap = Best plan found; no plan is worth over { $gap } % more. { $why }
plan-nose = Nose to tail until time is out would have covered { $share } % of what this plan covers.
plan-beside = Taking power away, proving it dead and powering up come beside: 20 to 30 min more (common practice, no source). No plan saves on them.
plan-ranking = The order is a ranking by what moves and what that would do, no probability of fire.
plan-alike = { $all } devices are alike ({ $device }, { $fastening }). Where there is no time for all, { $seen } are this year's: { $devices }. So each comes within { $years } years. If nothing at these moved, something has moved at { $most } of the others at most, with { $percent } % confidence. Where one moved: go through all.
plan-stop = { $name }, { $side }: { $minutes } min
plan-some-left = { $count ->
    [one] 1 point stays out
   *[other] { $count } points stay out
 }
plan-left-out = Left out: { $bay }. { $why }
plan-left-nothing = Nothing waits there.
plan-left-no-time = { $minutes } min are missing for its shortest point beside what must be done.
plan-left-worth-less = Its minutes are worth more elsewhere: with it opened, { $share } % of this plan's worth would be reached at most.
plan-rank = Rank { $rank }: moves × { $likelihood }, would do × { $consequence }
plan-must = In every plan: { $why }
plan-factor = { $factor }: { $found }, × { $times } ({ $basis })
plan-typical = { $current } as typical of such a device, none is noted
plan-empty = Nothing that waits can be planned.
plan-too-large = This rig can't be planned: { $why }.
plan-followed = The plan is followed: { $headline }. About { $left } min of { $minutes } are left.
plan-left = The plan is left; the bays come nose to tail again. It can be rejoined.
plan-anew = Planned anew: { $headline }; { $left } min of { $minutes } are left.
plan-key = Follow a plan
plan-key-note = What matters most within the minutes at hand
plan-key-minutes = Minutes at hand for the bays?
plan-key-again = Rejoin the plan
plan-key-leave = Leave the plan
plan-no-minutes = “{ $found }” is no number of minutes. Expected is 1 to 360.
plan-no-plan = No plan was followed in this walk yet. Say the minutes at hand to make one.
