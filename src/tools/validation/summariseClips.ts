import { mean, median } from 'd3-array';
import { gradeOf, sideOf, usualSureness, type Sureness } from '#core/chance/grade';
import { verdictSide } from '#core/scoring/verdict';
import { bandRatios } from './bandRatios';
import { comparedLimitDeg, type ComparedClip, type RepetitionComparison } from './compareClip';
import { conformalFactor } from './conformalFactor';
import { describeErrors, type ErrorFigures } from './describeErrors';
import { eventNames, type EventName } from './timingErrors';

/** A true peak farther than this from comparedLimitDeg is clearly on one side of it, degrees. */
export const clearDeg = 3;

export interface Decided {
  /**
   * Share of the repetitions clearly on one side of comparedLimitDeg for which a side is told, 0 to 1. Those that were
   * not found or not measured are not decided.
   */
  decidedShare: number | null;
  /** Share of the decided repetitions whose true side is the one told, 0 to 1. */
  decidedRight: number | null;
}

/** The figures of `decided` are those of the usual sureness. */
export interface Summary extends Decided {
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
  /** Share of the measured repetitions whose verdict names the true peak's side, %. */
  verdictAgreementPct: number | null;
  /** Measured repetitions whose verdict names the wrong side. */
  verdictsOpposite: number;
  /** Share of the peaks with a band whose truth lies within it, %; null where no bands are stated. */
  withinBandPct: number | null;
  /** Median half-width of the bands, degrees. */
  medianBandDeg: number | null;
  /** As withinBandPct, 0 to 1. */
  coverage: number | null;
  /** As medianBandDeg. */
  medianHalfWidthDeg: number | null;
  /** By how much the bands would have to be multiplied to hold nine of ten; null where too few have one to tell. */
  conformalFactor: number | null;
  /** Share of the found repetitions for which the tool gives no number, %. */
  refusedPct: number | null;
  /** The same as a share of the measured repetitions, %. */
  wrongOutsideBandPct: number | null;
  timingMaeS: number | null;
  timingS: Partial<Record<EventName, ErrorFigures>>;
}

/** Results of a group of clips. */
export function summariseClips(clips: readonly ComparedClip[]): Summary {
  const all = clips.flatMap(({ repetitions }) => repetitions);
  const measured = all.filter(({ measuredPeakDeg }) => measuredPeakDeg !== null);
  const banded = measured.filter(({ bandDeg }) => bandDeg !== null);
  const coverage = share(
    banded,
    ({ measuredPeakDeg, truePeakDeg, bandDeg }) => Math.abs(measuredPeakDeg! - truePeakDeg) <= bandDeg!,
  );
  const medianHalfWidthDeg = median(banded, ({ bandDeg }) => bandDeg!) ?? null;
  const factor = conformalFactor(bandRatios(clips));
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
    verdictAgreementPct: sharePct(
      measured,
      ({ verdict, trueVerdict }) => verdictSide(verdict) === trueVerdict,
    ),
    verdictsOpposite: measured.filter(isOpposite).length,
    withinBandPct: inPct(coverage),
    medianBandDeg: medianHalfWidthDeg,
    ...decidedAt(usualSureness, clips),
    coverage,
    medianHalfWidthDeg,
    conformalFactor: Number.isFinite(factor) ? factor : null,
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
  const side = verdictSide(verdict);
  return side !== null && side !== trueVerdict;
}

/** How many sides are told to somebody who wants to be so sure, and how many of them rightly. */
export function decidedAt(sureness: Sureness, clips: readonly ComparedClip[]): Decided {
  const clear = clips
    .flatMap(({ repetitions }) => repetitions)
    .filter(({ truePeakDeg }) => Math.abs(truePeakDeg - comparedLimitDeg) > clearDeg);
  const told = clear.map((repetition) => ({ ...repetition, side: toldSide(repetition, sureness) }));
  const decided = told.filter(({ side }) => side !== null);
  return {
    decidedShare: share(told, ({ side }) => side !== null),
    decidedRight: share(decided, ({ side, trueVerdict }) => side === trueVerdict),
  };
}

/** The side of comparedLimitDeg that is told; null where none is. */
function toldSide({ chanceBeyond }: RepetitionComparison, sureness: Sureness): 'in' | 'out' | null {
  return chanceBeyond === null ? null : sideOf(gradeOf(1 - chanceBeyond, sureness));
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
