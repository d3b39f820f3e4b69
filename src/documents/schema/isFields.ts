export type Fields = Record<string, unknown>;

/** Whether data that may be anything has fields. */
export function isFields(data: unknown): data is Fields {
  return typeof data === 'object' && data !== null && !Array.isArray(data);
}
