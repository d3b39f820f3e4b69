/** What is measured beside the knee and its line; docs/measurement.md says each in full. */
export const otherMeasureIds = [
  'knee-over-foot',
  'hip-over-knee',
  'pelvic-drop',
  'trunk-lean',
  'pelvis-place',
  'depth',
] as const;
export type OtherMeasureId = (typeof otherMeasureIds)[number];

/** What is told of a repetition beside the knee angle, in the order in which it is shown. */
export const measureIds = ['knee-off-line', ...otherMeasureIds] as const;
export type MeasureId = (typeof measureIds)[number];

/** One value for each measure beside the knee and its line. */
export function mapOthers<T>(make: (id: OtherMeasureId) => T): Record<OtherMeasureId, T> {
  return Object.fromEntries(otherMeasureIds.map((id) => [id, make(id)])) as Record<OtherMeasureId, T>;
}

/** One value for each measure beside the knee angle. */
export function mapMeasures<T>(make: (id: MeasureId) => T): Record<MeasureId, T> {
  return { 'knee-off-line': make('knee-off-line'), ...mapOthers(make) };
}
