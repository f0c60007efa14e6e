import { describe, expect, it } from 'vitest';
import { failureOfAnswer, pushAnswers, webhookAnswers } from './answered.js';

const later = '2026-11-26T07:00:00.000Z';

/** Standard Webhooks 1.0.0, Delivery success and failure [P]. */
describe('the answer of a webhook', () => {
  it.each([200, 201, 202, 204, 299])('%i takes the message', (status) => {
    expect(failureOfAnswer({ status, retryAt: null }, webhookAnswers)).toBeNull();
  });

  it.each([301, 302, 303, 304, 307, 308])('%i leads elsewhere, which is not followed and lasts', (status) => {
    const failure = failureOfAnswer({ status, retryAt: null }, webhookAnswers);
    expect(failure).toMatchObject({ isLasting: true, isGone: false });
    expect(failure?.message).toContain('not followed');
  });

  it('410 ends the destination', () => {
    expect(failureOfAnswer({ status: 410, retryAt: null }, webhookAnswers)).toMatchObject({
      isLasting: true,
      isGone: true,
    });
  });

  it.each([400, 401, 403, 404, 408, 409, 413, 425, 429, 500, 502, 503, 504, 199, 600])(
    '%i may pass, and is tried again when it says',
    (status) => {
      const failure = failureOfAnswer({ status, retryAt: later }, webhookAnswers);
      expect(failure).toMatchObject({ isLasting: false, isGone: false, retryAt: later });
      expect(failure?.message).toBe(`It answered ${status}.`);
    },
  );
});

/** RFC 8030, 5 to 8 [M]. */
describe('the answer of a push service', () => {
  it.each([
    [201, null],
    [202, null],
    [404, { isGone: true }],
    [410, { isGone: true }],
    [413, { isLasting: true, isGone: false }],
    [400, { isLasting: true }],
    [401, { isLasting: false, isGone: false }],
    [403, { isLasting: false, isGone: false }],
    [429, { isLasting: false, retryAt: later }],
    [500, { isLasting: false }],
    [503, { isLasting: false, retryAt: later }],
    [307, { isLasting: true }],
  ])('%i means %j', (status, meaning) => {
    const failure = failureOfAnswer({ status, retryAt: later }, pushAnswers);
    if (meaning === null) expect(failure).toBeNull();
    else expect(failure).toMatchObject(meaning);
  });
});
