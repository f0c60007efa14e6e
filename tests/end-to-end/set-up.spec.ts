import { rmSync } from 'node:fs';
import { v7 as uuidv7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { RequesterView } from '../../src/identity/sign-in/sign-in.views.js';
import { PlainSql } from '../support/plain-sql.js';
import { type StartedProcess, startProcess, strictestEngine, testOwner } from '../support/service.js';
import { ServiceClock } from '../support/service-clock.js';
import { TestBrowser } from '../support/test-browser.js';

/** The secret of the link on the console; undefined when none was printed. */
const secretOn = ({ log }: StartedProcess) => /\/set-up#(\S+)/.exec(log.join(''))?.[1];

const wanted = {
  ...testOwner,
  studioName: 'Lumen Studio',
  timeZone: 'Europe/Vienna',
  ownerName: 'Mira Lind',
};

async function end({ child }: StartedProcess): Promise<void> {
  if (child.exitCode !== null || child.signalCode !== null) return;
  const ended = new Promise((resolve) => child.once('exit', resolve));
  child.kill();
  await ended;
}

describe.each(strictestEngine)('the link on the console, on %s', (engine) => {
  const clock = new ServiceClock();
  let service: StartedProcess;
  let secret: string;
  const folders = new Set<string>();

  async function start(place?: StartedProcess): Promise<StartedProcess> {
    const started = await startProcess(engine, {
      environment: clock.environment,
      ...(place && { dataFolder: place.dataFolder, databaseUrl: place.databaseUrl ?? '' }),
    });
    folders.add(started.dataFolder);
    return started;
  }

  const setUp = (with_: object, browser = new TestBrowser(service.url)) =>
    browser.refusal('POST', '/set-up', { ...wanted, ...with_ });
  const isOpen = async () =>
    (await new TestBrowser(service.url).done<{ isOpen: boolean }>('GET', '/set-up')).isOpen;

  beforeAll(async () => {
    service = await start();
    secret = secretOn(service) ?? '';
  });
  afterAll(async () => {
    await end(service);
    clock.dispose();
    for (const folder of folders) rmSync(folder, { recursive: true, force: true });
  });

  it('is printed while nobody has an account, and says until when it works', async () => {
    expect(secret).toMatch(/^[\w-]{43}$/);
    expect(service.log.join('')).toMatch(/it works once, until 20[\d-]+T[\d:.]+Z:/);
    expect(await isOpen()).toBe(true);
  });

  it('is the only way in: nobody signs up, and nobody signs in with what nobody has', async () => {
    const stranger = new TestBrowser(service.url);
    expect(await stranger.refusal('POST', '/sign-in', testOwner)).toEqual([401, 'sign-in-failed']);
    for (const path of ['/accounts', '/people', '/users', '/sign-up', '/register', '/me']) {
      expect((await stranger.ask('POST', path, testOwner)).status).toBe(404);
    }
    const accepted = { secret, ...testOwner };
    expect(await stranger.refusal('POST', '/invitation/accept', accepted)).toEqual([410, 'unusable-link']);
    expect(await isOpen()).toBe(true);
  });

  it('is refused with a wrong, cut, changed or other secret, all alike', async () => {
    const other = Buffer.from(
      Buffer.from(secret, 'base64url').map((byte, index) => (index === 5 ? byte ^ 1 : byte)),
    );
    const wrong = ['x', secret.slice(0, -1), `${secret}A`, secret.toUpperCase(), other.toString('base64url')];
    for (const each of wrong) expect(await setUp({ secret: each })).toEqual([410, 'unusable-link']);
    const details = await Promise.all(
      wrong.map(async (each) => {
        const answer = await new TestBrowser(service.url).ask('POST', '/set-up', { ...wanted, secret: each });
        return answer.body.detail;
      }),
    );
    expect(new Set(details).size).toBe(1);
  });

  it('stays usable when the password is refused, or a field is missing', async () => {
    expect(await setUp({ secret, password: 'short' })).toEqual([400, 'unusable-password']);
    expect(await setUp({ secret, password: 'password1234' })).toEqual([400, 'unusable-password']);
    expect(await setUp({ secret, password: 'lotwardlotward' })).toEqual([400, 'unusable-password']);
    expect(await setUp({ secret, timeZone: 'Mars/Olympus' })).toEqual([400, 'invalid-fields']);
    expect(await setUp({ secret, ownerName: '' })).toEqual([400, 'invalid-fields']);
  });

  it('expires within an hour', async () => {
    clock.forward({ minutes: 59 });
    expect(await setUp({ secret, password: 'short' })).toEqual([400, 'unusable-password']);
    clock.forward({ minutes: 2 });
    expect(await setUp({ secret })).toEqual([410, 'unusable-link']);
  });

  it('is another after the next start, and that of before works no more', async () => {
    const before = service;
    await end(before);
    service = await start(before);
    const fresh = secretOn(service) ?? '';
    expect(fresh).toMatch(/^[\w-]{43}$/);
    expect(fresh).not.toBe(secret);
    await end(service);
    service = await start(before);
    expect(await setUp({ secret: fresh })).toEqual([410, 'unusable-link']);
    secret = secretOn(service) ?? '';
  });

  it('makes one owner, whoever else opens it at the same moment', async () => {
    const browsers = Array.from({ length: 5 }, () => new TestBrowser(service.url));
    const answers = await Promise.all(
      browsers.map((browser, index) =>
        setUp({ secret, signInName: `owner${index}@studio.example`, studioName: `Studio ${index}` }, browser),
      ),
    );
    expect(answers.filter(([status]) => status === 204)).toHaveLength(1);
    expect(answers.filter(([status]) => status === 410)).toHaveLength(4);
    const index = answers.findIndex(([status]) => status === 204);
    const me = await browsers[index]?.done<RequesterView>('GET', '/me');
    expect(me).toMatchObject({
      signInName: `owner${index}@studio.example`,
      method: 'one-time link',
      studios: [{ studioName: `Studio ${index}`, role: 'owner', until: null }],
    });
    const { studioId } = me?.studios[0] ?? {};
    expect(await browsers[index]?.done('GET', `/studios/${studioId}`)).toMatchObject({
      name: `Studio ${index}`,
      timeZone: 'Europe/Vienna',
    });
    expect(await browsers[index]?.done('GET', `/studios/${studioId}/people`)).toEqual([
      expect.objectContaining({ name: 'Mira Lind', role: 'owner', hasAccount: true }),
    ]);
  });

  it('works once, and no more once there is an account', async () => {
    expect(await isOpen()).toBe(false);
    expect(await setUp({ secret })).toEqual([410, 'unusable-link']);
    const before = service;
    await end(before);
    service = await start(before);
    expect(secretOn(service)).toBeUndefined();
    expect(await isOpen()).toBe(false);
    expect(await setUp({ secret: 'A'.repeat(43) })).toEqual([410, 'unusable-link']);
  });

  it('is kept nowhere: not its secret, nor the name or password of who came in by it', async () => {
    const sql = await PlainSql.connect(service, 'read');
    const everything: string[] = [];
    for (const table of await sql.tables()) {
      everything.push(JSON.stringify(await sql.rows(`SELECT * FROM ${table}`)));
    }
    const [account] = await sql.rows<{ password_hash: string }>('SELECT password_hash FROM account');
    await sql.close();
    expect(account?.password_hash).toMatch(/^\$argon2id\$v=19\$m=19456,p=1,t=2\$/);
    for (const text of [secret, 'owner0@studio.example', 'studio.example', testOwner.password, 'Mira Lind']) {
      expect(everything.join('\n')).not.toContain(text);
    }
    // A request to the studio by an id of nobody's is as unknown as any.
    expect((await new TestBrowser(service.url).ask('GET', `/studios/${uuidv7()}`)).status).toBe(401);
  });
});
