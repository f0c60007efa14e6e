import { v7 as uuidv7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { PersonView } from '../../src/identity/people.views.js';
import type { MadeLinkView, RequesterView } from '../../src/identity/sign-in/sign-in.views.js';
import { PlainSql } from '../support/plain-sql.js';
import { type RunningService, startService, testOwner, usualEngine } from '../support/service.js';
import { ServiceClock } from '../support/service-clock.js';
import { type FurtherStudio, studioOfOtherChain, testPassword } from '../support/signing-in.js';
import { TestBrowser } from '../support/test-browser.js';

const otherPassword = 'eight loud drums at noon';

describe.each(usualEngine)('invitations on %s', (engine) => {
  const clock = new ServiceClock();
  let service: RunningService;
  let owner: TestBrowser;
  let other: FurtherStudio;
  beforeAll(async () => {
    service = await startService(engine, { environment: clock.environment });
    owner = await ownerAt();
    // Before the clock is put forward, which commands know nothing of.
    other = await studioOfOtherChain(service);
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

  const addPerson = (fields: object = {}) =>
    service.made<PersonView>('/people', { name: 'Some artist', role: 'artist', ...fields });
  async function invite({ id }: { id: string }): Promise<string> {
    const { link } = await service.made<MadeLinkView>(`/people/${id}/invitation`);
    expect(link.startsWith(`${service.url}/invitation#`)).toBe(true);
    return link.split('#')[1] ?? '';
  }
  const accept = (secret: string, body: object = {}, browser = new TestBrowser(service.url)) =>
    browser.refusal('POST', '/invitation/accept', { secret, ...body });
  const account = () => ({ signInName: `${uuidv7()}@studio.example`, password: testPassword });
  /** Somebody who came in. */
  async function newcomer(fields: object = {}) {
    const person = await addPerson(fields);
    const known = account();
    const browser = new TestBrowser(service.url);
    expect(await accept(await invite(person), known, browser)).toEqual([204, undefined]);
    return { person, account: known, browser };
  }

  it('let a person come in with a name and password of their choice, once', async () => {
    const person = await addPerson({ name: 'Bea Roth' });
    const secret = await invite(person);
    const look = { secret };
    expect(await new TestBrowser(service.url).done('POST', '/invitation/look', look)).toMatchObject({
      asks: 'new account',
      studioName: 'My studio',
    });
    const chosen = account();
    const browser = new TestBrowser(service.url);
    expect(await accept(secret, chosen, browser)).toEqual([204, undefined]);
    const me = await browser.done<RequesterView>('GET', '/me');
    expect(me).toMatchObject({ signInName: chosen.signInName, method: 'one-time link' });
    expect(me.studios.map(({ personId, role }) => [personId, role])).toEqual([[person.id, 'artist']]);
    for (const used of [accept(secret, account()), accept(secret, { password: otherPassword })]) {
      expect(await used).toEqual([410, 'unusable-link']);
    }
    expect(await new TestBrowser(service.url).refusal('POST', '/invitation/look', look)).toEqual([
      410,
      'unusable-link',
    ]);
    expect((await new TestBrowser(service.url).signIn(chosen)).status).toBe(204);
  });

  it('give one account to one of those who open the link at the same moment', async () => {
    const secret = await invite(await addPerson());
    const answers = await Promise.all(Array.from({ length: 5 }, () => accept(secret, account())));
    expect(answers.filter(([status]) => status === 204)).toHaveLength(1);
    expect(answers.filter(([status]) => status === 410)).toHaveLength(4);
  });

  it('are refused when wrong, cut or changed, and made for something else', async () => {
    const secret = await invite(await addPerson());
    const changed = `${secret.slice(0, 10)}${secret[10] === 'A' ? 'B' : 'A'}${secret.slice(11)}`;
    for (const wrong of ['x', secret.slice(0, -1), `${secret}A`, changed, service.token.slice(8)]) {
      expect(await accept(wrong, account())).toEqual([410, 'unusable-link']);
    }
    const setUp = { ...account(), studioName: 'x', ownerName: 'x', timeZone: 'UTC', secret };
    expect(await new TestBrowser(service.url).refusal('POST', '/set-up', setUp)).toEqual([
      410,
      'unusable-link',
    ]);
    expect(await accept(secret, account())).toEqual([204, undefined]);
  });

  it('stay usable when what was chosen is refused', async () => {
    const taken = await newcomer();
    const secret = await invite(await addPerson());
    expect(await accept(secret, { ...account(), password: 'password1234' })).toEqual([
      400,
      'unusable-password',
    ]);
    expect(await accept(secret, { password: testPassword })).toEqual([400, 'invalid-fields']);
    expect(await accept(secret, { signInName: 'only a name' })).toEqual([400, 'invalid-fields']);
    const theirs = taken.account.signInName.toUpperCase();
    expect(await accept(secret, { ...account(), signInName: theirs })).toEqual([409, 'already-exists']);
    expect(await accept(secret, account())).toEqual([204, undefined]);
  });

  it('expire after three days', async () => {
    const [one, other] = [await invite(await addPerson()), await invite(await addPerson())];
    clock.forward({ hours: 71 });
    expect(await accept(one, account())).toEqual([204, undefined]);
    clock.forward({ hours: 2 });
    expect(await accept(other, account())).toEqual([410, 'unusable-link']);
    await owner.done('POST', '/sign-in', testOwner);
  });

  it('are replaced by a newer one for the same person', async () => {
    const person = await addPerson();
    const [first, second] = [await invite(person), await invite(person)];
    expect(await accept(first, account())).toEqual([410, 'unusable-link']);
    expect(await accept(second, account())).toEqual([204, undefined]);
  });

  it('show the same link to a repeated request', async () => {
    const person = await addPerson();
    const id = uuidv7();
    const path = `/people/${person.id}/invitation`;
    const first = await service.made<MadeLinkView>(path, { id });
    expect(await service.made<MadeLinkView>(path, { id })).toEqual(first);
    expect(await accept(first.link.split('#')[1] ?? '', account())).toEqual([204, undefined]);
  });

  it('let somebody who forgot the password choose another, and end all their sign-ins', async () => {
    const { person, account: known, browser } = await newcomer();
    const secret = await invite(person);
    const look = await new TestBrowser(service.url).done('POST', '/invitation/look', { secret });
    expect(look).toMatchObject({ asks: 'new password' });
    expect(await accept(secret, { password: known.signInName })).toEqual([400, 'unusable-password']);
    const anew = new TestBrowser(service.url);
    expect(await accept(secret, { password: otherPassword }, anew)).toEqual([204, undefined]);
    expect([await browser.isSignedIn(), await anew.isSignedIn()]).toEqual([false, true]);
    expect((await new TestBrowser(service.url).signIn(known)).status).toBe(401);
    expect((await new TestBrowser(service.url).signIn({ ...known, password: otherPassword })).status).toBe(
      204,
    );
  });

  it('let somebody with an account join another studio of the chain with it', async () => {
    const { account: known, browser } = await newcomer();
    await owner.done('POST', '/sign-in', testOwner);
    const { studioId } = await service.made<{ studioId: string }>('/chain/studios', {
      name: 'Harbour Studio',
      timeZone: 'Europe/Vienna',
    });
    const studio = `/studios/${studioId}`;
    const added = { id: uuidv7(), name: 'Some artist', role: 'manager' };
    const person = await owner.done<PersonView>('POST', `${studio}/people`, added);
    const inviteThere = async () => {
      const path = `${studio}/people/${person.id}/invitation`;
      return (await owner.done<MadeLinkView>('POST', path, { id: uuidv7() })).link.split('#')[1] ?? '';
    };
    const secret = await inviteThere();
    // Nobody is signed in there, and nothing is chosen.
    expect(await accept(secret)).toEqual([400, 'invalid-fields']);
    expect(await accept(secret, {}, browser)).toEqual([204, undefined]);
    const me = await browser.done<RequesterView>('GET', '/me');
    expect(me.signInName).toBe(known.signInName);
    expect(me.studios.map(({ studioName, role }) => [studioName, role])).toEqual([
      ['My studio', 'artist'],
      ['Harbour Studio', 'manager'],
    ]);
    expect((await new TestBrowser(service.url).signIn(known)).status).toBe(204);

    // The account is of My studio: the manager of Harbour Studio may not open it by a link of theirs, nor may another
    // person of the studio be made of it.
    const manager = await owner.done<PersonView>('POST', `${studio}/people`, {
      ...added,
      id: uuidv7(),
      role: 'owner',
    });
    const path = `${studio}/people/${manager.id}/invitation`;
    const { link } = await owner.done<MadeLinkView>('POST', path, { id: uuidv7() });
    expect(await accept(link.split('#')[1] ?? '', {}, browser)).toEqual([409, 'already-exists']);
    const head = new TestBrowser(service.url);
    expect(await accept(link.split('#')[1] ?? '', account(), head)).toEqual([204, undefined]);
    const theirs = `${studio}/people/${person.id}/invitation`;
    expect(await head.refusal('POST', theirs, { id: uuidv7() })).toEqual([409, 'wrong-state']);
    expect(await browser.isSignedIn()).toBe(true);
  });

  it('open no account to who leads another studio where its holder works', async () => {
    const { account: known, browser } = await newcomer();
    const studio = `/studios/${other.studioId}`;
    const head = new TestBrowser(service.url, { authorization: `Bearer ${other.token}` });
    const person = await head.done<PersonView>('POST', `${studio}/people`, {
      id: uuidv7(),
      name: 'Guest artist',
      role: 'artist',
    });
    const path = `${studio}/people/${person.id}/invitation`;
    const { link } = await head.done<MadeLinkView>('POST', path, { id: uuidv7() });
    expect(await accept(link.split('#')[1] ?? '', {}, browser)).toEqual([204, undefined]);
    expect(await head.refusal('POST', path, { id: uuidv7() })).toEqual([409, 'wrong-state']);
    expect((await new TestBrowser(service.url).signIn(known)).status).toBe(204);
  });

  it('use no sign-in of a shared tablet to join a studio', async () => {
    const tablet = await ownerAt();
    await tablet.done('POST', `/studios/${service.studioId}/tablets`, { id: uuidv7(), name: 'Room 1' });
    const artist = await newcomer();
    await artist.browser.done('PUT', `/me/studios/${service.studioId}/pin`, { pin: '730586' });
    await tablet.done('POST', '/tablet/switch', { personId: artist.person.id, pin: '730586' });
    const secret = await invite(await addPerson());
    expect(await accept(secret, {}, tablet)).toEqual([400, 'invalid-fields']);
    expect(await accept(secret, account())).toEqual([204, undefined]);
  });

  it('are made by nobody for themselves, which would be a way in for whoever finds a browser open', async () => {
    await owner.done('POST', '/sign-in', testOwner);
    const [me] = (await owner.done<RequesterView>('GET', '/me')).studios;
    const path = `/studios/${service.studioId}/people/${me?.personId}/invitation`;
    for (const asker of [owner, new TestBrowser(service.url, { authorization: `Bearer ${service.token}` })]) {
      expect(await asker.refusal('POST', path, { id: uuidv7() })).toEqual([409, 'wrong-state']);
    }
  });

  it('are made at a browser only soon after signing in, and so are tokens', async () => {
    await owner.done('POST', '/sign-in', testOwner);
    clock.forward({ minutes: 11 });
    const studio = `/studios/${service.studioId}`;
    const asked = [
      [`${studio}/people/${(await addPerson()).id}/invitation`, { id: uuidv7() }],
      [`${studio}/tokens`, { id: uuidv7(), name: 'till', scopes: ['read stock'], days: 1 }],
    ] as const;
    for (const [path, body] of asked) {
      expect(await owner.refusal('POST', path, body)).toEqual([403, 'recent-sign-in-needed']);
    }
    await owner.done('POST', '/sign-in', testOwner);
    for (const [path, body] of asked) await owner.done('POST', path, body);
  });

  it('are shown to nobody but who asked for them, and neither is a token', async () => {
    const manager = await newcomer({ role: 'manager' });
    const head = await newcomer({ role: 'chain manager' });
    const visitor = await addPerson({ role: 'auditor', until: '2099-12-31' });
    const studio = `/studios/${service.studioId}`;
    const link = { id: uuidv7() };
    await service.made(`/people/${visitor.id}/invitation`, link);
    const token = { id: uuidv7(), name: 'till', scopes: ['read stock'], days: 1 };
    await service.made('/tokens', token);
    const reused = [409, 'request-id-reused'];
    const path = `${studio}/people/${visitor.id}/invitation`;
    expect(await head.browser.refusal('POST', path, link)).toEqual(reused);
    expect(await manager.browser.refusal('POST', `${studio}/tokens`, token)).toEqual(reused);
  });

  it('let a chain manager in as nobody who may do more, also when they have not come in yet', async () => {
    const { browser: head } = await newcomer({ role: 'chain manager' });
    for (const role of ['owner', 'manager', 'artist']) {
      const path = `/studios/${service.studioId}/people/${(await addPerson({ role })).id}/invitation`;
      expect(await head.refusal('POST', path, { id: uuidv7() }), role).toEqual([403, 'not-allowed']);
    }
  });

  it('let a chain manager invite the first owner of a studio they added', async () => {
    const { browser: head } = await newcomer({ role: 'chain manager' });
    const { studioId } = await head.done<{ studioId: string }>(
      'POST',
      `/studios/${service.studioId}/chain/studios`,
      { id: uuidv7(), name: 'Hill Studio', timeZone: 'Europe/Vienna', ownerName: 'Runa Holt' },
    );
    const people = await head.done<PersonView[]>('GET', `/studios/${studioId}/people`);
    const path = `/studios/${studioId}/people/${people.find(({ role }) => role === 'owner')?.id}/invitation`;
    const { link } = await head.done<MadeLinkView>('POST', path, { id: uuidv7() });
    const first = new TestBrowser(service.url);
    expect(await accept(link.split('#')[1] ?? '', account(), first)).toEqual([204, undefined]);
    const me = await first.done<RequesterView>('GET', '/me');
    expect(me.studios.map(({ role, studioName }) => [role, studioName])).toEqual([['owner', 'Hill Studio']]);
    expect(await head.refusal('POST', path, { id: uuidv7() })).toEqual([403, 'not-allowed']);
  });

  it('are worth nothing any more when who made them left', async () => {
    const { browser, person } = await newcomer({ role: 'owner' });
    const invited = await addPerson({ role: 'artist' });
    const path = `/studios/${service.studioId}/people/${invited.id}/invitation`;
    const { link } = await browser.done<MadeLinkView>('POST', path, { id: uuidv7() });
    const [known] = (await service.seen<PersonView[]>('/people')).filter(({ id }) => id === person.id);
    const left = await service.patch(`/people/${person.id}`, { version: known?.version, state: 'left' });
    expect(left.status).toBe(200);
    expect(await accept(link.split('#')[1] ?? '', account())).toEqual([403, 'not-allowed']);
  });

  it('end when the password they would replace is changed', async () => {
    const { browser, person, account: known } = await newcomer();
    const secret = await invite(person);
    await browser.done('POST', '/me/password', {
      currentPassword: known.password,
      newPassword: otherPassword,
    });
    expect(await accept(secret, { password: testPassword })).toEqual([410, 'unusable-link']);
    expect((await new TestBrowser(service.url).signIn({ ...known, password: otherPassword })).status).toBe(
      204,
    );
  });

  it('are for people who work here', async () => {
    const person = await addPerson();
    const secret = await invite(person);
    const left = await service.patch(`/people/${person.id}`, { version: person.version, state: 'left' });
    expect(left.status).toBe(200);
    expect(await accept(secret, account())).toEqual([409, 'wrong-state']);
    const again = await service.post<{ code: string }>(`/people/${person.id}/invitation`);
    expect([again.status, again.body.code]).toEqual([409, 'wrong-state']);
    const nobody = await service.post<{ code: string }>(`/people/${uuidv7()}/invitation`);
    expect([nobody.status, nobody.body.code]).toEqual([404, 'not-found']);
  });

  it('leave nothing to somebody who left: no studio, at a browser or with a program', async () => {
    const { account: known, browser, person } = await newcomer({ role: 'manager' });
    const studio = `/studios/${service.studioId}`;
    const { token } = await browser.done<{ token: string }>('POST', `${studio}/tokens`, {
      id: uuidv7(),
      name: 'till',
      scopes: ['see the studio', 'read stock'],
      days: 3,
    });
    const program = new TestBrowser(service.url, { authorization: `Bearer ${token}` });
    expect((await program.ask('GET', studio)).status).toBe(200);
    const [{ version } = { version: 0 }] = (await service.seen<PersonView[]>('/people')).filter(
      ({ id }) => id === person.id,
    );
    await service.patch(`/people/${person.id}`, { version, state: 'left' });
    for (const asker of [browser, program]) {
      for (const path of [studio, `${studio}/people`, `${studio}/lots`]) {
        expect(await asker.refusal('GET', path)).toEqual([404, 'not-found']);
      }
      expect(await asker.done('GET', '/studios')).toEqual([]);
      expect((await asker.done<RequesterView>('GET', '/me')).studios).toEqual([]);
    }
    const back = new TestBrowser(service.url);
    expect((await back.signIn(known)).status).toBe(204);
    expect(await back.refusal('GET', studio)).toEqual([404, 'not-found']);
  });

  it('leave a studio an owner, also when two leave at the same moment', async () => {
    for (let round = 0; round < 3; round += 1) {
      // In a studio of its own, whose only owners these are.
      await owner.done('POST', '/sign-in', testOwner);
      const { studioId } = await service.made<{ studioId: string }>('/chain/studios', {
        name: `Quay Studio ${round}`,
        timeZone: 'Europe/Vienna',
      });
      const people = `/studios/${studioId}/people`;
      await owner.done('POST', people, { id: uuidv7(), name: 'Second owner', role: 'owner' });
      const owners = await owner.done<PersonView[]>('GET', people);
      expect(owners).toHaveLength(2);
      const answers = await Promise.all(
        owners.map(({ id, version }) =>
          owner.copy().ask('PATCH', `${people}/${id}`, { id: uuidv7(), version, role: 'manager' }),
        ),
      );
      expect(answers.map(({ status }) => status).sort()).not.toEqual([200, 200]);
    }
  });

  it('end with the last day of whoever visits, by the day of the studio', async () => {
    const until = clock.now().slice(0, 10);
    const { browser, account: known } = await newcomer({ role: 'auditor', until });
    const studio = `/studios/${service.studioId}`;
    expect((await browser.ask('GET', `${studio}/lots`)).status).toBe(200);
    expect((await browser.done<RequesterView>('GET', '/me')).studios[0]?.until).toBe(until);
    clock.forward({ days: 1 });
    const back = new TestBrowser(service.url);
    expect((await back.signIn(known)).status).toBe(204);
    expect(await back.refusal('GET', `${studio}/lots`)).toEqual([404, 'not-found']);
    expect(await back.done('GET', '/studios')).toEqual([]);
    const endless = await service.post<{ code: string }>('/people', { name: 'x', role: 'auditor' });
    expect([endless.status, endless.body.code]).toEqual([400, 'invalid-fields']);
  });

  it('are kept nowhere with their secrets', async () => {
    const secret = await invite(await addPerson());
    const sql = await PlainSql.connect(service, 'read');
    for (const table of await sql.tables()) {
      expect(JSON.stringify(await sql.rows(`SELECT * FROM ${table}`))).not.toContain(secret);
    }
    await sql.close();
    expect(service.log.join('')).not.toContain(secret);
  });
});
