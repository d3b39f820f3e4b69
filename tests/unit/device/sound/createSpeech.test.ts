import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { createSpeech, type Synthesis } from '#device/sound/createSpeech';
import { findVoice } from '#device/sound/findVoice';

type Utterance = { text: string; onend: (() => void) | null; onerror: (() => void) | null };

const english = { lang: 'en-GB', localService: true, default: false, name: 'here' };

/** A browser's speech in which lines end when the test says so. */
function fakeSynthesis(voices: object[] = [english]) {
  const spoken: Utterance[] = [];
  const listeners: (() => void)[] = [];
  const synthesis = {
    speak: (utterance: Utterance) => spoken.push(utterance),
    cancel: vi.fn(() => spoken.at(-1)?.onerror?.()),
    getVoices: () => voices,
    addEventListener: (_: string, listener: () => void) => listeners.push(listener),
    removeEventListener: vi.fn(),
  };
  const createUtterance = (text: string) =>
    ({ text, onend: null, onerror: null }) as unknown as SpeechSynthesisUtterance;
  const world = { synthesis: synthesis as unknown as Synthesis, createUtterance };
  return { synthesis, spoken, listeners, world, texts: () => spoken.map(({ text }) => text) };
}

const line = (text: string, when: 'now' | 'next' | 'after' = 'after') => ({
  line: text,
  caption: `(${text})`,
  when,
});

