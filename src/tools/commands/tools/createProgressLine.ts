import type { Progress } from '../../headless/headlessPage';

/** Shows progress on one line of a terminal's stderr; says nothing where stderr is no terminal. */
export function createProgressLine(name: string) {
  const { stderr } = process;
  return {
    show({ framesDone, framesExpected, framesPerSecond, secondsLeft }: Progress): void {
      if (!stderr.isTTY) return;
      const rate = `${framesPerSecond.toFixed(0)} frames a second`;
      stderr.write(
        `\r\x1b[K${name}: frame ${framesDone} of ${framesExpected}, ${rate}, ${Math.ceil(secondsLeft)} s left`,
      );
    },
    clear(): void {
      if (stderr.isTTY) stderr.write('\r\x1b[K');
    },
  };
}
