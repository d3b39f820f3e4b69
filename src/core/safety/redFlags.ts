/** A sign that means: do not exercise, contact a professional. */
export interface RedFlag {
  id: string;
  /** In plain words, as it follows 'Do not exercise if'. */
  words: string;
  /** Who to turn to, and how soon. */
  advice: string;
  /** Where it is published; null: common practice, no source. */
  source: string | null;
}

const professional = 'Do not exercise. Contact your therapist or doctor today.';
const urgent = 'Do not exercise. See a doctor today.';
const kneePage =
  'public health service, musculoskeletal physiotherapy, page on knees (NHS Greater Glasgow and Clyde)';

/** The usual ones, not a complete list. They refer to a professional and suggest no diagnosis. */
export const redFlags: readonly RedFlag[] = [
  {
    id: 'hot-joint',
    words: 'you have a fever or feel ill, or a joint is hot, red and swollen',
    advice: urgent,
    source: kneePage,
  },
  {
    id: 'calf',
    words: 'one calf is newly swollen, warm or painful',
    advice: `${urgent} With chest pain or shortness of breath, call the emergency number at once.`,
    source: null,
  },
  {
    id: 'no-weight',
    words: 'you cannot put weight on the leg',
    advice: urgent,
    source: kneePage,
  },
  {
    id: 'fall-or-blow',
    words:
      'you have had a fall or a blow to the knee, and one of these is true: you are 55 or older; pressing on the ' +
      'kneecap hurts; pressing on the bony bump on the outside just below the knee hurts; you cannot bend the knee ' +
      'to a right angle; you cannot take four steps',
    advice: urgent,
    source: 'Ottawa knee rule, Stiell et al. 1996, JAMA 275:611, in plain words',
  },
  {
    id: 'shape',
    words: 'the knee has changed shape, or it is stuck and cannot be straightened',
    advice: urgent,
    source: kneePage,
  },
  {
    id: 'numbness',
    words: 'the leg or foot is newly numb, tingling or weak',
    advice: `${professional} If you have trouble controlling your bladder or bowels, call the emergency number at once.`,
    source: null,
  },
  {
    id: 'night-pain',
    words: 'the pain does not change with rest and wakes you night after night',
    advice: professional,
    source: kneePage,
  },
  {
    id: 'wound',
    words: 'a wound on the leg opens, bleeds or oozes',
    advice: professional,
    source: null,
  },
  {
    id: 'dizzy',
    words: 'you are dizzy or unsteady today',
    advice: `${professional} With chest pain or shortness of breath, call the emergency number at once.`,
    source: null,
  },
];
