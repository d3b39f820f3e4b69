import { findTask, type TaskId } from '#core/exercises/exercises';
import { message } from '#words/messages/message';
import type { Tempo } from './planDocument';

/** A tempo in words for the patient: 'Up in 1 second, stay for 2 seconds, down in 3 seconds.' */
export function tempoSentence(tempo: Tempo, task: TaskId): string {
  const { downSeconds: down, pauseSeconds: stay, upSeconds: up } = tempo;
  return message(`tempo.${findTask(task).shape}`, { down, stay, up });
}
