import type { CompanyView } from '../../../src/catalogue/companies.views.js';
import type { EquivalenceView } from '../../../src/catalogue/configurations.views.js';
import { checkDigit } from '../../../src/catalogue/gs1/check-digit.js';
import type { ProductView } from '../../../src/catalogue/products.views.js';
import type { RecordingService } from './recording-service.js';
import type { Texts } from './texts.js';

/** Products of the register, by id. */
export interface LivedRegister {
  supplierId: string;
  umberId: string;
  sandId: string;
  linerId: string;
  otherLinerId: string;
  gelId: string;
  linerGtin: string;
  /** Key of a cartridge configuration. */
  configuration: string;
}

let gtins = 0;

/** A number of GS1's example range (950) that no other studio of this run has. */
function freshGtin(): string {
  gtins += 1;
  const digits = `0950${String(gtins).padStart(9, '0')}`;
  return digits + checkDigit(digits);
}

/** Makers, suppliers and products of the chain. */
export async function liveRegister(service: RecordingService, texts: Texts): Promise<LivedRegister> {
  const maker = await service.made<CompanyView>('/makers', { name: texts('maker') });
  await service.changed('PATCH', `/makers/${maker.id}`, { version: 1, name: texts('maker renamed') });
  const supplier = await service.made<CompanyView>('/suppliers', { name: texts('supplier') });
  await service.changed('PATCH', `/suppliers/${supplier.id}`, {
    version: 1,
    name: texts('supplier renamed'),
  });

  const makerId = maker.id;
  const pigment = (name: string) =>
    service.made<ProductView>('/products', {
      kind: 'pigment',
      makerId,
      name: texts(name),
      shade: texts('shade'),
      pigmentRole: 'colour',
      volumeMicrolitres: 15_000,
      dropMicrolitres: 40,
      openedLife: 'P12M',
      colourIndexNumbers: ['77491'],
    });
  const cartridge = (name: string, notation: string) =>
    service.made<ProductView>('/products', {
      kind: 'cartridge',
      makerId,
      name: texts(name),
      notation,
      machineFit: texts('machine'),
      membrane: 'yes',
      taper: 'long',
    });
  const umber = await pigment('umber');
  const sand = await pigment('sand');
  const liner = await cartridge('liner', '1207RL');
  const otherLiner = await cartridge('other liner', '1205RL');
  const gel = await service.made<ProductView>('/products', {
    kind: 'consumable',
    makerId,
    name: texts('gel'),
    openedLife: 'P3M',
  });
  await service.changed('PATCH', `/products/${sand.id}`, {
    version: sand.version,
    makerId,
    name: texts('sand renamed'),
    shade: texts('shade renamed'),
  });
  const fitted = await service.changed<ProductView>('PATCH', `/products/${otherLiner.id}`, {
    version: otherLiner.version,
    notation: '1205RL',
    machineFit: texts('machine renamed'),
  });
  const archived = await service.made<ProductView>(`/products/${otherLiner.id}/archive`, {
    version: fitted.version,
  });
  await service.made(`/products/${otherLiner.id}/restore`, { version: archived.version });

  const linerGtin = freshGtin();
  await service.made(`/products/${liner.id}/gtins`, { gtin: linerGtin, contentCount: 1 });
  await service.changed('PATCH', `/products/${liner.id}/gtins/${linerGtin}`, {
    version: 1,
    productId: liner.id,
    contentCount: 1,
  });
  await service.post('/symbols/read', {
    id: undefined,
    text: linerGtin.slice(1),
    symbologyIdentifier: ']E0',
  });

  const declare = (reason: string) =>
    service.made<EquivalenceView>('/configurations/equivalences', {
      productId: liner.id,
      otherProductId: otherLiner.id,
      reason: texts(reason),
    });
  const mistaken = await declare('equal by mistake');
  await service.made(`/configurations/equivalences/${mistaken.id}/withdraw`);
  await declare('equal');
  const configurations =
    await service.seen<{ keys: string[]; products: { id: string }[] }[]>('/configurations');
  const own = configurations.find(({ products }) => products.some(({ id }) => id === liner.id));
  return {
    supplierId: supplier.id,
    umberId: umber.id,
    sandId: sand.id,
    linerId: liner.id,
    otherLinerId: otherLiner.id,
    gelId: gel.id,
    linerGtin,
    configuration: own?.keys[0] ?? '',
  };
}
