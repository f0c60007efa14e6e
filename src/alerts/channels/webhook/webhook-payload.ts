import type { ChannelMessage } from '../channel-message.js';

/** The types by which receivers choose, of letters, digits and underscores (Standard Webhooks 1.0.0, Event types [P]). */
export const webhookTypes = {
  opened: 'alert.opened',
  worse: 'alert.worse',
  'due again': 'alert.due_again',
  'handed on': 'alert.handed_on',
  given: 'alert.given',
  closed: 'alert.closed',
  summary: 'summary.morning',
  test: 'destination.test',
} as const satisfies Record<ChannelMessage['event'], string>;

/** Receivers are asked to take no more (Standard Webhooks 1.0.0, Payload size [P]: usually smaller than 20 kB). */
const mostBytes = 20_000;

/**
 * What a webhook is sent: JSON with `type`, `timestamp` (when it happened) and `data`. Facts that would make it too large
 * are left out, which it then says: they are read through the link.
 */
export function webhookPayload(message: ChannelMessage): string {
  const { event, occurredAt, studio, severity, title, parts, link, alert } = message;
  const payload = (withFacts: boolean): string =>
    JSON.stringify({
      type: webhookTypes[event],
      timestamp: occurredAt,
      data: {
        studio,
        severity,
        title,
        lines: withFacts ? parts.flatMap(({ lines }) => lines) : [],
        link,
        alert: alert && { ...alert, facts: withFacts ? alert.facts : {}, factsLeftOut: !withFacts },
      },
    });
  const whole = payload(true);
  return new TextEncoder().encode(whole).length < mostBytes ? whole : payload(false);
}
