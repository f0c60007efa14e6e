import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { ClientExportView } from '../../src/sessions/client-export.views.js';
import { type RunningService, usualEngine } from '../support/service.js';
import { startStudio } from '../support/shared-service.js';

/** More than are read at once. */
const claimCount = 201;

describe.each(usualEngine)('a client with many legal claims on %s', (engine) => {
  let service: RunningService;
  let clientId: string;
  beforeAll(async () => {
    service = await startStudio(engine);
    ({ id: clientId } = await service.made<{ id: string }>('/clients', { name: 'Ines Arvid' }));
    for (let count = 1; count <= claimCount; count += 1) {
      await service.made(`/clients/${clientId}/legal-claims`, { reason: `claim ${count}` });
    }
  }, 120_000);
  afterAll(() => service.dispose());

  it('is handed out all of them, the latest first', async () => {
    const { legalClaims } = await service.seen<ClientExportView>(`/clients/${clientId}/export`);
    const expected = Array.from({ length: claimCount }, (_, index) => `claim ${claimCount - index}`);
    expect(legalClaims.map(({ reason }) => reason)).toEqual(expected);
  });
});
