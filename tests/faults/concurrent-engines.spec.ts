import { v7 as uuidv7 } from 'uuid';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { inconsistencies } from '../support/consistency.js';
import { PlainSql } from '../support/plain-sql.js';
import { makeSampleStudio, receive, type SampleStudio } from '../support/sample-studio.js';
import {
  type Answer,
  engines,
  type ProblemBody,
  type RunningService,
  startService,
} from '../support/service.js';

const writes = process.env.SOAK ? 2_000 : 200;
const longestListOfPeople = 500;
const numbers = Array.from({ length: writes }, (_, index) => index);

describe.each(engines)('writes that overlap on %s', { timeout: 300_000 }, (engine) => {
  let service: RunningService;
  let studio: SampleStudio;
  let sql: PlainSql;

  beforeEach(async () => {
    service = await startService(engine);
    studio = await makeSampleStudio(service);
    sql = await PlainSql.connect(service, 'read');
  });

  afterEach(async () => {
    await sql.close();
    await service.dispose();
  });

  const statusesOf = (answers: readonly Answer[]) => {
    const counts: Record<number, number> = {};
    for (const { status } of answers) counts[status] = (counts[status] ?? 0) + 1;
    return counts;
  };

  /** Demoting the only owner is found out after the row was written, so its whole transaction is taken back. */
  const demoteOwner = () =>
    service.patch<ProblemBody>(`/people/${studio.ownerId}`, { version: 1, role: 'artist' });

  it('leave exactly those that were acknowledged, though every other one fails after it wrote', async () => {
    const ids = numbers.map(() => uuidv7());
    const answers = await Promise.all(
      numbers.map((number) =>
        number % 2 === 0
          ? service.post('/people', { id: ids[number], name: `Person ${number}`, role: 'artist' })
          : demoteOwner(),
      ),
    );
    expect(statusesOf(answers)).toEqual({ 201: writes / 2, 409: writes / 2 });

    const names = new Map<string | undefined, string>([[studio.ownerId, 'Owner']]);
    for (const number of numbers) if (number % 2 === 0) names.set(ids[number], `Person ${number}`);
    const stored = await sql.rows<{ id: string; role: string; version: number }>(
      'SELECT id, role, version FROM person',
    );
    expect(stored.map(({ id }) => id).sort()).toEqual([...names.keys()].sort());
    for (const { id, role, version } of stored) {
      // The owner was named and came in at the set-up.
      const expected = id === studio.ownerId ? { role: 'owner', version: 3 } : { role: 'artist', version: 1 };
      expect({ role, version }).toEqual(expected);
    }
    const listed = await service.seen<{ id: string; name: string }[]>('/people');
    expect(listed).toHaveLength(Math.min(names.size, longestListOfPeople));
    for (const { id, name } of listed) expect(name).toBe(names.get(id));
    expect(await sql.rows("SELECT id FROM accepted_request WHERE action = 'identity.change-person'")).toEqual(
      [],
    );
    expect(await inconsistencies(sql)).toEqual([]);
  });

  it('carry each request out once, though each is sent four times at once', async () => {
    const bodies = numbers.slice(0, writes / 4).map((number) => ({
      id: uuidv7(),
      name: `Person ${number}`,
      role: 'artist',
    }));
    const answers = await Promise.all(
      bodies.flatMap((body) => [1, 2, 3, 4].map(() => service.post<{ id: string }>('/people', body))),
    );
    expect(statusesOf(answers)).toEqual({ 201: bodies.length * 4 });
    bodies.forEach(({ id }, index) => {
      for (const answer of answers.slice(index * 4, index * 4 + 4)) expect(answer.body.id).toBe(id);
    });
    const entries = await sql.rows<{ subject_id: string }>(
      "SELECT subject_id FROM audit_entry WHERE action = 'identity.add-person'",
    );
    expect(entries.map((entry) => entry.subject_id).sort()).toEqual(bodies.map(({ id }) => id).sort());
    expect(await inconsistencies(sql)).toEqual([]);
  });

  it('take what a box holds and not a piece more', async () => {
    const pieces = writes / 2;
    const { containers } = await receive(service, studio, {
      productId: studio.linerId,
      code: 'N1',
      quantity: pieces,
    });
    const box = containers[0]?.id;
    const answers = await Promise.all(
      numbers.map(() => service.post(`/containers/${box}/waste`, { pieces: 1, reason: 'fell down' })),
    );
    expect(statusesOf(answers)).toEqual({ 201: pieces, 409: pieces });
    expect(await sql.rows('SELECT pieces FROM balance WHERE container_id = $1', [box ?? ''])).toEqual([
      { pieces: 0 },
    ]);
    const wasted = await sql.rows("SELECT id FROM movement WHERE kind = 'wasted'");
    expect(wasted).toHaveLength(pieces);
    expect(await inconsistencies(sql)).toEqual([]);
  });
});
