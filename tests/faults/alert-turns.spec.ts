import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { v7 as uuidv7 } from 'uuid';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { AlertAnswers } from '../../src/alerts/alert-answers.service.js';
import { AlertHistory } from '../../src/alerts/alert-history.service.js';
import { AlertSteps } from '../../src/alerts/alert-steps.service.js';
import { Alerts } from '../../src/alerts/alerts.service.js';
import { ConditionEvaluators } from '../../src/alerts/condition-evaluators.service.js';
import { AlertDestination } from '../../src/alerts/destinations/alert-destination.entity.js';
import { DueAgain } from '../../src/alerts/due-again.service.js';
import { HandOn } from '../../src/alerts/handing-on/hand-on.service.js';
import { HandingOnSettings } from '../../src/alerts/handing-on/handing-on.service.js';
import type { AlertSeverity, OpenCondition } from '../../src/alerts/open-condition.js';
import { Promises } from '../../src/alerts/outbox/promises.service.js';
import type { SetAlertPreferenceDto } from '../../src/alerts/preferences/alert-preferences.dto.js';
import { AlertPreferences } from '../../src/alerts/preferences/alert-preferences.service.js';
import { ToldPeople } from '../../src/alerts/preferences/told-people.service.js';
import { InProcessQueue } from '../../src/alerts/queue/in-process-queue.service.js';
import { Schedules } from '../../src/alerts/schedule/schedules.service.js';
import type { StudioActor } from '../../src/identity/actor.guard.js';
import type { Role } from '../../src/identity/permissions.js';
import { StudioActors } from '../../src/identity/studio-actors.service.js';
import type { Actor } from '../../src/platform/actor.js';
import { readConfig } from '../../src/platform/config.js';
import type { Transaction } from '../../src/platform/database/transaction.js';
import { Transactions } from '../../src/platform/database/transactions.js';
import { ProcessRole } from '../../src/platform/process-role.js';
import { inconsistencies } from '../support/consistency.js';
import { MovedClock } from '../support/moved-clock.js';
import { PlainSql } from '../support/plain-sql.js';
import { engines, makePostgresDatabase } from '../support/service.js';
import { Store } from '../support/store.js';

const usual: Omit<SetAlertPreferenceDto, 'id'> = {
  toldFrom: 'urgent',
  urgentTurn: 'in turn',
  summary: 'never',
  summaryAt: null,
  quietFrom: null,
  quietUntil: null,
  kindsLeftOut: [],
};

/** A kind that an evaluator finds, and one that happens once. */
const stands = 'stands';
const happened = 'happened';

