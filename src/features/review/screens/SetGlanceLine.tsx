import { memo, type ReactNode } from 'react';
import type { ShownRecording } from '#shell/tracking/shownRecording';
import { formatTempo } from '#words/tempo';
import { useReviewState } from '../reviewContext';
import { buildSetGlance, type SetGlance } from '../rules/buildSetGlance';
import { countSentence, lostSentence, peaksSentence } from '../rules/glanceWords';

/** The set in one line above everything else, and what else is known of it in small below. */
export const SetGlanceLine = memo(function SetGlanceLine({ recording }: { recording: ShownRecording }) {
  const judgements = useReviewState((state) => state.judgements);
  const limits = useReviewState((state) => state.limits);
  const session = useReviewState((state) => state.session);
  const { measurement, excluded, isByHand } = recording;
  const glance = buildSetGlance(measurement, judgements, excluded, limits);
  const { side } = measurement.setup;
  const asked = session?.line.prescribedRepetitions ?? null;
  return (
    <section className="glance number" aria-label="The set at a glance">
      <p className="glance-answer">
        <strong>{countSentence(glance)}</strong> {lostSentence(glance)} {peaksSentence(glance)}
      </p>
      <dl className="small">
        <Fact name="Leg">
          {side}
          {session !== null && `, set ${session.line.number}`}
        </Fact>
        <Fact name="Repetitions">
          {glance.done}
          {asked !== null && ` of ${asked}`}
          {glance.excluded > 0 && ` (${glance.excluded} excluded)`}
        </Fact>
        {glance.inLine !== null && <Fact name="Longest good run">{glance.goodRun}</Fact>}
        <Fact name="From first to last">{trendWords(glance)}</Fact>
        <Fact name={tempoName(glance)}>{glance.tempo.length === 0 ? '–' : formatTempo(glance.tempo)}</Fact>
        <Fact name="Depth">{depthWords(glance)}</Fact>
        {session !== null && (
          <>
            <Fact name="Pain before, during, after">
              {[session.painBefore, session.line.painDuring, session.painAfter].map(orDash).join(' · ')}
              {session.painLimit !== null && ` (limit ${session.painLimit})`}
            </Fact>
            <Fact name="Effort">{orDash(session.effort)}</Fact>
          </>
        )}
        {session !== null && session.otherSide !== null && session.otherSide.side !== side && (
          <Fact name={`The ${session.otherSide.side} leg`}>{session.otherSide.words}</Fact>
        )}
        {glance.timeInLinePct !== null && (
          <Fact name="Time in line">{Math.round(glance.timeInLinePct)} %</Fact>
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
      <dt className="soft">{name}</dt>
      <dd>{children}</dd>
    </div>
  );
}

function orDash(value: number | null): string {
  return value === null ? '–' : String(value);
}

function trendWords({ trend }: SetGlance): string {
  if (trend === null) return 'needs 3 repetitions';
  if (!trend.isBeyondError) return 'no steady change';
  const perTen = Math.abs(10 * trend.slope).toFixed(0);
  return `${perTen}° more ${trend.slope > 0 ? 'inward' : 'outward'} in 10 repetitions`;
}

function tempoName({ tempo }: SetGlance): string {
  return tempo.length === 0 ? 'Tempo' : `Tempo (${tempo.map(({ name }) => name).join(', ')})`;
}

function depthWords({ bend }: SetGlance): string {
  if (bend === null) return 'not measured';
  return `about ${Math.round(bend.mean)}° of knee bend, varying by ${Math.max(1, Math.round(bend.sd))}°`;
}
