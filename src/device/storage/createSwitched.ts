import type { Kept } from './shelves';

/** What is kept, so that another shelf can take its place while it is in use. */
export function createSwitched(first: Kept): { kept: Kept; to: (next: Kept) => void } {
  let current = first;
  return {
    kept: {
      records: {
        get: (table, key) => current.records.get(table, key),
        find: (table, key) => current.records.find(table, key),
        keys: (table) => current.records.keys(table),
        list: (table, prefix) => current.records.list(table, prefix),
        apply: (changes) => current.records.apply(changes),
        close: () => current.records.close(),
      },
      videos: {
        create: (name) => current.videos.create(name),
        read: (name) => current.videos.read(name),
        remove: (name) => current.videos.remove(name),
        list: () => current.videos.list(),
      },
    },
    to: (next) => (current = next),
  };
}
