import { describe, expect, it } from 'vitest';
import { createMarks } from '#device/storage/marks';

/** The part of the browser's locks that marks use, in order of asking. */
function fakeLocks(): LockManager {
  const queues = new Map<string, Promise<unknown>>();
  const held = new Set<string>();
  return {
    request: (name: string, { signal }: LockOptions, work: () => Promise<void>) => {
      const turn = (queues.get(name) ?? Promise.resolve()).then(async () => {
        signal?.throwIfAborted();
        held.add(name);
        await work();
        held.delete(name);
      });
      queues.set(
        name,
        turn.catch(() => undefined),
      );
      return turn;
    },
    query: () => Promise.resolve({ held: [...held].map((name) => ({ name })), pending: [] }),
  } as unknown as LockManager;
}

/** Locks of a browser whose settings refuse to keep anything. */
function refusedLocks(): LockManager {
  const refuse = () => Promise.reject(new DOMException('Access is denied.', 'SecurityError'));
  return { request: refuse, query: refuse };
}

describe.each([
  ['the browser’s locks', () => createMarks(fakeLocks())],
  ['locks that are refused', () => createMarks(refusedLocks())],
  ['no locks', () => createMarks(undefined)],
])('createMarks(locks) with %s', (_, create) => {
  it('holds a mark until it is taken down', async () => {
    const marks = create();
    const release = await marks.hold('a');
    await marks.hold('b');
    expect(await marks.held()).toEqual(new Set(['a', 'b']));
    release();
    await new Promise((resolve) => setTimeout(resolve));
    expect(await marks.held()).toEqual(new Set(['b']));
  });

  it('waits while somebody else holds it', async () => {
    const marks = create();
    const release = await marks.hold('a');
    const events: string[] = [];
    const second = marks.hold('a').then((done) => {
      events.push('second');
      return done;
    });
    await new Promise((resolve) => setTimeout(resolve));
    events.push('first ends');
    release();
    (await second)();
    expect(events).toEqual(['first ends', 'second']);
  });

  it('ends the waiting when it is cancelled', async () => {
    const marks = create();
    const release = await marks.hold('a');
    const cancel = new AbortController();
    const waiting = marks.hold('a', cancel.signal);
    cancel.abort(new Error('no longer'));
    release();
    await expect(waiting).rejects.toThrow('no longer');
  });
});
