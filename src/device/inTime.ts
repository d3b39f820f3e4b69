/**
 * What was promised, if it comes in time; otherwise it rejects, so that nobody waits for ever.
 *
 * @param withinMs  how long is waited
 * @param tooLate  makes the reason
 * @param onLate  gets what comes afterwards, which nobody waits for any more
 */
export async function inTime<Value>(
  promised: Promise<Value>,
  withinMs: number,
  tooLate: () => Error,
  onLate: (late: Value) => void = () => undefined,
): Promise<Value> {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let isLate = false;
  promised.then(
    (value) => isLate && onLate(value),
    () => undefined,
  );
  const waiting = new Promise<never>((_, reject) => {
    timer = setTimeout(() => {
      isLate = true;
      reject(tooLate());
    }, withinMs);
  });
  return Promise.race([promised, waiting]).finally(() => clearTimeout(timer));
}
