import { z } from './zod';

/** The public half of an X25519 key in the age format ('age1…'); whether its check sum holds is not looked at. */
export const publicKeySchema = z.string().regex(/^age1[02-9ac-hj-np-z]{58}$/);
