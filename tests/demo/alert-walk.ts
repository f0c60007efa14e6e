import { Webhook } from 'standardwebhooks';
import { Temporal } from 'temporal-polyfill';
import type { AlertHistoryView } from '../../src/alerts/alerts.views.js';
import type {
  AlertDestinationView,
  TestedDestinationView,
} from '../../src/alerts/destinations/alert-destinations.views.js';
import type { ReceiptView } from '../../src/stock/receiving.views.js';
import { AlertStation } from '../support/alert-station.js';
import type { RunningService } from '../support/service.js';
import { until } from '../support/waiting.js';
import type { Narrator } from './narrator.js';

interface Made {
  id: string;
}

/** Who is written to in the walk. */
const addresses = { manager: 'mara@larkmoor.example', owner: 'owner@larkmoor.example' };

/**
 * Plays how an alert reaches people, on a service of its own whose clock can be put forward: to a webhook and mailboxes on
 * this machine, handed on when nobody answers, put off and back again.
 */
export async function walkAlerts(narrator: Narrator): Promise<void> {
  const station = await AlertStation.start('sqlite');
  const { service, hook, mail, clock } = station;
  try {
    narrator.step('Alerts reach people: a webhook and two mailboxes, all on this machine');
    const { version } = await service.seen<{ version: number }>('');
    await service.patch('', { version, name: 'Studio Larkmoor' });
    const managerId = (await service.made<Made>('/people', { name: 'Mara Lind', role: 'manager' })).id;
    const { id: webhookId, secret } = await station.makeWebhook('/alerts');
    await station.makeMailbox(addresses.owner);
    await service.made<AlertDestinationView>('/alert-destinations/mail', {
      personId: managerId,
      address: addresses.manager,
    });
    const test = await service.made<TestedDestinationView>(`/alert-destinations/${webhookId}/test`);
    await hook.came(1);
    const [tested] = hook.received;
    narrator.expect(
      tested?.id === test.deliveryId && isSigned(tested, secret),
      'the test button sends a message, and its signature is right by the library of Standard Webhooks',
    );

    narrator.step('The last liners fall down: an urgent alert');
    await service.made(`/containers/${await receiveLiners(service)}/waste`, { pieces: 5, reason: 'dropped' });
    await hook.came(2);
    await mail.came(1);
    const opened = hook.received[1];
    const { type, data } = JSON.parse(opened?.body ?? '{}') as {
      type: string;
      data: { title: string; alert: { id: string } };
    };
    narrator.say(`POST ${opened?.path}, webhook-id ${opened?.id}: ${type}, ${data.title}`);
    narrator.expect(
      opened !== undefined && type === 'alert.opened' && isSigned(opened, secret),
      'it arrived at the webhook, signed',
    );
    const [letter] = mail.received;
    narrator.say(`To ${letter?.to.join()}: ${letter?.mail.subject}`);
    for (const line of (letter?.mail.text ?? '').trim().split('\n')) narrator.say(`| ${line}`.trimEnd());
    narrator.expect(
      mail.received.length === 1 && letter?.to[0] === addresses.manager,
      'it arrived in the mailbox of the manager, whose turn is first; the owner is left in peace',
    );

    narrator.step(
      'Nobody answers for an hour: the alert is handed on, also by a service that was killed meanwhile',
    );
    await service.stop('SIGKILL');
    clock.forward({ minutes: 61 });
    await station.startAgain();
    await mail.came(2);
    narrator.expect(
      mail.received[1]?.to[0] === addresses.owner,
      `it arrived in the mailbox of the owner: ${mail.received[1]?.mail.subject}`,
    );

    narrator.step('The owner puts it off until Monday');
    const monday = nextMonday(clock.now());
    const path = `/alerts/${data.alert.id}`;
    await station.service.made(`${path}/put-off`, { until: monday });
    const before = hook.received.length;
    clock.forward({ hours: 2 });
    await station.settled();
    narrator.expect(hook.received.length === before, 'nobody is reminded of it meanwhile');
    await station.service.stop();
    clock.forward({
      hours: Math.ceil((Date.parse(`${monday}T12:00:00Z`) - Date.parse(clock.now())) / 3_600_000),
    });
    await station.startAgain();
    await until('the reminder', () => told(station).includes('alert.due_again') || undefined);
    narrator.expect(true, `on ${monday} it is told of again`);
    const { history } = await station.service.seen<AlertHistoryView>(path);
    narrator.say(`Its history: ${history.map(({ event }) => event).join(', ')}.`);
    narrator.expect(
      ['opened', 'handed on', 'put off', 'due again'].every((step) =>
        history.some(({ event }) => event === step),
      ),
      'all of that stands in its history',
    );
  } finally {
    await station.dispose();
  }
}

/** A box of five liners, of which there should be three; answers with its id. */
async function receiveLiners(service: RunningService): Promise<string> {
  const add = async (path: string, body: object) => (await service.made<Made>(path, body)).id;
  const makerId = await add('/makers', { name: 'Corvin Needleworks' });
  const placeId = await add('/places', { name: 'Needle drawer', kind: 'shelf' });
  const productId = await add('/products', {
    kind: 'cartridge',
    makerId,
    name: 'Fine liner',
    notation: '3RL',
  });
  const receipt = await service.made<ReceiptView>('/deliveries', {
    origin: 'gift or sample',
    lines: [
      { productId, codes: [{ kind: 'lot', code: 'CL-2041' }], useBy: '2099-12-31', quantity: 5, placeId },
    ],
  });
  await service.put('/stock/levels', { subjectKind: 'product', subjectId: productId, minimumPieces: 3 });
  return receipt.lines[0]?.containers[0]?.id ?? '';
}

const told = ({ hook }: AlertStation) =>
  hook.received.map(({ body }) => (JSON.parse(body) as { type: string }).type);

/** Judged by somebody else's implementation of the specification. */
function isSigned({ body, headers }: { body: string; headers: object }, secret: string): boolean {
  try {
    new Webhook(secret).verify(body, headers as Record<string, string>);
    return true;
  } catch {
    return false;
  }
}

function nextMonday(instant: string): string {
  const today = Temporal.Instant.from(instant).toZonedDateTimeISO('UTC').toPlainDate();
  return today.add({ days: 8 - today.dayOfWeek }).toString();
}
