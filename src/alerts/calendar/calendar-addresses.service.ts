import { Injectable, type OnModuleInit } from '@nestjs/common';
import type { StudioActor } from '../../identity/actor.guard.js';
import { Departures } from '../../identity/departures.service.js';
import { localDay } from '../../identity/local-day.js';
import { type Role, roleMay } from '../../identity/permissions.js';
import { Secrets } from '../../identity/sign-in/secrets.service.js';
import { Clock } from '../../platform/clock.js';
import { Config } from '../../platform/config.js';
import { Database } from '../../platform/database/database.js';
import type { Transaction } from '../../platform/database/transaction.js';
import { Transactions } from '../../platform/database/transactions.js';
import { Problem } from '../../platform/problem.js';
import type { WriteDto } from '../../platform/request.dto.js';
import { CalendarAddress } from './calendar-address.entity.js';
import type {
  MadeCalendarAddressView,
  OwnCalendarAddressView,
  RemovedCalendarAddressView,
} from './calendar-address.views.js';

/** The studio whose calendar somebody reads. */
export interface ReadStudio {
  studioId: string;
  chainId: string;
  studioName: string;
  timeZone: string;
}

type HolderRow = ReadStudio & { role: Role; until: string | null };

/**
 * Secret addresses of calendars: each person has one at most in a studio. Guarantees: only its hash is kept; it ends with
 * its removal, with a new one, and when its person leaves or may no longer see alerts.
 */
@Injectable()
export class CalendarAddresses implements OnModuleInit {
  constructor(
    private readonly database: Database,
    private readonly transactions: Transactions,
    private readonly clock: Clock,
    private readonly config: Config,
    private readonly secrets: Secrets,
    private readonly departures: Departures,
  ) {}

  onModuleInit(): void {
    // So that it does not read again when the person comes back.
    this.departures.register(async (transaction, personId) => {
      await this.end(transaction, personId);
    });
  }

  async own({ studioId, personId }: StudioActor): Promise<OwnCalendarAddressView> {
    const [address] = await this.database.read<{ id: string; createdAt: string }>(
      `SELECT id, created_at AS "createdAt" FROM calendar_address
       WHERE studio_id = $1 AND person_id = $2 AND removed_at IS NULL`,
      [studioId, personId],
    );
    return { address: address ?? null };
  }

  async make(actor: StudioActor, dto: WriteDto): Promise<MadeCalendarAddressView> {
    const { studioId, personId } = actor;
    const secret = await this.secrets.of('calendar address', `${studioId} ${dto.id}`);
    const made = await this.transactions.write(
      actor,
      {
        id: dto.id,
        action: 'alerts.make-calendar-address',
        subject: { kind: 'calendar address', id: dto.id },
        // Whose it is belongs to it: what somebody else asked for is not repeated to them.
        content: { ...dto, personId },
      },
      async (transaction) => {
        const { recordedAt } = transaction;
        await transaction.lockStudio();
        await this.end(transaction, personId);
        await transaction.insert(CalendarAddress, {
          studioId,
          id: dto.id,
          personId,
          tokenHash: this.secrets.hash(secret),
          createdAt: recordedAt,
          removedAt: null,
        });
        return { id: dto.id, createdAt: recordedAt };
      },
    );
    return { ...made, url: `${this.config.publicUrl}/api/v1/calendars/${secret}.ics` };
  }

  /** @throws Problem wrong-state when there is none */
  remove(actor: StudioActor, dto: WriteDto): Promise<RemovedCalendarAddressView> {
    const { personId } = actor;
    return this.transactions.write(
      actor,
      {
        id: dto.id,
        action: 'alerts.remove-calendar-address',
        subject: { kind: 'person', id: personId },
        content: { ...dto, personId },
      },
      async (transaction) => {
        const removed = await this.end(transaction, personId);
        if (!removed) {
          throw new Problem(409, 'wrong-state', 'You have no calendar address, so nothing is to be removed.');
        }
        return { id: removed.id, removedAt: transaction.recordedAt };
      },
    );
  }

  /** The studio whose calendar is read at an address; undefined when there is none, or no longer. */
  async studioOf(secret: string): Promise<ReadStudio | undefined> {
    const [row] = await this.database.read<HolderRow>(
      `SELECT studio.id AS "studioId", studio.chain_id AS "chainId", studio.name AS "studioName",
         studio.time_zone AS "timeZone", person.role, person.until
       FROM calendar_address AS address
         JOIN person ON person.studio_id = address.studio_id AND person.id = address.person_id
         JOIN studio ON studio.id = address.studio_id
       WHERE address.token_hash = $1 AND address.removed_at IS NULL AND person.state = 'active'`,
      [this.secrets.hash(secret)],
    );
    if (!row) return undefined;
    const { role, until, ...studio } = row;
    const isOver = until !== null && until < localDay(this.clock.now(), studio.timeZone);
    return isOver || !roleMay(role, 'see alerts') ? undefined : studio;
  }

  /** Ends the address of a person in the caller's transaction; undefined when they have none. */
  private end(transaction: Transaction, personId: string): Promise<CalendarAddress | undefined> {
    const { studioId, recordedAt } = transaction;
    return transaction.update(
      CalendarAddress,
      { studioId, personId, removedAt: null },
      { removedAt: recordedAt },
    );
  }
}
