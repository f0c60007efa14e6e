import { checkLabelCode } from '../../src/catalogue/own-label.js';
import { type ApiDocument, type ApiRoute, addressOf } from './api-document.js';
import { type Answer, isOneJson, type RunningService } from './service.js';
import type { SentRequest } from './whole-life/recording-service.js';

/** An answer to a GET of a studio. */
export interface SeenAnswer {
  route: ApiRoute;
  address: string;
  answer: Answer;
  /** As it came, also when it is no JSON. */
  text: string;
}

/** What reading a whole studio brings. */
export interface WalkedStudio {
  answers: SeenAnswer[];
  /** Values for what stands in braces in addresses, by its name: `lotId`, `code`. */
  ids: Map<string, Set<string>>;
}

export interface WalkOptions {
  /** Of who reads; left out: the owner. */
  headers?: Record<string, string>;
  /** How many ids of each kind are gone into. */
  mostOfKind?: number;
  /** What was written before: lists leave out what has ended, so some ids are seen in the answers to writes only. */
  sent?: readonly SentRequest[];
}

/** Things that stand in addresses under another name than in answers. */
const otherNames: Record<string, string[]> = {
  code: ['labelCode'],
  personId: ['artistId', 'ownerId', 'appliedBy', 'acknowledgedBy', 'declaredBy'],
  lineId: ['trayLineId'],
  sessionId: ['followsSessionId', 'seenAtSessionId'],
};

/** What is counted within something else and has no id of its own: the first is there whenever one is. */
export const countedInAddresses: Readonly<Record<string, string>> = { lineNumber: '1' };

/** More of a kind are not gone into unless asked for. */
const usualMost = 40;
const mostRecipients = 4;
const mostWithOthers = 3;

/**
 * Reads a studio as far as its addresses lead: every GET of the document, with every id that answers name. So a new route
 * or a new kind of id is gone into by itself.
 */
export async function walkStudio(
  service: RunningService,
  document: ApiDocument,
  { headers = {}, mostOfKind = usualMost, sent = [] }: WalkOptions = {},
): Promise<WalkedStudio> {
  const walk = new Walk(service, document, headers, mostOfKind);
  await walk.toTheEnd();
  for (const request of sent) walk.noteMade(request);
  return walk;
}

class Walk implements WalkedStudio {
  readonly answers: SeenAnswer[] = [];
  readonly ids = new Map<string, Set<string>>();
  private readonly asked = new Set<string>();
  private readonly reading: ApiRoute[];

  constructor(
    private readonly service: RunningService,
    private readonly document: ApiDocument,
    private readonly headers: Record<string, string>,
    private readonly mostOfKind: number,
  ) {
    this.reading = document.routes.filter(({ method, isOfStudio }) => method === 'GET' && isOfStudio);
  }

  async toTheEnd(): Promise<void> {
    for (let before = -1; before < this.asked.size; ) {
      before = this.asked.size;
      for (const route of this.reading) {
        for (const values of this.combinations(route)) await this.ask(route, values);
      }
    }
  }

  /** What is posted to a list is answered with the thing that it made, which has an address when it can be read. */
  noteMade({ method, address, answer }: SentRequest): void {
    const list = this.document.routeOf(method, address);
    if (method !== 'POST' || !list?.isOfStudio || answer.status >= 300) return;
    const made = this.reading.find(
      ({ path, pathParameters }) => path === `${list.path}/{${pathParameters.at(-1)}}`,
    );
    if (made) this.noteIds(made.pathParameters.at(-1) ?? '', [answer.body]);
  }

  /** Every way to fill in the address of a route with what is known so far; ids that belong together stood together. */
  private combinations(route: ApiRoute): Record<string, string>[] {
    let filled: Record<string, string>[] = [{ studioId: this.service.studioId }];
    const names = route.pathParameters.filter((parameter) => parameter !== 'studioId');
    const [first] = names;
    for (const name of names) {
      // Of things below things it is enough to go into some.
      const most = name === first && route.pathParameters.length > 2 ? mostWithOthers : this.mostOfKind;
      const counted = countedInAddresses[name];
      const known = counted === undefined ? [...(this.ids.get(name) ?? [])].slice(0, most) : [counted];
      filled = filled.flatMap((values) => known.map((id) => ({ ...values, [name]: id })));
    }
    return filled;
  }

