import { isFields } from '../schema/isFields';
import { notAsked } from './notAsked';
import { sessionVersion } from './sessionDocument';

/**
 * Migrates a session document of an older version. Version 2 added what is asked about the body beside pain; version 3
 * what was done without filming, and why nothing was done for days; version 4 under what each set was done, and how the
 * knee was after the last session.
 */
export function bringUpSession(older: object, version: number): object {
  if (![1, 2, 3].includes(version)) return older;
  const { isUnfilmed, silence, afterLast } = notAsked;
  const ofVersion2 = version < 2 ? notAsked : {};
  const ofVersion3 = version < 3 ? { isUnfilmed, silence } : {};
  const sets = 'sets' in older && Array.isArray(older.sets) ? { sets: older.sets.map(bringUpSet) } : {};
  return { ...older, ...ofVersion2, ...ofVersion3, ...sets, afterLast, version: sessionVersion };
}

function bringUpSet(set: unknown): unknown {
  return isFields(set) ? { ...set, conditions: null } : set;
}
