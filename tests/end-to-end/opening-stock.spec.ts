import { stringify } from 'csv-stringify/sync';
import { v7 as uuidv7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { DeliveryPageView } from '../../src/stock/deliveries.views.js';
import type { LotPageView } from '../../src/stock/lot-list.views.js';
import type {
  OpeningStockPreviewView,
  TakenInStockView,
} from '../../src/stock/opening-stock/opening-stock.views.js';
import {
  openingStockColumns,
  openingStockExample,
} from '../../src/stock/opening-stock/opening-stock-columns.js';
import { PlainSql } from '../support/plain-sql.js';
import { type ProblemBody, type RunningService, startService, strictestEngine } from '../support/service.js';

type Refused = ProblemBody & { preview: OpeningStockPreviewView };

const csv = (rows: readonly object[]) =>
  stringify(rows as object[], {
    header: true,
    columns: openingStockColumns.map(({ name }) => name),
    bom: true,
  });

describe.each(strictestEngine)('opening stock on %s', (engine) => {
  let service: RunningService;
  let sql: PlainSql;

  beforeAll(async () => {
    service = await startService(engine);
    sql = await PlainSql.connect(service, 'read');
  });
  afterAll(async () => {
    await sql?.close();
    await service?.dispose();
  });

  const preview = (text: string) =>
    service.made<OpeningStockPreviewView>('/opening-stock/preview', { text, id: undefined });
  const count = async (table: string) =>
    Number((await sql.rows<{ count: number }>(`SELECT count(*) AS count FROM ${table}`))[0]?.count);
  const tables = [
    'maker',
    'product',
    'product_gtin',
    'lot',
    'container',
    'movement',
    'delivery',
    'audit_entry',
    'accepted_request',
  ];
  const counts = async () => {
    const counted: Record<string, number> = {};
    for (const table of tables) counted[table] = await count(table);
    return counted;
  };

  it('previews without writing anything, then fills the shelf of a new studio from one file', async () => {
    const before = await counts();
    const seen = await preview(csv(openingStockExample));
    expect(seen).toMatchObject({
      usable: true,
      warnings: [],
      counts: { rows: 4, faultyRows: 0, makers: 2, products: 3, lots: 4, containers: 7 },
    });
    expect(seen.rows[0]?.effects).toEqual(['new maker', 'new product', 'new GTIN', 'new lot']);
    expect(await counts()).toEqual(before);

    const taken = await service.made<TakenInStockView>('/opening-stock', { text: csv(openingStockExample) });
    expect(taken.counts).toEqual(seen.counts);
    const { items } = await service.seen<DeliveryPageView>('/deliveries');
    expect(items).toMatchObject([{ id: taken.deliveryId, origin: 'opening stock' }]);
    const { items: lots } = await service.seen<LotPageView>('/lots');
    expect(lots).toHaveLength(4);

    // Mass balance: what is on hand is the sum of movements, all received, with what was left of the opened bottle.
    const movements = await sql.rows<{
      kind: string;
      pieces: number;
      microlitres: number;
      code: string | null;
    }>(
      `SELECT movement.kind, sum(movement.pieces) AS pieces, sum(movement.microlitres) AS microlitres, lot.code
       FROM movement JOIN lot ON lot.id = movement.lot_id AND lot.studio_id = movement.studio_id
       GROUP BY movement.kind, lot.code ORDER BY lot.code`,
    );
    const byCode = new Map(
      movements.map(({ code, pieces, microlitres, kind }) => [
        code,
        [kind, Number(pieces), Number(microlitres)],
      ]),
    );
    expect(byCode.get('HU-118')).toEqual(['received', 2, 20_000]);
    expect(byCode.get('HU-101')).toEqual(['received', 1, 6_000]);
    expect(byCode.get('CL-2041')).toEqual(['received', 60, 0]);
    expect(taken.rows[3]?.setAside).toEqual(['no lot printed', 'no use-by printed']);
    const opened = await service.seen<{ state: string; openedAt: string | null }>(
      `/containers/${taken.rows[1]?.containerIds[0]}`,
    );
    expect(opened).toMatchObject({ state: 'opened', openedAt: '2026-03-12T00:00:00.000Z' });
    expect((await preview(csv(openingStockExample))).warnings[0]).toContain('on record already');
  });

  it('takes in nothing of 500 rows when the last has a fault, and says which', async () => {
    const rows = Array.from({ length: 500 }, (_, index) => ({
      maker: 'Morning Colour Works',
      product: 'Liner ink',
      kind: 'pigment',
      'bottle ml': '10',
      lot: `M-${index}`,
      'use by': index === 499 ? '03/04/2027' : '2027-04-03',
      quantity: '1',
    }));
    const before = await counts();
    const answer = await service.post<Refused>('/opening-stock', { text: csv(rows) });
    expect(answer.status).toBe(400);
    expect(answer.body).toMatchObject({
      code: 'unusable-file',
      faults: [{ field: 'row 501, use by', message: expect.stringContaining('2027-04-03 or 2027-03-04') }],
      preview: { usable: false, counts: { rows: 500, faultyRows: 1 } },
    });
    expect(await counts()).toEqual(before);

    const mended = rows.map((row) => ({ ...row, 'use by': '2027-04-03' }));
    const taken = await service.made<TakenInStockView>('/opening-stock', { text: csv(mended) });
    expect(taken.counts).toEqual({
      rows: 500,
      faultyRows: 0,
      makers: 1,
      products: 1,
      lots: 500,
      containers: 500,
    });
  });

  it('lists every fault of every row at once', async () => {
    const text = csv([
      { maker: 'Nobody', product: 'Nothing', lot: 'A', 'use by': '2027', quantity: '0' },
      {
        maker: 'Morning Colour Works',
        product: 'Liner ink',
        lot: 'M-1',
        'use by': '2028-01-01',
        quantity: '1',
        place: 'Moon',
      },
    ]);
    const seen = await preview(text);
    expect(seen.rows.map(({ row, faults }) => [row, faults.map(({ column }) => column)])).toEqual([
      [2, ['quantity', 'product']],
      [3, ['place', 'use by']],
    ]);
    const refused = await service.post<Refused>('/opening-stock', { text });
    expect(refused.body.preview.rows).toEqual(seen.rows);
  });

  it('gives a repeated request its first answer and takes nothing in twice', async () => {
    const id = uuidv7();
    const text = csv([
      {
        maker: 'Halden Colour Works',
        product: 'Brow pigment',
        shade: 'Warm umber',
        lot: 'ONCE',
        'use by': '2027-06',
        quantity: '2',
      },
    ]);
    const first = await service.post<TakenInStockView>('/opening-stock', { id, text });
    const together = await Promise.all(
      [1, 2, 3].map(() => service.post<TakenInStockView>('/opening-stock', { id, text })),
    );
    for (const again of together) expect(again).toMatchObject({ status: 201, body: first.body });
    expect(await sql.rows(`SELECT id FROM lot WHERE code = 'ONCE'`)).toHaveLength(1);
    const other = await service.post<ProblemBody>('/opening-stock', { id, text: `${text}\r\n` });
    expect(other.body.code).toBe('request-id-reused');
  });

  it('judges again when the world changed since the preview, and makes an unknown product once', async () => {
    const row = {
      maker: 'Halden Colour Works',
      product: 'Brow pigment',
      shade: 'Warm umber',
      lot: 'HU-118',
      quantity: '1',
    };
    const text = csv([{ ...row, lot: 'LATER', 'use by': '2027-06-30' }]);
    expect((await preview(text)).usable).toBe(true);
    await service.made('/opening-stock', { text: csv([{ ...row, lot: 'LATER', 'use by': '2028-06-30' }]) });
    const refused = await service.post<Refused>('/opening-stock', { text });
    expect(refused.body.faults?.[0]).toMatchObject({
      field: 'row 2, use by',
      message: expect.stringContaining('2028-06-30'),
    });

    const fresh = csv([
      { maker: 'Race Works', product: 'Film', kind: 'consumable', lot: 'R', 'use by': '2028', quantity: '5' },
    ]);
    const both = await Promise.all(
      [1, 2].map(() => service.post<TakenInStockView>('/opening-stock', { text: fresh })),
    );
    expect(both.map(({ status }) => status)).toEqual([201, 201]);
    expect(await sql.rows(`SELECT id FROM maker WHERE name = 'Race Works'`)).toHaveLength(1);
    expect(await sql.rows(`SELECT id FROM lot WHERE code = 'R'`)).toHaveLength(1);
  });

  it('refuses what is no table in words, and a text that is too long by its limit', async () => {
    const faults = async (text: string) => (await preview(text)).faults.map(({ message }) => message);
    expect(await faults('hello')).toContain('The column "lot" is missing. Add it.');
    expect(await faults('\uFEFF')).toEqual([expect.stringContaining('empty')]);
    const long = await service.post<ProblemBody>('/opening-stock/preview', {
      text: 'x'.repeat(500_001),
      id: undefined,
    });
    expect(long).toMatchObject({ status: 400, body: { code: 'invalid-fields' } });
    const larger = await service.post<ProblemBody>('/opening-stock/preview', {
      text: 'x'.repeat(1_100_000),
      id: undefined,
    });
    expect(larger).toMatchObject({ status: 413, body: { code: 'body-too-large' } });
  });
});
