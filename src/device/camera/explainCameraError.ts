import { CameraProblem, type CameraProblemKind } from './cameraProblem';

/** Browsers' names for refusals; some are older than the standard. */
const kindsByName: Record<string, CameraProblemKind> = {
  NotAllowedError: 'refused',
  PermissionDeniedError: 'refused',
  SecurityError: 'refused',
  NotFoundError: 'none',
  DevicesNotFoundError: 'none',
  NotReadableError: 'in-use',
  TrackStartError: 'in-use',
  AbortError: 'in-use',
  OverconstrainedError: 'impossible-wish',
  ConstraintNotSatisfiedError: 'impossible-wish',
};

/** Turns whatever asking for a camera threw into a problem with a sentence. */
export function explainCameraError(error: unknown): CameraProblem {
  if (error instanceof CameraProblem) return error;
  // Not every browser's OverconstrainedError is an Error.
  const { name = '', message = '' } = (error ?? {}) as Partial<Record<'name' | 'message', string>>;
  const kind = kindsByName[name] ?? 'unknown';
  const detail = kind === 'unknown' ? [name, message].filter(Boolean).join(': ') || null : null;
  return new CameraProblem(kind, detail, { cause: error });
}