  private async ask(route: ApiRoute, values: Record<string, string>): Promise<void> {
    const names = new Set(route.query.map(({ name }) => name));
    const products =
      names.has('productId') && !names.has('limit') ? [...(this.ids.get('productId') ?? [])] : [];
    const queries =
      products.length > 0
        ? products.map((id) => `?productId=${id}`)
        : route.path.endsWith('/messages')
          ? this.recipients()
          : [names.has('limit') ? '?limit=200' : ''];
    for (const query of queries) {
      const address = addressOf(this.service, route, values) + query;
      if (this.asked.has(address)) continue;
      this.asked.add(address);
      const { status, headers, bytes } = await this.service.exchange(address, { headers: this.headers });
      const text = bytes.toString('utf8');
      const body: unknown = isOneJson(headers) && text !== '' ? JSON.parse(text) : text;
      const answer: Answer = { status, headers, body };
      this.answers.push({ route, address, answer, text });
      if (status < 300) this.learn(route, answer.body);
    }
  }

  /** Some whom a message of a recall may be for. */
  private recipients(): string[] {
    const some = (name: string) => [...(this.ids.get(name) ?? [])].slice(0, mostRecipients);
    return [
      ...some('clientId').map((id) => `?audience=client&clientId=${id}`),
      ...some('artistId').map((id) => `?audience=artist&artistId=${id}&language=de`),
    ];
  }

  /** The ids of an answer, by what they are called in addresses. */
  private learn(route: ApiRoute, body: unknown): void {
    for (const { name, id } of namedIds(body)) this.note(name, id);
    // `GET /people` and `GET /people/{personId}` answer with people.
    const last = route.pathParameters.at(-1);
    if (last?.endsWith('Id') && route.path.endsWith(`{${last}}`)) this.noteIds(last, [body]);
    const listed = this.document.routes.find(
      ({ path, pathParameters }) =>
        path.startsWith(`${route.path}/{`) && pathParameters.length === route.pathParameters.length + 1,
    );
    const items = Array.isArray(body) ? body : (body as { items?: unknown[] } | null)?.items;
    if (listed && Array.isArray(items)) this.noteIds(listed.pathParameters.at(-1) ?? '', items);
  }

  private noteIds(name: string, things: unknown[]): void {
    for (const thing of things) {
      const id = (thing as { id?: unknown } | null)?.id;
      if (typeof id === 'string') this.note(name, id);
    }
  }

  private note(name: string, id: string): void {
    if (name === 'studioId' || !isId(id)) return;
    const known = this.ids.get(name) ?? new Set();
    this.ids.set(name, known.add(id));
  }
}

/** UUIDs, trade numbers and the labels of the studio; what else is called an id is somebody's own word for a thing. */
export function isId(text: string): boolean {
  return /^([0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}|\d{14})$/.test(text) || checkLabelCode(text).ok;
}

/** `lotId: x`, `lotIds: [x]`, `lot: { id: x }` and `lots: [{ id: x }]` are all the id of a lot. */
export function namedIds(value: unknown, name = ''): { name: string; id: string }[] {
  if (Array.isArray(value)) return value.flatMap((item) => namedIds(item, name));
  if (typeof value === 'string') return namesFor(name).map((each) => ({ name: each, id: value }));
  if (value === null || typeof value !== 'object') return [];
  return Object.entries(value).flatMap(([key, part]) =>
    key === 'id' ? namedIds(part, `${name.replace(/s$/, '')}Id`) : namedIds(part, key),
  );
}

function namesFor(property: string): string[] {
  const name = property.replace(/Ids$/, 'Id');
  const inAddresses = Object.entries(otherNames).flatMap(([address, names]) =>
    names.includes(name) ? [address] : [],
  );
  return name.endsWith('Id') || name === 'gtin' ? [name, ...inAddresses] : inAddresses;
}
