import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import type { BrowserContext } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { PasskeyView } from '../../src/identity/passkeys/passkeys.views.js';
import type { OwnSignInView, RequesterView } from '../../src/identity/sign-in/sign-in.views.js';
import { type PageAnswer, PasskeyPage } from '../support/authenticator.js';
import { hasChromium, sharedBrowser } from '../support/chromium.js';
import { PlainSql } from '../support/plain-sql.js';
import { type RunningService, startService, testOwner, usualEngine } from '../support/service.js';
import { testPassword } from '../support/signing-in.js';

/** The page of another program on this machine: the same host name, so the same relying party, on another port. */
async function otherOrigin(): Promise<{ address: string; server: Server }> {
  const server = createServer((_, answer) =>
    answer.setHeader('content-type', 'text/html').end('<p>Other</p>'),
  );
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  return { address: `http://localhost:${(server.address() as AddressInfo).port}/`, server };
}

const refused = (answer: PageAnswer) => [answer.status, answer.body.code];
const who = async (page: PasskeyPage) => (await page.ask('GET', '/me')).body as unknown as RequesterView;

// WebAuthn Level 3 by Chromium's own authenticator [C]: nothing of what is signed here is made by the service's library.
describe.skipIf(!hasChromium).each(usualEngine)('passkeys in Chromium, on %s', (engine) => {
  let service: RunningService;
  let address: string;
  beforeAll(async () => {
    service = await startService(engine);
    await sharedBrowser();
    // A page of the service as `localhost`, for an IP address is no relying party.
    address = `http://localhost:${new URL(service.url).port}/health/live`;
  });
  afterAll(() => service.dispose());

  /** Lets somebody do something on a device of their own. */
  async function onDevice(use: (device: BrowserContext) => Promise<void>): Promise<void> {
    const device = await (await sharedBrowser()).newContext();
    await use(device).finally(() => device.close());
  }

  /** A page with an authenticator, signed in as the owner by password, or by passkey when one is there already. */
  async function signedIn(browser: BrowserContext): Promise<PasskeyPage> {
    const page = await PasskeyPage.open(browser, address);
    const answer = await page.ask('POST', '/sign-in', testOwner);
    if (answer.status !== 204) throw new Error(JSON.stringify(answer));
    return page;
  }

  /** Somebody new, with a password and no passkey. */
  async function accept(page: PasskeyPage, signInName: string): Promise<void> {
    const person = await service.made<{ id: string }>('/people', { name: signInName, role: 'artist' });
    const { link } = await service.made<{ link: string }>(`/people/${person.id}/invitation`);
    const account = { signInName, password: testPassword };
    const accepted = await page.ask('POST', '/invitation/accept', { secret: link.split('#')[1], ...account });
    expect(accepted.status).toBe(204);
  }

  /** Somebody new, with a password and one passkey, signed in by it. */
  async function newcomer(browser: BrowserContext, signInName: string): Promise<PasskeyPage> {
    const page = await PasskeyPage.open(browser, address);
    await accept(page, signInName);
    expect((await page.register('first')).status).toBe(201);
    expect((await page.signIn()).status).toBe(204);
    return page;
  }

  it('registers one, and signs in with it without a name', () =>
    onDevice(async (browser) => {
      const page = await newcomer(browser, 'ada');
      await page.ask('POST', '/sign-out');
      expect(refused(await page.ask('GET', '/me'))).toEqual([401, 'sign-in-needed']);
      expect((await page.signIn()).status).toBe(204);
      expect(await who(page)).toMatchObject({ signInName: 'ada', method: 'passkey', hasPassword: true });
      const [passkey, ...others] = (await page.ask('GET', '/me/passkeys')).body as unknown as PasskeyView[];
      expect(others).toEqual([]);
      expect(passkey).toMatchObject({ name: 'first', worksAt: 'localhost', suspectedAt: null, version: 1 });
      expect(Date.parse(passkey?.lastUsedAt ?? '')).toBeGreaterThan(Date.parse(passkey?.createdAt ?? ''));
    }));

  it('asks the authenticator for a passkey that is two factors, and tells it nothing of the person but their name', () =>
    onDevice(async (browser) => {
      const page = await newcomer(browser, 'bea');
      const { body } = await page.ask('POST', '/me/passkeys/options');
      expect(body).toMatchObject({
        rp: { id: 'localhost', name: 'Lotward' },
        user: { name: 'bea' },
        attestation: 'none',
        authenticatorSelection: { residentKey: 'required', userVerification: 'required' },
      });
      expect(Buffer.from(String(body.challenge), 'base64url')).toHaveLength(32);
      expect(body.excludeCredentials).toHaveLength(1);
      const [held] = await page.held();
      const { accountId } = await who(page);
      const handle = Buffer.from(held?.userHandle ?? '', 'base64').toString('hex');
      expect(handle).toBe(accountId?.replaceAll('-', ''));
      // The browser itself keeps from making a second one on the same authenticator.
      expect(await page.create(body)).toBe('InvalidStateError');
      const asked = await page.ask('POST', '/sign-in/passkey/options');
      expect(asked.body).not.toHaveProperty('allowCredentials');
      expect(asked.body).toMatchObject({
        rpId: 'localhost',
        userVerification: 'required',
      });
    }));

  it('refuses an answer that is given twice, also to another question', () =>
    onDevice(async (browser) => {
      const page = await newcomer(browser, 'cid');
      const used = await page.use((await page.ask('POST', '/sign-in/passkey/options')).body);
      expect((await page.ask('POST', '/sign-in/passkey', { credential: used })).status).toBe(204);
      expect(refused(await page.ask('POST', '/sign-in/passkey', { credential: used }))).toEqual([
        401,
        'sign-in-failed',
      ]);
      await page.ask('POST', '/sign-in/passkey/options');
      expect(refused(await page.ask('POST', '/sign-in/passkey', { credential: used }))).toEqual([
        401,
        'sign-in-failed',
      ]);
      // The passkey itself is none the worse for it.
      expect((await page.signIn()).status).toBe(204);
    }));

  it('takes one answer to a question, right or wrong', () =>
    onDevice(async (browser) => {
      const page = await newcomer(browser, 'dot');
      const { body } = await page.ask('POST', '/sign-in/passkey/options');
      const used = (await page.use(body)) as { response: object };
      const spoiled = { ...used, response: { ...used.response, signature: 'AAAA' } };
      expect((await page.ask('POST', '/sign-in/passkey', { credential: spoiled })).status).toBe(401);
      expect((await page.ask('POST', '/sign-in/passkey', { credential: used })).status).toBe(401);
    }));

  it('refuses an answer in another browser than the question was asked in', () =>
    onDevice((browser) =>
      onDevice(async (thiefs) => {
        const page = await newcomer(browser, 'eve');
        const used = await page.use((await page.ask('POST', '/sign-in/passkey/options')).body);
        const other = await PasskeyPage.open(thiefs, address);
        await other.ask('POST', '/sign-in/passkey/options');
        expect(refused(await other.ask('POST', '/sign-in/passkey', { credential: used }))).toEqual([
          401,
          'sign-in-failed',
        ]);
        expect((await other.ask('GET', '/me')).status).toBe(401);
      }),
    ));

  it('refuses what was signed on a page of another origin, although the host name is the same', () =>
    onDevice(async (browser) => {
      const { address: otherAddress, server } = await otherOrigin();
      try {
        const page = await newcomer(browser, 'fay');
        const [held] = await page.held();
        const { body } = await page.ask('POST', '/sign-in/passkey/options');
        const other = await PasskeyPage.open(browser, otherAddress);
        if (held) await other.put(held);
        const used = await other.use(body);
        expect(used).toMatchObject({ type: 'public-key' });
        expect(refused(await page.ask('POST', '/sign-in/passkey', { credential: used }))).toEqual([
          401,
          'sign-in-failed',
        ]);
        // Nor is a passkey added that was made there.
        const creation = await page.ask('POST', '/me/passkeys/options');
        const made = await other.create({ ...creation.body, excludeCredentials: [] });
        expect(
          refused(await page.ask('POST', '/me/passkeys', { name: 'of another page', credential: made })),
        ).toEqual([400, 'unusable-passkey']);
      } finally {
        server.close();
      }
    }));

  it('refuses an answer whose holder did not prove who they are, even when the page asked for that', () =>
    onDevice(async (browser) => {
      const page = await newcomer(browser, 'gus');
      await page.setUserVerified(false);
      const { body } = await page.ask('POST', '/sign-in/passkey/options');
      expect(await page.use(body)).toBe('NotAllowedError');
      const used = await page.use({ ...body, userVerification: 'discouraged' });
      expect(used).toMatchObject({ type: 'public-key' });
      expect(refused(await page.ask('POST', '/sign-in/passkey', { credential: used }))).toEqual([
        401,
        'sign-in-failed',
      ]);
      // An authenticator that can verify its holder does so before it makes a passkey; one that lies is needed here.
      await page.setUserVerified(true);
      await page.setBadVerification(true);
      const creation = await page.ask('POST', '/me/passkeys/options');
      const weak = await page.create({
        ...creation.body,
        excludeCredentials: [],
        authenticatorSelection: { residentKey: 'discouraged', userVerification: 'discouraged' },
      });
      expect(weak).toMatchObject({ type: 'public-key' });
      expect(refused(await page.ask('POST', '/me/passkeys', { name: 'weak', credential: weak }))).toEqual([
        400,
        'unusable-passkey',
      ]);
    }));

  it('refuses a wrong signature', () =>
    onDevice(async (browser) => {
      const page = await newcomer(browser, 'hal');
      await page.setBogusSignature(true);
      expect(refused(await page.signIn())).toEqual([401, 'sign-in-failed']);
      await page.setBogusSignature(false);
      expect((await page.signIn()).status).toBe(204);
    }));

  it('refuses a copy whose counter fell behind, marks the passkey and ends what was signed in with it', () =>
    onDevice((browser) =>
      onDevice(async (thiefs) => {
        const page = await newcomer(browser, 'ivy');
        const [copied] = await page.held();
        if (!copied) throw new Error('The authenticator holds nothing.');
        expect((await page.signIn()).status).toBe(204);
        expect((await page.signIn()).status).toBe(204);

        const thief = await PasskeyPage.open(thiefs, address);
        await thief.put(copied);
        expect(refused(await thief.signIn())).toEqual([401, 'sign-in-failed']);
        // Which of the two is the owner nobody can tell: both are out.
        expect((await page.ask('GET', '/me')).status).toBe(401);
        expect(refused(await page.signIn())).toEqual([401, 'sign-in-failed']);
        const password = { signInName: 'ivy', password: testPassword };
        expect((await page.ask('POST', '/sign-in', password)).status).toBe(204);
        const [marked] = (await page.ask('GET', '/me/passkeys')).body as unknown as PasskeyView[];
        expect(marked?.suspectedAt).toMatch(/^20/);
        expect((await page.ask('POST', `/me/passkeys/${marked?.id}/removal`)).status).toBe(204);
        expect((await page.ask('GET', '/me/passkeys')).body).toEqual([]);
      }),
    ));

  it('lets a passkey whose authenticator does not count be used again and again', () =>
    onDevice(async (browser) => {
      const page = await newcomer(browser, 'jan');
      // As synced passkeys do, it tells 0 each time, from the first on; Chromium's own does count.
      const [passkey] = (await page.ask('GET', '/me/passkeys')).body as unknown as PasskeyView[];
      const sql = await PlainSql.connect(service, 'write');
      await sql.rows('UPDATE credential_use SET counter = 0 WHERE id = $1', [passkey?.id ?? '']);
      await sql.close();
      for (let times = 0; times < 3; times += 1) {
        await page.setCounter(2 ** 32 - 1);
        expect((await page.signIn()).status).toBe(204);
        expect((await page.held()).map(({ signCount }) => signCount)).toEqual([0]);
      }
    }));

  it('follows a counter to the end of its 32 bits', () =>
    onDevice(async (browser) => {
      const page = await newcomer(browser, 'jil');
      await page.setCounter(2 ** 32 - 3);
      expect((await page.signIn()).status).toBe(204);
      expect((await page.signIn()).status).toBe(204);
      expect((await page.held()).map(({ signCount }) => signCount)).toEqual([-1]);
    }));

  it('refuses the certificate of an authenticator, which it did not ask for', () =>
    onDevice(async (device) => {
      const page = await PasskeyPage.open(device, address);
      await accept(page, 'jon');
      const creation = await page.ask('POST', '/me/passkeys/options');
      const made = await page.create({ ...creation.body, attestation: 'direct' });
      const { response } = made as { response: { attestationObject: string } };
      // So that it is this what is refused: the text of the CBOR map's key.
      expect(Buffer.from(response.attestationObject, 'base64url').toString('latin1')).toContain('x5c');
      const added = await page.ask('POST', '/me/passkeys', { name: 'certified', credential: made });
      expect(refused(added)).toEqual([400, 'unusable-passkey']);
    }));

  it('needs no wait for what a stranger tries with the password', () =>
    onDevice(async (device) => {
      const page = await newcomer(device, 'joy');
      await page.ask('POST', '/sign-out');
      const guess = () =>
        service.send('POST', `${service.url}/api/v1/sign-in`, { signInName: 'joy', password: 'guessed' });
      let status = 401;
      // How many it takes depends on how long each takes, since waits grow from a second.
      for (let turn = 0; turn < 20 && status === 401; turn += 1) ({ status } = await guess());
      expect(status).toBe(429);
      expect((await page.signIn()).status).toBe(204);
    }));

  it('adds none by another sign-in than the one that asked for it', () =>
    onDevice(async (browser) => {
      const page = await PasskeyPage.open(browser, address);
      await accept(page, 'kim');
      const made = await page.create((await page.ask('POST', '/me/passkeys/options')).body);
      const account = { signInName: 'kim', password: testPassword };
      expect((await page.ask('POST', '/sign-in', account)).status).toBe(204);
      const added = await page.ask('POST', '/me/passkeys', { name: 'of before', credential: made });
      expect(refused(added)).toEqual([400, 'unusable-passkey']);
      expect((await page.ask('GET', '/me/passkeys')).body).toEqual([]);
    }));

  it('asks whoever has a passkey to use it before they change how they sign in', () =>
    onDevice(async (browser) => {
      const page = await newcomer(browser, 'lou');
      const [passkey] = (await page.ask('GET', '/me/passkeys')).body as unknown as PasskeyView[];
      const password = { signInName: 'lou', password: testPassword };
      expect((await page.ask('POST', '/sign-in', password)).status).toBe(204);
      for (const step of ['passkeys/options', `passkeys/${passkey?.id}/removal`, 'password/removal']) {
        expect(refused(await page.ask('POST', `/me/${step}`))).toEqual([403, 'passkey-needed']);
      }
      expect((await page.signIn()).status).toBe(204);
      expect((await page.ask('POST', '/me/passkeys/options')).status).toBe(200);
    }));

  it('lets somebody do without a password, and refuses to take the last way in', () =>
    onDevice(async (browser) => {
      const page = await newcomer(browser, 'mia');
      const account = { signInName: 'mia', password: testPassword };
      expect((await page.ask('POST', '/me/password/removal')).status).toBe(204);
      expect(await who(page)).toMatchObject({ hasPassword: false, method: 'passkey' });
      expect(refused(await page.ask('POST', '/sign-in', account))).toEqual([401, 'sign-in-failed']);
      const [passkey] = (await page.ask('GET', '/me/passkeys')).body as unknown as PasskeyView[];
      expect(refused(await page.ask('POST', `/me/passkeys/${passkey?.id}/removal`))).toEqual([
        409,
        'wrong-state',
      ]);
      expect(refused(await page.ask('POST', '/me/password/removal'))).toEqual([409, 'wrong-state']);
      // With a password again, the passkey may go.
      const chosen = { newPassword: 'eight loud drums at noon' };
      expect((await page.ask('POST', '/me/password', chosen)).status).toBe(204);
      expect((await page.ask('POST', `/me/passkeys/${passkey?.id}/removal`)).status).toBe(204);
      expect(refused(await page.ask('POST', '/me/password/removal'))).toEqual([409, 'wrong-state']);
      expect(refused(await page.signIn())).toEqual([401, 'sign-in-failed']);
    }));

  it('renames one, and refuses to do so from a stale version or to that of another', () =>
    onDevice((browser) =>
      onDevice(async (others) => {
        const page = await newcomer(browser, 'nan');
        const other = await newcomer(others, 'oda');
        const [passkey] = (await page.ask('GET', '/me/passkeys')).body as unknown as PasskeyView[];
        const path = `/me/passkeys/${passkey?.id}`;
        expect((await page.ask('PATCH', path, { name: 'phone', version: 1 })).status).toBe(204);
        expect(refused(await page.ask('PATCH', path, { name: 'watch', version: 1 }))).toEqual([
          409,
          'stale-version',
        ]);
        expect(refused(await other.ask('PATCH', path, { name: 'mine', version: 2 }))).toEqual([
          404,
          'not-found',
        ]);
        expect(refused(await other.ask('POST', `${path}/removal`))).toEqual([404, 'not-found']);
        const [renamed] = (await page.ask('GET', '/me/passkeys')).body as unknown as PasskeyView[];
        expect(renamed).toMatchObject({ name: 'phone', version: 2 });
      }),
    ));

  it('signs out everywhere else when a passkey is removed', () =>
    onDevice((browser) =>
      onDevice(async (others) => {
        const page = await newcomer(browser, 'pia');
        const elsewhere = await PasskeyPage.open(others, address);
        const account = { signInName: 'pia', password: testPassword };
        expect((await elsewhere.ask('POST', '/sign-in', account)).status).toBe(204);
        const signIns = (await page.ask('GET', '/me/sign-ins')).body as unknown as OwnSignInView[];
        expect(signIns.map(({ method }) => method).sort()).toEqual(['passkey', 'password']);
        const [passkey] = (await page.ask('GET', '/me/passkeys')).body as unknown as PasskeyView[];
        expect((await page.ask('POST', `/me/passkeys/${passkey?.id}/removal`)).status).toBe(204);
        expect((await elsewhere.ask('GET', '/me')).status).toBe(401);
        expect((await page.ask('GET', '/me')).status).toBe(200);
      }),
    ));

  it('says where passkeys work when asked at an address of digits', () =>
    onDevice(async (browser) => {
      const page = await PasskeyPage.open(browser, address.replace('localhost', '127.0.0.1'));
      const answer = await page.ask('POST', '/sign-in/passkey/options');
      expect(refused(answer)).toEqual([409, 'passkeys-unavailable']);
      expect(answer.body.detail).toContain(new URL(address).origin);
    }));

  it('lets an owner ask everybody for a passkey, once they have one themselves', () =>
    onDevice((browser) =>
      onDevice(async (others) => {
        const owner = await signedIn(browser);
        const studio = `/studios/${service.studioId}`;
        const { version } = (await owner.ask('GET', studio)).body;
        const change = { id: crypto.randomUUID(), version, passkeysRequired: true };
        expect(refused(await owner.ask('PATCH', studio, change))).toEqual([409, 'wrong-state']);
        expect((await owner.register('key ring')).status).toBe(201);
        expect((await owner.signIn()).status).toBe(204);
        const artist = await newcomer(others, 'quy');
        const changed = await owner.ask('PATCH', studio, { ...change, id: crypto.randomUUID() });
        expect(changed.body).toMatchObject({ passkeysRequired: true });

        // By password alone nothing is open but the own account, where a passkey can be added.
        const account = { signInName: 'quy', password: testPassword };
        expect((await artist.ask('POST', '/sign-in', account)).status).toBe(204);
        for (const path of ['', '/people', '/alerts', '/clients']) {
          expect(refused(await artist.ask('GET', studio + path))).toEqual([403, 'passkey-needed']);
        }
        expect((await who(artist)).studios).toEqual([
          expect.objectContaining({ passkeyNeeded: true, permissions: [] }),
        ]);
        expect((await artist.signIn()).status).toBe(204);
        expect((await artist.ask('GET', studio)).status).toBe(200);
        // Programs are not asked, and the setting can be taken back.
        const back = { version: Number(changed.body.version), passkeysRequired: false };
        expect((await service.patch('', back)).body).toMatchObject({ passkeysRequired: false });
        expect((await artist.ask('POST', '/sign-in', account)).status).toBe(204);
        expect((await artist.ask('GET', studio)).status).toBe(200);
      }),
    ));
});
