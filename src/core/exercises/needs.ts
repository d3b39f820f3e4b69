/** Things that have to be at hand before a task is done alone. */
export const needIds = ['clear-floor', 'support', 'chair', 'step', 'slide', 'ball'] as const;
export type Need = (typeof needIds)[number];

/** Each as a sentence for the person: what, and what keeps it safe. Common practice, no source. */
export const needWords: Record<Need, { name: string; sentence: string }> = {
  'clear-floor': {
    name: 'Clear and dry floor',
    sentence: 'Clear the floor for two steps around you. It must be dry, with no loose rug and no cable.',
  },
  support: {
    name: 'Something to hold',
    sentence: 'Have something firm within reach of one hand: a table, a worktop, the back of a heavy chair.',
  },
  chair: {
    name: 'Chair against a wall',
    sentence: 'Take a firm chair without wheels, and put its back against a wall so that it cannot slide.',
  },
  step: {
    name: 'Low, firm step',
    sentence: 'Take a low step that stands firm and cannot tip or slide, as high as you were shown.',
  },
  slide: {
    name: 'Something that slides',
    sentence: 'Put a folded cloth under the moving foot on a smooth floor. The other foot must not slide.',
  },
  ball: {
    name: 'Small soft ball',
    sentence: 'Take the ball or rolled towel that you were shown.',
  },
};
