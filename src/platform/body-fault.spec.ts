import { describe, expect, it } from 'vitest';
import { bodyFault } from './body-fault.js';

const nested = (levels: number): unknown => JSON.parse('['.repeat(levels) + ']'.repeat(levels));

describe('a body', () => {
  it.each([undefined, null, 'text', 42, {}, { lines: [{ codes: [{ code: 'constructor' }] }] }, nested(17)])(
    'is read on when nothing is wrong: %j',
    (body) => {
      expect(bodyFault(body)).toBeUndefined();
    },
  );

  it('is refused when it is nested without end, however deep', () => {
    expect(bodyFault(nested(18))).toContain('nested more than 16 levels');
    expect(bodyFault(nested(5_000))).toContain('nested more than 16 levels');
  });

  it.each(['__proto__', 'constructor', 'prototype', 'toString', 'hasOwnProperty', '__defineGetter__'])(
    'is refused for a field named %s at any level',
    (name) => {
      const text = `{"lines":[{"a":{"${name}":true}}]}`;
      expect(bodyFault(JSON.parse(text))).toContain(`"${name}"`);
    },
  );
});
