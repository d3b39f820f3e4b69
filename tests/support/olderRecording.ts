import { findMeasure, mapMeasures, type MeasureId } from '#core/measures/measures';
import type { Limits } from '#core/protocol/limits';
import { kneeDirection } from '#core/scoring/deciding';
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
  const { verdict, reason, decidedBy, alignmentScorePct } = judgement;
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
      knee: knee!.verdict,
      direction: kneeDirection(judgement),
      worst: knee!.extreme,
      alignmentScorePct,
      measures,
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
