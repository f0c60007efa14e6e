import { v7 as uuidv7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { PersonView } from '../../src/identity/people.views.js';
import { permissions, trayWork } from '../../src/identity/permissions.js';
import type { OwnSignInView, RequesterView } from '../../src/identity/sign-in/sign-in.views.js';
import type { BadgeView, EnrolledTabletView, TabletView } from '../../src/identity/tablets/tablets.views.js';
import { decodeSymbol } from '../demo/symbols.js';
import { symbolsOn } from '../support/drawn-symbols.js';
import { pagesOf, textOn } from '../support/pdf-pages.js';
import { PlainSql } from '../support/plain-sql.js';
import { type RunningService, startService, testOwner, usualEngine } from '../support/service.js';
import { ServiceClock } from '../support/service-clock.js';
import { testPassword } from '../support/signing-in.js';
import { TestBrowser } from '../support/test-browser.js';

/** A PIN nobody else would choose. */
const pin = '730586';

interface Artist {
  person: PersonView;
  browser: TestBrowser;
}

describe.each(usualEngine)('treatment-room tablets on %s', (engine) => {
  let clock: ServiceClock;
  let service: RunningService;
  let owner: TestBrowser;
  beforeAll(async () => {
    clock = new ServiceClock();
    service = await startService(engine, { environment: clock.environment });
    owner = await ownerAt();
  });
  afterAll(async () => {
    await service.dispose();
    clock.dispose();
  });

  async function ownerAt(): Promise<TestBrowser> {
    const browser = new TestBrowser(service.url);
    await browser.done('POST', '/sign-in', testOwner);
    return browser;
  }

  /** Somebody with an account, at a browser of their own. */
  async function newcomer(name: string, studioId = service.studioId, role = 'artist'): Promise<Artist> {
    await owner.done('POST', '/sign-in', testOwner);
    const studio = `/studios/${studioId}`;
    const person = await owner.done<PersonView>('POST', `${studio}/people`, { id: uuidv7(), name, role });
    const { link } = await owner.done<{ link: string }>('POST', `${studio}/people/${person.id}/invitation`, {
      id: uuidv7(),
    });
    const browser = new TestBrowser(service.url);
    const account = { signInName: `${person.id}@studio.example`, password: testPassword };
    await browser.done('POST', '/invitation/accept', { secret: link.split('#')[1], ...account });
    return { person, browser };
  }

  /** A browser that the owner made a tablet. */
  async function enrol(name: string, studioId = service.studioId) {
    const browser = await ownerAt();
    const enrolled = await browser.done<TabletView>('POST', `/studios/${studioId}/tablets`, {
      id: uuidv7(),
      name,
    });
    return { browser, enrolled };
  }

  /** What the symbol of a printed badge holds. */
  async function printBadge(
    { person }: Artist,
    id = uuidv7(),
    studioId = service.studioId,
  ): Promise<{ badge: string; text: string }> {
    const response = await fetch(`${service.url}/api/v1/studios/${studioId}/people/${person.id}/badge`, {
      method: 'POST',
      headers: { 'content-type': 'application/json', cookie: owner.cookieHeader },
      body: JSON.stringify({ id }),
    });
    expect([response.status, response.headers.get('content-type')]).toEqual([200, 'application/pdf']);
    const [page, ...more] = pagesOf(Buffer.from(await response.arrayBuffer()));
    expect(more).toEqual([]);
    if (!page) throw new Error('No page was printed.');
    const [symbol = Buffer.of()] = symbolsOn(page);
    const { text: badge, symbologyIdentifier } = await decodeSymbol(symbol);
    expect(symbologyIdentifier).toBe(']d1');
    return { badge, text: textOn(page) };
  }

  const choosePin = ({ browser }: Artist, chosen = pin, studioId = service.studioId) =>
    browser.ask('PUT', `/me/studios/${studioId}/pin`, { pin: chosen });
  const who = (browser: TestBrowser) => browser.done<RequesterView>('GET', '/me');
  const people = async (browser: TestBrowser) =>
    (await browser.done<EnrolledTabletView>('GET', '/tablet')).people;

  it('are enrolled by somebody at the browser itself, who is signed out there', async () => {
    const browser = await ownerAt();
    const answer = await browser.ask<TabletView>('POST', `/studios/${service.studioId}/tablets`, {
      id: uuidv7(),
      name: 'Room 1',
    });
    expect(answer.status).toBe(201);
    expect(answer.body).toMatchObject({ name: 'Room 1', revokedAt: null, version: 1 });
    const cookie = answer.headers.getSetCookie().find((each) => each.startsWith('lotward-tablet='));
    expect(cookie).toMatch(
      /^lotward-tablet=[\w-]{43}; Max-Age=34560000; Path=\/; HttpOnly; SameSite=Strict$/,
    );
    expect(await browser.isSignedIn()).toBe(false);
    expect(await browser.done('GET', '/tablet')).toMatchObject({ name: 'Room 1', studioName: 'My studio' });
  });

  it('give the same answer to a repeated request, and are enrolled once', async () => {
    const id = uuidv7();
    const first = await ownerAt();
    const studio = `/studios/${service.studioId}`;
    const made = await first.done('POST', `${studio}/tablets`, { id, name: 'Room 2' });
    // The answer was lost: the cookie too.
    const again = await ownerAt();
    expect(await again.done('POST', `${studio}/tablets`, { id, name: 'Room 2' })).toEqual(made);
    expect(again.cookie('tablet')).toBe(first.cookie('tablet'));
    await first.done('POST', '/sign-in', testOwner);
    expect(await first.refusal('POST', `${studio}/tablets`, { id: uuidv7(), name: 'Twice' })).toEqual([
      409,
      'already-exists',
    ]);
  });

  it('are not enrolled by a program, nor from a tablet, nor by an artist', async () => {
    const answer = await service.post<{ code: string }>('/tablets', { name: 'Program' });
    expect([answer.status, answer.body.code]).toEqual([403, 'not-allowed']);
    const artist = await newcomer('Ada');
    const tablets = `/studios/${service.studioId}/tablets`;
    expect(await artist.browser.refusal('POST', tablets, { id: uuidv7(), name: 'x' })).toEqual([
      403,
      'not-allowed',
    ]);
    const owners = (await service.seen<PersonView[]>('/people')).find(({ role }) => role === 'owner');
    const { browser } = await enrol('Room 3');
    const { badge } = await printBadge({ person: owners as PersonView, browser });
    await browser.done('POST', '/tablet/switch', { badge });
    expect(await browser.refusal('POST', tablets, { id: uuidv7(), name: 'x' })).toEqual([403, 'not-allowed']);
  });

  it('let artists switch by badge, each signing the one before out', async () => {
    const { browser } = await enrol('Room 4');
    const [one, other] = [await newcomer('Bea Roth'), await newcomer('Cid Lund')];
    const [badgeOfOne, badgeOfOther] = [await printBadge(one), await printBadge(other)];
    expect(badgeOfOne.text).toContain('Bea Roth');
    expect(badgeOfOne.text).toContain('My studio');
    await browser.done('POST', '/tablet/switch', { badge: badgeOfOne.badge });
    expect(await who(browser)).toMatchObject({
      method: 'badge',
      signInName: null,
      studios: [{ personId: one.person.id, studioId: service.studioId }],
    });
    const before = browser.copy();
    // A scanner may write small letters and end with a new line.
    await browser.done('POST', '/tablet/switch', { badge: `${badgeOfOther.badge.toLowerCase()}\r\n`.trim() });
    expect((await who(browser)).studios[0]?.personId).toBe(other.person.id);
    expect(await before.isSignedIn()).toBe(false);
    await browser.done('POST', '/sign-out');
    expect(await browser.isSignedIn()).toBe(false);
    // Signing out leaves it a tablet.
    await browser.done('POST', '/tablet/switch', { badge: badgeOfOne.badge });
    expect((await who(browser)).studios[0]?.personId).toBe(one.person.id);
    // Also when the browser forgot who was there.
    const forgotten = browser.copy();
    browser.setCookie('sign-in', undefined);
    await browser.done('POST', '/tablet/switch', { badge: badgeOfOther.badge });
    expect(await forgotten.isSignedIn()).toBe(false);
  });

  it('sign whoever had signed in with a password out, when somebody shows a badge', async () => {
    const { browser } = await enrol('Room 5');
    const artist = await newcomer('Dot');
    const { badge } = await printBadge(artist);
    await browser.done('POST', '/sign-in', testOwner);
    const owners = browser.copy();
    await browser.done('POST', '/tablet/switch', { badge });
    expect(await owners.isSignedIn()).toBe(false);
  });

  it('let artists switch by a PIN they chose, and name those who have one', async () => {
    const { browser } = await enrol('Room 6');
    const artist = await newcomer('Eve Moor');
    expect(await people(browser)).not.toContainEqual({ personId: artist.person.id, name: 'Eve Moor' });
    expect((await choosePin(artist)).status).toBe(200);
    expect(await people(browser)).toContainEqual({ personId: artist.person.id, name: 'Eve Moor' });
    const personId = artist.person.id;
    expect(await browser.refusal('POST', '/tablet/switch', { personId, pin: '730587' })).toEqual([
      401,
      'sign-in-failed',
    ]);
    await browser.done('POST', '/tablet/switch', { personId, pin });
    expect(await who(browser)).toMatchObject({ method: 'PIN', studios: [{ personId }] });
    const own = await artist.browser.done<OwnSignInView[]>('GET', '/me/sign-ins');
    expect(own.map(({ method, onTablet }) => [method, onTablet])).toContainEqual(['PIN', true]);
  });

  it('refuse PINs that others try first, and PINs on behalf of others', async () => {
    const artist = await newcomer('Fay');
    for (const refused of ['1234', '0000', '1985', '123', '123456789']) {
      const answer = await choosePin(artist, refused);
      expect([answer.status, answer.body.code]).toEqual([400, 'unusable-pin']);
      // A problem names no PIN: it may be kept in a log.
      if (refused.length > 3) expect(JSON.stringify(answer.body)).not.toContain(refused);
    }
    expect(
      (await service.put(`${service.url}/api/v1/me/studios/${service.studioId}/pin`, { pin })).status,
    ).toBe(403);
    const sister = await service.made<{ studioId: string }>('/chain/studios', {
      name: 'Sister',
      timeZone: 'UTC',
    });
    const elsewhere = await choosePin(artist, pin, sister.studioId);
    expect([elsewhere.status, elsewhere.body.code]).toEqual([404, 'not-found']);
  });

  it('make a guesser of PINs wait, on one tablet and for one person, while the badge needs no wait', async () => {
    const [{ browser }, { browser: otherRoom }] = [await enrol('Room 7'), await enrol('Room 8')];
    const [artist, colleague] = [await newcomer('Gus'), await newcomer('Hal')];
    const { badge } = await printBadge(artist);
    for (const each of [artist, colleague]) expect((await choosePin(each)).status).toBe(200);
    const personId = artist.person.id;
    const guess = (at: TestBrowser, guessed: string) =>
      at.refusal('POST', '/tablet/switch', { personId, pin: guessed });
    // Twenty at the same moment: the first four count, whatever the others were.
    clock.standStill();
    const guesses = Array.from({ length: 20 }, (_, index) => String(730_000 + index));
    const answers = await Promise.all(guesses.map((guessed) => guess(browser, guessed)));
    expect(answers.filter(([status]) => status === 401).length).toBeLessThanOrEqual(4);
    expect(answers.filter(([status]) => status === 429).length).toBeGreaterThanOrEqual(16);
    expect(await guess(browser, pin)).toEqual([429, 'too-many-requests']);

    // Neither the badge, nor a colleague's PIN, nor another tablet waits.
    await browser.done('POST', '/tablet/switch', { badge });
    await browser.done('POST', '/tablet/switch', { personId: colleague.person.id, pin });
    await otherRoom.done('POST', '/tablet/switch', { personId, pin });
    // Nor does the person at their own browser.
    expect(await artist.browser.isSignedIn()).toBe(true);

    clock.goOn();
    clock.forward({ minutes: 1 });
    await browser.done('POST', '/tablet/switch', { personId, pin });
  });

  it('let a guesser, however patient, have no more than an attempt an hour', async () => {
    const { browser } = await enrol('Room 9');
    const artist = await newcomer('Ivy');
    await choosePin(artist);
    const body = { personId: artist.person.id, pin: '111111' };
    let wait = 0;
    for (let attempts = 0; attempts < 60 && wait < 3_600; attempts += 1) {
      const answer = await browser.ask<{ retryAfterSeconds?: number }>('POST', '/tablet/switch', body);
      wait = answer.body.retryAfterSeconds ?? 0;
      clock.forward({ seconds: wait });
    }
    expect(wait).toBe(3_600);
    await browser.done('POST', '/tablet/switch', { ...body, pin });
  });

  it('do nothing without the cookie of the tablet, whatever is presented', async () => {
    const { browser } = await enrol('Room 10');
    const artist = await newcomer('Jan');
    const { badge } = await printBadge(artist);
    await choosePin(artist);
    const personId = artist.person.id;
    for (const elsewhere of [new TestBrowser(service.url), artist.browser, await ownerAt()]) {
      for (const body of [{ badge }, { personId, pin }]) {
        expect(await elsewhere.refusal('POST', '/tablet/switch', body)).toEqual([403, 'not-allowed']);
      }
      expect(await elsewhere.refusal('GET', '/tablet')).toEqual([404, 'not-found']);
    }
    for (const secret of ['x', 'A'.repeat(43), '', '%00', 'ä'.repeat(43)]) {
      const forged = new TestBrowser(service.url, { cookie: `lotward-tablet=${encodeURIComponent(secret)}` });
      expect(await forged.refusal('POST', '/tablet/switch', { badge })).toEqual([403, 'not-allowed']);
    }
    // A sign-in of a tablet that is copied to another device is worth nothing there.
    await browser.done('POST', '/tablet/switch', { badge });
    const copied = browser.copy();
    copied.setCookie('tablet', undefined);
    expect(await copied.isSignedIn()).toBe(false);
    copied.setCookie('tablet', (await enrol('Room 11')).browser.cookie('tablet'));
    expect(await copied.isSignedIn()).toBe(false);
    expect(await browser.isSignedIn()).toBe(true);
  });

  it('take a badge or a PIN, not both or parts of both, and no text that is none', async () => {
    const { browser } = await enrol('Room 12');
    const artist = await newcomer('Kim');
    const { badge } = await printBadge(artist);
    await choosePin(artist);
    const personId = artist.person.id;
    for (const body of [
      {},
      { badge, pin },
      { badge, personId },
      { badge, personId, pin },
      { pin },
      { personId },
    ]) {
      expect(await browser.refusal('POST', '/tablet/switch', body)).toEqual([400, 'invalid-fields']);
    }
    const others = [
      badge.slice(0, -1),
      `${badge}0`,
      `LB${'0'.repeat(40)}`,
      'LB',
      '01095060001343521725',
      personId,
    ];
    for (const text of others) {
      expect(await browser.refusal('POST', '/tablet/switch', { badge: text })).toEqual([
        401,
        'sign-in-failed',
      ]);
    }
    const nobody = { personId: uuidv7(), pin };
    expect(await browser.refusal('POST', '/tablet/switch', nobody)).toEqual([401, 'sign-in-failed']);
  });

  it('do only tray work in their own studio, and nothing of the own account', async () => {
    const { browser } = await enrol('Room 13');
    const owners = (await service.seen<PersonView[]>('/people')).find(({ role }) => role === 'owner');
    const { badge } = await printBadge({ person: owners as PersonView, browser });
    await browser.done('POST', '/tablet/switch', { badge });
    const [standing, ...others] = (await who(browser)).studios;
    expect(others).toEqual([]);
    expect([...(standing?.permissions ?? [])].sort()).toEqual(
      permissions.filter((permission) => trayWork.has(permission)).sort(),
    );
    const studio = `/studios/${service.studioId}`;
    expect((await browser.ask('GET', `${studio}/places`)).status).toBe(200);
    expect(await browser.refusal('GET', `${studio}/clients`)).toEqual([403, 'not-allowed']);
    expect(await browser.refusal('GET', `${studio}/tokens`)).toEqual([403, 'not-allowed']);
    for (const path of ['/me/sign-ins', '/me/passkeys', `/me${studio}/pin`]) {
      expect(await browser.refusal('GET', path)).toEqual([403, 'not-allowed']);
    }
    const passwords = { currentPassword: testOwner.password, newPassword: 'ten grey owls at midnight' };
    expect(await browser.refusal('POST', '/me/password', passwords)).toEqual([403, 'not-allowed']);
    const sister = await service.made<{ studioId: string }>('/chain/studios', {
      name: 'Sister of tablets',
      timeZone: 'UTC',
    });
    // The owner of both is a stranger to the other on this tablet.
    expect(await browser.refusal('GET', `/studios/${sister.studioId}`)).toEqual([404, 'not-found']);
  });

  it('know no badge and no PIN of another studio', async () => {
    const sister = await service.made<{ studioId: string }>('/chain/studios', {
      name: 'Sister of badges',
      timeZone: 'UTC',
    });
    await owner.done('POST', '/sign-in', testOwner);
    const { browser } = await enrol('Room of the sister', sister.studioId);
    const artist = await newcomer('Lou');
    const { badge } = await printBadge(artist);
    await choosePin(artist);
    expect(await browser.refusal('POST', '/tablet/switch', { badge })).toEqual([401, 'sign-in-failed']);
    expect(await browser.refusal('POST', '/tablet/switch', { personId: artist.person.id, pin })).toEqual([
      401,
      'sign-in-failed',
    ]);
    const { browser: own } = await enrol('Room 14');
    await own.done('POST', '/tablet/switch', { badge });
  });

  it('keep no badge working that was printed again or withdrawn, and end what it signed in', async () => {
    const { browser } = await enrol('Room 15');
    const artist = await newcomer('Mia');
    const first = await printBadge(artist);
    await browser.done('POST', '/tablet/switch', { badge: first.badge });
    const second = await printBadge(artist);
    expect(second.badge).not.toBe(first.badge);
    expect(await browser.isSignedIn()).toBe(false);
    expect(await browser.refusal('POST', '/tablet/switch', { badge: first.badge })).toEqual([
      401,
      'sign-in-failed',
    ]);
    await browser.done('POST', '/tablet/switch', { badge: second.badge });
    const path = `/people/${artist.person.id}/badge/withdrawal`;
    await service.made(path);
    expect(await browser.isSignedIn()).toBe(false);
    expect(await browser.refusal('POST', '/tablet/switch', { badge: second.badge })).toEqual([
      401,
      'sign-in-failed',
    ]);
    const again = await service.post<{ code: string }>(path);
    expect([again.status, again.body.code]).toEqual([409, 'wrong-state']);
    // The person's own browser is not concerned.
    expect(await artist.browser.isSignedIn()).toBe(true);
  });

  it('print the same badge for a repeated request, and tell of badges when they were last used', async () => {
    const { browser } = await enrol('Room 16');
    const artist = await newcomer('Nan');
    const id = uuidv7();
    const [first, again] = [await printBadge(artist, id), await printBadge(artist, id)];
    expect(again).toEqual(first);
    const listed = async () =>
      (await service.seen<BadgeView[]>('/badges')).filter(({ personId }) => personId === artist.person.id);
    expect(await listed()).toEqual([expect.objectContaining({ id, lastUsedAt: null })]);
    await browser.done('POST', '/tablet/switch', { badge: first.badge });
    expect((await listed())[0]?.lastUsedAt).toMatch(/^20/);
  });

  it('print badges for people who sign in and work trays only', async () => {
    const stranger = await service.made<PersonView>('/people', { name: 'No account', role: 'artist' });
    const head = await newcomer('Chain head', service.studioId, 'chain manager');
    for (const { id } of [stranger, head.person]) {
      const answer = await service.post<{ code: string }>(`/people/${id}/badge`);
      expect([answer.status, answer.body.code]).toEqual([409, 'wrong-state']);
    }
    // Nor does a chain manager print themselves the badge of somebody who may do more.
    const path = `/studios/${service.studioId}/people/${(await newcomer('Has a badge')).person.id}/badge`;
    await owner.ask('POST', path, { id: uuidv7() });
    for (const [verb, body] of [
      ['POST', ''],
      ['POST', '/withdrawal'],
    ]) {
      expect(await head.browser.refusal(verb ?? '', path + body, { id: uuidv7() })).toEqual([
        403,
        'not-allowed',
      ]);
    }
    const chosen = await choosePin(head);
    expect([chosen.status, chosen.body.code]).toEqual([409, 'wrong-state']);
    const nobody = await service.post<{ code: string }>(`/people/${uuidv7()}/badge`);
    expect([nobody.status, nobody.body.code]).toEqual([404, 'not-found']);
  });

  it('keep no PIN working that was replaced or removed, and end what it signed in', async () => {
    const { browser } = await enrol('Room 17');
    const artist = await newcomer('Oda');
    const personId = artist.person.id;
    const own = `/me/studios/${service.studioId}/pin`;
    await choosePin(artist);
    await browser.done('POST', '/tablet/switch', { personId, pin });
    await choosePin(artist, '860473');
    expect(await browser.isSignedIn()).toBe(false);
    expect(await browser.refusal('POST', '/tablet/switch', { personId, pin })).toEqual([
      401,
      'sign-in-failed',
    ]);
    await browser.done('POST', '/tablet/switch', { personId, pin: '860473' });
    expect(await artist.browser.done('GET', own)).toEqual({ chosenAt: expect.stringMatching(/^20/) });
    expect(await artist.browser.done('POST', `${own}/removal`)).toEqual({ chosenAt: null });
    expect(await browser.isSignedIn()).toBe(false);
    expect(await browser.refusal('POST', '/tablet/switch', { personId, pin: '860473' })).toEqual([
      401,
      'sign-in-failed',
    ]);
    expect(await artist.browser.refusal('POST', `${own}/removal`)).toEqual([409, 'wrong-state']);
  });

  it('ask for a recent sign-in before a PIN is chosen', async () => {
    const artist = await newcomer('Pia');
    clock.forward({ minutes: 11 });
    const answer = await choosePin(artist);
    expect([answer.status, answer.body.code]).toEqual([403, 'recent-sign-in-needed']);
    const account = { signInName: `${artist.person.id}@studio.example`, password: testPassword };
    await artist.browser.done('POST', '/sign-in', account);
    expect((await choosePin(artist)).status).toBe(200);
  });

  it('sign nobody in who left, or whose last day is over', async () => {
    const { browser } = await enrol('Room 18');
    const artist = await newcomer('Quy');
    const { badge } = await printBadge(artist);
    await choosePin(artist);
    const personId = artist.person.id;
    const studio = `/studios/${service.studioId}`;
    await browser.done('POST', '/tablet/switch', { badge });
    const change = async (fields: object) => {
      const all = await service.seen<PersonView[]>('/people');
      const version = all.find(({ id }) => id === personId)?.version;
      expect((await service.patch(`/people/${personId}`, { version, ...fields })).status).toBe(200);
    };
    await change({ state: 'left' });
    expect(await browser.refusal('GET', studio)).toEqual([404, 'not-found']);
    for (const body of [{ badge }, { personId, pin }]) {
      expect(await browser.refusal('POST', '/tablet/switch', body)).toEqual([401, 'sign-in-failed']);
    }
    expect((await people(browser)).map((each) => each.personId)).not.toContain(personId);
    await change({ state: 'active', until: '2020-01-01' });
    expect(await browser.refusal('POST', '/tablet/switch', { badge })).toEqual([401, 'sign-in-failed']);
    expect((await people(browser)).map((each) => each.personId)).not.toContain(personId);
    await change({ until: null });
    await browser.done('POST', '/tablet/switch', { badge });
  });

  it('are revoked at once: who is signed in there is out, and nobody comes in', async () => {
    const { browser, enrolled } = await enrol('Room 19');
    const artist = await newcomer('Roy');
    const { badge } = await printBadge(artist);
    await choosePin(artist);
    await browser.done('POST', '/tablet/switch', { badge });
    await service.made(`/tablets/${enrolled.id}/revocation`);
    expect(await browser.isSignedIn()).toBe(false);
    for (const body of [{ badge }, { personId: artist.person.id, pin }]) {
      expect(await browser.refusal('POST', '/tablet/switch', body)).toEqual([403, 'not-allowed']);
    }
    expect(await browser.refusal('GET', '/tablet')).toEqual([404, 'not-found']);
    const again = await service.post<{ code: string }>(`/tablets/${enrolled.id}/revocation`);
    expect([again.status, again.body.code]).toEqual([409, 'wrong-state']);
    const unknown = await service.post<{ code: string }>(`/tablets/${uuidv7()}/revocation`);
    expect([unknown.status, unknown.body.code]).toEqual([404, 'not-found']);
    // The browser may be enrolled again.
    await browser.done('POST', '/sign-in', testOwner);
    await browser.done('POST', `/studios/${service.studioId}/tablets`, {
      id: uuidv7(),
      name: 'Room 19 anew',
    });
    await browser.done('POST', '/tablet/switch', { badge });
  });

  it('count no sign-in of a revoked tablet, even one that began while it was revoked', async () => {
    const { browser, enrolled } = await enrol('Room 20');
    const { badge } = await printBadge(await newcomer('Sol'));
    await browser.done('POST', '/tablet/switch', { badge });
    // What a switch would have left that read the tablet just before and wrote just after.
    const sql = await PlainSql.connect(service, 'write');
    await service.made(`/tablets/${enrolled.id}/revocation`);
    await sql.rows('UPDATE sign_in SET ended_at = NULL WHERE tablet_id = $1', [enrolled.id]);
    await sql.close();
    expect(await browser.isSignedIn()).toBe(false);
  });

  it('are listed with their last use, renamed, and not renamed from a stale version', async () => {
    const { browser, enrolled } = await enrol('Room 21');
    const listed = async () =>
      (await service.seen<TabletView[]>('/tablets')).find(({ id }) => id === enrolled.id);
    expect(await listed()).toMatchObject({ name: 'Room 21', lastUsedAt: null });
    await browser.done('GET', '/tablet');
    expect((await listed())?.lastUsedAt).toMatch(/^20/);
    const path = `/tablets/${enrolled.id}`;
    expect((await service.patch(path, { version: 1, name: 'Room with a view' })).status).toBe(200);
    const stale = await service.patch<{ code: string }>(path, { version: 1, name: 'x' });
    expect([stale.status, stale.body.code]).toEqual([409, 'stale-version']);
    expect(await listed()).toMatchObject({ name: 'Room with a view', version: 2 });
  });

  it('sign out whoever leaves them alone for a quarter of an hour', async () => {
    const { browser } = await enrol('Room 22');
    const { badge } = await printBadge(await newcomer('Tia'));
    await browser.done('POST', '/tablet/switch', { badge });
    clock.forward({ minutes: 14 });
    expect(await browser.isSignedIn()).toBe(true);
    clock.forward({ minutes: 14 });
    expect(await browser.isSignedIn()).toBe(true);
    clock.forward({ minutes: 16 });
    expect(await browser.isSignedIn()).toBe(false);
    // A page that stands open asks by itself: nobody is there for that.
    await browser.done('POST', '/tablet/switch', { badge });
    clock.forward({ minutes: 14 });
    const askedByItself: Record<string, string>[] = [
      { 'lotward-by-itself': '1' },
      { accept: 'text/event-stream' },
    ];
    for (const byItself of askedByItself) {
      expect(await browser.copy(byItself).isSignedIn()).toBe(true);
    }
    clock.forward({ minutes: 2 });
    expect(await browser.isSignedIn()).toBe(false);
    // For good after twelve hours, also of somebody who never stops.
    await browser.done('POST', '/tablet/switch', { badge });
    for (let minutes = 0; minutes < 12 * 60; minutes += 10) {
      expect(await browser.isSignedIn()).toBe(true);
      clock.forward({ minutes: 10 });
    }
    clock.forward({ minutes: 1 });
    expect(await browser.isSignedIn()).toBe(false);
  });

  it('leave in the audit log who signed in on which, and keep neither secret nor PIN', async () => {
    const { browser, enrolled } = await enrol('Room 23');
    const artist = await newcomer('Una');
    const { badge } = await printBadge(artist);
    await choosePin(artist, '83649057');
    await browser.done('POST', '/tablet/switch', { badge });
    const sql = await PlainSql.connect(service, 'read');
    const [entry] = await sql.rows<{ payload: string; person_id: string; via: string }>(
      `SELECT payload, person_id, via FROM audit_entry WHERE action = 'identity.sign-in'
       AND studio_id = $1 ORDER BY sequence DESC LIMIT 1`,
      [service.studioId],
    );
    expect([entry?.person_id, entry?.via]).toEqual([artist.person.id, 'api']);
    expect(entry?.payload).toContain(enrolled.id);
    expect(entry?.payload).toContain('"badge"');
    const [kept] = await sql.rows<{ secret_hash: string }>(
      "SELECT secret_hash FROM tablet_credential WHERE person_id = $1 AND kind = 'PIN'",
      [artist.person.id],
    );
    expect(kept?.secret_hash).toMatch(/^\$argon2id\$v=19\$m=19456,p=1,t=2\$/);
    const everything = [service.log.join('')];
    for (const table of await sql.tables()) {
      everything.push(JSON.stringify(await sql.rows(`SELECT * FROM ${table}`)));
    }
    await sql.close();
    const secrets = [
      badge,
      badge.slice(2),
      badge.slice(2).toLowerCase(),
      '83649057',
      browser.cookie('tablet'),
    ];
    for (const secret of secrets) {
      expect(secret?.length).toBeGreaterThan(7);
      expect(everything.join('\n')).not.toContain(secret);
    }
  });
});
