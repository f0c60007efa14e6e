/** One property of a calendar as it stands there: name, parameters, and its value still escaped. */
export interface ContentLine {
  name: string;
  parameters: Record<string, string>;
  value: string;
}

/** RFC 5545, 3.1: so long may a line be, its end not counted. */
export const mostOctets = 75;

/**
 * Takes an iCalendar stream apart by the words of RFC 5545, 3.1 "Content Lines" [S, quoted word by word at icalendar.org]:
 * lines end with CR LF, those that begin with a space or tab belong to the one before. What does not keep to it throws.
 */
export function contentLines(octets: Buffer): ContentLine[] {
  const text = octets.toString('latin1');
  if (!text.endsWith('\r\n')) throw new Error('The last line does not end.');
  const lines = text.slice(0, -2).split('\r\n');
  for (const line of lines) {
    if (/[\r\n]/.test(line)) throw new Error(`A line ends with half an end: ${line}`);
    if (line.length > mostOctets) throw new Error(`A line has ${line.length} octets: ${line}`);
    // A character is never cut in two, so each line alone is UTF-8.
    new TextDecoder('utf-8', { fatal: true }).decode(Buffer.from(line, 'latin1'));
  }
  const unfolded = Buffer.from(text.replace(/\r\n[ \t]/g, ''), 'latin1').toString('utf8');
  return unfolded.slice(0, -2).split('\r\n').map(contentLine);
}

function contentLine(line: string): ContentLine {
  const parts = /^([A-Z0-9-]+)((?:;[A-Z0-9-]+=(?:"[^"]*"|[^";:,]*))*):(.*)$/su.exec(line);
  if (!parts) throw new Error(`This is no content line: ${line}`);
  const [, name = '', parameters = '', value = ''] = parts;
  const named = parameters
    .split(';')
    .filter((each) => each !== '')
    .map((each) => each.split('=') as [string, string]);
  if (new Set(named.map(([each]) => each)).size !== named.length)
    throw new Error(`A parameter twice: ${line}`);
  return { name, parameters: Object.fromEntries(named), value };
}

/** The text that a value means: RFC 5545, 3.3.11 "Text" [S]; a comma, semicolon or backslash that is not escaped throws. */
export function plainText(value: string): string {
  if (/(^|[^\\])(\\\\)*[,;]/.test(value) || /\\(?![\\;,nN])/.test(value.replaceAll('\\\\', ''))) {
    throw new Error(`This is not escaped as a text: ${value}`);
  }
  return value.replace(/\\([\\;,nN])/g, (_, escaped: string) => (/n/i.test(escaped) ? '\n' : escaped));
}

/** The events of a calendar, each as its lines; an event that is not whole, or within another, throws. */
export function eventsOf(lines: readonly ContentLine[]): ContentLine[][] {
  const events: ContentLine[][] = [];
  let open: ContentLine[] | undefined;
  for (const line of lines) {
    const isEdge = line.value === 'VEVENT' && (line.name === 'BEGIN' || line.name === 'END');
    if (!isEdge) open?.push(line);
    else if ((line.name === 'BEGIN') === (open !== undefined))
      throw new Error('Events lie within each other.');
    else if (open === undefined) open = [];
    else {
      events.push(open);
      open = undefined;
    }
  }
  if (open !== undefined) throw new Error('An event does not end.');
  return events;
}
