/** @throws RangeError where a value is not a finite number; the message quotes it */
export function requireFinite(values: readonly number[]): void {
  const wrong = values.find((value) => !Number.isFinite(value));
  if (wrong !== undefined) throw new RangeError(`Statistics need finite numbers, got ${wrong}.`);
}
