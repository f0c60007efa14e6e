import { describe, expect, it } from 'vitest';
import { processorMilliseconds } from '../../../tests/support/processor-time.js';
import { maximumXmlDepth, maximumXmlMarks, readXmlFile } from './xml-file.js';

const faultOf = (text: string) => readXmlFile(text).faults[0];
const nested = (levels: number) => `${'<a>'.repeat(levels)}x${'</a>'.repeat(levels)}`;

describe('an XML text', () => {
  it('is read with its elements, attributes and texts, prefixes left out', () => {
    const { root } = readXmlFile(
      '\uFEFF<?xml version="1.0" encoding="UTF-8"?>\n<!-- x --><r:report xmlns:r="urn:x" week=" 7 "><n a="1"><![CDATA[<b> & ]]>c</n><n>d<br/>e<p>f</p><p>g</p></n></r:report>',
    );
    expect(root?.name).toBe('report');
    expect(root?.attributes.get('week')).toBe('7');
    expect(root?.elements.map(({ name, text }) => [name, text.replace(/ +/g, ' ')])).toEqual([
      ['n', '<b> & c'],
      ['n', 'd e f g'],
    ]);
  });

  it('that is broken says from where on', () => {
    expect(faultOf('<a>\n<b></a>')).toEqual({
      row: 2,
      column: null,
      message: expect.stringMatching(/^From line 2, character \d+ on, .*Missing end tag for element b/),
    });
    for (const text of [
      '<a',
      '<a>&amp</a>',
      '<a b=1/>',
      '<a/><a/>',
      'text',
      '<a>\u0000</a>',
      '{"results":[]}',
    ])
      expect(faultOf(text)?.message, text).toContain('cannot be read as XML');
    for (const text of ['', ' \n', '\uFEFF']) expect(faultOf(text)?.message).toContain('empty');
  });

  it('puts in no entity that a document type declares, within or outside, and stays as small as it is', () => {
    const laughs = Array.from(
      { length: 9 },
      (_, level) => `<!ENTITY lol${level + 1} "${`&lol${level};`.repeat(10)}">`,
    ).join('\n');
    const bomb = `<!DOCTYPE lolz [<!ENTITY lol0 "lol">${laughs}]><lolz>&lol9;</lolz>`;
    expect(faultOf(bomb)?.message).toContain('&lol9;');
    expect(faultOf(bomb.replace('&lol9;', '&lol0;'))?.message).toContain('&lol0;');
    expect(faultOf('<!DOCTYPE a [<!ENTITY x SYSTEM "file:///etc/passwd">]><a>&x;</a>')?.message).toContain(
      '&x;',
    );
    expect(
      faultOf('<!DOCTYPE a [<!ENTITY x SYSTEM "http://127.0.0.1:9/x">]><a b="&x;"/>')?.message,
    ).toContain('&x;');
    expect(faultOf('<!DOCTYPE a [<!ENTITY % x SYSTEM "file:///etc/passwd"> %x;]><a/>')).toBeUndefined();
    // Declared and not used, or redefining one of the five: without effect.
    const { root } = readXmlFile('<!DOCTYPE a [<!ENTITY amp "many"><!ENTITY b "c">]><a>&amp;&#65;&#x42;</a>');
    expect(root?.text).toBe('&AB');
  });

  it('that is too deep is refused, however deep', () => {
    expect(readXmlFile(nested(maximumXmlDepth)).faults).toEqual([]);
    for (const levels of [maximumXmlDepth + 1, 1_000, 190_000])
      expect(faultOf(nested(levels))?.message).toContain('deep in each other');
    expect(faultOf('<a>'.repeat(390_000))?.message).toContain('deep in each other');
  });

  it('that has more marks than are taken is refused before it is read', () => {
    const marks = (count: number) => `<r>${'<a/>'.repeat(count - 2)}</r>`;
    expect(readXmlFile(marks(maximumXmlMarks)).root?.elements).toHaveLength(maximumXmlMarks - 2);
    expect(faultOf(marks(maximumXmlMarks + 1))?.message).toContain(`more than ${maximumXmlMarks} marks`);
  });

  /** Each takes well under a second here; whatever grew with the square of the length would take minutes. */
  it.each([
    ['open comments', `<a>${'<!--'.repeat(90_000)}`],
    ['one long line that breaks at its end', `<a>${'x'.repeat(3_500_000)}`],
    ['many attributes', `<a ${Array.from({ length: 200_000 }, (_, index) => `a${index}=""`).join(' ')}/>`],
    ['many references', `<a>${'&amp;'.repeat(700_000)}</a>`],
    ['characters of two halves', `<a>${'😀'.repeat(900_000)}</a>`],
  ])('of several megabytes is read or refused in seconds: %s', async (_, text) => {
    expect(await processorMilliseconds(() => readXmlFile(text))).toBeLessThan(5_000);
  });
});
