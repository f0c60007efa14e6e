import { v7 as uuidv7 } from 'uuid';
import { schema } from '../../src/app.module.js';
import { Departures } from '../../src/identity/departures.service.js';
import { FoundedStudios } from '../../src/identity/founded-studios.service.js';
import { People } from '../../src/identity/people.service.js';
import { permissionsOf } from '../../src/identity/permissions.js';
import { ApiTokens } from '../../src/identity/sign-in/api-tokens.service.js';
import { CredentialUses } from '../../src/identity/sign-in/credential-uses.service.js';
import { Secrets } from '../../src/identity/sign-in/secrets.service.js';
import { StudioFounding, type StudioToFound } from '../../src/identity/studio-founding.service.js';
import type { Actor } from '../../src/platform/actor.js';
import { Clock } from '../../src/platform/clock.js';
import { readConfig } from '../../src/platform/config.js';
import { Database } from '../../src/platform/database/database.js';
import { Transactions } from '../../src/platform/database/transactions.js';
import { DataKeys } from '../../src/platform/encryption/data-keys.service.js';
import { MasterKeys } from '../../src/platform/encryption/master-keys.js';
import { ServiceKey } from '../../src/platform/encryption/service-key.service.js';
import { StudioKeys } from '../../src/platform/encryption/studio-keys.service.js';
import { RunningService } from './service.js';

/** The database of the service with its keys, opened in the test's own process, also beside a running service. */
export class Store {
  private constructor(
    readonly database: Database,
    readonly transactions: Transactions,
    readonly studioKeys: StudioKeys,
    readonly dataKeys: DataKeys,
    private readonly masterKeys: MasterKeys,
    readonly people: People,
  ) {}

  static async open(dataFolder: string, databaseUrl?: string, clock = new Clock()): Promise<Store> {
    const config = readConfig({ DATA_DIR: dataFolder, DATABASE_URL: databaseUrl });
    const database = await Database.open(config, schema);
    const masterKeys = MasterKeys.load(config.masterKeyFile, true);
    const studioKeys = new StudioKeys(database, masterKeys);
    const dataKeys = new DataKeys(database, masterKeys);
    const transactions = new Transactions(database, clock, studioKeys);
    return new Store(
      database,
      transactions,
      studioKeys,
      dataKeys,
      masterKeys,
      new People(database, transactions, dataKeys, new Departures()),
    );
  }

  /**
   * Makes a studio with its owner, in a chain of its own or in the one given, and returns the actor who is that owner.
   * @param differing in what it is unlike the usual one
   */
  async makeStudio(
    timeZone = 'Europe/Vienna',
    inChain?: string,
    differing: Partial<StudioToFound> = {},
  ): Promise<Actor> {
    const serviceKey = new ServiceKey(this.database, this.masterKeys);
    const founding = new StudioFounding(
      this.transactions,
      this.studioKeys,
      serviceKey,
      this.people,
      new FoundedStudios(),
    );
    const { studioId, chainId, ownerId } = await founding.found({
      ...(inChain !== undefined && { chainId: inChain }),
      name: 'Other studio',
      timeZone,
      houseBlends: 'allowed',
      owner: { name: 'Other owner', accountId: null },
      ...differing,
    });
    return { studioId, chainId, timeZone, personId: ownerId, via: 'api', seesClients: true };
  }

  /** The actor who is the first owner of a studio that is there. */
  async ownerOf(studioId: string): Promise<Actor> {
    const [owner] = await this.database.read<{ personId: string; chainId: string; timeZone: string }>(
      `SELECT person.id AS "personId", studio.chain_id AS "chainId", studio.time_zone AS "timeZone"
       FROM studio JOIN person ON person.studio_id = studio.id AND person.role = 'owner'
       WHERE studio.id = $1 ORDER BY person.created_at, person.id LIMIT 1`,
      [studioId],
    );
    if (!owner) throw new Error(`The studio ${studioId} has no owner.`);
    return { studioId, ...owner, via: 'api', seesClients: true };
  }

  /** The same service as the actor sees it in their own studio, with a token of theirs. */
  async seenBy(service: RunningService, actor: Actor): Promise<RunningService> {
    const { personId, studioId } = actor;
    if (personId === null) throw new Error('Nobody has a token without being a person.');
    const secrets = new Secrets(new ServiceKey(this.database, this.masterKeys));
    const scopes = permissionsOf('owner');
    const clock = new Clock();
    const uses = new CredentialUses(this.database, this.transactions, clock);
    const tokens = new ApiTokens(this.database, this.transactions, clock, secrets, uses);
    const { token } = await tokens.make({ ...actor, personId }, new Set(scopes), {
      id: uuidv7(),
      name: 'tests',
      scopes,
      days: 30,
    });
    const { url, dataFolder, databaseUrl, child, log } = service;
    return new RunningService(url, dataFolder, databaseUrl, child, log, studioId, token);
  }

  close(): Promise<void> {
    return this.database.close();
  }
}
