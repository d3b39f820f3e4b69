import { openReplica, type Replica } from './openReplica';
import { replicaName } from './replicaName';

/** The sealed copies in this browser. */
export async function openBrowserReplica(): Promise<Replica> {
  const { default: PouchDB } = await import('pouchdb-browser');
  return openReplica(PouchDB, replicaName, { local: { adapter: 'idb' } });
}
