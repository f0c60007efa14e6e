import { describe, expect, it } from 'vitest';
import { meantContainer } from '../../../sessions/meant-container.js';
import {
  admit,
  noneLeft,
  type Reason,
  refusalCodes,
  type TrayFacts,
  warningCodes,
} from '../../../sessions/tray-rules.js';
import type { TrayThing } from '../../../sessions/tray-thing.js';
import { reasonText } from '../reason-text.js';
import { german } from './german.js';

const at = '2026-03-10T10:00:00.000Z';
const timeZone = 'Europe/Vienna';

const bottle = (given: Partial<TrayThing> = {}): TrayThing => ({
  containerId: 'bottle-1',
  lotId: 'lot-1',
  productId: 'umber',
  label: 'Halden Umber',
  labelCode: 'A00000000000',
  lotCode: 'U12',
  stockForm: 'container',
  isPigment: true,
  state: 'opened',
  receivedAt: '2026-01-05T08:00:00.000Z',
  ownerId: null,
  pieces: 1,
  reservedPieces: 0,
  holds: [],
  useByLastDay: '2027-12-31',
  openedAt: '2026-03-01T09:00:00.000Z',
  openedLife: 'P12M',
  assumedOpenedLife: null,
  usableThrough: null,
  ...given,
});
const sealed = bottle({ containerId: 'sealed', state: 'sealed', openedAt: null });

const judge = (thing: TrayThing, given: Partial<TrayFacts> = {}): Reason[] =>
  admit(
    {
      thing,
      others: [],
      symbolUseBy: null,
      symbolIsOwnLabel: false,
      serialTaken: false,
      linesOnTray: 0,
      another: false,
      hasSerial: false,
      onKitList: 'there is no kit list',
      artistId: 'mira',
      touchUpBy: null,
      ...given,
    },
    at,
    timeZone,
  ).reasons;

const asked = (things: TrayThing[], lotIds: string[] | null): Reason[] => {
  const meant = meantContainer({ productIds: ['umber'], lotIds, containerId: null }, things, at, timeZone);
  return meant.kind === 'ask' ? [meant.reason] : [];
};

/** What the rules themselves give for each of their reasons, with and without something to take instead. */
const given: Reason[] = [
  ...judge(
    bottle({
      state: 'practice only',
      useByLastDay: '2026-01-31',
      holds: [
        { kind: 'recall', reason: 'notice 7', on: 'parent lot' },
        { kind: 'quarantine', reason: 'seal broken', on: 'lot' },
      ],
    }),
    { others: [sealed], serialTaken: true },
  ),
  ...judge(bottle({ openedAt: '2024-01-01T09:00:00.000Z' })),
  ...judge(bottle(), { symbolUseBy: '2026-02-01' }),
  ...judge(bottle({ state: 'discarded', pieces: 0, lotCode: null })),
  ...judge(bottle({ stockForm: 'pieces', pieces: 2, reservedPieces: 2 })),
  noneLeft('Halden Umber', null),
  ...judge(bottle({ useByLastDay: null, openedAt: null, state: 'sealed' })),
  ...judge(bottle(), { symbolUseBy: '2028-02-01' }),
  ...judge(bottle(), { symbolUseBy: '2028-02-01', symbolIsOwnLabel: true }),
  ...judge(bottle({ useByLastDay: '2026-04-01', ownerId: 'ana' }), {
    touchUpBy: '2026-04-19',
    onKitList: 'no',
  }),
  ...judge(sealed, { others: [bottle()] }),
  ...judge(bottle({ stockForm: 'pieces', state: 'sealed', openedAt: null, pieces: 9 }), { linesOnTray: 1 }),
  ...asked([bottle(), bottle({ containerId: 'bottle-2' })], ['lot-1']),
  ...asked([bottle(), bottle({ containerId: 'bottle-2', lotId: 'lot-2' })], null),
];

describe('a reason in German', () => {
  it('is tried here for every code there is', () => {
    const questions = ['another one?', 'which container?', 'which lot?'];
    expect(new Set(given.map(({ code }) => code))).toEqual(
      new Set([...refusalCodes, ...warningCodes, ...questions]),
    );
  });

  it.each(given.map((reason) => [reason.code, reason] as const))(
    'is a whole sentence: %s',
    (_code, reason) => {
      const said = reasonText(german, reason);
      expect(said).not.toBe(reason.message);
      expect(said).not.toMatch(/undefined|null|NaN|\d{4}-\d{2}-\d{2}/);
      expect(said).toMatch(/[.?]$/);
      // Nothing of what was shown is left out.
      const { lotCode, reason: why } = reason.facts;
      if (reason.code !== 'already used' && lotCode && reason.message.includes(`lot ${lotCode}`)) {
        expect(said).toContain(`Charge ${lotCode}`);
      }
      if (reason.code === 'on hold' && why) expect(said).toContain(why);
    },
  );
});
