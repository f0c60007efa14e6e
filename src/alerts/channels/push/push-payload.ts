import type { ChannelMessage } from '../channel-message.js';
import { plainLine } from '../plain-line.js';

const longestTitle = 120;
const longestBody = 400;

/**
 * What a browser is sent: JSON with `title`, `body`, `link` and `tag`, well below the 3,993 bytes that one encrypted record
 * of 4,096 may hold (RFC 8291, 4). `src/web/offline/pushed-notice.ts` reads it.
 */
export function pushPayload({ deliveryId, studio, title, parts, link, alert }: ChannelMessage): string {
  const [first] = parts;
  const next = parts.find(({ heading }) => heading === 'What to do next');
  const body = [first?.lines[0], next?.lines[0]].filter((line) => line !== undefined).join('\n');
  return JSON.stringify({
    title: plainLine(title, longestTitle),
    body: [...`${studio.name}: ${body}`].slice(0, longestBody).join(''),
    link,
    tag: alert?.id ?? deliveryId,
  });
}
