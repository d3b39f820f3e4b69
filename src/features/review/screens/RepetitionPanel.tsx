import type { ReactNode } from 'react';
import { Button } from 'react-aria-components';
import { findTask } from '#core/exercises/exercises';
import type { MeasuredRepetition, Setup } from '#core/measurement/measurement';
import type { Extreme } from '#core/measurement/measureRange';
import { findMeasure, type MeasureId } from '#core/measures/measures';
import type { Limits } from '#core/protocol/limits';
import { judgementOf, type Judgement } from '#core/scoring/judge';
import { kneeAtDeepest } from '#core/scoring/kneeAtDeepest';
import type { ShownRecording } from '#shell/tracking/shownRecording';
import { VerdictLabel } from '#ui/components/VerdictLabel';
import { chanceWords } from '#words/chanceWords';
import { completenessWords } from '#words/completenessWords';
import { longMeasure } from '#words/formatMeasure';
import { formatTime } from '#words/formatTime';
import { limitWords } from '#words/limitWords';
import { reasonWords } from '#words/reasonWords';
import { shortCm } from '#words/shortCm';
import { tempo } from '#words/tempo';
import { verdictWords } from '#words/verdictWords';
import { StillFigure } from './StillFigure';
import { stillMoment } from './stillMoment';

interface Props {
  recording: ShownRecording;
  repetition: MeasuredRepetition;
  judgement: Judgement;
  limits: Limits;
  /** False where the video or a still elsewhere shows it. */
  showsStill: boolean;
  /** Whether joints are being corrected. */
  hasHandles: boolean;
  onSeek: (timeMs: number) => void;
  /** What else can be done with it. */
  children?: ReactNode;
}

/** One repetition: the picture at its worst instant, and its numbers in words. */
export function RepetitionPanel({
  recording,
  repetition,
  judgement,
  limits,
  showsStill,
  hasHandles,
  onSeek,
  children,
}: Props) {
  const { setup } = recording.measurement;
  const moment = stillMoment(recording.measurement, repetition, judgement);
  return (
    <section className="repetition" aria-label={`Repetition ${repetition.number}`}>
      {showsStill && (
        <StillFigure recording={recording} limits={limits} moment={moment} hasHandles={hasHandles} />
      )}
      <div className="repetition-words">
        <header className="repetition-head">
          <h2 className="repetition-title">
            Repetition {repetition.number}: <VerdictLabel judgement={judgement} side={setup.side} />
          </h2>
          <Button className="button button-quiet no-print" onPress={() => onSeek(moment.timeMs)}>
            Go to this moment
          </Button>
          {children}
        </header>
        {judgement.reason !== null && (
          <p>
            The reason: {reasonWords(judgement.reason).short}. {reasonWords(judgement.reason).advice}
          </p>
        )}
        <Facts
          repetition={repetition}
          judgement={judgement}
          limits={limits}
          deepest={kneeAtDeepest(recording.measurement, repetition)}
          setup={setup}
        />
      </div>
    </section>
  );
}

type FactsProps = Pick<Props, 'repetition' | 'judgement' | 'limits'> & {
  deepest: Extreme | null;
  setup: Pick<Setup, 'task' | 'bodyHeightCm'>;
};

/** What is reported of every repetition besides the knee angle. */
const always: readonly MeasureId[] = ['knee-off-line', 'knee-over-foot', 'hip-over-knee'];

function Facts({ repetition, judgement, limits, deepest, setup }: FactsProps) {
  const { alignmentScorePct, measures } = judgement;
  const { ranges, completeness } = repetition;
  const knee = judgementOf(judgement, 'knee-angle');
  const { measuredShare, mainReason } = ranges['knee-angle'];
  const lacking = completenessWords[completeness];
  const facts: [string, ReactNode][] = [];
  const others: [string, ReactNode][] = [];
  const withCm = (id: MeasureId, extreme: Extreme) => {
    const cm = shortCm(extreme, setup.bodyHeightCm);
    return longMeasure(id, extreme) + (cm === null ? '' : ` (${cm})`);
  };
  for (const { measure, verdict, end, extreme, reason } of measures) {
    const { name, isAlwaysLimited } = findMeasure(measure);
    if (isAlwaysLimited) continue;
    const value =
      extreme === null
        ? reasonWords(reason!).short
        : `${longMeasure(measure, extreme)}, at ${formatTime(extreme.timeMs)}`;
    const limit = limitWords(measure, end, limits[measure]?.[end] ?? 0);
    others.push([name, `${verdictWords(verdict)} (limit ${limit}): ${value}`]);
  }
  if (knee.verdict === 'not-measured' && judgement.verdict !== 'not-measured')
    facts.push([
      'Knee angle',
      `not measured${mainReason === null ? '' : `: ${reasonWords(mainReason).short}`}`,
    ]);
  if (knee.extreme !== null) {
    const { timeMs, isAtEdge = false } = knee.extreme;
    const edge = isAtEdge ? '; at the edge of what was seen, so there may have been more' : '';
    facts.push(['Peak angle', `${longMeasure('knee-angle', knee.extreme)}, at ${formatTime(timeMs)}${edge}`]);
  }
  // What decides stands first.
  if (judgement.decidedBy === 'knee-angle') facts.push(...others);
  else facts.unshift(...others);
  if (deepest !== null)
    facts.push(['At the deepest', `${longMeasure('knee-angle', deepest)}, at ${formatTime(deepest.timeMs)}`]);
  if (judgement.chanceInLine !== null) facts.push(['Chance in line', chanceWords(judgement.chanceInLine)]);
  for (const id of always) {
    const { name, peak } = findMeasure(id);
    const extreme = peak(ranges[id]);
    if (extreme !== null) facts.push([name, withCm(id, extreme)]);
  }
  const parts = tempo(repetition, findTask(setup.task).shape);
  facts.push([
    'Tempo',
    parts
      .map(({ name, seconds }) => `${name} ${seconds === null ? 'not seen' : `${seconds.toFixed(1)} s`}`)
      .join(', '),
  ]);
  if (measuredShare < 0.995 && mainReason !== null && knee.extreme !== null) {
    const percent = Math.round(100 * measuredShare);
    facts.push(['Measured', `${percent} % of the loaded time; the rest: ${reasonWords(mainReason).short}`]);
  }
  if (alignmentScorePct !== null)
    facts.push(['Time in line', `${Math.round(alignmentScorePct)} % of the loaded time`]);
  if (lacking !== null) facts.push(['Note', lacking.sentence]);
  return (
    <dl className="facts number">
      {facts.map(([name, value]) => (
        <div key={name}>
          <dt>{name}</dt>
          <dd>{value}</dd>
        </div>
      ))}
    </dl>
  );
}
