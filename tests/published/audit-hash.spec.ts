import { execFileSync } from 'node:child_process';
import { createHash, hash } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import { type AuditLink, firstPreviousHash, hashOfLink } from '../../src/platform/audit/audit-log.js';
import { digestOf } from '../../src/platform/canonical-json.js';

const link: AuditLink = {
  studioId: '0192b8f0-0000-7000-8000-000000000001',
  sequence: 1,
  recordedAt: '2026-03-01T09:30:00.000Z',
  personId: null,
  via: 'system',
  action: 'identity.start-studio',
  subjectKind: 'studio',
  subjectId: '0192b8f0-0000-7000-8000-000000000001',
  payload: '{"note":"Größe \\"µL\\"","rows":[]}',
  previousHash: firstPreviousHash,
};

/** The link by hand, as RFC 8785 writes it: names in order, no spaces, only quotes and backslashes escaped. */
const canonicalLink =
  '{"action":"identity.start-studio","payload":"{\\"note\\":\\"Größe \\\\\\"µL\\\\\\"\\",\\"rows\\":[]}",' +
  `"personId":null,"previousHash":"${'0'.repeat(64)}","recordedAt":"2026-03-01T09:30:00.000Z","sequence":1,` +
  '"studioId":"0192b8f0-0000-7000-8000-000000000001","subjectId":"0192b8f0-0000-7000-8000-000000000001",' +
  '"subjectKind":"studio","via":"system"}';

/** SHA-256 by a tool of the system, where there is one. */
function byTool(text: string): string | undefined {
  for (const [tool, ...parameters] of [['sha256sum'], ['shasum', '-a', '256']]) {
    try {
      return execFileSync(tool ?? '', parameters, { input: text, encoding: 'utf8' }).slice(0, 64);
    } catch {
      // The next one.
    }
  }
  return undefined;
}

describe('the hash of an audit entry', () => {
  // NIST, Cryptographic Standards and Guidelines, Examples with Intermediate Values: SHA-256 [M]; FIPS 180-4.
  it.each([
    ['abc', 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad'],
    ['', 'e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855'],
    [
      'abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq',
      '248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1',
    ],
    ['a'.repeat(1_000_000), 'cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0'],
  ])('is SHA-256 as NIST publishes it', (message, digest) => {
    expect(createHash('sha256').update(message, 'utf8').digest('hex')).toBe(digest);
    expect(hash('sha256', message)).toBe(digest);
  });

  it('covers the entry as RFC 8785 writes it', () => {
    expect(hashOfLink(link)).toBe(createHash('sha256').update(canonicalLink, 'utf8').digest('hex'));
  });

  const told = byTool(canonicalLink);
  it.skipIf(told === undefined)('is what a tool of the system computes', () => {
    expect(hashOfLink(link)).toBe(told);
    expect(digestOf({ b: 'ä', a: 1 })).toBe(byTool('{"a":1,"b":"ä"}'));
  });
});
