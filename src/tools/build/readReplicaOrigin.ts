/**
 * The one origin besides the page's own to which the policy lets it connect.
 *
 * @param text  an origin such as https://share.example.org; undefined or empty for none
 * @throws Error  where it is anything else, so that nothing wider gets into the policy
 */
export function readReplicaOrigin(text: string | undefined): string[] {
  if (text === undefined || text === '') return [];
  const isHere = /^http:\/\/(localhost|127\.0\.0\.1):\d+$/.test(text);
  if (!isHere && !/^https:\/\/[a-z0-9-]+(\.[a-z0-9-]+)*(:\d+)?$/.test(text))
    throw new Error(
      `OVERFOOT_REPLICA_ORIGIN is "${text}"; it must be one origin, such as https://share.example.org.`,
    );
  return [text];
}
