import { afterAll, beforeEach } from 'vitest';
import { startReplicaServer, type ReplicaServer } from '#tools/commands/tools/practice/startReplicaServer';

/** Gives each test of a file an empty server of the replication protocol; they are stopped at its end. */
export function eachWithServer(give: (server: ReplicaServer) => void): void {
  const servers: ReplicaServer[] = [];
  beforeEach(async () => {
    const server = await startReplicaServer();
    servers.push(server);
    give(server);
  });
  afterAll(async () => {
    await Promise.all(servers.map((one) => one.stop()));
  });
}
