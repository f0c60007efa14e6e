import { createECDH } from 'node:crypto';
import { v7 as uuidv7 } from 'uuid';
import type {
  AlertDestinationView,
  MadeWebhookView,
} from '../../../src/alerts/destinations/alert-destinations.views.js';
import type { LivedPeople } from './access.js';
import type { RecordingService } from './recording-service.js';
import type { Texts } from './texts.js';

const browser = createECDH('prime256v1');
browser.setPrivateKey(Buffer.alloc(32, 7));

/** Where alerts go. Nothing is left that anything is sent to: the names lead nowhere. */
export async function liveDestinations(
  service: RecordingService,
  texts: Texts,
  { ownerId, artistId }: LivedPeople,
): Promise<void> {
  const at = '/alert-destinations';
  const change = ({ id, version }: AlertDestinationView, body: object) =>
    service.changed<AlertDestinationView>('PATCH', `${at}/${id}`, { version, ...body });
  const { destination } = await service.made<MadeWebhookView>(`${at}/webhooks`, {
    name: texts('webhook'),
    url: 'https://desk.invalid/alerts',
    minimumSeverity: 'warning',
  });
  const hook = `${at}/${destination.id}`;
  // Names are shown in the list alone.
  const look = () => service.seen(`${at}?limit=200`);
  await look();
  await service.made(`${hook}/test`);
  await service.made(`${hook}/rotate-secret`);
  await service.seen(`${hook}/deliveries`);
  const renamed = await change(
    { ...destination, version: destination.version + 1 },
    { name: texts('webhook renamed'), minimumSeverity: 'urgent', state: 'paused' },
  );
  await look();
  await change(renamed, { state: 'active' });
  await service.made(`${hook}/remove`);
  for (const personId of [ownerId, artistId]) {
    const address = `${uuidv7()}@desk.invalid`;
    const mail = await service.made<AlertDestinationView>(`${at}/mail`, { personId, address });
    await change(mail, { state: 'paused' });
    // A life may be lived again, and there is room for three.
    await service.made(`${at}/${mail.id}/remove`);
  }
  const push = await service.made<AlertDestinationView>(`${at}/push`, {
    name: texts('browser'),
    endpoint: `https://push.invalid/send/${uuidv7()}`,
    p256dh: browser.getPublicKey('base64url'),
    auth: Buffer.alloc(16, 7).toString('base64url'),
  });
  await look();
  await change(push, { state: 'paused', name: texts('browser renamed') });
  await service.seen(`${at}/push-key`);
  await look();
}
