import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { pagePolicy, securityHeaders } from '#tools/build/securityHeaders';
import { projectRoot } from '#tools/commands/tools/projectRoot';

const policies = { page: pagePolicy, headers: securityHeaders['Content-Security-Policy']! };

describe('pagePolicy, securityHeaders', () => {
  it.each(Object.entries(policies))('allow nothing from elsewhere and nothing inline (%s)', (_, policy) => {
    expect(policy).toContain("default-src 'self'");
    expect(policy).toContain("connect-src 'self';");
    expect(policy).not.toMatch(/unsafe-inline|unsafe-eval(?<!wasm-unsafe-eval)|https?:|\*|data:/);
  });

  it.each(['interactions/usePress', 'overlays/usePreventScroll'])(
    'know the style sheet that React Aria adds in %s by its hash',
    (file) => {
      const source = readFileSync(`${projectRoot}node_modules/react-aria/dist/private/${file}.mjs`, 'utf8');
      const [, sheet] = /style\.textContent = `([^`]*)`\.trim\(\)/.exec(source)!;
      const text = sheet!.replace(/\$\{[^}]*PRESSABLE_ATTRIBUTE\}/, 'data-react-aria-pressable').trim();
      const hash = createHash('sha256').update(text).digest('base64');
      for (const policy of Object.values(policies)) expect(policy).toContain(`'sha256-${hash}'`);
    },
  );

  it('are in docs/nginx.conf, which sets no other header and none inside a location', () => {
    const configuration = readFileSync(`${projectRoot}docs/nginx.conf`, 'utf8');
    const set = configuration.matchAll(/^( *)add_header ([\w-]+) "([^"]*)" always;$/gm);
    const lines = [...set].map(([, indent, name, value]) => [`${indent}${name}`, value]);
    expect(Object.fromEntries(lines)).toEqual(securityHeaders);
    expect(configuration.match(/^[^#\n]*\badd_header\b/gm)).toHaveLength(lines.length);
  });
});
