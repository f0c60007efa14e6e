import { v7 as uuidv7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { PersonView } from '../../src/identity/people.views.js';
import { permissionsOf } from '../../src/identity/permissions.js';
import type { ApiTokenView, MadeApiTokenView } from '../../src/identity/sign-in/api-tokens.views.js';
import type { RequesterView } from '../../src/identity/sign-in/sign-in.views.js';
import { PlainSql } from '../support/plain-sql.js';
import {
  type ProblemBody,
  type RunningService,
  startService,
  testOwner,
  usualEngine,
} from '../support/service.js';
import { ServiceClock } from '../support/service-clock.js';
import { type FurtherStudio, personOfRole, studioOfOtherChain } from '../support/signing-in.js';
import { TestBrowser } from '../support/test-browser.js';

describe.each(usualEngine)('tokens on %s', (engine) => {
  const clock = new ServiceClock();
  let service: RunningService;
  let studio: string;
  let other: FurtherStudio;
  beforeAll(async () => {
    service = await startService(engine, { environment: clock.environment });
    studio = `/studios/${service.studioId}`;
    other = await studioOfOtherChain(service);
  });
  afterAll(async () => {
    await service.dispose();
    clock.dispose();
  });

  const program = (token: string) => new TestBrowser(service.url, { authorization: `Bearer ${token}` });
  const make = (fields: object = {}) =>
    service.made<MadeApiTokenView>('/tokens', {
      name: 'till',
      scopes: ['see the studio'],
      days: 10,
      ...fields,
    });
  const listed = async (id: string) =>
    (await service.seen<ApiTokenView[]>('/tokens')).find((token) => token.id === id);

  it('let a program act as their maker, within their scopes', async () => {
    const { token } = await make({ scopes: ['see the studio', 'read stock'] });
    const till = program(token);
    expect((await till.ask('GET', studio)).status).toBe(200);
    expect((await till.ask('GET', `${studio}/lots`)).status).toBe(200);
    expect(await till.refusal('GET', `${studio}/clients`)).toEqual([403, 'not-allowed']);
    const person = { id: uuidv7(), name: 'x', role: 'artist' };
    expect(await till.refusal('POST', `${studio}/people`, person)).toEqual([403, 'not-allowed']);
    const me = await till.done<RequesterView>('GET', '/me');
    expect(me).toMatchObject({ accountId: null, signInName: null, hasPassword: null, method: 'token' });
    expect([...(me.studios[0]?.permissions ?? [])].sort()).toEqual(['read stock', 'see the studio']);
  });

  it('show no settings of a studio to a program that may not see it', async () => {
    const { token } = await make({ scopes: ['read stock'] });
    expect(await program(token).done('GET', '/studios')).toEqual([]);
  });

  it('do nothing about anybody’s account, and make no person of a browser', async () => {
    const till = program(service.token);
    for (const path of ['/me/sign-ins', '/me/passkeys', `/me${studio}/pin`]) {
      expect(await till.refusal('GET', path)).toEqual([403, 'not-allowed']);
    }
    for (const path of ['/me/password/removal', '/me/passkeys/options', '/me/sign-ins/end']) {
      expect(await till.refusal('POST', path, {})).toEqual([403, 'not-allowed']);
    }
    expect((await till.ask('POST', '/sign-out')).status).toBe(204);
    expect((await till.ask('GET', '/me')).status).toBe(200);
  });

  it('are shown once, and the same to a repeated request', async () => {
    const id = uuidv7();
    const first = await make({ id });
    expect(first.token).toMatch(/^lotward_[\w-]{43}$/);
    expect(await make({ id })).toEqual(first);
    const changed = await service.post<ProblemBody>('/tokens', {
      id,
      name: 'till',
      scopes: ['see the studio'],
      days: 11,
    });
    expect([changed.status, changed.body.code]).toEqual([409, 'request-id-reused']);
    expect(JSON.stringify(await service.seen('/tokens'))).not.toContain(first.token.slice(8));
    const sql = await PlainSql.connect(service, 'read');
    for (const table of await sql.tables()) {
      expect(JSON.stringify(await sql.rows(`SELECT * FROM ${table}`))).not.toContain(first.token.slice(8));
    }
    await sql.close();
    expect(service.log.join('')).not.toContain(first.token.slice(8));
  });

  it('are refused when cut, changed or written otherwise', async () => {
    const { token } = await make();
    const changed = `${token.slice(0, 20)}${token[20] === 'A' ? 'B' : 'A'}${token.slice(21)}`;
    const wrong = [
      `Bearer ${token.slice(0, -1)}`,
      `Bearer ${token}A`,
      `Bearer ${changed}`,
      `Bearer ${token.slice(8)}`,
      `Bearer ${token.toUpperCase()}`,
      `Bearer  ${token}`,
      `Bearer ${token} ${token}`,
      `Basic ${Buffer.from(`owner:${token}`).toString('base64')}`,
      token,
      'Bearer',
      'Bearer lotward_',
      "Bearer lotward_' OR 1=1",
    ];
    for (const authorization of wrong) {
      const answer = await new TestBrowser(service.url, { authorization }).ask('GET', studio);
      expect([answer.status, answer.body.code], authorization).toEqual([401, 'sign-in-needed']);
    }
    expect((await program(token).ask('GET', studio)).status).toBe(200);
  });

  it('count for more than a cookie that comes along', async () => {
    const browser = new TestBrowser(service.url);
    await browser.done('POST', '/sign-in', testOwner);
    const headers = { cookie: browser.cookieHeader, authorization: 'Bearer lotward_unknown' };
    expect((await service.get(`${service.url}/api/v1/me`, headers)).status).toBe(401);
  });

  it('expire by the day', async () => {
    const { id, token, expiresAt } = await make({ days: 2 });
    expect(Date.parse(expiresAt) - Date.parse(clock.now())).toBeGreaterThan(1.99 * 86_400_000);
    clock.forward({ days: 1, hours: 23 });
    expect((await program(token).ask('GET', studio)).status).toBe(200);
    clock.forward({ hours: 1 });
    expect(await program(token).refusal('GET', studio)).toEqual([401, 'sign-in-needed']);
    expect(await listed(id)).toMatchObject({ expiresAt, revokedAt: null });
  });

  it.each([[0], [367], [-1], [1.5], ['10'], [null]])('live 1 to 366 whole days, so not %j', async (days) => {
    const answer = await service.post<ProblemBody>('/tokens', {
      name: 'x',
      scopes: ['see the studio'],
      days,
    });
    expect([answer.status, answer.body.code]).toEqual([400, 'invalid-fields']);
  });

  it('are revoked at once, and once', async () => {
    const { id, token } = await make();
    expect((await program(token).ask('GET', studio)).status).toBe(200);
    expect(await service.made(`/tokens/${id}/revocation`)).toMatchObject({ id });
    expect(await program(token).refusal('GET', studio)).toEqual([401, 'sign-in-needed']);
    expect((await listed(id))?.revokedAt).toMatch(/^20/);
    const again = await service.post<ProblemBody>(`/tokens/${id}/revocation`);
    expect([again.status, again.body.code]).toEqual([409, 'wrong-state']);
    const unknown = await service.post<ProblemBody>(`/tokens/${uuidv7()}/revocation`);
    expect([unknown.status, unknown.body.code]).toEqual([404, 'not-found']);
  });

  it('tell when they were last used', async () => {
    const { id, token } = await make();
    expect((await listed(id))?.lastUsedAt).toBeNull();
    await program(token).done('GET', studio);
    const first = (await listed(id))?.lastUsedAt ?? '';
    expect(Math.abs(Date.parse(clock.now()) - Date.parse(first))).toBeLessThan(60_000);
    clock.forward({ minutes: 3 });
    await program(token).done('GET', studio);
    const later = (await listed(id))?.lastUsedAt ?? '';
    expect(Date.parse(later) - Date.parse(first)).toBeGreaterThan(120_000);
  });

  it('do nothing in another studio, and are not seen there', async () => {
    const { id, token } = await make({ scopes: permissionsOf('owner') });
    const elsewhere = `/studios/${other.studioId}`;
    for (const path of [elsewhere, `${elsewhere}/people`, `${elsewhere}/tokens`]) {
      expect(await program(token).refusal('GET', path)).toEqual([404, 'not-found']);
    }
    const theirs = program(other.token);
    expect(JSON.stringify(await theirs.done('GET', `${elsewhere}/tokens`))).not.toContain(id);
    const revocation = { id: uuidv7() };
    expect(await theirs.refusal('POST', `${elsewhere}/tokens/${id}/revocation`, revocation)).toEqual([
      404,
      'not-found',
    ]);
    expect((await program(token).ask('GET', studio)).status).toBe(200);
    // One owner in two studios of a chain: a token is of one of them.
    const { studioId } = await service.made<{ studioId: string }>('/chain/studios', {
      name: 'Sister',
      timeZone: 'UTC',
    });
    expect(await program(token).refusal('GET', `/studios/${studioId}`)).toEqual([404, 'not-found']);
  });

  it('are given nothing their maker may not do, nor keep what their maker loses', async () => {
    const manager = await personOfRole(service, 'manager');
    const answer = await service.post<ProblemBody>(
      '/tokens',
      { name: 'x', scopes: ['manage people'], days: 1 },
      { cookie: manager.cookie },
    );
    expect([answer.status, answer.body.code]).toEqual([400, 'invalid-fields']);
    const { token } = await service.made<MadeApiTokenView>(
      '/tokens',
      { name: 'x', scopes: ['change the register', 'read the register'], days: 1 },
      { cookie: manager.cookie },
    );
    const maker = { id: uuidv7(), name: 'Halden Colour Works' };
    expect((await program(token).ask('POST', `${studio}/makers`, maker)).status).toBe(201);
    const [person] = (await service.seen<PersonView[]>('/people')).filter(
      ({ id }) => id === manager.personId,
    );
    await service.patch(`/people/${manager.personId}`, { version: person?.version, role: 'artist' });
    expect(await program(token).refusal('POST', `${studio}/makers`, { ...maker, id: uuidv7() })).toEqual([
      403,
      'not-allowed',
    ]);
    expect((await program(token).ask('GET', `${studio}/makers`)).status).toBe(200);
  });

  it('are refused for scopes that are none', async () => {
    for (const scopes of [[], ['everything'], 'see the studio', [['see the studio']], [null]]) {
      const answer = await service.post<ProblemBody>('/tokens', { name: 'x', scopes, days: 1 });
      expect([answer.status, answer.body.code]).toEqual([400, 'invalid-fields']);
    }
  });
});
