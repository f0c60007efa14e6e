import type { WrittenClientView } from '../../../src/clients/clients.views.js';
import type { WrittenLegalClaimView } from '../../../src/clients/legal-claims.views.js';
import type { RecordingService } from './recording-service.js';
import type { Texts } from './texts.js';
import type { LivedClients } from './visits.js';

/** What clients ask for, and what has to be kept of them. */
export async function liveRights(
  service: RecordingService,
  texts: Texts,
  { treatedId }: LivedClients,
): Promise<void> {
  const at = `/clients/${treatedId}`;
  const claim = await service.made<WrittenLegalClaimView>(`${at}/legal-claims`, {
    reason: texts.ofClient('claim'),
  });
  await service.made(`${at}/legal-claims/${claim.id}/end`, { reason: texts.ofClient('claim over') });
  await service.made(`${at}/legal-claims`, { reason: texts.ofClient('another claim') });
  const add = (what: string) => service.made<WrittenClientView>('/clients', { name: texts.ofClient(what) });
  const unwanted = await add('unwanted');
  await service.made(`/clients/${unwanted.id}/erasure`, {
    ground: 'consent withdrawn',
    overrides: ['no legal obligation applies'],
  });
  await service.made('/retention', { clientIds: [(await add('kept')).id] });
}
