import { v7 as uuidv7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { AlertPageView } from '../../src/alerts/alerts.views.js';
import { checkLabelCode, makeLabelCode } from '../../src/catalogue/own-label.js';
import type { ProductView } from '../../src/catalogue/products.views.js';
import type { DeliveryPageView, DeliveryView } from '../../src/stock/deliveries.views.js';
import type { CorrectedLotView } from '../../src/stock/lot-corrections.views.js';
import type { PlaceView } from '../../src/stock/places.views.js';
import type { ReceiptView } from '../../src/stock/receiving.views.js';
import { type ProblemBody, type RunningService, startService, strictestEngine } from '../support/service.js';

const bottleGtin = '09506000134352';
const packGtin = '19506000134359';

describe.each(strictestEngine)('receiving on %s', (engine) => {
  let service: RunningService;
  let shelf: PlaceView;
  let pigment: ProductView;
  let cartridge: ProductView;
  let counter = 0;

  beforeAll(async () => {
    service = await startService(engine);
    [shelf] = (await service.seen<PlaceView[]>('/places')) as [PlaceView];
    const maker = await service.made<{ id: string }>('/makers', { name: 'Morning Colour Works' });
    const add = (fields: object) => service.made<ProductView>('/products', { makerId: maker.id, ...fields });
    pigment = await add({ kind: 'pigment', name: 'Brow line', shade: 'Umber', volumeMicrolitres: 10_000 });
    cartridge = await add({ kind: 'cartridge', name: 'Fine', notation: '1003RL' });
    await service.made(`/products/${pigment.id}/gtins`, { gtin: bottleGtin });
    await service.made(`/products/${pigment.id}/gtins`, { gtin: packGtin, contentCount: 6 });
  });
  afterAll(() => service?.dispose());

  const newCode = () => `LOT-${++counter}`;
  const line = (fields: object = {}) => ({
    productId: pigment.id,
    codes: [{ kind: 'lot', code: newCode() }],
    useBy: '2035-06-30',
    quantity: 1,
    placeId: shelf.id,
    ...fields,
  });
  const send = (lines: object[], fields: object = {}) =>
    service.post<ReceiptView & ProblemBody & { lines: unknown[] }>('/deliveries', {
      origin: 'purchase',
      lines,
      ...fields,
    });
  const receive = async (lines: object[], fields: object = {}): Promise<ReceiptView> => {
    const answer = await send(lines, fields);
    if (answer.status !== 201) throw new Error(JSON.stringify(answer.body));
    return answer.body;
  };
  const deliveries = async () => (await service.seen<DeliveryPageView>('/deliveries?limit=200')).items;

  /** A session that is recorded afterwards, with one use of what was written down of a label. */
  const recordLateUse = async (use: object) => {
    const [owner] = await service.seen<{ id: string }[]>('/people');
    const client = await service.made<{ id: string }>('/clients', { name: 'Ida Sommer' });
    const procedure = await service.made<{ id: string }>('/procedures', {
      name: `Powder brows ${uuidv7()}`,
      bodyPlace: 'brows',
    });
    await service.made('/sessions/late', {
      source: 'paper',
      occurredAt: new Date(Date.now() - 86_400_000).toISOString(),
      clientId: client.id,
      artistId: owner?.id,
      procedureId: procedure.id,
      visitKind: 'first session',
      signedBy: owner?.id,
      uses: [{ knownBy: 'typed', drops: 1, ...use }],
    });
  };

  it('starts an empty studio with a shelf to put goods on', () => {
    expect(shelf).toMatchObject({ name: 'Shelf', kind: 'shelf', archived: false });
  });

  it('makes one labelled bottle for each that came, of one lot', async () => {
    const code = newCode();
    const { lines } = await receive([
      line({ codes: [{ kind: 'lot', code }], quantity: 3, useBy: '2035-02', unitCostMinor: 2_190 }),
    ]);
    expect(lines[0]).toMatchObject({
      quantityPieces: 3,
      unitCostMinor: 2_190,
      currency: 'EUR',
      lot: {
        code,
        codeState: 'printed',
        codes: [{ kind: 'lot', code }],
        useBy: '2035-02-28',
        useByPrecision: 'month',
        isNew: true,
      },
      holds: [],
      warnings: [],
    });
    const labels = lines[0]?.containers.map((container) => container.labelCode) ?? [];
    expect(new Set(labels).size).toBe(3);
    expect(labels.every((label) => checkLabelCode(label).ok)).toBe(true);
    expect(lines[0]?.containers[0]).toMatchObject({ form: 'bottle', pieces: 1, microlitres: 10_000 });
  });

  it('makes one box for all pieces of a line, counted in pieces only', async () => {
    const { lines } = await receive([line({ productId: cartridge.id, quantity: 20 })]);
    expect(lines[0]?.containers).toEqual([
      expect.objectContaining({ form: 'box', pieces: 20, microlitres: 0, state: 'sealed' }),
    ]);
  });

  it('joins goods of the same code and date to one lot, within a delivery and later, in boxes of their own', async () => {
    const code = newCode();
    const same = line({ productId: cartridge.id, codes: [{ kind: 'lot', code }], quantity: 20 });
    const first = await receive([same, same]);
    const later = await receive([
      {
        ...same,
        codes: [
          { kind: 'lot', code },
          { kind: 'batch', code: 'B-7' },
        ],
      },
    ]);
    const lots = [...first.lines, ...later.lines].map((received) => received.lot);
    expect(new Set(lots.map((lot) => lot.id)).size).toBe(1);
    expect(lots.map((lot) => lot.isNew)).toEqual([true, true, false]);
    expect(lots[2]?.codes.map((printed) => printed.code)).toEqual([code, 'B-7']);
    const boxes = [...first.lines, ...later.lines].flatMap((received) => received.containers);
    expect(new Set(boxes.map((box) => box.id)).size).toBe(3);
  });

  it('keeps the same code on two products as two lots', async () => {
    const codes = [{ kind: 'lot', code: newCode() }];
    const { lines } = await receive([line({ codes }), line({ codes, productId: cartridge.id })]);
    expect(lines[0]?.lot.id).not.toBe(lines[1]?.lot.id);
  });

  it('takes product, lot and dates from a scanned symbol', async () => {
    const { lines } = await receive([
      {
        symbol: { text: `01${bottleGtin}1124011517350600105501-A`, symbologyIdentifier: ']d2' },
        quantity: 2,
        placeId: shelf.id,
      },
    ]);
    expect(lines[0]).toMatchObject({
      quantityPieces: 2,
      lot: {
        productId: pigment.id,
        code: '5501-A',
        useBy: '2035-06-30',
        useByPrecision: 'month',
        manufacturedOn: '2024-01-15',
      },
    });
  });

  it('takes the moment after which nothing may be used for the use-by date, and holds it against what is said', async () => {
    const code = newCode();
    const scanned = line({
      productId: undefined,
      codes: undefined,
      useBy: undefined,
      symbol: { text: `(01)${bottleGtin}(7003)3505011200(10)${code}` },
    });
    const { lines } = await receive([scanned]);
    expect(lines[0]).toMatchObject({ lot: { code, useBy: '2035-05-01' }, holds: [] });
    const refused = await send([{ ...scanned, useBy: null }]);
    expect(refused.body.faults).toEqual([
      { field: 'lines.0.useBy', message: expect.stringContaining('2035-05-01') },
    ]);
  });

  it("takes goods whose symbol holds another company's text in the form of an own label", async () => {
    const foreign = makeLabelCode(new Uint8Array(12).fill(7));
    const symbol = { text: `(01)${bottleGtin}(17)350630(10)F-1(91)${foreign}` };
    const { lines } = await receive([
      line({ productId: undefined, codes: undefined, useBy: undefined, symbol }),
    ]);
    expect(lines[0]?.lot).toMatchObject({ productId: pigment.id, code: 'F-1', useBy: '2035-06-30' });
    const own = lines[0]?.containers[0]?.labelCode;
    const refused = await send([line({ symbol: { text: `(01)${bottleGtin}(10)F-1(91)${own}` } })]);
    expect(refused.body.faults).toEqual([
      { field: 'lines.0.symbol', message: expect.stringContaining(`${own}`) },
    ]);
  });

  it('counts a scanned pack with its content', async () => {
    const { lines } = await receive([
      line({ productId: undefined, symbol: { text: packGtin }, quantity: 2 }),
    ]);
    expect(lines[0]?.quantityPieces).toBe(12);
    expect(lines[0]?.containers).toHaveLength(12);
  });

  it('makes one labelled box of each scanned pack of pieces', async () => {
    const gtin = '19506000140442';
    await service.made(`/products/${cartridge.id}/gtins`, { gtin, contentCount: 20 });
    const faults = [{ kind: 'damaged package', pieces: 3 }];
    const { lines } = await receive([
      line({ productId: undefined, symbol: { text: gtin }, quantity: 3 }),
      line({ productId: undefined, symbol: { text: gtin }, quantity: 1 }),
      line({ productId: undefined, symbol: { text: gtin }, quantity: 2, faults }),
    ]);
    const pieces = lines.map(({ containers }) => containers.map((box) => box.pieces));
    expect(pieces).toEqual([[20, 20, 20], [20], [20, 17, 3]]);
    expect(lines[0]?.quantityPieces).toBe(60);
    expect(new Set(lines[0]?.containers.map(({ labelCode }) => labelCode)).size).toBe(3);
  });

  it('names both when what was given contradicts the symbol, and records nothing', async () => {
    const before = (await deliveries()).length;
    const refused = await send([
      {
        symbol: { text: `(01)${bottleGtin}(17)350630(10)777` },
        useBy: '2035-07-31',
        codes: [{ kind: 'lot', code: '778' }],
        quantity: 1,
        placeId: shelf.id,
      },
    ]);
    expect(refused.status).toBe(400);
    expect(refused.body.faults).toEqual([
      { field: 'lines.0.codes', message: expect.stringMatching(/777.*778/) },
      { field: 'lines.0.useBy', message: expect.stringMatching(/2035-06-30.*2035-07-31/) },
    ]);
    expect(await deliveries()).toHaveLength(before);
  });

  it('gives the first answer to the same delivery sent again, and stocks nothing twice', async () => {
    const id = uuidv7();
    const lines = [line({ quantity: 5 })];
    const first = await send(lines, { id });
    const [again, other] = [await send(lines, { id }), await send([line()], { id })];
    expect(again).toMatchObject({ status: 201, body: first.body });
    expect([other.status, other.body.code]).toEqual([409, 'request-id-reused']);
    expect((await deliveries()).filter((delivery) => delivery.id === id)).toHaveLength(1);
  });

  it('makes one lot when ten deliveries of the same goods arrive at the same moment', async () => {
    const same = [line()];
    const answers = await Promise.all(Array.from({ length: 10 }, () => receive(same)));
    expect(new Set(answers.map((answer) => answer.lines[0]?.lot.id)).size).toBe(1);
    expect(answers.filter((answer) => answer.lines[0]?.lot.isNew)).toHaveLength(1);
  });

  describe('puts aside', () => {
    it.each([
      ['what has no lot printed', { codes: undefined, codeState: 'none printed' }, ['no lot printed']],
      ['what cannot be read', { codes: undefined, codeState: 'unreadable' }, ['lot unreadable']],
      ['what has no use-by printed', { useBy: null }, ['no use-by printed']],
      ['what is past already', { useBy: '2024-01-31' }, ['already past']],
      [
        'what has neither',
        { codes: undefined, codeState: 'none printed', useBy: null },
        ['no lot printed', 'no use-by printed'],
      ],
    ])('%s, as a lot', async (_, fields, reasons) => {
      const { lines } = await receive([line(fields)]);
      const holds = lines[0]?.holds ?? [];
      expect(holds.map((hold) => hold.reason)).toEqual(reasons);
      expect(holds.every((hold) => hold.lotId === lines[0]?.lot.id && hold.placedNow)).toBe(true);
    });

    it('only the damaged pieces, in containers of their own', async () => {
      const faults = [
        { kind: 'broken seal', pieces: 1 },
        { kind: 'damaged package', pieces: 2 },
      ];
      const { lines } = await receive([
        line({ quantity: 5, faults }),
        line({ productId: cartridge.id, quantity: 20, faults }),
      ]);
      for (const { containers, holds } of lines) {
        const held = new Map(holds.map((hold) => [hold.containerId, hold.reason]));
        const sum = (reason: string | undefined) =>
          containers
            .filter((container) => held.get(container.id) === reason)
            .reduce((total, container) => total + container.pieces, 0);
        expect([sum('broken seal'), sum('damaged package')]).toEqual([1, 2]);
        expect(sum(undefined)).toBe(containers.reduce((total, { pieces }) => total + pieces, 0) - 3);
      }
    });

    it('nothing on its last day, judged where the studio is', async () => {
      const [studio] = await service.seen<{ id: string; version: number }[]>(`${service.url}/api/v1/studios`);
      const setZone = async (timeZone: string) => {
        const { version } = await service.seen<{ version: number }>('');
        await service.patch('', { version, timeZone });
      };
      expect(studio?.id).toBe(service.studioId);
      await setZone('Pacific/Kiritimati');
      // 11:00 UTC on the 2nd is 01:00 on the 3rd on Kiritimati, 14 hours ahead.
      const at = { occurredAt: '2024-11-02T11:00:00Z' };
      const past = await receive([line({ useBy: '2024-11-02' })], at);
      const last = await receive([line({ useBy: '2024-11-03' })], at);
      await setZone('UTC');
      expect(past.lines[0]?.holds.map((hold) => hold.reason)).toEqual(['already past']);
      expect(last.lines[0]?.holds).toEqual([]);
    });

    it('never makes goods without a readable code share a lot', async () => {
      const unreadable = line({ codes: undefined, codeState: 'unreadable' });
      const { lines } = await receive([unreadable, unreadable]);
      expect(lines[0]?.lot.id).not.toBe(lines[1]?.lot.id);
    });

    it('a lot without a date that a late record made, until a person decided on it', async () => {
      const code = newCode();
      await recordLateUse({ productId: pigment.id, code });
      const same = line({ codes: [{ kind: 'lot', code }], useBy: null });
      const { lines } = await receive([same, same]);
      expect(lines[0]?.lot.isNew).toBe(false);
      expect(lines[0]?.holds).toMatchObject([{ reason: 'no use-by printed', lotId: lines[0]?.lot.id }]);
      expect(lines[1]?.holds).toEqual(lines[0]?.holds);
      await service.made(`/holds/${lines[0]?.holds[0]?.id}/release`, { reason: 'Asked the maker' });
      expect((await receive([same])).lines[0]?.holds).toEqual([]);
    });

    it('a lot whose recorded date this delivery takes away', async () => {
      const codes = [{ kind: 'lot', code: newCode() }];
      await receive([line({ codes })]);
      const { lines } = await receive([
        line({ codes, useBy: null, sameCodeDecision: 'correct recorded date' }),
      ]);
      expect(lines[0]?.lot).toMatchObject({ useBy: null, version: 2 });
      expect(lines[0]?.holds).toMatchObject([
        { reason: 'no use-by printed', lotId: lines[0]?.lot.id, placedNow: true },
      ]);
    });

    it('names a hold that was open on the lot before', async () => {
      const same = line({ useBy: null });
      const first = await receive([same]);
      const { lines } = await receive([same]);
      expect(lines[0]?.holds).toEqual([
        { ...first.lines[0]?.holds[0], placedNow: false, reason: 'no use-by printed' },
      ]);
    });
  });

  it('asks again for goods of a past lot after its hold was released, for the new goods alone', async () => {
    const same = line({ useBy: '2024-01-31' });
    const first = await receive([same]);
    const hold = first.lines[0]?.holds[0];
    await service.made(`/holds/${hold?.id}/release`, { reason: 'For practice skin' });
    const { lines } = await receive([{ ...same, quantity: 2 }]);
    expect(lines[0]?.lot.isNew).toBe(false);
    expect(lines[0]?.holds.map(({ reason, containerId }) => [reason, containerId])).toEqual(
      lines[0]?.containers.map((container) => ['already past', container.id]),
    );
  });

  it('opens alerts for what is past on arrival and thus held, and closes the one when the date is corrected', async () => {
    const { lines } = await receive([line({ useBy: '2024-01-31' })]);
    const lot = lines[0]?.lot;
    const open = async () => {
      const { items: alerts } = await service.seen<AlertPageView>('/alerts?limit=200');
      return alerts
        .filter((alert) => alert.subjectId === lot?.id)
        .map((alert) => alert.kind)
        .sort();
    };
    expect(await open()).toEqual(['expired on the shelf', 'held stock on hand']);
    await service.patch(`/lots/${lot?.id}`, { version: 1, useBy: '2035-01-31', reason: 'Misread year' });
    expect(await open()).toEqual(['held stock on hand']);
  });

  describe('a code that is on record with another use-by date', () => {
    const conflict = async () => {
      const codes = [{ kind: 'lot', code: newCode() }];
      const first = await receive([line({ codes })]);
      const recorded = first.lines[0]?.lot;
      if (!recorded) throw new Error('no lot');
      return { recorded, again: line({ codes, useBy: '2035-09-30' }) };
    };

    it('is refused as a whole delivery, naming what is recorded, what was given and the choices', async () => {
      const { recorded, again } = await conflict();
      const before = (await deliveries()).length;
      const refused = await send([line(), again]);
      expect([refused.status, refused.body.code]).toEqual([409, 'same-code-other-use-by']);
      expect(refused.body.lines).toEqual([
        {
          lineNumber: 2,
          productId: pigment.id,
          code: recorded.code,
          given: { useBy: '2035-09-30', useByPrecision: 'day' },
          recorded: [{ lotId: recorded.id, useBy: '2035-06-30' }],
          choices: ['separate lot', 'keep recorded date', 'correct recorded date'],
        },
      ]);
      expect(await deliveries()).toHaveLength(before);
    });

    it('is refused between two lines of one delivery as well', async () => {
      const codes = [{ kind: 'lot', code: newCode() }];
      const refused = await send([line({ codes }), line({ codes, useBy: null })]);
      expect(refused.body.code).toBe('same-code-other-use-by');
    });

    it('becomes a lot of its own, joins, or corrects the lot, as was decided', async () => {
      const decide = async (sameCodeDecision: string) => {
        const { recorded, again } = await conflict();
        const { lines } = await receive([{ ...again, sameCodeDecision }]);
        const lot = lines[0]?.lot;
        return { same: lot?.id === recorded.id, useBy: lot?.useBy, version: lot?.version };
      };
      expect(await decide('separate lot')).toEqual({ same: false, useBy: '2035-09-30', version: 1 });
      expect(await decide('keep recorded date')).toEqual({ same: true, useBy: '2035-06-30', version: 1 });
      expect(await decide('correct recorded date')).toEqual({ same: true, useBy: '2035-09-30', version: 2 });
    });
  });

  it('puts aside what is past by its own print, though it joins a lot by the date on record', async () => {
    const codes = [{ kind: 'lot', code: newCode() }];
    const recorded = await receive([line({ codes })]);
    const printed = new Date(Date.now() - 5 * 86_400_000).toISOString().slice(0, 10);
    const again = line({ codes, useBy: printed, quantity: 2, sameCodeDecision: 'keep recorded date' });
    const { lines } = await receive([again]);
    const [joined] = lines;
    expect([joined?.lot.id, joined?.lot.useBy]).toEqual([recorded.lines[0]?.lot.id, '2035-06-30']);
    expect(joined?.holds.map(({ reason, containerId }) => [reason, containerId])).toEqual(
      joined?.containers.map((container) => ['already past', container.id]),
    );
    expect(joined?.warnings).toEqual([expect.stringContaining(`use-by ${printed}, the record 2035-06-30`)]);
    const later = await receive([{ ...again, useBy: '2035-09-30' }]);
    expect(later.lines[0]?.holds).toEqual([]);
  });

  it('takes an opened bottle with the instant of its opening', async () => {
    const { lines } = await receive([line({ openedAt: '2024-09-01T08:00:00+02:00' })], {
      origin: 'opening stock',
    });
    expect(lines[0]?.containers[0]?.state).toBe('opened');
    const tooLate = await send([line({ openedAt: '2024-09-02T08:00:00Z' })], {
      occurredAt: '2024-09-01T08:00:00Z',
    });
    expect([tooLate.status, tooLate.body.code]).toEqual([400, 'unusable-time']);
    const pieces = await send([line({ productId: cartridge.id, openedAt: '2024-09-01T08:00:00Z' })]);
    expect([pieces.status, pieces.body.code]).toEqual([400, 'unusable-time']);
  });

  it('warns of a number that is not registered and of an archived product', async () => {
    const maker = await service.made<{ id: string }>('/makers', { name: 'Closed Works' });
    const product = await service.made<ProductView>('/products', {
      kind: 'cartridge',
      makerId: maker.id,
      name: 'Gone',
      notation: '5RL',
    });
    await service.made(`/products/${product.id}/archive`, { version: 1 });
    const { lines } = await receive([line({ productId: product.id, symbol: { text: '9506000140445' } })]);
    expect(lines[0]?.warnings).toEqual([
      expect.stringContaining('09506000140445'),
      expect.stringContaining('archived'),
    ]);
  });

  it.each([
    ['no lines', () => ({ lines: [] }), 'lines'],
    ['201 lines', () => ({ lines: Array.from({ length: 201 }, () => line()) }), 'lines'],
    ['a line that is a number', () => ({ lines: [7] }), 'lines'],
    ['a quantity of zero', () => ({ lines: [line({ quantity: 0 })] }), 'lines.0.quantity'],
    ['a negative quantity', () => ({ lines: [line({ quantity: -3 })] }), 'lines.0.quantity'],
    ['a quantity with a fraction', () => ({ lines: [line({ quantity: 1.5 })] }), 'lines.0.quantity'],
    ['an absurd quantity', () => ({ lines: [line({ quantity: 1e15 })] }), 'lines.0.quantity'],
    ['a quantity in words', () => ({ lines: [line({ quantity: '3' })] }), 'lines.0.quantity'],
    ['a date that does not exist', () => ({ lines: [line({ useBy: '2027-02-29' })] }), 'lines.0.useBy'],
    ['nothing said of the date', () => ({ lines: [line({ useBy: undefined })] }), 'lines.0.useBy'],
    ['nothing said of the lot', () => ({ lines: [line({ codes: undefined })] }), 'lines.0.codes'],
    [
      'a code of spaces',
      () => ({ lines: [line({ codes: [{ kind: 'lot', code: '  ' }] })] }),
      'lines.0.codes.0.code',
    ],
    [
      'more faulty than came',
      () => ({ lines: [line({ faults: [{ kind: 'broken seal', pieces: 2 }] })] }),
      'lines.0.faults',
    ],
    [
      'a wrong check digit',
      () => ({ lines: [line({ symbol: { text: '9506000134353' } })] }),
      'lines.0.symbol',
    ],
    [
      'an unknown symbol',
      () => ({ lines: [line({ productId: undefined, symbol: { text: '9506000111117' } })] }),
      'lines.0.symbol',
    ],
    [
      'a symbol of another product',
      () => ({ lines: [line({ productId: cartridge.id, symbol: { text: bottleGtin } })] }),
      'lines.0.productId',
    ],
    ['a symbol that is text', () => ({ lines: [line({ symbol: { text: 'hello' } })] }), 'lines.0.symbol'],
    [
      'a pack beyond belief',
      () => ({ lines: [line({ productId: undefined, symbol: { text: packGtin }, quantity: 2_000 })] }),
      'lines.0.quantity',
    ],
    ['a negative cost', () => ({ lines: [line({ unitCostMinor: -1 })] }), 'lines.0.unitCostMinor'],
    ['an unknown field', () => ({ lines: [line({ lot: 'L' })] }), 'lines.0.lot'],
    ['an unknown origin', () => ({ origin: 'theft', lines: [line()] }), 'origin'],
    [
      'made in the future',
      () => ({ lines: [line({ manufacturedOn: '2035-01-01' })] }),
      'lines.0.manufacturedOn',
    ],
    ['an order from no day', () => ({ orderedOn: '2024-02-30', lines: [line()] }), 'orderedOn'],
    [
      'a supplier of a gift',
      () => ({ origin: 'gift or sample', supplierId: uuidv7(), lines: [line()] }),
      'supplierId',
    ],
  ])('refuses %s, naming the field, and records nothing', async (_, make, field) => {
    const before = (await deliveries()).length;
    const { lines, ...fields } = make() as { lines: object[] };
    const refused = await send(lines, fields);
    expect(refused.status).toBe(400);
    expect(refused.body.faults?.map((fault) => fault.field)).toContain(field);
    expect(await deliveries()).toHaveLength(before);
  });

  it('refuses more bottles than can be labelled from one delivery', async () => {
    const refused = await send([line({ quantity: 2_001 })]);
    expect([refused.status, refused.body.code]).toEqual([400, 'unusable-quantity']);
  });

  it.each([
    ['a product', () => line({ productId: uuidv7() })],
    ['a place', () => line({ placeId: uuidv7() })],
    ['an owner', () => line({ ownerId: uuidv7() })],
  ])('does not find %s of another studio', async (_, make) => {
    expect((await send([make()])).status).toBe(404);
  });

  it('does not find a supplier of another studio, a delivery of another or an address of none', async () => {
    expect((await send([line()], { supplierId: uuidv7() })).status).toBe(404);
    expect((await service.get(`/deliveries/${uuidv7()}`)).status).toBe(404);
    expect((await service.get(`${service.url}/api/v1/studios/${uuidv7()}/deliveries`)).status).toBe(404);
  });

  it.each([
    ['ahead of the clock', '2099-01-01T00:00:00Z'],
    ['eleven years back', '2015-01-01T00:00:00Z'],
    ['on a day that does not exist', '2024-02-30T00:00:00Z'],
    ['without an offset', '2024-11-01T00:00:00'],
  ])('refuses a delivery %s', async (_, occurredAt) => {
    expect((await send([line()], { occurredAt })).status).toBe(400);
  });

  it('refuses malformed JSON and a body that is too large', async () => {
    const malformed = await service.send<ProblemBody>('POST', '/deliveries', '{"lines": [');
    expect([malformed.status, malformed.body.code]).toEqual([400, 'malformed-request']);
    const large = await send([line({ orderLineId: 'x'.repeat(1_100_000) })]);
    expect([large.status, large.body.code]).toEqual([413, 'body-too-large']);
  });

  it('lists deliveries latest first, page by page, with their lines', async () => {
    const supplier = await service.made<{ id: string }>('/suppliers', { name: 'Harbour Trade' });
    const sent = await receive([line({ unitCostMinor: null }), line({ unitCostMinor: 0 })], {
      supplierId: supplier.id,
      orderedOn: '2024-11-01',
      reference: 'DN 12',
    });
    const shown = await service.seen<DeliveryView>(`/deliveries/${sent.id}`);
    expect(shown).toMatchObject({
      supplierName: 'Harbour Trade',
      orderedOn: '2024-11-01',
      reference: 'DN 12',
      lines: [
        { lineNumber: 1, productName: 'Brow line', shade: 'Umber', unitCostMinor: null, currency: null },
        { lineNumber: 2, unitCostMinor: 0, currency: 'EUR' },
      ],
    });
    const all = await deliveries();
    const paged: DeliveryView[] = [];
    for (let next: string | null = ''; next !== null; ) {
      const query: string = next === '' ? '' : `&after=${next}`;
      const page = await service.seen<DeliveryPageView>(`/deliveries?limit=7${query}`);
      paged.push(...page.items);
      next = page.next;
    }
    expect(paged).toEqual(all);
    const instants = all.map((delivery) => delivery.occurredAt);
    expect(instants).toEqual([...instants].sort().reverse());
  });

  describe('a correction of a lot', () => {
    const receiveLot = async (fields: object = {}) => {
      const { lines } = await receive([line(fields)]);
      const lot = lines[0]?.lot;
      if (!lot) throw new Error('no lot');
      return lot;
    };
    const correct = (lotId: string, fields: object) =>
      service.patch<CorrectedLotView & ProblemBody>(`/lots/${lotId}`, {
        version: 1,
        reason: 'Misread at receipt',
        ...fields,
      });

    it('keeps the earlier code findable and moves the lot to its new one', async () => {
      const lot = await receiveLot();
      const code = newCode();
      const corrected = await correct(lot.id, {
        codes: [
          { kind: 'lot', code },
          { kind: 'batch', code: 'B-1' },
        ],
      });
      expect(corrected.body).toMatchObject({
        code,
        codes: [
          { kind: 'lot', code },
          { kind: 'batch', code: 'B-1' },
        ],
        supersededCodes: [{ kind: 'lot', code: lot.code }],
        useBy: lot.useBy,
        version: 2,
      });
      const joined = await receiveLot({ codes: [{ kind: 'lot', code }] });
      expect(joined.id).toBe(lot.id);
    });

    it('of one field leaves the others as the label states them', async () => {
      const lot = await receiveLot({ useBy: '2035-06' });
      const corrected = await correct(lot.id, { manufacturedOn: '2024-05-04' });
      expect(corrected.body).toMatchObject({
        manufacturedOn: '2024-05-04',
        useBy: '2035-06-30',
        useByPrecision: 'month',
        codes: lot.codes,
        supersededCodes: [],
      });
    });

    it('puts the lot aside when the right date is past or missing', async () => {
      const past = await correct((await receiveLot()).id, { useBy: '2024-03-31' });
      expect(past.body.holds.map((hold) => hold.reason)).toEqual(['already past']);
      const missing = await correct((await receiveLot()).id, { useBy: null });
      expect(missing.body).toMatchObject({ useBy: null, useByPrecision: 'none printed' });
      expect(missing.body.holds.map((hold) => hold.reason)).toEqual(['no use-by printed']);
    });

    it('is refused when another lot of the product is that already', async () => {
      const [one, other] = [await receiveLot(), await receiveLot()];
      const refused = await correct(one.id, { codes: [{ kind: 'lot', code: other.code }] });
      expect([refused.status, refused.body.code]).toEqual([409, 'already-exists']);
    });

    it('asks when the code is known with another use-by date, as at receipt, and keeps two lots when told so', async () => {
      const other = await receiveLot();
      const lot = await receiveLot({ useBy: '2035-09-30' });
      const fields = { codes: [{ kind: 'lot', code: other.code }] };
      const asked = await correct(lot.id, fields);
      expect([asked.status, asked.body.code]).toEqual([409, 'same-code-other-use-by']);
      expect(asked.body).toMatchObject({
        given: { useBy: '2035-09-30' },
        recorded: [{ lotId: other.id, useBy: '2035-06-30' }],
        choices: ['separate lot'],
      });
      const decided = await correct(lot.id, { ...fields, sameCodeDecision: 'separate lot' });
      expect(decided.body).toMatchObject({ code: other.code, useBy: '2035-09-30', version: 2 });
      const further = await correct(lot.id, { version: 2, useBy: '2035-08-31' });
      expect(further.body).toMatchObject({ useBy: '2035-08-31', version: 3 });
      const same = await correct(lot.id, { version: 3, useBy: '2035-06-30' });
      expect([same.status, same.body.code]).toEqual([409, 'already-exists']);
    });

    it.each([
      ['of nothing', {}, 400],
      ['to a date that does not exist', { useBy: '2027-04-31' }, 400],
      ['to codes and none at once', { codes: [{ kind: 'lot', code: 'X' }], codeState: 'unreadable' }, 400],
      ['without a reason', { useBy: null, reason: ' ' }, 400],
      ['from an old version', { useBy: null, version: 9 }, 409],
    ])('%s is refused', async (_, fields, status) => {
      expect((await correct((await receiveLot()).id, fields)).status).toBe(status);
    });

    it('of a lot of another studio is not found', async () => {
      expect((await correct(uuidv7(), { useBy: null })).status).toBe(404);
    });
  });

  describe('a place', () => {
    it('is archived only when nothing stands there and another is left', async () => {
      const room = await service.made<PlaceView>('/places', { name: 'Room 2', kind: 'treatment room' });
      await receive([line({ placeId: room.id })]);
      const occupied = await service.post<ProblemBody>(`/places/${room.id}/archive`);
      expect([occupied.status, occupied.body.code]).toEqual([409, 'wrong-state']);
      const spare = await service.made<PlaceView>('/places', { name: 'Spare', kind: 'shelf' });
      expect((await service.made<PlaceView>(`/places/${spare.id}/archive`)).archived).toBe(true);
      const refused = await send([line({ placeId: spare.id })]);
      expect([refused.status, refused.body.code]).toEqual([409, 'wrong-state']);
      expect((await service.post('/places', { name: 'Spare', kind: 'shelf' })).status).toBe(201);
      expect((await service.post('/places', { name: 'room 2', kind: 'shelf' })).status).toBe(409);
      expect((await service.post('/places', { name: 'Roof', kind: 'garden' })).status).toBe(400);
      expect((await service.post(`/places/${uuidv7()}/archive`)).status).toBe(404);
    });
  });

  it('opens on the same data again with the places it had', async () => {
    const places = await service.seen<PlaceView[]>('/places');
    await service.stop();
    const { dataFolder, databaseUrl } = service;
    service = await startService(engine, { dataFolder, databaseUrl });
    expect(await service.seen<PlaceView[]>('/places')).toEqual(places);
  });
});
