import fc from 'fast-check';
import { v7 as uuidv7 } from 'uuid';
import { Maker } from '../../src/catalogue/maker.entity.js';
import { Product } from '../../src/catalogue/product.entity.js';
import { Client } from '../../src/clients/client.entity.js';
import type { Actor } from '../../src/platform/actor.js';
import type { Transaction } from '../../src/platform/database/transaction.js';
import { Mix } from '../../src/sessions/mix.entity.js';
import { Procedure } from '../../src/sessions/procedure.entity.js';
import { Session } from '../../src/sessions/session.entity.js';
import { SessionUse, SessionUseReversal } from '../../src/sessions/session-use.entity.js';
import type { KnownBy, VisitKind } from '../../src/sessions/vocabulary.js';
import { Blend, BlendParent } from '../../src/stock/blend.entity.js';
import { Container } from '../../src/stock/container.entity.js';
import { Lot } from '../../src/stock/lot.entity.js';
import { Movement } from '../../src/stock/movement.entity.js';
import { Place } from '../../src/stock/place.entity.js';
import type { Store } from './store.js';

/** Lots, blends of earlier lots, and uses, by index; what a test knows by itself of who was touched by what. */
export interface ExposureGraph {
  /** Parents of each lot with what each gave, in microlitres; empty: no blend. Parents come before their blends. */
  lots: { parent: number; microlitres: number }[][];
  clients: number;
  /** Client of each session. */
  sessions: number[];
  uses: {
    session: number;
    lot: number;
    microlitres: number;
    mixed: boolean;
    reversed: boolean;
    /** Left out: its own label. */
    knownBy?: KnownBy;
    /** Instant; left out: now. */
    occurredAt?: string;
  }[];
  /** Kind of visit of each session; left out: first sessions. */
  visitKinds?: VisitKind[];
  /** Product of each lot, from 0; left out: all are of one. */
  products?: number[];
  /** The container of each lot; left out: bottles that nobody opened. Instants. */
  containers?: GraphContainer[];
}

export type GraphContainer =
  | { form: 'bottle'; openedAt: string | null; endedAt: string | null }
  /** A box of pieces; `emptiedAt`: when the last piece was taken, the box itself being kept. */
  | { form: 'box'; receivedAt: string; emptiedAt: string | null; endedAt: string | null };

/** Ids by index of the graph. */
export interface InsertedGraph {
  lots: string[];
  clients: string[];
  sessions: string[];
  uses: string[];
}

const mostLots = 9;
const plenty = 50_000_000;

export const anyExposureGraph: fc.Arbitrary<ExposureGraph> = fc
  .record({
    lots: fc.array(
      fc.array(fc.record({ parent: fc.nat(mostLots), microlitres: fc.integer({ min: 1, max: 9_000 }) }), {
        maxLength: 4,
      }),
      { minLength: 1, maxLength: mostLots },
    ),
    clients: fc.integer({ min: 1, max: 4 }),
    sessions: fc.array(fc.nat(20), { minLength: 1, maxLength: 7 }),
    uses: fc.array(
      fc.record({
        session: fc.nat(20),
        lot: fc.nat(mostLots),
        microlitres: fc.oneof(fc.constant(0), fc.integer({ min: 1, max: 400 })),
        mixed: fc.boolean(),
        reversed: fc.boolean(),
      }),
      { maxLength: 14 },
    ),
  })
  .map(({ lots, clients, sessions, uses }) => ({
    lots: lots.map((parents, lot) => parents.filter(({ parent }) => parent < lot)),
    clients,
    sessions: sessions.map((client) => client % clients),
    uses: uses.map((use) => ({
      ...use,
      session: use.session % sessions.length,
      lot: use.lot % lots.length,
    })),
  }));

/** Writes a graph as rows into a studio of its own. */
export async function insertGraph(
  store: Store,
  graph: ExposureGraph,
): Promise<{ actor: Actor; ids: InsertedGraph }> {
  const actor = await store.makeStudio();
  const ids: InsertedGraph = {
    lots: graph.lots.map(() => uuidv7()),
    clients: Array.from({ length: graph.clients }, () => uuidv7()),
    sessions: graph.sessions.map(() => uuidv7()),
    uses: graph.uses.map(() => uuidv7()),
  };
  await store.transactions.write(
    actor,
    { id: null, action: 'test.insert', subject: { kind: 'studio', id: actor.studioId }, content: null },
    async (transaction) => {
      const containers = await insertLots(transaction, graph, ids);
      await insertSessions(transaction, store, graph, ids);
      await insertUses(transaction, graph, ids, containers);
    },
  );
  return { actor, ids };
}

function at(list: readonly string[], index: number): string {
  const id = list[index];
  if (id === undefined) throw new RangeError(`The graph has no ${index}.`);
  return id;
}

