import { describe, expect, it } from 'vitest';
import { readReplicaOrigin } from '#tools/build/readReplicaOrigin';

describe('readReplicaOrigin(text)', () => {
  it.each([
    [undefined, []],
    ['', []],
    ['https://share.example.org', ['https://share.example.org']],
    ['https://share.example.org:6984', ['https://share.example.org:6984']],
    ['http://127.0.0.1:5984', ['http://127.0.0.1:5984']],
  ])('reads %j', (text, origins) => {
    expect(readReplicaOrigin(text)).toEqual(origins);
  });

  it.each([
    '*',
    'https:',
    'https://*.example.org',
    'http://share.example.org',
    'https://share.example.org/practice',
    "https://share.example.org 'unsafe-inline'",
    'https://a.example https://b.example',
    'https://share.example.org;script-src *',
  ])('refuses %j', (text) => {
    expect(() => readReplicaOrigin(text)).toThrow('OVERFOOT_REPLICA_ORIGIN');
  });
});
