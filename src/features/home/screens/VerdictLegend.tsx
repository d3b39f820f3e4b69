import type { PlanItem } from '#documents/plan/planDocument';
import { Parts } from '#ui/components/Parts';
import { VerdictMark } from '#ui/components/VerdictMark';
import { shortCue } from '#words/measureWords';
import { message, messageParts } from '#words/messages/message';
import { hasLiveFeedback } from './hasLiveFeedback';

/** What the big words and marks of the set will mean, told before it; nothing where the plan wants none shown. */
export function VerdictLegend({ item }: { item: PlanItem }) {
  if (!hasLiveFeedback(item)) return null;
  return (
    <section className="home-section">
      <h2>{message('legend.title')}</h2>
      <ul className="home-list verdict-legend">
        {item.kind === 'repetitions' && item.feedback === 'every-repetition' && (
          <li>
            <VerdictMark verdict="in" sizePx={24} />{' '}
            <Parts of={messageParts('legend.good', { good: <strong>{message('heard.good')}</strong> })} />
          </li>
        )}
        <li>
          <VerdictMark verdict="out" pointing="left" sizePx={24} />{' '}
          <Parts
            of={messageParts('legend.out', {
              out: <strong>{shortCue('knee-angle', 'most')}</strong>,
              in: <strong>{shortCue('knee-angle', 'least')}</strong>,
            })}
          />
        </li>
      </ul>
    </section>
  );
}