function movement(transaction: Transaction, given: Partial<Movement>): Movement {
  return {
    studioId: transaction.studioId,
    id: uuidv7(),
    lotId: '',
    containerId: '',
    kind: 'received',
    pieces: 0,
    microlitres: 0,
    reversesId: null,
    sessionId: null,
    reason: null,
    occurredAt: transaction.recordedAt,
    recordedAt: transaction.recordedAt,
    personId: null,
    via: 'api',
    ...given,
  };
}

function containerRow(
  container: GraphContainer | undefined,
  recordedAt: string,
): Pick<Container, 'form' | 'state' | 'openedAt' | 'receivedAt' | 'endedAt' | 'endedFrom'> {
  const openedAt = container?.form === 'bottle' ? container.openedAt : null;
  const present = openedAt === null ? 'sealed' : 'opened';
  const endedAt = container?.endedAt ?? null;
  return {
    form: container?.form ?? 'bottle',
    state: endedAt === null ? present : 'finished',
    openedAt,
    receivedAt: container?.form === 'box' ? container.receivedAt : recordedAt,
    endedAt,
    endedFrom: endedAt === null ? null : present,
  };
}

const piecesInBox = 5;

function piecesReceived(container: GraphContainer | undefined): Partial<Movement> {
  return container?.form === 'box' ? { pieces: piecesInBox, occurredAt: container.receivedAt } : {};
}

async function emptyBox(
  transaction: Transaction,
  container: GraphContainer | undefined,
  ids: { lotId: string; containerId: string },
): Promise<void> {
  if (container?.form !== 'box' || container.emptiedAt === null) return;
  const taken = { kind: 'wasted', pieces: -piecesInBox, occurredAt: container.emptiedAt } as const;
  await transaction.insert(Movement, movement(transaction, { ...ids, ...taken }));
}

async function insertLots(
  transaction: Transaction,
  graph: ExposureGraph,
  ids: InsertedGraph,
): Promise<string[]> {
  const { studioId, recordedAt } = transaction;
  const { chainId } = transaction.actor;
  const recorded = { occurredAt: recordedAt, recordedAt, personId: null, via: 'api' as const };
  const makerId = uuidv7();
  const productIds = Array.from({ length: 1 + Math.max(0, ...(graph.products ?? [])) }, () => uuidv7());
  const placeId = uuidv7();
  await transaction.insert(Maker, {
    chainId,
    id: makerId,
    name: 'Farbwerk',
    version: 1,
    createdAt: recordedAt,
  });
  for (const [index, productId] of productIds.entries()) {
    await transaction.insert(Product, {
      chainId,
      id: productId,
      makerId,
      kind: 'pigment',
      name: index === 0 ? 'Umber' : `Umber ${index}`,
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
      createdAt: recordedAt,
      archivedAt: null,
    });
  }
  await transaction.insert(Place, {
    studioId,
    id: placeId,
    name: 'Shelf',
    kind: 'shelf',
    createdAt: recordedAt,
    archivedAt: null,
  });
  const containers: string[] = [];
  for (const [index, parents] of graph.lots.entries()) {
    const lotId = at(ids.lots, index);
    const containerId = uuidv7();
    containers.push(containerId);
    await transaction.insert(Lot, {
      studioId,
      id: lotId,
      chainId,
      productId: at(productIds, graph.products?.[index] ?? 0),
      code: `L${index}`,
      codeState: 'printed',
      useBy: null,
      useByPrecision: 'none printed',
      manufacturedOn: null,
      origin: parents.length > 0 ? 'blend' : 'delivery',
      version: 1,
      createdAt: recordedAt,
    });
    await transaction.insert(Container, {
      studioId,
      id: containerId,
      lotId,
      labelCode: `A${lotId.slice(-11).toUpperCase()}`,
      placeId,
      ownerId: null,
      openedBy: null,
      openingToldAt: null,
      usableThrough: null,
      version: 1,
      ...containerRow(graph.containers?.[index], recordedAt),
    });
    const produced = parents.reduce((sum, parent) => sum + parent.microlitres, 0);
    await transaction.insert(
      Movement,
      movement(transaction, {
        lotId,
        containerId,
        kind: parents.length > 0 ? 'produced' : 'received',
        microlitres: plenty,
        ...piecesReceived(graph.containers?.[index]),
      }),
    );
    await emptyBox(transaction, graph.containers?.[index], { lotId, containerId });
    if (parents.length === 0) continue;
    const blendId = uuidv7();
    await transaction.insert(Blend, {
      studioId,
      id: blendId,
      lotId,
      containerId,
      microlitres: produced,
      ...recorded,
    });
    for (const { parent, microlitres } of parents) {
      const poured = movement(transaction, {
        lotId: at(ids.lots, parent),
        containerId: at(containers, parent),
        kind: 'blended',
        microlitres: -microlitres,
      });
      await transaction.insert(Movement, poured);
      await transaction.insert(BlendParent, {
        studioId,
        id: uuidv7(),
        blendId,
        lotId,
        parentLotId: poured.lotId,
        parentContainerId: poured.containerId,
        movementId: poured.id,
        microlitres,
        recordedAt,
      });
    }
  }
  return containers;
}

