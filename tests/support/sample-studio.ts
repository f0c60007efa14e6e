import type { RunningService } from './service.js';

interface Made {
  id: string;
}

export interface ReceivedContainer {
  id: string;
  labelCode: string;
}

export interface ReceivedLine {
  lot: { id: string; code: string | null; useBy: string | null; version: number };
  containers: ReceivedContainer[];
  holds: { id: string; reason: string; lotId: string | null; containerId: string | null }[];
  warnings: string[];
}

/** A small invented studio: one maker, pigments, a needle cartridge, an anaesthetic, a procedure and a client. */
export interface SampleStudio {
  ownerId: string;
  placeId: string;
  makerId: string;
  umberId: string;
  thinnerId: string;
  linerId: string;
  gelId: string;
  procedureId: string;
  clientId: string;
  /** GTIN of a single liner cartridge; 950 is GS1's range for examples. */
  linerGtin: string;
}

const linerGtin = '09506000134352';

export async function makeSampleStudio(service: RunningService): Promise<SampleStudio> {
  const [owner] = await service.seen<Made[]>('/people');
  const [place] = await service.seen<Made[]>('/places');
  const maker = await service.made<Made>('/makers', { name: 'Halden Colour Works' });
  const makerId = maker.id;
  const umber = await service.made<Made>('/products', {
    kind: 'pigment',
    makerId,
    name: 'Umber',
    shade: 'Warm 02',
    pigmentRole: 'colour',
    volumeMicrolitres: 10_000,
    openedLife: 'P12M',
    dropMicrolitres: 40,
  });
  const thinner = await service.made<Made>('/products', {
    kind: 'pigment',
    makerId,
    name: 'Thinner',
    pigmentRole: 'thinner',
    volumeMicrolitres: 10_000,
  });
  const liner = await service.made<Made>('/products', {
    kind: 'cartridge',
    makerId,
    name: 'Fine liner',
    notation: '1207RL',
    machineFit: 'common bayonet',
    membrane: 'yes',
  });
  await service.made(`/products/${liner.id}/gtins`, { gtin: linerGtin });
  const gel = await service.made<Made>('/products', {
    kind: 'consumable',
    makerId,
    name: 'Numbing gel',
    openedLife: 'P3M',
  });
  const procedure = await service.made<Made>('/procedures', { name: 'Powder brows', bodyPlace: 'brows' });
  const client = await service.made<Made>('/clients', { name: 'Ida Sommer', contact: '+43 1 5550100' });
  return {
    ownerId: owner?.id ?? '',
    placeId: place?.id ?? '',
    makerId,
    umberId: umber.id,
    thinnerId: thinner.id,
    linerId: liner.id,
    gelId: gel.id,
    procedureId: procedure.id,
    clientId: client.id,
    linerGtin,
  };
}

export interface GoodsToReceive {
  productId: string;
  code?: string | null;
  useBy?: string | null;
  quantity?: number;
  [field: string]: unknown;
}

/** Receives one line and returns what it made. */
export async function receive(
  service: RunningService,
  studio: SampleStudio,
  goods: GoodsToReceive,
): Promise<ReceivedLine> {
  const { code = 'L1', useBy = '2099-12-31', quantity = 1, ...line } = goods;
  const receipt = await service.made<{ lines: ReceivedLine[] }>('/deliveries', {
    origin: 'gift or sample',
    lines: [
      {
        ...line,
        ...(code === null ? { codeState: 'none printed' } : { codes: [{ kind: 'lot', code }] }),
        useBy,
        quantity,
        placeId: studio.placeId,
      },
    ],
  });
  const [received] = receipt.lines;
  if (!received) throw new Error('The delivery was answered without a line.');
  return received;
}

/** A walk-in of the sample client, in setup. */
export async function walkIn(
  service: RunningService,
  studio: SampleStudio,
  given: Record<string, unknown> = {},
): Promise<string> {
  const session = await service.made<Made>('/sessions/walk-in', {
    clientId: studio.clientId,
    artistId: studio.ownerId,
    procedureId: studio.procedureId,
    visitKind: 'first session',
    ...given,
  });
  return session.id;
}
