import type { Sureness } from '#core/chance/grade';
import { isSideDoubtful, type MeasuredRepetition, type Measurement } from '#core/measurement/measurement';
import type { Extreme } from '#core/measurement/measureRange';
import { kneeAngle } from '#core/measures/kneeAngle';
import type { LimitEnd } from '#core/measures/limitEnd';
import type { Measure, Unit } from '#core/measures/measure';
import { findMeasure, measureIds, type MeasureId } from '#core/measures/measures';
import type { EndLimits, Limits } from '#core/protocol/limits';
import { countWithin } from '#core/scoring/countWithin';
import { kneeDirection } from '#core/scoring/deciding';
import { judge, judgementOf, type Judgement } from '#core/scoring/judge';
import { csvText, type Cell } from './csvText';
import { rounded } from './rounded';

/** Whose set it was, and which; what is not known stays empty. */
export interface SetOrigin {
  /** A pseudonym. */
  patient: string | null;
  /** ISO 8601: '2026-04-05'. */
  date: string | null;
  sessionId: string | null;
  /** Number of the set in the session, from 1. */
  set: number | null;
}

interface Row {
  origin: SetOrigin;
  repetition: MeasuredRepetition;
  judgement: Judgement;
  measurement: Measurement;
  limits: Limits;
  /** How sure it had to be before a side was named. */
  sureness: Sureness;
  note: string;
  excluded: string | null;
  isByHand: boolean;
}

type Column = readonly [name: string, cell: (row: Row) => Cell];

/** A measured set, as far as its rows need it. */
export interface CsvSet extends Pick<Row, 'measurement' | 'limits' | 'sureness' | 'note'> {
  origin?: SetOrigin;
  /** One per repetition: why it does not count; null where it counts. */
  excluded?: readonly (string | null)[];
  /** One per repetition: whether its times or a joint in it were set by hand. */
  handMade?: readonly boolean[];
}

const unknownOrigin: SetOrigin = { patient: null, date: null, sessionId: null, set: null };

/** The repetitions of sets as CSV, one per row, in their order; docs/data-out.md says what each column means. */
export function repetitionsCsv(sets: readonly CsvSet[]): string {
  return repetitionsTable(sets.flatMap(repetitionCells));
}

/** The same of rows that were made one set at a time. */
export function repetitionsTable(rows: readonly (readonly Cell[])[]): string {
  return csvText(
    columns.map(([name]) => name),
    rows,
  );
}

/** The rows of one set. */
export function repetitionCells(parts: CsvSet): Cell[][] {
  const { measurement, limits, sureness, note, origin = unknownOrigin, excluded = [], handMade = [] } = parts;
  return measurement.repetitions.map((repetition, index) => {
    const row: Row = {
      origin,
      measurement,
      limits,
      sureness,
      note,
      repetition,
      judgement: judge(repetition, measurement, limits, sureness),
      excluded: excluded[index] ?? null,
      isByHand: handMade[index] ?? false,
    };
    return columns.map(([, cell]) => cell(row));
  });
}

/** Value, band and time of an extreme. */
function extreme(name: string, unit: Unit, of: (row: Row) => Extreme | null): Column[] {
  const scaled = (value: number | undefined) => rounded(value === undefined ? null : unit.factor * value, 2);
  return [
    [`${name}_${unit.csv}`, (row) => scaled(of(row)?.value)],
    [`${name}_band_${unit.csv}`, (row) => scaled(of(row)?.band)],
    [`${name}_at_s`, (row) => seconds(of(row)?.timeMs)],
  ];
}

/** The columns that a measure asks for. */
function measureColumns(id: MeasureId, { columns, unit, peak }: Measure): Column[] {
  return columns.flatMap((column): Column[] => {
    switch (column.kind) {
      case 'extreme':
        return extreme(column.name, unit, ({ repetition, judgement }) => {
          const isLeftOut = column.needsVerdict && !hasVerdict(judgement, id);
          return isLeftOut ? null : column.of(repetition.ranges[id]);
        });
      case 'limit':
        return [[`${column.name}_${unit.csv}`, ({ limits }) => scaledLimit(column, limits[id], unit)]];
      case 'reason':
        return [
          [
            column.name,
            ({ repetition: { ranges } }) => (peak(ranges[id]) === null ? ranges[id].mainReason : null),
          ],
        ];
    }
  });
}

