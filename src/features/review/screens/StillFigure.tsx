import type { Limits } from '#core/protocol/limits';
import type { ShownRecording } from '#shell/tracking/shownRecording';
import { formatTime } from '#words/formatTime';
import type { StillMoment } from './stillMoment';
import { WorstStill } from './WorstStill';

interface Props {
  recording: ShownRecording;
  limits: Limits;
  moment: StillMoment;
  /** Whether the joints can be moved in it. */
  hasHandles: boolean;
}

/** The leg at a repetition's worst instant, with a caption. */
export function StillFigure({ recording, limits, moment, hasHandles }: Props) {
  const { number, timeMs, isWorst } = moment;
  return (
    <figure className="still-figure">
      <WorstStill recording={recording} limits={limits} timeMs={timeMs} hasHandles={hasHandles} />
      <figcaption className="small">
        Repetition {number}, {isWorst ? 'worst instant' : 'in its middle'}: {formatTime(timeMs)}
      </figcaption>
    </figure>
  );
}
