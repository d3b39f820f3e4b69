/** The same messages in another language: each key of them, and no other. */
export type Translated<English> = { readonly [Key in keyof English]: string };
