import { SendFailure } from '../send-failure.js';

/** What is known of a mail that was not taken. */
export interface MailFault {
  /** What went wrong, as the sending library calls it, such as `EENVELOPE`. */
  code?: string;
  /** The reply of the server, such as 550; undefined: it gave none. */
  responseCode?: number;
  /** What was being said to the server, such as `RCPT TO`. */
  command?: string;
  /** The reply in words. They may hold the address, so only its codes are told. */
  response?: string;
}

const stages: Readonly<Record<string, string>> = {
  'RCPT TO': 'the recipient',
  DATA: 'the mail',
  'MAIL FROM': 'the sender (MAIL_FROM)',
  EHLO: 'the greeting',
  HELO: 'the greeting',
};

/**
 * What a mail that was not taken means. A reply of 5xx to the recipient or to the mail itself lasts (RFC 5321, 4.2.1 [M]: not
 * to be repeated). One to anything said before, such as a name and password that are no more valid, is mended by whoever
 * runs the service, so the mail waits; and so it does after 4xx and whatever happens to the connection.
 */
export function mailFailure({ code, responseCode, command = '', response = '' }: MailFault): SendFailure {
  if (responseCode === undefined || code === 'ETLS') return new SendFailure(connectionWords(code));
  const enhanced = /\b[245]\.\d{1,3}\.\d{1,3}\b/.exec(response)?.[0];
  const reply = enhanced === undefined ? String(responseCode) : `${responseCode} ${enhanced}`;
  if (code === 'EAUTH') {
    return new SendFailure(`The mail server did not accept the name and password of SMTP_URL (${reply}).`);
  }
  const what = Object.hasOwn(stages, command) ? stages[command] : 'the mail';
  const isOfThisMail = command === 'RCPT TO' || command === 'DATA';
  const isLasting = isOfThisMail && responseCode >= 500;
  return new SendFailure(
    responseCode >= 500
      ? `The mail server refused ${what} (${reply}).`
      : `The mail server did not take ${what} for now (${reply}).`,
    isLasting,
  );
}

function connectionWords(code = 'unknown'): string {
  switch (code) {
    case 'ETLS':
      return 'The mail server does not offer encryption, or its certificate is not trusted; mail is not handed over in the clear.';
    case 'EAUTH':
      return 'The mail server did not accept the name and password of SMTP_URL.';
    case 'ETIMEDOUT':
    case 'ABORT_ERR':
    case 'EABORT':
      return 'The mail server did not answer in time.';
    case 'EDNS':
      return 'The mail server was not found by its name.';
    default:
      return `The mail server could not be reached, or broke off (${code.slice(0, 40)}).`;
  }
}
