import { describe, expect, it } from 'vitest';
import type { ChannelMessage } from '../channel-message.js';
import { mailText } from './mail-text.js';

const message: ChannelMessage = {
  deliveryId: 'd1',
  event: 'opened',
  studio: { id: 's1', name: 'Studio "North" & South' },
  occurredAt: '2026-11-26T06:00:00.000Z',
  severity: 'warning',
  title: 'Low stock: Umber <3>',
  parts: [
    { heading: null, lines: ['1 usable, low at 3.'] },
    { heading: 'What to do next', lines: ['Order more.', 'Or less.'] },
  ],
  link: 'https://lotward.example/studios/s1/stock/levels',
  alert: null,
};

describe('a mail', () => {
  it('says the same in text and in HTML, where nothing that is told becomes markup', () => {
    const { subject, text, html } = mailText(message);
    expect(subject).toBe('Low stock: Umber <3> – Studio "North" & South');
    expect(text).toContain(
      'Low stock: Umber <3>\n\n1 usable, low at 3.\n\nWhat to do next:\nOrder more.\nOr less.\n\nOpen it in Lotward:\nhttps://lotward.example/studios/s1/stock/levels\n\n-- \n',
    );
    expect(html).toContain('<h1 style="font-size:1.25em">Low stock: Umber &lt;3&gt;</h1>');
    expect(html).toContain('Order more.<br>\nOr less.');
    expect(html).toContain('Studio &quot;North&quot; &amp; South');
    expect(html).toContain('<a href="https://lotward.example/studios/s1/stock/levels">');
  });

  it('has a subject of one line and of bounded length', () => {
    const { subject } = mailText({ ...message, title: `a\r\nb${'x'.repeat(500)}` });
    expect(subject).toMatch(/^a b/);
    expect([...subject].length).toBeLessThanOrEqual(180);
  });
});
