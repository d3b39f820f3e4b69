import { notAsked } from '#documents/session/notAsked';
import type { SessionDocument } from '#documents/session/sessionDocument';

/** One set of a task, cut short, and one hold, by an invented person. */
export function smallSession(): SessionDocument {
  return {
    format: 'overfoot-visit',
    version: 4,
    ...notAsked,
    id: '3f4a6d0e-93ff-4a8e-8f8d-5a6c1b2e7d10',
    startedAt: '2026-04-05T06:07:08.000Z',
    endedAt: '2026-04-05T06:21:08.000Z',
    patient: 'invented-heron',
    planId: '5d0c0f0e-4b7a-4f6f-8d5e-2a9b1c3d4e51',
    painBefore: 0,
    painAfter: 2,
    effort: 6,
    remark: 'An invented visit.',
    sets: [
      {
        sessionId: '7b0c3c52-6d2e-4c57-9a5b-0f6f1f0e9d11',
        item: 0,
        task: 'split-stance-sit-to-stand',
        side: 'right',
        number: 1,
        prescribedRepetitions: 8,
        painDuring: 3,
        cutShort: 'The doorbell rang.',
        heldMs: null,
        conditions: null,
      },
      {
        sessionId: null,
        item: 1,
        task: 'quad-press-hold',
        side: 'left',
        number: 2,
        prescribedRepetitions: null,
        painDuring: null,
        cutShort: null,
        heldMs: 30_000,
        conditions: null,
      },
    ],
  };
}
