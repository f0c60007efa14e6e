import { Injectable } from '@nestjs/common';
import { plainToInstance } from 'class-transformer';
import { validateSync } from 'class-validator';
import { v7 as uuidv7 } from 'uuid';
import { type Actor, systemActor } from '../platform/actor.js';
import { Database } from '../platform/database/database.js';
import { Problem } from '../platform/problem.js';
import { AddPersonDto } from './people.dto.js';
import { People } from './people.service.js';
import type { PersonView } from './people.views.js';
import { type Permission, permissionsOf } from './permissions.js';
import { Person } from './person.entity.js';
import { MakeApiTokenDto } from './sign-in/api-tokens.dto.js';
import { ApiTokens } from './sign-in/api-tokens.service.js';
import type { MadeApiTokenView } from './sign-in/api-tokens.views.js';
import { type MadeLink, OneTimeLinks } from './sign-in/one-time-links.service.js';
import { SetUpLinks } from './sign-in/set-up-links.service.js';
import { Studio } from './studio.entity.js';

/** People and tokens from the shell. It asks for no permission: whoever may start it may read the data folder too. */
@Injectable()
export class Administration {
  constructor(
    private readonly database: Database,
    private readonly people: People,
    private readonly tokens: ApiTokens,
    private readonly links: OneTimeLinks,
    private readonly setUpLinks: SetUpLinks,
  ) {}

  async list(): Promise<{ studio: Studio; people: PersonView[] }[]> {
    const listed: { studio: Studio; people: PersonView[] }[] = [];
    for (const studio of await this.studios()) {
      listed.push({ studio, people: await this.people.list(systemActor(studio)) });
    }
    return listed;
  }

  async addPerson(given: { name: string; role: string; studio?: string; until?: string }): Promise<MadeLink> {
    const { name, role, studio, until } = given;
    const actor = await this.actorIn(studio);
    const dto = checked(AddPersonDto, { id: uuidv7(), name, role, ...(until !== undefined && { until }) });
    const person = await this.people.make(actor, dto);
    return this.links.make(actor, person.id, 'invitation', uuidv7());
  }

  /** While nobody has an account, the link of the first owner. */
  async signInLink(given: { person?: string; studio?: string }): Promise<MadeLink> {
    const firstOwners = given.person === undefined ? await this.setUpLinks.make() : undefined;
    if (firstOwners) return firstOwners;
    const actor = await this.actorIn(given.studio);
    const person = await this.personIn(actor, given.person);
    return this.links.make(actor, person.id, 'invitation', uuidv7());
  }

  async makeToken(
    id: string,
    given: { name: string; days: number; person?: string; studio?: string; scope?: string[] },
  ): Promise<MadeApiTokenView> {
    const actor = await this.actorIn(given.studio);
    const person = await this.personIn(actor, given.person);
    const may = permissionsOf(person.role);
    const { name, days, scope = may } = given;
    const dto = checked(MakeApiTokenDto, { id, name, days, scopes: scope });
    return this.tokens.make({ ...actor, personId: person.id }, new Set<Permission>(may), dto);
  }

  private async studios(): Promise<Studio[]> {
    return this.database.reader.manager.find(Studio, { order: { createdAt: 'ASC', id: 'ASC' } });
  }

  /** Whoever acts from the shell in a studio, which need not be named when it is the only one. */
  async actorIn(studioId: string | undefined): Promise<Actor> {
    const studios = await this.studios();
    const [studio] = studios.filter(({ id }) => studioId === undefined || id === studioId);
    if (!studio) {
      throw unclear(
        studios.length === 0
          ? 'There is no studio yet. Start the service once, with npm start.'
          : `There is no studio ${studioId}. \`npm run cli -- people\` lists them.`,
      );
    }
    if (studioId === undefined && studios.length > 1) {
      throw unclear('There are several studios: name one with --studio. `npm run cli -- people` lists them.');
    }
    return { ...systemActor(studio), via: 'cli' };
  }

  /** The person of the id, or the first active owner. */
  private async personIn({ studioId }: Actor, personId: string | undefined): Promise<Person> {
    const person = await this.database.reader.manager.findOne(Person, {
      where:
        personId === undefined
          ? { studioId, role: 'owner', state: 'active' }
          : { studioId, id: personId, state: 'active' },
      order: { createdAt: 'ASC', id: 'ASC' },
    });
    if (person) return person;
    throw unclear(
      `There is no active person ${personId ?? 'who is owner'} in this studio. \`npm run cli -- people\` lists them.`,
    );
  }
}

function unclear(detail: string): Problem {
  return new Problem(400, 'not-found', detail);
}

/** What a DTO refuses over HTTP is refused here too. */
function checked<Dto extends object>(dtoClass: new () => Dto, given: object): Dto {
  const dto = plainToInstance(dtoClass, given);
  const faults = validateSync(dto).flatMap(({ constraints }) => Object.values(constraints ?? {}));
  if (faults.length > 0) throw new Problem(400, 'invalid-fields', `${faults.join('. ')}.`);
  return dto;
}
