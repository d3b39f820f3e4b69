import { currentLanguage } from '#words/messages/message';
import { findVoice } from './findVoice';
import type { CaptionListener, SpokenLine } from './sound';

/** The part of the browser's speech that is used; tests pass plain objects. */
export type Synthesis = Pick<
  SpeechSynthesis,
  'speak' | 'cancel' | 'getVoices' | 'addEventListener' | 'removeEventListener'
>;

export interface SpeechWorld {
  /** Null where the browser can't speak. */
  synthesis: Synthesis | null;
  createUtterance: (text: string) => SpeechSynthesisUtterance;
}

export interface Speech {
  unlock(): void;
  say(line: SpokenLine): void;
  isSpeaking(): boolean;
  setOn(isOn: boolean): void;
  hasVoice(): boolean;
  close(): void;
}

/** Longest time that a line is spoken, or shown to be read, ms: common practice, no source. */
const perWordMs = 420;
const readingMs = 700;
/** A voice that has not finished this much later never will. */
const patienceMs = 3000;

/**
 * Speaks lines one after another. What is queued is dropped when a line comes that takes its place. Where nothing
 * can be heard, each line takes the time to read it, so that the captions keep their pace.
 *
 * @param onCaption  called with each caption when its line begins
 */
export function createSpeech(onCaption: CaptionListener, world: SpeechWorld = browserWorld()): Speech {
  const { synthesis, createUtterance } = world;
  const waiting: SpokenLine[] = [];
  let voice: SpeechSynthesisVoice | null = null;
  let isOn = true;
  let isClosed = false;
  /**
   * The line being spoken; its end counts only as long as it is the current one. The utterance is referenced
   * here, since some browsers never report its end once it is garbage-collected.
   */
  let current: { utterance: SpeechSynthesisUtterance | null } | null = null;
  let timer: ReturnType<typeof setTimeout> | undefined;

  const readVoices = () => {
    try {
      voice = findVoice(synthesis?.getVoices() ?? [], currentLanguage());
    } catch {
      voice = null;
    }
  };

  const hush = () => {
    clearTimeout(timer);
    current = null;
    try {
      synthesis?.cancel();
    } catch {
      // Then nothing was being said.
    }
  };

  const speak = (text: string, end: () => void): SpeechSynthesisUtterance | null => {
    // The language may have changed since voices were read.
    readVoices();
    if (voice === null || synthesis === null || !isOn) return null;
    try {
      const utterance = createUtterance(text);
      utterance.voice = voice;
      utterance.lang = voice.lang;
      utterance.onend = end;
      utterance.onerror = end;
      synthesis.speak(utterance);
      return utterance;
    } catch {
      return null;
    }
  };

  const next = () => {
    const line = waiting.shift();
    if (line === undefined) return;
    const mine: NonNullable<typeof current> = (current = { utterance: null });
    const end = () => {
      if (current !== mine) return;
      clearTimeout(timer);
      current = null;
      next();
    };
    onCaption(line.caption);
    // The caption's listener may have queued something that can't wait.
    if (current !== mine) return;
    const longMs = readingMs + perWordMs * line.line.split(' ').length;
    mine.utterance = speak(line.line, end);
    if (current === mine) timer = setTimeout(end, mine.utterance === null ? longMs : longMs + patienceMs);
  };

  readVoices();
  synthesis?.addEventListener('voiceschanged', readVoices);
  return {
    unlock() {
      readVoices();
      if (current === null) speak(' ', () => undefined);
    },
    say(line) {
      if (isClosed) return;
      if (line.when !== 'after') waiting.length = 0;
      // A caption that nobody hears is not cut off by the next one.
      const isCut = line.when === 'now' || (line.when === 'next' && current?.utterance === null);
      if (isCut && current !== null) hush();
      waiting.push(line);
      if (current === null) next();
    },
    isSpeaking: () => current !== null,
    setOn(on) {
      isOn = on;
      if (on || current === null) return;
      hush();
      next();
    },
    hasVoice() {
      readVoices();
      return voice !== null;
    },
    close() {
      isClosed = true;
      waiting.length = 0;
      hush();
      synthesis?.removeEventListener('voiceschanged', readVoices);
    },
  };
}

function browserWorld(): SpeechWorld {
  const { speechSynthesis } = globalThis as Partial<Pick<typeof globalThis, 'speechSynthesis'>>;
  return {
    synthesis: speechSynthesis ?? null,
    createUtterance: (text) => new SpeechSynthesisUtterance(text),
  };
}
