import { spawnSync } from 'node:child_process';
import { accessSync, constants, statSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { chromium } from '@playwright/test';
import { CommandProblem } from './commandProblem';
import { projectRoot } from './projectRoot';

const names = ['google-chrome', 'google-chrome-stable', 'chromium', 'chromium-browser', 'chrome'];

/** What Playwright switches off; of two such switches only the last one counts. */
const playwrightSwitchesOff = [
  'AvoidUnnecessaryBeforeUnloadCheckSync',
  'DestroyProfileOnBrowserClose',
  'HttpsUpgrades',
  'HttpsFirstBalancedModeAutoEnable',
  'LensOverlay',
  'MediaRouter',
  'PaintHolding',
  'ThirdPartyStoragePartitioning',
  'AvoidCorsURLLoaderRestartOnRedirect',
  'TcpPortRandomizationWin',
  'OptimizationHints',
  'NetworkTimeServiceQuerying',
  'AimEnabled',
  'PreconnectToSearch',
];
/** Pages of the address bar, which every new window loads. */
const addressBarPages = ['WebUIOmniboxPopup', 'WebUIOmniboxAimPopup', 'WebUIOmniboxFullPopup'];

/** Switches for a browser without a screen that talks to nobody. */
export const browserSwitches = [
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  `--disable-features=${[...playwrightSwitchesOff, ...addressBarPages].join()}`,
];

/**
 * Path of a Chrome or Chromium: the one that OVERFOOT_BROWSER names, else one on the PATH, in its usual place, or
 * Playwright's own; where there is none, one is installed.
 *
 * @throws CommandProblem  where OVERFOOT_BROWSER names none, or none can be installed
 */
export function findBrowser(): string {
  const named = process.env['OVERFOOT_BROWSER'];
  if (named !== undefined && named !== '') {
    if (isProgram(named)) return named;
    throw new CommandProblem(
      `OVERFOOT_BROWSER names "${named}", which is no program. Give the path of Chrome or Chromium.`,
    );
  }
  const found = installedBrowser() ?? installBrowser();
  if (found !== undefined) return found;
  throw new CommandProblem(
    'No Chrome or Chromium was found or could be installed. Install one, or name it in OVERFOOT_BROWSER.',
  );
}

function installedBrowser(): string | undefined {
  return [...onPath(), ...usualPlaces(), chromium.executablePath()].find(isProgram);
}

function onPath(): string[] {
  const endings = process.platform === 'win32' ? ['.exe'] : [''];
  return (process.env['PATH'] ?? '')
    .split(delimiter)
    .filter((folder) => folder !== '')
    .flatMap((folder) => names.flatMap((name) => endings.map((ending) => join(folder, name + ending))));
}

function usualPlaces(): string[] {
  const { HOME, PROGRAMFILES, LOCALAPPDATA } = process.env;
  if (process.platform === 'darwin') {
    return ['/Applications', `${HOME ?? ''}/Applications`].flatMap((folder) => [
      `${folder}/Google Chrome.app/Contents/MacOS/Google Chrome`,
      `${folder}/Chromium.app/Contents/MacOS/Chromium`,
    ]);
  }
  if (process.platform === 'win32') {
    return [PROGRAMFILES, process.env['PROGRAMFILES(X86)'], LOCALAPPDATA]
      .filter((folder) => folder !== undefined)
      .flatMap((folder) => [
        join(folder, 'Google/Chrome/Application/chrome.exe'),
        join(folder, 'Chromium/Application/chrome.exe'),
      ]);
  }
  return ['/opt/google/chrome/chrome', '/usr/lib/chromium/chromium'];
}

function isProgram(path: string): boolean {
  try {
    accessSync(path, constants.X_OK);
    return statSync(path).isFile();
  } catch {
    return false;
  }
}

/** Debian's package where this may be done, else Playwright's own; both say what they do on stderr. */
function installBrowser(): string | undefined {
  console.error('No Chrome or Chromium was found; installing one ...');
  if (process.platform === 'linux' && process.getuid?.() === 0) {
    run('apt-get', ['update', '-q']);
    run('apt-get', ['install', '-y', '-q', '--no-install-recommends', 'chromium']);
    const found = installedBrowser();
    if (found !== undefined && starts(found)) return found;
  }
  run(process.execPath, [join(projectRoot, 'node_modules/@playwright/test/cli.js'), 'install', 'chromium']);
  return [chromium.executablePath()].find(isProgram);
}

/** A stub that only points to another package manager is executable too, but does not start. */
function starts(path: string): boolean {
  return spawnSync(path, ['--version'], { timeout: 20_000 }).status === 0;
}

function run(program: string, words: string[]): void {
  const environment = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  // Both streams to stderr: stdout carries only a command's own result.
  spawnSync(program, words, { stdio: ['ignore', 2, 2], env: environment, cwd: projectRoot });
}
