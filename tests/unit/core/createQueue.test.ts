import { describe, expect, it } from 'vitest';
import { createQueue } from '#core/createQueue';

/** A job that ends on request. */
function job(log: string[], name: string) {
  let end!: () => void;
  let fail!: () => void;
  const promise = new Promise<string>((resolve, reject) => {
    end = () => resolve(name);
    fail = () => reject(new Error(name));
  });
  const run = () => {
    log.push(name);
    return promise;
  };
  return { run, end, fail };
}
const settle = () => new Promise((resolve) => setTimeout(resolve, 0));

describe('createQueue()', () => {
  it('starts a job only once the one before it has ended', async () => {
    const log: string[] = [];
    const [first, second] = [job(log, 'first'), job(log, 'second')];
    const queue = createQueue();
    const results = Promise.all([queue.add(first.run), queue.add(second.run)]);
    await settle();
    expect(log).toEqual(['first']);
    second.end();
    first.end();
    expect(await results).toEqual(['first', 'second']);
    expect(log).toEqual(['first', 'second']);
  });

  it('hands a failure to whoever added the job, and continues with the next', async () => {
    const log: string[] = [];
    const first = job(log, 'first');
    const queue = createQueue();
    const failed = queue.add(first.run);
    const next = queue.add(() => 'next');
    first.fail();
    await expect(failed).rejects.toThrow('first');
    expect(await next).toBe('next');
  });

  it('is idle once all jobs have ended, failed ones included', async () => {
    const log: string[] = [];
    const last = job(log, 'last');
    const queue = createQueue();
    await queue.idle();
    const failed = queue.add(last.run).catch(() => 'failed');
    const idle = queue.idle().then(() => log.push('idle'));
    await settle();
    expect(log).toEqual(['last']);
    last.fail();
    await idle;
    expect(log).toEqual(['last', 'idle']);
    expect(await failed).toBe('failed');
  });
});
