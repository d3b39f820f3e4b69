import { group } from 'd3-array';
import type { CountInLine } from '#core/chance/countInLine';
import { findMeasure } from '#core/measures/measures';
import { addedMeasures, type Limits } from '#core/protocol/limits';
import { countSet, type JudgedExtremes } from '#core/scoring/countSet';
import { decidingMeasure, decidingWay } from '#core/scoring/deciding';
import type { Judgement } from '#core/scoring/judge';
import { verdictSide } from '#core/scoring/verdict';
import { ordinalWord } from '#words/ordinalWord';
import { reasonWords } from '#words/reasonWords';
import { repetitionCount } from '#words/repetitionCount';

/** A set in plain words for the patient; no diagnosis, no numbers of degrees. */
export interface SetSummary {
  /** One thing done well. */
  well: string;
  /** One thing to practise. */
  practise: string;
  /** What could not be measured or is in doubt, and what to change; null where nothing is. */
  unmeasured: string | null;
  /** Share of the measured repetitions that is expected to have been in line, 0 to 1; null where that says nothing. */
  inLineShare: number | null;
  /** Repetitions out of line; null where none was measured. */
  faults: number | null;
}

type Judged = Pick<Judgement, 'verdict' | 'decidedBy' | 'reason' | 'measures'>;
export type SummarisedRepetition = JudgedExtremes & { judgement: Judged };

/**
 * @param repetitions  the complete ones of the set, in order
 * @param limits  that they were judged by
 * @param prescribed  repetitions asked for; null without a plan
 * @param isSideDoubtful  whether it looks as if the other leg worked
 */
export function summariseSet(
  repetitions: readonly SummarisedRepetition[],
  limits: Limits,
  prescribed: number | null,
  isSideDoubtful = false,
): SetSummary {
  const judged = repetitions.map(({ judgement }) => judgement);
  const measured = judged.filter(({ verdict }) => verdict !== 'not-measured');
  if (judged.length === 0) {
    return {
      well: 'You took the time to exercise.',
      practise:
        'No repetition was seen, so nothing can be said about this set. Next time move slowly, through the whole movement.',
      unmeasured: null,
      inLineShare: null,
      faults: null,
    };
  }
  const count = countSet(repetitions, limits);
  if (count === null) {
    return {
      well: doneSentence(judged.length, prescribed),
      practise:
        'The camera could not see how your knee moved, so there is nothing to say about it this time.',
      unmeasured: unmeasuredSentence(judged, 0),
      inLineShare: null,
      faults: null,
    };
  }
  const hasOthers = addedMeasures(limits).length > 0;
  const doubts = [
    isSideDoubtful ? otherLegSentence : null,
    tooCloseSentence(measured),
    unmeasuredSentence(judged, measured.length),
  ];
  return {
    well: isTelling(count) ? inLineSentence(count, hasOthers) : doneSentence(judged.length, prescribed),
    practise: practiseSentence(judged),
    unmeasured: doubts.filter((doubt) => doubt !== null).join(' ') || null,
    inLineShare: isTelling(count) ? count.expected / count.chancesInLine.length : null,
    faults: measured.filter(({ verdict }) => verdictSide(verdict) === 'out').length,
  };
}

const otherLegSentence =
  'It looks as if your other leg did the work; then none of this is about the leg that was meant.';

/** Whether some were in line, and not just any number of them may have been. */
function isTelling({ low, high, mode, chancesInLine }: CountInLine): boolean {
  return mode > 0 && (low > 0 || high < chancesInLine.length);
}

/** 'In about 4 of 6 repetitions your knee stayed over the foot.' */
function inLineSentence({ low, high, mode, chancesInLine }: CountInLine, hasOthers: boolean): string {
  const of = chancesInLine.length;
  const told = low === high ? share(low, of) : `about ${mode} of ${repetitionCount(of)}`;
  return `In ${told} ${hasOthers ? 'you stayed within every limit' : 'your knee stayed over the foot'}.`;
}

