import { randomBytes } from 'node:crypto';
import { v7 as uuidv7 } from 'uuid';
import { Maker } from '../../src/catalogue/maker.entity.js';
import { labelCodeRandomBytes, makeLabelCode } from '../../src/catalogue/own-label.js';
import { Product } from '../../src/catalogue/product.entity.js';
import type { Actor } from '../../src/platform/actor.js';
import type { Transaction } from '../../src/platform/database/transaction.js';
import { Container } from '../../src/stock/container.entity.js';
import { Lot } from '../../src/stock/lot.entity.js';
import { Place } from '../../src/stock/place.entity.js';
import type { Store } from './store.js';

/** A studio with one product and one place, and nothing in it yet. */
export interface BareStock {
  actor: Actor;
  productId: string;
  placeId: string;
}

export async function makeBareStock(store: Store): Promise<BareStock> {
  const actor = await store.makeStudio();
  const { studioId, chainId } = actor;
  const makerId = uuidv7();
  const stock = { actor, productId: uuidv7(), placeId: uuidv7() };
  await inTransaction(store, actor, async (transaction) => {
    const createdAt = transaction.recordedAt;
    await transaction.insert(Maker, { chainId, id: makerId, name: 'Farbwerk', version: 1, createdAt });
    await transaction.insert(Product, {
      chainId,
      id: stock.productId,
      makerId,
      kind: 'pigment',
      name: 'Umber',
      stockForm: 'container',
      shade: null,
      pigmentRole: 'colour',
      volumeMicrolitres: 10_000,
      openedLife: null,
      dropMicrolitres: null,
      colourIndexNumbers: [],
      points: null,
      grouping: null,
      diameterHundredthsMillimetre: null,
      taper: null,
      machineFit: null,
      membrane: null,
      version: 1,
      createdAt,
      archivedAt: null,
    });
    await transaction.insert(Place, {
      studioId,
      id: stock.placeId,
      name: 'Shelf',
      kind: 'shelf',
      createdAt,
      archivedAt: null,
    });
  });
  return stock;
}

/** A write of no request, as tests make them. */
export function inTransaction<Answer>(
  store: Store,
  actor: Actor,
  work: (transaction: Transaction) => Promise<Answer>,
): Promise<Answer> {
  const subject = { kind: 'studio', id: actor.studioId };
  return store.transactions.write(actor, { id: null, action: 'test.write', subject, content: null }, work);
}

/** An empty container, of a lot of its own unless one is given. */
export async function insertContainer(
  transaction: Transaction,
  { productId, placeId, actor }: BareStock,
  lotId?: string,
): Promise<{ lotId: string; containerId: string }> {
  const { studioId, recordedAt } = transaction;
  const ids = { lotId: lotId ?? uuidv7(), containerId: uuidv7() };
  if (lotId === undefined) {
    await transaction.insert(Lot, {
      studioId,
      id: ids.lotId,
      chainId: actor.chainId,
      productId,
      code: null,
      codeState: 'none printed',
      useBy: null,
      useByPrecision: 'none printed',
      manufacturedOn: null,
      origin: 'delivery',
      version: 1,
      createdAt: recordedAt,
    });
  }
  await transaction.insert(Container, {
    studioId,
    id: ids.containerId,
    lotId: ids.lotId,
    form: 'box',
    labelCode: makeLabelCode(randomBytes(labelCodeRandomBytes)),
    placeId,
    ownerId: null,
    state: 'sealed',
    openedAt: null,
    openedBy: null,
    receivedAt: recordedAt,
    endedAt: null,
    openingToldAt: null,
    usableThrough: null,
    endedFrom: null,
    version: 1,
  });
  return ids;
}
