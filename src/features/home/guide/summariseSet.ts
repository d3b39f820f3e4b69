import { group } from 'd3-array';
import { findMeasure } from '#core/measures/measures';
import { decidingMeasure, decidingWay } from '#core/scoring/deciding';
import { judgementOf, type Judgement } from '#core/scoring/judge';
import type { MeasureJudgement } from '#core/scoring/judgeMeasure';
import { reasonWords } from '#words/reasonWords';
import { repetitionCount } from '#words/repetitionCount';

/** A set in plain words for the patient; no diagnosis, no numbers of degrees. */
export interface SetSummary {
  /** One thing done well. */
  well: string;
  /** One thing to practise. */
  practise: string;
  /** What could not be measured, and what to change; null where all was. */
  unmeasured: string | null;
}

type JudgedRepetition = Pick<Judgement, 'verdict' | 'decidedBy' | 'reason' | 'measures'>;

/**
 * @param judged  the complete repetitions of the set, in order
 * @param prescribed  repetitions asked for; null without a plan
 */
export function summariseSet(judged: readonly JudgedRepetition[], prescribed: number | null): SetSummary {
  const measured = judged.filter(({ verdict }) => verdict !== 'not-measured');
  const unmeasured = unmeasuredSentence(judged, measured.length);
  if (judged.length === 0) {
    return {
      well: 'You took the time to exercise.',
      practise:
        'No repetition was seen, so nothing can be said about this set. Next time move slowly, through the whole movement.',
      unmeasured: null,
    };
  }
  if (measured.length === 0) {
    return {
      well: doneSentence(judged.length, prescribed),
      practise:
        'The camera could not see how your knee moved, so there is nothing to say about it this time.',
      unmeasured,
    };
  }
  const inLine = measured.filter((one) => judgementOf(one, 'knee-angle').verdict === 'in-line').length;
  const well =
    inLine === 0
      ? doneSentence(judged.length, prescribed)
      : `In ${share(inLine, measured.length)} your knee stayed over the foot.`;
  return { well, practise: practiseSentence(measured), unmeasured };
}

function doneSentence(done: number, prescribed: number | null): string {
  if (prescribed !== null && prescribed > 1 && done === prescribed)
    return `You did all ${repetitionCount(done)}.`;
  return `You did ${repetitionCount(done)}.`;
}

/** The most frequent fault is the one to practise; without one, the limit that was approached. */
function practiseSentence(measured: readonly JudgedRepetition[]): string {
  const outside = measured.filter(({ verdict }) => verdict === 'out-of-line');
  const near = measured.filter(({ verdict }) => verdict === 'near-limit');
  if (outside.length === 0 && near.length === 0) {
    return 'Keep going like this: slow, and the knee over the middle of the foot.';
  }
  const told = outside.length > 0 ? outside : near;
  const inward = told.filter((one) => decidingWay(one) === 'inward').length;
  const outward = told.filter((one) => decidingWay(one) === 'outward').length;
  const others = told.map(decidingMeasure).filter(({ measure }) => !findMeasure(measure).isAlwaysLimited);
  if (others.length > Math.max(inward, outward))
    return otherSentence(others, measured.length, outside.length > 0);
  const went = outside.length > 0 ? 'went' : 'came close to the edge,';
  if (inward === outward) {
    return `Your knee ${went} sometimes inward, sometimes outward. Go slowly, and keep it over the middle of the foot.`;
  }
  const isInward = inward > outward;
  const count = share(Math.max(inward, outward), measured.length);
  const [way, cue] = isInward
    ? ['inward, towards the other knee', 'Guide it out a little']
    : ['outward, away from the other knee', 'Guide it in a little'];
  return `In ${count} your knee ${went} ${way}. ${cue}, over the middle of the foot.`;
}

/** Where most faults are in measures besides the knee: the most frequent of them. */
function otherSentence(others: readonly MeasureJudgement[], of: number, isOutside: boolean): string {
  const alike = [...group(others, ({ measure, end }) => `${measure} ${end}`).values()];
  const [most = []] = alike.sort((a, b) => b.length - a.length);
  const { measure, end } = most[0]!;
  const count = share(most.length, of);
  const { habits, cues } = findMeasure(measure);
  return `In ${count} ${isOutside ? habits[end] : 'you came close to a limit'}. ${cues[end]}`;
}

function unmeasuredSentence(judged: readonly JudgedRepetition[], measured: number): string | null {
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
  return of === 1 ? 'the one repetition that was measured' : `all ${repetitionCount(of)}`;
}
