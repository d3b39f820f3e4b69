import { holdWithoutProgress, planWithoutProgress, withoutProgress } from '#documents/plan/itemProgress';
import type { HoldItem, PlanDocument, RepetitionItem } from '#documents/plan/planDocument';

/** Five sit-to-stands a set, two sets with the right leg. */
export function smallItem(change: Partial<RepetitionItem> = {}): RepetitionItem {
  return {
    kind: 'repetitions',
    task: 'split-stance-sit-to-stand',
    sides: ['right'],
    sets: 2,
    restSeconds: 40,
    repetitions: 5,
    tempo: null,
    seatHeightCm: 46,
    feedback: 'only-outside',
    limits: { 'knee-angle': { least: -11, most: 9 } },
    ...withoutProgress,
    ...change,
  };
}

/** Two holds of 12 s with 15 s of rest between. */
export function smallHold(change: Partial<HoldItem> = {}): HoldItem {
  return {
    kind: 'hold',
    task: 'quad-press-hold',
    sides: ['left'],
    sets: 1,
    restSeconds: 15,
    holds: 2,
    holdSeconds: 12,
    ...holdWithoutProgress,
    ...change,
  };
}

/** A plan for an invented person. */
export function smallPlan(change: Partial<PlanDocument> = {}): PlanDocument {
  return {
    format: 'overfoot-plan',
    version: 9,
    id: 'b7d4b0a5-2c55-4d6c-8a6e-3f1de2c86f14',
    createdAt: '2024-03-05T07:08:09.010Z',
    note: 'An invented patient.',
    patient: 'Grey Otter 3',
    items: [smallItem(), smallHold()],
    footwear: 'either',
    painLimit: 4,
    usualPain: null,
    mayGoOnAbove: false,
    beyondPainLimit: 'Stop and call the practice.',
    ifItGivesWay: 'Sit down and call the practice.',
    howOften: 'Daily.',
    perWeek: null,
    reviewDate: '2024-03-20',
    words: 'Take your time.',
    videoWish: null,
    returnKeys: [],
    language: 'en',
    ...planWithoutProgress,
    ...change,
  };
}
