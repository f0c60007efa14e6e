import { describe, expect, it } from 'vitest';
import { contactLink } from './contact-link.js';

describe('a contact in somebody’s own words', () => {
  it.each([
    ['ida@example.com', 'mailto:ida@example.com'],
    ['mail: ida.sommer@example.com, or ring', 'mailto:ida.sommer@example.com'],
    ['+43 1 555 01-00', 'tel:+4315550100'],
    ['mobile (0660) 555 0100 after six', 'tel:06605550100'],
  ])('%s is used as %s', (contact, address) => expect(contactLink(contact)?.address).toBe(address));

  it('that names no way is left to the reader', () => {
    expect(contactLink('the neighbour at number 12')).toBeUndefined();
  });

  it('cannot add anything to the address', () => {
    expect(contactLink('ida@example.com?bcc=x@example.com')?.address).not.toMatch(/[?&]/);
  });
});
