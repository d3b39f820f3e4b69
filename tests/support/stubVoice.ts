import { createSpeech, type Speech } from '#device/sound/createSpeech';
import type { SpokenLine } from '#device/sound/sound';
import type { GuidePhase } from '#features/home/guide/guideState';
import type { Spoken } from '#tools/commands/tools/home/judgeSpoken';

/** The pace of a calm voice, 170 words a minute, and its pause after a line, ms: common practice, no source. */
const perWordMs = 60_000 / 170;
const pauseMs = 250;

/** The program's speech with a voice that speaks by the test's clock, and remembers how much was heard of each line. */
export class StubVoice {
  readonly spoken: Spoken[] = [];
  private readonly speech: Speech;
  private readonly waiting: SpeechSynthesisUtterance[] = [];
  private current: { utterance: SpeechSynthesisUtterance; noted: Spoken } | null = null;

  constructor(onCaption: (caption: string) => void = () => undefined) {
    const voice = { name: 'Stub', lang: 'en-GB', localService: true, default: true, voiceURI: 'stub' };
    this.speech = createSpeech(onCaption, {
      createUtterance: (text) => ({ text }) as SpeechSynthesisUtterance,
      synthesis: {
        getVoices: () => [voice],
        speak: (utterance) => {
          this.waiting.push(utterance);
          this.begin();
        },
        cancel: () => {
          this.waiting.length = 0;
          this.current = null;
        },
        addEventListener: () => undefined,
        removeEventListener: () => undefined,
      },
    });
  }

  say(line: SpokenLine): void {
    this.speech.say(line);
  }

  isSpeaking(): boolean {
    return this.speech.isSpeaking();
  }

  /** @param phase  what the screen shows meanwhile; null where no set is under way */
  wait(ms: number, phase: GuidePhase | null): void {
    if (this.current === null) return;
    const { utterance, noted } = this.current;
    const heardMs = Math.min(ms, noted.lengthMs - noted.spokenMs);
    noted.spokenMs += heardMs;
    if (phase !== null) noted.inPhaseMs[phase] = (noted.inPhaseMs[phase] ?? 0) + heardMs;
    if (noted.spokenMs < noted.lengthMs) return;
    this.current = null;
    utterance.onend?.call(utterance, {} as SpeechSynthesisEvent);
    this.begin();
  }

  private begin(): void {
    const utterance = this.current === null ? this.waiting.shift() : undefined;
    if (utterance === undefined) return;
    const line = utterance.text;
    const lengthMs = pauseMs + perWordMs * line.split(' ').length;
    const noted: Spoken = { line, lengthMs, spokenMs: 0, inPhaseMs: {} };
    this.spoken.push(noted);
    this.current = { utterance, noted };
  }
}
