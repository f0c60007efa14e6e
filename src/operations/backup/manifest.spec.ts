import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isSafeName, type Manifest, parseManifest } from './manifest.js';

const digest = 'a1'.repeat(32);

const whole: Manifest = {
  format: 1,
  madeAt: '2026-11-25T08:15:00.000Z',
  reason: 'scheduled',
  engine: 'sqlite',
  migrations: ['Identity1795600000001'],
  heads: [{ studioId: '0192b8f0-0000-7000-8000-000000000001', sequence: 12, hash: digest }],
  masterKeyIds: ['0a1b2c3d4e5f'],
  files: [
    { name: 'database.sqlite', bytes: 4096, sha256: digest },
    { name: 'files/2026/letter.pdf', bytes: 0, sha256: digest },
  ],
};

const parsed = (changes: object) => parseManifest(JSON.stringify({ ...whole, ...changes }));

describe('the manifest of a backup', () => {
  it('is read as it was written', () => {
    expect(parseManifest(JSON.stringify(whole))).toEqual(whole);
  });

  it('is refused when any member is missing', () => {
    for (const name of Object.keys(whole)) {
      expect(() => parsed({ [name]: undefined }), name).toThrow(name);
    }
  });

  it.each([
    ['madeAt', '2026-11-25'],
    ['reason', 'boredom'],
    ['engine', 'paper'],
    ['migrations', [1]],
    ['heads', [{ studioId: 'x', sequence: -1, hash: digest }]],
    ['heads', [{ studioId: 'x', sequence: 1, hash: 'short' }]],
    ['masterKeyIds', ['']],
    ['files', [{ name: 'database.sqlite', bytes: 1.5, sha256: digest }]],
    ['files', [{ name: '../database.sqlite', bytes: 1, sha256: digest }]],
    ['files', { 0: 'not a list' }],
  ])('is refused when its %s is %j', (name, value) => {
    expect(() => parsed({ [name]: value })).toThrow(`"${name}" is missing or damaged`);
  });

  it('is refused when it was written in a later format, which it names', () => {
    expect(() => parsed({ format: 2 })).toThrow(
      'its format is 2, and this version of Lotward reads format 1',
    );
  });

  it('is refused when it names no database', () => {
    expect(() => parsed({ engine: 'postgres' })).toThrow('does not name database.dump');
  });

  it('is refused, not misread, whatever the text', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.json()), (text) => {
        expect(() => parseManifest(text)).toThrow();
      }),
    );
  });

  it('names no file outside its folder', () => {
    for (const name of ['/etc/x', '../x', 'files/../../x', 'files//x', './x', 'a\\..\\x', 'a\0b', '']) {
      expect(isSafeName(name), name).toBe(false);
    }
    expect(isSafeName('files/2026/letter of a client.pdf')).toBe(true);
  });
});
