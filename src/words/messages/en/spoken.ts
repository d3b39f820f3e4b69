/** What is said aloud while somebody exercises; each line can be read as it is said. */
export const spoken = {
  'say.stay-placed': 'Come back to your place.',
  'say.good': 'Good.',
  'say.bends': 'Two easy bends on both legs, small and slow.',
  'say.standing': 'Now stand still on both feet.',
  'say.less-exact': 'Let’s continue. It will be measured less exactly.',
  'say.maybe-unmeasured': 'Let’s continue. Some of it may not be measured.',
  'say.placed-again': 'Good. Let’s carry on.',
  'say.go': 'Go.',
  'say.uncounted':
    'Please count your repetitions yourself. When you are done, come back and press “End this set”.',
  'say.idle': 'Carry on when you are ready. To end the set, come back and press “End this set”.',
  'say.set-done': 'Set done. Well done.',
  'say.set-ended': 'This set is over.',
  'say.all-done': 'That was everything. Well done.',
  'say.last-seconds': 'Ten seconds left.',
  'say.hold': 'Hold.',
  'say.halfway': 'Halfway.',
  'say.release': 'And relax.',
  'say.why-stop': 'Stopped. Hold on to something or sit down. Then choose the reason on the screen.',
  'say.dizzy':
    'Stopped. Sit down, and stay seated until it has passed. Contact your therapist or doctor today. With chest pain, or if you are short of breath, call the emergency number at once.',
  'say.ask-pain': 'Come to the screen, and choose how much it hurt.',
  'say.pain-first': 'Before the next set, choose on the screen how much it hurt.',
  'say.camera-missing': 'The camera is not on yet.',
  'say.ended': 'Ended. What you have done so far is saved.',
  'say.stopped-because': 'Stopped. Hold on to something or sit down. {advice}',

  'say.paused.left-picture': 'Paused: you left the picture. Come back to continue.',
  'say.paused.no-pictures': 'Paused: the camera gives no pictures. Stay where you are.',
  'say.paused.not-followed': 'Paused for a moment. Stay where you are.',
  'say.paused.turned': 'Paused: the picture was turned. Turn it back.',
  'say.paused.button': 'Paused.',
  'say.paused.page-hidden': 'Paused. Press Continue when you are ready.',
  'say.paused.camera-ended': 'Paused: the camera has stopped. What you have done so far is saved.',

  /** A number in words, as a line of its own. */
  'say.number': '{number}.',
  'say.set':
    '{ofSets, plural, one {} other {Set {number} of {ofSetsSaid}: }}{exercise}, {side, select, left {left leg} other {right leg}}.',
  'say.repetitions': '{count, plural, one {{repetitions} repetition} other {{repetitions} repetitions}}.',
  'say.holds':
    '{count, plural, one {{holds} hold} other {{holds} holds}} of {seconds, plural, one {{secondsSaid} second} other {{secondsSaid} seconds}}.',
  'say.rest': 'Rest for {seconds, plural, one {{secondsSaid} second} other {{secondsSaid} seconds}}.',
  'say.then':
    '{change, select, side {Then change sides} item {Next} other {Then}}: {ofSets, plural, one {} other {set {number} of {ofSetsSaid}: }}{exercise}, {side, select, left {left leg} other {right leg}}.',
  'say.rule':
    '{limit, plural, =0 {If it hurts} other {If it hurts more than {limitSaid} of ten}}, stop and sit down.',
  'say.rule-filmed': 'Walk out of the picture, and it pauses.',
  'say.more': '{left, plural, =0 {That was the last one.} one {One more.} other {{leftSaid} more.}}',
  'say.guide-out': 'Let the knee go out a little, over the foot.',
  'say.guide-in': 'Let the knee come in a little, over the foot.',
  'say.over-foot': 'Knee over the foot, good.',
  'caption.count': '{count} of {of}.',

  'tempo.rise':
    'Up in {up, plural, one {# second} other {# seconds}}, {stay, plural, =0 {} one {stay for # second, } other {stay for # seconds, }}down in {down, plural, one {# second} other {# seconds}}.',
  'tempo.dip':
    'Down in {down, plural, one {# second} other {# seconds}}, {stay, plural, =0 {} one {stay for # second, } other {stay for # seconds, }}up in {up, plural, one {# second} other {# seconds}}.',
  'tempo.reach':
    'Out in {down, plural, one {# second} other {# seconds}}, {stay, plural, =0 {} one {stay for # second, } other {stay for # seconds, }}back in {up, plural, one {# second} other {# seconds}}.',
} as const;
