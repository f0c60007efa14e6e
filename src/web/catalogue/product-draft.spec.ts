import { expect, it } from 'vitest';
import { productFields } from '../../catalogue/product-fields.js';
import { draftOfProduct, fieldsOfDraft, newProductDraft } from './product-draft.js';

it('says millilitres in microlitres, with a comma or a point', () => {
  const draft = { ...newProductDraft('pigment'), openedLifeAmount: '12' };
  const fields = { volumeMicrolitres: 12_500, openedLife: 'P12M', dropMicrolitres: null, shade: null };
  for (const millilitres of ['12,5', ' 12.5 ']) {
    expect(fieldsOfDraft({ ...draft, millilitres })).toMatchObject({ fields });
  }
});

it('names every field that holds no number', () => {
  const draft = {
    ...newProductDraft('pigment'),
    millilitres: 'ten',
    dropMicrolitres: '-1',
    openedLifeAmount: 'x',
  };
  expect(fieldsOfDraft(draft)).toEqual({
    unreadable: ['volumeMicrolitres', 'dropMicrolitres', 'openedLife'],
  });
});

it.each([
  ['pigment', { millilitres: '10', colourIndexNumbers: '77491 15850:1,77891' }],
  ['cartridge', { notation: '1207RL' }],
  ['cartridge', { points: '3' }],
  ['consumable', { openedLifeAmount: '48', openedLifeUnit: 'hours' as const }],
] as const)('hands over nothing that is foreign to a %s', (kind, filledIn) => {
  const strays = { shade: 'Umber', notation: '', machineFit: 'bayonet' };
  const read = fieldsOfDraft({ ...newProductDraft(kind), ...strays, ...filledIn });
  expect('fields' in read && productFields(kind, read.fields)).toHaveProperty('fields');
});

it('gives back a product as it was when nothing is changed', () => {
  const known = {
    shade: 'Warm 02',
    pigmentRole: 'colour' as const,
    volumeMicrolitres: 10_000,
    openedLife: 'P30D',
    dropMicrolitres: 40,
    colourIndexNumbers: ['77491', '77891'],
  };
  const product = {
    ...known,
    id: 'p',
    kind: 'pigment' as const,
    makerId: 'm',
    makerName: 'Halden',
    name: 'Umber',
    stockForm: 'container' as const,
    points: null,
    grouping: null,
    diameterHundredthsMillimetre: null,
    taper: null,
    machineFit: null,
    membrane: null,
    notation: null,
    gtins: [],
    archived: false,
    version: 1,
  };
  expect(fieldsOfDraft(draftOfProduct(product))).toEqual({ fields: known });
});
