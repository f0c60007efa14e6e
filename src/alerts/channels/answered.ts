import { SendFailure } from './send-failure.js';

/** What a server answered to a message. */
export interface ServerAnswer {
  status: number;
  /** When it wants to be asked again, ISO 8601; null: it did not say. */
  retryAt: string | null;
}

/** What an answer means. */
export interface AnswerRules {
  /** The destination is no more. */
  gone: readonly number[];
  /** Sending the same again would be answered the same. */
  lasting: readonly number[];
}

/**
 * What a webhook's answers mean (Standard Webhooks 1.0.0, Delivery success and failure [P]): any 2xx is success; a
 * redirection is not followed, the address is to be mended; 410 ends it. All else is a failure that may pass, 404 and 401
 * too: a receiver is moved, restarted or given its new secret, and its messages must not be lost over that.
 */
export const webhookAnswers: AnswerRules = { gone: [410], lasting: [] };

/**
 * What a push service's answers mean (RFC 8030, 5 to 8 [M]): 404 and 410 say that the subscription is over, 413 that the
 * message is too large, 400 that it will not be taken as it is. 401 and 403 are about the signature, which is another one
 * each time: a clock that was wrong is set right.
 */
export const pushAnswers: AnswerRules = { gone: [404, 410], lasting: [400, 413] };

/** The failure that an answer is; null: it was taken. */
export function failureOfAnswer({ status, retryAt }: ServerAnswer, rules: AnswerRules): SendFailure | null {
  if (status >= 200 && status < 300) return null;
  if (rules.gone.includes(status)) {
    return new SendFailure(`It answered ${status}: nothing is wanted there any more.`, true, null, true);
  }
  if (status >= 300 && status < 400) {
    return new SendFailure(
      `It answered ${status} and leads elsewhere, which is not followed. Write the address it moved to.`,
      true,
    );
  }
  return new SendFailure(`It answered ${status}.`, rules.lasting.includes(status), retryAt);
}
