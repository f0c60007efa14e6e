import { v7 as uuidv7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { PersonView } from '../../src/identity/people.views.js';
import type { OwnSignInView, RequesterView } from '../../src/identity/sign-in/sign-in.views.js';
import { PlainSql } from '../support/plain-sql.js';
import { type RunningService, startService, testOwner, usualEngine } from '../support/service.js';
import { ServiceClock } from '../support/service-clock.js';
import { testPassword } from '../support/signing-in.js';
import { TestBrowser } from '../support/test-browser.js';

interface TestAccount {
  signInName: string;
  password: string;
}

describe.each(usualEngine)('signing in on %s', (engine) => {
  const clock = new ServiceClock();
  let service: RunningService;
  let owner: TestBrowser;
  beforeAll(async () => {
    service = await startService(engine, { environment: { ...clock.environment, TRUST_PROXY: '127.0.0.1' } });
    owner = at();
    await owner.done('POST', '/sign-in', testOwner);
  });
  afterAll(async () => {
    await service.dispose();
    clock.dispose();
  });

  /** A fresh browser, at an address of its own when it is given. */
  function at(address?: string, headers: Record<string, string> = {}): TestBrowser {
    return new TestBrowser(service.url, { ...headers, ...(address && { 'x-forwarded-for': address }) });
  }

  /** Somebody new with an account, and the browser they came in at. */
  async function newcomer(
    role = 'artist',
  ): Promise<{ account: TestAccount; browser: TestBrowser; person: PersonView }> {
    const person = await service.made<PersonView>('/people', { name: 'Some artist', role });
    const { link } = await service.made<{ link: string }>(`/people/${person.id}/invitation`);
    const account = { signInName: `${person.id}@studio.example`, password: testPassword };
    const browser = at();
    await browser.done('POST', '/invitation/accept', { secret: link.split('#')[1], ...account });
    return { account, browser, person };
  }

  const wrong = ({ signInName }: TestAccount) => ({ signInName, password: 'not the password of anybody' });
  const mine = (browser: TestBrowser) => browser.done<OwnSignInView[]>('GET', '/me/sign-ins');

  describe('by password', () => {
    it('tells nobody what they are not told, and whoever came in who they are', async () => {
      const browser = at();
      expect(await browser.refusal('GET', '/me')).toEqual([401, 'sign-in-needed']);
      const answer = await browser.signIn(testOwner);
      expect([answer.status, answer.body]).toEqual([204, '']);
      const me = await browser.done<RequesterView>('GET', '/me');
      expect(me).toMatchObject({ signInName: testOwner.signInName, hasPassword: true, method: 'password' });
      expect(me.studios).toEqual([
        expect.objectContaining({ studioId: service.studioId, role: 'owner', passkeyNeeded: false }),
      ]);
    });

    it('takes the name in any case and spacing, and the password only as it is', async () => {
      const browser = at();
      const { signInName, password } = testOwner;
      expect((await browser.signIn({ signInName: `  ${signInName.toUpperCase()} `, password })).status).toBe(
        204,
      );
      for (const other of [password.toUpperCase(), ` ${password}`, `${password} `, password.slice(0, -1)]) {
        expect(await at().refusal('POST', '/sign-in', { signInName, password: other })).toEqual([
          401,
          'sign-in-failed',
        ]);
      }
    });

    it('sets a cookie that no script reads and no other site has sent', async () => {
      const answer = await at().signIn(testOwner);
      const cookies = answer.headers.getSetCookie();
      expect(cookies.map((cookie) => cookie.split('=')[0]).sort()).toEqual([
        'lotward-device',
        'lotward-sign-in',
      ]);
      for (const cookie of cookies) {
        expect(cookie).toMatch(
          /^lotward-[a-z-]+=[\w.-]{43,}; Max-Age=\d+; Path=\/; HttpOnly; SameSite=Strict$/,
        );
      }
      expect(answer.headers.get('cache-control')).toBe('no-store');
    });

    it('answers a wrong name and a wrong password alike', async () => {
      const { account } = await newcomer();
      const [nobody, somebody] = [
        await at('198.51.100.1').signIn({ ...account, signInName: 'nobody@studio.example' }),
        await at('198.51.100.2').signIn(wrong(account)),
      ];
      expect(nobody.body).toEqual(somebody.body);
      const named = (headers: Headers) => [...headers.keys()].sort();
      expect(named(nobody.headers)).toEqual(named(somebody.headers));
    });

    it('takes as long for a name that nobody has as for a wrong password', async () => {
      const { account, browser } = await newcomer();
      // At the device of the account, whose slips are counted by themselves.
      const unknown: number[] = [];
      const known: number[] = [];
      const timed = async (at_: TestBrowser, given: TestAccount, into: number[]) => {
        const start = performance.now();
        const { status } = await at_.signIn(given);
        into.push(performance.now() - start);
        expect(status).toBe(401);
      };
      for (let turn = 0; turn < 9; turn += 1) {
        await timed(at(`198.51.100.${10 + turn}`), { ...account, signInName: `nobody${turn}` }, unknown);
        await timed(browser, wrong(account), known);
      }
      // The quickest of each, which nothing else on the machine held up.
      const ratio = Math.min(...unknown) / Math.min(...known);
      expect(ratio).toBeGreaterThan(0.5);
      expect(ratio).toBeLessThan(2);
    });

    it('makes a new sign-in each time, and ends the one the browser had', async () => {
      const { account, browser } = await newcomer();
      const before = browser.copy();
      expect((await browser.signIn(account)).status).toBe(204);
      expect(browser.cookie('sign-in')).not.toBe(before.cookie('sign-in'));
      expect(await before.isSignedIn()).toBe(false);
      expect(await mine(browser)).toHaveLength(1);
    });

    it('ends by signing out, for good, and lets the browser forget', async () => {
      const { browser } = await newcomer();
      const before = browser.copy();
      const answer = await browser.ask('POST', '/sign-out');
      expect([answer.status, answer.headers.get('clear-site-data')]).toEqual([204, '"cache"']);
      expect(browser.cookie('sign-in')).toBeUndefined();
      expect(await before.isSignedIn()).toBe(false);
      expect((await browser.ask('POST', '/sign-out')).status).toBe(204);
    });

    it.each([
      ['unknown', 'A'.repeat(43)],
      ['empty', ''],
      ['of another kind', '%00%ff'],
      ['very long', 'A'.repeat(4_000)],
      ['SQL', "' OR 1=1 --"],
    ])('takes a cookie that is %s for none', async (_, secret) => {
      const cookie = `lotward-sign-in=${encodeURIComponent(secret)}`;
      expect(await at(undefined, { cookie }).refusal('GET', '/me')).toEqual([401, 'sign-in-needed']);
    });

    it('ends also when it is told so twice at once', async () => {
      const { browser } = await newcomer();
      const answers = await Promise.all(
        [browser, browser.copy()].map((each) => each.ask('POST', '/sign-out')),
      );
      expect(answers.map(({ status }) => status)).toEqual([204, 204]);
    });

    it('does not mind what somebody wrote into the cookie of the device', async () => {
      const { account } = await newcomer();
      for (const device of ['.', '....', 'ä'.repeat(43), `x.${'ä'.repeat(43)}`, `x.${'A'.repeat(43)}`]) {
        const cookie = `lotward-device=${encodeURIComponent(device)}`;
        expect((await at(undefined, { cookie }).signIn(account)).status).toBe(204);
      }
    });
  });

  describe('with many attempts', () => {
    beforeAll(() => clock.standStill());
    afterAll(() => clock.goOn());

    it('lets hardly more through at the same moment than one after the other', async () => {
      const { account } = await newcomer();
      const answers = await Promise.all(
        Array.from({ length: 40 }, (_, index) =>
          at(`203.0.113.${index}`).ask('POST', '/sign-in', wrong(account)),
        ),
      );
      const statuses = answers.map(({ status }) => status);
      expect(new Set(statuses)).toEqual(new Set([401, 429]));
      // Five slips cost nothing; the sixth waits a second, and so on.
      expect(statuses.filter((status) => status === 401).length).toBeLessThanOrEqual(8);
      const waiting = answers.find(({ status }) => status === 429);
      expect(waiting?.body).toMatchObject({
        code: 'too-many-requests',
        retryAfterSeconds: expect.any(Number),
      });
      expect(Number(waiting?.headers.get('retry-after'))).toBeGreaterThan(0);
    });

    it('keeps a stranger out, and neither the owner at a device they know, nor for good at another', async () => {
      const { account, browser } = await newcomer();
      for (let turn = 0; turn < 12; turn += 1) {
        await at(`192.0.2.${turn}`).signIn(wrong(account));
        clock.forward({ seconds: turn });
      }
      await browser.done('POST', '/sign-out');
      const elsewhere = at('192.0.2.100');
      expect((await elsewhere.signIn(account)).status).toBe(429);
      // The device signed in before; whose address it has now does not matter.
      expect((await browser.signIn(account)).status).toBe(204);
      // Signing in forgave the device's slips, not the stranger's.
      expect((await elsewhere.signIn(account)).status).toBe(429);
      clock.forward({ minutes: 15, seconds: 1 });
      expect((await elsewhere.signIn(account)).status).toBe(204);
      // That was the right password, so the account's slate is clean.
      expect((await at('192.0.2.101').signIn(wrong(account))).status).toBe(401);
      expect((await at('192.0.2.101').signIn(account)).status).toBe(204);
    });

    it('waits for a device too, which may have been stolen', async () => {
      const { account, browser } = await newcomer();
      const statuses: number[] = [];
      for (let turn = 0; turn < 14; turn += 1) statuses.push((await browser.signIn(wrong(account))).status);
      expect(statuses.slice(0, 10)).toEqual(Array.from({ length: 10 }, () => 401));
      expect(statuses).toContain(429);
      clock.forward({ minutes: 15, seconds: 1 });
      expect((await browser.signIn(account)).status).toBe(204);
    });

    it('counts an address over all names, and does not count what waits', async () => {
      const address = '203.0.113.200';
      const guess = () => at(address).signIn({ signInName: uuidv7(), password: 'guessed again and again' });
      for (let turn = 0; turn < 20; turn += 1) expect((await guess()).status).toBe(401);
      expect((await guess()).status).toBe(429);
      const { account, browser } = await newcomer();
      expect((await at(address).signIn(account)).status).toBe(429);
      expect((await at('203.0.113.201').signIn(account)).status).toBe(204);
      const known = browser.copy();
      expect((await known.signIn(account)).status).toBe(204);
      // A hundred more while it waits make the wait hardly longer.
      await Promise.all(Array.from({ length: 100 }, guess));
      const waiting = await at(address).ask<{ retryAfterSeconds?: number }>('POST', '/sign-in', account);
      expect(waiting.body.retryAfterSeconds ?? 0).toBeLessThan(30);
      clock.forward({ minutes: 1 });
      expect((await guess()).status).toBe(401);
      // Somebody right from there goes on; the address stays where it was.
      clock.forward({ minutes: 1 });
      expect((await at(address).signIn(account)).status).toBe(204);
      expect((await guess()).status).toBe(401);
      expect((await guess()).status).toBe(429);
    });

    it('forgets nothing an address tried while somebody right signed in from there', async () => {
      const { account } = await newcomer();
      const address = '203.0.113.210';
      const guess = () => at(address).signIn({ signInName: uuidv7(), password: 'guessed again and again' });
      const statuses: number[] = [];
      for (let round = 0; round < 4; round += 1) {
        const right = at(address).signIn(account);
        const guesses = await Promise.all(Array.from({ length: 9 }, guess));
        statuses.push((await right).status, ...guesses.map(({ status }) => status));
      }
      expect(statuses).toContain(204);
      expect(statuses).toContain(429);
    });

    it('takes all addresses of one IPv6 network for one', async () => {
      const guess = (address: string) =>
        at(address).signIn({ signInName: uuidv7(), password: 'guessed again and again' });
      for (let turn = 0; turn < 20; turn += 1) {
        expect((await guess(`2001:db8:1:2:${turn}::7`)).status).toBe(401);
      }
      expect((await guess('2001:db8:1:2:ffff::1')).status).toBe(429);
      expect((await guess('2001:db8:1:3::1')).status).toBe(401);
    });

    it('forgets failures after a day, and keeps no name or address of them', async () => {
      const { account } = await newcomer();
      await at('192.0.2.77').signIn(wrong(account));
      const sql = await PlainSql.connect(service, 'read');
      const rows = await sql.rows('SELECT * FROM failed_sign_in');
      expect(rows.length).toBeGreaterThan(0);
      expect(JSON.stringify(rows)).not.toMatch(/192\.0\.2\.77|studio\.example/);
      clock.forward({ hours: 25 });
      await at('192.0.2.78').signIn({ signInName: 'x', password: 'y' });
      expect(await sql.rows('SELECT * FROM failed_sign_in')).toHaveLength(2);
      await sql.close();
    });
  });

  describe('stays', () => {
    it('with a secret that is replaced every hour, without any request failing meanwhile', async () => {
      const { browser } = await newcomer();
      const first = browser.cookie('sign-in') ?? '';
      clock.forward({ minutes: 59 });
      await browser.done('GET', '/me');
      expect(browser.cookie('sign-in')).toBe(first);
      clock.forward({ minutes: 2 });
      // A page asks for many things at once, all with the secret it has.
      const copies = Array.from({ length: 20 }, () => browser.copy());
      const answers = await Promise.all(copies.map((copy) => copy.ask('GET', '/me')));
      expect(answers.map(({ status }) => status)).toEqual(copies.map(() => 200));
      const fresh = new Set(
        copies.map((copy) => copy.cookie('sign-in')).filter((secret) => secret !== first),
      );
      expect(fresh.size).toBe(1);
      const [second = ''] = fresh;
      browser.setCookie('sign-in', second);
      await browser.done('GET', '/me');
      // What was under way with the earlier secret still gets its answer, for a minute.
      const late = browser.copy();
      late.setCookie('sign-in', first);
      clock.forward({ seconds: 50 });
      await late.done('GET', '/me');
      expect(await browser.isSignedIn()).toBe(true);
    });

    it('no longer once a replaced secret is used again: somebody copied it', async () => {
      const { browser } = await newcomer();
      const thief = browser.copy();
      clock.forward({ minutes: 61 });
      await browser.done('GET', '/me');
      await browser.done('GET', '/me');
      clock.forward({ seconds: 61 });
      expect(await thief.isSignedIn()).toBe(false);
      expect(await browser.isSignedIn()).toBe(false);
      expect(service.log.join('')).toContain('a secret that had been replaced was presented again');
    });

    it('when the answer with the new secret was lost', async () => {
      const { browser } = await newcomer();
      const first = browser.cookie('sign-in') ?? '';
      clock.forward({ minutes: 61 });
      await browser.copy().done('GET', '/me');
      expect(browser.cookie('sign-in')).toBe(first);
      clock.forward({ minutes: 5 });
      await browser.done('GET', '/me');
      expect(browser.cookie('sign-in')).not.toBe(first);
      await browser.done('GET', '/me');
      clock.forward({ minutes: 5 });
      expect(await browser.isSignedIn()).toBe(true);
    });

    it('eight hours while nobody is there', async () => {
      const { browser } = await newcomer();
      clock.forward({ hours: 7, minutes: 50 });
      expect(await browser.isSignedIn()).toBe(true);
      clock.forward({ hours: 7, minutes: 50 });
      expect(await browser.isSignedIn()).toBe(true);
      clock.forward({ hours: 8, minutes: 6 });
      expect(await browser.refusal('GET', '/me')).toEqual([401, 'sign-in-needed']);
    });

    it('a week at most, however busy', async () => {
      const { browser } = await newcomer();
      for (let hours = 0; hours < 7 * 24 - 6; hours += 6) {
        expect(await browser.isSignedIn()).toBe(true);
        clock.forward({ hours: 6 });
      }
      expect(await browser.isSignedIn()).toBe(true);
      clock.forward({ hours: 6, minutes: 1 });
      expect(await browser.isSignedIn()).toBe(false);
    });
  });

  describe('is shown to its owner', () => {
    it('by device and way, with the one that asks, and without what is over', async () => {
      const { account, browser } = await newcomer();
      const phone = at(undefined, { 'user-agent': 'Pocket telephone <script>' });
      await phone.done('POST', '/sign-in', account);
      const gone = at();
      await gone.done('POST', '/sign-in', account);
      await gone.done('POST', '/sign-out');
      const listed = await mine(phone);
      expect(listed.map(({ method, isThis, onTablet }) => [method, isThis, onTablet])).toEqual([
        ['password', true, false],
        ['one-time link', false, false],
      ]);
      expect(listed[0]?.device).toBe('Pocket telephone <script>');
      clock.forward({ hours: 5 });
      await phone.done('GET', '/me');
      clock.forward({ hours: 4 });
      // The other was left alone for nine hours.
      expect(await mine(phone)).toHaveLength(1);
      expect(await browser.isSignedIn()).toBe(false);
    });

    it('and ended by them: one, or all the others, soon after they signed in', async () => {
      const { account, browser } = await newcomer();
      const [phone, desk, kiosk] = [at(), at(), at()];
      for (const each of [phone, desk, kiosk]) await each.done('POST', '/sign-in', account);
      const [, , , ofBrowser] = await mine(kiosk);
      await kiosk.done('POST', '/me/sign-ins/end', { signInId: ofBrowser?.id });
      expect([await browser.isSignedIn(), await phone.isSignedIn()]).toEqual([false, true]);
      expect(await kiosk.refusal('POST', '/me/sign-ins/end', { signInId: ofBrowser?.id })).toEqual([
        404,
        'not-found',
      ]);
      clock.forward({ minutes: 11 });
      expect(await kiosk.refusal('POST', '/me/sign-ins/end', {})).toEqual([403, 'recent-sign-in-needed']);
      expect(await desk.isSignedIn()).toBe(true);
      await kiosk.done('POST', '/sign-in', account);
      await kiosk.done('POST', '/me/sign-ins/end', {});
      expect([await phone.isSignedIn(), await desk.isSignedIn(), await kiosk.isSignedIn()]).toEqual([
        false,
        false,
        true,
      ]);
    });

    it('and to nobody else', async () => {
      const [one, other] = [await newcomer(), await newcomer()];
      const [theirs] = await mine(one.browser);
      expect(await other.browser.refusal('POST', '/me/sign-ins/end', { signInId: theirs?.id })).toEqual([
        404,
        'not-found',
      ]);
      expect(await one.browser.isSignedIn()).toBe(true);
      expect((await mine(other.browser)).map(({ id }) => id)).not.toContain(theirs?.id);
    });

    it('and ended by who leads the studio, everywhere', async () => {
      const { account, browser, person } = await newcomer();
      const phone = at();
      await phone.done('POST', '/sign-in', account);
      const path = `/people/${person.id}/sign-out`;
      expect(await service.made(path)).toEqual({ personId: person.id });
      expect([await browser.isSignedIn(), await phone.isSignedIn()]).toEqual([false, false]);
      const colleague = await newcomer();
      const asked = { id: uuidv7() };
      const address = `/studios/${service.studioId}${path}`;
      expect(await colleague.browser.refusal('POST', address, asked)).toEqual([403, 'not-allowed']);
      const chain = await newcomer('chain manager');
      const owners = (await service.seen<PersonView[]>('/people')).find(({ role }) => role === 'owner');
      const up = `/studios/${service.studioId}/people/${owners?.id}/sign-out`;
      expect(await chain.browser.refusal('POST', up, asked)).toEqual([403, 'not-allowed']);
      const nobody = await service.post<{ code: string }>(`/people/${uuidv7()}/sign-out`);
      expect([nobody.status, nobody.body.code]).toEqual([404, 'not-found']);
    });
  });

  describe('with another password', () => {
    const chosen = 'ten grey owls at midnight';

    it('asks for the one there is, makes wrong ones wait, and refuses a weak one', async () => {
      const { account, browser } = await newcomer();
      const change = (currentPassword: string | undefined, newPassword: string) =>
        browser.refusal('POST', '/me/password', { currentPassword, newPassword });
      expect(await change('something else', chosen)).toEqual([401, 'sign-in-failed']);
      expect(await change(undefined, chosen)).toEqual([400, 'invalid-fields']);
      for (const weak of ['short', 'aaaaaaaaaaaa', 'qwertyuiop12', account.signInName]) {
        expect(await change(testPassword, weak)).toEqual([400, 'unusable-password']);
      }
      clock.standStill();
      const answers = await Promise.all(Array.from({ length: 30 }, () => change('something else', chosen)));
      expect(answers.filter(([status]) => status === 401).length).toBeLessThanOrEqual(13);
      expect(await change(testPassword, chosen)).toEqual([429, 'too-many-requests']);
      clock.goOn();
      expect((await browser.signIn(account)).status).toBe(204);
    });

    it('takes any characters, and as many as a sentence has', async () => {
      const { account, browser } = await newcomer();
      const long = 'Zwölf Boxkämpfer jagen Viktor quer über den großen Sylter Deich 🥊 – '.repeat(2).trim();
      await browser.done('POST', '/me/password', { currentPassword: testPassword, newPassword: long });
      expect((await at().signIn({ ...account, password: long })).status).toBe(204);
      // As another keyboard writes the same characters.
      expect((await at().signIn({ ...account, password: long.normalize('NFD') })).status).toBe(204);
      expect((await at().signIn({ ...account, password: long.slice(0, 72) })).status).toBe(401);
    });

    it('ends every other sign-in, and gives this browser a new secret', async () => {
      const { account, browser } = await newcomer();
      const phone = at();
      await phone.done('POST', '/sign-in', account);
      const before = browser.cookie('sign-in');
      await browser.done('POST', '/me/password', { currentPassword: testPassword, newPassword: chosen });
      expect(browser.cookie('sign-in')).not.toBe(before);
      expect([await browser.isSignedIn(), await phone.isSignedIn()]).toEqual([true, false]);
      expect((await at().signIn(account)).status).toBe(401);
      expect((await at().signIn({ ...account, password: chosen })).status).toBe(204);
      // The secret of before is of use to nobody.
      const thief = browser.copy();
      thief.setCookie('sign-in', before);
      clock.forward({ minutes: 2 });
      expect(await thief.isSignedIn()).toBe(false);
    });
  });

  it('is told in the audit log, with ids only', async () => {
    const { account, browser, person } = await newcomer();
    await browser.done('POST', '/sign-in', account);
    await browser.done('POST', '/sign-out');
    const sql = await PlainSql.connect(service, 'read');
    const entries = await sql.rows<{ action: string; payload: string }>(
      'SELECT action, payload FROM audit_entry WHERE person_id = $1 ORDER BY sequence',
      [person.id],
    );
    await sql.close();
    expect(entries.map(({ action }) => action)).toEqual([
      'identity.accept-invitation',
      'identity.sign-in',
      'identity.sign-out',
      'identity.sign-in',
      'identity.sign-out',
    ]);
    expect(JSON.stringify(entries)).not.toContain('studio.example');
    expect(service.log.join('')).not.toContain('studio.example');
  });
});

describe('signing in over HTTPS', () => {
  it('sets cookies that are sent over nothing else, to this host alone', async () => {
    const service = await startService('sqlite', {
      environment: { PUBLIC_URL: 'https://lotward.studio.example' },
    }).catch((error: Error) => error);
    if (service instanceof Error) throw service;
    const answer = await new TestBrowser(service.url).signIn(testOwner);
    const cookies = answer.headers.getSetCookie();
    expect(cookies).toHaveLength(2);
    for (const cookie of cookies) {
      expect(cookie).toMatch(
        /^__Host-lotward-[a-z-]+=[^;]+; Max-Age=\d+; Path=\/; HttpOnly; Secure; SameSite=Strict$/,
      );
    }
    await service.dispose();
  });
});
