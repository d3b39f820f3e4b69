import { useLayoutEffect, useRef, useState, type RefObject } from 'react';

/** An element's inner size as it changes, px; 0 before it is on the page. */
export function useSize<Kind extends HTMLElement>(): [
  RefObject<Kind | null>,
  { width: number; height: number },
] {
  const element = useRef<Kind>(null);
  const [size, setSize] = useState({ width: 0, height: 0 });
  useLayoutEffect(() => {
    const observed = element.current;
    if (observed === null) return;
    const observer = new ResizeObserver(() =>
      setSize({ width: observed.clientWidth, height: observed.clientHeight }),
    );
    observer.observe(observed);
    return () => observer.disconnect();
  }, []);
  return [element, size];
}
