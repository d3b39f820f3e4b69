import { fileURLToPath } from 'node:url';

/** Absolute path of the project's folder, with a slash at its end. */
export const projectRoot = fileURLToPath(new URL('../../../../', import.meta.url));
