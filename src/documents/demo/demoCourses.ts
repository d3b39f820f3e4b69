import type { Side } from '#core/protocol/side';
import type { PatientNotes } from '../patient/patientDocument';

/** One invented session, days after the first one. */
export interface DemoDay {
  day: number;
  /** Largest inward angle that the right leg's repetitions scatter round, degrees; null: not filmed. */
  peakDeg: number | null;
  /** The left leg's; null: done without a camera. */
  leftDeg: number | null;
  /** Pain before, at most during, after; 0 to 10. */
  pain: [before: number, during: number, after: number];
  /** Worst of the day after, 0 to 10. */
  nextDay: number;
  effort: number;
  remark?: string;
  /** Whether the patient stopped because of pain. */
  isStopped?: boolean;
}

/** An invented patient over six weeks. */
export interface DemoCourse {
  pseudonym: string;
  notes: Pick<PatientNotes, 'painfulSide' | 'sites' | 'goals' | 'restrictions'> & { sinceWeeks: number };
  sides: Side[];
  painLimit: number;
  /** As the patient said at the first visit. */
  usualPain: number;
  days: readonly DemoDay[];
}

/** In every pseudonym, so that it is seen wherever the patient is. */
export const demoWord = 'Invented';

const monday = (week: number) => 7 * week;
const thursday = (week: number) => 7 * week + 3;

/** A change beyond error, no change, and a flare-up of pain. All of it is invented; nobody was treated so. */
export const demoCourses: readonly DemoCourse[] = [
  {
    pseudonym: `${demoWord} Heron 11`,
    notes: {
      painfulSide: 'right',
      sites: ['outer'],
      goals: 'Walk down to the harbour and back.',
      restrictions: '',
      sinceWeeks: 10,
    },
    sides: ['right', 'left'],
    painLimit: 6,
    usualPain: 4,
    days: [
      { day: monday(0), peakDeg: 16.5, leftDeg: 4, pain: [4, 6, 5], nextDay: 6, effort: 6 },
      { day: thursday(0), peakDeg: 15.5, leftDeg: 4, pain: [4, 5, 5], nextDay: 6, effort: 6 },
      { day: monday(1), peakDeg: 15, leftDeg: 3, pain: [4, 5, 4], nextDay: 4, effort: 6 },
      { day: thursday(1), peakDeg: null, leftDeg: null, pain: [3, 4, 4], nextDay: 4, effort: 5 },
      { day: monday(2), peakDeg: 12, leftDeg: 5, pain: [3, 4, 3], nextDay: 3, effort: 5 },
      { day: thursday(2), peakDeg: 11, leftDeg: 4, pain: [3, 4, 3], nextDay: 3, effort: 5 },
      { day: monday(3), peakDeg: 9.5, leftDeg: 3, pain: [2, 3, 3], nextDay: 3, effort: 5 },
      { day: monday(4), peakDeg: 8, leftDeg: 4, pain: [2, 3, 2], nextDay: 2, effort: 4 },
      { day: thursday(4), peakDeg: 6, leftDeg: 4, pain: [2, 2, 2], nextDay: 2, effort: 4 },
      { day: monday(5), peakDeg: 5, leftDeg: 3, pain: [1, 2, 1], nextDay: 1, effort: 4 },
      {
        day: thursday(5),
        peakDeg: 5,
        leftDeg: 4,
        pain: [1, 2, 1],
        nextDay: 1,
        effort: 4,
        remark: 'The stairs were easier this week.',
      },
    ],
  },
  {
    pseudonym: `${demoWord} Otter 12`,
    notes: { painfulSide: 'right', sites: ['front'], goals: '', restrictions: '', sinceWeeks: 26 },
    sides: ['right'],
    painLimit: 4,
    usualPain: 3,
    days: [
      { day: monday(0), peakDeg: 9, leftDeg: null, pain: [3, 3, 3], nextDay: 3, effort: 5 },
      { day: thursday(0), peakDeg: 11, leftDeg: null, pain: [2, 3, 3], nextDay: 3, effort: 5 },
      { day: monday(1), peakDeg: 8, leftDeg: null, pain: [3, 3, 2], nextDay: 2, effort: 6 },
      { day: thursday(1), peakDeg: 10, leftDeg: null, pain: [2, 2, 3], nextDay: 3, effort: 5 },
      { day: monday(2), peakDeg: 9, leftDeg: null, pain: [3, 4, 3], nextDay: 3, effort: 6 },
      { day: monday(3), peakDeg: 11, leftDeg: null, pain: [2, 3, 3], nextDay: 3, effort: 5 },
      { day: thursday(3), peakDeg: 8, leftDeg: null, pain: [3, 3, 3], nextDay: 3, effort: 5 },
      { day: monday(4), peakDeg: 9, leftDeg: null, pain: [3, 3, 2], nextDay: 2, effort: 6 },
      { day: thursday(4), peakDeg: 10, leftDeg: null, pain: [2, 3, 3], nextDay: 3, effort: 5 },
      { day: monday(5), peakDeg: 8, leftDeg: null, pain: [3, 3, 3], nextDay: 3, effort: 5 },
      { day: thursday(5), peakDeg: 9, leftDeg: null, pain: [2, 3, 2], nextDay: 2, effort: 5 },
    ],
  },
  {
    pseudonym: `${demoWord} Swift 13`,
    notes: {
      painfulSide: 'right',
      sites: ['outer', 'front'],
      goals: '',
      restrictions: 'No kneeling.',
      sinceWeeks: 5,
    },
    sides: ['right'],
    painLimit: 4,
    usualPain: 2,
    days: [
      { day: monday(0), peakDeg: 11, leftDeg: null, pain: [2, 2, 2], nextDay: 2, effort: 5 },
      { day: thursday(0), peakDeg: 12, leftDeg: null, pain: [2, 3, 2], nextDay: 2, effort: 5 },
      { day: monday(1), peakDeg: 10, leftDeg: null, pain: [2, 2, 2], nextDay: 2, effort: 5 },
      { day: thursday(1), peakDeg: 11, leftDeg: null, pain: [2, 2, 2], nextDay: 2, effort: 6 },
      { day: monday(2), peakDeg: 10, leftDeg: null, pain: [2, 3, 2], nextDay: 2, effort: 6 },
      {
        day: thursday(2),
        peakDeg: 9,
        leftDeg: null,
        pain: [3, 6, 7],
        nextDay: 6,
        effort: 8,
        isStopped: true,
        remark: 'Worse since a long walk down the hill on Wednesday.',
      },
      { day: thursday(3), peakDeg: 11, leftDeg: null, pain: [4, 4, 4], nextDay: 4, effort: 5 },
      { day: monday(4), peakDeg: 10, leftDeg: null, pain: [3, 4, 3], nextDay: 3, effort: 5 },
      { day: thursday(4), peakDeg: 9, leftDeg: null, pain: [3, 3, 3], nextDay: 3, effort: 5 },
      { day: monday(5), peakDeg: 10, leftDeg: null, pain: [2, 3, 2], nextDay: 2, effort: 5 },
      { day: thursday(5), peakDeg: 9, leftDeg: null, pain: [2, 2, 2], nextDay: 2, effort: 5 },
    ],
  },
];
