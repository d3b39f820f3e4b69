import { Button } from 'react-aria-components';
import { useApp, useAppState } from '../../app/AppContext';
import { LimitSlider } from '../../components/LimitSlider';
import { Signed } from './CorrectionsPanel';
import { defaultLimits } from '../../protocol/limits';

/** Where the lane's edges lie; moving one judges every repetition again at once. */
export function LimitsPanel() {
  const app = useApp();
  const { present } = useAppState((state) => state.limits);
  const lastSet = useAppState((state) => state.review.limitsSet.at(-1));
  const changed = useAppState((state) => state.changedVerdicts);
  const total = useAppState((state) => state.judgements.length);
  const isDefault =
    present.kneeInwardDeg === defaultLimits.kneeInwardDeg &&
    present.kneeOutwardDeg === defaultLimits.kneeOutwardDeg;
  return (
    <section className="card limits" aria-labelledby="limits-title">
      <header className="limits-head">
        <h2 id="limits-title">Limits of the lane</h2>
        <span className="limits-status small" role="status">
          {changed === null ? '' : changedWords(changed, total)}
        </span>
        <Button className="button button-quiet no-print" isDisabled={isDefault} onPress={app.resetLimits}>
          Reset
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
      <p className="small soft">
        Default inward {defaultLimits.kneeInwardDeg}°: more is called ‘dynamic valgus’ in a study of the
        lateral step-down (54 people). Outward {defaultLimits.kneeOutwardDeg}°: common practice, no published
        source.
        {lastSet !== undefined && (
          <>
            {' '}
            Set last: <Signed by={lastSet.by} at={lastSet.at} />
          </>
        )}
      </p>
    </section>
  );
}

function changedWords(changed: number, total: number): string {
  if (changed === 0) return 'No verdict changed.';
  return `${changed} of ${total} repetitions changed verdict.`;
}