async function insertSessions(
  transaction: Transaction,
  store: Store,
  graph: ExposureGraph,
  ids: InsertedGraph,
): Promise<void> {
  const { studioId, recordedAt } = transaction;
  const procedureId = uuidv7();
  await transaction.insert(Procedure, {
    studioId,
    id: procedureId,
    name: 'Brows',
    bodyPlace: 'brows',
    touchUpFromDays: 30,
    touchUpToDays: 40,
    version: 1,
    createdAt: recordedAt,
    archivedAt: null,
  });
  for (const [index, id] of ids.clients.entries()) {
    const sealer = await store.dataKeys.make(transaction);
    await transaction.insert(Client, {
      studioId,
      id,
      reference: `CL${index}`,
      dataKeyId: sealer.dataKeyId,
      nameSealed: null,
      contactSealed: null,
      noteSealed: null,
      nameHash: null,
      contactHash: null,
      version: 1,
      createdAt: recordedAt,
      erasedAt: null,
    });
  }
  for (const [index, id] of ids.sessions.entries()) {
    await transaction.insert(Session, {
      studioId,
      id,
      clientId: at(ids.clients, graph.sessions[index] ?? 0),
      artistId: transaction.actor.personId ?? '',
      procedureId,
      visitKind: graph.visitKinds?.[index] ?? 'first session',
      bodyPlace: 'brows',
      bodyPlaceDetailSealed: null,
      state: 'completed',
      bookedAt: null,
      plannedStart: recordedAt,
      plannedAt: recordedAt,
      inSetupAt: recordedAt,
      completedAt: recordedAt,
      cancelledAt: null,
      notAttendedAt: null,
      followsSessionId: null,
      recordedFrom: 'tray',
      signedBy: null,
      signedAt: null,
      complicationsSealed: null,
      healedResultSealed: null,
      version: 1,
      createdAt: recordedAt,
      bookingHash: null,
    });
  }
}

async function insertUses(
  transaction: Transaction,
  graph: ExposureGraph,
  ids: InsertedGraph,
  containers: string[],
): Promise<void> {
  const { studioId, recordedAt } = transaction;
  const recorded = { occurredAt: recordedAt, recordedAt, personId: null, via: 'api' as const };
  for (const [index, use] of graph.uses.entries()) {
    const sessionId = at(ids.sessions, use.session);
    const lotId = at(ids.lots, use.lot);
    const containerId = at(containers, use.lot);
    const booked =
      use.microlitres === 0
        ? null
        : movement(transaction, {
            lotId,
            containerId,
            kind: 'used',
            microlitres: -use.microlitres,
            sessionId,
            ...(use.occurredAt !== undefined && { occurredAt: use.occurredAt }),
          });
    if (booked) await transaction.insert(Movement, booked);
    const mixId = use.mixed ? uuidv7() : null;
    if (mixId !== null) {
      await transaction.insert(Mix, {
        studioId,
        id: mixId,
        sessionId,
        label: 'base',
        occurredAt: recordedAt,
        recordedAt,
      });
    }
    await transaction.insert(SessionUse, {
      studioId,
      id: at(ids.uses, index),
      sessionId,
      clientId: at(ids.clients, graph.sessions[use.session] ?? 0),
      lotId,
      containerId,
      movementId: booked?.id ?? null,
      mixId,
      trayLineId: null,
      knownBy: use.knownBy ?? 'own label',
      pieces: 0,
      drops: null,
      microlitres: use.microlitres,
      againstRefusal: null,
      reasonSealed: null,
      appliedAt: null,
      removedAt: null,
      appliedBy: null,
      makerName: 'Farbwerk',
      productName: 'Umber',
      shade: null,
      lotCode: `L${use.lot}`,
      codes: [],
      useBy: null,
      ...recorded,
      ...(use.occurredAt !== undefined && { occurredAt: use.occurredAt }),
    });
    if (!use.reversed) continue;
    const undone =
      booked &&
      movement(transaction, { ...booked, id: uuidv7(), microlitres: use.microlitres, reversesId: booked.id });
    if (undone) await transaction.insert(Movement, undone);
    await transaction.insert(SessionUseReversal, {
      studioId,
      useId: at(ids.uses, index),
      movementId: undone?.id ?? null,
      reasonSealed: 'sealed',
      recordedAt,
      personId: null,
      via: 'api',
    });
  }
}
