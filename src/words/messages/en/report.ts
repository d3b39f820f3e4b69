/** What a patient is given on paper about their own weeks. */
export const report = {
  'report.title': 'How your exercises are going, {day}',
  'report.invented': 'The numbers on this page are made up, to show how it looks.',
  'report.for': 'For',
  'report.done': 'Done',
  'report.done-of':
    'You did {done} of {due, plural, one {# session} other {# sessions}} since your plan began.',
  'report.done-count': 'You did {done, plural, =0 {no session} one {# session} other {# sessions}}.',
  'report.pain': 'Pain',
  'report.pain-less':
    'When you exercise, your knee hurts less now: {now} out of 10. It was {then} at the start. That is more than chance.',
  'report.pain-more':
    'When you exercise, your knee hurts more now: {now} out of 10. It was {then} at the start. Talk about it with your therapist.',
  'report.pain-same':
    'Pain when you exercise: {now} out of 10 now, {then} at the start. A small step up or down can be chance.',
  'report.knee': 'Your {side, select, left {left} other {right}} knee',
  'report.knee-less':
    '{exercise}: your knee now goes less far in than at the start. The change is larger than what the camera can be off by.',
  'report.knee-more':
    '{exercise}: your knee now goes farther in than at the start. The change is larger than what the camera can be off by. Talk about it with your therapist.',
  'report.knee-same':
    '{exercise}: no clear change yet in how far your knee goes in. The camera cannot see small steps.',
  'report.knee-unlike':
    '{exercise}: you do it in another way now than at the start, so the two are not compared.',
  'report.count':
    'In the last set, {low} to {high} of {of} repetitions stayed over the foot. It cannot be said more closely.',
  'report.count-all': 'In the last set, {low} of {of} repetitions stayed over the foot.',
  'report.next': 'Next',
  'report.next-on': 'You and your therapist look at it again on {day}.',
  'report.careful': 'Take care',
  'report.stop': 'Stop when it hurts more than {limit} out of 10, or when your knee gives way or locks.',
  'report.how': 'Good to know',
  'report.how-what':
    'One camera saw your leg from the front. It shows how the knee moves, not why it hurts. What your therapist or doctor says comes first.',
} as const;
