import { v7 as uuidv7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { ScanView } from '../../src/sessions/tray.views.js';
import { makeSampleStudio, receive, type SampleStudio, walkIn } from '../support/sample-studio.js';
import { type ProblemBody, type RunningService, usualEngine } from '../support/service.js';
import { startStudio } from '../support/shared-service.js';

describe.each(usualEngine)('what a device kept before it was sent, on %s', (engine) => {
  let service: RunningService;
  let studio: SampleStudio;

  beforeAll(async () => {
    service = await startStudio(engine);
    studio = await makeSampleStudio(service);
  });
  afterAll(() => service.dispose());

  it('is recorded in the name of whoever did it, and not of whoever is signed in by now', async () => {
    await receive(service, studio, { productId: studio.umberId, code: 'U-1' });
    const scans = `/sessions/${await walkIn(service, studio)}/scans`;
    const scan = { id: uuidv7(), symbol: 'U-1' };
    const asAnother = await service.post<ProblemBody>(scans, scan, { 'lotward-person': uuidv7() });
    expect([asAnother.status, asAnother.body.code]).toEqual([403, 'signed-in-as-another']);
    // Nothing of it was taken: the same id is accepted from whoever did it, and once.
    for (const _ of [1, 2]) {
      const own = await service.post<ScanView>(scans, scan, { 'lotward-person': studio.ownerId });
      expect([own.status, own.body.trayLineId]).toEqual([201, scan.id]);
    }
  });
});
