import { shareInterval, type ShareInterval } from '#core/statistics/shareInterval';
import { bandRatios, type BandedMeasure } from './bandRatios';
import type { ComparedClip } from './compareClip';
import { conformalFactor } from './conformalFactor';

/** How often bands hold that were fitted without the clip that they are tried on. */
export interface HeldBands {
  /** Clips with a band. */
  clips: number;
  /** Peaks with a band. */
  repetitions: number;
  /** Those whose truth lies within. */
  held: number;
  /**
   * Share held, with its 95 % interval; null where there is no band. The interval takes repetitions as independent;
   * those of one clip are not, so that it is rather too narrow.
   */
  coverage: ShareInterval | null;
}

/** A clip, and how many of its peaks lie within bands that were fitted without it. */
export interface LeftOutClip<Clip> {
  clip: Clip;
  /** By how much its bands were multiplied. */
  factor: number;
  held: number;
  repetitions: number;
}

/**
 * Leaves out each clip in turn, fits the width of its bands on all the others whose yaw was told alike, and counts its
 * peaks within. So no band is tried on what set it.
 *
 * Clips without bands are left out, and so are those with too few others to fit a width.
 *
 * Source:  split conformal prediction (Vovk et al. 2005; Lei et al. 2018, doi 10.1080/01621459.2017.1307116)
 */
export function leaveClipsOut<Clip extends Pick<ComparedClip, 'yawReading' | 'repetitions'>>(
  clips: readonly Clip[],
  measure: BandedMeasure = 'knee-angle',
): LeftOutClip<Clip>[] {
  return clips.flatMap((clip) => {
    const ratios = bandRatios([clip], measure);
    const others = clips.filter((other) => other !== clip && other.yawReading === clip.yawReading);
    const factor = conformalFactor(bandRatios(others, measure));
    if (ratios.length === 0 || !Number.isFinite(factor)) return [];
    const held = ratios.filter((ratio) => ratio <= factor).length;
    return [{ clip, factor, held, repetitions: ratios.length }];
  });
}

/** Of a group of clips that were left out one by one. */
export function countHeld(clips: readonly LeftOutClip<unknown>[]): HeldBands {
  const repetitions = clips.reduce((total, clip) => total + clip.repetitions, 0);
  const held = clips.reduce((total, clip) => total + clip.held, 0);
  return { clips: clips.length, repetitions, held, coverage: shareInterval(held, repetitions) };
}
