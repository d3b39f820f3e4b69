/**
 * Folders below src are rooms; this is who may import whom, types included.
 * Pure rooms come first: they compute, and touch neither page, storage nor network.
 */
const rooms = {
  protocol: [],
  keypoints: ['signal'],
  signal: [],
  statistics: [],
  geometry: ['protocol'],
  segmentation: ['protocol', 'signal'],
  view: ['protocol', 'signal', 'geometry'],
  measurement: ['protocol', 'keypoints', 'signal', 'geometry', 'segmentation', 'view'],
  scoring: ['protocol', 'measurement'],
  session: ['protocol', 'keypoints', 'measurement', 'scoring', 'view'],
  words: ['protocol', 'measurement', 'scoring'],
  plan: ['protocol'],
  placing: ['protocol', 'keypoints', 'signal', 'geometry', 'view', 'measurement', 'scoring'],
  guide: ['protocol', 'segmentation', 'scoring', 'plan', 'words'],
  validation: ['protocol', 'keypoints', 'geometry', 'measurement', 'scoring', 'session'],

  frames: [],
  pose: ['keypoints'],
  analysis: ['frames', 'pose', 'keypoints'],
  camera: [],
  sound: ['guide'],
  storage: ['protocol', 'keypoints', 'session'],
  live: ['camera', 'pose', 'keypoints', 'segmentation', 'measurement', 'scoring', 'protocol'],
  drawing: ['geometry', 'keypoints', 'measurement', 'scoring', 'protocol'],
  components: ['words', 'scoring', 'measurement', 'protocol', 'drawing'],
  screens: [
    'app',
    'components',
    'words',
    'scoring',
    'measurement',
    'protocol',
    'keypoints',
    'drawing',
    'plan',
    'placing',
    'guide',
  ],
  app: [
    'screens', // main.tsx alone, see below
    'analysis',
    'frames',
    'pose',
    'session',
    'measurement',
    'scoring',
    'keypoints',
    'protocol',
    'words',
    'plan',
    'placing',
    'guide',
    'camera',
    'sound',
    'storage',
    'live',
  ],
  headless: [
    'app', // Without its screens: see below.
    'analysis',
    'frames',
    'pose',
    'camera',
    'storage',
    'session',
    'measurement',
    'keypoints',
    'protocol',
    'words',
  ],
  commands: [
    'headless',
    'session',
    'plan',
    'validation',
    'measurement',
    'scoring',
    'keypoints',
    'protocol',
    'words',
  ],
};

/** Packages that one room alone may import. */
const owners = {
  '@tensorflow': 'pose/worker',
  mediabunny: 'frames',
  comlink: 'pose',
  dexie: 'storage',
};

module.exports = {
  forbidden: [
    ...Object.entries(rooms).map(([room, allowed]) => ({
      name: `from-${room}`,
      severity: 'error',
      from: { path: `^src/${room}/` },
      to: { path: '^src/', pathNot: `^src/(${[room, ...allowed].join('|')})/` },
    })),
    ...Object.entries(owners).map(([name, owner]) => ({
      name: `only-${owner}-imports-${name}`,
      severity: 'error',
      from: { path: '^src/', pathNot: `^src/${owner}/` },
      to: { path: `node_modules/${name}` },
    })),
    {
      name: 'screens-stay-apart',
      severity: 'error',
      from: { path: '^src/screens/([^/]+)/' },
      to: { path: '^src/screens/', pathNot: '^src/screens/$1/' },
    },
    {
      name: 'only-main-shows-screens',
      severity: 'error',
      from: { path: '^src/app/', pathNot: '^src/app/main\\.tsx$' },
      to: { path: '^src/screens/' },
    },
    { name: 'no-circles', severity: 'error', from: {}, to: { circular: true } },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
  },
};
