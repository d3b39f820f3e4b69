import { mean, median } from 'd3-array';
import { gradeOf, sideOf } from '#core/chance/grade';
import { comparedLimitDeg, type ComparedClip, type RepetitionComparison } from './compareClip';
import { describeErrors, type ErrorFigures } from './describeErrors';
import { eventNames, type EventName } from './timingErrors';

/** A true peak farther than this from comparedLimitDeg is clearly on one side of it, degrees. */
export const clearDeg = 3;
/** How sure it has to be before a side is told. */
export const sureness = 0.8;

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
  /** Picture peak of the network's joints against the true picture, over the same moments, degrees. */
  picturePeakDeg: ErrorFigures;
  /** Share of the measured repetitions with the same verdict as the true peak gets, %. */
  verdictAgreementPct: number | null;
  /** Measured repetitions in line that are out of line, or the other way round. */
  verdictsOpposite: number;
  /** Share of the peaks with a band whose truth lies within it, %; null where no bands are stated. */
  withinBandPct: number | null;
  /** Median half-width of the bands, degrees. */
  medianBandDeg: number | null;
  /**
   * Share of the repetitions clearly on one side of comparedLimitDeg for which a side is told, 0 to 1. Those that were
   * not found or not measured are not decided.
   */
  decidedShare: number | null;
  /** Share of the decided repetitions whose true side is the one told, 0 to 1. */
  decidedRight: number | null;
  /** As withinBandPct, 0 to 1. */
  coverage: number | null;
  /** As medianBandDeg. */
  medianHalfWidthDeg: number | null;
  /** Share of the found repetitions for which the tool gives no number, %. */
  refusedPct: number | null;
  /** Share of the measured repetitions whose peak is on the wrong side of the limit with its whole band, %. */
  wrongOutsideBandPct: number | null;
  timingMaeS: number | null;
  timingS: Partial<Record<EventName, ErrorFigures>>;
}

/** Results of a group of clips. */
export function summariseClips(clips: readonly ComparedClip[]): Summary {
  const all = clips.flatMap(({ repetitions }) => repetitions);
  const measured = all.filter(({ measuredPeakDeg }) => measuredPeakDeg !== null);
  const banded = measured.filter(({ bandDeg }) => bandDeg !== null);
  const clear = all.filter(({ truePeakDeg }) => Math.abs(truePeakDeg - comparedLimitDeg) > clearDeg);
  const isDecided = (repetition: RepetitionComparison) => toldSide(repetition) !== null;
  const coverage = share(
    banded,
    ({ measuredPeakDeg, truePeakDeg, bandDeg }) => Math.abs(measuredPeakDeg! - truePeakDeg) <= bandDeg!,
  );
  const medianHalfWidthDeg = median(banded, ({ bandDeg }) => bandDeg!) ?? null;
  const timing = all.flatMap(({ timingErrorsS }) => Object.values(timingErrorsS));
  return {
    clips: clips.length,
    repsTrue: sum(clips, ({ repsTrue }) => repsTrue),
    repsFound: sum(clips, ({ repsFound }) => repsFound),
    clipsCountedRight: clips.filter(countedRight).length,
    notFound: all.filter(({ reason }) => reason === 'not-found').length,
    notMeasured: all.filter(({ reason }) => reason !== null && reason !== 'not-found').length,
    peakDeg: describeErrors(
      differences(measured, ({ measuredPeakDeg, truePeakDeg }) => [measuredPeakDeg, truePeakDeg]),
    ),
    picturePeakDeg: describeErrors(
      differences(measured, ({ readPicturePeakDeg, truePicturePeakDeg }) => [
        readPicturePeakDeg,
        truePicturePeakDeg,
      ]),
    ),
    verdictAgreementPct: sharePct(measured, ({ verdict, trueVerdict }) => verdict === trueVerdict),
    verdictsOpposite: measured.filter(isOpposite).length,
    withinBandPct: inPct(coverage),
    medianBandDeg: medianHalfWidthDeg,
    decidedShare: share(clear, isDecided),
    decidedRight: share(
      clear.filter(isDecided),
      (repetition) => toldSide(repetition) === trueSide(repetition),
    ),
    coverage,
    medianHalfWidthDeg,
    refusedPct: sharePct(
      all.filter(({ reason }) => reason !== 'not-found'),
      ({ measuredPeakDeg }) => measuredPeakDeg === null,
    ),
    wrongOutsideBandPct: sharePct(measured, isOpposite),
    timingMaeS: mean(timing.map(Math.abs)) ?? null,
    timingS: timingByEvent(all),
  };
}

function countedRight({ repsTrue, repsFound, repetitions }: ComparedClip): boolean {
  return repsTrue === repsFound && repetitions.every(({ reason }) => reason !== 'not-found');
}

/** First less second of each pair; pairs with a gap are left out. */
function differences(
  measured: readonly RepetitionComparison[],
  pairOf: (repetition: RepetitionComparison) => [read: number | null, truth: number | null],
): number[] {
  return measured.flatMap((repetition) => {
    const [read, truth] = pairOf(repetition);
    return read === null || truth === null ? [] : [read - truth];
  });
}

function isOpposite({ verdict, trueVerdict }: RepetitionComparison): boolean {
  const both = [verdict, trueVerdict];
  return both.includes('in-line') && both.includes('out-of-line');
}

/** The side of comparedLimitDeg that is told; null where none is. */
function toldSide({ chanceBeyond }: RepetitionComparison): 'in' | 'out' | null {
  return chanceBeyond === null ? null : sideOf(gradeOf(1 - chanceBeyond, sureness));
}

function trueSide({ truePeakDeg }: RepetitionComparison): 'in' | 'out' {
  return truePeakDeg > comparedLimitDeg ? 'out' : 'in';
}

function timingByEvent(
  repetitions: readonly RepetitionComparison[],
): Partial<Record<EventName, ErrorFigures>> {
  const figures: Partial<Record<EventName, ErrorFigures>> = {};
  for (const name of eventNames) {
    const found = repetitions.flatMap(({ timingErrorsS }) => timingErrorsS[name] ?? []);
    if (found.length > 0) figures[name] = describeErrors(found);
  }
  return figures;
}

function share<Item>(items: readonly Item[], counts: (item: Item) => boolean): number | null {
  return items.length === 0 ? null : items.filter(counts).length / items.length;
}

function sharePct<Item>(items: readonly Item[], counts: (item: Item) => boolean): number | null {
  return inPct(share(items, counts));
}

function inPct(share: number | null): number | null {
  return share === null ? null : 100 * share;
}

function sum<Item>(items: readonly Item[], value: (item: Item) => number): number {
  return items.reduce((total, item) => total + value(item), 0);
}
