/** A question whose answer is a whole number. */
export interface ScaleQuestion {
  linkId: string;
  asks: string;
  min: number;
  max: number;
  /** What the ends mean. */
  low: string;
  high: string;
}

/** How far a score may be off, and what change people call important. */
export interface ScoreFacts {
  /** A change is beyond error from here on; null where nothing is published that we know of. */
  detectable: { points: number; source: string } | null;
  important: { points: number; source: string } | null;
}

/** A questionnaire of our own words, of a kind that belongs to nobody. */
export interface BuiltInQuestionnaire extends ScoreFacts {
  id: string;
  title: string;
  /** How it is asked, for the therapist. */
  how: string;
  questions: readonly ScaleQuestion[];
  /** Whether the answers are averaged, or each stands by itself. */
  scored: 'mean' | 'each';
  /** What it does not tell. */
  notTold: string;
}

const pain = { min: 0, max: 10, low: 'no pain', high: 'worst imaginable' } as const;
const activity = { min: 0, max: 10, low: 'can’t do it', high: 'as before the problem' } as const;

/** Numeric pain, own activities and global change. */
export const builtInQuestionnaires = [
  {
    id: 'numeric-pain',
    title: 'Pain, 0 to 10',
    how: 'Ask for a whole number each time.',
    questions: [
      { linkId: 'now', asks: 'How much does the knee hurt now?', ...pain },
      { linkId: 'usual', asks: 'How much does it usually hurt?', ...pain },
      { linkId: 'worst', asks: 'How much did it hurt at its worst in the last 7 days?', ...pain },
    ],
    scored: 'each',
    detectable: {
      points: 2.8,
      source: 'before a knee replacement, n = 75, on a line of 10 cm (BMC Musculoskelet Disord 2014, 15:235)',
    },
    important: {
      points: 1.16,
      source: 'patellofemoral pain, n = 60, found for pain that eased (Piva 2009, J Rehabil Med 41(3))',
    },
    notTold: 'What is remembered of a week is not what was felt in it.',
  },
  {
    id: 'own-activities',
    title: 'Own activities, 0 to 10',
    how: 'The patient names three activities that are hard because of the knee. Ask for the same ones each time.',
    questions: [1, 2, 3].map((number) => ({
      linkId: `activity-${number}`,
      asks: `Activity ${number}`,
      ...activity,
    })),
    scored: 'mean',
    detectable: {
      points: 2,
      source: 'mean of several activities, with 90 % certainty (Stratford 1995, Physiother Can 47:258)',
    },
    important: null,
    notTold: 'Activities differ from person to person, so no two people are compared.',
  },
  {
    id: 'global-change',
    title: 'Change as a whole, −3 to 3',
    how: 'Compared with the first visit.',
    questions: [
      {
        linkId: 'change',
        asks: 'Compared with the first visit, how is the knee as a whole?',
        min: -3,
        max: 3,
        low: 'much worse',
        high: 'much better',
      },
    ],
    scored: 'each',
    detectable: null,
    important: null,
    notTold: 'It rests on how well the first visit is remembered, and leans towards how it is today.',
  },
] as const satisfies readonly BuiltInQuestionnaire[];

export type BuiltInId = (typeof builtInQuestionnaires)[number]['id'];

/** Null where it is none that is built in. */
export function findBuiltIn(id: string): BuiltInQuestionnaire | null {
  return builtInQuestionnaires.find((one) => one.id === id) ?? null;
}
