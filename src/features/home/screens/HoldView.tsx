import { message } from '#words/messages/message';
import type { GuideView } from '../guide/guideView';
import { Ring } from './Ring';

interface Props {
  view: GuideView;
  hold: NonNullable<GuideView['hold']>;
}

/** A hold, or the rest after it, with the seconds left. */
export function HoldView({ view, hold }: Props) {
  const { item } = view.step;
  if (item.kind !== 'hold') return null;
  const isHolding = hold.phase === 'holding';
  const all = isHolding ? item.holdSeconds : item.restSeconds;
  return (
    <div className="film-time">
      <h1>{message(isHolding ? 'film.hold' : 'film.relax')}</h1>
      <Ring share={all === 0 ? 0 : hold.secondsLeft / all}>
        <span role="timer" aria-label={message('film.seconds-left', { seconds: hold.secondsLeft })}>
          {hold.secondsLeft}
        </span>
      </Ring>
      <p className="film-hold">{message('film.hold-of', { hold: hold.hold, of: item.holds })}</p>
    </div>
  );
}
