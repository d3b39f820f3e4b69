import { useState, type KeyboardEvent, type PointerEvent } from 'react';
import { clamp } from '#core/clamp';
import { placePoint } from '#core/correction/placePoint';
import type { Point } from '#core/geometry/point';
import { frameLeg, type FrameLeg } from '#core/keypoints/frameLeg';
import type { KeypointName } from '#core/keypoints/keypointNames';
import { nearestFrame } from '#core/scoring/nearestFrame';
import type { ShownRecording } from '#shell/tracking/shownRecording';
import { capitalised } from '#words/capitalised';
import { useReview } from '../reviewContext';
import { jointStep } from '../rules/jointStep';
import { Loupe } from './Loupe';

type Joint = 'hip' | 'knee' | 'ankle' | 'toe';
const joints: readonly Joint[] = ['hip', 'knee', 'ankle', 'toe'];

interface Props {
  recording: ShownRecording;
  /** Of the frame that is shown. */
  timeMs: number;
  /** The picture behind the handles; null where there is none. */
  picture: () => HTMLVideoElement | null;
}

/** Handles on the working leg's joints in one frame: drag them, or move them with the arrow keys. */
export function JointHandles({ recording, timeMs, picture }: Props) {
  const frame = nearestFrame(recording.track.timesMs, timeMs);
  const leg = frameLeg(recording.track, frame, recording.measurement.setup.side);
  return joints.map((joint) => (
    <JointHandle key={joint} joint={joint} leg={leg} frame={frame} recording={recording} picture={picture} />
  ));
}

interface HandleProps extends Omit<Props, 'timeMs'> {
  joint: Joint;
  leg: FrameLeg;
  frame: number;
}

interface Moving extends Point {
  /** Where its handle and the picture around it are on the page. */
  handle: DOMRect;
  stage: DOMRect;
  /** Page px for one px of the picture. */
  scale: number;
}

function JointHandle({ joint, leg, frame, recording, picture }: HandleProps) {
  const review = useReview();
  const [moving, setMoving] = useState<Moving | null>(null);
  const { track, measurement, isMirrored } = recording;
  const seen = leg[joint];
  // An unseen joint starts in the middle of the picture, to be moved to its place.
  const place = moving ?? seen ?? { x: track.widthPx / 2, y: track.heightPx / 2 };

  const move = ({ x, y }: Point, handle: HTMLElement) => {
    const whole = handle.parentElement!;
    setMoving({
      x: clamp(x, 0, track.widthPx),
      y: clamp(y, 0, track.heightPx),
      handle: handle.getBoundingClientRect(),
      stage: whole.parentElement!.getBoundingClientRect(),
      scale: whole.getBoundingClientRect().width / track.widthPx,
    });
  };
  const finish = () => {
    if (moving === null) return;
    setMoving(null);
    const name = `${measurement.setup.side}_${joint === 'toe' ? 'foot_index' : joint}` as KeypointName;
    const placed = { xNorm: moving.x / track.widthPx, yNorm: moving.y / track.heightPx };
    review.correct(placePoint(name, { timeMs: track.timesMs[frame]!, ...placed }, isMirrored));
  };
  const onKeyDown = (event: KeyboardEvent<HTMLButtonElement>) => {
    const next = jointStep(place, event.key, event.shiftKey);
    if (next !== null) move(next, event.currentTarget);
    else if (event.key === 'Enter') finish();
    else if (event.key === 'Escape') setMoving(null);
    else return;
    event.preventDefault();
  };
  const onPointerMove = (event: PointerEvent<HTMLButtonElement>) => {
    if (event.buttons !== 1 || !event.currentTarget.hasPointerCapture(event.pointerId)) return;
    const box = event.currentTarget.parentElement!.getBoundingClientRect();
    move(
      {
        x: ((event.clientX - box.left) / box.width) * track.widthPx,
        y: ((event.clientY - box.top) / box.height) * track.heightPx,
      },
      event.currentTarget,
    );
  };
  return (
    <>
      <button
        type="button"
        className={`joint-handle ${seen === null ? 'joint-unseen' : ''} ${moving === null ? '' : 'joint-moving'}`}
        style={{ left: `${(100 * place.x) / track.widthPx}%`, top: `${(100 * place.y) / track.heightPx}%` }}
        data-own-keys
        aria-label={
          moving === null
            ? `${capitalised(joint)}: drag it or move it with the arrow keys`
            : `${capitalised(joint)} moved: Enter sets it, Escape cancels`
        }
        onKeyDown={onKeyDown}
        onBlur={finish}
        onPointerDown={(event) => event.currentTarget.setPointerCapture(event.pointerId)}
        onPointerMove={onPointerMove}
        onPointerUp={finish}
      >
        <span aria-hidden="true">{joint}</span>
      </button>
      {moving !== null && (
        <Loupe recording={recording} leg={leg} joint={joint} moving={moving} picture={picture} />
      )}
    </>
  );
}
