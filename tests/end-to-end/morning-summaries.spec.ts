import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { AlertPageView } from '../../src/alerts/alerts.views.js';
import type { AlertPreferenceView } from '../../src/alerts/preferences/alert-preferences.views.js';
import type {
  MorningSummaryPageView,
  SummaryNowView,
} from '../../src/alerts/summaries/morning-summaries.views.js';
import { MailReceiver } from '../support/mail-receiver.js';
import { type RunningService, startService, usualEngine } from '../support/service.js';
import { ServiceClock } from '../support/service-clock.js';
import { personOfRole, type SignedInPerson } from '../support/signing-in.js';
import { StockedStudio } from '../support/stocked-studio.js';

const patience = { timeout: 15_000, interval: 100 };
const dayMilliseconds = 86_400_000;

describe.each(usualEngine)('summaries of the morning on %s', (engine) => {
  const clock = new ServiceClock();
  let mails: MailReceiver;
  let service: RunningService;
  let studio: StockedStudio;
  let manager: SignedInPerson;

  /** The clock goes to a time of day, some days ahead. */
  const goTo = (time: string, daysAhead = 0) => {
    const now = Date.parse(clock.now());
    const day = new Date(now + daysAhead * dayMilliseconds).toISOString().slice(0, 10);
    clock.forward({ seconds: (Date.parse(`${day}T${time}:00Z`) - now) / 1000 });
  };
  const today = () => clock.now().slice(0, 10);
  const inDays = (days: number) =>
    new Date(Date.parse(clock.now()) + days * dayMilliseconds).toISOString().slice(0, 10);

  /** What is due is looked for as soon as the service starts. */
  const restart = async () => {
    const { dataFolder, databaseUrl } = service;
    await service.stop();
    service = await startService(engine, {
      dataFolder,
      ...(databaseUrl && { databaseUrl }),
      environment: environment(),
    });
    studio = new StockedStudio(service);
  };
  const environment = () => ({
    ...clock.environment,
    SMTP_URL: mails.url,
    MAIL_FROM: 'alerts@studio.example',
    PUBLIC_URL: 'http://localhost:8080',
  });
  const own = (headers: Record<string, string> = {}) =>
    service.get<MorningSummaryPageView>('/morning-summaries', headers).then(({ body }) => body.items);
  const now = (headers: Record<string, string> = {}) =>
    service.get<SummaryNowView>('/morning-summary', headers).then(({ body }) => body);
  const prefers = async (chosen: object, headers: Record<string, string> = {}) => {
    const { body } = await service.get<AlertPreferenceView>('/alert-preferences/own', headers);
    const { personId: _, isDefault: __, version, ...present } = body;
    const answer = await service.put(
      '/alert-preferences/own',
      { ...present, ...(version && { version }), ...chosen },
      headers,
    );
    expect(answer.status).toBe(200);
  };

  beforeAll(async () => {
    mails = await MailReceiver.start();
    goTo('05:00', 1);
    service = await startService(engine, { environment: environment() });
    studio = new StockedStudio(service);
    manager = await personOfRole(service, 'manager');
    const [owner] = await service.seen<{ id: string }[]>('/people');
    // Of no alert one by one, so that every mail is a summary.
    await prefers({ toldFrom: 'never' });
    await prefers({ toldFrom: 'never' }, { cookie: manager.cookie });
    await service.made('/alert-destinations/mail', { personId: owner?.id, address: 'owner@studio.example' });
    await service.made('/alert-destinations/mail', {
      personId: manager.personId,
      address: 'desk@studio.example',
    });
    const liner = await studio.product({ name: 'Low liner', kind: 'cartridge' });
    await service.put('/stock/levels', { subjectKind: 'product', subjectId: liner, minimumPieces: 3 });
    const brown = await studio.product({ name: 'Near brown' });
    await studio.receive(brown, { code: 'NEAR-2', useBy: inDays(20) });
    await studio.receive(brown, { code: 'NEAR-1', useBy: inDays(10) });
    await studio.receive(brown, { code: 'GONE', useBy: inDays(-3) });
  }, 60_000);
  afterAll(async () => {
    await service.dispose();
    await mails.stop();
    clock.dispose();
  });

  it('would say now what is to be used first, discarded and ordered, and when it is sent', async () => {
    const { parts, ...rest } = await now();
    expect(rest).toEqual({ day: today(), nextAt: `${today()}T07:00:00Z`, whyNone: null });
    // What needs an answer today comes first, such as backups that no clock of a test has waited for.
    expect(parts.filter(({ name }) => name !== 'answer today')).toMatchObject([
      {
        name: 'use first',
        lines: [{ facts: { lotCode: 'NEAR-1' } }, { facts: { lotCode: 'NEAR-2' } }],
        more: 0,
      },
      { name: 'discard', lines: [{ kind: 'expired on the shelf', facts: { lotCode: 'GONE' } }] },
      { name: 'order', lines: [{ kind: 'low stock', facts: { product: 'Low liner', minimumPieces: 3 } }] },
    ]);
    expect(await own()).toEqual([]);
  });

  it('is sent once in the morning, as it was written, and to nobody who has nothing to hear', async () => {
    await prefers({ kindsLeftOut: ['use-by near'], summaryAt: '11:00' }, { cookie: manager.cookie });
    goTo('07:01');
    await restart();
    await mails.came(1);
    const mail = mails.received.find(({ to }) => to.includes('owner@studio.example'))?.mail;
    expect(mail?.subject).toContain('2 to use first, 1 to discard, 1 to order');
    expect(mail?.text).toContain('Near brown by Halden Ink');
    expect(mail?.text).toContain(`http://localhost:8080/studios/${service.studioId}/alerts/morning`);
    const text = mail?.text ?? '';
    expect(text.indexOf('NEAR-1')).toBeLessThan(text.indexOf('NEAR-2'));
    await expect.poll(own, patience).toMatchObject([
      {
        day: today(),

        deliveries: [{ channel: 'mail', state: 'sent' }],
      },
    ]);
    goTo('12:00');
    await restart();
    // The same look that wrote this one would have written the other a second time.
    await mails.came(2);
    const others = mails.received.find(({ to }) => to.includes('desk@studio.example'))?.mail.text ?? '';
    expect(others).toContain('GONE');
    expect(others).not.toContain('NEAR');
    expect(await own()).toHaveLength(1);
    expect(mails.received).toHaveLength(2);
    expect((await now()).nextAt).toBe(`${inDays(1)}T07:00:00Z`);
  });

  it('leaves out what was put off, and tells of it again on its day', async () => {
    const { items } = await service.seen<AlertPageView>('/alerts?limit=200');
    const gone = items.find(({ kind }) => kind === 'expired on the shelf');
    await service.made(`/alerts/${gone?.id}/put-off`, { until: inDays(3) });
    const names = async () => (await now()).parts.map(({ name }) => name);
    expect(await names()).not.toContain('discard');
    goTo('06:59', 3);
    expect(await names()).not.toContain('discard');
    goTo('07:30');
    expect(await names()).toContain('discard');
  });

  it('is made up for on the same day only, at each person’s own time, and kept empty where there is nothing', async () => {
    mails.forget();
    goTo('15:00');
    await restart();
    await mails.came(2);
    const days = (await own()).map(({ day }) => day);
    expect(days[0]).toBe(today());
    expect(days).toHaveLength(2);

    await prefers({ summaryAt: '16:00' });
    const { items } = await service.seen<AlertPageView>('/alerts?limit=200');
    for (const { id } of items) await service.made(`/alerts/${id}/put-off`, { until: inDays(5) });
    mails.forget();
    goTo('15:59', 1);
    expect((await now()).nextAt).toBe(`${today()}T16:00:00Z`);
    goTo('16:05');
    await restart();
    await expect.poll(own, patience).toHaveLength(3);
    expect((await own())[0]).toMatchObject({ day: today(), parts: [], deliveries: [] });
    expect(mails.received.filter(({ to }) => to.includes('owner@studio.example'))).toEqual([]);
  });

  it('says why somebody gets none', async () => {
    const artist = await personOfRole(service, 'artist');
    const headers = { cookie: artist.cookie };
    expect(await now(headers)).toMatchObject({ nextAt: null, whyNone: 'not wanted' });
    await prefers({ summary: 'daily' }, headers);
    expect(await now(headers)).toMatchObject({
      nextAt: null,
      whyNone: 'no mail address and no browser that is told',
    });
    expect(
      (await service.get('/morning-summaries?after=0190a1b2-0000-7000-8000-000000000000', headers)).status,
    ).toBe(400);
  });
});
