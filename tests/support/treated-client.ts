import { receive, type SampleStudio, walkIn } from './sample-studio.js';
import type { RunningService } from './service.js';

/** Texts about one invented person, each found nowhere else. */
export const texts = {
  name: 'Ottilie Brandner',
  contact: 'ottilie@example.org',
  note: 'afraid of needles',
  bodyPlaceDetail: 'scar over the left brow',
  complications: 'fainted briefly',
  healedNote: 'patchy at the tail',
  reason: 'she asked for it',
  reversed: 'that was another visit',
};

export interface TreatedClient {
  clientId: string;
  reference: string;
  sessionId: string;
  /** Of the pigment that touched them. */
  lotId: string;
  /** The use that stands. */
  useId: string;
}

/** A client with one completed session, and a text about them wherever there can be one. */
export async function makeTreatedClient(
  service: RunningService,
  studio: SampleStudio,
  given: Partial<typeof texts> = {},
): Promise<TreatedClient> {
  const told = { ...texts, ...given };
  const { id: clientId, reference } = await service.made<{ id: string; reference: string }>('/clients', {
    name: told.name,
    contact: told.contact,
    note: told.note,
  });
  const pigment = await receive(service, studio, {
    productId: studio.umberId,
    code: `P-${clientId.slice(-12)}`,
  });
  const sessionId = await walkIn(service, studio, { clientId, bodyPlaceDetail: told.bodyPlaceDetail });
  const containerId = pigment.containers[0]?.id;
  const completed = await service.made<{ uses: { id: string }[] }>(`/sessions/${sessionId}/completion`, {
    lines: [],
    besides: [
      { containerId, drops: 2, reason: told.reason },
      { containerId, drops: 1, reason: 'the second drop' },
    ],
    complications: told.complications,
    signedBy: studio.ownerId,
  });
  await service.made(`/sessions/${sessionId}/healed-result`, {
    retainedColourPercent: 70,
    note: told.healedNote,
  });
  const [standing, mistaken] = completed.uses;
  await service.made(`/sessions/${sessionId}/uses/${mistaken?.id}/reversal`, { reason: told.reversed });
  return { clientId, reference, sessionId, lotId: pigment.lot.id, useId: standing?.id ?? '' };
}
