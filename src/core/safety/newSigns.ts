import type { SignId } from './signs';

/** One of the questions before every session but the first. */
export interface NewSigns {
  question: string;
  /** The answers that end the session, in few words. */
  signs: readonly { id: SignId; words: string }[];
}

/** What is asked where the whole list was answered before; common practice, no source. */
export const newSigns: readonly NewSigns[] = [
  {
    question: 'Knee more swollen?',
    signs: [
      { id: 'swollen', words: 'More than usual' },
      { id: 'much-swollen', words: 'Much more' },
    ],
  },
  {
    question: 'Did it let you down?',
    signs: [
      { id: 'gave-way', words: 'It gave way' },
      { id: 'locked', words: 'It locked or got stuck' },
    ],
  },
  {
    question: 'Anything else?',
    signs: [
      { id: 'fell', words: 'A fall or blow' },
      { id: 'hot-joint', words: 'Fever, or hot, red joint' },
      { id: 'calf', words: 'Swollen, warm or painful calf' },
      { id: 'numbness', words: 'Numbness, tingling or weakness' },
    ],
  },
];
