import { v7 as uuidv7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readSymbol } from '../../src/catalogue/barcode.js';
import { formatLabelCode } from '../../src/catalogue/own-label.js';
import type { ProductView } from '../../src/catalogue/products.views.js';
import type { PlaceView } from '../../src/stock/places.views.js';
import type { ReceiptView } from '../../src/stock/receiving.views.js';
import { decodeSymbol } from '../demo/symbols.js';
import { symbolsOn } from '../support/drawn-symbols.js';
import { type Page, pagesOf, textOn } from '../support/pdf-pages.js';
import { type ProblemBody, type RunningService, usualEngine } from '../support/service.js';
import { startStudio } from '../support/shared-service.js';

const bottleGtin = '09506000134352';

describe.each(usualEngine)('labels on %s', (engine) => {
  let service: RunningService;
  let place: PlaceView;
  let makerId: string;

  beforeAll(async () => {
    service = await startStudio(engine);
    [place] = (await service.seen<PlaceView[]>('/places')) as [PlaceView];
    makerId = (await service.made<{ id: string }>('/makers', { name: 'Morning Colour Works' })).id;
  });
  afterAll(() => service?.dispose());

  const addProduct = (fields: object) =>
    service.made<ProductView>('/products', {
      makerId,
      kind: 'pigment',
      name: `Line ${uuidv7().slice(-6)}`,
      volumeMicrolitres: 10_000,
      ...fields,
    });
  const receive = async (productId: string, fields: object = {}) => {
    const receipt = await service.made<ReceiptView>('/deliveries', {
      origin: 'purchase',
      lines: [
        {
          productId,
          codes: [{ kind: 'lot', code: '5501-A' }],
          useBy: '2035-06-30',
          quantity: 1,
          placeId: place.id,
          ...fields,
        },
      ],
    });
    return receipt.lines[0]?.containers ?? [];
  };
  const print = async (body: object): Promise<{ status: number; headers: Headers; pages: Page[] }> => {
    const response = await service.fetch(`${service.studio}/labels`, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify(body),
    });
    const pdf = Buffer.from(await response.arrayBuffer());
    return {
      status: response.status,
      headers: response.headers,
      pages: response.ok ? pagesOf(pdf) : [],
    };
  };
  const refused = (body: object) => service.send<ProblemBody>('POST', '/labels', body);
  const firstSymbol = async (pages: Page[]) => {
    const [symbol] = pages.flatMap(symbolsOn);
    if (!symbol) throw new Error('No symbol was drawn.');
    const { text, symbologyIdentifier } = await decodeSymbol(symbol);
    expect(symbologyIdentifier).toBe(']d2');
    return readSymbol({ text, symbologyIdentifier }, '2026-11-25');
  };

  it('print a symbol that reads back as number, date, lot and code, on a label of the roll', async () => {
    const product = await addProduct({ name: 'Brow line', shade: 'Umber' });
    await service.made(`/products/${product.id}/gtins`, { gtin: bottleGtin });
    const [bottle] = await receive(product.id);
    const printed = await print({ containerIds: [bottle?.id], sheet: 'roll' });
    expect(printed.status).toBe(200);
    expect(printed.headers.get('content-type')).toBe('application/pdf');
    expect(printed.pages).toHaveLength(1);
    expect(printed.pages[0]?.widthMillimetres).toBeCloseTo(25, 3);
    expect(printed.pages[0]?.heightMillimetres).toBeCloseTo(13, 3);
    const reading = await firstSymbol(printed.pages);
    expect(reading).toMatchObject({
      kind: 'own label',
      code: bottle?.labelCode,
      elements: [
        { applicationIdentifier: '01', value: bottleGtin },
        { applicationIdentifier: '17', value: '350630' },
        { applicationIdentifier: '10', value: '5501-A' },
        { applicationIdentifier: '91', value: bottle?.labelCode },
      ],
    });
    const groups = formatLabelCode(bottle?.labelCode ?? 'no code');
    for (const text of ['Brow line', 'Umber', 'Lot 5501-A', 'Use by 2035-06-30', groups, 'Opened on __']) {
      expect(textOn(printed.pages[0] as Page)).toContain(text);
    }
  });

  it('print the code alone for a product without a number of its own, a pack not counting', async () => {
    const product = await addProduct({ kind: 'cartridge', volumeMicrolitres: undefined, notation: '1003RL' });
    await service.made(`/products/${product.id}/gtins`, { gtin: '9506000140445', contentCount: 20 });
    const [box] = await receive(product.id, { quantity: 20 });
    const { pages } = await print({ containerIds: [box?.id], sheet: 'roll' });
    expect((await firstSymbol(pages)).kind).toBe('own label');
    expect(await firstSymbol(pages)).toMatchObject({ elements: [{ value: box?.labelCode }] });
    expect(textOn(pages[0] as Page)).toContain('1003RL');
    expect(textOn(pages[0] as Page)).not.toContain('Opened on');
  });

  it.each([
    ['brackets in it', 'A(17)B'],
    ['the longest code a symbol takes', 'aB3/cD4-eF5.gH6_iJ7+'],
  ])('print a lot code with %s so that it reads back', async (_, code) => {
    const product = await addProduct({});
    await service.made(`/products/${product.id}/gtins`, {
      gtin: code.length === 6 ? '9506000111117' : '9506000222226',
    });
    const [bottle] = await receive(product.id, { codes: [{ kind: 'lot', code }] });
    for (const sheet of ['roll', 'A4 sheet']) {
      const reading = await firstSymbol((await print({ containerIds: [bottle?.id], sheet })).pages);
      expect(reading).toMatchObject({ kind: 'own label', lotCode: code, code: bottle?.labelCode });
    }
  });

  it('fill A4 sheets from the position given, in the order asked for', async () => {
    const product = await addProduct({});
    const bottles = await receive(product.id, { quantity: 4 });
    const containerIds = bottles.map((bottle) => bottle.id).reverse();
    const { pages } = await print({ containerIds, sheet: 'A4 sheet', startAt: 64 });
    expect(
      pages.map((page) => [Math.round(page.widthMillimetres), Math.round(page.heightMillimetres)]),
    ).toEqual([
      [210, 297],
      [210, 297],
    ]);
    expect(pages.map((page) => symbolsOn(page).length)).toEqual([2, 2]);
    const codes = await Promise.all(
      pages.flatMap(symbolsOn).map(async (symbol) => (await decodeSymbol(symbol)).text),
    );
    expect(codes).toEqual(bottles.map((bottle) => `91${bottle.labelCode}`).reverse());
  });

  it('never shorten the code, however wide its letters are', async () => {
    const product = await addProduct({});
    await service.made(`/products/${product.id}/gtins`, { gtin: '9506000333335' });
    const bottles = await receive(product.id, { quantity: 60 });
    const { pages } = await print({ containerIds: bottles.map((bottle) => bottle.id), sheet: 'roll' });
    const shown = pages.map((page) =>
      textOn(page)
        .split('\n')
        .find((line) => /^\w{4}-/.test(line)),
    );
    expect(shown).toEqual(bottles.map((bottle) => formatLabelCode(bottle.labelCode)));
  });

  it('print 500 labels at a time', async () => {
    const product = await addProduct({});
    const bottles = await receive(product.id, { quantity: 500 });
    const { pages } = await print({ containerIds: bottles.map((bottle) => bottle.id), sheet: 'A4 sheet' });
    expect(pages).toHaveLength(8);
  });

  it('print names in any script without failing', async () => {
    const product = await addProduct({ name: 'Čokoláda 茶色 🟤', shade: 'x'.repeat(120) });
    const [bottle] = await receive(product.id, { codes: [{ kind: 'lot', code: 'ロット 7' }] });
    const { pages } = await print({ containerIds: [bottle?.id], sheet: 'roll' });
    expect(textOn(pages[0] as Page)).toContain('Cokoláda ?? ?');
    expect(textOn(pages[0] as Page)).toContain('Lot ??? 7');
  });

  it.each([
    ['no containers', { containerIds: [], sheet: 'roll' }, 'containerIds'],
    [
      '501 containers',
      { containerIds: Array.from({ length: 501 }, () => uuidv7()), sheet: 'roll' },
      'containerIds',
    ],
    ['what are no ids', { containerIds: ['1'], sheet: 'roll' }, 'containerIds'],
    ['an unknown sheet', { containerIds: [uuidv7()], sheet: 'A3' }, 'sheet'],
    ['a position before the first', { containerIds: [uuidv7()], sheet: 'A4 sheet', startAt: 0 }, 'startAt'],
    ['a position after the last', { containerIds: [uuidv7()], sheet: 'A4 sheet', startAt: 66 }, 'startAt'],
    ['a position on a roll', { containerIds: [uuidv7()], sheet: 'roll', startAt: 2 }, 'startAt'],
  ])('are refused for %s', async (_, body, field) => {
    const answer = await refused(body);
    expect(answer.status).toBe(400);
    expect(answer.body.faults?.[0]?.field).toBe(field);
  });

  it('are not found for containers of another studio', async () => {
    const answer = await refused({ containerIds: [uuidv7()], sheet: 'roll' });
    expect([answer.status, answer.body.code]).toEqual([404, 'not-found']);
  });
});
