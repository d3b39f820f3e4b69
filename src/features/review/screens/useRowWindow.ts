import { useEffect, useLayoutEffect, useRef, useState, type RefObject } from 'react';
import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';
import { rowTops, rowWindow } from './rowWindow';

interface Seen {
  from: number;
  to: number;
  /** Height of every row that has been drawn, px. */
  heightsPx: ReadonlyMap<number, number>;
}

/** A row to draw, with the height of those left out before it, px. */
export interface DrawnRow {
  at: number;
  gapPx: number;
}

/**
 * Which rows of a table to draw: those in sight, and one that is always drawn so that it keeps the focus.
 * That one is brought into sight whenever it or the rows change.
 *
 * @param box      around the table; its rows carry their key in `data-key`
 * @param keys     of all rows, in order
 * @param kept     place of the one that is always drawn
 * @param isWhole  draws all: for paper
 */
export function useRowWindow(
  box: RefObject<HTMLElement | null>,
  keys: readonly number[],
  kept: number,
  isWhole: boolean,
): { drawn: DrawnRow[]; endGapPx: number } {
  const [store] = useState(() => createStore<Seen>(() => ({ from: 0, to: 0, heightsPx: new Map() })));
  const seen = useStore(store);
  const isSought = useRef(true);
  const topsPx = rowTops(keys.map((key) => seen.heightsPx.get(key)));

  useLayoutEffect(() => {
    isSought.current = true;
    // Repeated until painted: the heights of rows drawn for the first time move it again.
    const request = requestAnimationFrame(() => (isSought.current = false));
    return () => cancelAnimationFrame(request);
  }, [kept, keys]);
  useLayoutEffect(() => {
    if (box.current === null) return;
    if (isSought.current && keys.length > 0) showRow(box.current, topsPx, kept);
    store.setState((before) => look(box.current!, keys, before));
  });
  useEffect(() => {
    const lookAgain = () =>
      store.setState((before) => (box.current === null ? before : look(box.current, keys, before)));
    const observer = new ResizeObserver(lookAgain);
    observer.observe(box.current!);
    // The box scrolls or, on a small screen, the page around it.
    window.addEventListener('scroll', lookAgain, { capture: true, passive: true });
    window.addEventListener('resize', lookAgain);
    return () => {
      observer.disconnect();
      window.removeEventListener('scroll', lookAgain, { capture: true });
      window.removeEventListener('resize', lookAgain);
    };
  }, [box, keys, store]);

  const drawn: DrawnRow[] = [];
  let endPx = 0;
  for (let at = 0; at < keys.length; at++) {
    if (!isWhole && at !== kept && (at < seen.from || at >= seen.to)) continue;
    drawn.push({ at, gapPx: topsPx[at]! - endPx });
    endPx = topsPx[at + 1]!;
  }
  return { drawn, endGapPx: topsPx[keys.length]! - endPx };
}

/** Measures the rows that are drawn, and finds out which are in sight. */
function look(box: HTMLElement, keys: readonly number[], before: Seen): Seen {
  const rows = [...box.querySelectorAll<HTMLElement>('[data-key]')];
  const measured = rows.map((row) => [Number(row.dataset['key']), row.offsetHeight] as const);
  const isSame = measured.every(([key, px]) => before.heightsPx.get(key) === px);
  const heightsPx = isSame ? before.heightsPx : new Map([...before.heightsPx, ...measured]);
  const bodyPx = box.querySelector('tbody')!.getBoundingClientRect().top;
  const { top, bottom } = box.getBoundingClientRect();
  const { from, to } = rowWindow(
    rowTops(keys.map((key) => heightsPx.get(key))),
    Math.max(top, 0) - bodyPx,
    Math.min(bottom, innerHeight) - bodyPx,
  );
  return isSame && from === before.from && to === before.to ? before : { from, to, heightsPx };
}

/** Scrolls the table, and nothing around it, until a row can be seen and the first one below the header is whole. */
function showRow(box: HTMLElement, topsPx: readonly number[], row: number): void {
  const headPx = box.querySelector('thead')!.offsetHeight;
  const roomPx = box.clientHeight - headPx;
  const leastPx = Math.min(Math.max(box.scrollTop, topsPx[row + 1]! - roomPx), topsPx[row]!);
  const wholePx = topsPx.find((topPx) => topPx >= leastPx) ?? leastPx;
  // Below the last row there has to be room for it.
  const sparePx = Math.max(0, wholePx + roomPx - topsPx.at(-1)!);
  box.style.setProperty('--spare', leastPx > 0 ? `${sparePx}px` : '0px');
  box.scrollTop = wholePx;
}
