import type { ReactNode } from 'react';
import { Button } from 'react-aria-components';
import type { useRecording } from '../../app/AppContext';
import { formatTime } from '../../components/formatTime';
import { tempo } from '../../components/tempo';
import { VerdictLabel } from '../../components/VerdictLabel';
import type { MeasuredRepetition } from '../../measurement/measurement';
import type { Limits } from '../../protocol/limits';
import { findTask } from '../../protocol/tasks';
import type { Judgement } from '../../scoring/judge';
import { formatAngle } from '../../words/formatAngle';
import { formatDeviation } from '../../words/formatDeviation';
import { reasonWords } from '../../words/reasonWords';
import { completenessWords } from './completenessWords';
import { WorstStill } from './WorstStill';

interface Props {
  recording: NonNullable<ReturnType<typeof useRecording>>;
  repetition: MeasuredRepetition;
  judgement: Judgement;
  limits: Limits;
  onSeek: (timeMs: number) => void;
}

/** One repetition: the picture at its worst instant, and its numbers in words. */
export function RepetitionPanel({ recording, repetition, judgement, limits, onSeek }: Props) {
  const { timesMs, setup } = recording.measurement;
  const { worst } = judgement;
  const middleMs = (timesMs[repetition.loadedFrom]! + timesMs[repetition.loadedTo]!) / 2;
  const stillMs = worst?.timeMs ?? middleMs;
  return (
    <section className="repetition" aria-label={`Repetition ${repetition.number}`}>
      <figure className="repetition-still">
        <WorstStill {...{ recording, limits, timeMs: stillMs }} />
        <figcaption className="small soft">
          {worst === null ? 'Middle of the repetition' : 'Worst instant'}, {formatTime(stillMs)}
        </figcaption>
      </figure>
      <div className="repetition-words">
        <h2 className="repetition-title">
          Repetition {repetition.number}: <VerdictLabel judgement={judgement} side={setup.side} />
        </h2>
        {judgement.reason !== null && (
          <p>
            Not measured: {reasonWords[judgement.reason].short}. {reasonWords[judgement.reason].advice}
          </p>
        )}
        <Facts repetition={repetition} judgement={judgement} task={setup.task} />
        <Button className="button repetition-go no-print" onPress={() => onSeek(stillMs)}>
          Show this moment in the video
        </Button>
      </div>
    </section>
  );
}

type FactsProps = Pick<Props, 'repetition' | 'judgement'> & { task: Parameters<typeof findTask>[0] };

function Facts({ repetition, judgement, task }: FactsProps) {
  const { worst, alignmentScorePct } = judgement;
  const { kneeDeviation, measuredShare, mainReason, completeness } = repetition;
  const lacking = completenessWords[completeness];
  const facts: [string, ReactNode][] = [];
  if (worst !== null)
    facts.push(['Peak angle', `${formatAngle(worst.value)} at ${formatTime(worst.timeMs)}`]);
  if (alignmentScorePct !== null)
    facts.push(['Alignment', `${Math.round(alignmentScorePct)} % of the loaded time within the limits`]);
  if (kneeDeviation !== null)
    facts.push(['Knee off the line', `${formatDeviation(kneeDeviation.value)} (of leg length)`]);
  const parts = tempo(repetition, findTask(task).shape);
  facts.push([
    'Tempo',
    parts
      .map(({ name, seconds }) => `${name} ${seconds === null ? 'not seen' : `${seconds.toFixed(1)} s`}`)
      .join(', '),
  ]);
  if (measuredShare < 0.995 && mainReason !== null && worst !== null) {
    const percent = Math.round(100 * measuredShare);
    facts.push(['Measured', `${percent} % of the loaded time; the rest: ${reasonWords[mainReason].short}`]);
  }
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
