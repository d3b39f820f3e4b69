import { findExercise, type ExerciseId } from '#core/exercises/exercises';
import { figurePose, type FigurePose } from '#core/exercises/figure/figurePose';
import type { FigureMoment, Place, Prop } from '#core/exercises/figure/stance';
import { otherSide, type Side } from '#core/protocol/side';
import { momentWords } from '#words/exerciseWords';
import { message } from '#words/messages/message';
import './taskFigure.css';

type View = 'front' | 'side' | 'oblique';

const moments: readonly FigureMoment[] = ['start', 'end'];

/**
 * A person who is upright is drawn as the camera sees them; legs that lie on the floor would be hidden by
 * their feet.
 */
const views = {
  upright: ['front', 'side'],
  lying: ['oblique', 'side'],
  onSide: ['front', 'oblique'],
} as const;
/** How far round towards the working leg and how far from above an oblique view is, radians. */
const oblique = { round: (40 * Math.PI) / 180, above: (25 * Math.PI) / 180 };
/** The mat under a person who lies or sits on the floor, body heights: across, behind the hips and ahead of them. */
const mats = {
  lying: { half: 0.22, behind: 0.2, ahead: 0.64 },
  onSide: { half: 0.52, behind: 0.16, ahead: 0.24 },
};

/** In body heights: how wide a picture is, and what is kept free above the head and below the floor. */
const widths = { upright: 0.95, lying: 1.06, onSide: 1.16 };
const margin = { above: 0.03, below: 0.04 };
const headRadius = 0.062;
const ballRadius = 0.055;
const wallHeight = 0.95;
/** From where an arrow comes down on a thigh that presses, and where it ends, above the knee. */
const press = { from: 0.2, to: 0.05, head: 0.03 };
/** How wide the lane is drawn, and how far it reaches above the hip, body heights. */
const lane = { half: 0.04, above: 0.1 };
/** Half the breadth of a foot, body heights: Drillis & Contini 1966. */
const halfFoot = 0.0275;

