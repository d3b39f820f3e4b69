import { useEffect, useRef } from 'react';

/** How long the keys must rest before a text is saved, ms. */
const restMs = 400;

/**
 * Saves a text while it is typed: when the keys rest, when the field is left, and when the page or the field
 * goes away.
 *
 * @param save  saves the text as it is now, if it differs from what is saved
 * @returns  to be called after every change of the text, and when the field is left
 */
export function useSaveWhileTyping(save: () => void): { typed: () => void; left: () => void } {
  const latest = useRef(save);
  const timer = useRef<ReturnType<typeof setTimeout>>(undefined);
  useEffect(() => {
    latest.current = save;
  });
  const isDue = useRef(false);
  const now = () => {
    clearTimeout(timer.current);
    if (isDue.current) latest.current();
    isDue.current = false;
  };
  useEffect(() => {
    // First of all listeners: another one asks whether anything is unsaved.
    addEventListener('beforeunload', now, { capture: true });
    addEventListener('pagehide', now);
    return () => {
      removeEventListener('beforeunload', now, { capture: true });
      removeEventListener('pagehide', now);
      now();
    };
  }, []);
  return {
    typed() {
      isDue.current = true;
      clearTimeout(timer.current);
      timer.current = setTimeout(now, restMs);
    },
    left: now,
  };
}
