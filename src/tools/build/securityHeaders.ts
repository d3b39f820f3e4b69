import { readReplicaOrigin } from './readReplicaOrigin.ts';

type Policy = Record<string, readonly string[]>;

const self = "'self'";
const none = "'none'";

/**
 * The style sheets that React Aria adds to a page: touch on what can be pressed, and on iPhones no scrolling behind an
 * open list. tests/unit/tools/build/securityHeaders.test.ts finds an update that changes them.
 */
const addedStyleHashes = [
  "'sha256-38RhXrc7EdReTKsOm23ZPOCUgniTUUcjky8QOOrQx6o='",
  "'sha256-gYiS/BvZvRcK27JIXTuwhZ3hs2+VJ1X+2gUlE+farlg='",
];

/** The one server with which a practice's devices may share, where it is not the page's own (docs/deploy.md). */
const replicaOrigin = readReplicaOrigin(process.env['OVERFOOT_REPLICA_ORIGIN']);

/**
 * What a page may load and run. Its worker has a policy of its own: the one in the headers of the worker's file.
 * blob: is needed to show the chosen video from memory, and for the workers in which the video reader puts pictures
 * with transparency together. Texts can't become markup or scripts (Trusted Types): src/app/trustedScripts.ts has the
 * one exception.
 */
const page: Policy = {
  'default-src': [self],
  'script-src': [self],
  'style-src': [self, ...addedStyleHashes],
  'media-src': [self, 'blob:'],
  'connect-src': [self, ...replicaOrigin],
  'worker-src': [self, 'blob:'],
  'object-src': [none],
  'frame-src': [none],
  'base-uri': [none],
  'form-action': [none],
  'require-trusted-types-for': ["'script'"],
  'trusted-types': ['default'],
};

/**
 * What the server says for every file. A page obeys it and its own policy; the pose worker obeys it alone, and needs
 * WebAssembly, and blob: for the threads of the wasm backend, which start from its own source as a blob.
 */
const { 'require-trusted-types-for': _, 'trusted-types': __, ...common } = page;
const everything: Policy = {
  ...common,
  'script-src': [self, "'wasm-unsafe-eval'", 'blob:'],
  'frame-ancestors': [none],
};

const policyText = (policy: Policy) =>
  Object.entries(policy)
    .map(([name, sources]) => `${name} ${sources.join(' ')}`)
    .join('; ');

/** Content-Security-Policy for the `<meta>` of each built page. */
export const pagePolicy = policyText(page);

/** Headers that every file is served with, besides the policy. */
export const plainHeaders: Readonly<Record<string, string>> = {
  // Threads in WebAssembly need both.
  'Cross-Origin-Opener-Policy': 'same-origin',
  'Cross-Origin-Embedder-Policy': 'require-corp',
  'Cross-Origin-Resource-Policy': 'same-origin',
  'Permissions-Policy':
    'camera=(self), screen-wake-lock=(self), microphone=(), geolocation=(), display-capture=(), payment=(), usb=(), serial=(), bluetooth=(), hid=(), midi=()',
  'Referrer-Policy': 'no-referrer',
  'X-Content-Type-Options': 'nosniff',
};

/** All headers that every file is served with; docs/nginx.conf holds the same. */
export const securityHeaders: Readonly<Record<string, string>> = {
  'Content-Security-Policy': policyText(everything),
  ...plainHeaders,
};
