import { useState, type KeyboardEvent, type PointerEvent } from 'react';
import { clamp } from '#core/clamp';
import { placePoint } from '#core/correction/placePoint';
import { frameLeg, type FrameLeg } from '#core/keypoints/frameLeg';
import type { KeypointName } from '#core/keypoints/keypointNames';
import { nearestFrame } from '#core/scoring/nearestFrame';
import type { ShownRecording } from '#shell/tracking/shownRecording';
import { capitalised } from '#words/capitalised';
import { useReview } from '../reviewContext';
import type { Playhead } from './playhead';
import { usePlayhead } from './usePlayhead';

type Joint = 'hip' | 'knee' | 'ankle' | 'toe';
const joints: readonly Joint[] = ['hip', 'knee', 'ankle', 'toe'];

interface Props {
  recording: ShownRecording;
  playhead: Playhead;
}

/** Handles on the working leg's joints in the shown frame: drag them, or move them with the arrow keys. */
export function JointHandles({ recording, playhead }: Props) {
  const shownMs = usePlayhead(playhead, (state) => state.shownMs);
  const frame = nearestFrame(recording.track.timesMs, shownMs);
  const leg = frameLeg(recording.track, frame, recording.measurement.setup.side);
  return joints.map((joint) => (
    <JointHandle key={joint} joint={joint} leg={leg} frame={frame} recording={recording} />
  ));
}

interface HandleProps {
  joint: Joint;
  leg: FrameLeg;
  frame: number;
  recording: Props['recording'];
}

function JointHandle({ joint, leg, frame, recording }: HandleProps) {
  const review = useReview();
  const [moving, setMoving] = useState<{ x: number; y: number } | null>(null);
  const { track, measurement, isMirrored } = recording;
  const seen = leg[joint];
  // An unseen joint starts in the middle of the leg's other joints, to be moved to its place.
  const place = moving ?? seen ?? { x: track.widthPx / 2, y: track.heightPx / 2 };

  const move = (x: number, y: number) =>
    setMoving({ x: clamp(x, 0, track.widthPx), y: clamp(y, 0, track.heightPx) });
  const finish = () => {
    if (moving === null) return;
    setMoving(null);
    const name = `${measurement.setup.side}_${joint === 'toe' ? 'foot_index' : joint}` as KeypointName;
    const place = { xNorm: moving.x / track.widthPx, yNorm: moving.y / track.heightPx };
    review.correct(placePoint(name, { timeMs: track.timesMs[frame]!, ...place }, isMirrored));
  };
  const onKeyDown = (event: KeyboardEvent) => {
    const stepPx = (track.heightPx / 400) * (event.shiftKey ? 5 : 1);
    const way = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] }[event.key];
    if (way !== undefined) move(place.x + way[0]! * stepPx, place.y + way[1]! * stepPx);
    else if (event.key === 'Enter') finish();
    else if (event.key === 'Escape') setMoving(null);
    else return;
    event.preventDefault();
  };
  const onPointerMove = (event: PointerEvent<HTMLButtonElement>) => {
    if (event.buttons !== 1 || !event.currentTarget.hasPointerCapture(event.pointerId)) return;
    const box = event.currentTarget.parentElement!.getBoundingClientRect();
    move(
      ((event.clientX - box.left) / box.width) * track.widthPx,
      ((event.clientY - box.top) / box.height) * track.heightPx,
    );
  };
  return (
    <button
      type="button"
      className={`joint-handle ${seen === null ? 'joint-unseen' : ''}`}
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
  );
}
