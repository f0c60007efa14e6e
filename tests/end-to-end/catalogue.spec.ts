import { v7 as uuidv7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { CompanyView } from '../../src/catalogue/companies.views.js';
import type { ConfigurationView, EquivalenceView } from '../../src/catalogue/configurations.views.js';
import type { ProductPageView, ProductView } from '../../src/catalogue/products.views.js';
import type { SymbolView } from '../../src/catalogue/symbols.views.js';
import { type ProblemBody, type RunningService, usualEngine } from '../support/service.js';
import { startStudio } from '../support/shared-service.js';

const pigmentGtin = '09506000134352';

describe.each(usualEngine)('the catalogue on %s', (engine) => {
  let service: RunningService;
  let maker: CompanyView;

  beforeAll(async () => {
    service = await startStudio(engine);
    maker = await service.made('/makers', { name: 'Morning Colour Works' });
  });
  afterAll(() => service?.dispose());

  const addPigment = (fields: object = {}) =>
    service.post<ProductView & ProblemBody>('/products', {
      kind: 'pigment',
      makerId: maker.id,
      name: `Brow line ${uuidv7().slice(-6)}`,
      volumeMicrolitres: 10_000,
      ...fields,
    });
  const addCartridge = (fields: object) =>
    service.made<ProductView>('/products', {
      kind: 'cartridge',
      makerId: maker.id,
      name: `Needle ${uuidv7().slice(-6)}`,
      ...fields,
    });
  const read = (body: object) => service.send<SymbolView & ProblemBody>('POST', '/symbols/read', body);

  it('refuses a second maker of the same name, however it is written', async () => {
    const again = await service.post<ProblemBody>('/makers', { name: ' morning colour works ' });
    expect(again.status).toBe(409);
    expect(again.body.code).toBe('already-exists');
    expect(again.body).toMatchObject({ existing: { kind: 'maker', id: maker.id } });
  });

  it('renames a supplier and lists it under its new name', async () => {
    const supplier = await service.made<CompanyView>('/suppliers', { name: 'Harbour Trade' });
    const rename = (version: number | undefined) =>
      service.patch<CompanyView & ProblemBody>(`/suppliers/${supplier.id}`, {
        version,
        name: 'Harbour Goods',
      });
    const renamed = await rename(supplier.version);
    expect(renamed.status).toBe(200);
    expect(await service.seen<CompanyView[]>('/suppliers')).toContainEqual({
      id: supplier.id,
      name: 'Harbour Goods',
      version: 2,
    });
    expect((await rename(supplier.version)).body.code).toBe('stale-version');
    expect((await rename(undefined)).status).toBe(400);
  });

  it('keeps a pigment as containers, with what its label says', async () => {
    const added = await addPigment({
      name: 'Brow line',
      shade: 'Umber 2',
      openedLife: 'P12M',
      colourIndexNumbers: ['77491', '77499'],
    });
    expect(added.status).toBe(201);
    expect(added.body).toMatchObject({
      stockForm: 'container',
      pigmentRole: 'colour',
      makerName: 'Morning Colour Works',
      openedLife: 'P12M',
      colourIndexNumbers: ['77491', '77499'],
      points: null,
      notation: null,
      archived: false,
      version: 1,
    });
    expect(await service.seen(`/products/${added.body.id}`)).toEqual(added.body);
  });

  it('reads a cartridge from its notation and prints the notation back', async () => {
    const cartridge = await addCartridge({ notation: '1207rl', machineFit: 'pen' });
    expect(cartridge).toMatchObject({
      stockForm: 'pieces',
      points: 7,
      grouping: 'round liner',
      diameterHundredthsMillimetre: 35,
      notation: '1207RL',
      membrane: 'unknown',
    });
    const blade = await addCartridge({ points: 14, grouping: 'hand blade', taper: 'short' });
    expect(blade.notation).toBe('14 blade ST');
  });

  it('keeps a consumable as a container only when its label gives an opened life', async () => {
    const add = (fields: object) =>
      service.made<ProductView>('/products', {
        kind: 'consumable',
        makerId: maker.id,
        name: uuidv7(),
        ...fields,
      });
    expect((await add({ openedLife: 'P28D' })).stockForm).toBe('container');
    const pieces = await add({});
    expect(pieces.stockForm).toBe('pieces');
    const change = await service.patch<ProblemBody>(`/products/${pieces.id}`, {
      version: 1,
      openedLife: 'P28D',
    });
    expect([change.status, change.body.code]).toEqual([409, 'wrong-state']);
  });

  it.each([
    ['a pigment without volume', { volumeMicrolitres: undefined }, 'volumeMicrolitres'],
    ['a volume of zero', { volumeMicrolitres: 0 }, 'volumeMicrolitres'],
    ['a volume with a fraction', { volumeMicrolitres: 10_000.5 }, 'volumeMicrolitres'],
    ['an absurd volume', { volumeMicrolitres: 1e12 }, 'volumeMicrolitres'],
    ['an opened life of 400 months', { openedLife: 'P400M' }, 'openedLife'],
    ['an opened life in words', { openedLife: '12M' }, 'openedLife'],
    ['a notation for a pigment', { notation: '3RL' }, 'notation'],
    ['a colour index number in letters', { colourIndexNumbers: ['CI 77491'] }, 'colourIndexNumbers'],
    ['a field nobody knows', { colour: 'brown' }, 'colour'],
    ['an empty name', { name: '  ' }, 'name'],
    ['a name that is null', { name: null }, 'name'],
    ['a name with a NUL in it', { name: 'Um\u0000ber' }, 'name'],
    ['a kind nobody knows', { kind: 'ink' }, 'kind'],
  ])('refuses %s, naming the field', async (_, fields, field) => {
    const refused = await addPigment(fields);
    expect(refused.status).toBe(400);
    expect(refused.body.code).toBe('invalid-fields');
    expect(refused.body.faults?.map((fault) => fault.field)).toContain(field);
  });

  it('finds no maker that nobody knows', async () => {
    const refused = await addPigment({ makerId: '00000000-0000-4000-8000-000000000001' });
    expect([refused.status, refused.body.code]).toEqual([404, 'not-found']);
  });

  it('refuses a page that goes on from nothing', async () => {
    for (const list of ['products', 'lots', 'containers', 'deliveries', 'blends', 'alerts']) {
      const refused = await service.get<ProblemBody>(`/${list}?after=00000000-0000-4000-8000-000000000001`);
      expect([list, refused.status, refused.body.code]).toEqual([list, 400, 'invalid-fields']);
      expect(refused.body.faults?.[0]?.field).toBe('after');
    }
  });

  it('refuses a diameter that some makers read otherwise', async () => {
    const refused = await service.post<ProblemBody>('/products', {
      kind: 'cartridge',
      makerId: maker.id,
      name: 'Doubtful',
      notation: '1307RL',
    });
    expect(refused.status).toBe(400);
    expect(refused.body.detail).toMatch(/0\.40 mm as 13, others as 14/);
  });

  it('gives the first answer to a product sent again, and refuses its id for another', async () => {
    const id = uuidv7();
    const first = await addPigment({ id, name: 'Sent twice' });
    const again = await addPigment({ id, name: 'Sent twice' });
    expect(again).toMatchObject({ status: 201, body: first.body });
    const other = await addPigment({ id, name: 'Sent as another' });
    expect([other.status, other.body.code]).toEqual([409, 'request-id-reused']);
  });

  it('refuses a second product of the same maker, name and shade', async () => {
    await addPigment({ name: 'Lip line', shade: 'Rose' });
    const again = await addPigment({ name: 'lip line', shade: 'ROSE' });
    expect([again.status, again.body.code]).toEqual([409, 'already-exists']);
    expect((await addPigment({ name: 'Lip line', shade: 'Rose 2' })).status).toBe(201);
  });

  it('lets only one of ten at the same moment have a name', async () => {
    const answers = await Promise.all(
      Array.from({ length: 10 }, () => addPigment({ name: 'Wanted by ten' })),
    );
    expect(answers.map((answer) => answer.status).sort()).toEqual([201, ...Array(9).fill(409)]);
  });

  it('changes a product from its present version only', async () => {
    const { body: product } = await addPigment({ shade: 'Sand' });
    const change = (version: number, fields: object) =>
      service.patch<ProductView & ProblemBody>(`/products/${product.id}`, { version, ...fields });
    const changed = await change(1, { shade: 'Sand 1', dropMicrolitres: 35 });
    expect(changed.body).toMatchObject({ shade: 'Sand 1', dropMicrolitres: 35, version: 2 });
    expect(changed.body.volumeMicrolitres).toBe(10_000);
    const stale = await change(1, { shade: 'Sand 2' });
    expect([stale.status, stale.body.code]).toEqual([409, 'stale-version']);
  });

  it('hides an archived product, frees its name, and restores it only while the name is free', async () => {
    const { body: product } = await addPigment({ name: 'Comes and goes' });
    const archived = await service.made<ProductView>(`/products/${product.id}/archive`, { version: 1 });
    expect(archived.archived).toBe(true);
    const listed = async (query: string) =>
      (await service.seen<ProductPageView>(`/products?text=comes+and+goes${query}`)).items.length;
    expect([await listed(''), await listed('&archived=shown')]).toEqual([0, 1]);
    const successor = await addPigment({ name: 'Comes and goes' });
    const restore = () =>
      service.post<ProductView & ProblemBody>(`/products/${product.id}/restore`, { version: 2 });
    expect((await restore()).body.code).toBe('already-exists');
    await service.made(`/products/${successor.body.id}/archive`, { version: 1 });
    expect((await restore()).body.archived).toBe(false);
  });

  it('pages through all products in order, each once', async () => {
    const otherMaker = await service.made<CompanyView>('/makers', { name: 'Zenith Inks' });
    for (const shade of ['3', '1', '2', '5', '4']) {
      await addPigment({ makerId: otherMaker.id, name: 'Paged', shade });
    }
    const shades: (string | null)[] = [];
    let after = '';
    do {
      const page = await service.seen<ProductPageView>(
        `/products?text=zenith&kind=pigment&limit=2${after && `&after=${after}`}`,
      );
      shades.push(...page.items.map((product) => product.shade));
      after = page.next ?? '';
    } while (after !== '');
    expect(shades).toEqual(['1', '2', '3', '4', '5']);
  });

  it('takes % and _ of a search for what they are', async () => {
    await addPigment({ name: 'Nearly 100% black' });
    const found = await service.seen<ProductPageView>('/products?text=100%25');
    expect(found.items.map((product) => product.name)).toEqual(['Nearly 100% black']);
    expect((await service.seen<ProductPageView>('/products?text=n%25y')).items).toEqual([]);
  });

  it('finds products by words of maker and name together, and cartridges alone', async () => {
    await addCartridge({ name: 'Fine shader', notation: '1005RS' });
    const found = await service.seen<ProductPageView>('/products?text=shader+morning&kind=cartridge');
    expect(found.items.map((product) => product.notation)).toEqual(['1005RS']);
  });

  it.each([
    ['limit=0', 'limit'],
    ['limit=201', 'limit'],
    ['limit=ten', 'limit'],
    ['kind=ink', 'kind'],
    ['after=nothing', 'after'],
  ])('refuses the list with %s', async (query, field) => {
    const refused = await service.get<ProblemBody>(`/products?${query}`);
    expect(refused.status).toBe(400);
    expect(refused.body.faults?.[0]?.field).toBe(field);
  });

  describe('GTINs', () => {
    it('fill up to 14 digits, serve one product only, and hold the content of packs', async () => {
      const { body: product } = await addPigment({ name: 'Numbered', shade: 'Ash' });
      const { body: other } = await addPigment({ name: 'Other' });
      const withUnit = await service.made<ProductView>(`/products/${product.id}/gtins`, {
        gtin: pigmentGtin.slice(1),
      });
      expect(withUnit.gtins).toEqual([{ gtin: pigmentGtin, contentCount: 1, version: 1 }]);
      const withPack = await service.made<ProductView>(`/products/${product.id}/gtins`, {
        gtin: '19506000134359',
        contentCount: 6,
      });
      expect(withPack.gtins).toHaveLength(2);
      const taken = await service.post<ProblemBody>(`/products/${other.id}/gtins`, { gtin: pigmentGtin });
      expect([taken.status, taken.body.code]).toEqual([409, 'already-exists']);
      expect(taken.body.detail).toContain('Morning Colour Works Numbered Ash');
    });

    it('are corrected when their content or product was a slip', async () => {
      const { body: product } = await addPigment();
      const { body: other } = await addPigment();
      await service.made(`/products/${product.id}/gtins`, { gtin: '9506000333335', contentCount: 10 });
      const correct = (path: string, fields: object) =>
        service.patch<ProductView & ProblemBody>(`/products/${path}`, fields);
      const first = { version: 1 };
      const path = `${product.id}/gtins/09506000333335`;
      const counted = await correct(path, { ...first, contentCount: 20 });
      expect(counted.body.gtins).toEqual([{ gtin: '09506000333335', contentCount: 20, version: 2 }]);
      const stale = await correct(path, { ...first, contentCount: 30 });
      expect([stale.status, stale.body.code]).toEqual([409, 'stale-version']);
      const moved = await correct(path, { version: 2, productId: other.id });
      expect(moved.body).toMatchObject({ id: other.id, gtins: [{ contentCount: 20 }] });
      expect((await service.seen<ProductView>(`/products/${product.id}`)).gtins).toEqual([]);
      const third = { version: 3 };
      const refusals = await Promise.all([
        correct(`${product.id}/gtins/9506000333335`, { ...third, contentCount: 1 }),
        correct(`${other.id}/gtins/9506000333335`, third),
        correct(`${other.id}/gtins/9506000333335`, { ...third, contentCount: 0 }),
        correct(`${other.id}/gtins/9506000333335`, { ...third, productId: uuidv7() }),
        correct(`${other.id}/gtins/9506000333336`, { ...third, contentCount: 1 }),
      ]);
      expect(refusals.map((answer) => answer.status)).toEqual([404, 400, 400, 404, 404]);
    });

    it.each(['9506000134353', '950600013435', 'x506000134352', '', '095060001343520'])(
      'refuses %s',
      async (gtin) => {
        const { body: product } = await addPigment();
        const refused = await service.post<ProblemBody>(`/products/${product.id}/gtins`, { gtin });
        expect(refused.status).toBe(400);
        expect(refused.body.faults?.[0]?.field).toBe('gtin');
      },
    );

    it.each([0, -1, 1.5, 1e9, '6', null])('refuse a content of %s', async (contentCount) => {
      const { body: product } = await addPigment();
      const refused = await service.post<ProblemBody>(`/products/${product.id}/gtins`, {
        gtin: '9506000134369',
        contentCount,
      });
      expect(refused.status).toBe(400);
      expect(refused.body.faults?.[0]?.field).toBe('contentCount');
    });
  });

  describe('configurations', () => {
    const poolOf = async (productId: string) => {
      const pools = await service.seen<ConfigurationView[]>('/configurations');
      return pools.find((pool) => pool.products.some((product) => product.id === productId));
    };

    it('pool cartridges when all is known and equal, and only then', async () => {
      const known = { notation: '1009RMLT', machineFit: 'Pen' };
      const one = await addCartridge(known);
      const other = await addCartridge({ ...known, machineFit: 'pen' });
      const withoutFit = await addCartridge({ notation: '1009RMLT' });
      const pool = await poolOf(one.id);
      expect(pool?.products.map((product) => product.id).sort()).toEqual([one.id, other.id].sort());
      expect(pool).toMatchObject({
        declared: false,
        equivalences: [],
        keys: [expect.stringMatching(/9 points/)],
      });
      expect((await poolOf(withoutFit.id))?.products).toHaveLength(1);
    });

    it('follow a declaration until it is withdrawn', async () => {
      const one = await addCartridge({ notation: '3RS' });
      const other = await addCartridge({ notation: '0803RS' });
      const body = { productId: one.id, otherProductId: other.id, reason: 'Compared side by side' };
      const declared = await service.made<EquivalenceView>('/configurations/equivalences', body);
      expect(await poolOf(one.id)).toMatchObject({ declared: true, equivalences: [declared] });
      expect((await poolOf(one.id))?.products).toHaveLength(2);
      const swapped = await service.post<ProblemBody>('/configurations/equivalences', {
        ...body,
        productId: other.id,
        otherProductId: one.id,
      });
      expect([swapped.status, swapped.body.code]).toEqual([409, 'already-exists']);
      const withdrawn = await service.made<EquivalenceView>(
        `/configurations/equivalences/${declared.id}/withdraw`,
      );
      expect(withdrawn.withdrawnAt).not.toBeNull();
      expect((await poolOf(one.id))?.products).toHaveLength(1);
      const again = await service.post<ProblemBody>(`/configurations/equivalences/${declared.id}/withdraw`);
      expect([again.status, again.body.code]).toEqual([409, 'wrong-state']);
    });

    it('take no pigment, no product twice and no unknown product', async () => {
      const cartridge = await addCartridge({ notation: '7F' });
      const { body: pigment } = await addPigment();
      const declare = async (otherProductId: string) =>
        (
          await service.post('/configurations/equivalences', {
            productId: cartridge.id,
            otherProductId,
            reason: 'no reason',
          })
        ).status;
      expect(await declare(pigment.id)).toBe(400);
      expect(await declare(cartridge.id)).toBe(400);
      expect(await declare(uuidv7())).toBe(404);
    });
  });

  describe('a symbol', () => {
    let product: ProductView;
    beforeAll(async () => {
      ({ body: product } = await addPigment({ name: 'Scanned', shade: 'Clay' }));
      await service.made(`/products/${product.id}/gtins`, { gtin: '9506000140445', contentCount: 1 });
      await service.made(`/products/${product.id}/gtins`, { gtin: '19506000140442', contentCount: 12 });
    });

    it('says lot and dates, and names the product of its GTIN', async () => {
      const seen = await read({
        text: '010950600014044511260101172806001012L-7\u001d21S9',
        symbologyIdentifier: ']d2',
      });
      expect(seen.status).toBe(200);
      expect(seen.body).toMatchObject({
        kind: 'gs1',
        gtin: '09506000140445',
        lotCode: '12L-7',
        serial: 'S9',
        useBy: '2028-06-30',
        useByPrecision: 'month',
        producedOn: '2026-01-01',
        contentCount: 1,
      });
      expect(seen.body.product?.id).toBe(product.id);
    });

    it('of an outer pack says how many are inside', async () => {
      const seen = await read({ text: '19506000140442' });
      expect(seen.body).toMatchObject({ kind: 'product only', contentCount: 12, lotCode: null });
    });

    it('with a wrong check digit is answered as invalid, with the place of the fault', async () => {
      const seen = await read({ text: '0109506000140446', symbologyIdentifier: ']d2' });
      expect(seen.status).toBe(200);
      expect(seen.body).toMatchObject({ kind: 'invalid', product: null });
      expect(seen.body.faults[0]?.code).toBe('check-digit');
    });

    it('of an unregistered product names its number and no product', async () => {
      const seen = await read({ text: '9506000111117', symbologyIdentifier: ']E0' });
      expect(seen.body).toMatchObject({ gtin: '09506000111117', product: null, contentCount: null });
    });

    it.each([
      {},
      { text: '' },
      { text: 7 },
      { text: 'x'.repeat(5000) },
      { text: 'a', symbologyIdentifier: 'd2' },
    ])('that was not sent properly is refused: %j', async (body) => {
      expect((await read(body)).status).toBe(400);
    });
  });

  it("refuses another studio's address and ids of no product", async () => {
    const elsewhere = await service.get(`${service.url}/api/v1/studios/${uuidv7()}/products`);
    expect(elsewhere.status).toBe(404);
    expect((await service.get(`/products/${uuidv7()}`)).status).toBe(404);
    expect((await service.get('/products/1')).status).toBe(400);
  });

  it('refuses malformed JSON and a body that is too large', async () => {
    const malformed = await service.send<ProblemBody>('POST', '/products', '{"kind": "pigment"');
    expect([malformed.status, malformed.body.code]).toEqual([400, 'malformed-request']);
    const large = await service.post<ProblemBody>('/makers', { name: 'x'.repeat(1_100_000) });
    expect([large.status, large.body.code]).toEqual([413, 'body-too-large']);
  });
});
