/** How it went, in plain words: no diagnosis, no degrees. */
export const result = {
  'verdict.in': 'in line',
  'verdict.probably-in': 'probably in line',
  'verdict.cant-tell': 'can’t tell',
  'verdict.probably-out': 'probably out of line',
  'verdict.out': 'out of line',
  'verdict.not-measured': 'not measured',
  'verdict.counted': '{count} {verdict}',

  'reason.no-person': 'nobody seen',
  'reason.no-person.advice': 'Stand so that the whole body is in the picture, with light from the front.',
  'reason.joint-unseen': 'hip, knee or ankle hidden',
  'reason.joint-unseen.advice':
    'Clear what stands in front of the legs, wear clothes that show the knees, and add light.',
  'reason.out-of-picture': 'leg out of the picture',
  'reason.out-of-picture.advice':
    'Move the camera back or tilt it so that hips, knees and feet stay in the picture.',
  'reason.tracking-jumped': 'somebody else was followed',
  'reason.tracking-jumped.advice': 'Film with one person only in the picture.',
  'reason.frames-missing': 'frames missing',
  'reason.frames-missing.advice': 'Film again with more light and nothing else running on the device.',
  'reason.thigh-foreshortened': 'thigh points at the camera',
  'reason.thigh-foreshortened.advice':
    'Nothing to change: the angle counts only once the thigh is seen at enough of its length.',
  'reason.view-turned': 'turned too far from the camera',
  'reason.view-turned.advice': 'Turn the body, or move the camera, until hips and feet face it squarely.',
  'reason.band-too-wide': 'too uncertain from this view',
  'reason.band-too-wide.advice':
    'Face the camera squarely, both feet in the picture, and begin with two easy bends on both legs. They show how you stand to the camera.',
  'reason.no-stance': 'not standing on both feet',
  'reason.no-stance.advice':
    'Nothing to change: where the hips stand between the feet counts only with both apart on the floor.',

  'told.took-time': 'You took the time to exercise.',
  'told.none-seen':
    'No repetition was seen, so nothing can be said about this set. Next time move slowly, through the whole movement.',
  'told.unseen':
    'The camera could not see how your knee moved, so there is nothing to say about it this time.',
  'told.did': 'You did {count, plural, one {# repetition} other {# repetitions}}.',
  'told.did-all': 'You did all {count, plural, one {# repetition} other {# repetitions}}.',
  'told.over-foot': 'In {which} your knee stayed over the foot.',
  'told.within': 'In {which} you stayed within every limit.',
  'told.other-leg':
    'It looks as if your other leg did the work; then none of this is about the leg that was meant.',
  'told.too-close': 'In {which} it was too close to tell.',
  'told.keep-going': 'Keep going like this: slow, and the knee over the middle of the foot.',
  'told.both-ways':
    'Your knee went sometimes inward, sometimes outward. Go slowly, and keep it over the middle of the foot.',
  'told.inward':
    'In {which} your knee went inward, towards the other knee. Guide it out a little, over the middle of the foot.',
  'told.outward':
    'In {which} your knee went outward, away from the other knee. Guide it in a little, over the middle of the foot.',
  'told.unmeasured':
    '{left} of {count, plural, one {# repetition} other {# repetitions}} could not be measured.',
  'told.unmeasured-because':
    '{left} of {count, plural, one {# repetition} other {# repetitions}} could not be measured: {reason}.',

  'which.some': '{count} of {of, plural, one {# repetition} other {# repetitions}}',
  'which.all':
    '{of, plural, =1 {the one repetition that was measured} =2 {both repetitions} other {all # repetitions}}',
  'which.about': 'about {count} of {of, plural, one {# repetition} other {# repetitions}}',
  'which.place':
    'the {place, selectordinal, =1 {first} =2 {second} =3 {third} =4 {fourth} =5 {fifth} =6 {sixth} =7 {seventh} =8 {eighth} =9 {ninth} =10 {tenth} =11 {eleventh} =12 {twelfth} one {#st} two {#nd} few {#rd} other {#th}}',
  'which.repetition': '{places} repetition',

  'habit.knee-angle.least': 'In {which} your knee went outward, away from the other knee.',
  'habit.knee-angle.most': 'In {which} your knee went inward, towards the other knee.',
  'habit.knee-off-line.least': 'In {which} your knee went outward, away from the other knee.',
  'habit.knee-off-line.most': 'In {which} your knee went inward, towards the other knee.',
  'habit.knee-over-foot.least': 'In {which} your knee went outward, away from the other knee.',
  'habit.knee-over-foot.most': 'In {which} your knee went inward, towards the other knee.',
  'habit.hip-over-knee.least': 'In {which} your hip was not over your knee.',
  'habit.hip-over-knee.most': 'In {which} your hip was not over your knee.',
  'habit.pelvic-drop.least': 'In {which} your free hip rose.',
  'habit.pelvic-drop.most': 'In {which} your free hip sank.',
  'habit.trunk-lean.least': 'In {which} your upper body leaned to the side.',
  'habit.trunk-lean.most': 'In {which} your upper body leaned to the side.',
  'habit.pelvis-place.least': 'In {which} your hips stayed away from the working foot.',
  'habit.pelvis-place.most': 'In {which} your hips went far over the working foot.',
  'habit.depth.least': 'In {which} you stayed higher than planned.',
  'habit.depth.most': 'In {which} you went lower than planned.',

  'cue.knee-angle.least': 'Let the knee come in, over the second toe.',
  'cue.knee-angle.most': 'Knee over the middle of the foot.',
  'cue.knee-off-line.least': 'Let the knee come in, over the second toe.',
  'cue.knee-off-line.most': 'Knee over the middle of the foot.',
  'cue.knee-over-foot.least': 'Let the knee come in, over the second toe.',
  'cue.knee-over-foot.most': 'Knee over the middle of the foot.',
  'cue.hip-over-knee.least': 'Sit back, hip over knee.',
  'cue.hip-over-knee.most': 'Sit back, hip over knee.',
  'cue.pelvic-drop.least': 'Belt level.',
  'cue.pelvic-drop.most': 'Belt level, hip over the knee.',
  'cue.trunk-lean.least': 'Breastbone over the belt buckle.',
  'cue.trunk-lean.most': 'Breastbone over the belt buckle.',
  'cue.pelvis-place.least': 'Hips over the working foot.',
  'cue.pelvis-place.most': 'Hips between the feet.',
  'cue.depth.least': 'A little lower, as long as nothing hurts.',
  'cue.depth.most': 'Not quite so low.',
  'short-cue.knee-angle.least': 'Knee in',
  'short-cue.knee-angle.most': 'Knee out',
  'short-cue.knee-off-line.least': 'Knee in',
  'short-cue.knee-off-line.most': 'Knee out',
  'short-cue.knee-over-foot.least': 'Knee in',
  'short-cue.knee-over-foot.most': 'Knee out',
  'short-cue.hip-over-knee.least': 'Sit back',
  'short-cue.hip-over-knee.most': 'Sit back',
  'short-cue.pelvic-drop.least': 'Belt level',
  'short-cue.pelvic-drop.most': 'Belt level',
  'short-cue.trunk-lean.least': 'Stay tall',
  'short-cue.trunk-lean.most': 'Stay tall',
  'short-cue.pelvis-place.least': 'Hips in',
  'short-cue.pelvis-place.most': 'Too far',
  'short-cue.depth.least': 'Go lower',
  'short-cue.depth.most': 'Too low',
  'change.since-last':
    'Your {side, select, left {left knee} other {right knee}} went {change, select, less {less far} other {farther}} inward than last time, on {day}.',

  'heard.good': 'Good',

  'replay.best': 'Your best one',
  'replay.practise': 'One to practise',
  'replay.nearest': 'Nearest to the edge',
  'replay.stayed': 'In {which} you stayed in the lane.',
  'replay.closest': 'In {which} you came closest to staying in the lane.',
  'replay.edge-stayed': '{which} came nearest to the edge, and stayed in the lane.',
  'replay.edge': '{which} came nearest to the edge. It is too close to say more.',
} as const;
