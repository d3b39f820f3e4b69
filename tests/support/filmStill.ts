import { filmPerson, type Film, type Scene } from './syntheticPerson';

/** Two and a half seconds of somebody who stands quietly on both feet. */
export function filmStanding(wishes: Partial<Scene> = {}): Film {
  return filmPerson({ ...wishes, task: 'two-legged-bend', repetitions: [], restMs: 2500 });
}

/** Two and a half seconds of somebody who sits, one foot in front, that of the side. */
export function filmSeated(wishes: Partial<Scene> = {}): Film {
  return filmPerson({ ...wishes, task: 'split-stance-sit-to-stand', repetitions: [], restMs: 2500 });
}
