import { exerciseIds } from '#core/exercises/exercises';
import { limitEnds } from '#core/measures/limitEnd';
import { measureIds } from '#core/measures/measures';
import { sides } from '#core/protocol/side';
import { guidePhases, type GuidePhase } from '#features/home/guide/guideState';
import { startLine } from '#words/exerciseWords';
import { measureCue } from '#words/measureWords';

/** A line as a voice said it. */
export interface Spoken {
  line: string;
  /** How long the voice takes for all of it, ms. */
  lengthMs: number;
  /** How long it was heard, ms. */
  spokenMs: number;
  /** How long it was heard in each phase, ms. */
  inPhaseMs: Partial<Record<GuidePhase, number>>;
}

/** With less of it heard than this share, a line was cut off. */
const leastShare = 0.8;
/** A line that ends this soon after the screen has changed contradicts nothing, ms: common practice, no source. */
const lateMs = 500;

const before: readonly GuidePhase[] = ['placing', 'bends', 'standing', 'ready'];
const after: readonly GuidePhase[] = ['set-done', 'resting', 'all-done'];
const cues = measureIds.flatMap((id) => limitEnds.map((end) => measureCue(id, end)));
const isFeedback = (line: string) => line.includes('over the foot') || cues.includes(line);
const startLines = exerciseIds.flatMap((id) => sides.map((side) => startLine(id, side)));

/** In which phases a line fits what the screen asks for; the first that matches counts. */
const fitting: readonly [matches: (line: string) => boolean, phases: readonly GuidePhase[]][] = [
  [(line) => /\bhurts?\b|\bpain\b/.test(line), guidePhases],
  [(line) => startLines.some((start) => line.startsWith(start)), ['ready']],
  [(line) => /^(Good\. )?Let’s carry on/.test(line), before],
  [(line) => /^Let’s continue/.test(line), before],
  [(line) => /two easy bends/i.test(line), ['bends']],
  [(line) => /[Ss]tand still/.test(line), ['standing']],
  [(line) => /^Stand /.test(line), ['placing', 'bends', 'standing']],
  [(line) => /^(Three|Two|One)\.$/.test(line), ['countdown', 'working', 'finishing', 'resting']],
  [(line) => /^Go\.$/.test(line), ['working']],
  [(line) => /^[A-Z][a-z-]+\.( |$)/.test(line), ['working', 'finishing']],
  [(line) => isFeedback(line), ['working', 'finishing']],
  [(line) => /^(Carry on when|Please count|This device is too slow)/.test(line), ['working']],
  [(line) => /^(Hold|Halfway|And relax)/.test(line), ['working', 'set-done', 'all-done']],
  [(line) => /^Ten seconds/.test(line), ['working', 'resting']],
  [(line) => /^(Set done|This set is over|That was everything)/.test(line), after],
  [(line) => /^Rest for/.test(line), ['resting', 'working']],
  [(line) => /leg\.$/.test(line), before],
  [(line) => /^Paused/.test(line), ['paused']],
  [(line) => /^(Stopped|Ended)/.test(line), ['stopped']],
];
/** Any other line says what to move. */
const ofPlacing: readonly GuidePhase[] = ['placing', 'bends'];

/** Which lines a voice did not end, and which said something else than the screen. */
export function judgeSpoken(spoken: readonly Spoken[]): { cut: Spoken[]; contradicting: Spoken[] } {
  return {
    cut: spoken.filter(({ lengthMs, spokenMs }) => spokenMs < leastShare * lengthMs),
    contradicting: spoken.filter(({ line, inPhaseMs }) => {
      const fits = fitting.find(([matches]) => matches(line))?.[1] ?? ofPlacing;
      const elsewhere = guidePhases.filter((phase) => !fits.includes(phase));
      return elsewhere.reduce((sum, phase) => sum + (inPhaseMs[phase] ?? 0), 0) > lateMs;
    }),
  };
}
