import type { Side } from '#core/protocol/side';
import { VerdictMark } from '#ui/components/VerdictMark';
import { picturePointing } from '#ui/drawing/verdictForm';
import { message } from '#words/messages/message';
import { verdictWords } from '#words/verdictWords';
import type { HeardVerdict } from '../guide/guideEvent';
import type { GuideView } from '../guide/guideView';
import { useHomeState, useHomeStep } from '../homeContext';
import { BigWords } from './BigWords';
import { heardWords } from './heardWords';
import { isShownMirrored } from './isShownMirrored';
import { toldOf } from './toldOf';
import { useLately } from './useLately';

/** How long a verdict is shown in place of the count, ms: common practice, no source. */
const shownMs = 3000;

/** Repetitions done; for a moment after each, where the plan wants it shown, how it went. */
export function CountView({ view }: { view: GuideView }) {
  const { step, count, ofCount } = view;
  const last = useHomeStep('exercise', ({ heard }) => (count === null ? null : (heard[count - 1] ?? null)));
  const told = toldOf(last, step.item);
  const words = told === null ? null : heardWords(told);
  const isNew = useLately(words === null ? null : `${count} ${words}`, shownMs);
  if (count === null) {
    return (
      <div className="film-told">
        <BigWords text={message('film.count-to', { of: ofCount })} />
      </div>
    );
  }
  return (
    <>
      {told !== null && words !== null && isNew ? (
        <div className="film-told film-verdict" role="status">
          <PointingMark heard={told} side={step.side} />
          <BigWords text={words} />
          <span className="visually-hidden">{verdictWords(told.verdict)}</span>
        </div>
      ) : null}
      <div
        className={isNew ? 'visually-hidden' : 'film-count'}
        role="img"
        aria-label={message('film.count', { count, of: ofCount })}
      >
        <span className="film-number">{count}</span>
        <span className="film-of">{message('film.of', { of: ofCount })}</span>
      </div>
    </>
  );
}

/** A triangle points the way that the knee went in the picture as it is shown. */
function PointingMark({ heard, side }: { heard: HeardVerdict; side: Side }) {
  const isMirrored = useHomeState(isShownMirrored);
  const pointing = heard.direction && picturePointing(side, heard.direction, isMirrored);
  return <VerdictMark verdict={heard.verdict} pointing={pointing} sizePx={120} />;
}
