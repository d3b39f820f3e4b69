import type { Assessment, Protocol } from '../assessment';

const reach: Protocol = {
  fixed: ['shoes or bare feet', 'length of the leg, from the front of the hip to the inner ankle'],
  steps: [
    'Stand on one leg, hands on the waist, the toes at the line.',
    'Slide the other foot out as far as you can, touch lightly, and come back standing.',
  ],
  ends: ['the standing foot moves', 'weight is put on the reaching foot', 'a hand leaves the waist'],
  tries: { practice: 4, counted: 3, taken: 'best' },
  restSeconds: 10,
  camera: 'by-hand',
};
const balance = {
  unit: 'cm',
  better: 'more',
  most: null,
  protocol: reach,
  error: null,
  reliability: ['Raters, ICC .86 to .92, 29 people (Gribble 2013)'],
  published: [],
  notTold: ['It says nothing about the risk of injury.'],
} as const satisfies Partial<Assessment>;

/** Tests of balance and of how far a joint goes. */
export const reachAssessments = [
  {
    id: 'leg-length',
    name: 'Length of the leg',
    unit: 'cm',
    better: null,
    most: null,
    protocol: {
      fixed: ['who measured'],
      steps: [
        'Lie on the back, legs straight and a hand apart.',
        'Measure with a tape from the front of the hip (the bony point of the pelvis) to the inner ankle.',
      ],
      ends: [],
      tries: { practice: 0, counted: 2, taken: 'mean' },
      restSeconds: 0,
      camera: 'by-hand',
    },
    error: null,
    reliability: [],
    published: [],
    notTold: ['It only serves to tell reaches in percent of the leg.'],
  },
  { id: 'reach-front', name: 'Balance reach to the front', ...balance },
  { id: 'reach-back-inward', name: 'Balance reach backwards, across', ...balance },
  { id: 'reach-back-outward', name: 'Balance reach backwards, outward', ...balance },
  {
    id: 'knee-to-wall',
    name: 'Knee to wall',
    unit: 'cm',
    better: 'more',
    most: null,
    protocol: {
      fixed: ['who measured', 'bare feet'],
      steps: [
        'Stand with one foot pointing at a wall, heel down.',
        'Bring the knee to the wall, over the middle of the foot, and move the foot back as far as that works.',
        'Measure from the big toe to the wall.',
      ],
      ends: ['the heel lifts', 'the knee no longer touches'],
      tries: { practice: 1, counted: 3, taken: 'best' },
      restSeconds: 10,
      camera: 'by-hand',
    },
    error: {
      detectable: 1.9,
      sameRaterOnly: false,
      isPublished: true,
      source: 'detectable change 1.9 cm with one rater and 1.6 cm with two (Powden 2015)',
    },
    reliability: [],
    published: [],
    notTold: ['A stiff ankle may be one reason for a knee that goes inward; it need not be.'],
  },
  {
    id: 'single-leg-stance',
    name: 'Single-leg stance',
    unit: 's',
    better: 'more',
    most: 45,
    protocol: {
      fixed: ['eyes open or closed', 'shoes or bare feet'],
      steps: ['Stand on one leg, arms crossed, the other foot off the floor and off the standing leg.'],
      ends: [
        'the foot touches the floor or the other leg',
        'the arms are used',
        'the eyes open',
        '45 seconds',
      ],
      tries: { practice: 1, counted: 3, taken: 'best' },
      restSeconds: 30,
      camera: 'times',
    },
    error: null,
    reliability: [],
    published: [
      {
        population: 'people of 18 to 39 years',
        value: 'best of 3: 45 s with open eyes, about 15 s with closed ones',
        source: 'Springer 2007, n = 549 of all ages; these values from memory',
      },
    ],
    notTold: ['With 45 s the test is at its end: how much longer is not known.'],
  },
] as const satisfies readonly Assessment[];
