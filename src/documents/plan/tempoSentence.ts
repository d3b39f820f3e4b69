import { findTask, type TaskId } from '#core/exercises/exercises';
import type { Tempo } from './planDocument';

/** A tempo in words for the patient: 'Up in 1 second, stay for 2 seconds, down in 3 seconds.' */
export function tempoSentence({ downSeconds, pauseSeconds, upSeconds }: Tempo, task: TaskId): string {
  const { shape } = findTask(task);
  const [there, back] =
    shape === 'reach' ? ['Out', 'back'] : shape === 'dip' ? ['Down', 'up'] : ['Up', 'down'];
  const [thereSeconds, backSeconds] = shape === 'rise' ? [upSeconds, downSeconds] : [downSeconds, upSeconds];
  const seconds = (value: number) => `${value} ${value === 1 ? 'second' : 'seconds'}`;
  const stay = pauseSeconds === 0 ? '' : `stay for ${seconds(pauseSeconds)}, `;
  return `${there} in ${seconds(thereSeconds)}, ${stay}${back} in ${seconds(backSeconds)}.`;
}
