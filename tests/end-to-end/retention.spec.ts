import { v7 as uuidv7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { ClientView } from '../../src/clients/clients.views.js';
import type { StudioView } from '../../src/identity/studios.views.js';
import type {
  CarriedOutRetentionView,
  ClientRetentionPageView,
  ClientRetentionView,
} from '../../src/operations/retention/retention.views.js';
import { CommandsInTurn, commandLine, settingsOf } from '../support/commands.js';
import { inconsistencies } from '../support/consistency.js';
import { PlainSql } from '../support/plain-sql.js';
import { makeSampleStudio, type SampleStudio, walkIn } from '../support/sample-studio.js';
import { type ProblemBody, type RunningService, startService, usualEngine } from '../support/service.js';

const yearsAgo = (years: number) => new Date(Date.now() - years * 365.25 * 86_400_000).toISOString();

interface Person {
  clientId: string;
  clientReference: string;
}

describe.each(usualEngine)('what is past retention on %s', (engine) => {
  let service: RunningService;
  let studio: SampleStudio;
  beforeAll(async () => {
    service = await startService(engine);
    studio = await makeSampleStudio(service);
  });
  const inTurn = new CommandsInTurn();
  afterAll(() => {
    inTurn.end();
    return service.dispose();
  });
  const run = (...given: string[]) => inTurn.run(['retention', ...given], settingsOf(service));
  const printed = async (...given: string[]): Promise<string> => {
    const { code, out, err } = await run(...given);
    expect([code, err]).toEqual([0, '']);
    return out;
  };
  const refused = async (...given: string[]): Promise<string> => {
    const { code, err } = await run('--carry-out', ...given);
    expect(code).toBe(1);
    return err;
  };

  const visited = (years: number, name = `Visited ${years}`) =>
    service.made<Person>('/sessions/late', {
      source: 'paper',
      occurredAt: yearsAgo(years),
      client: { name },
      artistId: studio.ownerId,
      procedureId: studio.procedureId,
      visitKind: 'first session',
      uses: [{ productId: studio.umberId, code: uuidv7().slice(-8), knownBy: 'typed', drops: 2 }],
      signedBy: studio.ownerId,
    });
  const list = async (): Promise<Map<string, ClientRetentionView>> => {
    const items: ClientRetentionView[] = [];
    for (let after: string | null = ''; after !== null; ) {
      const page: ClientRetentionPageView = await service.seen(
        `/retention?limit=2${after && `&after=${after}`}`,
      );
      items.push(...page.items);
      after = page.next;
    }
    return new Map(items.map((item) => [item.clientId, item]));
  };
  const nameOf = async (clientId: string) => (await service.seen<ClientView>(`/clients/${clientId}`)).name;

  it('is nobody while the studio has not said how long it keeps records', async () => {
    await visited(9);
    const all = [...(await list()).values()];
    expect(all.length).toBeGreaterThan(1);
    expect(all.filter(({ erasable }) => erasable)).toEqual([]);
    expect(new Set(all.flatMap(({ obstacles }) => obstacles.map(({ kind }) => kind)))).toEqual(
      new Set(['retention not chosen']),
    );
    const { version } = await service.seen<StudioView>('');
    await service.patch('', { version, retentionPreset: 'NEHA model code' });
  });

  it('is whose last visit is longer ago than the floor, with the reason for everyone else', async () => {
    const old = await visited(3.5);
    const young = await visited(2.5);
    const coming = await visited(8);
    await walkIn(service, studio, { clientId: coming.clientId });
    const suing = await visited(7);
    await service.made(`/clients/${suing.clientId}/legal-claims`, { reason: 'sues' });
    const never = await service.made<{ id: string }>('/clients', { name: 'Never Came' });
    const standings = await list();
    expect(standings.get(old.clientId)).toMatchObject({
      clientReference: old.clientReference,
      erasable: true,
      obstacles: [],
      openSessionIds: [],
    });
    expect(standings.get(young.clientId)).toMatchObject({
      erasable: false,
      obstacles: [{ kind: 'legal obligation', article: 'GDPR Art. 17(3)(b)' }],
    });
    expect(standings.get(coming.clientId)).toMatchObject({ erasable: false, obstacles: [] });
    expect(standings.get(coming.clientId)?.openSessionIds.length).toBe(1);
    expect(standings.get(suing.clientId)?.obstacles.map(({ kind }) => kind)).toEqual(['legal claim']);
    expect(standings.get(never.id)).toMatchObject({
      lastRecordOn: null,
      erasable: false,
      obstacles: [{ kind: 'own retention' }],
    });
  });

  it('names nobody and changes nothing by being looked at', async () => {
    const sql = await PlainSql.connect(service, 'read');
    const state = async () => [
      await sql.rows('SELECT * FROM client ORDER BY id'),
      await sql.rows('SELECT count(*) AS entries FROM audit_entry'),
    ];
    const before = await state();
    expect(JSON.stringify([...(await list()).values()])).not.toContain('Visited');
    expect(await state()).toEqual(before);
    await sql.close();
  });

  it('is erased when a person names it, and answered one by one', async () => {
    const old = await visited(5);
    const young = await visited(1);
    const id = uuidv7();
    const body = { id, clientIds: [young.clientId, old.clientId] };
    const done = await service.made<CarriedOutRetentionView>('/retention', body);
    const answers = new Map(done.answers.map((answer) => [answer.clientId, answer]));
    expect(answers.get(old.clientId)).toMatchObject({ ground: 'retention over', answer: 'erased' });
    expect(answers.get(young.clientId)).toMatchObject({
      answer: 'refused',
      obstacles: [{ kind: 'legal obligation' }],
    });
    expect(await nameOf(old.clientId)).toBeNull();
    expect(await nameOf(young.clientId)).toBe('Visited 1');
    expect((await list()).has(old.clientId)).toBe(false);
    expect(await service.made('/retention', body)).toEqual(done);
    const again = await service.post<ProblemBody>('/retention', { clientIds: [old.clientId] });
    expect([again.status, again.body.code]).toEqual([409, 'wrong-state']);
  });

  it('is never erased without a name', async () => {
    for (const body of [
      {},
      { clientIds: [] },
      { clientIds: 'all' },
      { clientIds: Array(101).fill(uuidv7()) },
    ]) {
      expect((await service.post('/retention', body)).status).toBe(400);
    }
    expect((await service.post('/retention', { clientIds: [uuidv7()] })).status).toBe(404);
  });

  it('is listed from the shell, where nothing is erased until it is asked for', async () => {
    const old = await visited(4);
    const young = await visited(2);
    const listed = await commandLine(service, 'retention');
    expect(listed).toContain('Nothing was changed.');
    expect(listed).toContain(`${old.clientReference}  last record on`);
    expect(listed).toMatch(new RegExp(`${young.clientReference}  The record of the last visit`));
    expect(listed).not.toContain('Visited');
    expect(await nameOf(old.clientId)).toBe('Visited 4');
  });

  it('is erased from the shell, also under a running service that knows the key', async () => {
    const [one, other, third] = [await visited(4), await visited(5), await visited(6)];
    const young = await visited(2);
    expect(await nameOf(one.clientId)).toBe('Visited 4');
    await expect(refused('--only', one.clientReference, young.clientReference)).resolves.toContain(
      `${young.clientReference} may not be erased`,
    );
    await expect(refused('--only', '0000-00')).resolves.toContain('No client here has the reference 0000-00');
    expect(await nameOf(one.clientId)).toBe('Visited 4');
    const some = await printed('--carry-out', '--only', one.clientReference.toLowerCase());
    expect(some).toContain('1 of 1 clients were erased.');
    expect(await nameOf(one.clientId)).toBeNull();
    expect(await nameOf(other.clientId)).toBe('Visited 5');
    const rest = await printed('--carry-out');
    expect(rest).toContain(`${third.clientReference}  erased`);
    expect(await nameOf(third.clientId)).toBeNull();
    expect(await nameOf(young.clientId)).toBe('Visited 2');
    expect(await printed()).toContain('0 of ');
    const sql = await PlainSql.connect(service, 'read');
    expect(await inconsistencies(sql)).toEqual([]);
    const vias = await sql.rows('SELECT DISTINCT via, person_id FROM erasure_request WHERE client_id = $1', [
      third.clientId,
    ]);
    expect(vias).toEqual([{ via: 'cli', person_id: null }]);
    await sql.close();
  });
});
