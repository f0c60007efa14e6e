import { expect, it } from 'vitest';
import type { TrayLineView } from '../../../sessions/tray.views.js';
import { completionOf, outcomeOf, untouched } from './completion-draft.js';

const line = (id: string, others: Partial<TrayLineView> = {}): TrayLineView => ({
  id,
  containerId: id,
  productId: 'product',
  lotId: 'lot',
  label: 'Fine liner',
  labelCode: 'B123',
  lotCode: 'CL-9',
  stockForm: 'pieces',
  isPigment: false,
  pieces: 1,
  knownBy: 'typed',
  admittedAt: '2026-11-25T09:00:00Z',
  state: 'on tray',
  settledAs: null,
  refusedNow: [],
  ...others,
});
const bottle = (id: string) => line(id, { stockForm: 'container', isPigment: true, pieces: 0 });
const mixed = new Set(['mixed']);

it('takes it that pieces and mixed bottles were used and other bottles go back', () => {
  const lines = [line('piece'), bottle('mixed'), bottle('loose')];
  expect(lines.map((each) => outcomeOf(untouched, each, mixed))).toEqual(['used', 'used', 'back unopened']);
});

it('names what was said only, so that the service asks of what is put on hold meanwhile', () => {
  const draft = { ...untouched, outcomes: { piece: 'opened unused' as const } };
  expect(completionOf(draft, [line('piece'), line('other piece')], mixed, 'me')).toEqual({
    lines: [{ trayLineId: 'piece', outcome: 'opened unused' }],
    besides: [],
    complications: null,
    signedBy: 'me',
  });
});

it.each(['recalled', 'on hold'])('waits for a word on what is %s by now', (code) => {
  const held = line('piece', { refusedNow: [{ code, message: '' }] });
  expect(completionOf(untouched, [held], mixed, 'me')).toBeUndefined();
  const said = {
    ...untouched,
    outcomes: { piece: 'used' as const },
    reasons: { piece: ' before the notice ' },
  };
  expect(completionOf(said, [held], mixed, 'me')?.lines).toEqual([
    { trayLineId: 'piece', outcome: 'used', reason: 'before the notice' },
  ]);
});

it('asks nothing of what expired while it lay there, for dates were judged when it was admitted', () => {
  const expired = line('piece', { refusedNow: [{ code: 'expired', message: '' }] });
  expect(completionOf(untouched, [expired], mixed, 'me')).toBeDefined();
});

it('sends no amount of what was not used', () => {
  const draft = { ...untouched, drops: { loose: 3 } };
  const back = { ...draft, outcomes: { loose: 'opened unused' as const } };
  expect(completionOf(back, [bottle('loose')], mixed, 'me')?.lines).toEqual([
    { trayLineId: 'loose', outcome: 'opened unused' },
  ]);
  expect(
    completionOf({ ...draft, outcomes: { loose: 'used' } }, [bottle('loose')], mixed, 'me')?.lines,
  ).toEqual([{ trayLineId: 'loose', outcome: 'used', drops: 3 }]);
});

it('waits for the complications when there were some', () => {
  const some = { ...untouched, hasComplications: true };
  expect(completionOf(some, [], mixed, 'me')).toBeUndefined();
  expect(completionOf({ ...some, complications: 'swelling' }, [], mixed, 'me')?.complications).toBe(
    'swelling',
  );
});
