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
    const measure = () => {
      const { clientWidth: width, clientHeight: height } = observed;
      setSize((known) => (known.width === width && known.height === height ? known : { width, height }));
    };
    measure(); // What is drawn to this size appears with the first frame.
    const observer = new ResizeObserver(measure);
    observer.observe(observed);
    return () => observer.disconnect();
  }, []);
  return [element, size];
}
