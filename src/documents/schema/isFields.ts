export type Fields = Record<string, unknown>;

/** Whether unknown data is an object with fields. */
export function isFields(data: unknown): data is Fields {
  return typeof data === 'object' && data !== null && !Array.isArray(data);
}
