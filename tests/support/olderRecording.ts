import { findMeasure, mapMeasures, type MeasureId } from '#core/measures/measures';
import type { Limits } from '#core/protocol/limits';
import { kneeDirection } from '#core/scoring/deciding';
import type { Verdict } from '#core/scoring/verdict';
import type { RecordingDocument } from '#documents/recording/recordingDocument';

type Repetition = RecordingDocument['derived']['repetitions'][number];

function peakOf(id: MeasureId, { ranges }: Repetition) {
  const { min = null, max = null } = ranges[id] ?? {};
  return findMeasure(id).peak({ min, max });
}

export function olderLimits({ 'knee-angle': { least, most }, ...others }: Limits): object {
  const knee = { kneeInwardDeg: most, kneeOutwardDeg: -least };
  return Object.keys(others).length === 0 ? knee : { ...knee, others };
}

/** Before version 9 there were three grades, and no chances. */
const olderVerdicts: Record<Verdict, string> = {
  in: 'in-line',
  'probably-in': 'near-limit',
  'cant-tell': 'near-limit',
  'probably-out': 'near-limit',
  out: 'out-of-line',
  'not-measured': 'not-measured',
};

function olderMeasure({ chanceInLine: _, verdict, ...rest }: Repetition['judgement']['measures'][number]) {
  return { ...rest, verdict: olderVerdicts[verdict] };
}

/** A document as version 8 wrote it. */
export function version8({ derived, ...rest }: RecordingDocument) {
  const repetitions = derived.repetitions.map(({ judgement, ...repetition }) => {
    const { chanceInLine: _, measures, verdict, ...kept } = judgement;
    return {
      ...repetition,
      judgement: { ...kept, verdict: olderVerdicts[verdict], measures: measures.map(olderMeasure) },
    };
  });
  return { ...rest, version: 8, derived: { ...derived, repetitions } };
}

/** A repetition as version 6 wrote it. */
function olderRepetition({ ranges, judgement, ...rest }: Repetition): Record<string, unknown> {
  const repetition = { ranges, judgement, ...rest };
  const { min, max, measuredShare, mainReason } = ranges['knee-angle'];
  const {
    'knee-angle': _,
    'knee-off-line': kneeDeviation,
    ...others
  } = mapMeasures((id) => peakOf(id, repetition));
  const [knee, ...measures] = judgement.measures;
  const { reason, decidedBy, alignmentScorePct } = judgement;
  const verdict = olderVerdicts[judgement.verdict];
  const isKneeMissing = decidedBy === 'knee-angle' && verdict === 'not-measured';
  return {
    ...rest,
    measuredShare,
    mainReason,
    kneeAngleMaxDeg: max,
    kneeAngleMinDeg: min,
    kneeDeviation,
    others,
    judgement: {
      verdict,
      reason,
      decidedBy: isKneeMissing ? null : decidedBy,
      knee: olderVerdicts[knee!.verdict],
      direction: kneeDirection(judgement),
      worst: knee!.extreme,
      alignmentScorePct,
      measures: measures.map(olderMeasure),
    },
  };
}

/** A document as version 6 wrote it. */
export function version6({ derived: { curves, repetitions, ...derived }, ...rest }: RecordingDocument) {
  return {
    ...rest,
    version: 6,
    limits: olderLimits(rest.limits as Limits),
    derived: {
      ...derived,
      kneeAngleDeg: curves['knee-angle'],
      kneeDeviation: curves['knee-off-line'],
      repetitions: repetitions.map(olderRepetition),
    },
  };
}

/** The same as version 5 and older ones wrote it, where a verdict was the knee's alone. */
export function version5(document: RecordingDocument) {
  const { derived, ...rest } = version6(document);
  const repetitions = derived.repetitions.map(({ judgement, ...repetition }) => {
    const { decidedBy, knee, measures, ...older } = judgement as Record<string, unknown>;
    return { ...repetition, judgement: older };
  });
  return { ...rest, version: 5, derived: { ...derived, repetitions } };
}

/** The document as it is now with only the ends that older versions had. */
export function keptOf(document: RecordingDocument): RecordingDocument {
  const repetitions = document.derived.repetitions.map((repetition) => ({
    ...repetition,
    ranges: {
      ...mapMeasures((id) => {
        const peak = peakOf(id, repetition);
        if (peak === null) return { min: null, max: null };
        return peak === repetition.ranges[id]?.min ? { min: peak } : { max: peak };
      }),
      'knee-angle': repetition.ranges['knee-angle'],
    },
  }));
  return { ...document, derived: { ...document.derived, repetitions } };
}
