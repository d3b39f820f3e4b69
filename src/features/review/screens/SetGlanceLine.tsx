import { memo, type ReactNode } from 'react';
import type { ShownRecording } from '#shell/tracking/shownRecording';
import { formatValue } from '#words/formatMeasure';
import { countWords } from '#words/setCountWords';
import { formatTempo } from '#words/tempo';
import { useReviewState } from '../reviewContext';
import { buildSetGlance, type SetGlance } from '../rules/buildSetGlance';

/** Summary of the set in one line above everything else, for a review of two minutes. */
export const SetGlanceLine = memo(function SetGlanceLine({ recording }: { recording: ShownRecording }) {
  const judgements = useReviewState((state) => state.judgements);
  const limits = useReviewState((state) => state.limits);
  const session = useReviewState((state) => state.session);
  const { measurement, excluded, isByHand } = recording;
  const glance = buildSetGlance(measurement, judgements, excluded, limits);
  const { side } = measurement.setup;
  return (
    <section className="glance" aria-label="The set at a glance">
      <dl className="number">
        <Fact name="Leg">
          {side}
          {session !== null && `, set ${session.line.number}`}
        </Fact>
        <Fact name="Done">
          {glance.done}
          {session !== null && session.line.prescribedRepetitions !== null
            ? ` of ${session.line.prescribedRepetitions}`
            : ''}
          {glance.excluded > 0 && <span className="soft small"> ({glance.excluded} excluded)</span>}
        </Fact>
        <Fact name="In line">{glance.inLine === null ? 'not measured' : countWords(glance.inLine)}</Fact>
        {glance.inLine !== null && <Fact name="Longest good run">{glance.goodRun}</Fact>}
        <Fact name="Usual peak">{peakWords(glance)}</Fact>
        <Fact name="In the set">{trendWords(glance)}</Fact>
        <Fact name="Tempo">{glance.tempo.length === 0 ? '–' : formatTempo(glance.tempo)}</Fact>
        <Fact name="Depth">{depthWords(glance)}</Fact>
        {session !== null && (
          <>
            <Fact name="Pain before, during, after">
              {[session.painBefore, session.line.painDuring, session.painAfter].map(orDash).join(' · ')}
              {session.painLimit !== null && <span className="soft small"> limit {session.painLimit}</span>}
            </Fact>
            <Fact name="Effort">{orDash(session.effort)}</Fact>
          </>
        )}
        {session !== null && session.otherSide !== null && session.otherSide.side !== side && (
          <Fact name={`The ${session.otherSide.side} leg`}>{session.otherSide.words}</Fact>
        )}
        {isByHand && (
          <Fact name="Results">
            <strong>corrected by hand</strong>
          </Fact>
        )}
      </dl>
      {session !== null && session.remark !== '' && (
        <p className="small">
          <span className="soft">Remark: </span>
          {session.remark}
        </p>
      )}
    </section>
  );
});

function Fact({ name, children }: { name: string; children: ReactNode }) {
  return (
    <div>
      <dt className="small soft">{name}</dt>
      <dd>{children}</dd>
    </div>
  );
}

function orDash(value: number | null): string {
  return value === null ? '–' : String(value);
}

function peakWords({ peak, done }: SetGlance): string {
  if (peak === null) return done < 3 ? 'needs 3 repetitions' : 'not measured';
  return `${formatValue('knee-angle', peak.meanDeg)}, of ${peak.count}`;
}

function trendWords({ trend }: SetGlance): string {
  if (trend === null) return 'needs 3 repetitions';
  if (!trend.isBeyondError) return 'no drift beyond scatter';
  const perTen = Math.abs(10 * trend.slope).toFixed(0);
  return `${perTen}° more ${trend.slope > 0 ? 'inward' : 'outward'} in 10`;
}

function depthWords({ depth }: SetGlance): string {
  if (depth === null) return 'not measured';
  return `${Math.round(100 * depth.mean)} % of leg, spread ${Math.round(100 * depth.sd)}`;
}
