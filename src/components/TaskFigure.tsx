import { figurePose, type FigurePose, type Place } from '../library/figurePose';
import type { HoldId } from '../protocol/holds';
import { otherSide, type Side } from '../protocol/side';
import { findTask, taskIds, type TaskId } from '../protocol/tasks';
import './taskFigure.css';

type View = 'front' | 'side';

const moments = ['start', 'end'] as const;
type Moment = (typeof moments)[number];

const views: Record<View, string> = { front: 'from the front', side: 'from the side' };
/** What is seen at the start and at the far end, by how a repetition goes. */
const momentWords = {
  rise: { start: 'seated', end: 'standing' },
  dip: { start: 'standing', end: 'bent' },
  reach: { start: 'start', end: 'leg out' },
  hold: { start: 'before', end: 'pressing' },
};

/** In body heights: a picture's width, and what is kept free above the head and below the floor. */
const width = 0.95;
const [above, below] = [0.03, 0.04];
const headRadius = 0.062;
/** How wide the lane is drawn, and how far it reaches above the hip, body heights. */
const lane = { half: 0.04, above: 0.1 };
/** Half the breadth of a foot, body heights: Drillis & Contini 1966. */
const halfFoot = 0.0275;

/** A task as line drawings: from the front and from the side, at its start and at its far end. */
export function TaskFigure({ task, side, name }: { task: TaskId | HoldId; side: Side; name: string }) {
  const poses = { start: figurePose(task, side, 'start'), end: figurePose(task, side, 'end') };
  // As high as the higher of the two, so that both stand on one floor and can be compared.
  const top = Math.max(poses.start.head.y, poses.end.head.y) + headRadius + above;
  const words = momentWords[taskIds.some((id) => id === task) ? findTask(task as TaskId).shape : 'hold'];
  const caption = (view: View, moment: Moment) => `${views[view]}, ${words[moment]}`;
  return (
    <figure className="task-figure">
      {(['front', 'side'] as const).flatMap((view) =>
        moments.map((moment) => (
          <div key={view + moment}>
            <svg
              viewBox={`${-width / 2} ${-top} ${width} ${top + below}`}
              role="img"
              aria-label={`${name}, ${caption(view, moment)}`}
            >
              <Drawing pose={poses[moment]} view={view} side={side} />
            </svg>
            <span className="small soft" aria-hidden="true">
              {caption(view, moment)}
            </span>
          </div>
        )),
      )}
    </figure>
  );
}

function Drawing({ pose, view, side }: { pose: FigurePose; view: View; side: Side }) {
  // Seen from the front the person's left is on the right; from the side they look to the right.
  const middle = middleAhead(pose);
  const across = ({ x, z }: Place) => (view === 'front' ? x : z - middle);
  const points = (...places: Place[]) => places.map((place) => `${across(place)},${-place.y}`).join(' ');
  const legOf = (which: Side) => points(pose.hip[which], pose.knee[which], pose.ankle[which]);
  const footOf = (which: Side) => {
    const [ankle, toe] = [pose.ankle[which], pose.toe[which]];
    if (view === 'side') return points(ankle, toe);
    return `${points(ankle)} ${toe.x - halfFoot},${-toe.y} ${toe.x + halfFoot},${-toe.y} ${points(ankle)}`;
  };
  const other = otherSide(side);
  return (
    <>
      <line className="figure-floor" x1={-width / 2} x2={width / 2} y1={0} y2={0} />
      {view === 'front' && <Lane at={pose.ankle[side].x} top={pose.hip[side].y + lane.above} />}
      <PropDrawing pose={pose} across={across} view={view} />
      <polyline className="figure-line" points={legOf(other)} />
      <polyline className="figure-line" points={footOf(other)} />
      <polyline className="figure-line" points={points(pose.pelvis, pose.head)} />
      <polyline className="figure-line" points={points(pose.hand.left, pose.shoulder.left)} />
      <polyline className="figure-line" points={points(pose.hand.right, pose.shoulder.right)} />
      <polyline className="figure-line" points={points(pose.shoulder.left, pose.shoulder.right)} />
      <polyline className="figure-line" points={points(pose.hip.left, pose.hip.right)} />
      <circle className="figure-head" cx={across(pose.head)} cy={-pose.head.y} r={headRadius} />
      <polyline className="figure-line figure-working" points={legOf(side)} />
      <polyline className="figure-line figure-working" points={footOf(side)} />
      <circle className="figure-knee" cx={across(pose.knee[side])} cy={-pose.knee[side].y} r={0.024} />
    </>
  );
}

/** Where the working knee belongs: a band that stands on the foot, with its plumb line. */
function Lane({ at, top }: { at: number; top: number }) {
  return (
    <>
      <rect className="figure-lane" x={at - lane.half} y={-top} width={2 * lane.half} height={top} />
      <line className="figure-plumb" x1={at} x2={at} y1={0} y2={-top} />
    </>
  );
}

/** Half-way between what is farthest back and farthest ahead. */
function middleAhead({ head, pelvis, prop, toe, ankle }: FigurePose): number {
  const places = [
    head,
    pelvis,
    ...Object.values(toe),
    ...Object.values(ankle),
    ...(prop === null ? [] : [prop.at]),
  ];
  const ahead = places.map(({ z }) => z);
  return (Math.min(...ahead) + Math.max(...ahead)) / 2;
}

function PropDrawing({
  pose,
  across,
  view,
}: {
  pose: FigurePose;
  across: (place: Place) => number;
  view: View;
}) {
  const { prop } = pose;
  if (prop === null) return null;
  const [x, y] = [across(prop.at), -prop.at.y];
  switch (prop.kind) {
    case 'chair': {
      const half = view === 'front' ? 0.14 : 0.12;
      const back = view === 'front' ? '' : `M${x - half} ${y}V${y - 0.25}`;
      return <path className="figure-prop" d={`M${x - half} 0V${y}H${x + half}V0${back}`} />;
    }
    case 'step':
      return <rect className="figure-prop" x={x - 0.12} y={y} width={0.24} height={prop.at.y} />;
    case 'ball':
      return <circle className="figure-prop" cx={x} cy={y} r={0.045} />;
  }
}
