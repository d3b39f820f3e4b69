import { z } from '../schema/zod';
import { remarkKinds, type ExchangeRemark } from './exchangeRecord';
import { ownExtension } from './fhirCodes';
import { extensionOf } from './readingParts';

/** What a therapist wrote beside a set, as notes of its observation. */
export function annotationsOf(remarks: readonly ExchangeRemark[]) {
  return remarks.map(({ kind, text, atMs, by, at }) => ({
    extension: [
      { url: ownExtension('remark-kind'), valueCode: kind },
      ...(atMs === null ? [] : [{ url: ownExtension('time-in-video-ms'), valueDecimal: atMs }]),
    ],
    ...(by === '' ? {} : { authorString: by }),
    ...(at === null ? {} : { time: at }),
    text,
  }));
}

/** What `annotationsOf` writes. */
export const remarksSchema = z.array(
  z
    .looseObject({
      extension: z.array(z.looseObject({ url: z.string() })),
      authorString: z.string().optional(),
      time: z.string().optional(),
      text: z.string(),
    })
    .transform(({ extension, authorString = '', time = null, text }, { addIssue }): ExchangeRemark => {
      const kind = z.enum(remarkKinds).safeParse(extensionOf(extension, 'remark-kind')?.value);
      const atMs = extensionOf(extension, 'time-in-video-ms')?.value;
      if (!kind.success) {
        addIssue('A remark says of which kind it is.');
        return z.NEVER;
      }
      return {
        kind: kind.data,
        text,
        atMs: typeof atMs === 'number' ? atMs : null,
        by: authorString,
        at: time,
      };
    }),
);
