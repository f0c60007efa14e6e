import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { alertText, type ToldAlert } from './alert-text.js';

const pigment = { product: 'Brow Umber', shade: '03', maker: 'Halden' };
const lot = { ...pigment, lotCode: 'B-2041', useBy: '2026-12-31' };
const told = (kind: string, facts: Record<string, unknown>, more: Partial<ToldAlert> = {}) =>
  alertText({
    event: 'opened',
    kind,
    severity: 'warning',
    subjectKind: 'lot',
    facts,
    isClosed: false,
    timeZone: 'Europe/Vienna',
    ...more,
  });
const all = (text: ReturnType<typeof alertText>) =>
  [text.title, ...text.parts.flatMap(({ heading, lines }) => [heading ?? '', ...lines])].join('\n');
const caution = /label, local codes and your professional judgement come first/;

/** Every kind there is, with what it says is wrong and what it says to do; those that could hurt defer to the label. */
const kinds: [kind: string, facts: Record<string, unknown>, wrong: string, next: string, hurts: boolean][] = [
  [
    'low stock',
    { ...pigment, usablePieces: 1, minimumPieces: 3 },
    '1 usable, low at 3.',
    'Order more',
    false,
  ],
  [
    'use-by near',
    { ...lot, lastDay: '2026-12-31', places: ['Shelf'] },
    'may be used through 2026-12-31',
    'Use it first',
    false,
  ],
  [
    'opened life ending',
    { ...lot, labelCode: 'C-7', lastDay: '2026-12-03' },
    'open container may be used through 2026-12-03',
    'discard it after that day',
    false,
  ],
  [
    'expired on the shelf',
    { ...lot, lastDay: '2026-11-01' },
    'past its last day, 2026-11-01',
    'Take it off the shelf',
    true,
  ],
  [
    'held stock on hand',
    { ...lot, holdKinds: ['recall'], heldSince: '2026-11-20T08:30:00.000Z', whatToDo: 'set it apart' },
    'on hold since 2026-11-20 09:30 (Europe/Vienna) (recall)',
    'Set it apart',
    true,
  ],
  [
    'held stock on hand',
    { ...lot, whatToDo: 'return or destroy it as the recall says' },
    'still here',
    'as the recall says',
    true,
  ],
  [
    'held stock on hand',
    { ...lot, whatToDo: 'decide on it' },
    'still here',
    'released, returned or wasted',
    true,
  ],
  [
    'use against a refusal',
    { ...lot, reasons: ['recalled', 'on hold'], sessionId: 's' },
    'although it is recalled, on hold',
    'whether the client has to be told',
    true,
  ],
  [
    'same code, other use-by',
    { ...lot, otherUseBy: ['2027-06-30'] },
    'with the use-by 2027-06-30 too',
    'Compare with the labels',
    false,
  ],
  [
    'kit cannot be filled',
    { procedure: 'Powder brows', day: '2026-12-04', lacking: ['2 × 3RL'] },
    'The session on 2026-12-04 lacks 2 × 3RL',
    'Order or fetch what lacks',
    false,
  ],
  [
    'touch-up mix out of date',
    { ...lot, because: 'past its use-by', anotherLot: 'none here', closesOn: '2027-01-10' },
    'owed until 2027-01-10',
    'order the same shade',
    true,
  ],
  [
    'touch-up mix out of date',
    { ...lot, anotherLot: 'here' },
    'cannot all be used',
    'the other lot that is here',
    true,
  ],
  [
    'delivery late',
    { supplier: 'Fjord Supplies', reference: 'PO-9', expectedOn: '2026-11-24' },
    'expected on 2026-11-24',
    'Ask the supplier',
    false,
  ],
  [
    'order due',
    { supplier: 'Fjord Supplies', orderOn: '2026-11-24', lines: 3 },
    '3 products are to be ordered by 2026-11-24',
    'draft the order',
    false,
  ],
  [
    'order not sent',
    {
      supplier: 'Fjord Supplies',
      reference: 'Order 12',
      cause: 'The mail server refused the recipient (550).',
    },
    'The mail server refused the recipient (550)',
    'send the order again',
    false,
  ],
  [
    'no plan made',
    {
      day: '2026-11-24',
      cause: 'It needs more than 2048 MB of memory, which is the most that a plan may take.',
    },
    'to order on 2026-11-24 could not be worked out: it was tried several times. It needs more than 2048 MB',
    'Have a plan made again',
    false,
  ],
  [
    'in transit too long',
    { direction: 'in', sentOn: '2026-11-10', lines: 2 },
    'Goods sent to here on 2026-11-10',
    'Ask the other studio',
    false,
  ],
  [
    'held where it came from',
    { ...lot, holdKinds: ['quarantine'] },
    'put the same goods on hold',
    'Set aside what is left',
    true,
  ],
  [
    'recall open',
    { recall: 'Umber recall', affectedLots: 2, undecidedLots: 0 },
    'affected: 2; still to be decided: 0.',
    'Stop using them',
    true,
  ],
  ['recall notice found', { reference: 'N-1' }, 'A published notice names', 'Read it now', true],
  ['drill due', { dueOn: '2026-12-01' }, 'due by 2026-12-01', 'Start the drill', false],
  [
    'backup failed',
    { cause: 'no space is left on the disk', lastGoodAt: null },
    'no space is left on the disk. There is no good backup.',
    'make a backup now',
    false,
  ],
  [
    'backup overdue',
    { lastGoodAt: '2026-11-20T03:00:00.000Z' },
    'The last good one is of 2026-11-20 04:00 (Europe/Vienna).',
    'make one now',
    false,
  ],
  [
    'notice source failing',
    { address: 'https://notices.example/x', cause: 'It answered 503.' },
    'not read any more from https://notices.example/x',
    'read the published notices yourself',
    false,
  ],
  [
    'queue unhealthy',
    { cause: 'Redis is not reached', whatToDo: 'Start Redis again.' },
    '(Redis is not reached)',
    'Start Redis again.',
    false,
  ],
];

