import { useEffect, useState } from 'react';
import { flushSync } from 'react-dom';

/** Whether the page is being printed; true before the browser counts its pages, which no media query is. */
export function useIsPrinted(): boolean {
  const [isPrinted, setPrinted] = useState(false);
  useEffect(() => {
    const before = () => flushSync(() => setPrinted(true));
    const after = () => setPrinted(false);
    addEventListener('beforeprint', before);
    addEventListener('afterprint', after);
    return () => {
      removeEventListener('beforeprint', before);
      removeEventListener('afterprint', after);
    };
  }, []);
  return isPrinted;
}
