/** The part of the Trusted Types API that is used (W3C draft; browsers without it go by the policy alone). */
interface TrustedTypes {
  createPolicy(name: 'default', rules: { createScriptURL: (url: string) => string }): unknown;
}

/**
 * Lets only this program's own scripts become workers, and no text become markup or a script: the page's policy
 * asks for it, and this is the one rule that it goes by. To be imported before anything that starts a worker.
 */
(globalThis as { trustedTypes?: TrustedTypes }).trustedTypes?.createPolicy('default', {
  createScriptURL(url) {
    const { origin, protocol, pathname } = new URL(url, location.href);
    if (origin === location.origin && (protocol === 'blob:' || pathname.endsWith('.js'))) return url;
    throw new TypeError('Only scripts of this program are allowed.');
  },
});
