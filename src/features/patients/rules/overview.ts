import type { PlanDocument } from '#documents/plan/planDocument';
import { ownWords } from '#documents/session/doneInRemark';
import type { Finding } from '#features/sessions/rules/finding';
import { shortFinding } from '#features/sessions/rules/findingWords';
import { findNeeds } from '#features/sessions/rules/findNeeds';
import type { ListedSession } from '#features/sessions/rules/listedSession';
import { followingOf, type Following } from './planAdherence';

/** How pressing a session is: something said of the body or pain, how the knee moved, something to know, nothing. */
export const gravities = { body: 3, movement: 2, record: 1, none: 0 } as const;
export type Gravity = (typeof gravities)[keyof typeof gravities];

/** One session as far as the list of patients needs it. */
export interface SessionOverview {
  id: string;
  startedAt: string;
  /** Whether something was said of the body that nobody has settled yet, or somebody opened again. */
  isOpen: boolean;
  gravity: Gravity;
  /** What needs a look, the most pressing first, in few words. */
  needs: string[];
}

/** What the list of patients shows of one, worked out from the sessions. */
export interface PatientOverview {
  /** How it was worked out; of another make, it is out of date. */
  madeAs: string;
  /** Newest first. */
  sessions: SessionOverview[];
  /** The plan in force; null without one, and where it leaves open how often. */
  following: Following | null;
}

/** Few enough for one line on a phone. */
const mostNeeds = 2;

const gravityOf: Record<Finding['kind'], Gravity> = {
  signs: gravities.body,
  stopped: gravities.body,
  'went-on': gravities.body,
  'pain-above-limit': gravities.body,
  'pain-risen': gravities.body,
  'taken-back': gravities.body,
  silent: gravities.body,
  'out-of-line': gravities.movement,
  'mostly-untold': gravities.movement,
  'side-doubtful': gravities.movement,
  'cut-short': gravities.record,
  unfilmed: gravities.record,
  'not-measured': gravities.record,
  'nothing-found': gravities.record,
  unreadable: gravities.record,
  'sets-missing': gravities.record,
  'says-cleared': gravities.record,
  waiting: gravities.none,
  settled: gravities.none,
  reopened: gravities.none,
};

export function buildOverview(
  sessions: readonly ListedSession[],
  inForce: PlanDocument | null,
  madeAs: string,
): PatientOverview {
  const listed = sessions.map((session): SessionOverview => {
    const needs = findNeeds(session);
    const left = ownWords(session.remark) === '' ? [] : ['left a remark'];
    const gravity = Math.max(gravities.none, ...needs.map(({ kind }) => gravityOf[kind])) as Gravity;
    return {
      id: session.id,
      startedAt: session.startedAt,
      isOpen: session.isOpen,
      gravity: left.length > 0 ? (Math.max(gravity, gravities.record) as Gravity) : gravity,
      needs: [...needs.filter(({ kind }) => gravityOf[kind] > 0).map(shortFinding), ...left].slice(
        0,
        mostNeeds,
      ),
    };
  });
  listed.sort((a, b) => Date.parse(b.startedAt) - Date.parse(a.startedAt));
  return { madeAs, sessions: listed, following: inForce && followingOf(inForce, sessions) };
}
