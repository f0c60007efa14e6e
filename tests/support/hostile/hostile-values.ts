import type { Schema } from '../api-document.js';
import type { SeededRandom } from '../random.js';

/** Stands for a piece of JSON that no value gives, such as a number without end. */
export interface RawJson {
  rawJson: string;
}

export const injections = [
  "'; DROP TABLE person;--",
  "' OR '1'='1",
  '1; SELECT pg_sleep(10)--',
  '<script>alert(1)</script>',
  '"><img src=x onerror=alert(1)>',
  // biome-ignore lint/suspicious/noTemplateCurlyInString: what a template engine would carry out
  '${7*7}',
  '{{7*7}}',
  '../../../../etc/passwd',
  '%0d%0aSet-Cookie: x=1',
  '$ne',
] as const;

/** May stand wherever a text may, and go badly with careless programs. */
export const awkwardTexts = [
  ...injections,
  '__proto__',
  'constructor',
  'toString',
  'null',
  'undefined',
  '0',
  'İSTANBUL',
  'ﬁ'.repeat(50),
  'ﷺ'.repeat(60),
  '\u202eowner',
  '\u200b\u200b',
  'o\u0301'.repeat(40),
  '🜂'.repeat(60),
  'x'.repeat(100),
] as const;

/** Symbols may hold other control characters, and notes several lines. */
const unreadableTexts = ['\u0000', 'a\u0000b', '\ud800', 'a\udfffb'];
const impossibleInstants = [
  '2026-02-30T10:00:00Z',
  '2026-13-01T00:00:00Z',
  '2026-03-01T25:61:00Z',
  '+999999-01-01T00:00:00Z',
  '-000001-01-01T00:00:00Z',
  '2026-03-01',
  'now',
  "2026-03-01T10:00:00Z'--",
];
const impossibleDays = ['2026-02-30', '2026-13-01', '0000-00-00', '20260301', '99999-01-01', 'yesterday'];
const noIds = [
  'x',
  '',
  '0',
  '__proto__',
  '00000000-0000-0000-0000-00000000000g',
  "01936f3a-5b7c-7d2e-8f10-2a3b4c5d6e7f' OR 1=1--",
  '01936f3a-5b7c-7d2e-8f10-2a3b4c5d6e7f\u0000',
  '{01936f3a-5b7c-7d2e-8f10-2a3b4c5d6e7f}',
];
const endlessNumbers: RawJson[] = [{ rawJson: '1e999' }, { rawJson: '-1e999' }];
const notNumbers = ['1', '0x10', '1 OR 1=1', true, {}, [], [1], 1.5, 0.1];
const hugeNumbers = [2 ** 31, 2 ** 53 + 2, -(2 ** 63), 1e20, 1e308, -1e308];

/** Values that a place with this schema never accepts. */
export function refusedValues(schema: Schema, random: SeededRandom): unknown[] {
  const types = [schema.type ?? []].flat();
  const wrong: unknown[] = [{}, { length: 3 }, [], [[]], { toString: 'x' }];
  if (types.includes('string')) {
    wrong.push(42, 0, -1, true, ['x']);
    if (schema.format === 'uuid') wrong.push(...noIds);
    else if (schema.format === 'date-time') wrong.push(...impossibleInstants);
    else if (schema.format === 'date') wrong.push(...impossibleDays);
    else if (schema.enum || schema.pattern)
      wrong.push('', 'OWNER', ...injections, '__proto__', 'constructor');
    else wrong.push(...unreadableTexts.map((text) => `x${text}`));
    if (schema.maxLength !== undefined) {
      wrong.push('x'.repeat(schema.maxLength + 1));
      // Beyond the largest body that is read it would be cut off before anybody looks at it.
      if (schema.maxLength < 1_000_000) wrong.push('🜂'.repeat(schema.maxLength + 1));
      // A file may be longer than that.
      if (schema.maxLength < 100_000) wrong.push('x'.repeat(100_000));
    }
    if (schema.minLength !== undefined) wrong.push('');
  }
  if (types.includes('integer')) {
    wrong.push(...notNumbers, ...endlessNumbers);
    wrong.push(...hugeNumbers);
    if (schema.maximum !== undefined) wrong.push(schema.maximum + 1);
    if (schema.minimum !== undefined) wrong.push(schema.minimum - 1);
  }
  if (types.includes('boolean')) wrong.push('true', 1, 'x');
  return [random.pick(wrong), random.pick(wrong)];
}
