import { extent } from 'd3-array';
import { scaleLinear, scaleTime, type ScaleLinear } from 'd3-scale';
import type { Side } from '#core/protocol/side';
import type { Course, CourseFeeling, CourseMark, CoursePanel, CourseSet } from './buildCourse';

/** Room round a panel, px: figures on the left, the ends of the lines on the right. */
export const courseMargins = { left: 40, right: 28, top: 10, bottom: 6 };
/** Heights of a panel of angles and of one of 0 to 10, px. */
export const panelHeights = { angles: 190, scores: 92 };

/** A set takes at most so much, px; neighbouring sessions on a narrow plot take less. */
const widestSet = 12;
/** Between the sides of a session, px, at most. */
const widestGap = 6;
/** What a set and the room between sessions take at least where the picture can be scrolled, px. */
const narrowestSet = 6;
const narrowestGap = 6;
/** Beyond the farthest band or limit, degrees. */
const roomDeg = 2;
/** A course of a single day still has an axis, ms. */
const leastSpanMs = 7 * 24 * 3_600_000;

export interface PlacedPoint {
  x: number;
  y: number;
  /** Ends of the band, px; above and below. */
  band: [top: number, bottom: number];
}

export interface PlacedSet {
  set: CourseSet;
  /** Its part of the axis. */
  x: [from: number, to: number];
  points: PlacedPoint[];
  /** Height of the mean; null with too few repetitions. */
  meanY: number | null;
  /** Heights of its limits. */
  limits: { least: number; most: number };
}

export interface PlacedTrack {
  side: Side;
  sets: PlacedSet[];
  /** Through the means of sets that were done alike, px; a run of one is a point. */
  lines: [x: number, y: number][][];
}

export interface PlacedPanel {
  task: CoursePanel['task'];
  tracks: PlacedTrack[];
  /** Degrees with their heights. */
  ticks: { deg: number; y: number }[];
}

export interface CourseLayout {
  panels: PlacedPanel[];
  /** Days with their places, px. */
  days: { at: Date; x: number }[];
  marks: (CourseMark & { x: number })[];
  feelings: { feeling: CourseFeeling; x: number }[];
  /** 0 to 10 to px. */
  score: ScaleLinear<number, number>;
}

/** The weeks before the last session that are shown at first. */
const lastWeeks = 6;

/** The course of the last weeks alone, and of what was in force when they began; the same object where that is all. */
export function lastWeeksOf(course: Course): Course {
  const times = [
    ...course.feelings.map(({ atMs }) => atMs),
    ...course.panels.flatMap(({ tracks }) => tracks.flatMap(({ sets }) => sets.map(({ atMs }) => atMs))),
  ];
  const fromMs = Math.max(...times) - lastWeeks * 7 * 24 * 3_600_000;
  const isShown = ({ atMs }: { atMs: number }) => atMs >= fromMs;
  if (times.every((atMs) => atMs >= fromMs)) return course;
  const lastPlanBefore = course.marks.findLast((mark) => mark.kind === 'plan' && !isShown(mark));
  return {
    panels: course.panels.flatMap(({ task, tracks }) => {
      const shown = tracks.flatMap(({ side, sets, runs }) => {
        const left = sets.filter(isShown);
        const cut = runs.map((run) => run.filter(isShown)).filter((run) => run.length > 0);
        return left.length === 0 ? [] : [{ side, sets: left, runs: cut }];
      });
      return shown.length === 0 ? [] : [{ task, tracks: shown }];
    }),
    feelings: course.feelings.filter(isShown),
    marks: course.marks.filter((mark) => isShown(mark) || mark === lastPlanBefore),
  };
}

/**
 * Places of everything on one time axis, which begins with the first session; a plan that is older stands at its edge.
 *
 * @param widthPx  of the whole picture
 */
