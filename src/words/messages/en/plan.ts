/** What a plan asks for, and what was done of it. */
export const plan = {
  'set.name': '{exercise}, {side, select, left {left leg} other {right leg}}, set {number}',
  'set.repetitions': '{count, plural, one {# repetition} other {# repetitions}}',
  'set.done-of': '{done} of {of} done',
  'set.done': '{done} done',
  'set.held': 'Held for {seconds, plural, one {# second} other {# seconds}} in total',
  'set.recorded': 'Recorded',
  'set.not-recorded': 'Not recorded',
  'set.stopped': 'You stopped before anything was measured',

  'due.repetitions':
    '{sets, plural, one {{repetitions, plural, one {once} other {# times}}} other {# sets of {repetitions}}}, {side, select, left {left leg} right {right leg} other {each leg}}',
  'due.holds':
    '{sets, plural, one {} other {# sets of }}{holds, plural, one {# hold} other {# holds}} of {seconds, plural, one {# second} other {# seconds}}, {side, select, left {left leg} right {right leg} other {each leg}}',
  'dose.repetitions':
    '{sets, plural, one {} other {# sets of }}{repetitions, plural, one {# repetition} other {# repetitions}}, {sides, select, none {side still to be chosen} left {left leg} right {right leg} left_right {left leg, then right leg} other {right leg, then left leg}}',
  'dose.holds':
    '{sets, plural, one {} other {# sets of }}{holds, plural, one {# hold} other {# holds}} of {seconds, plural, one {# second} other {# seconds}}, {sides, select, none {side still to be chosen} left {left leg} right {right leg} left_right {left leg, then right leg} other {right leg, then left leg}}',
  'dose.seat': 'Seat {cm} cm high.',
  'dose.step': 'Step {cm} cm high.',
  'dose.support.none': 'Hold on to nothing; keep something firm within reach.',
  'dose.support.fingertip': 'One fingertip on something firm.',
  'dose.support.hand': 'One hand on something firm. Do not lean on it.',
  'dose.load.loop':
    '{where, select, ankle {Loop band at the ankle} hand {Loop band in the hand} other {Loop band above the knees}}: {level}.',
  'dose.load.tube':
    '{where, select, ankle {Tube band at the ankle} hand {Tube band in the hand} other {Tube band above the knees}}: {level}.',
  'dose.load.weight':
    '{where, select, ankle {Weight at the ankle} hand {Weight in the hand} other {Weight above the knees}}: {level}.',
  'dose.level.light': 'light',
  'dose.level.medium': 'medium',
  'dose.level.strong': 'strong',
  'dose.bend': 'Bend the knee to about {deg}°. A right angle is 90°.',
  'dose.in-turn': 'A set with one leg, then a set with the other.',
  'dose.rest': '{seconds, plural, one {# second} other {# seconds}} of rest in between.',

  'week.times': '{count, plural, =1 {Once a week.} =2 {Twice a week.} other {# times a week.}}',
  'week.over': 'Done for this week.',
  'week.none-yet': '{all, plural, =1 {Once this week.} other {# times this week.}}',
  'week.some': '{done} of {all, plural, other {# times this week.}}',
  'week.more': '{open, plural, =1 {Once more.} =2 {Twice more.} other {# times more.}}',

  'wish.none': 'When you send a session, no video is needed. You decide each time what you send.',
  'wish.out-of-line':
    'When you send a session, please include the repetitions out of line as a video. You decide each time what you send.',
  'wish.without-head':
    'When you send a session, please include the video without your head. You decide each time what you send.',
  'wish.whole':
    'When you send a session, please include the whole video. You decide each time what you send.',

  'sheet.title': 'Exercises for {patient}',
  'sheet.practice': 'Questions? {practice}',
  'sheet.code': 'Scan this code with your phone to open the plan.',
  'sheet.stop': 'When to stop',
  'sheet.do-not': 'Do not exercise, and contact a professional, if',
  'sheet.overview': 'Your exercises',
  'sheet.also': 'Also',
  'sheet.diary': 'Tick what you did, and write down your pain from 0 to 10',
  'sheet.day': 'Day',
  'sheet.pain': 'Pain during',
  'sheet.pain-next': 'Pain next day',
  'sheet.ready': 'Have this ready',
  'sheet.camera': 'Where the camera goes',
  'sheet.how': 'How to do it',
  'sheet.review': 'We will look at this together on {day}.',
  'sheet.key':
    '{count, plural, one {What you send back opens only with my key. Its words are {words}.} other {What you send back opens only with my key and those of my colleagues. The words of each: {words}.}} You see the same ones where the plan is opened and where a session is sent. If they differ, ask me before you send anything.',
} as const;
