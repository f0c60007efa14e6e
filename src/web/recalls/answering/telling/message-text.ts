import type { PreparedMessageView } from '../../../../recalls/contacts/contacts.views.js';

/** A message as plain text, to be pasted elsewhere. */
export function messageText({ heading, body }: Pick<PreparedMessageView, 'heading' | 'body'>): string {
  return [heading, ...body.map(({ text }) => text)].join('\n\n');
}
