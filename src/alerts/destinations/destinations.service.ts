import { Injectable } from '@nestjs/common';
import { Temporal } from 'temporal-polyfill';
import { refuseWithout, type StudioActor } from '../../identity/actor.guard.js';
import { People } from '../../identity/people.service.js';
import { Person } from '../../identity/person.entity.js';
import { Secrets } from '../../identity/sign-in/secrets.service.js';
import { Config } from '../../platform/config.js';
import type { Transaction } from '../../platform/database/transaction.js';
import { Transactions } from '../../platform/database/transactions.js';
import { DataKeys, type FieldSealer } from '../../platform/encryption/data-keys.service.js';
import { outgoingUrlFault } from '../../platform/outgoing-request.js';
import { invalidField, notFound, Problem } from '../../platform/problem.js';
import type { WriteDto } from '../../platform/request.dto.js';
import { secretPrefix } from '../../platform/standard-webhooks.js';
import { Promises } from '../outbox/promises.service.js';
import { AlertDestination } from './alert-destination.entity.js';
import type {
  AddMailDestinationDto,
  AddPushDestinationDto,
  AddWebhookDestinationDto,
  ChangeAlertDestinationDto,
} from './alert-destinations.dto.js';
import type {
  AlertDestinationView,
  MadeWebhookView,
  RotatedSecretView,
  TestedDestinationView,
} from './alert-destinations.views.js';
import type {
  DestinationSettings,
  MailSettings,
  PushSettings,
  WebhookSettings,
} from './destination-settings.js';
import { sealedView } from './destination-views.service.js';
import { settingsPlace } from './opened-destinations.service.js';

/** How many a person has of each, or a studio of webhooks. */
const most = { mail: 3, push: 10, webhook: 10 } as const;
const mostTestsAnHour = 10;
/** By one person, whatever became of the destinations: else one could add an address, test it, remove it, and begin anew. */
const mostTestsADay = 30;
const mostMailAddressesADay = 10;
/** So long an old secret signs beside the new one. */
const oldSecretHours = 24;

const what = 'alert destination';

/**
 * Adds, changes, tests and removes destinations. Guarantees: what they hold is sealed, a person's under the person's key, a
 * webhook's under a key of its own; what was removed keeps no address and no secret, and nothing promised to it is left
 * pending.
 */
@Injectable()
export class Destinations {
  constructor(
    private readonly transactions: Transactions,
    private readonly dataKeys: DataKeys,
    private readonly people: People,
    private readonly secrets: Secrets,
    private readonly config: Config,
    private readonly promises: Promises,
  ) {}

  async addMail(actor: StudioActor, dto: AddMailDestinationDto): Promise<AlertDestinationView> {
    const { personId, address } = dto;
    refuseAnothers(actor, { personId });
    return this.write(actor, dto, 'add', dto.id, dto, async (transaction) => {
      if ((await doneToday(transaction, actor, 'add', 'mail')) >= mostMailAddressesADay) {
        throw tooMany(
          `You wrote ${mostMailAddressesADay} mail addresses within a day. Write the next one tomorrow.`,
        );
      }
      const settings: MailSettings = { address };
      const isSame = (other: MailSettings) => other.address.toLowerCase() === address.toLowerCase();
      return sealedView(await this.addOfPerson(transaction, dto.id, 'mail', personId, settings, isSame));
    });
  }

  async addPush(actor: StudioActor, dto: AddPushDestinationDto): Promise<AlertDestinationView> {
    const { personId } = actor;
    const { name, endpoint, p256dh, auth } = dto;
    this.refuseUrl('endpoint', endpoint);
    return this.write(actor, dto, 'add', dto.id, { ...dto, personId }, async (transaction) => {
      const settings: PushSettings = { name, endpoint, p256dh, auth };
      const isSame = (other: PushSettings) => other.endpoint === endpoint;
      return sealedView(await this.addOfPerson(transaction, dto.id, 'push', personId, settings, isSame));
    });
  }

