/** An address at which notices are published, and in which form. */
export interface NoticeSource {
  kind: 'csv' | 'enforcement json' | 'safety gate xml';
  /** An http or https address. It may hold a key of whoever asks, so it is shown without its query. */
  url: string;
}

const kinds: Readonly<Record<string, NoticeSource['kind']>> = {
  csv: 'csv',
  'enforcement-json': 'enforcement json',
  'safety-gate-xml': 'safety gate xml',
};

export const maximumNoticeSources = 20;

/**
 * Reads the setting: kinds and addresses in turn, between spaces or ends of lines; a comma may follow an address.
 * @returns the sources, or what is wrong, in words that follow the name of the setting
 */
export function readNoticeSources(text: string): NoticeSource[] | string {
  const words = text
    .split(/\s+/)
    .map((word) => word.replace(/,$/, ''))
    .filter((word) => word !== '');
  const sources: NoticeSource[] = [];
  for (let at = 0; at < words.length; at += 2) {
    const [word = '', url] = words.slice(at, at + 2);
    const kind = Object.hasOwn(kinds, word) ? kinds[word] : undefined;
    if (kind === undefined) {
      return `has "${withoutQuery(word)}" where a kind is expected: ${Object.keys(kinds).join(', ')}`;
    }
    if (url === undefined) return `names the kind ${word} and no address after it`;
    const fault = addressFault(url);
    if (fault !== null) return `has ${fault}`;
    if (sources.some((source) => source.url === url)) return `names ${withoutQuery(url)} twice`;
    sources.push({ kind, url });
  }
  return sources.length > maximumNoticeSources
    ? `names ${sources.length} addresses: at most ${maximumNoticeSources} are asked`
    : sources;
}

function addressFault(url: string): string | null {
  const shown = withoutQuery(url);
  if (!URL.canParse(url))
    return `"${shown}" where an address such as https://notices.example/reports.json is expected`;
  const { protocol, username, password } = new URL(url);
  if (protocol !== 'https:' && protocol !== 'http:')
    return `"${shown}", which is neither an http nor an https address`;
  if (username !== '' || password !== '') {
    return 'an address with a name or password in it: addresses are shown, write a source that needs none';
  }
  return null;
}

/** An address as it may be shown: what follows the question mark may be somebody's key. */
export function withoutQuery(url: string): string {
  return url.replace(/[?#].*$/s, '').replace(/\/\/[^/@]*@/, '//…@');
}
