import type { PlanItem } from '#documents/plan/planDocument';
import { planSteps } from '#documents/plan/planSteps';
import { advanceGuide, startGuide } from '#features/home/guide/advanceGuide';
import type { GuideEffect } from '#features/home/guide/guideEffect';
import type { GuideEvent, GuidePress } from '#features/home/guide/guideEvent';
import type { GuideOptions, GuidePhase, GuideState } from '#features/home/guide/guideState';
import { guideView } from '#features/home/guide/guideView';
import { StubVoice } from '../../../../support/stubVoice';

export function optionsFor(items: readonly PlanItem[]): GuideOptions {
  return {
    steps: planSteps(items),
    painLimit: 3,
    beyondPainLimit: 'Call the practice.',
    ifItGivesWay: 'Have it seen first.',
    outsideSound: true,
  };
}

/** A person going through a guide, as events; records every effect. */
export class Walk {
  state: GuideState;
  effects: GuideEffect[] = [];
  phases: GuidePhase[] = [];
  readonly voice = new StubVoice();
  /** Whether how much it hurt is answered as soon as it is asked. */
  tellsPain = true;
  private readonly options: GuideOptions;
  private placing: GuideEvent | null = null;

  constructor(options: GuideOptions, startMs = 500) {
    this.options = options;
    const { state, effects } = startGuide(options, startMs);
    this.state = state;
    this.effects.push(...effects);
    effects.forEach((effect) => effect.kind === 'say' && this.voice.say(effect));
    this.phases.push(state.phase);
  }

  send(event: GuideEvent): this {
    if (event.kind === 'placing') this.placing = event;
    const { state, effects } = advanceGuide(this.options, this.state, event);
    this.state = state;
    this.effects.push(...effects);
    effects.forEach((effect) => effect.kind === 'say' && this.voice.say(effect));
    if (state.phase !== this.phases.at(-1)) this.phases.push(state.phase);
    return this;
  }

  /** Tells the guide whether the voice still speaks, as the program does at intervals. */
  private hear(): void {
    const isSpeaking = this.voice.isSpeaking();
    if (isSpeaking !== this.state.isSpeaking) this.send({ kind: 'voice', isSpeaking });
  }

  press(press: GuidePress): this {
    return this.send({ kind: 'press', press });
  }

  /** Lets time go by in ticks of 100 ms, with a look at the placing after each. */
  wait(ms: number): this {
    for (let i = 0; i < ms / 100; i++) {
      this.voice.wait(100, this.state.phase);
      this.hear();
      this.send({ kind: 'tick', nowMs: this.state.nowMs + 100 });
      if (this.placing !== null) this.send(this.placing);
      if (this.tellsPain && this.state.phase === 'resting' && !this.state.isPainTold)
        this.send({ kind: 'pain-told' });
    }
    return this;
  }

  /** Lets time go by until a phase begins, at most a minute and a half. */
  until(phase: GuidePhase): this {
    for (let i = 0; i < 900 && this.state.phase !== phase; i++) this.wait(100);
    if (this.state.phase !== phase) throw new Error(`never came to ${phase}; stands at ${this.state.phase}`);
    return this;
  }

  /** In the picture, and as it should be. */
  comeIn(): this {
    this.send({ kind: 'person', isPresent: true });
    return this.send({ kind: 'placing', isGood: true, line: null, cost: 'nothing' });
  }

  repeat(times: number, verdict: 'in' | 'out' = 'in'): this {
    for (let i = 0; i < times; i++) {
      this.wait(2000);
      this.send({ kind: 'repetition', heard: { verdict, direction: 'inward', cue: null, shortCue: null } });
    }
    return this;
  }

  view() {
    return guideView(this.options, this.state);
  }

  said(): string[] {
    return this.effects.flatMap((effect) => (effect.kind === 'say' ? [effect.line] : []));
  }

  tones(): string[] {
    return this.effects.flatMap((effect) => (effect.kind === 'tone' ? [effect.tone] : []));
  }

  recorded(): string[] {
    return this.effects.flatMap((effect) => (effect.kind === 'record' ? [effect.action] : []));
  }

  /** Forgets what was wanted up to here. */
  clear(): this {
    this.effects = [];
    return this;
  }
}
