import { describe, expect, it } from 'vitest';
import { contactLink } from './contact-link.js';

describe('a contact in somebody’s own words', () => {
  it.each([
    ['ida@example.com', 'mailto:ida@example.com'],
    ['mail: ida.sommer@example.com, or ring', 'mailto:ida.sommer@example.com'],
    ['+43 1 555 01-00', 'tel:+4315550100'],
    ['mobile (0660) 555 0100 after six', 'tel:06605550100'],
    ['+43 (0)660 1234567', 'tel:+436601234567'],
  ])('%s is used as %s', (contact, address) => expect(contactLink(contact)?.address).toBe(address));

  it.each([
    '0660 1234567 / 0676 7654321',
    '0660 1234567, 0676 7654321',
    'born 12.03.1985',
    '1985-03-12',
    'born 12.03.1985, 0660 1234567',
    '12345678901234567890',
  ])('%s is dialled by hand, if at all', (contact) => expect(contactLink(contact)).toBeUndefined());

  it('that names no way is left to the reader', () => {
    expect(contactLink('the neighbour at number 12')).toBeUndefined();
  });

  it('cannot add anything to the address', () => {
    expect(contactLink('ida@example.com?bcc=x@example.com')?.address).not.toMatch(/[?&]/);
  });
});
