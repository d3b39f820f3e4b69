import type { ToneKind } from './toneKind';

/** A line to be spoken, with its caption. */
export interface SpokenLine {
  line: string;
  caption: string;
  /**
   * 'now' ends what is being said and drops what is queued; 'next' drops what is queued, but lets the present line end;
   * 'after' waits for all of it.
   */
  when: 'now' | 'next' | 'after';
}

/** Voice and tones. Nothing here throws: without a voice, or without sound at all, the captions still come. */
export interface Sound {
  /** Call it in a tap handler: phones give no sound before. */
  unlock(): void;
  say(line: SpokenLine): void;
  /** Whether a line is being said, or read where nothing can be heard, or is queued. */
  isSpeaking(): boolean;
  tone(kind: ToneKind): void;
  /** Switches voice and tones on or off; captions come either way. */
  setOn(on: { voice: boolean; tones: boolean }): void;
  /** Whether this device has a voice that does not send the words elsewhere. */
  hasVoice(): boolean;
  /** Falls silent and releases everything. */
  close(): void;
}

/** Called with each caption when its line begins. */
export type CaptionListener = (caption: string) => void;
