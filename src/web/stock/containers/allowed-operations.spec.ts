import { describe, expect, it } from 'vitest';
import { permissionsOf } from '../../../identity/permissions.js';
import type { ShownContainerView } from '../../../stock/container-list.views.js';
import { allowedOperations } from './allowed-operations.js';
import { containerCondition } from './container-condition.js';

type Judged = Pick<ShownContainerView, 'form' | 'state' | 'openedAt' | 'life' | 'holds' | 'onTrays'>;
const life: Judged['life'] = {
  status: 'usable',
  lastDay: '2027-01-31',
  lastInstant: null,
  daysLeft: 66,
  boundBy: 'use-by',
  openedLifeLastDay: null,
  openedLifeFrom: 'none',
  seen: '',
  allowed: '',
  next: '',
};
const sealed: Judged = {
  ...{ form: 'bottle', state: 'sealed', openedAt: null, life, holds: [] },
  onTrays: { lines: 0, pieces: 0 },
};
const bottle = { ...sealed, state: 'opened', openedAt: '2026-11-01T10:00:00Z' } as const;
const recall = { holdId: 'h', kind: 'recall', reason: 'recall notice', on: 'lot' } as const;
const artist = permissionsOf('artist');

describe('what may be recorded of a container', () => {
  it.each<[string, Judged, string[]]>([
    ['a sealed bottle', sealed, ['open', 'count', 'move', 'discard', 'return']],
    [
      'an opened bottle',
      bottle,
      ['count', 'move', 'finish', 'discard', 'return', 'correct opened date', 'undo opening'],
    ],
    [
      'an opened bottle on a tray',
      { ...bottle, onTrays: { lines: 1, pieces: 1 } },
      ['count', 'move', 'finish', 'discard', 'return', 'correct opened date'],
    ],
    ['a box', { ...sealed, form: 'box' }, ['count', 'move', 'waste pieces', 'discard', 'return']],
    [
      'an expired bottle',
      { ...sealed, life: { ...life, status: 'expired' } },
      ['open', 'count', 'move', 'discard', 'return', 'keep for practice'],
    ],
    [
      'an expired bottle that is recalled',
      { ...sealed, life: { ...life, status: 'expired' }, holds: [recall] },
      ['open', 'count', 'move', 'discard', 'return'],
    ],
    ['a discarded bottle', { ...sealed, state: 'discarded' }, []],
  ])('%s, by an artist', (_, container, offered) => {
    expect(allowedOperations(container, artist)).toEqual(offered);
  });

  it('nothing by an auditor', () => {
    for (const container of [sealed, bottle]) {
      expect(allowedOperations(container, permissionsOf('auditor'))).toEqual([]);
    }
  });
});

describe('what is to be known first of a container', () => {
  const near = { useByNearDays: 30, openedLifeEndingDays: 7 };
  it.each<[Judged, string, string]>([
    [sealed, 'usable', 'good'],
    [{ ...sealed, life: { ...life, daysLeft: 30 } }, 'ends soon', 'care'],
    [{ ...bottle, life: { ...life, daysLeft: 30 } }, 'usable', 'good'],
    [{ ...sealed, life: { ...life, status: 'expired' } }, 'expired', 'fault'],
    [{ ...sealed, life: { ...life, status: 'expired' }, holds: [recall] }, 'recalled', 'fault'],
    [{ ...sealed, holds: [{ ...recall, kind: 'quarantine' }] }, 'on hold', 'fault'],
    [{ ...sealed, state: 'practice only', life: { ...life, status: 'expired' } }, 'practice only', 'over'],
    [{ ...sealed, state: 'discarded', holds: [recall] }, 'discarded', 'over'],
    [{ ...sealed, life: { ...life, status: 'no date known', daysLeft: null } }, 'no date known', 'care'],
  ])('%j is %s', (container, condition, standing) => {
    expect(containerCondition(container, near)).toEqual({ condition, standing });
  });
});
