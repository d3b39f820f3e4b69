import { join } from 'node:path';
import { defaultLimits } from '#core/protocol/limits';
import { createProgressLine } from './tools/createProgressLine';
import { openHeadless } from './tools/openHeadless';
import { projectRoot } from './tools/projectRoot';
import { runCommand } from './tools/runCommand';
import { withCloserLook } from './tools/withCloserLook';
import { writeJson } from './tools/writeJson';

/** Measures the built-in example with the full model and puts the result among the fixtures. */
await runCommand(async () => {
  const progress = createProgressLine('example.mp4');
  const headless = await openHeadless(progress.show);
  const { recording, closer } = await headless
    .measure(join(projectRoot, 'fixtures/example.mp4'), {
      setup: { task: 'split-stance-sit-to-stand', side: 'right' },
      limits: defaultLimits,
      model: 'full',
      note: 'Demo data: the person is invented and rendered; nobody was filmed.',
      look: 'closer',
    })
    .finally(() => progress.clear())
    .finally(() => headless.close());
  // Fixed, so that making it again changes nothing but what was measured.
  const fixed = { id: '7d0c8b1e-3f52-4a86-9c1d-5be2f0a64713', createdAt: '2025-06-02T09:30:00.000Z' };
  writeJson(
    join(projectRoot, 'fixtures/example.session.json'),
    withCloserLook({ ...recording, ...fixed }, closer!.looks),
  );
  console.log(`fixtures/example.session.json: ${recording.derived.repetitions.length} repetitions.`);
});