export function layOutCourse(course: Course, widthPx: number): CourseLayout {
  const { left, right, top, bottom } = courseMargins;
  const sets = course.panels.flatMap(({ tracks }) => tracks.flatMap((track) => track.sets));
  const sessionTimes = [...new Set([...sets, ...course.feelings].map(({ atMs }) => atMs))].sort(
    (a, b) => a - b,
  );
  const markTimes = course.marks.map(({ atMs }) => atMs);
  // Without a session, a plan alone is shown.
  const [first, last] = extent(sessionTimes.length > 0 ? sessionTimes : markTimes);
  const from = first ?? 0;
  const until = Math.max(last ?? 0, ...markTimes);
  const span = Math.max(leastSpanMs, until - from);
  const inner = Math.max(1, widthPx - left - right);
  const most = mostSetsOfSession(course);
  // Room for the sets of the first and the last session on either side.
  const room = Math.min(inner / 8, (most * widestSet + widestGap) / 2);
  const x = scaleTime([new Date(from), new Date(from + span)], [left + room, widthPx - right - room]);
  const nearest = Math.min(
    inner,
    ...sessionTimes.slice(1).map((at, index) => x(at) - x(sessionTimes[index]!)),
  );
  const setWidth = Math.max(2, Math.min(widestSet, (nearest * 0.9) / Math.max(1, most + 0.5)));
  return {
    panels: course.panels.map((panel) => placePanel(panel, x, setWidth)),
    days: x.ticks(Math.max(2, Math.floor(inner / 110))).map((at) => ({ at, x: x(at) })),
    marks: course.marks.map((mark) => ({ ...mark, x: Math.max(left, x(mark.atMs)) })),
    feelings: course.feelings.map((feeling) => ({ feeling, x: x(feeling.atMs) })),
    score: scaleLinear([0, 10], [panelHeights.scores - bottom - 4, top]),
  };
}

/** Narrower than this, sets would run into each other, px. */
export function leastCourseWidth(course: Course): number {
  const { left, right } = courseMargins;
  const sets = course.panels.flatMap(({ tracks }) => tracks.flatMap((track) => track.sets));
  const sessions = new Set(sets.map(({ sessionId }) => sessionId)).size;
  return left + right + sessions * (mostSetsOfSession(course) * narrowestSet + narrowestGap);
}

/** Of one exercise, both sides together, in the session that has the most. */
function mostSetsOfSession({ panels }: Course): number {
  const counts = panels.flatMap(({ tracks }) => {
    const bySession = new Map<string, number>();
    for (const { sessionId } of tracks.flatMap((track) => track.sets))
      bySession.set(sessionId, (bySession.get(sessionId) ?? 0) + 1);
    return [...bySession.values()];
  });
  return Math.max(1, ...counts);
}

function placePanel({ task, tracks }: CoursePanel, x: (at: number) => number, setWidth: number): PlacedPanel {
  const sets = tracks.flatMap((track) => track.sets);
  const ends = sets.flatMap(({ points, limits }) => [
    limits.least,
    limits.most,
    ...points.flatMap(({ valueDeg, bandDeg }) =>
      valueDeg === null ? [] : [valueDeg - bandDeg, valueDeg + bandDeg],
    ),
  ]);
  const [least, most] = [Math.min(...ends) - roomDeg, Math.max(...ends) + roomDeg];
  const { top, bottom } = courseMargins;
  const y = scaleLinear([least, most], [panelHeights.angles - bottom, top]);
  const gap = tracks.length > 1 ? setWidth / 2 : 0;
  /** Left of a session's sets, px. */
  const startOf = (session: string) => {
    const count = sets.filter(({ sessionId }) => sessionId === session).length;
    return -(count * setWidth + gap) / 2;
  };
  return {
    task,
    ticks: y.ticks(5).map((deg) => ({ deg, y: y(deg) })),
    tracks: tracks.map((track, trackIndex) => {
      const placed = track.sets.map((set) => {
        const others = tracks.slice(0, trackIndex).flatMap((one) => one.sets);
        const before =
          others.filter(({ sessionId }) => sessionId === set.sessionId).length +
          track.sets.filter(({ sessionId }) => sessionId === set.sessionId).indexOf(set);
        const from = x(set.atMs) + startOf(set.sessionId) + before * setWidth + (trackIndex > 0 ? gap : 0);
        return placeSet(set, from, setWidth, y);
      });
      const bySet = new Map(placed.map((one) => [one.set, one]));
      const lines = track.runs.map((run) =>
        run.flatMap((set): [number, number][] => {
          const { x: ends, meanY } = bySet.get(set)!;
          return meanY === null ? [] : [[(ends[0] + ends[1]) / 2, meanY]];
        }),
      );
      return { side: track.side, sets: placed, lines: lines.filter((line) => line.length > 0) };
    }),
  };
}

function placeSet(set: CourseSet, from: number, width: number, y: (deg: number) => number): PlacedSet {
  const step = width / (set.points.length + 1);
  return {
    set,
    x: [from, from + width],
    points: set.points.flatMap(({ valueDeg, bandDeg }, index) =>
      valueDeg === null
        ? []
        : [
            {
              x: from + (index + 1) * step,
              y: y(valueDeg),
              band: [y(valueDeg + bandDeg), y(valueDeg - bandDeg)] as [number, number],
            },
          ],
    ),
    meanY: set.peak === null ? null : y(set.peak.meanDeg),
    limits: { least: y(set.limits.least), most: y(set.limits.most) },
  };
}
