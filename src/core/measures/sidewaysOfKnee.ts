import { kneeInward, kneeOutward } from '../exercises/library/kneeFaults';

/** Words of the measures that follow the knee to the side: inward is positive. */
export const sidewaysOfKnee = {
  ways: { least: { short: 'out', long: 'outward' }, most: { short: 'in', long: 'inward' } },
  cues: { least: kneeOutward.cue, most: kneeInward.cue },
  shortCues: { least: 'Knee in', most: 'Knee out' },
  habits: {
    least: 'your knee went outward, away from the other knee',
    most: 'your knee went inward, towards the other knee',
  },
} as const;
