import { useState, type KeyboardEvent } from 'react';
import type { CourseSet } from '../rules/buildCourse';
import type { CourseLayout } from '../rules/layOutCourse';

/** The id of the element of a set on the course. */
export function setElementId({ recordingId }: CourseSet): string {
  return `course-${recordingId}`;
}

/** Sets of each panel from left to right. */
function inOrder({ panels }: CourseLayout): CourseSet[][] {
  return panels.map(({ tracks }) =>
    tracks
      .flatMap(({ sets }) => sets)
      .sort((a, b) => a.x[0] - b.x[0])
      .map(({ set }) => set),
  );
}

/**
 * Moves through the sets of the course as through one control: left and right in time, up and down between exercises,
 * Home and End to the ends.
 */
export function useCourseKeys(layout: CourseLayout | null) {
  const [chosen, setChosen] = useState<string | null>(null);
  const panels = layout === null ? [] : inOrder(layout);
  const all = panels.flat();
  const current = all.find(({ recordingId }) => recordingId === chosen) ?? panels[0]?.at(-1) ?? null;
  const onKeyDown = (event: KeyboardEvent) => {
    const row = panels.findIndex((sets) => sets.some((set) => set === current));
    const sets = panels[row];
    if (current === null || sets === undefined) return;
    if (!(event.target as Element).id.startsWith('course-')) return;
    const at = sets.indexOf(current);
    const nearest = (other: CourseSet[] | undefined) =>
      other?.reduce((best, one) => (away(one) < away(best) ? one : best));
    const away = ({ atMs }: CourseSet) => Math.abs(atMs - current.atMs);
    const moves: Partial<Record<string, () => CourseSet | undefined>> = {
      ArrowLeft: () => sets[at - 1],
      ArrowRight: () => sets[at + 1],
      Home: () => sets[0],
      End: () => sets.at(-1),
      ArrowUp: () => nearest(panels[row - 1]),
      ArrowDown: () => nearest(panels[row + 1]),
    };
    const to = moves[event.key]?.();
    if (to === undefined) return;
    event.preventDefault();
    setChosen(to.recordingId);
    document.getElementById(setElementId(to))?.focus();
  };
  return { current, frame: { onKeyDown } };
}
