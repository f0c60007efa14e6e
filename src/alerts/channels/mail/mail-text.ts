import type { ChannelMessage } from '../channel-message.js';
import { plainLine } from '../plain-line.js';

/** A message as a mail: the same words twice, for programs that show HTML and for those that do not. */
export interface MailText {
  subject: string;
  text: string;
  html: string;
}

const longestSubject = 180;
const why =
  'You get this because somebody wrote this address into Lotward. How you are told is set in your account there.';

/** Writes a message as a mail that needs nothing from elsewhere: no pictures, no styles, and one link, to the app. */
export function mailText(message: ChannelMessage): MailText {
  const { studio, title, parts, link } = message;
  const text = [
    title,
    ...parts.map(({ heading, lines }) => [...(heading === null ? [] : [`${heading}:`]), ...lines].join('\n')),
    `Open it in Lotward:\n${link}`,
    `-- \n${studio.name}\n${why}`,
  ].join('\n\n');
  const html = [
    '<!doctype html>',
    `<html lang="en"><head><meta charset="utf-8"><title>${escaped(title)}</title></head>`,
    '<body style="font-family:sans-serif;line-height:1.5;max-width:40em;margin:1em">',
    `<h1 style="font-size:1.25em">${escaped(title)}</h1>`,
    ...parts.map(({ heading, lines }) => htmlPart(heading, lines)),
    `<p><a href="${escaped(link)}">Open it in Lotward</a></p>`,
    `<hr><p style="font-size:0.875em">${escaped(studio.name)}<br>${escaped(why)}</p>`,
    '</body></html>',
  ].join('\n');
  return { subject: plainLine(`${title} – ${studio.name}`, longestSubject), text, html };
}

function htmlPart(heading: string | null, lines: readonly string[]): string {
  const head = heading === null ? '' : `<h2 style="font-size:1em;margin-bottom:0">${escaped(heading)}</h2>\n`;
  return `${head}<p style="margin-top:0.25em">${lines.map(escaped).join('<br>\n')}</p>`;
}

const entities: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

function escaped(text: string): string {
  return text.replace(/[&<>"']/g, (character) => entities[character] ?? '');
}
