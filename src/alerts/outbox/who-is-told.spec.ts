import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { orderOfPeople } from '../handing-on/order-of-people.js';
import { severities } from '../open-condition.js';
import { defaultPreference, type HowToTell } from '../preferences/default-preference.js';
import { type Audience, nextTurn, type Occasion, type PersonToTell, whoIsTold } from './who-is-told.js';

const at = '2026-01-15T12:00:00Z';
/** By the clocks of Vienna. */
const atNight = '2026-01-15T22:30:00Z';

function person(
  personId: string,
  role: PersonToTell['role'],
  more: Partial<HowToTell> = {},
  destinations = [{ id: `${personId}'s` }],
): PersonToTell {
  return { personId, role, preference: { ...defaultPreference(role, false), ...more }, destinations };
}

const owner = person('owner', 'owner');
const manager = person('manager', 'manager');
const artist = person('artist', 'artist');

function audience(people: PersonToTell[], more: Partial<Audience> = {}): Audience {
  return { webhooks: [], people, personIds: [], timeZone: 'Europe/Vienna', ...more };
}

function occasion(more: Partial<Occasion> = {}): Occasion {
  return {
    event: 'opened',
    kind: 'low stock',
    severity: 'urgent',
    givenTo: null,
    personId: null,
    toPersonId: null,
    toldBefore: [],
    at,
    ...more,
  };
}

const told = (what: Partial<Occasion>, whom: Audience) =>
  whoIsTold(occasion(what), whom).map(({ destinationId }) => destinationId);

describe('whoIsTold of what is urgent', () => {
  it('tells the first of the order and whoever wants to know at once', () => {
    const everybody = [owner, manager, person('keen artist', 'artist', { urgentTurn: 'at once' })];
    expect(told({}, audience(everybody))).toEqual(["manager's", "keen artist's"]);
    expect(told({}, audience(everybody, { personIds: ['owner'] }))).toEqual(["owner's", "keen artist's"]);
  });

  it('tells whoever it was given to first', () => {
    expect(told({ givenTo: 'artist' }, audience([owner, manager, artist]))).toEqual(["artist's"]);
  });

  it('passes over whom nothing leads to, and who wants to be told of nothing', () => {
    const mute = person('mute', 'manager', {}, []);
    const silent = person('silent', 'manager', { toldFrom: 'never', urgentTurn: 'at once' });
    expect(told({}, audience([mute, silent, owner]))).toEqual(["owner's"]);
    expect(told({}, audience([mute, silent]))).toEqual([]);
  });

  it('breaks through quiet hours and kinds left out', () => {
    const quiet = person('quiet', 'manager', {
      quietFrom: '20:00',
      quietUntil: '08:00',
      kindsLeftOut: ['low stock'],
    });
    expect(whoIsTold(occasion({ at: atNight }), audience([quiet]))).toEqual([
      { destinationId: "quiet's", notBefore: null },
    ]);
  });

  it('tells every destination of a person', () => {
    const two = person('two', 'manager', {}, [{ id: 'mail' }, { id: 'browser' }]);
    expect(told({}, audience([two]))).toEqual(['mail', 'browser']);
  });

  it('handed on, tells the one whose turn it is, and at the end everybody who is told of what is urgent', () => {
    const silent = person('silent', 'auditor');
    const whom = audience([owner, manager, artist, silent]);
    expect(told({ event: 'handed on', toPersonId: 'owner' }, whom)).toEqual(["owner's"]);
    expect(told({ event: 'handed on', toPersonId: null }, whom)).toEqual([
      "owner's",
      "manager's",
      "artist's",
    ]);
  });
});

describe('whoIsTold of what is milder', () => {
  it('tells who chose to be told of it, and nobody else', () => {
    const watchful = person('watchful', 'artist', { toldFrom: 'warning' });
    const whom = audience([owner, manager, watchful]);
    expect(told({ severity: 'warning' }, whom)).toEqual(["watchful's"]);
    expect(told({ severity: 'notice' }, whom)).toEqual([]);
  });

  it('leaves out the kinds a person left out', () => {
    const watchful = person('watchful', 'artist', { toldFrom: 'notice', kindsLeftOut: ['low stock'] });
    expect(told({ severity: 'warning' }, audience([watchful]))).toEqual([]);
    expect(told({ severity: 'warning', kind: 'use-by near' }, audience([watchful]))).toEqual(["watchful's"]);
  });

  it('waits for the end of quiet hours', () => {
    const quiet = person('quiet', 'artist', { toldFrom: 'notice', quietFrom: '20:00', quietUntil: '08:00' });
    expect(whoIsTold(occasion({ severity: 'warning', at: atNight }), audience([quiet]))).toEqual([
      { destinationId: "quiet's", notBefore: '2026-01-16T07:00:00.000Z' },
    ]);
    expect(whoIsTold(occasion({ severity: 'warning' }), audience([quiet]))).toEqual([
      { destinationId: "quiet's", notBefore: null },
    ]);
  });
});