function hasVerdict({ measures }: Judgement, id: MeasureId): boolean {
  return measures.some(({ measure, verdict }) => measure === id && verdict !== 'not-measured');
}

function scaledLimit(
  { end, isDistance }: { end: LimitEnd; isDistance: boolean },
  limits: EndLimits = {},
  { factor }: Unit,
): Cell {
  const value = limits[end];
  return rounded(value === undefined ? null : factor * (isDistance ? Math.abs(value) : value), 2);
}

const seconds = (timeMs: number | null | undefined) =>
  rounded(timeMs === null || timeMs === undefined ? null : timeMs / 1000, 3);

function timeOutOfLimitsS({ repetition, judgement, measurement, limits }: Row): number | null {
  if (!hasVerdict(judgement, 'knee-angle')) return null;
  const { measured, within } = countWithin(
    repetition,
    measurement.curves['knee-angle'],
    limits['knee-angle'],
  );
  return rounded((measured - within) / measurement.rateHz, 3);
}

/** Empty where the knee angle could not be measured, as in earlier versions. */
function decidedBy({ verdict, decidedBy }: Judgement): string | null {
  const isKneeMissing = decidedBy === 'knee-angle' && verdict === 'not-measured';
  return isKneeMissing ? null : decidedBy.replaceAll('-', '_');
}

const kneeRange = ({ ranges }: MeasuredRepetition) => ranges['knee-angle'];

const columns: readonly Column[] = [
  ['patient', ({ origin }) => origin.patient],
  ['date', ({ origin }) => origin.date],
  ['session', ({ origin }) => origin.sessionId],
  ['set', ({ origin }) => origin.set],
  ['repetition', ({ repetition }) => repetition.number],
  ['task', ({ measurement }) => measurement.setup.task],
  ['side', ({ measurement }) => measurement.setup.side],
  ['completeness', ({ repetition }) => repetition.completeness],
  ['verdict', ({ judgement }) => judgement.verdict],
  ['chance_in_line_pct', ({ judgement: { chanceInLine } }) => rounded(chanceInLine && 100 * chanceInLine, 1)],
  ['reason', ({ judgement }) => judgement.reason],
  ['decided_by', ({ judgement }) => decidedBy(judgement)],
  ['direction', ({ judgement }) => kneeDirection(judgement)],
  ...extreme(
    'worst_knee_angle',
    kneeAngle.unit,
    ({ judgement }) => judgementOf(judgement, 'knee-angle').extreme,
  ),
  ['alignment_score_pct', ({ judgement }) => rounded(judgement.alignmentScorePct, 1)],
  ['out_of_limits_s', timeOutOfLimitsS],
  ['measured_share_pct', ({ repetition }) => rounded(100 * kneeRange(repetition).measuredShare, 1)],
  ['unmeasured_reason', ({ repetition }) => kneeRange(repetition).mainReason],
  ...measureIds.flatMap((id) => measureColumns(id, findMeasure(id))),
  ['start_s', ({ repetition }) => seconds(repetition.events.startMs)],
  ['seat_off_s', ({ repetition }) => seconds(repetition.events.seatOffMs)],
  ['top_s', ({ repetition }) => seconds(repetition.events.topMs)],
  ['top_end_s', ({ repetition }) => seconds(repetition.events.topEndMs)],
  ['turning_s', ({ repetition }) => seconds(repetition.events.bottomMs)],
  ['seat_contact_s', ({ repetition }) => seconds(repetition.events.seatContactMs)],
  ['end_s', ({ repetition }) => seconds(repetition.events.endMs)],
  ['excluded_because', ({ excluded }) => excluded],
  ['corrected_by_hand', ({ isByHand }) => (isByHand ? 'yes' : null)],
  ['other_leg_likely', ({ measurement }) => (isSideDoubtful(measurement) ? 'yes' : null)],
  ['measuring_version', ({ measurement }) => measurement.version],
  ['note', ({ note }) => note],
];
