export const loadKinds = ['loop', 'tube', 'weight'] as const;
export const loadPlaces = ['above-knees', 'ankle', 'hand'] as const;

/** What makes an exercise heavier; `level` is the practice's own word, such as a colour or 'light'. */
export type Load =
  { kind: 'none' } | { kind: (typeof loadKinds)[number]; level: string; where: (typeof loadPlaces)[number] };
