type Fields = Record<string, unknown>;

/**
 * Makes a session document of this version of an older one. Version 2 added what bends before a set showed, which a
 * document of version 1 goes without, and the camera's roll, which was not told then: none was taken out. Version 3 added
 * when a set was begun, version 4 corrections and what a therapist sets down, version 5 from where limits were taken over;
 * older ones go without.
 */
export function bringUpSession(older: object, version: number): object {
  if (version >= 2 && version <= 4) return { ...older, version: 5 };
  if (version !== 1) return older;
  const derived = fieldsOf((older as Fields)['derived']);
  const view = derived['view'];
  const levelled = isFields(view) ? { ...derived, view: { rollDeg: 0, ...view } } : derived;
  return { ...older, version: 5, derived: levelled };
}

function isFields(data: unknown): data is Fields {
  return typeof data === 'object' && data !== null && !Array.isArray(data);
}

function fieldsOf(data: unknown): Fields {
  return isFields(data) ? data : {};
}
