/** What makes sense in a plan, both ends included; wide, since the therapist decides. Common practice, no source. */
export const planRanges = {
  sets: { min: 1, max: 20 },
  repetitions: { min: 1, max: 200 },
  holds: { min: 1, max: 20 },
  holdSeconds: { min: 1, max: 600 },
  restSeconds: { min: 0, max: 900 },
  downSeconds: { min: 0.5, max: 30 },
  pauseSeconds: { min: 0, max: 60 },
  upSeconds: { min: 0.5, max: 30 },
  seatHeightCm: { min: 20, max: 90 },
  stepHeightCm: { min: 2, max: 60 },
  bendDeg: { min: 5, max: 140 },
  upTo: { min: 1, max: 200 },
  painLimit: { min: 0, max: 10 },
  usualPain: { min: 0, max: 10 },
  perWeek: { min: 1, max: 14 },
} as const;

/** Longest lists and texts, in entries and characters; the forms enforce the same. */
export const planBounds = {
  items: 20,
  patient: 60,
  beyondPainLimit: 300,
  ifItGivesWay: 300,
  howOften: 300,
  words: 2000,
  note: 300,
  stage: 40,
  freeItems: 8,
  freeName: 60,
  freeHow: 500,
  freeDose: 80,
  returnKeys: 5,
} as const;

/** No plan within the bounds reaches this size, even where each character is written as an escape, bytes. */
export const largestPlanBytes = 150_000;