/** Where most could not be told. */
function tooCloseSentence(measured: readonly Judged[]): string | null {
  const close = measured.filter(({ verdict }) => verdict === 'cant-tell').length;
  if (close === 0 || close * 2 < measured.length) return null;
  return `In ${share(close, measured.length)} it was too close to tell.`;
}

function doneSentence(done: number, prescribed: number | null): string {
  if (prescribed !== null && prescribed > 1 && done === prescribed)
    return `You did all ${repetitionCount(done)}.`;
  return `You did ${repetitionCount(done)}.`;
}

/** The most frequent fault is the one to practise; what can't be told from staying in line is none. */
function practiseSentence(judged: readonly Judged[]): string {
  const measured = judged.filter(({ verdict }) => verdict !== 'not-measured').length;
  const told = judged
    .map((one, index) => ({ ...one, place: index + 1 }))
    .filter(({ verdict }) => verdictSide(verdict) === 'out');
  if (told.length === 0) return 'Keep going like this: slow, and the knee over the middle of the foot.';
  const inward = told.filter((one) => decidingWay(one) === 'inward');
  const outward = told.filter((one) => decidingWay(one) === 'outward');
  const others = told.filter((one) => !findMeasure(one.decidedBy).isAlwaysLimited);
  if (others.length > Math.max(inward.length, outward.length)) return otherSentence(others, measured);
  if (inward.length === outward.length) {
    return 'Your knee went sometimes inward, sometimes outward. Go slowly, and keep it over the middle of the foot.';
  }
  const isInward = inward.length > outward.length;
  const which = whichOnes(isInward ? inward : outward, measured);
  const [way, cue] = isInward
    ? ['inward, towards the other knee', 'Guide it out a little']
    : ['outward, away from the other knee', 'Guide it in a little'];
  return `In ${which} your knee went ${way}. ${cue}, over the middle of the foot.`;
}

type Placed = Judged & { place: number };

/** Where most faults are in measures besides the knee: the most frequent of them. */
function otherSentence(others: readonly Placed[], of: number): string {
  const faulty = others.map((one) => ({ ...decidingMeasure(one), place: one.place }));
  const alike = [...group(faulty, ({ measure, end }) => `${measure} ${end}`).values()];
  const [most = []] = alike.sort((a, b) => b.length - a.length);
  const { measure, end } = most[0]!;
  const { habits, cues } = findMeasure(measure);
  return `In ${whichOnes(most, of)} ${habits[end]}. ${cues[end]}`;
}

/** So few are named one by one. */
const mostNamed = 3;

/** 'the third and the sixth repetition'; where they are many, their number. */
function whichOnes(ones: readonly { place: number }[], of: number): string {
  if (ones.length === of || ones.length > mostNamed) return share(ones.length, of);
  const names = ones.map(({ place }) => `the ${ordinalWord(place)}`);
  return `${listed.format(names)} repetition`;
}

const listed = new Intl.ListFormat('en-GB', { type: 'conjunction' });

function unmeasuredSentence(judged: readonly Judged[], measured: number): string | null {
  const left = judged.length - measured;
  if (left === 0) return null;
  const reasons = judged.flatMap(({ verdict, reason }) =>
    verdict === 'not-measured' && reason !== null ? [reason] : [],
  );
  const often = (reason: string) => reasons.filter((other) => other === reason).length;
  const [main] = [...reasons].sort((a, b) => often(b) - often(a));
  const fact = `${left} of ${repetitionCount(judged.length)} could not be measured`;
  if (main === undefined) return `${fact}.`;
  const { short, advice } = reasonWords[main];
  return main === 'thigh-foreshortened' ? `${fact}: ${short}.` : `${fact}: ${short}. ${advice}`;
}

/** '2 of 6 repetitions', 'all 6 repetitions'. */
function share(count: number, of: number): string {
  if (count < of) return `${count} of ${repetitionCount(of)}`;
  if (of === 2) return 'both repetitions';
  return of === 1 ? 'the one repetition that was measured' : `all ${repetitionCount(of)}`;
}
