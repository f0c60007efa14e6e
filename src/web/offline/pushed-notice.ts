/** What a device shows of something that was sent to it. */
export interface PushedNotice {
  title: string;
  body: string;
  /** A later one of the same takes its place; undefined: it stands by itself. */
  tag: string | undefined;
  /** Below the app's own address. */
  path: string;
}

const longestTitle = 120;
const longestBody = 400;

/**
 * Reads what was sent. Browsers ask that something is shown for each, so what cannot be read is shown as that; a link to
 * anywhere else leads to the first page.
 *
 * @param sent JSON with `title`, `body`, `link` and `tag`; undefined: nothing was in it
 * @param origin of the app
 */
export function pushedNotice(sent: string | undefined, origin: string): PushedNotice {
  const { title, body, link, tag } = fieldsOf(sent);
  return {
    title: textOf(title, longestTitle) || 'Lotward',
    body: textOf(body, longestBody),
    tag: textOf(tag, longestTitle) || undefined,
    path: pathBelow(origin, link),
  };
}

function fieldsOf(sent: string | undefined): Record<string, unknown> {
  try {
    const read: unknown = JSON.parse(sent ?? '');
    return typeof read === 'object' && read !== null ? (read as Record<string, unknown>) : {};
  } catch {
    return {};
  }
}

function textOf(value: unknown, longest: number): string {
  return typeof value === 'string' ? value.slice(0, longest) : '';
}

function pathBelow(origin: string, link: unknown): string {
  if (typeof link !== 'string') return '/';
  try {
    const { origin: named, pathname, search } = new URL(link, origin);
    // More than one slash in front would make a host of what follows.
    return named === origin ? `${pathname.replace(/^\/+/, '/')}${search}` : '/';
  } catch {
    return '/';
  }
}

/** Where a notice leads when it is pressed: whatever it keeps, never out of the app. */
export function addressOf(path: unknown, origin: string): string {
  return new URL(pathBelow(origin, path), origin).href;
}
