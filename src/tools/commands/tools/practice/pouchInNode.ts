import { createRequire } from 'node:module';
import type { Pouch } from '#device/replica/pouch';

interface PouchInNode extends Pouch {
  plugin(plugin: unknown): PouchInNode;
  defaults(options: Record<string, unknown>): PouchInNode;
  setMaxListeners(count: number): void;
}

const load = createRequire(import.meta.url);
const plugin = (name: string) => {
  const loaded = load(name) as { default?: unknown };
  return loaded.default ?? loaded;
};

/** PouchDB with what a test in Node needs of it: databases in memory and in files, and replication. */
export const PouchInNode = prepared(plugin('pouchdb-core') as PouchInNode);

/** It is one for the whole process, and test files that share one load this module again. */
function prepared(pouch: PouchInNode): PouchInNode {
  if (Object.hasOwn(pouch, 'replicate')) return pouch;
  for (const name of ['adapter-memory', 'adapter-leveldb', 'adapter-http', 'replication'])
    pouch.plugin(plugin(`pouchdb-${name}`));
  // In Node, PouchDB asks an answer for a Buffer, as only node-fetch gives it.
  Object.defineProperty(Response.prototype, 'buffer', {
    value: async function (this: Response) {
      return Buffer.from(await this.arrayBuffer());
    },
  });
  pouch.setMaxListeners(200); // More devices than one process usually has.
  return pouch;
}

/** A server of the replication protocol over databases in a folder, as a handler of requests. */
export function replicationHandler(folder: string): import('node:http').RequestListener {
  const express = load('express-pouchdb') as (
    pouch: unknown,
    options: Record<string, unknown>,
  ) => import('node:http').RequestListener;
  return express(PouchInNode.defaults({ prefix: `${folder}/`, adapter: 'leveldb' }), {
    mode: 'minimumForPouchDB',
    inMemoryConfig: true,
    logPath: `${folder}/log.txt`,
  });
}
