import { Problem } from '#core/problem';
import { whereDamaged } from '../reading/bySchema';
import { z } from '../schema/zod';
import { ownExtension, ownSystem } from './fhirCodes';

/** The code of a concept of this program's own. */
export const conceptOf = <Code extends string>(system: string, codes: readonly Code[]) =>
  z
    .looseObject({
      coding: z.tuple([z.looseObject({ system: z.literal(ownSystem(system)), code: z.enum(codes) })]),
    })
    .transform(({ coding: [{ code }] }) => code);

/** The id that a reference to a resource of this type names. */
export const idOf = (type: string) =>
  z
    .looseObject({ reference: z.string().startsWith(`${type}/`) })
    .transform(({ reference }) => reference.slice(type.length + 1));

export const identifier = z.tuple([z.looseObject({ value: z.string() })]).transform(([{ value }]) => value);

/** @throws Problem  with a sentence that says what is wrong and what to do */
export function parsed<Schema extends z.ZodType>(schema: Schema, data: unknown): z.infer<Schema> {
  const result = schema.safeParse(data);
  if (result.success) return result.data;
  throw new Problem('file', notOurs(whereDamaged(result.error)));
}

export function notOurs(where: string): string {
  return `This is not a record that was exported here: it is damaged at ${where}. Export it again where it came from.`;
}

/**
 * All resources of a type, read by a schema.
 *
 * @param only  which of them; all where it is left out
 */
export type ResourcesOf = <Schema extends z.ZodType>(
  type: string,
  schema: Schema,
  only?: (resource: unknown) => boolean,
) => z.infer<Schema>[];

/** An extension of our own, with its value of whatever type. */
export function extensionOf(extensions: readonly { url: string }[], name: string) {
  const found = extensions.find(({ url }) => url === ownExtension(name));
  if (found === undefined) return undefined;
  return { value: Object.entries(found).find(([key]) => key.startsWith('value'))?.[1] };
}
