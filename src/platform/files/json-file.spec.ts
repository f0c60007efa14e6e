import { describe, expect, it } from 'vitest';
import { readJsonFile } from './json-file.js';

const faultOf = (text: string) => readJsonFile(text).faults[0];

describe('a JSON text', () => {
  it('is read, with or without a byte order mark', () => {
    expect(readJsonFile('\uFEFF {"a":[1]}\n')).toEqual({ value: { a: [1] }, faults: [] });
    expect(readJsonFile('null')).toEqual({ value: null, faults: [] });
  });

  it('that is broken says from where on', () => {
    expect(faultOf('{"a":1,\n"b" 2}')).toEqual({
      row: 2,
      column: null,
      message: 'From line 2, character 5 on, the file is no JSON. Export it anew.',
    });
    for (const text of ['{"a":', '[', '"a', '<a/>', '{a:1}', 'NaN', "['a']"])
      expect(faultOf(text)?.message, text).toContain('no JSON');
    for (const text of ['', ' ', '\uFEFF\n']) expect(faultOf(text)?.message).toContain('empty');
  });

  it('is read however deep it is', () => {
    expect(readJsonFile(`${'['.repeat(500_000)}${']'.repeat(500_000)}`).faults).toEqual([]);
  });
});
