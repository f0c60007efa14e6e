import { v7 as uuidv7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { RecallView } from '../../src/recalls/recalls.views.js';
import { propertySettings } from '../support/property-settings.js';
import { SeededRandom } from '../support/random.js';
import { makeSampleStudio, receive, type SampleStudio } from '../support/sample-studio.js';
import { RunningService, startInFolder, startService, usualEngine } from '../support/service.js';
import { Store } from '../support/store.js';

const item = { gtins: [], productIds: [], lots: [], openEnded: false };
const others = 5;
const rounds = process.env.SOAK ? 100 : 4;

describe.each(usualEngine)('a service killed while a chain opens a recall, on %s', (engine) => {
  let service: RunningService;
  let studio: SampleStudio;
  let store: Store;
  const ends: { service: RunningService; placeId: string }[] = [];

  const startAgain = async () => {
    const { databaseUrl: given } = service;
    const environment: Record<string, string> = given === undefined ? {} : { DATABASE_URL: given };
    const { url, child, log } = await startInFolder(service.dataFolder, environment);
    const seen = ({ dataFolder, databaseUrl, studioId, token }: RunningService) =>
      new RunningService(url, dataFolder, databaseUrl, child, log, studioId, token);
    service = seen(service);
    for (const end of ends) end.service = seen(end.service);
  };

  beforeAll(async () => {
    service = await startService(engine);
    studio = await makeSampleStudio(service);
    store = await Store.open(service.dataFolder, service.databaseUrl);
    for (let index = 0; index < others; index += 1) {
      const name = `Studio ${index}`;
      const added = await service.made<{ studioId: string }>('/chain/studios', { name, timeZone: 'UTC' });
      const end = await store.seenBy(service, await store.ownerOf(added.studioId));
      const [place] = await end.seen<{ id: string }[]>('/places');
      ends.push({ service: end, placeId: place?.id ?? '' });
    }
  });
  afterAll(async () => {
    await store.close();
    await service.dispose();
  });

  it('has it nowhere, or soon in every studio with its lots on hold', { timeout: 600_000 }, async () => {
    const { seed } = propertySettings('kills while a chain opens a recall', rounds);
    const random = new SeededRandom(seed);
    let everywhere = 0;
    for (let round = 0; round < rounds; round += 1) {
      // Codes that no slip turns into each other.
      const code = `K${String(round).repeat(3)}-${random.below(900_000) + 100_000}`;
      for (const end of ends) {
        await receive(end.service, { ...studio, placeId: end.placeId }, { productId: studio.umberId, code });
      }
      const id = uuidv7();
      const scope = { items: [{ ...item, productIds: [studio.umberId], lots: [{ kind: 'code', code }] }] };
      const opening = service
        .post('/recalls', { id, title: code, scope, chainWide: true })
        .catch(() => undefined);
      await new Promise((resolve) => setTimeout(resolve, 5 + random.below(60)));
      await service.stop('SIGKILL');
      await opening;
      await startAgain();
      const opened = (await service.get(`/recalls/${id}`)).status === 200;
      if (!opened) {
        for (const end of ends) expect((await end.service.get(`/recalls/${id}`)).status).toBe(404);
        continue;
      }
      everywhere += 1;
      for (const end of ends) {
        await expect
          .poll(async () => (await end.service.get<RecallView>(`/recalls/${id}`)).body, { timeout: 20_000 })
          .toMatchObject({ affectedLots: 1, heldLots: 1, standingHold: true });
      }
    }
    process.stdout.write(`${everywhere} of ${rounds} recalls were opened before the kill\n`);
  });
});