describe('what is told of an alert', () => {
  it.each(kinds)('of the kind %s: %j', (kind, facts, wrong, next, hurts) => {
    const { title, parts } = told(kind, facts);
    expect(title).not.toMatch(/undefined|null|NaN/);
    expect(parts[0]?.lines[0]).toContain(wrong);
    const toDo = parts.find(({ heading }) => heading === 'What to do next');
    expect(toDo?.lines[0]).toContain(next);
    expect(caution.test(all({ title, parts }))).toBe(hurts);
  });

  it('names product, maker, lot and place', () => {
    const text = told('expired on the shelf', { ...lot, places: ['Shelf 2', 'Fridge'], pieces: 4 });
    expect(text.title).toBe('Expired on the shelf: Brow Umber 03 by Halden, lot B-2041');
    expect(text.parts[1]).toEqual({
      heading: 'What it is about',
      lines: [
        'Product: Brow Umber 03 by Halden',
        'Lot: B-2041',
        'Use-by: 2026-12-31',
        'Places: Shelf 2, Fridge',
        'Pieces: 4',
      ],
    });
  });

  it.each([
    ['worse', 'Worse now: Low stock'],
    ['due again', 'Due again: Low stock'],
    ['handed on', 'Nobody saw to it yet: Low stock'],
    ['given', 'For you to see to: Low stock'],
    ['closed', 'Over: Low stock'],
  ] as const)('that is %s is said at the beginning', (event, title) => {
    expect(told('low stock', {}, { event }).title).toBe(title);
  });

  it('that is over asks for nothing more', () => {
    const text = told('recall open', { recall: 'Umber recall' }, { event: 'closed' });
    expect(all(text)).toContain('nothing more is to be done');
    expect(all(text)).not.toMatch(/What to do next|Stop using/);
  });

  it('that was closed before it goes out says so, and asks for nothing more', () => {
    const text = told('recall open', { recall: 'Umber recall' }, { event: 'handed on', isClosed: true });
    expect(text.title).toBe('Closed meanwhile: Recall open: Umber recall');
    expect(text.parts[0]?.lines).toEqual([
      'This was closed before the message went out; nothing more is to be done about it.',
    ]);
    expect(all(text)).not.toMatch(/What to do next|Stop using|Urgent|Nobody saw/);
  });

  it('leaves what only looks like an instant as it is', () => {
    const lotCode = '2026-99-99T99:99:99Z';
    expect(all(told('low stock', { lotCode }))).toContain(`Lot: ${lotCode}`);
  });

  it('says how pressing it is', () => {
    expect(all(told('low stock', {}, { severity: 'urgent' }))).toContain('Urgent');
    expect(all(told('low stock', {}, { severity: 'notice' }))).toContain('To know.');
  });

  it('of a kind nobody wrote words for is readable all the same', () => {
    const text = told('fridge too warm', { place: 'Fridge', warmestDegrees: 12 });
    expect(text.title).toBe('Fridge too warm');
    expect(all(text)).toContain('Warmest degrees: 12');
    expect(all(text)).toContain('Open it in the app');
    expect(told('constructor', {}).title).toBe('Constructor');
  });

  it('leaves out ids, what is unknown and what is no plain value', () => {
    const text = all(
      told('low stock', { productIds: ['0197'], lotId: '0198', lotCode: null, deep: { client: 'x' } }),
    );
    expect(text).not.toMatch(/0197|0198|Lot:|client/);
  });

  it('is short lines without unseen marks, whatever the facts hold', () => {
    const hostile = fc.oneof(
      fc.string({ unit: 'binary', maxLength: 600 }),
      fc.constantFrom(
        'a\r\nBcc: x@y.example',
        '\u202Etxt.exe',
        '\u2066x\u2069',
        '<b>&</b>',
        '\uD800',
        'x'.repeat(9_000),
      ),
    );
    const facts = fc.dictionary(
      fc.oneof(fc.constantFrom('product', 'maker', 'lotCode', 'reasons', 'recall', '__proto__'), hostile),
      fc.oneof(hostile, fc.array(hostile, { maxLength: 40 }), fc.integer(), fc.constant(null), fc.boolean()),
      { maxKeys: 40 },
    );
    fc.assert(
      fc.property(fc.constantFrom(...kinds.map(([kind]) => kind), 'other'), facts, (kind, given) => {
        const { title, parts } = told(kind, given);
        const lines = [title, ...parts.flatMap((part) => part.lines)];
        expect(lines.length).toBeLessThan(20);
        for (const line of lines) {
          expect([...line].length).toBeLessThanOrEqual(300);
          expect(line).not.toMatch(/[\p{Cc}\p{Cs}\p{Zl}\p{Zp}\u202A-\u202E\u2066-\u2069\u200E\u200F\u061C]/u);
        }
      }),
    );
  });
});
