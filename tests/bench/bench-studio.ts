import { v7 as uuidv7 } from 'uuid';
import type { SeededRandom } from '../support/random.js';
import type { RunningService } from '../support/service.js';
import { startService } from '../support/service.js';
import { Store } from '../support/store.js';
import { type BenchStock, fillShelves, type ShelfItem } from './bench-stock.js';
import { type LoadRequest, runLoad } from './keep-alive-load.js';
import { endWithBench } from './leave-nothing.js';

export interface BenchStudio {
  studioId: string;
  ownerId: string;
  artistId: string;
  /** Sessions in setup, each with an empty tray. */
  sessionIds: string[];
  stock: BenchStock;
}

const clients = 20;
const cartridgesOnTray = 6;
const bottlesInMix = 3;
const mixDrops = 2;

/** Makes a studio with stock, a kit list that names all of it, and sessions in setup, in an empty data folder. */
export async function makeBenchStudio(
  dataFolder: string,
  sessions: number,
  random: SeededRandom,
): Promise<BenchStudio> {
  const store = await Store.open(dataFolder);
  const actor = await store.makeStudio();
  const stock = await store.transactions.write(
    { ...actor, via: 'system' },
    { id: null, action: 'stock.receive', subject: { kind: 'studio', id: actor.studioId }, content: null },
    (transaction) => fillShelves(transaction, random),
  );
  await store.close();
  const service = endWithBench(await startService('sqlite', { dataFolder }));
  try {
    const { id: artistId } = await service.made<{ id: string }>('/people', {
      name: 'Artist',
      role: 'artist',
    });
    const { id: procedureId } = await service.made<{ id: string }>('/procedures', {
      name: 'Powdered brows',
      bodyPlace: 'brows',
    });
    const items = [...stock.cartridges, ...stock.bottles].map(({ productId }) => ({
      productId,
      quantity: 1,
    }));
    await service.put(`/procedures/${procedureId}/kit-list`, { items });
    const clientIds: string[] = [];
    for (let index = 0; index < clients; index += 1) {
      clientIds.push((await service.made<{ id: string }>('/clients', { name: `Client ${index + 1}` })).id);
    }
    const sessionIds = Array.from({ length: sessions }, () => uuidv7());
    await planSessions(service, sessionIds, { artistId, procedureId, clientIds });
    return { studioId: service.studioId, ownerId: actor.personId ?? '', artistId, sessionIds, stock };
  } finally {
    await service.stop();
  }
}

async function planSessions(
  service: RunningService,
  sessionIds: readonly string[],
  about: { artistId: string; procedureId: string; clientIds: readonly string[] },
): Promise<void> {
  const { artistId, procedureId, clientIds } = about;
  const path = `/api/v1/studios/${service.studioId}/sessions`;
  const chains = sessionIds.map((id, index): LoadRequest[] => [
    {
      kind: 'plan',
      path,
      body: {
        id,
        clientId: clientIds[index % clientIds.length],
        artistId,
        procedureId,
        visitKind: 'first session',
        plannedStart: new Date(Date.now() + 3_600_000).toISOString(),
      },
    },
    { kind: 'setup', path: `${path}/${id}/setup`, body: { id: uuidv7() } },
  ]);
  await runLoad(service, chains, 4);
}

const sessionPath = ({ studioId }: BenchStudio, sessionId: string) =>
  `/api/v1/studios/${studioId}/sessions/${sessionId}`;

function scanOf(studio: BenchStudio, sessionId: string, kind: string, item: ShelfItem): LoadRequest {
  const isGs1 = kind === 'cartridge';
  return {
    kind,
    path: `${sessionPath(studio, sessionId)}/scans`,
    body: {
      id: uuidv7(),
      symbol: item.symbol,
      ...(isGs1 ? { symbologyIdentifier: ']d2' } : {}),
      occurredAt: new Date().toISOString(),
    },
  };
}

/** What an artist scans at one setup: cartridges, then bottles, in the order of their ids so that sessions are alike. */
export function setupScans(studio: BenchStudio, sessionId: string, random: SeededRandom): LoadRequest[] {
  const { cartridges, bottles } = studio.stock;
  return [
    ...random
      .pickSome(cartridges, cartridgesOnTray)
      .map((item) => scanOf(studio, sessionId, 'cartridge', item)),
    ...random.pickSome(bottles, bottlesInMix).map((item) => scanOf(studio, sessionId, 'bottle', item)),
  ];
}

/** One bottle of a recalled lot, which is refused. */
export function refusedScan(studio: BenchStudio, sessionId: string, random: SeededRandom): LoadRequest[] {
  return random
    .pickSome(studio.stock.recalled, 1)
    .map((item) => scanOf(studio, sessionId, 'recalled bottle', item));
}

/** Lays out trays and drops a mix of its bottles for each session. */
export async function layOutTrays(
  service: RunningService,
  studio: BenchStudio,
  random: SeededRandom,
): Promise<void> {
  const chains = studio.sessionIds.map((sessionId): LoadRequest[] => {
    const mixId = uuidv7();
    const path = `${sessionPath(studio, sessionId)}/mixes`;
    const bottles = random.pickSome(studio.stock.bottles, bottlesInMix);
    return [
      ...random
        .pickSome(studio.stock.cartridges, cartridgesOnTray)
        .map((item) => scanOf(studio, sessionId, 'cartridge', item)),
      ...bottles.map((item) => scanOf(studio, sessionId, 'bottle', item)),
      { kind: 'mix', path, body: { id: mixId, label: 'base' } },
      ...bottles.map(({ containerId }) => ({
        kind: 'component',
        path: `${path}/${mixId}/components`,
        body: { id: uuidv7(), containerId, drops: mixDrops },
      })),
    ];
  });
  await runLoad(service, chains, 4);
}

/** The artist signs off: what lies on the tray was used. */
export function completion(studio: BenchStudio, sessionId: string): LoadRequest {
  return {
    kind: 'completion',
    path: `${sessionPath(studio, sessionId)}/completion`,
    body: { id: uuidv7(), lines: [], complications: null, signedBy: studio.artistId },
  };
}
