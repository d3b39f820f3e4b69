import { notAsked } from './notAsked';
import { sessionVersion } from './sessionDocument';

/**
 * Migrates a session document of an older version. Version 2 added what is asked about the body beside pain; version 3
 * what was done without filming, and why nothing was done for days.
 */
export function bringUpSession(older: object, version: number): object {
  const { isUnfilmed, silence } = notAsked;
  if (version === 1) return { ...older, ...notAsked, version: sessionVersion };
  return version === 2 ? { ...older, isUnfilmed, silence, version: sessionVersion } : older;
}
