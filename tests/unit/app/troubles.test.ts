import { beforeEach, describe, expect, it } from 'vitest';
import { troubles, watchTroubles } from '#app/troubles';

const origin = 'https://clinic.example/';

/** A window whose events are told by hand. */
function watched() {
  const listeners = new Map<string, (event: object) => void>();
  const addEventListener = (name: string, listener: unknown) =>
    void listeners.set(name, listener as (event: object) => void);
  watchTroubles({ addEventListener } as never, origin);
  return { tell: (name: string, event: object) => listeners.get(name)!(event) };
}

describe('watchTroubles(window, origin)', () => {
  beforeEach(() => troubles.setState({ error: null }));
  const error = new Error('unforeseen');

  it('hears of errors of the program, and of promises that nobody awaits', () => {
    const { tell } = watched();
    tell('error', { error, filename: `${origin}assets/main.js` });
    expect(troubles.getState().error).toEqual({ thrown: error });
    troubles.setState({ error: null });
    tell('unhandledrejection', { reason: error });
    expect(troubles.getState().error).toEqual({ thrown: error });
  });

  it('takes no notice of extensions, of notices without an error, and of what was cancelled', () => {
    const { tell } = watched();
    tell('error', { error, filename: 'chrome-extension://abc/inject.js' });
    tell('error', { error: null, filename: `${origin}assets/main.js` });
    tell('unhandledrejection', { reason: new DOMException('cancelled', 'AbortError') });
    expect(troubles.getState().error).toBeNull();
  });
});
