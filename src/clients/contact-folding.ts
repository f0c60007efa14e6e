/**
 * The form of a contact by which it is found again: a telephone number without the spaces, hyphens, dots, slashes and
 * brackets people write in it, with a leading 00 as +; anything else, such as a mail address, as it is.
 */
export function foldContact(contact: string): string {
  const text = contact.trim();
  if (!/^\+?[\d\s().\-/]+$/.test(text) || !/\d/.test(text)) return text;
  return text.replace(/[^\d+]/g, '').replace(/^00/, '+');
}
