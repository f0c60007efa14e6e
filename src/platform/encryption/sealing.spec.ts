import { randomBytes } from 'node:crypto';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { open, seal } from './sealing.js';

const key = randomBytes(32);

describe('sealed fields', () => {
  it('open with the key and place they were sealed with', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (text) => {
        expect(open(key, seal(key, text, 'client.name:1'), 'client.name:1').toString('utf8')).toBe(
          Buffer.from(text, 'utf8').toString('utf8'),
        );
      }),
    );
  });

  it('do not open under another key or at another place', () => {
    const sealed = seal(key, 'Mira Anders', 'client.name:1');
    expect(() => open(randomBytes(32), sealed, 'client.name:1')).toThrow();
    expect(() => open(key, sealed, 'client.name:2')).toThrow();
  });

  it('do not open when any one bit was changed', () => {
    const bytes = Buffer.from(seal(key, 'Mira Anders', 'client.name:1'), 'base64');
    for (let bit = 0; bit < bytes.length * 8; bit += 1) {
      const changed = Buffer.from(bytes);
      changed.writeUInt8(changed.readUInt8(bit >> 3) ^ (1 << (bit & 7)), bit >> 3);
      expect(() => open(key, changed.toString('base64'), 'client.name:1')).toThrow();
    }
  });

  it('are never the same twice, and tell nothing of the text', () => {
    const sealed = [seal(key, 'Mira Anders', 'p'), seal(key, 'Mira Anders', 'p')];
    expect(sealed[0]).not.toBe(sealed[1]);
    expect(Buffer.from(sealed[0] ?? '', 'base64').includes('Mira')).toBe(false);
  });

  it('are refused when cut short', () => {
    expect(() => open(key, 'AAAA', 'p')).toThrow('cut short');
  });
});
