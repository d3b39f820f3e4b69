/**
 * The floors of the house, lowest first. Code imports from its own folder and from the floors below it, types
 * included; folders on one floor do not import each other.
 */
const floors = [
  ['core'],
  ['words'],
  ['documents'],
  ['device', 'ui'],
  ['shell'],
  ['features/review', 'features/sharing', 'features/lock'],
  ['features/home', 'features/sessions', 'features/planning', 'features/mirror', 'features/start'],
  ['features/patients'],
  ['app'],
  ['tools'],
];

/** Packages that only one folder may import. */
const owners = {
  '@tensorflow': 'device/pose/worker',
  mediabunny: 'device/frames',
  comlink: '(device|tools/commands/tools/replay)',
  dexie: 'device/storage',
  pouchdb: '(device/replica|tools/commands/tools/practice)',
};

/** Folders that compute only: they import nothing that touches the page, the device or the network. */
const pure = ['core', 'words', 'documents', 'features/[^/]+/rules', 'features/home/(guide|placing)'];

const below = (floor) => floors.slice(0, floor).flat();

module.exports = {
  forbidden: [
    ...floors.flatMap((folders, floor) =>
      folders.map((folder) => ({
        name: `from-${folder.replace('/', '-')}`,
        severity: 'error',
        from: { path: `^src/${folder}/` },
        to: { path: '^src/', pathNot: `^src/(${[folder, ...below(floor)].join('|')})/` },
      })),
    ),
    {
      name: 'pure-stays-pure',
      severity: 'error',
      from: { path: `^src/(${pure.join('|')})/` },
      to: {
        path: '^src/(device|ui|shell|app|tools|features/[^/]+/(store|screens))/',
        dependencyTypesNot: ['type-only'],
      },
    },
    {
      name: 'stores-without-screens',
      severity: 'error',
      from: { path: '^src/features/[^/]+/(rules|store)/' },
      to: { path: '^src/features/[^/]+/screens/' },
    },
    ...Object.entries(owners).map(([name, owner]) => ({
      name: `only-${owner.replaceAll('/', '-')}-imports-${name}`,
      severity: 'error',
      from: { path: '^src/', pathNot: `^src/${owner}/` },
      to: { path: `node_modules/${name}` },
    })),
    { name: 'no-circles', severity: 'error', from: {}, to: { circular: true } },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
  },
};
