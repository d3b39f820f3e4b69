import { figurePose, type FigurePose, type Place } from '../library/figurePose';
import type { HoldId } from '../protocol/holds';
import { otherSide, type Side } from '../protocol/side';
import type { TaskId } from '../protocol/tasks';
import './taskFigure.css';

type View = 'front' | 'side';

const moments = [
  { id: 'start', words: 'start' },
  { id: 'end', words: 'and there' },
] as const;
/** A picture is so many body heights wide and high. */
const [width, height] = [0.95, 1.2];

/** A task as line drawings: from the front and from the side, at its start and at its far end. */
export function TaskFigure({ task, side, name }: { task: TaskId | HoldId; side: Side; name: string }) {
  return (
    <figure className="task-figure">
      {(['front', 'side'] as const).flatMap((view) =>
        moments.map(({ id, words }) => (
          <div key={view + id}>
            <svg
              viewBox={`${-width / 2} ${-height + 0.04} ${width} ${height}`}
              role="img"
              aria-label={`${name}, from the ${view}, ${words}`}
            >
              <Drawing pose={figurePose(task, side, id)} view={view} side={side} />
            </svg>
            <span className="small soft" aria-hidden="true">
              {view === 'front' ? 'from the front' : 'from the side'}, {words}
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
  const legOf = (which: Side) =>
    points(pose.hip[which], pose.knee[which], pose.ankle[which], pose.toe[which]);
  const free = otherSide(side);
  const plumb = across(pose.ankle[side]);
  return (
    <>
      <line className="figure-floor" x1={-width / 2} x2={width / 2} y1={0} y2={0} />
      <PropDrawing pose={pose} across={across} view={view} />
      {view === 'front' && (
        <line className="figure-plumb" x1={plumb} x2={plumb} y1={0} y2={-pose.hip[side].y} />
      )}
      <polyline className="figure-line" points={legOf(free)} />
      <polyline className="figure-line" points={points(pose.pelvis, pose.neck)} />
      <polyline className="figure-line" points={points(pose.shoulder.left, pose.shoulder.right)} />
      <polyline className="figure-line" points={points(pose.hip.left, pose.hip.right)} />
      <circle className="figure-head" cx={across(pose.head)} cy={-pose.head.y} r={0.062} />
      <polyline className="figure-line figure-working" points={legOf(side)} />
      <circle className="figure-knee" cx={across(pose.knee[side])} cy={-pose.knee[side].y} r={0.022} />
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
