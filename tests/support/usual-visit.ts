import { receive, type SampleStudio, walkIn } from './sample-studio.js';
import type { RunningService } from './service.js';

export interface UsualVisit {
  clientId: string;
  reference: string;
  sessionId: string;
}

/**
 * A visit as most are: two pigments and a thinner in two cups, two cartridges, an anaesthetic, something put back, and a
 * pigment that was used although it had expired.
 */
export async function makeUsualVisit(service: RunningService, studio: SampleStudio): Promise<UsualVisit> {
  const { id: clientId, reference } = await service.made<{ id: string; reference: string }>('/clients', {
    name: 'Berta Quendler',
    contact: '+43 1 5550199',
    note: 'prefers the early morning',
  });
  const goods = async (productId: string, code: string, more: object = {}) => {
    const { containers } = await receive(service, studio, { productId, code, ...more });
    return containers[0]?.id ?? '';
  };
  const umber = await goods(studio.umberId, 'UV-201', { useBy: '2028-06-30' });
  const thinner = await goods(studio.thinnerId, 'UV-202');
  const old = await goods(studio.umberId, 'UV-OLD', { useBy: '2020-01-31' });
  const liner = await goods(studio.linerId, 'UV-203', { quantity: 20 });
  const gel = await goods(studio.gelId, 'UV-204');
  const sessionId = await walkIn(service, studio, { clientId, bodyPlaceDetail: 'both brows, thin tail' });
  for (const symbol of ['UV-201', 'UV-202', 'UV-203']) {
    await service.made(`/sessions/${sessionId}/scans`, { symbol });
  }
  for (const [label, drops] of [
    ['base', 3],
    ['shadow', 2],
  ] as const) {
    const mix = await service.made<{ id: string }>(`/sessions/${sessionId}/mixes`, { label });
    const path = `/sessions/${sessionId}/mixes/${mix.id}/components`;
    await service.made(path, { containerId: umber, drops });
    await service.made(path, { containerId: thinner, drops: 1 });
  }
  const { lines } = await service.seen<{ lines: { id: string; containerId: string }[] }>(
    `/sessions/${sessionId}/tray`,
  );
  const now = Date.now();
  const ago = (minutes: number) => new Date(now - minutes * 60_000).toISOString();
  await service.made(`/sessions/${sessionId}/completion`, {
    lines: lines
      .filter(({ containerId }) => containerId === liner)
      .map(({ id }) => ({ trayLineId: id, outcome: 'back unopened' })),
    besides: [
      { containerId: liner, pieces: 2 },
      { containerId: gel, appliedAt: ago(50), removedAt: ago(30), appliedBy: studio.ownerId },
      { containerId: old, drops: 1, reason: 'the only warm one that was left' },
    ],
    complications: 'slight redness, gone after an hour',
    signedBy: studio.ownerId,
  });
  return { clientId, reference, sessionId };
}
