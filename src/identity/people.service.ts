import { Injectable } from '@nestjs/common';
import { In } from 'typeorm';
import type { Actor } from '../platform/actor.js';
import { Database, placeholders } from '../platform/database/database.js';
import type { Transaction } from '../platform/database/transaction.js';
import { Transactions } from '../platform/database/transactions.js';
import { DataKeys, type FieldSealer } from '../platform/encryption/data-keys.service.js';
import { invalidField, notFound, Problem } from '../platform/problem.js';
import { Departures } from './departures.service.js';
import { refuseBeyondOwnRole } from './own-role.service.js';
import type { AddPersonDto, ChangePersonDto } from './people.dto.js';
import type { PersonView } from './people.views.js';
import { Person } from './person.entity.js';

const maximumPeople = 500;

const namePlace = (personId: string) => `person.name:${personId}`;

/** Who works in a studio. Names are sealed like every personal field. */
@Injectable()
export class People {
  constructor(
    private readonly database: Database,
    private readonly transactions: Transactions,
    private readonly dataKeys: DataKeys,
    private readonly departures: Departures,
  ) {}

  async list(actor: Actor): Promise<PersonView[]> {
    const people = await this.database.reader.manager.find(Person, {
      where: { studioId: actor.studioId },
      order: { createdAt: 'ASC', id: 'ASC' },
      take: maximumPeople,
    });
    const names = await this.names(actor.studioId, people);
    return people.map((person) => viewOf(person, names.get(person.id) ?? null));
  }

  /** Names by person id, for those who may be shown them. */
  async namesOf(studioId: string, ids: readonly string[]): Promise<Map<string, string>> {
    const wanted = new Set(ids);
    if (wanted.size === 0) return new Map();
    const people = await this.database.reader.manager.find(Person, {
      where: { studioId, id: In([...wanted]) },
    });
    return this.names(studioId, people);
  }

  async make(actor: Actor, dto: AddPersonDto): Promise<PersonView> {
    return this.transactions.write(
      actor,
      { id: dto.id, action: 'identity.add-person', subject: { kind: 'person', id: dto.id }, content: dto },
      async (transaction) => {
        await refuseBeyondOwnRole(transaction, actor.personId, [dto.role]);
        const person = await this.add(transaction, dto.id, dto);
        // The answer is kept for a repeated request, so it holds no name in the clear.
        return viewOf(person, null);
      },
    );
  }

  async change(actor: Actor, personId: string, dto: ChangePersonDto): Promise<PersonView> {
    const sealer = await this.sealerOf(actor.studioId, personId);
    return this.transactions.write(
      actor,
      {
        id: dto.id,
        action: 'identity.change-person',
        subject: { kind: 'person', id: personId },
        content: { personId, ...dto },
      },
      async (transaction) => {
        const key = { studioId: actor.studioId, id: personId };
        // Else each of two owners who leave at the same moment would count the other.
        await transaction.lockStudio();
        const { role } = await transaction.manager.findOneByOrFail(Person, key);
        await refuseBeyondOwnRole(transaction, actor.personId, [role, dto.role ?? role]);
        const changes: Partial<Person> = {};
        if (dto.until !== undefined) changes.until = dto.until;
        if (dto.role !== undefined) changes.role = dto.role;
        if (dto.state !== undefined) changes.state = dto.state;
        if (dto.name !== undefined) {
          changes.nameSealed = sealer.seal(dto.name, namePlace(personId)) ?? '';
        }
        const person = await transaction.change(Person, 'person', key, dto.version, changes);
        refuseEndlessAuditor(person);
        const [owners] = await transaction.query<{ count: number }>(
          `SELECT count(*) AS count FROM person WHERE studio_id = $1 AND role = 'owner' AND state = 'active' AND until IS NULL`,
          [actor.studioId],
        );
        if (owners?.count === 0) {
          throw new Problem(
            409,
            'wrong-state',
            'This is the last active owner without an end; a studio keeps at least one. Make another person owner first.',
          );
        }
        if (person.state === 'left') await this.departures.follow(transaction, personId);
        transaction.note({ fields: Object.keys(dto).filter((field) => !['id', 'version'].includes(field)) });
        return viewOf(person, null);
      },
    );
  }

  /**
   * Makes sure that people are known here, in the caller's transaction, and with `atWork` that they still work here.
   * @throws Problem not-found naming the first who is not known; wrong-state when one works here no more
   */
  async require(transaction: Transaction, ids: readonly string[], options?: { atWork: true }): Promise<void> {
    const wanted = [...new Set(ids)];
    if (wanted.length === 0) return;
    const known = await transaction.query<Pick<Person, 'id' | 'state'>>(
      `SELECT id, state FROM person WHERE studio_id = $1 AND id IN (${placeholders(wanted)})`,
      [transaction.studioId, ...wanted],
    );
    const missing = wanted.find((id) => !known.some((person) => person.id === id));
    if (missing !== undefined) throw notFound('person', missing);
    const gone = options?.atWork && known.find((person) => person.state !== 'active');
    if (!gone) return;
    throw new Problem(
      409,
      'wrong-state',
      `The person ${gone.id} works here no more. Choose someone who does; what they did earlier is recorded late.`,
    );
  }

  /** Adds a person in the caller's transaction. */
  async add(
    transaction: Transaction,
    id: string,
    given: { name: string; role: Person['role']; until?: string },
    accountId: string | null = null,
  ): Promise<Person> {
    const sealer = await this.dataKeys.make(transaction);
    const person: Person = {
      studioId: transaction.studioId,
      id,
      dataKeyId: sealer.dataKeyId,
      nameSealed: sealer.seal(given.name, namePlace(id)) ?? '',
      role: given.role,
      state: 'active',
      version: 1,
      createdAt: transaction.recordedAt,
      accountId,
      until: given.until ?? null,
    };
    refuseEndlessAuditor(person);
    await transaction.insert(Person, person);
    return person;
  }

  /** A name as it is kept; for a write that changes it. Call before the transaction. */
  async sealName(studioId: string, personId: string, name: string): Promise<string> {
    return (await this.sealerOf(studioId, personId)).seal(name, namePlace(personId)) ?? '';
  }

  private async sealerOf(studioId: string, personId: string): Promise<FieldSealer> {
    const person = await this.database.reader.manager.findOneBy(Person, { studioId, id: personId });
    const sealer = person && (await this.dataKeys.sealer(studioId, person.dataKeyId));
    if (!sealer) throw notFound('person', personId);
    return sealer;
  }

  private async names(studioId: string, people: Person[]): Promise<Map<string, string>> {
    const sealers = await this.dataKeys.sealers(
      studioId,
      people.map((person) => person.dataKeyId),
    );
    return new Map(
      people.flatMap((person) => {
        const name = sealers.get(person.dataKeyId)?.open(person.nameSealed, namePlace(person.id));
        return name == null ? [] : [[person.id, name] as const];
      }),
    );
  }
}

/** An auditor visits; who stays is given another role. */
function refuseEndlessAuditor({ role, until }: Person): void {
  if (role !== 'auditor' || until !== null) return;
  throw invalidField('until', 'An auditor has a last day; give it as until');
}

function viewOf(person: Person, name: string | null): PersonView {
  const { id, role, state, until, accountId, version } = person;
  return { id, name, role, state, until, hasAccount: accountId !== null, version };
}
