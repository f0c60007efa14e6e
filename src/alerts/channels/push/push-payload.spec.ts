import { describe, expect, it } from 'vitest';
import type { ChannelMessage } from '../channel-message.js';
import { pushPayload } from './push-payload.js';

const message: ChannelMessage = {
  deliveryId: 'd1',
  event: 'opened',
  studio: { id: 's1', name: 'Studio North' },
  occurredAt: '2026-11-26T06:00:00.000Z',
  severity: 'warning',
  title: 'Low stock: Umber',
  parts: [
    { heading: null, lines: ['1 usable, low at 3.', 'To be seen to soon.'] },
    { heading: 'What it is about', lines: ['Product: Umber'] },
    { heading: 'What to do next', lines: ['Order more.'] },
  ],
  link: 'https://lotward.example/studios/s1/stock/levels',
  alert: {
    id: 'a1',
    kind: 'low stock',
    subjectKind: 'product',
    subjectId: 'p1',
    facts: { secret: 'not sent' },
    closedAt: null,
  },
};

describe('what a browser is sent', () => {
  it('is what is wrong and what to do next, where to act on it, and by what it takes the place of an earlier one', () => {
    expect(JSON.parse(pushPayload(message))).toEqual({
      title: 'Low stock: Umber',
      body: 'Studio North: 1 usable, low at 3.\nOrder more.',
      link: 'https://lotward.example/studios/s1/stock/levels',
      tag: 'a1',
    });
  });

  it('of no alert stands by itself', () => {
    const test = { ...message, alert: null, parts: [{ heading: null, lines: ['All is well.'] }] };
    expect(JSON.parse(pushPayload(test))).toMatchObject({ body: 'Studio North: All is well.', tag: 'd1' });
  });

  it('fits into one encrypted record whatever it tells', () => {
    const long = {
      ...message,
      title: '😀'.repeat(900),
      parts: [{ heading: null, lines: ['😀'.repeat(9_000)] }],
    };
    expect(Buffer.byteLength(pushPayload(long))).toBeLessThan(3_993);
  });
});
