import { rmSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import type { PersonView } from '../../src/identity/people.views.js';
import type { RequesterView } from '../../src/identity/sign-in/sign-in.views.js';
import { type CommandResult, CommandsInTurn, runCommand, settingsOf } from '../support/commands.js';
import { PlainSql } from '../support/plain-sql.js';
import {
  type RunningService,
  startProcess,
  startService,
  testOwner,
  usualEngine,
} from '../support/service.js';
import { testPassword } from '../support/signing-in.js';
import { TestBrowser } from '../support/test-browser.js';

// Some commands are processes that start the whole program.
vi.setConfig({ testTimeout: 180_000 });

/** The last line of what was printed. */
const lastLine = ({ out }: CommandResult) => out.trim().split('\n').at(-1) ?? '';
const idForm = '[0-9a-f]{8}(?:-[0-9a-f]{4}){3}-[0-9a-f]{12}';

describe.each(usualEngine)('commands beside a running service on %s', (engine) => {
  let service: RunningService;
  beforeAll(async () => {
    service = await startService(engine);
  });
  afterAll(() => {
    inTurn.end();
    return service.dispose();
  });

  const inTurn = new CommandsInTurn();
  /** In a process of its own, as from the shell. */
  const runAlone = (...given: string[]) => runCommand(given, { environment: settingsOf(service) });
  const run = (...given: string[]) => inTurn.run(given, settingsOf(service));
  const accept = async (link: string, body: object) => {
    const browser = new TestBrowser(service.url);
    await browser.done('POST', '/invitation/accept', { secret: link.split('#')[1], ...body });
    return browser;
  };

  it('people: lists studios and who works there', async () => {
    const { code, out, err } = await runAlone('people');
    expect([code, err]).toEqual([0, '']);
    expect(out).toMatch(
      new RegExp(`^My studio {2}${service.studioId}\n {2}${idForm} {2}owner, active, signs in: Owner\n$`),
    );
  });

  it('add-person: adds one, with a link by which they come in', async () => {
    const added = await runAlone('add-person', '--name', 'Bea Roth', '--role', 'artist');
    expect([added.code, added.err]).toEqual([0, '']);
    expect(added.out).toMatch(
      /^It works once, until 20[\d-]+T[\d:.]+Z\. Open it in the browser of that person:\n/,
    );
    expect(lastLine(added).startsWith(`${service.url}/invitation#`)).toBe(true);
    const account = { signInName: 'bea', password: testPassword };
    const browser = await accept(lastLine(added), account);
    const [standing] = (await browser.done<RequesterView>('GET', '/me')).studios;
    expect(standing).toMatchObject({ role: 'artist', studioId: service.studioId });

    const auditor = await run('add-person', '--name', 'Ines', '--role', 'auditor', '--until', '2099-12-31');
    expect(auditor.code).toBe(0);
    const { out } = await run('people');
    expect(out).toContain('artist, active, signs in: Bea Roth');
    expect(out).toContain('auditor, active, until 2099-12-31, never signed in: Ines');
  });

  it('sign-in-link: lets the owner back in who forgot the password', async () => {
    const made = await run('sign-in-link');
    expect([made.code, made.err]).toEqual([0, '']);
    const newPassword = 'eleven new lamps shine';
    const browser = await accept(lastLine(made), { password: newPassword });
    expect((await browser.done<RequesterView>('GET', '/me')).studios[0]?.role).toBe('owner');
    expect((await new TestBrowser(service.url).signIn(testOwner)).status).toBe(401);
    expect((await new TestBrowser(service.url).signIn({ ...testOwner, password: newPassword })).status).toBe(
      204,
    );
  });

  it('sign-in-link: for a person who works here, and nobody else', async () => {
    const person = await service.made<PersonView>('/people', { name: 'Cid', role: 'manager' });
    const made = await run('sign-in-link', '--person', person.id);
    const browser = await accept(lastLine(made), { signInName: 'cid', password: testPassword });
    expect((await browser.done<RequesterView>('GET', '/me')).studios[0]?.personId).toBe(person.id);
    const [{ version } = { version: 0 }] = (await service.seen<PersonView[]>('/people')).filter(
      ({ id }) => id === person.id,
    );
    await service.patch(`/people/${person.id}`, { version, state: 'left' });
    for (const id of [person.id, '01936f3a-5b7c-7d2e-8f10-2a3b4c5d6e70', 'x']) {
      const { code, out, err } = await run('sign-in-link', '--person', id);
      expect([code, out]).toEqual([1, '']);
      expect(err).toContain('There is no active person');
    }
  });

  it('make-token: as the owner, or as a person within scopes', async () => {
    const made = await runAlone('make-token', '--name', 'till', '--days', '2');
    expect([made.code, made.err]).toEqual([0, '']);
    expect(made.out).toMatch(/^Shown once; it expires 20[\d-]+T[\d:.]+Z:\nlotward_[\w-]{43}\n$/);
    const till = new TestBrowser(service.url, { authorization: `Bearer ${lastLine(made)}` });
    expect((await till.done<RequesterView>('GET', '/me')).studios[0]?.role).toBe('owner');

    const person = await service.made<PersonView>('/people', { name: 'Dot', role: 'artist' });
    const narrow = await run(
      ...['make-token', '--name', 'scale', '--days', '1', '--person', person.id],
      ...['--scope', 'read stock', 'read symbols'],
    );
    const scale = new TestBrowser(service.url, { authorization: `Bearer ${lastLine(narrow)}` });
    const [standing] = (await scale.done<RequesterView>('GET', '/me')).studios;
    expect(standing).toMatchObject({ personId: person.id });
    expect([...(standing?.permissions ?? [])].sort()).toEqual(['read stock', 'read symbols']);
  });

  // Once: what is refused does not depend on the engine.
  describe.runIf(engine === 'sqlite')('that cannot be carried out', () => {
    it('say what is wrong, and add nobody', async () => {
      const before = await service.seen<PersonView[]>('/people');
      const refusals = [
        ['--name', 'x', '--role', 'king'],
        ['--name', '', '--role', 'artist'],
        ['--name', 'x', '--role', 'auditor'],
        ['--name', 'x', '--role', 'auditor', '--until', 'someday'],
        ['--name', 'x', '--role', 'artist', '--studio', 'none'],
        ['--role', 'artist'],
      ];
      const results = await Promise.all(refusals.map((given) => run('add-person', ...given)));
      for (const [index, { code, out, err }] of results.entries()) {
        expect([code, out], refusals[index]?.join(' ')).toEqual([1, '']);
        expect(err.length).toBeGreaterThan(10);
        expect(err).not.toMatch(/\n\s+at /);
      }
      expect(await service.seen('/people')).toEqual(before);
    });

    it('say what is wrong, and make no token', async () => {
      const before = await service.seen<unknown[]>('/tokens');
      const person = await service.made<PersonView>('/people', { name: 'Eve', role: 'artist' });
      const refusals = [
        ['--name', 'x', '--days', '0'],
        ['--name', 'x', '--days', '367'],
        ['--name', 'x', '--days', 'soon'],
        ['--name', 'x', '--days', '1', '--scope', 'everything'],
        ['--name', 'x', '--days', '1', '--person', person.id, '--scope', 'manage people'],
        ['--days', '1'],
      ];
      const results = await Promise.all(refusals.map((given) => run('make-token', ...given)));
      for (const [index, { code, out, err }] of results.entries()) {
        expect([code, out], refusals[index]?.join(' ')).toEqual([1, '']);
        expect(err.length).toBeGreaterThan(10);
        expect(err).not.toMatch(/\n\s+at /);
      }
      expect(await service.seen('/tokens')).toHaveLength(before.length);
    });
  });

  it('ask for the studio when there are several', async () => {
    await service.made('/chain/studios', { name: 'Sister', timeZone: 'UTC' });
    const unclear = await run('add-person', '--name', 'x', '--role', 'artist');
    expect([unclear.code, unclear.out]).toEqual([1, '']);
    expect(unclear.err).toContain('There are several studios: name one with --studio');
    const clear = await run('add-person', '--name', 'x', '--role', 'artist', '--studio', service.studioId);
    expect(clear.code).toBe(0);
  });

  it('tell in the audit log that they were the shell’s', async () => {
    const sql = await PlainSql.connect(service, 'read');
    const entries = await sql.rows<{ action: string; via: string }>(
      `SELECT DISTINCT action, via FROM audit_entry WHERE via = 'cli' ORDER BY action`,
    );
    await sql.close();
    expect(entries.map(({ action }) => action)).toEqual([
      'identity.add-person',
      'identity.make-invitation-link',
      'identity.make-token',
    ]);
  });
});

describe.each(usualEngine)('commands before anybody came in, on %s', (engine) => {
  it('sign-in-link: prints the link of the first owner, and that of the console works no more', async () => {
    const started = await startProcess(engine);
    const environment = settingsOf(started);
    try {
      const made = await runCommand(['sign-in-link'], { environment });
      expect([made.code, made.err]).toEqual([0, '']);
      const link = lastLine(made);
      expect(link.startsWith(`${started.url}/set-up#`)).toBe(true);
      const wanted = { ...testOwner, studioName: 'Lumen', timeZone: 'UTC', ownerName: 'Mira' };
      const browser = new TestBrowser(started.url);
      const ofConsole = /\/set-up#(\S+)/.exec(started.log.join(''))?.[1];
      expect(await browser.refusal('POST', '/set-up', { ...wanted, secret: ofConsole })).toEqual([
        410,
        'unusable-link',
      ]);
      await browser.done('POST', '/set-up', { ...wanted, secret: link.split('#')[1] });
      expect((await browser.done<RequesterView>('GET', '/me')).studios[0]?.studioName).toBe('Lumen');
    } finally {
      const ended = new Promise((resolve) => started.child.once('exit', resolve));
      started.child.kill();
      await ended;
      rmSync(started.dataFolder, { recursive: true, force: true });
    }
  });
});
