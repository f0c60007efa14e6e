import type { AlertPageView } from '../../../src/alerts/alerts.views.js';
import type { LivedPeople } from './access.js';
import type { RecordingService } from './recording-service.js';
import type { Texts } from './texts.js';

const day = (days: number) => new Date(Date.now() + days * 86_400_000).toISOString().slice(0, 10);

/** What people do with the alerts that all else opened, and how they want to be told of them. */
export async function liveAlerts(
  service: RecordingService,
  texts: Texts,
  people: LivedPeople,
): Promise<void> {
  const { items } = await service.seen<AlertPageView>('/alerts?limit=200');
  const at = `/alerts/${items.at(-1)?.id}`;
  await service.made(`${at}/put-off`, { until: day(30) });
  await service.made(`${at}/give`, { personId: people.artistId });
  // A note may name a client, so few are shown it.
  await service.made(`${at}/notes`, { note: texts.ofClient('alert noted') });
  await service.made(`${at}/close`, { note: texts.ofClient('alert closed') });
  await service.seen(at);
  const chosen = {
    toldFrom: 'warning',
    urgentTurn: 'at once',
    summary: 'daily',
    summaryAt: '06:30',
    quietFrom: '20:00',
    quietUntil: '07:00',
    kindsLeftOut: ['use-by near'],
  };
  const order = { afterMinutes: 30, personIds: [people.artistId, people.ownerId] };
  for (const [path, body] of [
    ['/alert-preferences/own', chosen],
    ['/handing-on', order],
  ] as const) {
    // In an earlier life something may have been chosen already.
    const { version } = await service.seen<{ version: number | null }>(path);
    const first = await service.changed<{ version: number }>('PUT', path, {
      ...body,
      ...(version !== null && { version }),
    });
    await service.changed('PUT', path, { ...body, version: first.version });
  }
}
