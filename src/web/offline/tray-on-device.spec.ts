import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { propertySettings } from '../../../tests/support/property-settings.js';
import type { DayFacts, DayLine } from '../../sessions/day-facts.js';
import type { RecordedContainer } from '../../sessions/tray-thing.js';
import { trayOnDevice } from './tray-on-device.js';

const at = '2026-03-10T09:00:00.000Z';
const container = (containerId: string, changed: Partial<RecordedContainer> = {}): RecordedContainer => ({
  ...{
    containerId,
    lotId: `lot of ${containerId}`,
    productId: 'liner',
    form: 'box',
    labelCode: 'A00000000000',
  },
  ...{ state: 'sealed', ownerId: null, openedAt: null, receivedAt: '2026-01-05T08:00:00.000Z', pieces: 9 },
  ...{ code: 'N-1', useBy: '2027-12-31', kind: 'cartridge', makerName: 'Corvin', productName: '1207RL' },
  ...{ shade: null, stockForm: 'pieces', openedLife: null, usableThrough: null, holds: [] },
  ...changed,
});
const umber: Partial<RecordedContainer> = {
  ...{ productId: 'umber', form: 'bottle', kind: 'pigment', stockForm: 'container', makerName: 'Halden' },
  ...{ productName: 'Umber', code: 'HU-118', pieces: 1 },
};
const containers = [
  container('box'),
  container('other box', { productId: 'like liner', productName: '1207RL-N' }),
  container('bottle', umber),
];
const line = (id: string, containerId: string, pieces = 1, sessionId = 'here'): DayLine => {
  const { lotId = '', productId = '' } = containers.find((one) => one.containerId === containerId) ?? {};
  return {
    ...{ id, sessionId, containerId, lotId, productId, pieces, serial: null },
    knownBy: 'typed',
    admittedAt: at,
  };
};
type KitItems = DayFacts['sessions'][number]['kitItems'];
const facts = (lines: DayLine[], kitItems: KitItems = null, changed: Partial<DayFacts> = {}): DayFacts => ({
  ...{ studioId: 'studio', asOf: at, day: '2026-03-10', timeZone: 'Europe/Vienna', assumedOpenedLife: null },
  sessions: ['here', 'elsewhere'].map((id) => ({
    ...{ id, state: 'in setup', clientReference: 'C7K2', procedureName: 'Powder brows', artistId: 'mira' },
    ...{ visitKind: 'refresh', plannedStart: null, touchUpFromDays: 30, touchUpToDays: 40, kitItems },
  })),
  ...{ containers, labels: [], gtins: [], lotCodes: [], lines, usedSerials: [] },
  pools: [{ productIds: ['liner', 'like liner'], poolKeys: ['7RL 0.35'] }],
  ...changed,
});
const tray = (known: DayFacts, when = at) => trayOnDevice(known, 'here', when);

describe('a tray as a device knows it', () => {
  it('is not known of a session that is not one of the day', () => {
    expect(trayOnDevice(facts([]), 'of tomorrow', at)).toBeUndefined();
  });

  it('shows what lies on it and on no other tray', () => {
    const lines = [line('1', 'box'), line('2', 'bottle', 0), line('3', 'box', 1, 'elsewhere')];
    expect(tray(facts(lines))?.lines).toMatchObject([
      { id: '1', label: 'Corvin 1207RL', lotCode: 'N-1', pieces: 1, state: 'on tray', refusedNow: [] },
      { id: '2', label: 'Halden Umber', lotCode: 'HU-118', pieces: 0, isPigment: true },
    ]);
  });

  it.each<[string, Partial<RecordedContainer>, string]>([
    ['a recall', { holds: [{ kind: 'recall', reason: 'notice', on: 'lot' }] }, 'recalled'],
    ['its use-by', { useBy: '2026-03-09' }, 'expired'],
    [
      'an opened life that is over',
      { state: 'opened', openedAt: '2025-01-01T09:00:00.000Z', openedLife: 'P6M' },
      'open too long',
    ],
    ['being recorded as gone', { state: 'discarded' }, 'none left'],
  ])('marks what may not be used any more for %s', (_, changed, code) => {
    const known = facts([line('1', 'bottle', 0)], null, {
      containers: [container('bottle', { ...umber, ...changed })],
    });
    expect(tray(known)?.lines[0]?.refusedNow.map((reason) => reason.code)).toEqual([code]);
  });

  it("judges dates on the studio's day, not on that in UTC", () => {
    const known = facts([line('1', 'bottle', 0)], null, {
      containers: [container('bottle', { ...umber, useBy: '2026-03-10' })],
    });
    expect(tray(known, '2026-03-10T22:59:00.000Z')?.lines[0]?.refusedNow).toEqual([]);
    expect(tray(known, '2026-03-10T23:00:00.000Z')?.lines[0]?.refusedNow).toMatchObject([
      { code: 'expired' },
    ]);
  });

  it('lacks what the kit list names, where a bottle counts as one and what stands in for another serves its line', () => {
    const kit: KitItems = [
      { productId: 'umber', configuration: null, quantity: 1, label: 'Halden Umber' },
      { productId: null, configuration: '7RL 0.35', quantity: 3, label: '7RL 0.35' },
      { productId: null, configuration: '9F', quantity: 1, label: '9F' },
    ];
    const laid = [line('1', 'bottle', 0), line('2', 'box'), line('3', 'other box')];
    expect(tray(facts(laid, kit))?.lacking).toEqual([
      { productId: null, configuration: '7RL 0.35', label: '7RL 0.35', quantityPieces: 1 },
      { productId: null, configuration: '9F', label: '9F', quantityPieces: 1 },
    ]);
    expect(tray(facts(laid))?.lacking).toEqual([]);
  });

  it('shows each line of its session once in their order, and lacks less the more lies on it', () => {
    const kit: KitItems = [{ productId: null, configuration: '7RL 0.35', quantity: 4, label: '7RL 0.35' }];
    const laid = fc.array(fc.record({ box: fc.constantFrom('box', 'other box'), isHere: fc.boolean() }), {
      maxLength: 8,
    });
    fc.assert(
      fc.property(laid, (all) => {
        const lines = all.map(({ box, isHere }, index) =>
          line(`${index}`, box, 1, isHere ? 'here' : 'elsewhere'),
        );
        const shown = tray(facts(lines, kit));
        const here = lines.filter(({ sessionId }) => sessionId === 'here');
        expect(shown?.lines.map(({ id }) => id)).toEqual(here.map(({ id }) => id));
        const lacking = shown?.lacking.reduce((sum, { quantityPieces }) => sum + quantityPieces, 0);
        expect(lacking).toBe(Math.max(0, 4 - here.length));
      }),
      propertySettings('a tray on a device', 200),
    );
  });
});
