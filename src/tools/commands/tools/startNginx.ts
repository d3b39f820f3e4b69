import { spawn, spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createServer, type AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { CommandProblem } from './commandProblem';
import { projectRoot } from './projectRoot';

const programs = ['nginx', '/usr/sbin/nginx', '/usr/local/sbin/nginx', '/opt/homebrew/bin/nginx'];
const typeFiles = [
  '/etc/nginx/mime.types',
  '/usr/local/etc/nginx/mime.types',
  '/opt/homebrew/etc/nginx/mime.types',
];

/**
 * Runs nginx with a configuration of the project, on a free port of this machine and without TLS.
 *
 * @param file  its path in the project
 * @param serverBlock  makes what goes into `http` of what the file says
 * @throws CommandProblem  where nginx is not installed or refuses the configuration
 */
export async function startNginx(
  file: string,
  serverBlock: (own: string, host: { port: number; version: string }) => string,
): Promise<{ url: string; version: string; close: () => Promise<void> }> {
  const program = programs.find((name) => spawnSync(name, ['-v']).status === 0);
  const types = typeFiles.find((path) => existsSync(path));
  if (program === undefined || types === undefined) {
    throw new CommandProblem(
      'nginx is not installed, so that its configuration was not tested. Install it (Debian: apt-get install nginx-light) and run this again.',
    );
  }
  const version = spawnSync(program, ['-v'], { encoding: 'utf8' }).stderr.trim();
  const port = await freePort();
  const folder = mkdtempSync(join(tmpdir(), 'overfoot-nginx-'));
  const configuration = join(folder, 'nginx.conf');
  const own = readFileSync(join(projectRoot, file), 'utf8');
  writeFileSync(configuration, wholeConfiguration(serverBlock(own, { port, version }), folder, types));
  const words = ['-e', join(folder, 'error.log'), '-p', dirname(configuration), '-c', configuration];
  const removeFolder = () => rmSync(folder, { recursive: true, force: true });
  const test = spawnSync(program, ['-t', '-q', ...words], { encoding: 'utf8' });
  if (test.status !== 0) {
    removeFolder();
    throw new CommandProblem(`nginx refuses ${file}: ${test.stderr}`);
  }
  const nginx = spawn(program, words, { stdio: 'ignore' });
  const ended = new Promise<void>((resolve) => nginx.once('exit', () => resolve()));
  const close = async () => {
    nginx.kill();
    await ended;
    removeFolder();
  };
  const url = `http://127.0.0.1:${port}/`;
  try {
    await answering(url);
  } catch (error) {
    await close();
    throw error;
  }
  return { url, version, close };
}

/** One process in the foreground that keeps everything it writes in one folder. */
function wholeConfiguration(server: string, folder: string, types: string): string {
  const temporary = ['client_body', 'proxy', 'fastcgi', 'uwsgi', 'scgi'].map(
    (name) => `${name}_temp_path "${join(folder, name)}";`,
  );
  return [
    'daemon off; master_process off;',
    `pid "${join(folder, 'pid')}";`,
    'events { }',
    'http {',
    `include ${types}; default_type application/octet-stream;`,
    ...temporary,
    server,
    '}',
  ].join('\n');
}

/**
 * A configuration with other lines.
 *
 * @param lines  each as it stands there, and what takes its place
 */
export function withLines(own: string, lines: Readonly<Record<string, string>>): string {
  return Object.entries(lines).reduce((text, [line, other]) => {
    if (!text.includes(line)) throw new Error(`The configuration has no "${line}".`);
    return text.replace(line, other);
  }, own);
}

async function freePort(): Promise<number> {
  const server = createServer();
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const { port } = server.address() as AddressInfo;
  await new Promise((resolve) => server.close(resolve));
  return port;
}

async function answering(url: string): Promise<void> {
  for (let attempt = 0; attempt < 50; attempt++) {
    if (
      await fetch(url).then(
        () => true,
        () => false,
      )
    )
      return;
    await wait(100);
  }
  throw new Error('nginx started, but does not answer.');
}
