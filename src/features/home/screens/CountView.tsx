import { otherSide, type Side } from '#core/protocol/side';
import { VerdictMark } from '#ui/components/VerdictMark';
import { picturePointing } from '#ui/drawing/verdictForm';
import { repetitionCount } from '#words/repetitionCount';
import { verdictWords } from '#words/verdictWords';
import type { HeardVerdict } from '../guide/guideEvent';
import type { GuideView } from '../guide/guideView';
import { useHomeStep } from '../homeContext';
import { toldOf } from './toldOf';

/** Repetitions done, huge, and how they went, where the plan wants it shown. */
export function CountView({ view }: { view: GuideView }) {
  const { step, count, ofCount } = view;
  const heard = useHomeStep('exercise', (part) => part.heard);
  if (count === null) {
    return (
      <div className="film-count">
        <p className="film-sentence">Count for yourself: {repetitionCount(ofCount)}.</p>
      </div>
    );
  }
  const told = heard.map((verdict) => toldOf(verdict, step.item));
  const last = told[count - 1] ?? null;
  return (
    <>
      <div className="film-count" role="img" aria-label={`${count} of ${ofCount} repetitions`}>
        <span className="film-number">{count}</span>
        <span className="film-of">of {ofCount}</span>
      </div>
      <div className="film-verdict">
        {last !== null && <MirroredMark heard={last} side={step.side} sizePx={112} />}
      </div>
      <ol className="film-strip" aria-label="Repetitions so far">
        {Array.from({ length: ofCount }, (_, index) => (
          <li key={index}>
            <StripMark heard={told[index] ?? null} isDone={index < count} side={step.side} />
          </li>
        ))}
      </ol>
    </>
  );
}

interface MarkProps {
  heard: HeardVerdict | null;
  isDone: boolean;
  side: Side;
}

function StripMark({ heard, isDone, side }: MarkProps) {
  return (
    <>
      {heard === null ? (
        <span className={isDone ? 'film-pip film-pip-done' : 'film-pip'} />
      ) : (
        <MirroredMark heard={heard} side={side} sizePx={20} />
      )}
      <span className="visually-hidden">
        {heard !== null ? verdictWords[heard.verdict] : isDone ? 'done' : 'to come'}
      </span>
    </>
  );
}

/** In the mirror a triangle points the other way than in the picture as filmed. */
function MirroredMark({ heard, side, sizePx }: { heard: HeardVerdict; side: Side; sizePx: number }) {
  const pointing = heard.direction && picturePointing(otherSide(side), heard.direction);
  return <VerdictMark verdict={heard.verdict} pointing={pointing} sizePx={sizePx} />;
}
