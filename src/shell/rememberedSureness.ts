import { surenesses, usualSureness, type Sureness } from '#core/chance/grade';
import type { Notes } from './notes';

/** How sure it has to be before a side is named, on this device; the usual one until another is chosen. */
export function rememberedSureness(notes: Notes): {
  read: () => Sureness;
  write: (sureness: Sureness) => void;
} {
  return {
    read: () => surenesses.find((one) => String(one) === notes.read('sureness')) ?? usualSureness,
    write: (sureness) => void notes.write('sureness', String(sureness)).catch(() => undefined), // Asked for again.
  };
}
