import { Injectable, Logger } from '@nestjs/common';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { Clock } from '../../platform/clock.js';
import { Database } from '../../platform/database/database.js';
import { invalidField, Problem } from '../../platform/problem.js';
import { localDay } from '../local-day.js';
import { People } from '../people.service.js';
import { Person } from '../person.entity.js';
import { Accounts } from '../sign-in/accounts.service.js';
import { BrowserSignIns } from '../sign-in/browser-sign-ins.service.js';
import { CredentialUses } from '../sign-in/credential-uses.service.js';
import { FailedSignIns } from '../sign-in/failed-sign-ins.service.js';
import { Secrets } from '../sign-in/secrets.service.js';
import { Studio } from '../studio.entity.js';
import { readBadge } from './badge-text.js';
import { Pins } from './pins.service.js';
import type { Tablet } from './tablet.entity.js';
import type { TabletCredential } from './tablet-credential.entity.js';
import { TabletCredentials } from './tablet-credentials.service.js';
import type { SwitchDto } from './tablets.dto.js';
import { Tablets } from './tablets.service.js';
import type { EnrolledTabletView } from './tablets.views.js';

const mostPeople = 500;

/**
 * Changes who works on an enrolled tablet. Guarantees: a badge or PIN counts only on a tablet of its own studio, while both
 * the tablet and the person belong there; it lets nobody do more than tray work (see `Standings`).
 */
@Injectable()
export class TabletSwitch {
  private readonly logger = new Logger('tablets');

  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly tablets: Tablets,
    private readonly credentials: TabletCredentials,
    private readonly pins: Pins,
    private readonly people: People,
    private readonly accounts: Accounts,
    private readonly browserSignIns: BrowserSignIns,
    private readonly failures: FailedSignIns,
    private readonly secrets: Secrets,
    private readonly uses: CredentialUses,
  ) {}

  /** @throws Problem not-found when the browser is no enrolled tablet */
  async show(request: FastifyRequest, reply: FastifyReply): Promise<EnrolledTabletView> {
    const tablet = await this.tablets.here(request);
    if (!tablet) throw new Problem(404, 'not-found', 'This browser is no enrolled tablet.');
    await this.tablets.keepUp(tablet, request, reply);
    const { id, name, studioId } = tablet;
    const studio = await this.studioOf(tablet);
    const withPin = await this.credentials.all(studioId, 'PIN', mostPeople);
    const today = localDay(this.clock.now(), studio.timeZone);
    const active = (await this.database.reader.manager.findBy(Person, { studioId, state: 'active' })).filter(
      (person) => mayComeIn(person, today) && withPin.some(({ personId }) => personId === person.id),
    );
    const names = await this.people.namesOf(
      studioId,
      active.map((person) => person.id),
    );
    const people = [...names].map(([personId, personName]) => ({ personId, name: personName }));
    people.sort((one, other) => one.name.localeCompare(other.name, 'en'));
    return { id, name, studioId, studioName: studio.name, people };
  }

  /**
   * Signs a person in on the tablet; whoever was there before is signed out.
   * @throws Problem not-allowed when the browser is no enrolled tablet; sign-in-failed; too-many-requests
   */
  async switch(dto: SwitchDto, request: FastifyRequest, reply: FastifyReply): Promise<void> {
    const tablet = await this.tablets.here(request);
    if (!tablet) {
      throw new Problem(
        403,
        'not-allowed',
        'This browser is no enrolled tablet, or no more. Somebody who may enrol tablets signs in here and enrols it.',
      );
    }
    const credential = await this.presented(tablet, dto);
    const person = credential && (await this.personOf(tablet, credential));
    if (!credential || person?.accountId == null) {
      this.logger.warn(`Signing in failed on the tablet ${tablet.id}.`);
      throw failed(dto);
    }
    await this.tablets.keepUp(tablet, request, reply);
    await this.uses.note(credential.id);
    const account = await this.accounts.get(person.accountId);
    const { id, studioId } = tablet;
    await this.browserSignIns.startOnTablet(account, credential.kind, { id, studioId }, request, reply);
  }

  /** The badge or PIN that is presented, when it is right. */
  private async presented(
    tablet: Tablet,
    { badge, personId, pin }: SwitchDto,
  ): Promise<TabletCredential | null> {
    if (badge !== undefined && personId === undefined && pin === undefined) {
      const text = readBadge(badge);
      return text === undefined ? null : this.credentials.badge(tablet.studioId, this.secrets.hash(text));
    }
    if (badge !== undefined || personId === undefined || pin === undefined) {
      throw invalidField('badge', 'Give a badge alone, or a personId and a pin');
    }
    const attempt = await this.failures.begin({ tabletId: tablet.id, personId });
    const known = await this.credentials.of(tablet.studioId, personId, 'PIN');
    if (!(await this.pins.matches(known, tablet.studioId, personId, pin))) return null;
    await attempt.succeeded();
    return known;
  }

  /** The person, while they may still come in. */
  private async personOf(tablet: Tablet, { personId }: TabletCredential): Promise<Person | undefined> {
    const { studioId } = tablet;
    const person = await this.database.reader.manager.findOneBy(Person, {
      studioId,
      id: personId,
      state: 'active',
    });
    const { timeZone } = await this.studioOf(tablet);
    return person && mayComeIn(person, localDay(this.clock.now(), timeZone)) ? person : undefined;
  }

  private async studioOf({ studioId }: Tablet): Promise<Studio> {
    return this.database.reader.manager.findOneByOrFail(Studio, { id: studioId });
  }
}

function mayComeIn({ accountId, until }: Person, today: string): boolean {
  return accountId !== null && (until === null || today <= until);
}

function failed({ badge }: SwitchDto): Problem {
  return new Problem(
    401,
    'sign-in-failed',
    badge === undefined
      ? 'Person and PIN do not go together. Try again, or show the badge.'
      : 'This badge does not work here: it is of another studio, was replaced, or its person works here no more.',
  );
}
