import { bySchema } from '../reading/bySchema';
import { savedFileWords, type DocumentKind } from '../reading/documentKind';
import { bringUpSession } from './bringUpSession';
import { sessionSchema, sessionVersion, type SessionDocument } from './sessionDocument';
import { sessionFault } from './sessionFault';

/** How a session document is read. */
export const sessionKind: DocumentKind<SessionDocument> = {
  problem: 'session',
  format: 'overfoot-visit',
  version: sessionVersion,
  bringUp: bringUpSession,
  read: bySchema(sessionSchema, sessionFault),
  words: savedFileWords('session document'),
};
