import { randomBytes } from 'node:crypto';
import fc from 'fast-check';
import { Webhook, WebhookVerificationError } from 'standardwebhooks';
import { describe, expect, it } from 'vitest';
import { signedHeaders } from './standard-webhooks.js';

const secret = () => `whsec_${randomBytes(32).toString('base64')}`;

describe('the headers of a webhook', () => {
  /** The example in the reference library of the specification (libraries/javascript, "sign function works") [P]. */
  it('are those of the published example', () => {
    const headers = signedHeaders(
      'msg_p5jXN8AQM9LWM0D4loKWxJek',
      '2021-02-25T15:02:10.000Z',
      '{"test": 2432232314}',
      ['whsec_MfKQ9r8GKYqrTwjUPD8ILPZIo2LaLaSw'],
    );
    expect(headers).toEqual({
      'webhook-id': 'msg_p5jXN8AQM9LWM0D4loKWxJek',
      'webhook-timestamp': '1614265330',
      'webhook-signature': 'v1,g0hM9SsE+OTPJTGt/tmIKtSyZlE3uFJELVlNIOLJ1OE=',
    });
  });

  it('are taken by the reference library for any body, by either secret while one takes the place of the other', () => {
    const [newer, older, other] = [secret(), secret(), secret()];
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 200 }), (text) => {
        const body = JSON.stringify({ text });
        const headers = signedHeaders('0197', new Date().toISOString(), body, [newer, older]);
        for (const each of [newer, older]) expect(new Webhook(each).verify(body, headers)).toEqual({ text });
        expect(() => new Webhook(other).verify(body, headers)).toThrow(WebhookVerificationError);
        expect(() => new Webhook(newer).verify(`${body} `, headers)).toThrow(WebhookVerificationError);
        const another = { ...headers, 'webhook-id': '0198' };
        expect(() => new Webhook(newer).verify(body, another)).toThrow(WebhookVerificationError);
      }),
      { numRuns: 50 },
    );
  });
});
