import { describe, expect, it } from 'vitest';
import { explainStorage, StorageProblem, storageProblem } from '#device/storage/storageProblem';

const named = (name: string, message = '') => Object.assign(new Error(message), { name });

describe('explainStorage(error)', () => {
  it.each([
    ['SecurityError', 'refused', /Allow site data/],
    ['InvalidStateError', 'private-window', /ordinary window/],
    ['MissingAPIError', 'unsupported', /another browser/],
    ['QuotaExceededError', 'full', /storage is full. Delete/],
    ['VersionError', 'newer', /Reload/],
    ['DatabaseClosedError', 'other-tab', /Close all its other tabs/],
    ['NoModificationAllowedError', 'other-tab', /Close all its other tabs/],
    ['NotFoundError', 'missing', /no longer kept/],
  ])('tells of %s as %s, with what to do', (name, reason, sentence) => {
    const problem = explainStorage(named(name));
    expect(problem.reason).toBe(reason);
    expect(problem.message).toMatch(sentence);
  });

  it('knows Chromium’s words for settings that refuse storage', () => {
    const denied = named('UnknownError', 'The user denied permission to access the database.');
    expect(explainStorage(denied).reason).toBe('refused');
    expect(explainStorage(named('UnknownError', 'Internal error.')).reason).toBe('failed');
  });

  it('looks behind the error that wraps another', () => {
    const wrapped = Object.assign(named('AbortError', 'aborted'), { inner: named('QuotaExceededError') });
    expect(explainStorage(wrapped).reason).toBe('full');
    expect(explainStorage(new Error('x', { cause: storageProblem('newer') })).reason).toBe('newer');
  });

  it('reports anything else with the reason that was given', () => {
    expect(explainStorage(new Error('the disk is gone.')).message).toMatch(
      /failed \(the disk is gone\)\. Reload/,
    );
    expect(explainStorage('x').message).toMatch(/no reason was given/);
    expect(explainStorage(undefined)).toBeInstanceOf(StorageProblem);
  });

  it('ends with errors that go round in a circle', () => {
    const one = Object.assign(new Error('one'), { cause: null as unknown });
    one.cause = Object.assign(new Error('two'), { cause: one });
    expect(explainStorage(one).reason).toBe('failed');
  });
});
