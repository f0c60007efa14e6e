import { describe, expect, it } from 'vitest';
import { mailFailure } from './mail-failure.js';

describe('a mail that was not taken', () => {
  /** RFC 5321, 4.2.1 and 4.5.4.1 [M]; codes of RFC 3463 are told, words of the server are not. */
  it.each([
    [
      {
        code: 'EENVELOPE',
        command: 'RCPT TO',
        responseCode: 550,
        response: '550 5.1.1 <anna@x.example> unknown',
      },
      true,
      'refused the recipient (550 5.1.1)',
    ],
    [
      { code: 'EENVELOPE', command: 'RCPT TO', responseCode: 450, response: '450 4.2.0 greylisted' },
      false,
      'the recipient for now (450 4.2.0)',
    ],
    [{ code: 'EMESSAGE', command: 'DATA', responseCode: 552 }, true, 'refused the mail (552)'],
    [{ code: 'EMESSAGE', command: 'DATA', responseCode: 451 }, false, 'the mail for now (451)'],
    [{ code: 'EENVELOPE', command: 'MAIL FROM', responseCode: 553 }, false, 'refused the sender (MAIL_FROM)'],
    [{ code: 'EPROTOCOL', command: 'CONN', responseCode: 554 }, false, 'refused'],
    [{ code: 'ECONNECTION', responseCode: 421 }, false, '(421)'],
    [
      { code: 'EAUTH', command: 'AUTH PLAIN', responseCode: 535 },
      false,
      'name and password of SMTP_URL (535)',
    ],
    [{ code: 'EAUTH' }, false, 'name and password of SMTP_URL'],
    [{ code: 'ETLS' }, false, 'encryption'],
    [{ code: 'ETLS', command: 'STARTTLS', responseCode: 502 }, false, 'encryption'],
    [{ code: 'ETIMEDOUT' }, false, 'in time'],
    [{ code: 'EABORT' }, false, 'in time'],
    [{ code: 'EDNS' }, false, 'not found by its name'],
    [{ code: 'ESOCKET' }, false, 'could not be reached, or broke off (ESOCKET)'],
    [{}, false, 'could not be reached'],
  ])('%j', (fault, isLasting, words) => {
    const failure = mailFailure(fault);
    expect(failure).toMatchObject({ isLasting, isGone: false, retryAt: null });
    expect(failure.message).toContain(words);
    expect(failure.message).not.toContain('anna');
  });
});