  async addWebhook(actor: StudioActor, dto: AddWebhookDestinationDto): Promise<MadeWebhookView> {
    const { name, url, minimumSeverity } = dto;
    this.refuseUrl('url', url);
    const secret = await this.secretOf(actor, dto);
    // Whose request it is belongs to it: its secret is not repeated to somebody else.
    const content = { ...dto, personId: actor.personId };
    const destination = await this.write(actor, dto, 'add', dto.id, content, async (transaction) => {
      const isSame = (other: WebhookSettings) => other.url === url;
      await this.refuseOneMore(transaction, 'webhook', null, isSame);
      const sealer = await this.dataKeys.make(transaction);
      const settings: WebhookSettings = { name, url, secrets: [{ secret, until: null }] };
      return sealedView(
        await this.insert(transaction, sealer, { id: dto.id, kind: 'webhook', settings, minimumSeverity }),
      );
    });
    return { destination, secret };
  }

  change(actor: StudioActor, id: string, dto: ChangeAlertDestinationDto): Promise<AlertDestinationView> {
    const { version, state, minimumSeverity, name } = dto;
    return this.write(actor, dto, 'change', id, { ...dto, destinationId: id }, async (transaction) => {
      const destination = await this.find(transaction, actor, id);
      const changes: Partial<AlertDestination> = {};
      if (state !== undefined) Object.assign(changes, { state, stateReason: null });
      if (minimumSeverity !== undefined) {
        if (destination.kind !== 'webhook') {
          throw invalidField(
            'minimumSeverity',
            'Only a webhook has one; what a person is told is set in how they are told',
          );
        }
        changes.minimumSeverity = minimumSeverity;
      }
      if (name !== undefined) {
        if (destination.kind === 'mail') throw invalidField('name', 'A mail address has no name');
        const { sealer, settings } = await this.open<WebhookSettings | PushSettings>(destination);
        changes.settingsSealed = sealer.seal(JSON.stringify({ ...settings, name }), settingsPlace(id));
      }
      transaction.note({ fields: Object.keys(dto).filter((field) => !['id', 'version'].includes(field)) });
      const key = { studioId: actor.studioId, id };
      return sealedView(await transaction.change(AlertDestination, what, key, version, changes));
    });
  }

  async rotateSecret(actor: StudioActor, id: string, dto: WriteDto): Promise<RotatedSecretView> {
    const secret = await this.secretOf(actor, dto);
    const content = { ...dto, destinationId: id, personId: actor.personId };
    const rotated = await this.write(actor, dto, 'rotate-secret', id, content, async (transaction) => {
      const destination = await this.find(transaction, actor, id);
      if (destination.kind !== 'webhook') throw wrongState('Only a webhook has a secret.');
      const { sealer, settings } = await this.open<WebhookSettings>(destination);
      const now = transaction.recordedAt;
      const oldValidUntil = Temporal.Instant.from(now).add({ hours: oldSecretHours }).toString({
        fractionalSecondDigits: 3,
      });
      const [current] = settings.secrets;
      const secrets = [
        { secret, until: null },
        ...(current === undefined ? [] : [{ secret: current.secret, until: oldValidUntil }]),
      ];
      const key = { studioId: actor.studioId, id };
      const { version } = await transaction.change(AlertDestination, what, key, destination.version, {
        settingsSealed: sealer.seal(JSON.stringify({ ...settings, secrets }), settingsPlace(id)),
      });
      return { id, version, oldValidUntil };
    });
    return { ...rotated, secret };
  }

  remove(actor: StudioActor, id: string, dto: WriteDto): Promise<AlertDestinationView> {
    const content = { ...dto, destinationId: id };
    return this.write(actor, dto, 'remove', id, content, async (transaction) => {
      const { version } = await this.find(transaction, actor, id);
      const key = { studioId: actor.studioId, id };
      const changes = { state: 'removed', stateReason: null, settingsSealed: null } as const;
      const removed = await transaction.change(AlertDestination, what, key, version, changes);
      // As attempts do, this leaves the rows' digests alone: of an outbox row only the making is covered.
      const ended = await transaction.query<{ id: string }>(
        `UPDATE outbox SET state = 'undeliverable', settled_at = $1, last_error = 'The destination was removed.'
         WHERE studio_id = $2 AND destination_id = $3 AND state = 'pending' RETURNING id`,
        [transaction.recordedAt, actor.studioId, id],
      );
      transaction.note({ deliveriesEnded: ended.length });
      return sealedView(removed);
    });
  }

