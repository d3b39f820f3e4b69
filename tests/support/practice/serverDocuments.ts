import { expect } from 'vitest';
import { readSharedHead, type SharedHead } from '#documents/practice/sharedHead';
import { unseal, type KeyPair } from '#shell/seal';
import type { ReplicaServer } from '#tools/commands/tools/practice/startReplicaServer';

/** What lies on the server. */
export async function documentsOn({
  address,
}: ReplicaServer): Promise<{ id: string; rev: string; sealed: string }[]> {
  const { rows } = (await (await fetch(`${address}/_all_docs?include_docs=true`)).json()) as {
    rows: { id: string; doc: { _rev: string; sealed: string } }[];
  };
  return rows.map(({ id, doc }) => ({ id, rev: doc._rev, sealed: doc.sealed }));
}

/** Puts a document there, as anybody could who has its password. */
export async function putOn(
  { address }: ReplicaServer,
  document: { _id: string; [field: string]: unknown },
): Promise<void> {
  const answer = await fetch(`${address}/${document._id}`, {
    method: 'PUT',
    headers: { 'Content-Type': 'application/json' },
    body: JSON.stringify(document),
  });
  expect(answer.status, await answer.text()).toBe(201);
}

/** The first line of a sealed copy. */
export async function headOf(sealed: string, { identity }: KeyPair): Promise<SharedHead> {
  const opened = await unseal(identity, new Blob([Buffer.from(sealed, 'base64')]));
  return readSharedHead((await opened.text()).split('\n')[0]!);
}
