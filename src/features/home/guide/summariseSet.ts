import { group } from 'd3-array';
import type { CountInLine } from '#core/chance/countInLine';
import { findMeasure } from '#core/measures/measures';
import { addedMeasures, type Limits } from '#core/protocol/limits';
import { countSet, type JudgedExtremes } from '#core/scoring/countSet';
import { decidingMeasure, decidingWay } from '#core/scoring/deciding';
import type { Judgement } from '#core/scoring/judge';
import { verdictSide } from '#core/scoring/verdict';
import { habitSentence, measureCue } from '#words/measureWords';
import { message } from '#words/messages/message';
import { placesWords } from '#words/placesWords';
import { reasonWords } from '#words/reasonWords';

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
      well: message('told.took-time'),
      practise: message('told.none-seen'),
      unmeasured: null,
      inLineShare: null,
      faults: null,
    };
  }
  const count = countSet(repetitions, limits);
  if (count === null) {
    return {
      well: doneSentence(judged.length, prescribed),
      practise: message('told.unseen'),
      unmeasured: unmeasuredSentence(judged, 0),
      inLineShare: null,
      faults: null,
    };
  }
  const hasOthers = addedMeasures(limits).length > 0;
  const doubts = [
    isSideDoubtful ? message('told.other-leg') : null,
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

/** Whether some were in line, and not just any number of them may have been. */
function isTelling({ low, high, mode, chancesInLine }: CountInLine): boolean {
  return mode > 0 && (low > 0 || high < chancesInLine.length);
}

/** 'In about 4 of 6 repetitions your knee stayed over the foot.' */
function inLineSentence({ low, high, mode, chancesInLine }: CountInLine, hasOthers: boolean): string {
  const of = chancesInLine.length;
  const which = low === high ? share(low, of) : message('which.about', { count: mode, of });
  return message(hasOthers ? 'told.within' : 'told.over-foot', { which });
}

/** Where most could not be told. */
function tooCloseSentence(measured: readonly Judged[]): string | null {
  const close = measured.filter(({ verdict }) => verdict === 'cant-tell').length;
  if (close === 0 || close * 2 < measured.length) return null;
  return message('told.too-close', { which: share(close, measured.length) });
}

function doneSentence(done: number, prescribed: number | null): string {
  const isAll = prescribed !== null && prescribed > 1 && done === prescribed;
  return message(isAll ? 'told.did-all' : 'told.did', { count: done });
}

/** The most frequent fault is the one to practise; what can't be told from staying in line is none. */
function practiseSentence(judged: readonly Judged[]): string {
  const measured = judged.filter(({ verdict }) => verdict !== 'not-measured').length;
  const told = judged
    .map((one, index) => ({ ...one, place: index + 1 }))
    .filter(({ verdict }) => verdictSide(verdict) === 'out');
  if (told.length === 0) return message('told.keep-going');
  const inward = told.filter((one) => decidingWay(one) === 'inward');
  const outward = told.filter((one) => decidingWay(one) === 'outward');
  const others = told.filter((one) => !findMeasure(one.decidedBy).isAlwaysLimited);
  if (others.length > Math.max(inward.length, outward.length)) return otherSentence(others, measured);
  if (inward.length === outward.length) return message('told.both-ways');
  const isInward = inward.length > outward.length;
  const which = whichOnes(isInward ? inward : outward, measured);
  return message(isInward ? 'told.inward' : 'told.outward', { which });
}

type Placed = Judged & { place: number };

/** Where most faults are in measures besides the knee: the most frequent of them. */
function otherSentence(others: readonly Placed[], of: number): string {
  const faulty = others.map((one) => ({ ...decidingMeasure(one), place: one.place }));
  const alike = [...group(faulty, ({ measure, end }) => `${measure} ${end}`).values()];
  const [most = []] = alike.sort((a, b) => b.length - a.length);
  const { measure, end } = most[0]!;
  return `${habitSentence(measure, end, whichOnes(most, of))} ${measureCue(measure, end)}`;
}

/** So few are named one by one. */
const mostNamed = 3;

/** 'the third and the sixth repetition'; where they are many, their number. */
function whichOnes(ones: readonly { place: number }[], of: number): string {
  if (ones.length === of || ones.length > mostNamed) return share(ones.length, of);
  return placesWords(ones.map(({ place }) => place));
}

function unmeasuredSentence(judged: readonly Judged[], measured: number): string | null {
  const left = judged.length - measured;
  if (left === 0) return null;
  const reasons = judged.flatMap(({ verdict, reason }) =>
    verdict === 'not-measured' && reason !== null ? [reason] : [],
  );
  const often = (reason: string) => reasons.filter((other) => other === reason).length;
  const [main] = [...reasons].sort((a, b) => often(b) - often(a));
  const count = judged.length;
  if (main === undefined) return message('told.unmeasured', { left, count });
  const { short: reason, advice } = reasonWords(main);
  const fact = message('told.unmeasured-because', { left, count, reason });
  return main === 'thigh-foreshortened' ? fact : `${fact} ${advice}`;
}

/** '2 of 6 repetitions', 'all 6 repetitions'. */
function share(count: number, of: number): string {
  return count < of ? message('which.some', { count, of }) : message('which.all', { of });
}
