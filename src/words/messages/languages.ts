/** What the patient's side can be read and heard in; the therapist's is English. */
export const languages = ['en', 'es'] as const;
export type Language = (typeof languages)[number];