describe('whoIsTold of the others', () => {
  it('tells whoever something was given to, whatever they chose, but not who took it themselves', () => {
    const silent = person('silent', 'artist', { toldFrom: 'never', kindsLeftOut: ['low stock'] });
    const whom = audience([owner, silent]);
    const given = { event: 'given' as const, severity: 'notice' as const, toPersonId: 'silent' };
    expect(told({ ...given, personId: 'owner' }, whom)).toEqual(["silent's"]);
    expect(told({ ...given, personId: 'silent' }, whom)).toEqual([]);
  });

  it('tells webhooks what is as severe as they ask for', () => {
    const webhooks = severities.map((minimumSeverity) => ({ id: minimumSeverity, minimumSeverity }));
    const whom = audience([], { webhooks });
    expect(told({ severity: 'notice' }, whom)).toEqual(['notice']);
    expect(told({ severity: 'warning', event: 'worse' }, whom)).toEqual(['notice', 'warning']);
    expect(told({ severity: 'urgent', event: 'due again' }, whom)).toEqual(['notice', 'warning', 'urgent']);
  });

  it('tells that an alert is closed to the webhooks that heard of it, and to no person', () => {
    const webhooks = [
      { id: 'heard', minimumSeverity: 'urgent' as const },
      { id: 'new', minimumSeverity: 'notice' as const },
    ];
    const whom = audience([person('keen', 'owner', { toldFrom: 'notice', urgentTurn: 'at once' })], {
      webhooks,
    });
    expect(told({ event: 'closed', severity: 'notice', toldBefore: ['heard', 'gone'] }, whom)).toEqual([
      'heard',
    ]);
  });
});

describe('whoIsTold, whoever is there', () => {
  const preference = fc.record<HowToTell>({
    toldFrom: fc.constantFrom(...severities, 'never' as const),
    urgentTurn: fc.constantFrom('at once', 'in turn'),
    summary: fc.constant('never'),
    summaryAt: fc.constant(null),
    quietFrom: fc.constantFrom(null, '20:00'),
    quietUntil: fc.constant('08:00'),
    kindsLeftOut: fc.constantFrom([], ['low stock']),
  });
  const people = fc
    .array(
      fc.record({
        role: fc.constantFrom('owner' as const, 'manager' as const, 'artist' as const, 'auditor' as const),
        preference,
        leading: fc.nat(2),
      }),
      { maxLength: 6 },
    )
    .map((all) =>
      all.map(({ leading, ...each }, index) => ({
        ...each,
        personId: `person ${index}`,
        destinations: Array.from({ length: leading }, (_, number) => ({ id: `${index} ${number}` })),
      })),
    );
  const whom = fc
    .record({
      people,
      named: fc.uniqueArray(fc.nat(6), { maxLength: 4 }),
      webhooks: fc.array(fc.constantFrom(...severities), { maxLength: 3 }),
    })
    .map(({ named, webhooks, ...rest }) =>
      audience(rest.people, {
        personIds: named.map((index) => `person ${index}`),
        webhooks: webhooks.map((minimumSeverity, index) => ({ id: `webhook ${index}`, minimumSeverity })),
      }),
    );
  const anything = fc.record<Partial<Occasion>>({
    event: fc.constantFrom('opened', 'worse', 'due again', 'handed on', 'given', 'closed'),
    severity: fc.constantFrom(...severities),
    givenTo: fc.constantFrom(null, 'person 0', 'person 3'),
    toPersonId: fc.constantFrom(null, 'person 1'),
    at: fc.constantFrom(at, atNight),
  });

  it('tells each destination once, only ones that are there, and what is urgent at once', () => {
    fc.assert(
      fc.property(anything, whom, (what, everybody) => {
        const answer = whoIsTold(occasion(what), everybody);
        const ids = answer.map(({ destinationId }) => destinationId);
        expect(new Set(ids).size).toBe(ids.length);
        const there = new Set(
          [...everybody.webhooks, ...everybody.people.flatMap(({ destinations }) => destinations)].map(
            ({ id }) => id,
          ),
        );
        expect(ids.filter((id) => !there.has(id))).toEqual([]);
        for (const { notBefore } of answer) {
          if (what.severity === 'urgent') expect(notBefore).toBeNull();
          else if (notBefore !== null) expect(notBefore > (what.at ?? at)).toBe(true);
        }
      }),
    );
  });

  it('tells a person of what is urgent whenever anybody of the order is reached', () => {
    fc.assert(
      fc.property(whom, fc.constantFrom(null, 'person 0'), (everybody, givenTo) => {
        const first = nextTurn(everybody, givenTo);
        const ids = told({ givenTo }, everybody);
        if (first) expect(ids).toEqual(expect.arrayContaining(first.destinations.map(({ id }) => id)));
      }),
    );
  });

  it('comes to everybody of the order whom something leads to, each once, whoever leaves meanwhile', () => {
    const leavers = fc
      .uniqueArray(fc.nat(6), { maxLength: 4 })
      .map((all) => all.map((index) => `person ${index}`));
    fc.assert(
      fc.property(whom, leavers, (everybody, leaving) => {
        const known = new Set<string>();
        let now = everybody;
        for (;;) {
          const next = nextTurn(now, null, known);
          if (next === null) break;
          expect(known).not.toContain(next.personId);
          known.add(next.personId);
          const gone = leaving.slice(0, known.size);
          now = { ...everybody, people: everybody.people.filter(({ personId }) => !gone.includes(personId)) };
        }
        for (const { personId, preference, destinations } of now.people) {
          const isOfOrder = orderOfPeople(now.people, now.personIds, null).some(
            (one) => one.personId === personId,
          );
          if (isOfOrder && destinations.length > 0 && preference.toldFrom !== 'never')
            expect(known).toContain(personId);
        }
      }),
    );
  });

  it('never tells a person who wants none of it, but of what is theirs', () => {
    fc.assert(
      fc.property(anything, whom, (what, everybody) => {
        const ids = told(what, everybody);
        for (const each of everybody.people) {
          if (each.preference.toldFrom !== 'never') continue;
          const isTheirs =
            each.personId === what.givenTo ||
            ((what.event === 'given' || what.event === 'handed on') && each.personId === what.toPersonId);
          if (!isTheirs) for (const { id } of each.destinations) expect(ids).not.toContain(id);
        }
      }),
    );
  });
});
