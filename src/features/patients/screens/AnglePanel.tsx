import { line } from 'd3-shape';
import { exerciseName } from '#words/exerciseWords';
import type { CourseSet } from '../rules/buildCourse';
import { limitsWords, markSentence, setSentence } from '../rules/courseWords';
import {
  courseMargins,
  panelHeights,
  type CourseLayout,
  type PlacedPanel,
  type PlacedSet,
  type PlacedTrack,
} from '../rules/layOutCourse';
import { setElementId } from './useCourseKeys';

interface Props {
  panel: PlacedPanel;
  layout: CourseLayout;
  width: number;
  /** The set that the tab key reaches. */
  current: CourseSet | null;
  onOpen: (set: CourseSet) => void;
}

/** One exercise over time, both sides in one picture. */
export function AnglePanel({ panel, layout, width, current, onOpen }: Props) {
  const { task, tracks, ticks } = panel;
  const height = panelHeights.angles;
  const right = width - courseMargins.right;
  return (
    <figure className="course-panel">
      <figcaption>
        {exerciseName(task)} <span className="soft">· inward up</span>
      </figcaption>
      <svg width={width} height={height} role="group" aria-label={`${exerciseName(task)}: sets over time`}>
        {ticks.map(({ deg, y }) => (
          <g key={deg} aria-hidden="true">
            <line
              className={deg === 0 ? 'course-zero' : 'course-grid'}
              x1={courseMargins.left}
              x2={right}
              y1={y}
              y2={y}
            />
            <text className="course-tick" x={courseMargins.left - 6} y={y + 4}>
              {Math.abs(deg)}°
            </text>
          </g>
        ))}
        <PlanLines layout={layout} height={height} />
        {tracks.map((track) => (
          <Lane key={track.side} track={track} />
        ))}
        {layout.marks.map(
          (mark, at) =>
            mark.kind === 'limits' &&
            mark.task === task && (
              <g key={at}>
                <path className="course-limit-mark" d={`M${mark.x} ${height - 1}l-5 -8h10z`}>
                  <title>{markSentence(mark)}</title>
                </path>
                <text className="course-limit-words" x={mark.x + 8} y={height - 2} aria-hidden="true">
                  from here {limitsWords(mark.to)}
                </text>
              </g>
            ),
        )}
        {tracks.map((track) => (
          <Track key={track.side} track={track} right={right} current={current} onOpen={onOpen} />
        ))}
      </svg>
    </figure>
  );
}

/** Limits as they stood, set by set. */
function Lane({ track: { sets } }: { track: PlacedTrack }) {
  return sets.map(({ set, x, limits }) => (
    <rect
      key={set.recordingId}
      className="course-lane"
      x={x[0]}
      width={x[1] - x[0]}
      y={limits.most}
      height={Math.max(1, limits.least - limits.most)}
    />
  ));
}

interface TrackProps extends Pick<Props, 'current' | 'onOpen'> {
  track: PlacedTrack;
  /** Where the picture ends, px. */
  right: number;
}

function Track({ track, right, current, onOpen }: TrackProps) {
  const { side, sets, lines } = track;
  const last = lines.at(-1)?.at(-1);
  return (
    <g className={`course-${side}`}>
      {lines.map((points, at) => (
        <path key={at} className="course-line" d={line()(points) ?? ''} />
      ))}
      {last !== undefined && (
        <text
          className="course-side"
          x={right + (side === 'left' ? 4 : 16)}
          y={last[1] + 4}
          aria-hidden="true"
        >
          {side === 'left' ? 'L' : 'R'}
        </text>
      )}
      {sets.map((placed) => (
        <SetMark
          key={placed.set.recordingId}
          placed={placed}
          isCurrent={placed.set.recordingId === current?.recordingId}
          onOpen={onOpen}
        />
      ))}
    </g>
  );
}

interface SetMarkProps {
  placed: PlacedSet;
  isCurrent: boolean;
  onOpen: (set: CourseSet) => void;
}

/** The repetitions of a set with their bands, and its mean; opens the set. */
function SetMark({ placed, isCurrent, onOpen }: SetMarkProps) {
  const { set, x, points, meanY } = placed;
  const sentence = setSentence(set);
  return (
    <g
      id={setElementId(set)}
      className="course-set"
      role="button"
      tabIndex={isCurrent ? 0 : -1}
      aria-label={sentence}
      onClick={() => onOpen(set)}
      onKeyDown={(event) => {
        if (event.key !== 'Enter' && event.key !== ' ') return;
        event.preventDefault();
        onOpen(set);
      }}
    >
      <title>{sentence}</title>
      <rect className="course-hit" x={x[0] - 1} width={x[1] - x[0] + 2} y={0} height={panelHeights.angles} />
      <path
        className="course-band"
        d={points.map(({ x: at, band }) => `M${at} ${band[0]}V${band[1]}`).join('')}
      />
      <path className="course-point" d={points.map(({ x: at, y }) => pointPath(set.side, at, y)).join('')} />
      {meanY !== null && <line className="course-mean" x1={x[0]} x2={x[1]} y1={meanY} y2={meanY} />}
      {points.length === 0 && (
        <text className="course-none" x={(x[0] + x[1]) / 2} y={panelHeights.angles / 2}>
          –
        </text>
      )}
    </g>
  );
}

/** A circle for the left leg, a square for the right; one path for all of a set is drawn much sooner than one each. */
function pointPath(side: CourseSet['side'], x: number, y: number): string {
  return side === 'left'
    ? `M${x - 2.5} ${y}a2.5 2.5 0 1 1 5 0a2.5 2.5 0 1 1 -5 0`
    : `M${x - 2.2} ${y - 2.2}h4.4v4.4h-4.4z`;
}

/** Where a new plan was given. */
export function PlanLines({ layout, height }: { layout: CourseLayout; height: number }) {
  return layout.marks.map(
    (mark, at) =>
      mark.kind === 'plan' && (
        <line
          key={at}
          className="course-plan"
          x1={mark.x}
          x2={mark.x}
          y1={0}
          y2={height}
          aria-hidden="true"
        />
      ),
  );
}
