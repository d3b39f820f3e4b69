import { join } from 'node:path';
import { preview } from 'vite';
import { projectRoot } from './projectRoot';

/** Serves the built pages on a free port of this machine, with the headers that threads need. */
export async function serveBuild(): Promise<{ url: string; close: () => Promise<void> }> {
  const server = await preview({
    configFile: join(projectRoot, 'vite.config.ts'),
    logLevel: 'silent',
    preview: { host: '127.0.0.1', port: 0 },
  });
  const url = server.resolvedUrls?.local[0];
  if (url === undefined) throw new Error('The built pages could not be served.');
  return { url, close: () => server.close() };
}
