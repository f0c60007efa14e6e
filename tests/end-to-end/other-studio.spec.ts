import { v7 as uuidv7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { ApiDocument, type ApiRoute, addressOf } from '../support/api-document.js';
import { placedValues, placeName, withValue } from '../support/body-places.js';
import { commandLine } from '../support/commands.js';
import { foreignId, foreignIds, kindsOf, told, unknownLike, valuesIn } from '../support/foreign-ids.js';
import { PlainSql } from '../support/plain-sql.js';
import {
  type Answer,
  type ProblemBody,
  type RunningService,
  startService,
  usualEngine,
} from '../support/service.js';
import {
  acceptInvitation,
  cookiesOf,
  type FurtherStudio,
  signInOwner,
  studioOfOtherChain,
  studioOfSameChain,
} from '../support/signing-in.js';
import { differences, settled, type TableContents, tableContents } from '../support/table-contents.js';
import { countedInAddresses, isId, type WalkedStudio, walkStudio } from '../support/walk.js';
import { RecordingService, type SentRequest } from '../support/whole-life/recording-service.js';
import { markedTexts } from '../support/whole-life/texts.js';
import { liveWholeLife } from '../support/whole-life/whole-life.js';

/** What an unknown id is answered where that is not 404: then an id of another studio is answered so too. */
const unknownOtherwise: Record<string, number> = {
  'POST /sessions/{sessionId}/scans symbol': 422,
  // Whoever closes signs.
  'POST /recalls/{recallId}/closing signedBy': 403,
  // Named with the item it stands in.
  'POST /recalls scope.items.*.productIds.*': 400,
  'POST /recalls/matches scope.items.*.productIds.*': 400,
  'POST /recalls/{recallId}/scopes scope.items.*.productIds.*': 400,
  'POST /sessions/{sessionId}/completion lines.*.trayLineId': 409,
};

/** Places that can never hold an id that is accepted. */
const neverTaken = [
  // A session that is recorded late has no mix yet; the field is that of uses that are added later.
  'POST /sessions/late: uses.*.mixId',
];

/**
 * These answer with products of the chain, which my sister adds to as well, and with the names of the chain's studios; the
 * last two to those only who lead every studio of the chain, as her owner does.
 */
const register =
  /^GET \/(makers|suppliers|supplier-terms|products|configurations|stock\/levels|transfers\/receivers|recalls\/\{recallId\}\/studios|chain\/record-quality)/;

interface LivedStudio extends FurtherStudio {
  service: RecordingService;
  sent: SentRequest[];
  walked: WalkedStudio;
}

/** One use of a route: with what address and body. */
interface Sample {
  route: ApiRoute;
  values: Record<string, string>;
  body: unknown;
}

/** What no whole life has: a stream that would go on, a receiver that fails for good, a plan that surely orders. */
const notLived: { name: string; body: (planId: string) => unknown }[] = [
  // Not asked for as a stream it is refused in words.
  { name: 'GET /alerts/live', body: () => undefined },
  { name: 'POST /alerts/deliveries/{deliveryId}/send-again', body: () => ({ id: '' }) },
  { name: 'POST /purchase-orders/from-plan', body: (planId) => ({ id: '', planId, lineNumbers: [1] }) },
];

/** What stands in the address of a route and is an id, without the studio's own. */
function idsIn({ pathParameters }: ApiRoute): string[] {
  return pathParameters.slice(1).filter((name) => countedInAddresses[name] === undefined);
}

describe.each(usualEngine)('another studio, on %s', { timeout: 300_000 }, (engine) => {
  let service: RunningService;
  let document: ApiDocument;
  let sql: PlainSql;
  let mine: LivedStudio;
  /** Of the same chain, and of the same owner; my token is bound to mine. */
  let sister: LivedStudio;
  /** Of other people, in another chain. */
  let stranger: LivedStudio & { cookie: string };
  /** What mine looked like before the other two had a life. */
  let before: WalkedStudio;

  beforeAll(async () => {
    service = await startService(engine);
    sql = await PlainSql.connect(service, 'read');
    document = await ApiDocument.of(service);
    mine = await live({ studioId: service.studioId, token: service.token }, 'Larkmoor');
    before = mine.walked;
    const other = await studioOfOtherChain(service);
    stranger = { ...(await live(other, 'Osterholt')), cookie: other.cookie };
    sister = await live(await studioOfSameChain(service), 'Fennring');
    mine.walked = await walkStudio(mine.service, document, { sent: mine.sent });
    await settled(sql);
  }, 300_000);
  afterAll(async () => {
    await sql.close();
    await service.dispose();
  });

  const live = async (studio: FurtherStudio, mark: string): Promise<LivedStudio> => {
    const asOwner = RecordingService.on(service, studio);
    const sent = await liveWholeLife(asOwner, markedTexts(mark));
    // What is under way is over before it is looked at.
    await settled(sql);
    return { ...studio, service: asOwner, sent, walked: await walkStudio(asOwner, document, { sent }) };
  };
  const others = () => [sister, stranger];
  const routesOfStudios = () => document.routes.filter(({ isOfStudio }) => isOfStudio);

  /** Every kind of request that a studio answered well, once. */
  const samplesOf = (studio: LivedStudio): Sample[] => {
    const samples = new Map<string, Sample>();
    for (const { route, address, answer } of studio.walked.answers) {
      if (answer.status >= 300) continue;
      samples.set(route.name, { route, values: valuesIn(route, address), body: undefined });
    }
    for (const { method, address, body, answer } of studio.sent) {
      const route = document.routeOf(method, address);
      if (!route?.isOfStudio || method === 'GET' || answer.status >= 300) continue;
      const shape = `${route.name} ${placedValues(body).map(({ at }) => placeName(at))}`;
      if (!samples.has(shape)) samples.set(shape, { route, values: valuesIn(route, address), body });
    }
    for (const { name, body } of notLived) {
      const route = routesOfStudios().find((each) => each.name === name);
      const [deliveryId = ''] = studio.walked.ids.get('deliveryId') ?? [];
      const [planId = ''] = studio.walked.ids.get('planId') ?? [];
      const values = { studioId: studio.studioId, deliveryId };
      if (route) samples.set(name, { route, values, body: body(planId) });
    }
    return [...samples.values()];
  };

  const attempt = ({ route, values, body }: Sample, query = '') => {
    const isWrite = body !== null && typeof body === 'object' && 'id' in body;
    return RecordingService.on(service, mine).send(
      route.method,
      addressOf(service, route, values) + query,
      isWrite ? { ...body, id: uuidv7() } : body,
    );
  };

  /** Of each other studio an id of one of these kinds. */
  const foreignTo = (kinds: readonly string[]): string[] =>
    others().flatMap(({ walked }) =>
      kinds.flatMap((kind) => foreignId(walked, mine.walked, kind) ?? []).slice(0, 1),
    );

  /**
   * Nothing that belongs to the other studios may change meanwhile.
   * @param meant what is done in all studios of a chain, and so in my sister's too: actions of the audit log
   */
  const leavingOthersAlone = async (attempts: () => Promise<void>, meant: string[] = []) => {
    const contents = await Promise.all(others().map(contentsOf));
    const actions = await actionsIn(sister);
    await attempts();
    await settled(sql);
    for (const [index, other] of others().entries()) {
      const changed = differences(contents[index] as TableContents, await contentsOf(other));
      // Whatever changes has an entry there, so nothing else changed when there is no other entry.
      if (other === sister && meant.length > 0) {
        expect((await actionsIn(sister)).slice(actions.length)).toEqual(meant);
      } else expect(changed).toEqual([]);
    }
  };
  const actionsIn = async ({ studioId }: FurtherStudio): Promise<string[]> =>
    (
      await sql.rows<{ action: string }>(
        // The sweep is the service's own.
        "SELECT action FROM audit_entry WHERE studio_id = $1 AND action <> 'alerts.sweep' ORDER BY sequence",
        [studioId],
      )
    ).map(({ action }) => action);
  const contentsOf = async ({ studioId }: FurtherStudio): Promise<TableContents> => {
    const [studio] = await sql.rows<{ chain_id: string }>('SELECT chain_id FROM studio WHERE id = $1', [
      studioId,
    ]);
    // What belongs to my own chain may be changed from mine.
    return tableContents(sql, {
      studioId,
      ...(studioId === stranger.studioId && { chainId: studio?.chain_id }),
    });
  };

  it('is attacked by every route of the document, and an id of every kind', () => {
    const samples = samplesOf(mine);
    const tried = new Set(samples.map(({ route }) => route.name));
    const untried = routesOfStudios().filter(({ name }) => !tried.has(name));
    expect(untried.map(({ name }) => name)).toEqual([]);
    const inAddresses = new Set(routesOfStudios().flatMap(idsIn));
    expect(
      [...inAddresses].filter((kind) => foreignId(stranger.walked, mine.walked, kind) === undefined),
    ).toEqual([]);
    const withIds = new Set(
      samples.flatMap(({ route, body }) =>
        placedValues(body)
          .filter(({ value }) => typeof value === 'string' && kindsOf(mine.walked, value).length > 0)
          .map(({ at }) => `${route.name}: ${placeName(at)}`),
      ),
    );
    const places = routesOfStudios().flatMap((route) =>
      document
        .places(route)
        .filter(({ at, schema }) => schema.format === 'uuid' || /Ids$/.test(at.at(-2) ?? ''))
        .map(({ at }) => `${route.name}: ${at.join('.')}`)
        .filter((place) => !/: (id|after)$/.test(place)),
    );
    expect(places.filter((place) => !withIds.has(place))).toEqual(neverTaken);
  });

  it('is answered as a studio that does not exist, whatever is asked of it', async () => {
    await leavingOthersAlone(async () => {
      const wrong: string[] = [];
      const unknown = new Map<string, string>();
      for (const other of others()) {
        for (const sample of enoughOf(samplesOf(other))) {
          const nobody = uuidv7();
          const { name } = sample.route;
          const known = process.env.SOAK ? undefined : unknown.get(name);
          const expected =
            known ??
            told(await attempt({ ...sample, values: { ...sample.values, studioId: nobody } }), nobody);
          unknown.set(name, expected);
          const answer = await attempt(sample);
          const is = told(answer, other.studioId);
          if (answer.status !== 404 || is !== expected) {
            wrong.push(`${name}: ${is} instead of ${expected}`);
          }
        }
      }
      expect(wrong).toEqual([]);
    });
  });

  /** Who asks is turned away before anything is read of a body: one of each route will do, in the soak every kind of body. */
  const enoughOf = (samples: Sample[]): Sample[] =>
    process.env.SOAK ? samples : [...new Map(samples.map((each) => [each.route.name, each])).values()];

  /** Asks for the same with an id that nobody has and with those, all of one kind, that the other studios have. */
  class Comparison {
    readonly wrong: string[] = [];
    private readonly statuses = new Map<string, Set<number>>();
    /** How many attempts came as far as the id, by place. */
    private readonly reached = new Map<string, number>();

    async of(
      { route }: Sample,
      name: string,
      foreign: readonly string[],
      change: (id: string) => Sample,
    ): Promise<void> {
      const [one] = foreign;
      if (one === undefined) return;
      const place = `${route.name} ${name}`;
      // What came as far as the id, of each other studio, need not be tried in every further request but in the soak.
      if (!process.env.SOAK && (this.reached.get(place) ?? 0) >= foreign.length) return;
      const unknown = unknownLike(one);
      const expected = told(await attempt(change(unknown)), unknown);
      for (const id of foreign) {
        const answer = await attempt(change(id));
        const is = told(answer, id);
        if (is !== expected) this.wrong.push(`${place}: ${is} instead of ${expected}`);
        this.statuses.set(place, (this.statuses.get(place) ?? new Set()).add(answer.status));
        const isReached = answer.status === (unknownOtherwise[place] ?? 404);
        if (isReached) this.reached.set(place, (this.reached.get(place) ?? 0) + 1);
      }
    }

    /** Places of which no attempt came as far as the id. */
    get notReached(): string[] {
      return [...this.statuses].flatMap(([place, statuses]) =>
        statuses.has(unknownOtherwise[place] ?? 404) ? [] : [`${place}: only ${[...statuses]}`],
      );
    }
  }

  it('has nothing that its ids reach in a request of mine, in its address or its body', async () => {
    // What kind of id stands where is known by now; each is tried when the request itself would be carried out.
    const kinds = new Map<string, string[]>();
    for (const { route, body } of samplesOf(mine)) {
      for (const { at, value } of placedValues(body)) {
        if (typeof value !== 'string' || !isId(value) || /^\d{14}$/.test(value)) continue;
        const place = `${route.name} ${placeName(at)}`;
        kinds.set(place, [...(kinds.get(place) ?? []), ...kindsOf(mine.walked, value)]);
      }
    }
    const comparison = new Comparison();
    const compare = async (sample: Sample) => {
      for (const name of idsIn(sample.route)) {
        await comparison.of(sample, name, foreignTo([name]), (id) => ({
          ...sample,
          values: { ...sample.values, [name]: id },
        }));
      }
      for (const { at, value } of placedValues(sample.body)) {
        if (typeof value !== 'string' || !isId(value) || placeName(at) === 'id') continue;
        const found = kinds.get(`${sample.route.name} ${placeName(at)}`) ?? [];
        await comparison.of(sample, placeName(at), foreignTo(found), (id) => ({
          ...sample,
          body: withValue(sample.body, at, id),
        }));
      }
    };
    const attacking = RecordingService.on(service, mine);
    attacking.beforeWrite = async (method, address, body) => {
      const route = document.routeOf(method, address);
      if (route?.isOfStudio) await compare({ route, values: valuesIn(route, address), body });
    };
    await leavingOthersAlone(async () => {
      for (const sample of samplesOf(mine)) {
        const isLived = notLived.every(({ name }) => name !== sample.route.name);
        if (sample.route.method === 'GET' || !isLived) await compare(sample);
      }
      await liveWholeLife(attacking, markedTexts('Larkmoor again'));
    }, ['recalls.set-drill-schedule']);
    expect(comparison.wrong).toEqual([]);
    expect(comparison.notReached).toEqual([]);
  });

  /** Of what a list may be; when its addresses do not tell, of anything. */
  const listedKinds = ({ path }: ApiRoute): string[] => {
    const below = routesOfStudios().filter((route) => route.path.startsWith(`${path}/{`));
    const all = below.length > 0 ? below : routesOfStudios();
    return [
      ...new Set(
        all.flatMap((route) =>
          below.length > 0 ? (route.path.slice(path.length).match(/\{(\w+)\}/)?.[1] ?? []) : idsIn(route),
        ),
      ),
    ];
  };

  it('is answered as an unknown id in every question of mine', async () => {
    const wrong: string[] = [];
    for (const sample of samplesOf(mine)) {
      for (const { name, schema } of sample.route.query) {
        if (schema.format !== 'uuid') continue;
        const kinds = /after$/i.test(name) ? listedKinds(sample.route) : [name];
        for (const kind of kinds) {
          const [one, ...more] = foreignTo([kind]);
          if (one === undefined) continue;
          const unknown = unknownLike(one);
          const expected = told(await attempt(sample, `?${name}=${unknown}`), unknown);
          for (const foreign of [one, ...more]) {
            const is = told(await attempt(sample, `?${name}=${foreign}`), foreign);
            if (is !== expected) wrong.push(`${sample.route.name} ${name}: ${is} instead of ${expected}`);
          }
        }
      }
    }
    expect(wrong).toEqual([]);
  });

  it('shows in no answer, list, count, message or export of mine', async () => {
    const marks = ['Osterholt', 'Fennring'];
    // That I added my sister is in my own log.
    const ids = [
      stranger.studioId,
      ...others().flatMap(({ walked }) =>
        [...walked.ids.keys()].flatMap((kind) => foreignIds(walked, mine.walked, kind)),
      ),
    ];
    const wrong: string[] = [];
    for (const { route, address, text } of (await walkStudio(mine.service, document)).answers) {
      // The register is the chain's.
      const shown = marks.filter(
        (mark) => text.includes(mark) && !(mark === 'Fennring' && register.test(route.name)),
      );
      const known = ids.filter((id) => text.includes(id));
      if (shown.length + known.length > 0) wrong.push(`${address}: ${[...shown, ...known]}`);
    }
    expect(wrong).toEqual([]);
    expect(await (await fetch(`${service.url}/api/openapi.json`)).text()).not.toMatch(
      /Osterholt|Fennring|Larkmoor/,
    );
  });

  it('changes nothing of what mine looks like', () => {
    const first = new Map(before.answers.map(({ address, text }) => [address, text]));
    // A token is shown with the minute of its last use; in my logs stands that I added my sister, and that I looked. Steps
    // go on, reports and workbooks say when they were made, and drills are scheduled for all studios of a chain.
    const goesOn =
      /^GET \/(audit-log|clients\/\{clientId\}\/(accesses|export)|recalls\/(drills|\{recallId\}\/(steps|report|exposures\.xlsx))|drill-schedule)/;
    // The facts of the day say when they were told.
    const lasting = (text = '') => text.replace(/"(lastUsedAt|asOf)":("[^"]*"|null)/g, '');
    const changed = mine.walked.answers.filter(
      ({ route, address, text }) =>
        first.has(address) &&
        !register.test(route.name) &&
        !goesOn.test(route.name) &&
        lasting(first.get(address)) !== lasting(text),
    );
    expect(changed.map(({ address }) => address)).toEqual([]);
  });

  it('is not found by trying its id for a studio of my own', async () => {
    const added: number[] = [];
    for (const id of [uuidv7(), stranger.studioId, sister.studioId, mine.studioId]) {
      const body = { id, name: 'Branch', timeZone: 'UTC' };
      const answer = await mine.service.post<{ studioId: string }>('/chain/studios', body);
      const again = await mine.service.post<{ studioId: string }>('/chain/studios', body);
      expect(again.body).toEqual(answer.body);
      expect([stranger, sister, mine].map(({ studioId }) => studioId)).not.toContain(answer.body.studioId);
      added.push(answer.status);
    }
    expect(added).toEqual([201, 201, 201, 201]);
    const [studios] = await sql.rows('SELECT count(*) AS count FROM studio');
    const { id } = await mine.service.made<{ id: string }>('/places', { name: 'Den', kind: 'shelf' });
    const reused = { id, name: 'Branch', timeZone: 'UTC' };
    expect((await mine.service.post('/chain/studios', reused)).status).toBe(409);
    expect(await sql.rows('SELECT count(*) AS count FROM studio')).toEqual([studios]);
  });

  it('is answered as an unknown id where I am asked about myself', async () => {
    const cookie = await signInOwner(service);
    const ask = (method: string, path: string, body?: object) =>
      service.send(method, `${service.url}/api/v1/me${path}`, body, { cookie });
    const theirs = await service.send<{ id: string }[]>(
      'GET',
      `${service.url}/api/v1/me/sign-ins`,
      undefined,
      {
        cookie: stranger.cookie,
      },
    );
    expect(theirs.body.length).toBeGreaterThan(0);
    const attempts: [string, (id: string) => Promise<Answer>][] = [
      [stranger.studioId, (id) => ask('GET', `/studios/${id}/pin`)],
      [stranger.studioId, (id) => ask('PUT', `/studios/${id}/pin`, { pin: '7294' })],
      [stranger.studioId, (id) => ask('POST', `/studios/${id}/pin/removal`)],
      [theirs.body[0]?.id ?? '', (id) => ask('POST', '/sign-ins/end', { signInId: id })],
    ];
    for (const [id, attempted] of attempts) {
      const unknown = uuidv7();
      const [expected, answer] = [await attempted(unknown), await attempted(id)];
      expect(answer.status).toBe(404);
      expect(told(answer, id)).toBe(told(expected, unknown));
    }
    const { body } = await service.send<{ id: string }[]>('GET', `${service.url}/api/v1/studios`, undefined, {
      cookie,
    });
    const seen = body.map(({ id }) => id);
    expect(seen).toContain(sister.studioId);
    expect(seen).not.toContain(stranger.studioId);
  });

  describe('an account that acts in several', () => {
    interface Invited {
      personId: string;
      link: string;
    }

    const invite = async (asker: RecordingService, personId?: string): Promise<Invited> => {
      const id =
        personId ?? (await asker.made<{ id: string }>('/people', { name: 'Vera', role: 'owner' })).id;
      const { link } = await asker.made<{ link: string }>(`/people/${id}/invitation`);
      return { personId: id, link };
    };
    const accept = (link: string, more: object, cookie?: string) =>
      fetch(`${service.url}/api/v1/invitation/accept`, {
        method: 'POST',
        headers: { 'content-type': 'application/json', ...(cookie !== undefined && { cookie }) },
        body: JSON.stringify({ secret: link.split('#')[1], ...more }),
      });

    it('is not opened by a link of somebody who leads only one of them', async () => {
      const there = await invite(stranger.service);
      const cookie = await acceptInvitation(service, there.link, `${uuidv7()}@studio.example`);
      const kept = await invite(stranger.service, there.personId);
      // The same account is invited to mine, and comes by what it is signed in with.
      const here = await invite(mine.service);
      const joined = await accept(here.link, {}, cookie);
      expect(joined.status).toBe(204);

      const refused = await stranger.service.post<ProblemBody>(`/people/${there.personId}/invitation`);
      expect([refused.status, refused.body.code]).toEqual([409, 'wrong-state']);
      const password = 'four purple boats at noon';
      const late = await accept(kept.link, { password });
      expect([late.status, ((await late.json()) as ProblemBody).code]).toEqual([409, 'wrong-state']);
      const studios = await fetch(`${service.url}/api/v1/studios`, {
        headers: { cookie: cookiesOf(joined) },
      });
      expect((await studios.json()) as object[]).toHaveLength(2);
    });

    it('is given a new link by somebody who leads them all, or from the shell', async () => {
      const { personId, link } = await invite(mine.service);
      const cookie = await acceptInvitation(service, link, `${uuidv7()}@studio.example`);
      // My sister has the owner I have.
      const there = await invite(sister.service);
      expect((await accept(there.link, {}, cookie)).status).toBe(204);
      const again = await invite(mine.service, personId);
      expect((await accept(again.link, { password: 'five amber stones roll' })).status).toBe(204);
      const printed = await commandLine(
        service,
        ...['sign-in-link', '--studio', mine.studioId, '--person', personId],
      );
      const fromShell = printed.trim().split('\n').at(-1) ?? '';
      expect((await accept(fromShell, { password: 'eight silver owls hum' })).status).toBe(204);
    });
  });
});
