import { describe, expect, it } from 'vitest';
import { rememberedSureness } from '#shell/rememberedSureness';

function notesWith(text: string | null) {
  const written: [string, string][] = [];
  const notes = {
    isLasting: true,
    read: () => text,
    readAnew: () => Promise.resolve(text),
    write: (name: string, value: string) => {
      written.push([name, value]);
      return Promise.resolve();
    },
  };
  return { notes, written };
}

describe('rememberedSureness(notes)', () => {
  it('is the usual one until another was chosen', () => {
    expect(rememberedSureness(notesWith(null).notes).read()).toBe(0.8);
    expect(rememberedSureness(notesWith('0.95').notes).read()).toBe(0.95);
  });

  it('falls back to the usual one where the note is damaged', () => {
    expect(rememberedSureness(notesWith('0.5').notes).read()).toBe(0.8);
  });

  it('writes what is chosen', () => {
    const { notes, written } = notesWith(null);
    rememberedSureness(notes).write(0.9);
    expect(written).toEqual([['sureness', '0.9']]);
  });
});
