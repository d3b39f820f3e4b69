import { verdictSide } from '#core/scoring/verdict';
import type { RecordingDocument } from '../recording/recordingDocument';

/** A part of a video, both ends included, ms from its start. */
export interface Span {
  fromMs: number;
  toMs: number;
}

/** Shown before and after a repetition, ms: enough to see it begin and end. Common practice, no source. */
const aroundMs = 500;

type Repetition = RecordingDocument['derived']['repetitions'][number];

/** Whether a repetition is one of those that went out of line, or probably did, and count. */
export function isOutOfLine({ excluded, judgement }: Pick<Repetition, 'excluded' | 'judgement'>): boolean {
  return excluded === undefined && verdictSide(judgement.verdict) === 'out';
}

/**
 * Where in a video repetitions went out of line, with a moment around each.
 *
 * @returns  in order, not overlapping; empty where none did
 */
export function outOfLineSpans(repetitions: readonly Repetition[]): Span[] {
  const spans: Span[] = [];
  for (const { events } of repetitions.filter(isOutOfLine)) {
    const span = { fromMs: Math.max(0, events.startMs - aroundMs), toMs: events.endMs + aroundMs };
    const last = spans.at(-1);
    if (last !== undefined && span.fromMs <= last.toMs) last.toMs = Math.max(last.toMs, span.toMs);
    else spans.push(span);
  }
  return spans;
}
