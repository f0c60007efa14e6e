import { expect, it } from 'vitest';
import { english } from '../texts/en/english.js';
import { writtenFacts } from './alert-facts.js';
import { pathOfAlert } from './path-of-alert.js';

it('says first what it is about, then what is to be known, with days as they are read', () => {
  const facts = {
    product: 'Umber',
    maker: 'Halden',
    shade: 'Warm 02',
    productId: 'p',
    pieces: 2,
    lastDay: '2026-12-24',
    daysLeft: null,
    held: true,
    reasons: ['expired', 'recalled'],
    lastGoodAt: '2026-12-01T23:30:00.000Z',
  };
  expect(writtenFacts(facts, english, (instant) => `at ${instant.slice(11, 16)}`)).toEqual([
    'Halden Umber Warm 02',
    'against expired, recalled',
    'last day 24 Dec 2026',
    'pieces 2',
    'on hold',
    'last good one at 23:30',
  ]);
});

it('says what is wrong before until when, and which lot before where it is', () => {
  const facts = {
    place: 'Shelf',
    openedAt: '2026-10-02T14:36:00.000Z',
    lotCode: 'H-1',
    lastDay: '2026-12-24',
    status: 'open too long',
  };
  expect(writtenFacts(facts, english, (instant) => instant.slice(0, 10))).toEqual([
    'state open too long',
    'last day 24 Dec 2026',
    'opened 2026-10-02',
    'lot H-1',
    'at Shelf',
  ]);
});

it.each([
  ['held where it came from', 'lot', 'L', {}, '/studios/s/stock/lots/L'],
  ['use-by near', 'container', 'C', {}, '/studios/s/stock/containers/C'],
  ['low stock', 'product', 'P', {}, '/studios/s/stock/levels'],
  ['use against a refusal', 'use', 'U', { sessionId: 'S' }, '/studios/s/records/sessions/S'],
  ['use against a refusal', 'use', 'U', {}, undefined],
  ['in transit too long', 'transfer', 'T', {}, undefined],
  ['recall open', 'recall', 'R', {}, '/studios/s/recalls/R'],
  ['recall notice found', 'recall notice', 'N', {}, '/studios/s/recalls/notices'],
  ['backup failed', 'studio', 's', {}, '/studios/s/records/backups'],
  ['drill due', 'studio', 's', {}, '/studios/s/recalls/drills'],
])('leads from “%s” of a %s to where something can be done', (kind, subjectKind, subjectId, facts, path) => {
  expect(pathOfAlert('s', { kind, subjectKind, subjectId, facts })).toBe(path);
});
