import { useEffect, useEffectEvent, useState } from 'react';

/**
 * Takes files that are dropped anywhere on the page.
 *
 * @returns whether something is being dragged over the page just now
 */
export function useFileDrop(onFiles: (first: File, all: readonly File[]) => void): boolean {
  const [isOver, setIsOver] = useState(false);
  const take = useEffectEvent(onFiles);
  useEffect(() => {
    const onOver = (event: DragEvent) => {
      event.preventDefault(); // Without this the browser would open the file in place of the page.
      setIsOver(true);
    };
    const onLeave = (event: DragEvent) => {
      if (event.relatedTarget === null) setIsOver(false);
    };
    const onDrop = (event: DragEvent) => {
      event.preventDefault();
      setIsOver(false);
      const files = [...(event.dataTransfer?.files ?? [])];
      const [first] = files;
      if (first !== undefined) take(first, files);
    };
    window.addEventListener('dragover', onOver);
    window.addEventListener('dragleave', onLeave);
    window.addEventListener('drop', onDrop);
    return () => {
      window.removeEventListener('dragover', onOver);
      window.removeEventListener('dragleave', onLeave);
      window.removeEventListener('drop', onDrop);
    };
  }, []);
  return isOver;
}
