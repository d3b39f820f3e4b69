import type { Curve, MissingReason } from '#core/measurement/curve';
import { summarise } from '#core/measurement/measureRepetition';
import type { Extreme, MeasuredRepetition, Measurement } from '#core/measurement/measurement';
import { limitEnds, type LimitEnd, type Limits } from '#core/protocol/limits';
import { otherMeasureIds, type MeasureId } from '#core/measures/measures';
import { countWithin } from '#core/scoring/countWithin';
import { judge, type Judgement } from '#core/scoring/judge';
import { csvText, type Cell } from './csvText';
import { rounded } from './rounded';

interface Row {
  repetition: MeasuredRepetition;
  judgement: Judgement;
  measurement: Measurement;
  limits: Limits;
  note: string;
  excluded: string | null;
  isByHand: boolean;
}

type Column = readonly [name: string, cell: (row: Row) => Cell];

/**
 * The repetitions of a recording as CSV, one a row; docs/data-out.md says what each column means.
 *
 * @param note  for demo data: that it is invented
 * @param excluded  one a repetition: why it does not count; null where it counts
 * @param handMade  one a repetition: whether its times or a joint in it were set by hand
 */
export function repetitionsCsv(
  parts: Pick<Row, 'measurement' | 'limits' | 'note'> & {
    excluded?: readonly (string | null)[];
    handMade?: readonly boolean[];
  },
): string {
  const { measurement, limits, note, excluded = [], handMade = [] } = parts;
  const rows = measurement.repetitions.map((repetition, index) => {
    const row: Row = {
      ...{ measurement, limits, note, repetition },
      judgement: judge(repetition, measurement, limits),
      excluded: excluded[index] ?? null,
      isByHand: handMade[index] ?? false,
    };
    return columns.map(([, cell]) => cell(row));
  });
  return csvText(
    columns.map(([name]) => name),
    rows,
  );
}

/** Number a unit of the document, and the unit's name in the header row. */
interface Unit {
  name: string;
  factor: number;
}

const degree: Unit = { name: 'deg', factor: 1 };
const percentOfLeg: Unit = { name: 'pct_leg', factor: 100 };
const percentOfStance: Unit = { name: 'pct_stance', factor: 100 };

const units: Record<MeasureId, Unit> = {
  'knee-off-line': percentOfLeg,
  'knee-over-foot': percentOfLeg,
  'hip-over-knee': percentOfLeg,
  'pelvic-drop': degree,
  'trunk-lean': degree,
  'pelvis-place': percentOfStance,
  depth: percentOfLeg,
};

/** Value, band and time of an extreme. */
function extreme(name: string, unit: Unit, of: (row: Row) => Extreme | null): Column[] {
  const scaled = (value: number | undefined) => rounded(value === undefined ? null : unit.factor * value, 2);
  return [
    [`${name}_${unit.name}`, (row) => scaled(of(row)?.value)],
    [`${name}_band_${unit.name}`, (row) => scaled(of(row)?.band)],
    [`${name}_at_s`, (row) => seconds(of(row)?.timeMs)],
  ];
}

/** An extreme, why there is none where there is none, and its limits. */
function measure(
  id: MeasureId,
  of: (row: Row) => Extreme | null,
  curve: (measurement: Measurement) => Curve,
): Column[] {
  const [name, unit] = [id.replaceAll('-', '_'), units[id]];
  const limit = (end: LimitEnd): Column => [
    `${name}_${end}_${unit.name}`,
    ({ limits }) => {
      const value = limits.others?.[id]?.[end];
      return rounded(value === undefined ? null : unit.factor * value, 2);
    },
  ];
  return [
    ...extreme(name, unit, of),
    ...limitEnds.map(limit),
    [`${name}_reason`, (row) => (of(row) === null ? reasonWithin(row, curve(row.measurement)) : null)],
  ];
}

/** The reason behind most of what is missing from a curve in the loaded time. */
function reasonWithin({ repetition, measurement }: Row, curve: Curve): MissingReason | null {
  const { loadedFrom, loadedTo } = repetition;
  return summarise(curve, measurement.timesMs, loadedFrom, loadedTo).mainReason;
}

const seconds = (timeMs: number | null | undefined) =>
  rounded(timeMs === null || timeMs === undefined ? null : timeMs / 1000, 3);

/** An angle stands only where there is a verdict: else it can't be trusted, and the reason stands instead. */
const judged = (name: 'kneeAngleMaxDeg' | 'kneeAngleMinDeg') => (row: Row) =>
  row.judgement.knee === 'not-measured' ? null : row.repetition[name];

function timeOutOfLimitsS({ repetition, judgement, measurement, limits }: Row): number | null {
  if (judgement.knee === 'not-measured') return null;
  const { measured, within } = countWithin(repetition, measurement.kneeAngleDeg, limits);
  return rounded((measured - within) / measurement.rateHz, 3);
}

const columns: readonly Column[] = [
  ['repetition', ({ repetition }) => repetition.number],
  ['task', ({ measurement }) => measurement.setup.task],
  ['side', ({ measurement }) => measurement.setup.side],
  ['completeness', ({ repetition }) => repetition.completeness],
  ['verdict', ({ judgement }) => judgement.verdict],
  ['reason', ({ judgement }) => judgement.reason],
  ['decided_by', ({ judgement }) => judgement.decidedBy?.replaceAll('-', '_') ?? null],
  ['direction', ({ judgement }) => judgement.direction],
  ...extreme('worst_knee_angle', degree, ({ judgement }) => judgement.worst),
  ['alignment_score_pct', ({ judgement }) => rounded(judgement.alignmentScorePct, 1)],
  ['out_of_limits_s', timeOutOfLimitsS],
  ['measured_share_pct', ({ repetition }) => rounded(100 * repetition.measuredShare, 1)],
  ['unmeasured_reason', ({ repetition }) => repetition.mainReason],
  ['limit_inward_deg', ({ limits }) => rounded(limits.kneeInwardDeg, 2)],
  ['limit_outward_deg', ({ limits }) => rounded(limits.kneeOutwardDeg, 2)],
  ...extreme('knee_angle_largest', degree, judged('kneeAngleMaxDeg')),
  ...extreme('knee_angle_smallest', degree, judged('kneeAngleMinDeg')),
  ...measure(
    'knee-off-line',
    ({ repetition }) => repetition.kneeDeviation,
    ({ kneeDeviation }) => kneeDeviation,
  ),
  ...otherMeasureIds.flatMap((id) =>
    measure(
      id,
      ({ repetition }) => repetition.others[id],
      ({ others, kneeDeviation }) => others?.[id] ?? kneeDeviation,
    ),
  ),
  ['start_s', ({ repetition }) => seconds(repetition.events.startMs)],
  ['seat_off_s', ({ repetition }) => seconds(repetition.events.seatOffMs)],
  ['top_s', ({ repetition }) => seconds(repetition.events.topMs)],
  ['top_end_s', ({ repetition }) => seconds(repetition.events.topEndMs)],
  ['turning_s', ({ repetition }) => seconds(repetition.events.bottomMs)],
  ['seat_contact_s', ({ repetition }) => seconds(repetition.events.seatContactMs)],
  ['end_s', ({ repetition }) => seconds(repetition.events.endMs)],
  ['excluded_because', ({ excluded }) => excluded],
  ['corrected_by_hand', ({ isByHand }) => (isByHand ? 'yes' : null)],
  ['measuring_version', ({ measurement }) => measurement.version],
  ['note', ({ note }) => note],
];
