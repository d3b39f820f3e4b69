import { Button } from 'react-aria-components';
import { useApp, useAppState } from '../../app/AppContext';
import { LimitSlider } from '../../components/LimitSlider';
import { defaultLimits, limitSources } from '../../protocol/limits';
import { sameLimits } from '../../protocol/sameLimits';
import { limitsOrigin, type LimitsOrigin } from '../../review/limitsOrigin';
import { Signed } from './CorrectionsPanel';

/** Where the lane's edges lie, and who says so; moving one judges every repetition again at once. */
export function LimitsPanel() {
  const app = useApp();
  const { present, movingFrom } = useAppState((state) => state.limits);
  const lastSet = useAppState((state) => state.review.limitsSet.at(-1));
  const planned = useAppState((state) => state.visit?.planned ?? null);
  const changed = useAppState((state) => state.changedVerdicts);
  const total = useAppState((state) => state.judgements.length);
  return (
    <section className="card limits" aria-labelledby="limits-title">
      <header className="limits-head">
        <h2 id="limits-title">Limits of the lane</h2>
        <span className="limits-status small" role="status">
          {changed === null ? '' : changedWords(changed, total)}
        </span>
        {planned !== null && (
          <Button
            className="button button-quiet no-print"
            isDisabled={sameLimits(planned, present)}
            onPress={() => app.putLimits(planned)}
          >
            As planned
          </Button>
        )}
        <Button
          className="button button-quiet no-print"
          isDisabled={sameLimits(defaultLimits, present)}
          onPress={() => app.putLimits(defaultLimits)}
        >
          Default
        </Button>
      </header>
      <div className="limits-sliders">
        <LimitSlider
          label="Inward"
          valueDeg={present.kneeInwardDeg}
          onMove={(kneeInwardDeg) => app.moveLimit({ kneeInwardDeg })}
          onMoveEnd={app.endLimitMove}
        />
        <LimitSlider
          label="Outward"
          valueDeg={present.kneeOutwardDeg}
          onMove={(kneeOutwardDeg) => app.moveLimit({ kneeOutwardDeg })}
          onMoveEnd={app.endLimitMove}
        />
      </div>
      <p className="small">
        <OriginWords origin={limitsOrigin(movingFrom ?? present, lastSet, planned)} />
      </p>
      <p className="small soft">
        Default inward {defaultLimits.kneeInwardDeg}°: {limitSources.kneeInwardDeg}. Outward{' '}
        {defaultLimits.kneeOutwardDeg}°: {limitSources.kneeOutwardDeg}.
      </p>
    </section>
  );
}

function OriginWords({ origin }: { origin: LimitsOrigin }) {
  switch (origin.kind) {
    case 'set':
      return (
        <>
          Set by hand: <Signed by={origin.by} at={origin.at} />
        </>
      );
    case 'taken-over':
      return (
        <>
          Taken over from the session of {dayWords(origin.takenFrom)}, set there by hand:{' '}
          <Signed by={origin.by} at={origin.at} />
        </>
      );
    case 'plan':
      return 'From the plan.';
    case 'default':
      return 'The default.';
    case 'session':
      return 'As the session came; who set them is not known here.';
  }
}

function dayWords(iso: string): string {
  return new Date(iso).toLocaleDateString(undefined, { dateStyle: 'medium' });
}

function changedWords(changed: number, total: number): string {
  if (changed === 0) return 'No verdict changed.';
  return `${changed} of ${total} repetitions changed verdict.`;
}
