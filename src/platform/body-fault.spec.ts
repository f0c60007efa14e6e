import { describe, expect, it } from 'vitest';
import { bodyFault } from './body-fault.js';

/** An object of so many levels, itself among them. */
const nested = (levels: number): unknown =>
  JSON.parse(`{"a":${'['.repeat(levels - 1)}${']'.repeat(levels - 1)}}`);

describe('a body', () => {
  it.each([undefined, {}, { lines: [{ codes: [{ code: 'constructor' }] }] }, nested(17)])(
    'is read on when nothing is wrong: %j',
    (body) => {
      expect(bodyFault(body)).toBeUndefined();
    },
  );

  it.each([null, 'text', 42, true, [], [{}]])('is refused when it is no object: %j', (body) => {
    expect(bodyFault(body)).toContain('no JSON object');
  });

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
