type Fields = Record<string, unknown>;

/**
 * Makes a session document of this version of one of version 1. Version 2 added what bends before a set showed, which a
 * document of version 1 goes without, and the camera's roll, which was not told then: none was taken out.
 */
export function bringUpSession(older: object, version: number): object {
  if (version !== 1) return older;
  const derived = fieldsOf((older as Fields)['derived']);
  const view = derived['view'];
  const levelled = isFields(view) ? { ...derived, view: { rollDeg: 0, ...view } } : derived;
  return { ...older, version: 2, derived: levelled };
}

function isFields(data: unknown): data is Fields {
  return typeof data === 'object' && data !== null && !Array.isArray(data);
}

function fieldsOf(data: unknown): Fields {
  return isFields(data) ? data : {};
}
