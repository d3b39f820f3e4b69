import { z } from 'zod';

// Otherwise each new schema tests whether it may compile text to code, which the pages' policy refuses and
// reports.
z.config({ jitless: true });

/** The schema library, for everything that runs in the browser. */
export { z };
