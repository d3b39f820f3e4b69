import type { Browser } from '@playwright/test';
import { openPractice, type PracticeMember } from '#tools/commands/tools/practice/practiceMember';
import { startReplicaServer, type ReplicaServer } from '#tools/commands/tools/practice/startReplicaServer';

interface TwoMembers {
  server: ReplicaServer;
  ab: PracticeMember;
  kn: PracticeMember;
  /** Closes both and stops the server. */
  close(): Promise<void>;
}

/** Two therapists with each other's key, each in a browser of their own, and a server that they do not share through yet. */
export async function openTwoMembers(browser: Browser, baseURL: string): Promise<TwoMembers> {
  const server = await startReplicaServer();
  const { origin } = new URL(server.address);
  const [ab, kn] = await openPractice(browser, baseURL, origin, ['AB', 'KN']);
  if (ab === undefined || kn === undefined) throw new Error('Two members were to be opened.');
  return {
    server,
    ab,
    kn,
    async close() {
      await Promise.all([ab.context.close(), kn.context.close(), server.stop()]);
    },
  };
}
