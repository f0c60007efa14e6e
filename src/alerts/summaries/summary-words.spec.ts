import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type SummaryLine, type SummaryPart, summaryPartNames } from './summary-choice.js';
import { summaryText } from './summary-words.js';

const umber = { product: 'Umber', shade: '2', maker: 'Halden Ink', lotCode: 'A1' };

function part(name: SummaryPart['name'], kind: string, facts: object, more = 0): SummaryPart {
  const line: SummaryLine = {
    alertId: 'alert',
    kind,
    subjectKind: 'lot',
    subjectId: 'lot',
    severity: 'warning',
    facts: { ...facts },
  };
  return { name, lines: [line], more };
}

const said = (...parts: SummaryPart[]) => summaryText({ day: '2026-06-15', parts });

const awkward = fc.constantFrom('\n', '\r', '\t', '\u2028', '\u202e', '\ud800', '\0', '<', 'ä', 'a', ' ');
const anyKind = fc.constantFrom('use-by near', 'low stock', 'recall open', 'something new');

describe('a morning summary in words', () => {
  it('names product, maker, lot, last day and place of what to use first', () => {
    const facts = { ...umber, lastDay: '2026-06-20', places: ['Shelf 1', 'Case'] };
    expect(said(part('use first', 'use-by near', facts))).toEqual({
      title: 'This morning, 2026-06-15: 1 to use first',
      parts: [
        {
          heading: 'Use first',
          lines: ['Umber 2 by Halden Ink, lot A1, usable through 2026-06-20, at Shelf 1 and Case'],
        },
      ],
    });
  });

  it('says of what to discard which day was its last', () => {
    const facts = { ...umber, labelCode: 'LW01', lastDay: '2026-06-10', places: ['Shelf 1'] };
    expect(said(part('discard', 'expired on the shelf', facts)).parts[0]?.lines).toEqual([
      'Umber 2 by Halden Ink, lot A1, label LW01, its last day was 2026-06-10, at Shelf 1',
    ]);
  });

  it('says of what to order how much is usable and at how much it is low', () => {
    const facts = { product: 'Liner', usablePieces: 0, minimumPieces: 3 };
    const pool = { configuration: '3RL', productIds: ['x'], usablePieces: 2, minimumPieces: 3 };
    expect(said(part('order', 'low stock', facts)).parts[0]?.lines).toEqual(['Liner, 0 usable, low at 3']);
    expect(said(part('order', 'low stock', pool)).parts[0]?.lines).toEqual(['3RL, 2 usable, low at 3']);
  });

  it('says of sessions at risk when and what they are, and what is lacking', () => {
    const kit = { procedure: 'Powder brows', day: '2026-06-18', lacking: ['1 × Halden Ink Umber'] };
    const mix = { ...umber, procedure: 'Lips', opensOn: '2026-07-01', closesOn: '2026-07-11' };
    expect(said(part('touch-ups at risk', 'kit cannot be filled', kit)).parts[0]?.lines).toEqual([
      'A kit cannot be filled: Powder brows on 2026-06-18, lacking 1 × Halden Ink Umber',
    ]);
    expect(said(part('touch-ups at risk', 'touch-up mix out of date', mix)).parts[0]?.lines).toEqual([
      'A touch-up mix will be out of date: Umber 2 by Halden Ink, lot A1, 2026-07-01 to 2026-07-11, Lips',
    ]);
  });

  it('says when there is more than it tells', () => {
    const text = said(part('order', 'low stock', { product: 'Liner', usablePieces: 1 }, 17));
    expect(text.title).toContain('18 to order');
    expect(text.parts[0]?.lines.at(-1)).toBe('… and 17 more in the app.');
  });

  it('says aloud that something is urgent', () => {
    const urgent = part('answer today', 'recall open', { recall: 'Umber' });
    urgent.lines = urgent.lines.map((line) => ({ ...line, severity: 'urgent' }));
    expect(said(urgent).parts[0]?.lines[0]).toMatch(/^Urgent – Recall open/);
  });

  it('says so when there is nothing to be done', () => {
    expect(said().title).toBe('This morning, 2026-06-15: nothing to be done');
  });

  it('keeps every line one line and short, whatever somebody called their things', () => {
    const anyFact = fc.oneof(
      fc.string({ unit: awkward, maxLength: 400 }),
      fc.array(fc.string()),
      fc.integer(),
      fc.object(),
    );
    const anyFacts = fc.dictionary(
      fc.constantFrom(
        'product',
        'shade',
        'maker',
        'lotCode',
        'places',
        'lastDay',
        'configuration',
        'procedure',
        'day',
      ),
      anyFact,
    );
    fc.assert(
      fc.property(fc.constantFrom(...summaryPartNames), anyKind, anyFacts, (name, kind, facts) => {
        const { title, parts } = said(part(name, kind, facts));
        for (const line of [title, ...parts.flatMap(({ lines }) => lines)]) {
          expect(line).not.toMatch(/[\p{Cc}\p{Zl}\p{Zp}]/u);
          expect([...line].length).toBeLessThanOrEqual(300);
          expect(line).not.toBe('');
        }
      }),
    );
  });
});
