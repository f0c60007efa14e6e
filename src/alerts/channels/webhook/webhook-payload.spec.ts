import { describe, expect, it } from 'vitest';
import type { ChannelMessage } from '../channel-message.js';
import { webhookPayload, webhookTypes } from './webhook-payload.js';

const message: ChannelMessage = {
  deliveryId: '0197',
  event: 'opened',
  studio: { id: 's1', name: 'Studio North' },
  occurredAt: '2026-11-26T06:00:00.000Z',
  severity: 'urgent',
  title: 'Recall open: Umber recall',
  parts: [
    { heading: null, lines: ['Lots here that are affected: 2.'] },
    { heading: 'What to do next', lines: ['Stop using them.'] },
  ],
  link: 'https://lotward.example/studios/s1/recalls/r1',
  alert: {
    id: 'a1',
    kind: 'recall open',
    subjectKind: 'recall',
    subjectId: 'r1',
    facts: { affectedLots: 2 },
    closedAt: '2026-11-26T06:30:00.000Z',
  },
};

describe('what a webhook is sent', () => {
  it('is type, timestamp and data', () => {
    expect(JSON.parse(webhookPayload(message))).toEqual({
      type: 'alert.opened',
      timestamp: '2026-11-26T06:00:00.000Z',
      data: {
        studio: { id: 's1', name: 'Studio North' },
        severity: 'urgent',
        title: 'Recall open: Umber recall',
        lines: ['Lots here that are affected: 2.', 'Stop using them.'],
        link: 'https://lotward.example/studios/s1/recalls/r1',
        alert: { ...message.alert, factsLeftOut: false },
      },
    });
  });

  it('has a type of the characters receivers may count on', () => {
    for (const type of Object.values(webhookTypes)) expect(type).toMatch(/^[a-zA-Z0-9_]+(\.[a-zA-Z0-9_]+)+$/);
  });

  it('stays below 20 kB: facts that are too much are left out, which it says', () => {
    const facts = { lots: Array.from({ length: 4_000 }, (_, at) => `Größe ${at}`) };
    const body = webhookPayload({ ...message, alert: message.alert && { ...message.alert, facts } });
    expect(Buffer.byteLength(body)).toBeLessThan(20_000);
    expect(JSON.parse(body).data).toMatchObject({
      alert: { id: 'a1', facts: {}, closedAt: '2026-11-26T06:30:00.000Z', factsLeftOut: true },
      link: message.link,
    });
  });

  it('of a test is of no alert', () => {
    const test: ChannelMessage = { ...message, event: 'test', severity: null, alert: null };
    expect(JSON.parse(webhookPayload(test))).toMatchObject({
      type: 'destination.test',
      data: { alert: null },
    });
  });
});
