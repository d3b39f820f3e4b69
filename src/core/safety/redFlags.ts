import type { SignId } from './signs';

/** A sign that means: do not exercise, contact a professional. */
export interface RedFlag {
  id: SignId;
  /** In plain words, as it follows 'Do not exercise if'. */
  words: string;
  /** Who to turn to, and how soon. */
  advice: string;
  /** Where it is published; null: common practice, no source. */
  source: string | null;
}

const professional = 'Do not exercise. Contact your therapist or doctor today.';
const urgent = 'Do not exercise. See a doctor today.';
const emergency = 'With chest pain, or if you are short of breath, call the emergency number at once.';
const kneePage =
  'public health service, musculoskeletal physiotherapy, page on knees (NHS Greater Glasgow and Clyde)';
const ottawa = 'Ottawa knee rule, Stiell et al. 1996, JAMA 275:611, in plain words';

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
    words:
      'one calf is newly swollen, warm or painful, above all after an operation, or after weeks in bed or in a cast',
    advice: `${urgent} ${emergency}`,
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
      'to a right angle; you could not take four steps right after it, or you cannot now',
    advice: urgent,
    source: ottawa,
  },
  {
    id: 'swollen-after-twist',
    words: 'you twisted or hit the knee, and it swelled up within hours',
    advice: urgent,
    source: null,
  },
  {
    id: 'straight-leg',
    words: 'you cannot lift the leg with the knee straight, or you felt a pop and the leg is suddenly weak',
    advice: urgent,
    source: null,
  },
  {
    id: 'shape',
    words: 'the knee looks a different shape, or it is stuck and cannot be straightened',
    advice: urgent,
    source: kneePage,
  },
  {
    id: 'cold-foot',
    words: 'one foot has turned cold, pale or blue',
    advice: 'Do not exercise. Get a doctor’s help at once; call the emergency number.',
    source: null,
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
    id: 'weight-loss',
    words: 'the pain never stops, and you are losing weight without trying, or have had cancer',
    advice: professional,
    source: null,
  },
  {
    id: 'young-limp',
    words: 'you are under 18, and you limp, or your hip, groin or thigh hurts',
    advice: `${urgent} Walk on it as little as you can until then.`,
    source: null,
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
    advice: `${professional} ${emergency}`,
    source: null,
  },
];

const seenFirst = 'Do not exercise until your therapist or doctor has seen it. Contact one of them today.';

/** Signs that are only asked for as new since the last session. */
export const otherSigns: readonly RedFlag[] = [
  { id: 'swollen', words: 'the knee is more swollen than usual', advice: seenFirst, source: null },
  { id: 'much-swollen', words: 'the knee is much more swollen than usual', advice: urgent, source: null },
  { id: 'gave-way', words: 'the knee gave way', advice: seenFirst, source: null },
  { id: 'locked', words: 'the knee locked or got stuck', advice: seenFirst, source: null },
  {
    id: 'fell',
    words: 'you have had a fall, or a blow to the knee',
    advice:
      `${seenFirst} See a doctor today if you are 55 or older, if pressing on the kneecap or on the bony bump ` +
      'outside just below the knee hurts, or if you cannot bend the knee to a right angle or take four steps.',
    source: ottawa,
  },
];

/** What a sign means to the person. */
export function findSign(id: SignId): RedFlag {
  return [...redFlags, ...otherSigns].find((sign) => sign.id === id)!;
}
