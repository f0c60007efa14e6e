import type { Config } from '../../platform/config.js';
import { OutgoingRefusal, type OutgoingRequest, sendOutgoing } from '../../platform/outgoing-request.js';
import { retryAfter } from '../../platform/retry-after.js';
import type { ServerAnswer } from './answered.js';
import { SendFailure } from './send-failure.js';

/**
 * Posts what a channel sends.
 * @param now ISO 8601 instant
 * @throws SendFailure when it came to no answer
 */
export async function post(request: OutgoingRequest, config: Config, now: string): Promise<ServerAnswer> {
  try {
    const { status, headers } = await sendOutgoing(request, { allowed: config.outgoingPrivateAddresses });
    return { status, retryAt: retryAfter(headers['retry-after'] ?? null, now) };
  } catch (error) {
    const { message } = error as Error;
    throw new SendFailure(message, error instanceof OutgoingRefusal);
  }
}