  test(actor: StudioActor, id: string, dto: WriteDto): Promise<TestedDestinationView> {
    const content = { ...dto, destinationId: id };
    return this.write(actor, dto, 'test', id, content, async (transaction) => {
      const { state } = await this.find(transaction, actor, id);
      if (state !== 'active') throw wrongState(`It is ${state}; make it active first, then test it.`);
      await refuseManyTests(transaction, id);
      if ((await doneToday(transaction, actor, 'test')) >= mostTestsADay) {
        throw tooMany(
          `You tested ${mostTestsADay} times within a day. Look at what came of these tests, or wait.`,
        );
      }
      const [deliveryId = ''] = await this.promises.promise(transaction, {
        event: 'test',
        destinationIds: [id],
      });
      return { id, deliveryId };
    });
  }

  private write<Answer>(
    actor: StudioActor,
    dto: WriteDto,
    verb: string,
    id: string,
    content: unknown,
    work: (transaction: Transaction) => Promise<Answer>,
  ): Promise<Answer> {
    const request = {
      id: dto.id,
      action: `alerts.${verb}-destination`,
      subject: { kind: what, id },
      content,
    };
    return this.transactions.write(actor, request, async (transaction) => {
      // One after the other: counting them, and what is sealed together, must not cross.
      await transaction.lockStudio();
      return work(transaction);
    });
  }

  private secretOf(actor: StudioActor, { id }: WriteDto): Promise<string> {
    return this.secrets
      .bytesOf('webhook', `${actor.studioId} ${id}`)
      .then((bytes) => secretPrefix + bytes.toString('base64'));
  }

  /** @throws Problem invalid-fields */
  private refuseUrl(field: 'url' | 'endpoint', url: string): void {
    const fault = outgoingUrlFault(url, this.config.outgoingPrivateAddresses);
    if (fault !== null) throw invalidField(field, `The address ${fault}`);
  }

  private async addOfPerson<Settings extends DestinationSettings>(
    transaction: Transaction,
    id: string,
    kind: 'mail' | 'push',
    personId: string,
    settings: Settings,
    isSame: (other: Settings) => boolean,
  ): Promise<AlertDestination> {
    const { studioId } = transaction;
    await this.people.require(transaction, [personId], { atWork: true });
    await this.refuseOneMore(transaction, kind, personId, isSame);
    const { dataKeyId } = await transaction.manager.findOneByOrFail(Person, { studioId, id: personId });
    const sealer = await this.dataKeys.sealer(studioId, dataKeyId);
    if (!sealer) throw notFound('person', personId);
    return this.insert(transaction, sealer, { id, kind, personId, settings, minimumSeverity: 'notice' });
  }

  private async insert(
    transaction: Transaction,
    sealer: FieldSealer,
    given: Pick<AlertDestination, 'id' | 'kind' | 'minimumSeverity'> & {
      personId?: string;
      settings: DestinationSettings;
    },
  ): Promise<AlertDestination> {
    const { id, kind, minimumSeverity, personId = null, settings } = given;
    const destination: AlertDestination = {
      studioId: transaction.studioId,
      id,
      kind,
      personId,
      dataKeyId: sealer.dataKeyId,
      settingsSealed: sealer.seal(JSON.stringify(settings), settingsPlace(id)),
      minimumSeverity,
      state: 'active',
      stateReason: null,
      version: 1,
      createdAt: transaction.recordedAt,
    };
    await transaction.insert(AlertDestination, destination);
    return destination;
  }

  /** @throws Problem wrong-state when there are enough, already-exists when it is there */
  private async refuseOneMore<Settings extends DestinationSettings>(
    transaction: Transaction,
    kind: AlertDestination['kind'],
    personId: string | null,
    isSame: (other: Settings) => boolean,
  ): Promise<void> {
    const { studioId } = transaction;
    const rows = await transaction.query<{ id: string; dataKeyId: string; settingsSealed: string }>(
      `SELECT id, data_key_id AS "dataKeyId", settings_sealed AS "settingsSealed" FROM alert_destination
       WHERE studio_id = $1 AND kind = $2 AND state <> 'removed' ${personId === null ? '' : 'AND person_id = $3'}`,
      personId === null ? [studioId, kind] : [studioId, kind, personId],
    );
    const sealers = await this.dataKeys.sealers(
      studioId,
      rows.map(({ dataKeyId }) => dataKeyId),
    );
    for (const { id, dataKeyId, settingsSealed } of rows) {
      const opened = sealers.get(dataKeyId)?.open(settingsSealed, settingsPlace(id)) ?? null;
      if (opened === null || !isSame(JSON.parse(opened) as Settings)) continue;
      throw new Problem(
        409,
        'already-exists',
        'Alerts go to this address already; change that one instead.',
        {
          destinationId: id,
        },
      );
    }
    if (rows.length < most[kind]) return;
    const whose = kind === 'webhook' ? 'The studio has' : 'The person has';
    throw wrongState(`${whose} ${rows.length} of them already, as many as are kept. Remove one first.`);
  }

