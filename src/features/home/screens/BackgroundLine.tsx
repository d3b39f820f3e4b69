import { BackgroundProblems } from './BackgroundProblems';
import { BackgroundProgress } from './BackgroundProgress';

/** Re-measuring of stored videos; nothing where none waits. */
export function BackgroundLine() {
  return (
    <>
      <BackgroundProblems />
      <BackgroundProgress />
    </>
  );
}
