/** What a device knows of the version that it keeps. */
export interface KnownVersions {
  content: string;
  /** Versions that are in it, the latest last. */
  ancestors: readonly string[];
}

/**
 * How a version that arrives stands to the one that is kept: the same; older, and so in it already; made from it; or
 * apart, since both were changed.
 */
export type Standing = 'same' | 'older' | 'newer' | 'apart';

export function standingOf(here: KnownVersions, there: KnownVersions): Standing {
  if (here.content === there.content) return 'same';
  if (here.ancestors.includes(there.content)) return 'older';
  return there.ancestors.includes(here.content) ? 'newer' : 'apart';
}
