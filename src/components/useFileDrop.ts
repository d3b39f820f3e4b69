import { useEffect, useEffectEvent, useState } from 'react';

/**
 * Takes a file that is dropped anywhere on the page.
 *
 * @returns whether something is being dragged over the page just now
 */
export function useFileDrop(onFile: (file: File) => void): boolean {
  const [isOver, setIsOver] = useState(false);
  const take = useEffectEvent(onFile);
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
      const file = event.dataTransfer?.files[0];
      if (file !== undefined) take(file);
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
