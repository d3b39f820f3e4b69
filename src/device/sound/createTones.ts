import type { ToneKind } from './toneKind';
import { toneNotes, type Note } from './toneNotes';

export interface Tones {
  unlock(): void;
  play(kind: ToneKind): void;
  setOn(isOn: boolean): void;
  close(): void;
}

/** A fade in and out of this length avoids a click, s. */
const edgeS = 0.015;

/**
 * Plays tones, once unlocked by a tap. Without sound on the device it does nothing.
 *
 * @param createContext  may throw where the browser has none
 */
export function createTones(createContext: () => AudioContext = () => new AudioContext()): Tones {
  let context: AudioContext | null = null;
  let isOn = true;
  const wake = () => {
    // An incoming call suspends it.
    if (context !== null && context.state !== 'running') void context.resume().catch(() => undefined);
  };
  return {
    unlock() {
      try {
        context ??= createContext();
        wake();
      } catch {
        context = null;
      }
    },
    play(kind) {
      if (context === null || !isOn) return;
      wake();
      // A tone that waits for the sound to resume could come at any time.
      if (context.state !== 'running') return;
      try {
        for (const note of toneNotes[kind]) playNote(context, note);
      } catch {
        // Then it is silent; the captions say the same.
      }
    },
    setOn(on) {
      isOn = on;
    },
    close() {
      void context?.close().catch(() => undefined);
      context = null;
    },
  };
}

function playNote(context: AudioContext, { hz, afterMs, lengthMs, loudness }: Note): void {
  const oscillator = context.createOscillator();
  const gain = context.createGain();
  const startS = context.currentTime + afterMs / 1000;
  const endS = startS + lengthMs / 1000;
  oscillator.frequency.value = hz;
  gain.gain.setValueAtTime(0, startS);
  gain.gain.linearRampToValueAtTime(loudness, startS + edgeS);
  gain.gain.setValueAtTime(loudness, endS - 2 * edgeS);
  gain.gain.linearRampToValueAtTime(0, endS);
  oscillator.connect(gain).connect(context.destination);
  oscillator.start(startS);
  oscillator.stop(endS);
}
