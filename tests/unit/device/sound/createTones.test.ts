import { describe, expect, it, vi } from 'vitest';
import { createSound } from '#device/sound/createSound';
import { createTones } from '#device/sound/createTones';
import { toneKinds } from '#device/sound/toneKind';
import { toneNotes } from '#device/sound/toneNotes';

/** An audio context that writes down the notes which were started. */
function fakeContext(state = 'running') {
  const notes: { hz: number; startS: number }[] = [];
  const context = {
    state,
    currentTime: 5,
    destination: {},
    resume: vi.fn(async () => undefined),
    close: vi.fn(async () => undefined),
    createGain: () => ({
      gain: { setValueAtTime: vi.fn(), linearRampToValueAtTime: vi.fn() },
      connect: (next: object) => next,
    }),
    createOscillator: () => {
      const oscillator = {
        frequency: { value: 0 },
        connect: (next: object) => next,
        start: (startS: number) => notes.push({ hz: oscillator.frequency.value, startS }),
        stop: vi.fn(),
      };
      return oscillator;
    },
  };
  return { context, notes, create: () => context as unknown as AudioContext };
}

describe('createTones(createContext)', () => {
  it('plays nothing before it was unlocked', () => {
    const { create, notes } = fakeContext();
    const tones = createTones(create);
    tones.play('start');
    expect(notes).toEqual([]);
    tones.unlock();
    tones.play('start');
    expect(notes).toEqual([
      { hz: 523, startS: 5 },
      { hz: 784, startS: 5.12 },
    ]);
  });

  it('wakes a context that sleeps, and plays nothing late', () => {
    const { create, notes, context } = fakeContext('suspended');
    const tones = createTones(create);
    tones.unlock();
    tones.play('tick');
    expect(context.resume).toHaveBeenCalled();
    expect(notes).toEqual([]);
  });

  it('works silent where the device has no sound', () => {
    const tones = createTones(() => {
      throw new Error('no sound');
    });
    expect(() => {
      tones.unlock();
      tones.play('tick');
      tones.close();
    }).not.toThrow();
  });

  it('is silent where it is switched off', () => {
    const { create, notes } = fakeContext();
    const tones = createTones(create);
    tones.unlock();
    tones.setOn(false);
    tones.play('tick');
    expect(notes).toEqual([]);
  });
});

describe('toneNotes', () => {
  it('gives each tone notes of its own', () => {
    const written = toneKinds.map((kind) => JSON.stringify(toneNotes[kind]));
    expect(new Set(written).size).toBe(toneKinds.length);
  });

  it('keeps the tone for outside the lane low, falling and no louder than the others', () => {
    const [first, second] = toneNotes.outside;
    expect(second!.hz).toBeLessThan(first!.hz);
    expect(Math.max(...toneNotes.outside.map(({ hz }) => hz))).toBeLessThan(440);
    expect(toneNotes.outside.every(({ loudness }) => loudness <= 0.35)).toBe(true);
  });
});

describe('createSound(onCaption, world, createContext)', () => {
  it('works with neither voice nor sound', () => {
    const captions: string[] = [];
    const sound = createSound(
      (caption) => captions.push(caption),
      { synthesis: null, createUtterance: () => ({}) as SpeechSynthesisUtterance },
      () => {
        throw new Error('no sound');
      },
    );
    sound.unlock();
    sound.setOn({ voice: false, tones: false });
    sound.say({ line: 'Seven.', caption: '7 of 10', when: 'now' });
    sound.tone('outside');
    expect(captions).toEqual(['7 of 10']);
    sound.close();
  });
});
