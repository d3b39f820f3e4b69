import { mean } from 'd3-array';
import type { ComparedClip, ComparedRepetition } from './compareClip';
import { describeErrors, type ErrorFigures } from './describeErrors';
import { eventNames, type EventName } from './timingErrors';

export interface Summary {
  clips: number;
  repsTrue: number;
  repsFound: number;
  /** Clips in which just as many repetitions were found as there are, each over a true one. */
  clipsCountedRight: number;
  notFound: number;
  /** Found, but without a number, which comes with its reason. */
  notMeasured: number;
  /** Peak against the body's frontal plane, degrees. */
  peakDeg: ErrorFigures;
  /** Peak against the picture, while loaded and over the same moments, degrees. */
  picturePeakDeg: ErrorFigures;
  picturePeakAtMeasuredDeg: ErrorFigures;
  /** Share of the measured repetitions with the same verdict as the true peak gets, %. */
  verdictAgreementPct: number | null;
  /** Measured repetitions in line that are out of line, or the other way round. */
  verdictsOpposite: number;
  /** Share of the peaks with a band whose truth lies within it, %; null where no bands are stated. */
  withinBandPct: number | null;
  timingMaeS: number | null;
  timingS: Partial<Record<EventName, ErrorFigures>>;
}

/** What a group of clips comes to. */
export function summarise(clips: readonly ComparedClip[]): Summary {
  const all = clips.flatMap(({ repetitions }) => repetitions);
  const measured = all.filter(({ measuredPeakDeg }) => measuredPeakDeg !== null);
  const banded = measured.filter(({ bandDeg }) => bandDeg !== null);
  const timing = all.flatMap(({ timingErrorsS }) => Object.values(timingErrorsS));
  return {
    clips: clips.length,
    repsTrue: sum(clips, ({ repsTrue }) => repsTrue),
    repsFound: sum(clips, ({ repsFound }) => repsFound),
    clipsCountedRight: clips.filter(countedRight).length,
    notFound: all.filter(({ reason }) => reason === 'not-found').length,
    notMeasured: all.filter(({ reason }) => reason !== null && reason !== 'not-found').length,
    peakDeg: describeErrors(errors(measured, ({ truePeakDeg }) => truePeakDeg)),
    picturePeakDeg: describeErrors(errors(measured, ({ picturePeakDeg }) => picturePeakDeg)),
    picturePeakAtMeasuredDeg: describeErrors(
      errors(measured, ({ picturePeakAtMeasuredDeg }) => picturePeakAtMeasuredDeg),
    ),
    verdictAgreementPct: sharePct(measured, ({ verdict, trueVerdict }) => verdict === trueVerdict),
    verdictsOpposite: measured.filter(isOpposite).length,
    withinBandPct: sharePct(
      banded,
      ({ measuredPeakDeg, truePeakDeg, bandDeg }) => Math.abs(measuredPeakDeg! - truePeakDeg) <= bandDeg!,
    ),
    timingMaeS: mean(timing.map(Math.abs)) ?? null,
    timingS: timingByEvent(all),
  };
}

function countedRight({ repsTrue, repsFound, repetitions }: ComparedClip): boolean {
  return repsTrue === repsFound && repetitions.every(({ reason }) => reason !== 'not-found');
}

function errors(
  measured: readonly ComparedRepetition[],
  truthOf: (repetition: ComparedRepetition) => number | null,
): number[] {
  return measured.flatMap((repetition) => {
    const truth = truthOf(repetition);
    return truth === null ? [] : [repetition.measuredPeakDeg! - truth];
  });
}

function isOpposite({ verdict, trueVerdict }: ComparedRepetition): boolean {
  const both = [verdict, trueVerdict];
  return both.includes('in-line') && both.includes('out-of-line');
}

function timingByEvent(repetitions: readonly ComparedRepetition[]): Partial<Record<EventName, ErrorFigures>> {
  const figures: Partial<Record<EventName, ErrorFigures>> = {};
  for (const name of eventNames) {
    const found = repetitions.flatMap(({ timingErrorsS }) => timingErrorsS[name] ?? []);
    if (found.length > 0) figures[name] = describeErrors(found);
  }
  return figures;
}

function sharePct<Item>(items: readonly Item[], counts: (item: Item) => boolean): number | null {
  return items.length === 0 ? null : (100 * items.filter(counts).length) / items.length;
}

function sum<Item>(items: readonly Item[], value: (item: Item) => number): number {
  return items.reduce((total, item) => total + value(item), 0);
}
