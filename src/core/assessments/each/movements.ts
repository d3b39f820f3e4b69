import type { Assessment } from '../assessment';

const noRisk = 'It says nothing about the risk of injury.';

/** Tests of how a movement is done, or how often. */
export const movementAssessments = [
  {
    id: 'step-down-quality',
    name: 'Step-down, quality by eye',
    unit: 'points',
    better: 'less',
    most: 6,
    protocol: {
      fixed: ['height of the step, 20 cm as published', 'who rated'],
      steps: [
        'Stand on the step on one leg, hands on the waist, the other leg straight beside the step.',
        'Bend the standing knee until the heel beside the step just touches the floor, and straighten it: 5 times, slowly.',
        'Rate what was seen over all 5: arms, trunk, pelvis, knee, steadiness.',
      ],
      ends: [],
      tries: { practice: 2, counted: 1, taken: 'best' },
      restSeconds: 60,
      camera: 'by-hand',
    },
    error: {
      detectable: 1,
      sameRaterOnly: true,
      isPublished: false,
      source: 'our choice, no source: no detectable change is published that we know of',
    },
    reliability: [
      'Two raters, kappa .67, alike in 80 % (Piva 2006); others .40 to .81 (Rabin 2010 and 2014, Mansfield 2021)',
      'Kappa .59 and .81 (Rabin 2010 and 2014)',
      'Kappa .40 to .65 (Mansfield 2021)',
    ],
    published: [],
    notTold: [noRisk],
  },
  {
    id: 'mini-squat',
    name: 'Mini squat, knee over or inward of the foot',
    unit: 'repetitions',
    better: 'less',
    most: 5,
    protocol: {
      fixed: ['pace, so that each bend takes as long', 'how far the knee bends, about 50° as published'],
      steps: [
        'Stand on one leg, fingertips on something firm.',
        'Bend the knee until you cannot see your toes, and straighten it: 5 times at a set pace.',
        'Count the bends in which the knee went inward of the foot.',
      ],
      ends: [],
      tries: { practice: 2, counted: 1, taken: 'best' },
      restSeconds: 60,
      camera: 'counts',
    },
    error: null,
    reliability: ['Two raters, kappa .92, alike in 96 % (Ageberg 2010)'],
    published: [],
    notTold: [noRisk, 'Done as fast as possible it is another test: the two do not agree (kappa .56).'],
  },
  {
    id: 'one-leg-rise',
    name: 'One-leg rise, to the end',
    unit: 'repetitions',
    better: 'more',
    most: 50,
    protocol: {
      fixed: ['height of the seat', 'pace, if one was set'],
      steps: [
        'Sit with the arms crossed and one foot off the floor.',
        'Stand up on the other leg and sit down again, touching the seat lightly, as often as you can.',
      ],
      ends: ['standing up fails', 'the other foot touches the floor twice', '50 times'],
      tries: { practice: 2, counted: 1, taken: 'best' },
      restSeconds: 180,
      camera: 'counts',
    },
    error: null,
    reliability: [],
    published: [
      {
        population: '33 people of about 47 years without knee complaints',
        value: 'median 32, ended at 50',
        source: 'BMC Musculoskelet Disord 2019, 20:476',
      },
      {
        population: 'people 23 years after an injured cruciate ligament, without an operation',
        value: 'median 15; 59 % with 20 or fewer',
        source: 'BMC Musculoskelet Disord 2019, 20:476',
      },
    ],
    notTold: [
      'It is no measure of strength: the two share half of their variance, less at high counts (West 2023, n = 100).',
      noRisk,
    ],
  },
  {
    id: 'rise-30-s',
    name: 'One-leg rise in 30 seconds',
    unit: 'repetitions',
    better: 'more',
    most: null,
    protocol: {
      fixed: ['height of the seat'],
      steps: [
        'Sit with the arms crossed and one foot off the floor.',
        'Stand up fully on the other leg and sit down, as often as you can in 30 seconds.',
      ],
      ends: ['30 seconds'],
      tries: { practice: 2, counted: 1, taken: 'best' },
      restSeconds: 180,
      camera: 'counts',
    },
    error: null,
    reliability: ['Two days, ICC .92 to .94; raters .98 to .99; 20 students (Waldhelm 2020)'],
    published: [],
    notTold: [noRisk],
  },
  {
    id: 'rise-five-times',
    name: 'One-leg rise, five times',
    unit: 's',
    better: 'less',
    most: null,
    protocol: {
      fixed: ['height of the seat'],
      steps: [
        'Sit with the arms crossed and one foot off the floor.',
        'Stand up fully on the other leg and sit down 5 times, as fast as you can with control.',
      ],
      ends: ['5 times'],
      tries: { practice: 2, counted: 1, taken: 'best' },
      restSeconds: 180,
      camera: 'times',
    },
    error: null,
    reliability: ['Two days, ICC .87 to .94; raters .98 to .99; 20 students (Waldhelm 2020)'],
    published: [],
    notTold: [noRisk],
  },
] as const satisfies readonly Assessment[];
