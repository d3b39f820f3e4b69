import { useState } from 'react';
import { Button } from 'react-aria-components';
import { measures, type MeasureId } from '#core/measures/measures';
import { addedMeasures, defaultLimits } from '#core/protocol/limits';
import { sameLimits } from '#core/protocol/sameLimits';
import { Choice } from '#ui/components/Choice';
import { MeasureLimits, MeasureLimitSource } from '#ui/components/MeasureLimits';
import { dayWords } from '#words/dateWords';
import { addedLimitsWords } from '#words/limitWords';
import { useReview, useReviewState } from '../reviewContext';
import { limitsOrigin, type LimitsOrigin } from '../rules/limitsOrigin';
import { limitsBeforeMove } from '../store/reviewEdits';
import { Signed } from './CorrectionsPanel';

/** How far each measure may go, and who set that; moving a limit judges every repetition again at once. */
export function LimitsPanel() {
  const review = useReview();
  const limits = useReviewState((state) => state.limits);
  const beforeMove = useReviewState((state) => limitsBeforeMove(state.edits));
  const lastSet = useReviewState((state) => state.entries.limitsSet.at(-1));
  const planned = useReviewState((state) => state.session?.planned ?? null);
  const changed = useReviewState((state) => state.changedVerdicts);
  const total = useReviewState((state) => state.judgements.length);
  const [measure, setMeasure] = useState<MeasureId>('knee-angle');
  const added = addedMeasures(limits);
  const options = measures.map(({ id, name }) => ({
    id,
    name,
    ...(added.includes(id) ? { hint: 'has a limit' } : {}),
  }));
  return (
    <section className="card limits" aria-labelledby="limits-title">
      <header className="limits-head">
        <h2 id="limits-title">Limits</h2>
        <Choice label="Measure" isLabelHidden options={options} value={measure} onChange={setMeasure} />
        <span className="limits-status small" role="status">
          {changed === null ? '' : changedWords(changed, total)}
        </span>
        {planned !== null && (
          <Button
            className="button button-quiet no-print"
            isDisabled={sameLimits(planned, limits)}
            onPress={() => review.putLimits(planned)}
          >
            As planned
          </Button>
        )}
        <Button
          className="button button-quiet no-print"
          isDisabled={sameLimits(defaultLimits, limits)}
          onPress={() => review.putLimits(defaultLimits)}
        >
          Default
        </Button>
      </header>
      <MeasureLimits
        measure={measure}
        limits={limits}
        onMove={review.moveLimits}
        onMoveEnd={review.endLimitMove}
      />
      <p className="small">
        <OriginWords origin={limitsOrigin(beforeMove ?? limits, lastSet, planned)} />
        {added.length > 0 && <> Besides the knee angle: {addedLimitsWords(limits)}.</>}
      </p>
      <p className="small soft">
        <MeasureLimitSource measure={measure} />
      </p>
    </section>
  );
}

function OriginWords({ origin }: { origin: LimitsOrigin }) {
  switch (origin.kind) {
    case 'set':
      return (
        <>
          Set by hand: <Signed by={origin.by} at={origin.at} />.
        </>
      );
    case 'taken-over':
      return (
        <>
          Carried over from the session of {dayWords(origin.takenFrom)}, set there by hand:{' '}
          <Signed by={origin.by} at={origin.at} />.
        </>
      );
    case 'plan':
      return 'From the plan.';
    case 'default':
      return 'Nobody has changed them.';
    case 'session':
      return 'Saved with the recording; who set them is not known.';
  }
}

function changedWords(changed: number, total: number): string {
  if (changed === 0) return 'No verdict changed.';
  return `${changed} of ${total} repetitions changed verdict.`;
}
