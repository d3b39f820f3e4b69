import { join } from 'node:path';
import { preview } from 'vite';
import { projectRoot } from './projectRoot';

/**
 * Serves the built pages on a free port of this machine, with the headers that threads need.
 *
 * @param folder  where they are; the headless pages and a copy of those that are served if left out
 */
export async function serveBuild(
  folder = join(projectRoot, 'dist-tools'),
): Promise<{ url: string; close: () => Promise<void> }> {
  const server = await preview({
    configFile: join(projectRoot, 'vite.config.ts'),
    logLevel: 'silent',
    build: { outDir: folder },
    preview: { host: '127.0.0.1', port: 0 },
  });
  const url = server.resolvedUrls?.local[0];
  if (url === undefined) throw new Error('The built pages could not be served.');
  return { url, close: () => server.close() };
}
