import { z } from 'zod';

// Else each schema tries on being made whether it may turn text into code, which the pages' policy refuses and reports.
z.config({ jitless: true });

/** The schema library, for everything that runs in the browser. */
export { z };
