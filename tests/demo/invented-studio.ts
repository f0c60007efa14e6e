import type { RunningService } from '../support/service.js';

interface Made {
  id: string;
}

/** Everything here is invented. GTINs begin with 950, GS1's range for examples. */
export interface InventedStudio {
  artistId: string;
  placeId: string;
  supplierId: string;
  umber: string;
  ash: string;
  thinner: string;
  liner: string;
  singlePoint: string;
  magnum: string;
  gel: string;
  brows: string;
  eyeliner: string;
}

export const gtins = {
  liner: '09506000134352',
  linerBox: '19506000134359',
  singlePoint: '09506000134369',
  magnum: '09506000134376',
  umber: '09506000134383',
  ash: '09506000134390',
  thinner: '09506000134406',
};

/** Fills an empty studio with people, products, places, procedures and a kit list. */
export async function makeInventedStudio(service: RunningService): Promise<InventedStudio> {
  const studio = await service.seen<{ version: number }>('');
  await service.patch('', { version: studio.version, name: 'Studio Larkmoor', timeZone: 'Europe/Vienna' });
  const add = async (path: string, body: object) => (await service.made<Made>(path, body)).id;
  const artistId = await add('/people', { name: 'Mira Anders', role: 'artist' });
  const placeId = await add('/places', { name: 'Pigment shelf', kind: 'shelf' });
  const supplierId = await add('/suppliers', { name: 'Fennel & Rook Studio Supply' });
  const colours = await add('/makers', { name: 'Halden Colour Works' });
  const needles = await add('/makers', { name: 'Corvin Needleworks' });

  const pigment = (name: string, shade: string | null, more: object = {}) =>
    add('/products', {
      kind: 'pigment',
      makerId: colours,
      name,
      shade,
      pigmentRole: 'colour',
      volumeMicrolitres: 10_000,
      openedLife: 'P12M',
      dropMicrolitres: 40,
      ...more,
    });
  const cartridge = (name: string, notation: string) =>
    add('/products', {
      kind: 'cartridge',
      makerId: needles,
      name,
      notation,
      machineFit: 'common bayonet',
      membrane: 'yes',
    });
  const made = {
    artistId,
    placeId,
    supplierId,
    umber: await pigment('Brow pigment', 'Warm umber', { colourIndexNumbers: ['77491', '77499'] }),
    ash: await pigment('Brow pigment', 'Cool ash', { colourIndexNumbers: ['77499'] }),
    // No opened life on this label: the studio's own assumption is used, and said.
    thinner: await pigment('Thinner', null, {
      pigmentRole: 'thinner',
      openedLife: null,
      dropMicrolitres: null,
    }),
    liner: await cartridge('Liner', '1207RL'),
    singlePoint: await cartridge('Single point', '1001RL'),
    magnum: await cartridge('Magnum', '1209M'),
    gel: await add('/products', {
      kind: 'consumable',
      makerId: colours,
      name: 'Numbing gel',
      openedLife: 'P3M',
    }),
  };
  for (const product of ['liner', 'singlePoint', 'magnum', 'umber', 'ash', 'thinner'] as const) {
    await service.made(`/products/${made[product]}/gtins`, { gtin: gtins[product] });
  }
  await service.made(`/products/${made.liner}/gtins`, { gtin: gtins.linerBox, contentCount: 20 });
  const brows = await add('/procedures', { name: 'Powdered brows', bodyPlace: 'brows' });
  const eyeliner = await add('/procedures', { name: 'Eyeliner', bodyPlace: 'upper eyelids' });
  const kit = await service.put(`/procedures/${brows}/kit-list`, {
    items: [
      { productId: made.liner, quantity: 1 },
      { productId: made.magnum, quantity: 1 },
      { productId: made.umber, quantity: 1 },
    ],
  });
  if (kit.status >= 300) throw new Error(`The kit list was refused: ${JSON.stringify(kit.body)}`);
  for (const [subjectId, minimumPieces] of [
    [made.liner, 20],
    [made.umber, 1],
  ] as const) {
    const level = await service.put('/stock/levels', { subjectKind: 'product', subjectId, minimumPieces });
    if (level.status >= 300) throw new Error(`The level was refused: ${JSON.stringify(level.body)}`);
  }
  return { ...made, brows, eyeliner };
}
