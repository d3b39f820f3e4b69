import { mean, median } from 'd3-array';

/** What is read of the running program between two rounds. */
export interface SoakSample {
  /** Since the start, minutes. */
  minute: number;
  /** What lives in the page's and its workers' scripts after a forced collection, bytes. */
  heapBytes: number;
  /** Array buffers and wasm memories of the page and its workers, bytes. */
  buffersBytes: number;
  /** Resident memory of the browser's renderers; null where the system does not tell, bytes. */
  rendererBytes: number | null;
  workers: number;
  /** Workers that ended and are still held by the page, after a forced collection. */
  endedWorkers: number;
  /** Made by URL.createObjectURL and not yet revoked. */
  objectUrls: number;
}

export type SoakMeasure = Exclude<keyof SoakSample, 'minute'>;

export interface SoakGrowth {
  /** Median of the first and of the last third of the samples. */
  from: number;
  to: number;
  /** Least squares over all samples, in the measure's own unit. */
  slopePerHour: number;
  flat: boolean;
}

/** Fewer samples than this after the warm-up say nothing. */
export const fewestSamples = 6;

/**
 * By how much a measure may rise from the first third to the last and still count as flat: a share of its value, or so
 * much of its unit. Each session that is kept adds some kilobytes to the lists. Common practice, no source.
 */
const allowed: Record<SoakMeasure, { share: number; atLeast: number }> = {
  heapBytes: { share: 0.05, atLeast: 1e6 },
  buffersBytes: { share: 0.05, atLeast: 1e6 },
  rendererBytes: { share: 0.1, atLeast: 20e6 },
  workers: { share: 0, atLeast: 0 },
  endedWorkers: { share: 0, atLeast: 0 },
  objectUrls: { share: 0, atLeast: 0 },
};

const measures = Object.keys(allowed) as SoakMeasure[];

/**
 * How each measure grew.
 *
 * @param samples  after the warm-up, in order of time
 * @returns  null for a measure that was not read, and for all where there are fewer than six samples
 */
export function soakGrowth(samples: readonly SoakSample[]): Record<SoakMeasure, SoakGrowth | null> {
  return Object.fromEntries(measures.map((name) => [name, growthOf(samples, name)])) as Record<
    SoakMeasure,
    SoakGrowth | null
  >;
}

function growthOf(samples: readonly SoakSample[], name: SoakMeasure): SoakGrowth | null {
  const points = samples.flatMap(({ minute, [name]: value }) => (value === null ? [] : [{ minute, value }]));
  if (points.length < fewestSamples) return null;
  const third = Math.floor(points.length / 3);
  const from = median(points.slice(0, third), ({ value }) => value)!;
  const to = median(points.slice(-third), ({ value }) => value)!;
  const { share, atLeast } = allowed[name];
  const flat = to - from <= Math.max(share * from, atLeast);
  return { from, to, slopePerHour: 60 * slope(points), flat };
}

/** Of the least-squares line, a minute. */
function slope(points: readonly { minute: number; value: number }[]): number {
  const middle = mean(points, ({ minute }) => minute)!;
  const level = mean(points, ({ value }) => value)!;
  const along = mean(points, ({ minute, value }) => (minute - middle) * (value - level))!;
  return along / mean(points, ({ minute }) => (minute - middle) ** 2)!;
}
