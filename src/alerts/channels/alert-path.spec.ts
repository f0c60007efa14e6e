import { describe, expect, it } from 'vitest';
import { placeOf } from '../../web/frame/places.js';
import { alertPath } from './alert-path.js';

const studioId = '0197aaaa-0000-7000-8000-000000000001';
const subjectId = '0197aaaa-0000-7000-8000-000000000002';

describe('where an alert leads', () => {
  it.each([
    ['lot', 'expired on the shelf', {}, `stock/lots/${subjectId}`],
    ['lot', 'held stock on hand', {}, `stock/lots/${subjectId}`],
    ['container', 'opened life ending', {}, `stock/containers/${subjectId}`],
    ['product', 'low stock', {}, 'stock/levels'],
    ['configuration pool', 'low stock', {}, 'stock/levels'],
    ['use', 'use against a refusal', { sessionId: subjectId }, `records/sessions/${subjectId}`],
    ['session', 'kit cannot be filled', {}, `records/sessions/${subjectId}`],
    ['session', 'touch-up mix out of date', {}, `records/sessions/${subjectId}`],
    ['expected delivery', 'delivery late', {}, 'stock/expected'],
    ['supplier', 'order due', {}, 'ordering'],
    ['purchase order', 'order not sent', {}, `ordering/orders/${subjectId}`],
    ['recall', 'recall open', {}, `recalls/${subjectId}`],
    ['recall notice', 'recall notice found', {}, 'recalls/notices'],
    ['studio', 'drill due', {}, 'recalls/drills'],
    ['studio', 'backup failed', {}, 'records/backups'],
    ['studio', 'backup overdue', {}, 'records/backups'],
    ['studio', 'queue unhealthy', {}, 'alerts/not-sent'],
    ['studio', 'no plan made', {}, 'ordering'],
  ])('about a %s, %s %j, is a page of the app: %4$s', (subjectKind, kind, facts, below) => {
    const path = alertPath(studioId, { kind, subjectKind, subjectId, facts });
    expect(path).toBe(`/studios/${studioId}/${below}`);
    expect(placeOf(path ?? '')).toMatchObject({ studioId });
  });

  it.each([
    ['use', 'use against a refusal'],
    ['notice source', 'notice source failing'],
    ['something new', 'unheard of'],
  ])('about a %s, %s, is nowhere', (subjectKind, kind) => {
    expect(alertPath(studioId, { kind, subjectKind, subjectId, facts: {} })).toBeUndefined();
  });
});