describe('createSpeech(onCaption, world)', () => {
  let captions: string[];
  const onCaption = (caption: string) => captions.push(caption);
  beforeEach(() => {
    captions = [];
    vi.useFakeTimers();
  });
  afterEach(() => vi.useRealTimers());

  it('says one line after the other, each with its caption when it begins', () => {
    const { world, spoken, texts } = fakeSynthesis();
    const speech = createSpeech(onCaption, world);
    speech.say(line('Sit down.'));
    speech.say(line('Ready.'));
    expect([texts(), captions]).toEqual([['Sit down.'], ['(Sit down.)']]);
    spoken[0]!.onend!();
    expect([texts(), captions]).toEqual([
      ['Sit down.', 'Ready.'],
      ['(Sit down.)', '(Ready.)'],
    ]);
  });

  it('lets a new count interrupt an old line, and drops what waited', () => {
    const { world, spoken, synthesis, texts } = fakeSynthesis();
    const speech = createSpeech(onCaption, world);
    speech.say(line('A long line.'));
    speech.say(line('Waiting.'));
    speech.say(line('Seven.', 'now'));
    expect(synthesis.cancel).toHaveBeenCalledTimes(1);
    expect(texts()).toEqual(['A long line.', 'Seven.']);
    // The end of the interrupted line comes late, and changes nothing.
    spoken[0]!.onend!();
    speech.say(line('After it.'));
    expect(texts()).toEqual(['A long line.', 'Seven.']);
    spoken[1]!.onend!();
    expect(captions).toEqual(['(A long line.)', '(Seven.)', '(After it.)']);
  });

  it('lets the present line end before one that takes the place of what waits', () => {
    const { world, spoken, synthesis, texts } = fakeSynthesis();
    const speech = createSpeech(onCaption, world);
    expect(speech.isSpeaking()).toBe(false);
    speech.say(line('Knee over the foot.'));
    speech.say(line('Six.'));
    speech.say(line('Seven.', 'next'));
    expect(synthesis.cancel).not.toHaveBeenCalled();
    spoken[0]!.onend!();
    expect(texts()).toEqual(['Knee over the foot.', 'Seven.']);
    expect(speech.isSpeaking()).toBe(true);
    spoken[1]!.onend!();
    expect(speech.isSpeaking()).toBe(false);
  });

  it('keeps no caption that nobody hears waiting for the one before', () => {
    const speech = createSpeech(onCaption, { ...fakeSynthesis().world, synthesis: null });
    speech.say(line('Three.'));
    speech.say(line('Two.', 'next'));
    expect(captions).toEqual(['(Three.)', '(Two.)']);
  });

  it.each([
    ['without speech in the browser', null],
    ['without any voice', fakeSynthesis([]).world.synthesis],
    ['with voices from elsewhere only', fakeSynthesis([{ ...english, localService: false }]).world.synthesis],
  ])('gives the captions in turn %s, each with time to read it', (_, synthesis) => {
    const speech = createSpeech(onCaption, { ...fakeSynthesis().world, synthesis });
    speech.unlock();
    speech.say(line('Sit down.'));
    speech.say(line('Ready.'));
    expect(captions).toEqual(['(Sit down.)']);
    vi.advanceTimersByTime(1000);
    expect(captions).toEqual(['(Sit down.)']);
    vi.advanceTimersByTime(1000);
    expect(captions).toEqual(['(Sit down.)', '(Ready.)']);
    expect(speech.hasVoice()).toBe(false);
  });

  it('continues where a voice never ends', () => {
    const { world, texts } = fakeSynthesis();
    const speech = createSpeech(onCaption, world);
    speech.say(line('Sit down.'));
    speech.say(line('Ready.'));
    vi.advanceTimersByTime(5000);
    expect(texts()).toEqual(['Sit down.', 'Ready.']);
  });

  it('continues where the voice reports an error or throws', () => {
    const { world, spoken, synthesis } = fakeSynthesis();
    const speech = createSpeech(onCaption, world);
    speech.say(line('Sit down.'));
    spoken[0]!.onerror!();
    synthesis.speak = () => {
      throw new Error('mute');
    };
    speech.say(line('Ready.'));
    speech.say(line('Go.', 'now'));
    expect(captions).toEqual(['(Sit down.)', '(Ready.)', '(Go.)']);
  });

  it('takes voices that come later', () => {
    const voices: object[] = [];
    const { world, listeners, texts } = fakeSynthesis(voices);
    const speech = createSpeech(onCaption, world);
    voices.push(english);
    listeners.forEach((listener) => listener());
    speech.say(line('Go.'));
    expect(texts()).toEqual(['Go.']);
  });

  it('falls silent at once where it is switched off, and keeps the captions', () => {
    const { world, synthesis, texts } = fakeSynthesis();
    const speech = createSpeech(onCaption, world);
    speech.say(line('Sit down.'));
    speech.say(line('Ready.'));
    speech.setOn(false);
    expect(synthesis.cancel).toHaveBeenCalled();
    expect([texts(), captions]).toEqual([['Sit down.'], ['(Sit down.)', '(Ready.)']]);
  });

  it('says nothing any more once it is closed', () => {
    const { world, synthesis, texts } = fakeSynthesis();
    const speech = createSpeech(onCaption, world);
    speech.say(line('Sit down.'));
    speech.say(line('Ready.'));
    speech.close();
    speech.say(line('Go.', 'now'));
    vi.advanceTimersByTime(60_000);
    expect(texts()).toEqual(['Sit down.']);
    expect(synthesis.removeEventListener).toHaveBeenCalled();
  });

  it('bears a caption that makes something else be said', () => {
    const { world, texts } = fakeSynthesis();
    const speech = createSpeech((caption) => {
      captions.push(caption);
      if (caption === '(Ready.)') speech.say(line('Stop.', 'now'));
    }, world);
    speech.say(line('Ready.'));
    expect(captions).toEqual(['(Ready.)', '(Stop.)']);
    expect(texts()).toEqual(['Stop.']);
  });
});

describe('findVoice(voices, language)', () => {
  it('takes an English voice of the device, the usual one first', () => {
    const usual = { ...english, lang: 'en_US', default: true };
    expect(findVoice([{ ...english, lang: 'de-DE' }, english, usual], 'en')).toBe(usual);
  });

  it('never takes one that sends the words elsewhere, or one of another language', () => {
    const elsewhere = { ...english, localService: false, default: true };
    expect(findVoice([elsewhere, { ...english, lang: 'enm' }], 'en')).toBeNull();
  });

  it('takes one of the language that is asked for', () => {
    const spanish = { ...english, lang: 'es-MX', default: false };
    expect(findVoice([english, spanish], 'es')).toBe(spanish);
    expect(findVoice([english], 'es')).toBeNull();
  });
});
