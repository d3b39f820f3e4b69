import { useState } from 'react';
import { Button } from 'react-aria-components';
import { addedMeasures, defaultLimits, type Limits } from '#core/protocol/limits';
import { sameLimits } from '#core/protocol/sameLimits';
import { MeasureLimits, MeasureLimitSource } from '#ui/components/MeasureLimits';
import { capitalised } from '#words/capitalised';
import { dayWords } from '#words/dateWords';
import { addedLimitsWords, kneeLimitWords } from '#words/limitWords';
import { useReview, useReviewState } from '../reviewContext';
import { limitsOrigin, type LimitsOrigin } from '../rules/limitsOrigin';
import { limitsBeforeMove } from '../store/reviewEdits';
import { Signed } from './CorrectionsPanel';
import { MeasureChoice } from './MeasureChoice';

/** The limits in one line, which opens to change them; moving one judges every repetition again at once. */
export function LimitsPanel() {
  const limits = useReviewState((state) => state.limits);
  const since = useReviewState((state) => state.entries.limitsSet.at(-1)?.takenFrom);
  const changed = useReviewState((state) => state.changedVerdicts);
  const total = useReviewState((state) => state.judgements.length);
  const [isOpen, setOpen] = useState(false);
  return (
    <section className="card limits" aria-labelledby="limits-title">
      <div className="limits-line">
        <h2 id="limits-title">Limits</h2>
        <p className="limits-now">
          {lineWords(limits)}
          {since !== undefined && `, since ${dayWords(since)}`}
        </p>
        <span className="limits-status small" role="status">
          {changed === null ? '' : changedWords(changed, total)}
        </span>
        <Button
          className="button button-quiet no-print"
          aria-expanded={isOpen}
          onPress={() => setOpen(!isOpen)}
        >
          {isOpen ? 'Close limits' : 'Change limits'}
        </Button>
      </div>
      {isOpen && <LimitsForm />}
    </section>
  );
}

function LimitsForm() {
  const review = useReview();
  const limits = useReviewState((state) => state.limits);
  const measure = useReviewState((state) => state.measure);
  const beforeMove = useReviewState((state) => limitsBeforeMove(state.edits));
  const lastSet = useReviewState((state) => state.entries.limitsSet.at(-1));
  const planned = useReviewState((state) => state.session?.planned ?? null);
  return (
    <div className="limits-form">
      <header className="limits-head">
        <MeasureChoice />
        <span className="limits-room" />
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
      </p>
      <LaterSets />
      <details className="small soft">
        <summary>Where the default comes from, and how common it is to go beyond</summary>
        <p>
          <MeasureLimitSource measure={measure} limits={limits} />
        </p>
      </details>
    </div>
  );
}

/** Limits that were set here hold here alone, until somebody asks for more. */
function LaterSets() {
  const review = useReview();
  const session = useReviewState((state) => state.session);
  const lastSet = useReviewState((state) => state.entries.limitsSet.at(-1));
  if (session === null || lastSet === undefined || lastSet.takenFrom !== undefined) return null;
  const isForLater = lastSet.forLater === true;
  return (
    <p className="small limits-later">
      {isForLater
        ? 'They also hold for later sets of this task and leg that have no limits of their own and are not reviewed.'
        : 'They hold for this set alone.'}{' '}
      <Button className="button button-quiet no-print" onPress={() => review.holdForLater(!isForLater)}>
        {isForLater ? 'For this set alone' : 'Use for later sets too'}
      </Button>
    </p>
  );
}

function lineWords(limits: Limits): string {
  const added = addedMeasures(limits).length === 0 ? '' : ` · ${capitalised(addedLimitsWords(limits))}`;
  return `Knee angle ${kneeLimitWords(limits)}${added}`;
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
