import { concernsOf, type Concern } from '#documents/session/concernsOf';
import type { HomeState } from './homeState';
import { sessionOf } from './sessionOf';

/** What was said of the body in this session so far that somebody has to look at. */
export function concernsNow(state: HomeState): Concern[] {
  return concernsOf(sessionOf({ id: '', startedAt: '', endedAt: null }, state));
}