  /** @throws Problem not-found, not-allowed, or wrong-state when it was removed */
  private async find(transaction: Transaction, actor: StudioActor, id: string): Promise<AlertDestination> {
    const key = { studioId: actor.studioId, id };
    const destination = await transaction.manager.findOneBy(AlertDestination, key);
    if (!destination) throw notFound(what, id);
    refuseAnothers(actor, destination);
    if (destination.state === 'removed') throw wrongState('It was removed; add it anew to use it again.');
    return destination;
  }

  private async open<Settings extends DestinationSettings>(
    destination: AlertDestination,
  ): Promise<{ sealer: FieldSealer; settings: Settings }> {
    const { studioId, id, dataKeyId, settingsSealed } = destination;
    const sealer = await this.dataKeys.sealer(studioId, dataKeyId);
    const opened = sealer?.open(settingsSealed, settingsPlace(id)) ?? null;
    if (!sealer || opened === null) throw wrongState('What it held was erased; remove it and add it anew.');
    return { sealer, settings: JSON.parse(opened) as Settings };
  }
}

/**
 * Everybody sees to their own; to others' and to the studio's only who may change where alerts go.
 * @throws Problem not-allowed
 */
export function refuseAnothers(actor: StudioActor, { personId }: Pick<AlertDestination, 'personId'>): void {
  if (personId !== actor.personId) refuseWithout(actor, 'change alert channels');
}

/** A test reaches whoever has the address, so nobody is flooded with them. */
async function refuseManyTests(transaction: Transaction, id: string): Promise<void> {
  const hourAgo = Temporal.Instant.from(transaction.recordedAt).subtract({ hours: 1 });
  const [tests] = await transaction.query<{ count: number }>(
    `SELECT count(*) AS count FROM outbox
     WHERE studio_id = $1 AND destination_id = $2 AND created_at > $3 AND event = 'test'`,
    [transaction.studioId, id, hourAgo.toString({ fractionalSecondDigits: 3 })],
  );
  if ((tests?.count ?? 0) < mostTestsAnHour) return;
  throw tooMany(
    `It was tested ${mostTestsAnHour} times within an hour. Look at what came of these tests, or wait.`,
  );
}

/** How often the person did so in the last 24 hours, by the audit log, which knows removed destinations too. */
async function doneToday(
  transaction: Transaction,
  { personId }: StudioActor,
  verb: 'add' | 'test',
  kind?: AlertDestination['kind'],
): Promise<number> {
  const dayAgo = Temporal.Instant.from(transaction.recordedAt).subtract({ hours: 24 });
  const [done] = await transaction.query<{ count: number }>(
    `SELECT count(*) AS count FROM audit_entry AS entry
       JOIN alert_destination AS destination
         ON destination.studio_id = entry.studio_id AND destination.id = entry.subject_id
     WHERE entry.studio_id = $1 AND entry.subject_kind = '${what}' AND entry.action = $2 AND entry.person_id = $3
       AND entry.recorded_at > $4 ${kind === undefined ? '' : 'AND destination.kind = $5'}`,
    [
      transaction.studioId,
      `alerts.${verb}-destination`,
      personId,
      dayAgo.toString({ fractionalSecondDigits: 3 }),
      ...(kind === undefined ? [] : [kind]),
    ],
  );
  return done?.count ?? 0;
}

function tooMany(detail: string): Problem {
  return new Problem(429, 'too-many-requests', detail);
}

function wrongState(detail: string): Problem {
  return new Problem(409, 'wrong-state', detail);
}
