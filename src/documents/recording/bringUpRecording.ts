type Fields = Record<string, unknown>;

/**
 * Makes a session document of this version of an older one. Version 2 added what bends before a set showed, which a
 * document of version 1 goes without, and the camera's roll, which was not told then: none was taken out. Version 3 added
 * when a set was begun, version 4 corrections and what a therapist sets down, version 5 from where limits were taken over;
 * older ones go without. Version 6 added limits of measures beside the knee angle: before, a verdict was the knee's.
 */
export function bringUpRecording(older: object, version: number): object {
  if (version < 1 || version > 5) return older;
  const derived = fieldsOf((older as Fields)['derived']);
  const { repetitions, view } = derived;
  return {
    ...older,
    version: 6,
    derived: {
      ...derived,
      ...(version === 1 && isFields(view) ? { view: { rollDeg: 0, ...view } } : {}),
      ...(Array.isArray(repetitions) ? { repetitions: repetitions.map(judgedByKnee) } : {}),
    },
  };
}

function judgedByKnee(repetition: unknown): unknown {
  if (!isFields(repetition) || !isFields(repetition['judgement'])) return repetition;
  const { judgement } = repetition;
  const { verdict } = judgement;
  const decidedBy = verdict === 'not-measured' ? null : 'knee-angle';
  return { ...repetition, judgement: { ...judgement, decidedBy, knee: verdict, measures: [] } };
}

function isFields(data: unknown): data is Fields {
  return typeof data === 'object' && data !== null && !Array.isArray(data);
}

function fieldsOf(data: unknown): Fields {
  return isFields(data) ? data : {};
}
