import type { SpokenLine } from '#device/sound/sound';
import type { GuidePhase } from '#features/home/guide/guideState';
import type { Spoken } from '#tools/commands/tools/home/judgeSpoken';

/** The pace of a calm voice, 170 words a minute, and its pause after a line, ms: common practice, no source. */
const perWordMs = 60_000 / 170;
const pauseMs = 250;

/** A voice that says lines as the device's does, but by the test's clock, and remembers how much was heard of each. */
export class StubVoice {
  readonly spoken: Spoken[] = [];
  private current: Spoken | null = null;
  private waiting: string[] = [];

  say({ line, when }: SpokenLine): void {
    if (when !== 'after') this.waiting = [];
    if (when === 'now') this.current = null;
    this.waiting.push(line);
    this.begin();
  }

  /** @param phase  what the screen shows meanwhile */
  wait(ms: number, phase: GuidePhase): void {
    const { current } = this;
    if (current === null) return;
    const heardMs = Math.min(ms, current.lengthMs - current.spokenMs);
    current.spokenMs += heardMs;
    current.inPhaseMs[phase] = (current.inPhaseMs[phase] ?? 0) + heardMs;
    if (current.spokenMs < current.lengthMs) return;
    this.current = null;
    this.begin();
  }

  isSpeaking(): boolean {
    return this.current !== null;
  }

  private begin(): void {
    const line = this.current === null ? this.waiting.shift() : undefined;
    if (line === undefined) return;
    const lengthMs = pauseMs + perWordMs * line.split(' ').length;
    this.current = { line, lengthMs, spokenMs: 0, inPhaseMs: {} };
    this.spoken.push(this.current);
  }
}