/** A task as line drawings: from the front and from the side, at its start and at its far end. */
export function TaskFigure({ task, side, name }: { task: ExerciseId; side: Side; name: string }) {
  const poses = { start: figurePose(task, side, 'start'), end: figurePose(task, side, 'end') };
  const exercise = findExercise(task);
  const { isLying = false, isOnSide = false } = exercise.figure;
  const posture = isOnSide ? 'onSide' : isLying ? 'lying' : 'upright';
  const mat = matCorners(mats[posture === 'onSide' ? 'onSide' : 'lying']);
  const caption = (view: View, moment: FigureMoment) =>
    message(`figure.${view}`, { moment: momentWords(task, moment) });
  return (
    <figure className="task-figure">
      {views[posture].flatMap((view) =>
        moments.map((moment) => (
          <div key={view + moment}>
            <svg
              viewBox={viewBoxOf(Object.values(poses), view, side, mat, widths[posture])}
              role="img"
              aria-label={`${name}, ${caption(view, moment)}`}
            >
              <Drawing
                pose={poses[moment]}
                view={view}
                side={side}
                mat={mat}
                width={widths[posture]}
                hasLane={!isLying}
              />
              {exercise.figure[moment].presses === true && (
                <Press at={placeIn(view, poses[moment], side)(poses[moment].knee[side])} />
              )}
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

/** Where something is in a picture: x to the right, y down; the person's left is on the right, or they look to the right. */
function placeIn(view: View, pose: FigurePose, side: Side): (place: Place) => { x: number; y: number } {
  const middle = middleAhead(pose);
  const round = side === 'right' ? oblique.round : -oblique.round;
  return ({ x, y, z }) => {
    if (view === 'side') return { x: z - middle, y: -y };
    if (view === 'front') return { x, y: -y };
    const [across, nearer] = [
      x * Math.cos(round) + (z - middle) * Math.sin(round),
      z * Math.cos(round) - x * Math.sin(round),
    ];
    return { x: across, y: nearer * Math.sin(oblique.above) - y * Math.cos(oblique.above) };
  };
}

const matCorners = ({ half, behind, ahead }: (typeof mats)['lying']): Place[] => [
  { x: -half, y: 0, z: -behind },
  { x: half, y: 0, z: -behind },
  { x: half, y: 0, z: ahead },
  { x: -half, y: 0, z: ahead },
];

/** As high as the higher of a task's poses, so that they share one floor and can be compared. */
function viewBoxOf(
  poses: readonly FigurePose[],
  view: View,
  side: Side,
  mat: readonly Place[],
  width: number,
): string {
  const heights = poses.flatMap((pose) => {
    const place = placeIn(view, pose, side);
    const floor = view === 'oblique' ? mat.map((corner) => place(corner).y) : [0];
    // Of somebody who lies, the knees, the pelvis or an arm may be the highest.
    const arms = [pose.shoulder, pose.elbow, pose.hand].flatMap((joint) => [joint.left, joint.right]);
    const joints = [pose.knee.left, pose.knee.right, pose.pelvis, ...arms].map((joint) => place(joint).y);
    return [place(pose.head).y - headRadius, ...joints, ...floor];
  });
  const top = Math.min(...heights) - margin.above;
  return `${-width / 2} ${top} ${width} ${Math.max(...heights) + margin.below - top}`;
}

/** An arrow down to a knee that presses. */
function Press({ at: { x, y } }: { at: { x: number; y: number } }) {
  const end = y - press.to;
  const [left, right] = [x - press.head, x + press.head];
  return (
    <path
      className="figure-line figure-press"
      d={`M${x} ${y - press.from}V${end}M${left} ${end - press.head}L${x} ${end}L${right} ${end - press.head}`}
    />
  );
}

interface DrawingProps {
  pose: FigurePose;
  view: View;
  side: Side;
  /** Its corners. */
  mat: readonly Place[];
  /** Of the picture, body heights. */
  width: number;
  /** Whether the knee's lane is drawn, as it is seen from the front. */
  hasLane: boolean;
}

function Drawing({ pose, view, side, mat, width, hasLane }: DrawingProps) {
  const place = placeIn(view, pose, side);
  const points = (...places: Place[]) => places.map((at) => `${place(at).x},${place(at).y}`).join(' ');
  const [head, knee] = [place(pose.head), place(pose.knee[side])];
  const legOf = (which: Side) => points(pose.hip[which], pose.knee[which], pose.ankle[which]);
  const armOf = (which: Side) => points(pose.hand[which], pose.elbow[which], pose.shoulder[which]);
  const footOf = (which: Side) => {
    const [ankle, toe] = [pose.ankle[which], pose.toe[which]];
    if (view !== 'front') return points(ankle, toe);
    const across = (x: number): Place => ({ ...toe, x: toe.x + x });
    return points(ankle, across(-halfFoot), across(halfFoot), ankle);
  };
  const other = otherSide(side);
  return (
    <>
      {view === 'oblique' ? (
        <polygon className="figure-floor" points={points(...mat)} />
      ) : (
        <line className="figure-floor" x1={-width / 2} x2={width / 2} y1={0} y2={0} />
      )}
      {view === 'front' && hasLane && <Lane at={pose.ankle[side].x} top={pose.hip[side].y + lane.above} />}
      {pose.prop !== null && <PropDrawing prop={pose.prop} at={place(pose.prop.at)} view={view} />}
      <polyline className="figure-line" points={legOf(other)} />
      <polyline className="figure-line" points={footOf(other)} />
      <polyline className="figure-line" points={points(pose.pelvis, pose.head)} />
      <polyline className="figure-line" points={armOf('left')} />
      <polyline className="figure-line" points={armOf('right')} />
      <polyline className="figure-line" points={points(pose.shoulder.left, pose.shoulder.right)} />
      <polyline className="figure-line" points={points(pose.hip.left, pose.hip.right)} />
      <circle className="figure-head" cx={head.x} cy={head.y} r={headRadius} />
      <polyline className="figure-line figure-working" points={legOf(side)} />
      <polyline className="figure-line figure-working" points={footOf(side)} />
      <circle className="figure-knee" cx={knee.x} cy={knee.y} r={0.024} />
    </>
  );
}

/** Where the working knee belongs: a band that rises from the foot, with its plumb line. */
function Lane({ at, top }: { at: number; top: number }) {
  return (
    <>
      <rect className="figure-lane" x={at - lane.half} y={-top} width={2 * lane.half} height={top} />
      <line className="figure-plumb" x1={at} x2={at} y1={0} y2={-top} />
    </>
  );
}

/** Half-way between the farthest points behind and ahead. */
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

function PropDrawing({ prop, at: { x, y }, view }: { prop: Prop; at: { x: number; y: number }; view: View }) {
  switch (prop.kind) {
    case 'chair': {
      const half = view === 'front' ? 0.14 : 0.12;
      const back = view === 'front' ? '' : `M${x - half} ${y}V${y - 0.25}`;
      return <path className="figure-prop" d={`M${x - half} 0V${y}H${x + half}V0${back}`} />;
    }
    case 'step':
      return <rect className="figure-prop" x={x - 0.12} y={y} width={0.24} height={prop.at.y} />;
    case 'wall':
      return view === 'side' ? <path className="figure-prop" d={`M${x} 0V${-wallHeight}`} /> : null;
    case 'ball':
      return <circle className="figure-prop figure-ball" cx={x} cy={y} r={ballRadius} />;
  }
}