describe.each(engines)('who is told of an alert, and when, on %s', (engine) => {
  let folder: string;
  let databaseUrl: string | undefined;
  let store: Store;
  let clock: MovedClock;
  let actor: Actor;
  let evaluators: ConditionEvaluators;
  let answers: AlertAnswers;
  let alerts: Alerts;
  let history: AlertHistory;
  let promises: Promises;
  let transactions: Transactions;
  let preferences: AlertPreferences;
  let settings: HandingOnSettings;

  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), 'lotward-turns-'));
    databaseUrl = engine === 'postgres' ? await makePostgresDatabase() : undefined;
    store = await Store.open(folder, databaseUrl);
  });
  afterAll(async () => {
    const sql = await PlainSql.connect({ dataFolder: folder, databaseUrl }, 'read');
    expect(await inconsistencies(sql)).toEqual([]);
    await sql.close();
    await store.close();
    rmSync(folder, { recursive: true, force: true });
  });

  beforeEach(async () => {
    clock = new MovedClock();
    const { database, studioKeys, dataKeys } = store;
    transactions = new Transactions(database, clock, studioKeys);
    const toldPeople = new ToldPeople();
    evaluators = new ConditionEvaluators();
    evaluators.register({ name: 'test', kinds: [stands], evaluate: async () => [] });
    history = new AlertHistory(database, dataKeys, evaluators);
    promises = new Promises(toldPeople);
    const steps = new AlertSteps(history, promises);
    alerts = new Alerts(evaluators, steps);
    answers = new AlertAnswers(transactions, evaluators, steps, store.people);
    preferences = new AlertPreferences(database, transactions, clock, toldPeople);
    settings = new HandingOnSettings(database, transactions, clock, store.people, toldPeople);
    actor = await store.makeStudio();
  });

  const schedules = () => new Schedules(new InProcessQueue(1), readConfig({}), new ProcessRole(true));
  const stepsAnew = () =>
    new AlertSteps(new AlertHistory(store.database, store.dataKeys, evaluators), promises);
  /** As another process would do it. */
  const handOn = () =>
    new HandOn(
      store.database,
      transactions,
      clock,
      new StudioActors(store.database),
      stepsAnew(),
      promises,
      schedules(),
    ).look();
  const dueAgain = () =>
    new DueAgain(
      store.database,
      transactions,
      clock,
      new StudioActors(store.database),
      stepsAnew(),
      schedules(),
    ).look();

  const write = <Answer>(work: (transaction: Transaction) => Promise<Answer>) =>
    transactions.write(
      actor,
      { id: null, action: 'test.write', subject: { kind: 'studio', id: actor.studioId }, content: null },
      work,
    );
  const destination = (kind: AlertDestination['kind'], personId: string | null, minimum: AlertSeverity) =>
    write(async (transaction) => {
      const sealer = await store.dataKeys.make(transaction);
      const id = uuidv7();
      await transaction.insert(AlertDestination, {
        studioId: actor.studioId,
        id,
        kind,
        personId,
        dataKeyId: sealer.dataKeyId,
        settingsSealed: sealer.seal('{}', `alert_destination.settings:${id}`),
        minimumSeverity: minimum,
        state: 'active',
        stateReason: null,
        version: 1,
        createdAt: transaction.recordedAt,
      });
      return id;
    });
  const person = async (role: Role) => {
    const { id } = await store.people.make(actor, { id: uuidv7(), name: `Some ${role}`, role });
    return { id, mail: await destination('mail', id, 'notice') };
  };
  /** Works in the studio no more. */
  const leave = (personId: string) =>
    store.people.change(actor, personId, { id: uuidv7(), version: 1, state: 'left' });
  const prefer = (personId: string, more: Partial<SetAlertPreferenceDto>) =>
    preferences.set({ ...actor, personId, may: new Set() } as StudioActor, {
      id: uuidv7(),
      ...usual,
      ...more,
    });
  const condition = (severity: AlertSeverity, kind = happened): OpenCondition => ({
    kind,
    subjectKind: 'lot',
    subjectId: 'one',
    severity,
    facts: {},
  });
  const raise = async (severity: AlertSeverity = 'urgent') => {
    await write((transaction) => alerts.raise(transaction, [condition(severity)]));
    return latest();
  };
  const find = (...standing: OpenCondition[]) =>
    write((transaction) => alerts.reconcile(transaction, { kinds: [stands], subjects: 'all' }, standing));
  const latest = async (state = 'TRUE') => {
    const [row] = await store.database.read<{ id: string }>(
      `SELECT id FROM alert WHERE studio_id = $1 AND ${state} ORDER BY opened_at DESC, id DESC LIMIT 1`,
      [actor.studioId],
    );
    return row?.id ?? '';
  };
  /** Where an alert was told, event by event, the log left out. */
  const told = (alertId: string) =>
    store.database.read<{ event: string; to: string; notBefore: string | null }>(
      `SELECT event, destination_id AS "to", not_before AS "notBefore" FROM outbox
       WHERE studio_id = $1 AND alert_id = $2 AND channel <> 'log' ORDER BY created_at, id`,
      [actor.studioId, alertId],
    );
  const events = async (alertId: string) => (await told(alertId)).map(({ event, to }) => [event, to]);
  const seen = async (alertId: string) =>
    (await history.of(actor, alertId)).history.map(({ event, toPersonId }) =>
      toPersonId === null ? event : [event, toPersonId],
    );
  const dto = () => ({ id: uuidv7() });

  it('hands an urgent alert on in order, to everybody at the end, and then no more', async () => {
    const manager = await person('manager');
    const artist = await person('artist');
    const mail = await destination('mail', actor.personId, 'notice');
    await prefer(artist.id, { urgentTurn: 'at once' });
    const alertId = await raise();
    const opened = [
      ['opened', manager.mail],
      ['opened', artist.mail],
    ];
    expect(await events(alertId)).toEqual(opened);
    clock.forward(0.99);
    await handOn();
    expect(await events(alertId)).toEqual(opened);
    clock.forward(0.02);
    await Promise.all([handOn(), handOn()]);
    const second = [...opened, ['handed on', mail]];
    expect(await events(alertId)).toEqual(second);
    clock.forward(1.01);
    await handOn();
    const all = [mail, manager.mail, artist.mail].map((to) => ['handed on', to]);
    expect(await events(alertId)).toEqual([...second, ...all]);
    clock.forward(30);
    await handOn();
    expect(await events(alertId)).toHaveLength(second.length + all.length);
    expect(await seen(alertId)).toEqual(['opened', ['handed on', actor.personId], 'handed on']);
  });

  it('stops handing on when somebody acknowledged it, put it off or closed it, and where a studio wants none', async () => {
    await person('manager');
    const done: [string, (alertId: string) => Promise<unknown>][] = [
      ['acknowledged', (alertId) => answers.acknowledge(actor, alertId, dto())],
      ['put off', (alertId) => answers.putOff(actor, alertId, { ...dto(), until: dayOf(clock, 3) })],
      ['closed', (alertId) => answers.close(actor, alertId, { ...dto(), note: 'seen to' })],
      ['opened', () => settings.set(actor, { ...dto(), afterMinutes: null, personIds: [] })],
    ];
    for (const [index, [event, answer]] of done.entries()) {
      await find({ ...condition('urgent', stands), subjectId: `${index}` });
      const alertId = await latest();
      await answer(alertId);
      clock.forward(2);
      await handOn();
      expect(await seen(alertId)).toEqual(event === 'opened' ? ['opened'] : ['opened', event]);
    }
  });

  it('goes by the order and the minutes of the studio, and passes over only who left', async () => {
    const [first, second, third] = [await person('artist'), await person('artist'), await person('artist')];
    await settings.set(actor, { ...dto(), afterMinutes: 5, personIds: [second.id, first.id, third.id] });
    const alertId = await raise();
    expect(await events(alertId)).toEqual([['opened', second.mail]]);
    await leave(second.id);
    clock.forward(0.1);
    await handOn();
    const two = [
      ['opened', second.mail],
      ['handed on', first.mail],
    ];
    expect(await events(alertId)).toEqual(two);
    expect(await settings.show(actor)).toMatchObject({ order: [first.id, third.id], isDefault: false });
    await leave(third.id);
    clock.forward(0.1);
    await handOn();
    expect(await seen(alertId)).toEqual(['opened', ['handed on', first.id], 'handed on']);
  });

  it('takes those who left out of an order that is saved anew, and says so', async () => {
    const [stays, leaves] = [await person('artist'), await person('artist')];
    const order = { afterMinutes: 5, personIds: [leaves.id, stays.id] };
    expect(await settings.set(actor, { ...dto(), ...order })).toMatchObject({ droppedPersonIds: [] });
    await leave(leaves.id);
    expect(await settings.set(actor, { ...dto(), ...order, afterMinutes: 30, version: 1 })).toMatchObject({
      afterMinutes: 30,
      personIds: [stays.id],
      droppedPersonIds: [leaves.id],
    });
    expect(await settings.show(actor)).toMatchObject({ personIds: [stays.id], droppedPersonIds: [] });
  });

  it('is handed on again when it got worse or came back after somebody had acknowledged it', async () => {
    const manager = await person('manager');
    await find(condition('warning', stands));
    const alertId = await latest();
    const alert = async () => (await history.of(actor, alertId)).alert;
    await answers.acknowledge(actor, alertId, dto());
    await find(condition('urgent', stands));
    expect(await alert()).toMatchObject({ acknowledgedAt: null, acknowledgedBy: null });
    const steps: unknown[] = ['opened', 'acknowledged', 'worse'];
    expect(await seen(alertId)).toEqual(steps);
    clock.forward(1.01);
    await handOn();
    steps.push('handed on');
    expect(await seen(alertId)).toEqual(steps);
    clock.forward(0.01);
    await answers.acknowledge(actor, alertId, dto());
    await answers.acknowledge({ ...actor, personId: manager.id }, alertId, dto());
    await answers.putOff(actor, alertId, { ...dto(), until: dayOf(clock, 2) });
    clock.forward(60);
    await dueAgain();
    expect(await alert()).toMatchObject({ acknowledgedAt: null, putOffUntil: null });
    clock.forward(1.01);
    await handOn();
    steps.push('acknowledged', 'acknowledged', 'put off', 'due again', 'handed on');
    expect(await seen(alertId)).toEqual(steps);
    await answers.acknowledge({ ...actor, personId: manager.id }, alertId, dto());
    await answers.acknowledge(actor, alertId, dto());
    expect((await seen(alertId)).slice(steps.length)).toEqual(['acknowledged', 'acknowledged']);
  });

  it('goes on at once from whom nothing leads to, but not to who gave it', async () => {
    const [giving, other] = [await person('manager'), await person('manager')];
    const { id: artistId } = await store.people.make(actor, { id: uuidv7(), name: 'Mute', role: 'artist' });
    const alertId = await raise();
    await answers.give({ ...actor, personId: giving.id }, alertId, { ...dto(), personId: artistId });
    await handOn();
    expect(await seen(alertId)).toEqual(['opened', ['given', artistId], ['handed on', other.id]]);
    await handOn();
    expect(await seen(alertId)).toHaveLength(3);
  });

  it('begins anew with whoever it is given to', async () => {
    const manager = await person('manager');
    const artist = await person('artist');
    const alertId = await raise();
    await answers.give(actor, alertId, { ...dto(), personId: artist.id });
    expect(await events(alertId)).toEqual([
      ['opened', manager.mail],
      ['given', artist.mail],
    ]);
    clock.forward(1.01);
    await handOn();
    expect((await events(alertId)).at(-1)).toEqual(['handed on', manager.mail]);
    expect(await seen(alertId)).toEqual(['opened', ['given', artist.id], ['handed on', manager.id]]);
  });

  it('hands on what a clock that was put back would keep waiting', async () => {
    await person('manager');
    const alertId = await raise();
    clock.forward(-24);
    await handOn();
    expect(await seen(alertId)).toEqual(['opened', 'handed on']);
  });

  it('waits while nothing leads to anybody, and is told at once when something does', async () => {
    const alertId = await raise();
    clock.forward(48);
    await handOn();
    expect(await seen(alertId)).toEqual(['opened']);
    expect(await events(alertId)).toEqual([]);
    const artist = await person('artist');
    await settings.set(actor, { ...dto(), afterMinutes: null, personIds: [artist.id] });
    await handOn();
    await handOn();
    expect(await events(alertId)).toEqual([['handed on', artist.mail]]);
    expect(await seen(alertId)).toEqual(['opened', ['handed on', artist.id]]);
  });

  it('does not come to its end while all that led to somebody is paused', async () => {
    const manager = await person('manager');
    const alertId = await raise();
    const state = (state: 'active' | 'paused') =>
      write((transaction) =>
        transaction.update(AlertDestination, { studioId: actor.studioId, id: manager.mail }, { state }),
      );
    await state('paused');
    clock.forward(3);
    await handOn();
    expect(await seen(alertId)).toEqual(['opened']);
    await state('active');
    await handOn();
    expect(await seen(alertId)).toEqual(['opened', 'handed on']);
  });

  it('brings back what was put off when its day comes, once, and earlier when it gets worse', async () => {
    const manager = await person('manager');
    await prefer(manager.id, { toldFrom: 'warning' });
    const webhook = await destination('webhook', null, 'notice');
    await find(condition('warning', stands));
    const alertId = await latest();
    await answers.putOff(actor, alertId, { ...dto(), until: dayOf(clock, 2) });
    clock.forward(23);
    await dueAgain();
    expect(await seen(alertId)).toEqual(['opened', 'put off']);
    clock.forward(36);
    await Promise.all([dueAgain(), dueAgain()]);
    expect(await seen(alertId)).toEqual(['opened', 'put off', 'due again']);
    expect(await events(alertId)).toEqual([
      ['opened', webhook],
      ['opened', manager.mail],
      ['due again', webhook],
      ['due again', manager.mail],
    ]);
    await answers.putOff(actor, alertId, { ...dto(), until: dayOf(clock, 2) });
    await find(condition('urgent', stands));
    expect((await history.of(actor, alertId)).alert).toMatchObject({ putOffUntil: null, severity: 'urgent' });
    expect((await seen(alertId)).at(-1)).toBe('worse');
    clock.forward(1.01);
    await handOn();
    expect((await seen(alertId)).at(-1)).toBe('handed on');
  });

  it('lets what is milder wait for the end of quiet hours, and tells what is urgent at once', async () => {
    const manager = await person('manager');
    await prefer(manager.id, { toldFrom: 'notice', quietFrom: '20:00', quietUntil: '07:30' });
    // At 22:30 of a winter's day in Vienna.
    clock.moveTo('2035-01-15T21:30:00.000Z');
    const [warning, urgent] = [await raise('warning'), await raise('urgent')];
    expect(urgent).toBe(warning);
    expect(await told(warning)).toMatchObject([{ event: 'opened', notBefore: '2035-01-16T06:30:00.000Z' }]);
    clock.forward(0.01);
    await find(condition('urgent', stands));
    expect(await told(await latest())).toMatchObject([{ event: 'opened', notBefore: null }]);
  });

  it('keeps closed what somebody closed until it is worse, and opens it again once it was over', async () => {
    const webhook = await destination('webhook', null, 'urgent');
    await find(condition('warning', stands));
    const alertId = await latest();
    await answers.close(actor, alertId, { ...dto(), note: 'ordered already' });
    expect(await find(condition('warning', stands))).toEqual({ opened: 0, refreshed: 0, closed: 0 });
    expect(await find(condition('urgent', stands))).toMatchObject({ opened: 1 });
    const worse = await latest('closed_at IS NULL');
    expect(worse).not.toBe(alertId);
    await find();
    expect(await seen(alertId)).toEqual(['opened', 'closed', 'ended']);
    expect(await seen(worse)).toEqual(['opened', 'closed']);
    // Whoever never heard of one does not hear that it is over.
    expect(await events(alertId)).toEqual([]);
    expect(await events(worse)).toEqual([
      ['opened', webhook],
      ['closed', webhook],
    ]);
    expect(await find(condition('warning', stands))).toMatchObject({ opened: 1 });
  });

  it('is over when what happened once is closed or acknowledged, and opens when it happens again', async () => {
    const first = await raise();
    expect(await raise()).toBe(first);
    expect(await answers.close(actor, first, { ...dto(), note: 'talked about' })).toMatchObject({
      closedBy: actor.personId,
    });
    const second = await raise();
    expect(second).not.toBe(first);
    expect(await answers.acknowledge(actor, second, dto())).toMatchObject({
      closedAt: expect.any(String),
      endsWhenAcknowledged: true,
    });
    expect(await seen(second)).toEqual(['opened', 'acknowledged', 'closed']);
    expect(await raise()).not.toBe(second);
  });

  it('keeps what two people do at once, and lets the first stay', async () => {
    const other = { ...actor, personId: (await person('manager')).id };
    await find(condition('warning', stands));
    const alertId = await latest();
    const both = await Promise.all([
      answers.acknowledge(actor, alertId, dto()),
      answers.acknowledge(other, alertId, dto()),
    ]);
    expect(new Set(both.map(({ acknowledgedBy }) => acknowledgedBy)).size).toBe(1);
    await answers.acknowledge(actor, alertId, dto());
    await answers.acknowledge(other, alertId, dto());
    const closed = await Promise.all([
      answers.close(actor, alertId, { ...dto(), note: 'one' }),
      answers.close(other, alertId, { ...dto(), note: 'other' }),
    ]);
    expect(new Set(closed.map(({ closedBy }) => closedBy)).size).toBe(1);
    const steps = (await history.of(actor, alertId)).history;
    expect(steps.map(({ event }) => event)).toEqual([
      'opened',
      'acknowledged',
      'acknowledged',
      'closed',
      'noted',
    ]);
    expect(new Set(steps.slice(1, 3).map(({ personId }) => personId)).size).toBe(2);
    expect(new Set(steps.slice(3).map(({ note }) => note))).toEqual(new Set(['one', 'other']));
    await expect(answers.putOff(actor, alertId, { ...dto(), until: dayOf(clock, 2) })).rejects.toMatchObject({
      code: 'wrong-state',
    });
  });
});

/** A day so far ahead, by a clock. */
function dayOf(clock: MovedClock, days: number): string {
  return new Date(Date.parse(clock.now()) + days * 86_400_000).toISOString().slice(0, 10);
}
