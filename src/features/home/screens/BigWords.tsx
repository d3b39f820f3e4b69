import type { CSSProperties } from 'react';
import { useSize } from '#ui/components/useSize';
import { fitWords, wordsWidthEm } from './fitWords';

const lineHeight = 0.96;

/** One to three words as large as their place allows, up to the size that is read from three metres. */
export function BigWords({ text }: { text: string }) {
  const [place, { width, height }] = useSize<HTMLDivElement>();
  const { lines, widestEm } = fitWords(text, height === 0 ? 0.7 : width / height);
  const sizePx = Math.floor(Math.min(width / widestEm, height / (lines.length * lineHeight)));
  const [firstEm, lastEm] = [lines[0]!, lines.at(-1)!].map(wordsWidthEm);
  return (
    <div
      className="big-words"
      data-room={firstEm! < lastEm! ? 'above' : 'below'}
      style={{ '--fit': `${sizePx}px`, lineHeight } as CSSProperties}
    >
      <div ref={place} className="big-place" />
      {lines.map((line, index) => (
        <span key={index}>{line} </span>
      ))}
    </div>
  );
}
