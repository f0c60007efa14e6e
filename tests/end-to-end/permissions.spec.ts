import 'reflect-metadata';
import { v7 as uuidv7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { AppModule } from '../../src/app.module.js';
import { admissionKey } from '../../src/identity/needs.decorator.js';
import { type Permission, permissions, type Role } from '../../src/identity/permissions.js';
import { ProcessRole } from '../../src/platform/process-role.js';
import { ApiDocument, type ApiRoute, addressOf } from '../support/api-document.js';
import { pagesOf, textOn } from '../support/pdf-pages.js';
import { PlainSql } from '../support/plain-sql.js';
import { SeededRandom } from '../support/random.js';
import {
  type Answer,
  type ProblemBody,
  type RunningService,
  startService,
  usualEngine,
} from '../support/service.js';
import {
  cookiesOf,
  personOfRole,
  type SignedInPerson,
  signInOwner,
  tokenFor,
  tokenOfPerson,
} from '../support/signing-in.js';
import { differences, settled, tableContents } from '../support/table-contents.js';
import { walkStudio } from '../support/walk.js';
import type { SentRequest } from '../support/whole-life/recording-service.js';
import { markedTexts } from '../support/whole-life/texts.js';
import { liveWholeLife } from '../support/whole-life/whole-life.js';

/**
 * Who may use which route of a studio, as it was decided, written down once more beside the decorators of the routes:
 * o owner, m manager, a artist, r auditor (who only reads), c chain manager, and t: also on a shared tablet; a dot: may not.
 */
const studioRoutes: Record<string, string> = {
  'GET /': 'omarct',
  'PATCH /': 'o...c.',
  'GET /retention-presets': 'omarct',
  'POST /chain/studios': 'o...c.',

  'GET /plans': 'omarc.',
  'POST /plans': 'om..c.',
  'GET /plans/latest': 'omarc.',
  'GET /plans/replay': 'omarc.',
  'POST /plans/replay': 'om..c.',
  'GET /plans/{planId}': 'omarc.',
  'GET /plans/{planId}/lines': 'omarc.',
  'GET /plans/{planId}/lines/{lineNumber}': 'omarc.',
  'POST /plans/{planId}/cancel': 'om..c.',
  'POST /plans/{planId}/levels': 'om..c.',

  'POST /recalls/readings': 'om..c.',
  'POST /recalls/matches': 'om..c.',
  'POST /recalls/files': 'om..c.',
  'GET /recalls/notices': 'omarc.',
  'GET /recalls/notices/{noticeId}': 'omarc.',
  'POST /recalls/notices/{noticeId}/dismissal': 'om..c.',
  'GET /recalls': 'omarc.',
  'POST /recalls': 'om..c.',
  'GET /recalls/{recallId}': 'omarc.',
  'GET /recalls/{recallId}/lots': 'omarc.',
  'POST /recalls/{recallId}/scopes': 'om..c.',
  'POST /recalls/{recallId}/lots/{lotId}/decisions': 'om..c.',
  'POST /recalls/{recallId}/withdrawal': 'om..c.',
  'GET /recalls/{recallId}/readiness': 'omarc.',
  'POST /recalls/{recallId}/closing': 'om..c.',
  'GET /recalls/{recallId}/report.json': 'omarc.',
  'GET /recalls/{recallId}/report.pdf': 'omarc.',
  'GET /recalls/{recallId}/steps': 'omarc.',
  'POST /recalls/{recallId}/steps': 'oma.c.',
  'GET /recalls/drills': 'omarc.',
  'POST /recalls/drills': 'om..c.',
  'GET /drill-schedule': 'omarc.',
  'PUT /drill-schedule': 'om..c.',
  'PUT /chain/drill-schedule': 'o...c.',
  // Also a chain manager who leads every studio of the chain, which this one does not.
  'GET /recalls/{recallId}/studios': 'o.....',
  'GET /recalls/record-quality': 'omarc.',
  'GET /chain/record-quality': 'o.....',
  'GET /recalls/{recallId}/exposures': 'omarc.',
  'GET /recalls/{recallId}/exposures.csv': 'omarc.',
  'GET /recalls/{recallId}/exposures.xlsx': 'omarc.',
  'GET /recalls/{recallId}/exposed-clients': 'omarc.',
  'GET /recalls/{recallId}/planned-sessions': 'omarc.',
  'GET /recalls/{recallId}/contact-list.csv': 'om....',
  'GET /recalls/{recallId}/recipients': 'omarc.',
  // Whatever concerns a client needs the permission to tell clients of recalls too.
  'GET /recalls/{recallId}/messages': 'om..c.',
  'POST /recalls/{recallId}/contacts': 'om..c.',
  'GET /recalls/{recallId}/contacts': 'omarc.',
  'GET /recalls/{recallId}/effectiveness': 'omarc.',

  'GET /people': 'omarct',
  'POST /people': 'o...c.',
  'PATCH /people/{personId}': 'o...c.',
  'POST /people/{personId}/invitation': 'o...c.',
  'GET /tokens': 'om..c.',
  'POST /tokens': 'om..c.',
  'POST /tokens/{tokenId}/revocation': 'om..c.',
  'POST /people/{personId}/sign-out': 'o...c.',
  'POST /people/{personId}/badge': 'o...c.',
  'POST /people/{personId}/badge/withdrawal': 'o...c.',
  'GET /badges': 'o...c.',
  'GET /tablets': 'om....',
  'POST /tablets': 'om....',
  'PATCH /tablets/{tabletId}': 'om....',
  'POST /tablets/{tabletId}/revocation': 'om....',

  'GET /alerts': 'omarct',
  'POST /alerts/sweep': 'oma.c.',
  'GET /alerts/{alertId}': 'omarct',
  'POST /alerts/{alertId}/acknowledge': 'oma.c.',
  'POST /alerts/{alertId}/put-off': 'oma.c.',
  'POST /alerts/{alertId}/give': 'oma.c.',
  'POST /alerts/{alertId}/notes': 'oma.c.',
  'POST /alerts/{alertId}/close': 'oma.c.',
  'GET /alerts/{alertId}/deliveries': 'omarct',
  'GET /alerts/deliveries': 'omarct',
  'POST /alerts/deliveries/{deliveryId}/send-again': 'oma.c.',
  'GET /alert-preferences': 'om..c.',
  'GET /alert-preferences/own': 'omarc.',
  'PUT /alert-preferences/own': 'omarc.',
  'GET /handing-on': 'om..c.',
  'PUT /handing-on': 'om..c.',
  'GET /alerts/live': 'omarct',
  'GET /morning-summary': 'omarct',
  'GET /morning-summaries': 'omarct',
  'GET /calendar-address': 'omarc.',
  'POST /calendar-address': 'omarc.',
  'POST /calendar-address/remove': 'omarc.',
  'GET /alert-destinations': 'omarc.',
  'GET /alert-destinations/push-key': 'omarc.',
  'GET /alert-destinations/{destinationId}/deliveries': 'omarc.',
  'POST /alert-destinations/mail': 'omarc.',
  'POST /alert-destinations/webhooks': 'om..c.',
  'POST /alert-destinations/push': 'omarc.',
  'PATCH /alert-destinations/{destinationId}': 'omarc.',
  'POST /alert-destinations/{destinationId}/rotate-secret': 'om..c.',
  'POST /alert-destinations/{destinationId}/remove': 'omarc.',
  'POST /alert-destinations/{destinationId}/test': 'omarc.',

  'GET /makers': 'omarct',
  'POST /makers': 'om..c.',
  'PATCH /makers/{makerId}': 'om..c.',
  'GET /suppliers': 'omarct',
  'POST /suppliers': 'om..c.',
  'PATCH /suppliers/{supplierId}': 'om..c.',
  'GET /products': 'omarct',
  'POST /products': 'om..c.',
  'GET /products/{productId}': 'omarct',
  'PATCH /products/{productId}': 'om..c.',
  'POST /products/{productId}/archive': 'om..c.',
  'POST /products/{productId}/restore': 'om..c.',
  'POST /products/{productId}/gtins': 'om..c.',
  'PATCH /products/{productId}/gtins/{gtin}': 'om..c.',
  'GET /configurations': 'omarct',
  'POST /configurations/equivalences': 'om..c.',
  'POST /configurations/equivalences/{equivalenceId}/withdraw': 'om..c.',
  'POST /symbols/read': 'omarct',

  'GET /places': 'omarct',
  'POST /places': 'oma.c.',
  'POST /places/{placeId}/archive': 'oma.c.',
  'POST /opening-stock/preview': 'om..c.',
  'POST /opening-stock': 'om..c.',
  'GET /deliveries': 'omarct',
  'POST /deliveries': 'oma.c.',
  'GET /deliveries/{deliveryId}': 'omarct',
  'GET /expected-deliveries': 'omarct',
  'GET /expected-deliveries/{expectedDeliveryId}': 'omarct',
  'POST /expected-deliveries': 'oma.c.',
  'PATCH /expected-deliveries/{expectedDeliveryId}': 'oma.c.',
  'POST /expected-deliveries/{expectedDeliveryId}/call-off': 'oma.c.',
  'POST /expected-deliveries/{expectedDeliveryId}/received': 'oma.c.',
  'GET /lots': 'omarct',
  'GET /lots/{lotId}': 'omarct',
  'PATCH /lots/{lotId}': 'om..c.',
  'GET /containers': 'omarct',
  'GET /containers/pick': 'omarct',
  'GET /containers/by-label/{code}': 'omarct',
  'GET /containers/{containerId}': 'omarct',
  'POST /containers/{containerId}/open': 'oma.ct',
  'POST /containers/{containerId}/correct-opened-date': 'oma.c.',
  'POST /containers/{containerId}/undo-opening': 'oma.c.',
  'POST /containers/{containerId}/finish': 'oma.c.',
  'POST /containers/{containerId}/discard': 'oma.c.',
  'POST /containers/{containerId}/waste': 'oma.c.',
  'POST /containers/{containerId}/return': 'oma.c.',
  'POST /containers/{containerId}/keep-for-practice': 'oma.c.',
  'POST /containers/{containerId}/count': 'oma.c.',
  'POST /containers/{containerId}/move': 'oma.c.',
  'GET /holds': 'omarct',
  'POST /holds': 'oma.c.',
  'POST /holds/{holdId}/release-requests': 'om..c.',
  'POST /holds/{holdId}/release': 'om..c.',
  'POST /photos': 'oma.c.',
  'GET /photos/{photoId}': 'omarc.',
  'GET /recalls/{recallId}/containers': 'omarc.',
  'POST /recalls/{recallId}/containers/{containerId}/findings': 'oma.c.',
  'POST /recalls/{recallId}/containers/{containerId}/dispositions': 'om..c.',
  'GET /recalls/{recallId}/balance': 'omarc.',
  'GET /recalls/{recallId}/balance/{lotId}/movements': 'omarc.',
  'POST /labels': 'oma.c.',
  'GET /stock/levels': 'omarct',
  'PUT /stock/levels': 'om..c.',
  'DELETE /stock/levels/{levelId}': 'om..c.',
  'GET /purchase-orders': 'omarc.',
  'POST /purchase-orders': 'om..c.',
  'POST /purchase-orders/from-plan': 'om..c.',
  'GET /purchase-orders/{orderId}': 'omarc.',
  'PATCH /purchase-orders/{orderId}': 'om..c.',
  'POST /purchase-orders/{orderId}/approval': 'om..c.',
  'POST /purchase-orders/{orderId}/draft-again': 'om..c.',
  'POST /purchase-orders/{orderId}/sending': 'om..c.',
  'POST /purchase-orders/{orderId}/call-off': 'om..c.',
  'POST /purchase-orders/{orderId}/closing': 'om..c.',
  'GET /purchase-orders/{orderId}/order.pdf': 'om..c.',
  'GET /purchase-orders/{orderId}/order.csv': 'om..c.',
  'GET /claims': 'omarc.',
  'POST /claims': 'om..c.',
  'GET /claims/suggestions': 'omarc.',
  'GET /claims/{claimId}': 'omarc.',
  'PATCH /claims/{claimId}': 'om..c.',
  'POST /claims/{claimId}/sent': 'om..c.',
  'POST /claims/{claimId}/settled': 'om..c.',
  'POST /claims/{claimId}/dropped': 'om..c.',
  'GET /claims/{claimId}/claim.txt': 'om..c.',

  'GET /supplier-terms': 'omarc.',
  'GET /supplier-terms/{supplierId}': 'omarc.',
  'PUT /supplier-terms/{supplierId}': 'om..c.',
  'GET /offers': 'omarc.',
  'GET /offers/{offerId}': 'omarc.',
  'POST /offers': 'om..c.',
  'PATCH /offers/{offerId}': 'om..c.',
  'POST /offers/{offerId}/end': 'om..c.',
  'GET /training-courses': 'omarc.',
  'POST /training-courses': 'om..c.',
  'PATCH /training-courses/{courseId}': 'om..c.',
  'POST /training-courses/{courseId}/cancel': 'om..c.',
  'GET /planning-settings': 'omarc.',
  'PUT /planning-settings': 'om..c.',
  'GET /planning-settings/items': 'omarc.',
  'PUT /planning-settings/items': 'om..c.',
  'DELETE /planning-settings/items': 'om..c.',
  'GET /planning-settings/artists': 'omarc.',
  'PUT /planning-settings/artists/{personId}': 'om..c.',

  'GET /date-thresholds': 'omarct',
  'PUT /date-thresholds/{productId}': 'om..c.',
  'DELETE /date-thresholds/{productId}': 'om..c.',
  'POST /movements/{movementId}/reversal': 'om..c.',
  'GET /blends': 'omarct',
  'GET /blends/{blendId}': 'omarct',
  'POST /blends': 'oma...',

  'GET /transfers': 'omarct',
  'POST /transfers': 'om..c.',
  'GET /transfers/receivers': 'om..c.',
  'GET /transfers/{transferId}': 'omarct',
  'POST /transfers/{transferId}/arrival': 'oma.c.',
  'POST /transfers/{transferId}/withdrawal': 'om..c.',

  'GET /clients': 'oma...',
  'POST /clients': 'oma...',
  'POST /clients/search': 'oma...',
  'GET /clients/{clientId}': 'oma...',
  'PATCH /clients/{clientId}': 'oma...',
  'GET /clients/{clientId}/trace': 'omarc.',
  'GET /clients/{clientId}/recalls': 'omarc.',
  'GET /clients/{clientId}/touch-ups': 'omarct',
  'GET /clients/{clientId}/accesses': 'o..rc.',
  'GET /clients/{clientId}/export': 'om....',
  'GET /clients/{clientId}/export.html': 'om....',
  'GET /clients/{clientId}/erasure': 'om....',
  'GET /clients/{clientId}/erasure/preview': 'o.....',
  'POST /clients/{clientId}/erasure': 'o.....',
  'GET /clients/{clientId}/legal-claims': 'om....',
  'POST /clients/{clientId}/legal-claims': 'om....',
  'POST /clients/{clientId}/legal-claims/{claimId}/end': 'om....',

  'GET /procedures': 'omarct',
  'POST /procedures': 'om....',
  'PATCH /procedures/{procedureId}': 'om....',
  'GET /procedures/{procedureId}/kit-list': 'omarct',
  'PUT /procedures/{procedureId}/kit-list': 'om....',
  'GET /sessions': 'omarct',
  'POST /sessions': 'oma...',
  'POST /bookings/preview': 'om....',
  'POST /bookings': 'om....',
  'POST /sessions/walk-in': 'oma..t',
  'POST /sessions/late': 'oma...',
  'GET /sessions/{sessionId}': 'omarct',
  'PATCH /sessions/{sessionId}': 'oma...',
  'GET /sessions/{sessionId}/record': 'omarct',
  'POST /sessions/{sessionId}/setup': 'oma..t',
  'POST /sessions/{sessionId}/cancellation': 'oma...',
  'POST /sessions/{sessionId}/non-attendance': 'oma...',
  'GET /sessions/{sessionId}/tray': 'omarct',
  'GET /day-facts': 'oma..t',
  'POST /sessions/{sessionId}/scans': 'oma..t',
  'POST /sessions/{sessionId}/tray/{lineId}/take-off': 'oma..t',
  'GET /sessions/{sessionId}/mixes': 'omarct',
  'POST /sessions/{sessionId}/mixes': 'oma..t',
  'POST /sessions/{sessionId}/mixes/{mixId}/components': 'oma..t',
  'POST /sessions/{sessionId}/completion': 'oma..t',
  'POST /sessions/{sessionId}/uses': 'oma...',
  'POST /sessions/{sessionId}/uses/{useId}/reversal': 'oma...',
  'POST /sessions/{sessionId}/complications': 'oma...',
  'POST /sessions/{sessionId}/healed-result': 'oma...',
  'GET /sessions/{sessionId}/touch-up': 'omarct',
  'GET /lots/{lotId}/trace': 'omarc.',
  'GET /lots/{lotId}/trace.csv': 'omarc.',
  'POST /trace': 'omarc.',
  'GET /sessions/{sessionId}/trace': 'omarc.',

  'GET /audit-log': 'o..rc.',
  'GET /audit-log/verification': 'o..rc.',
  'POST /audit-log/exports': 'o..rc.',
  'GET /backups': 'o...c.',
  'GET /retention': 'o.....',
  'POST /retention': 'o.....',
};

/** The others: for anyone, for an enrolled tablet, for whoever is signed in, or for somebody at a browser of their own. */
const otherRoutes: Record<string, 'anyone' | 'tablet' | 'signed in' | 'in person'> = {
  'GET /health/live': 'anyone',
  'GET /health/ready': 'anyone',
  'GET /api/v1/set-up': 'anyone',
  'POST /api/v1/set-up': 'anyone',
  'POST /api/v1/sign-in': 'anyone',
  'POST /api/v1/sign-in/passkey/options': 'anyone',
  'POST /api/v1/sign-in/passkey': 'anyone',
  'POST /api/v1/sign-out': 'anyone',
  'POST /api/v1/invitation/look': 'anyone',
  'POST /api/v1/invitation/accept': 'anyone',
  'GET /api/v1/calendars/{file}': 'anyone',
  'GET /api/v1/tablet': 'tablet',
  'POST /api/v1/tablet/switch': 'tablet',
  'GET /api/v1/studios': 'signed in',
  'GET /api/v1/me': 'signed in',
  'GET /api/v1/me/sign-ins': 'in person',
  'POST /api/v1/me/sign-ins/end': 'in person',
  'POST /api/v1/me/password': 'in person',
  'POST /api/v1/me/password/removal': 'in person',
  'GET /api/v1/me/passkeys': 'in person',
  'POST /api/v1/me/passkeys/options': 'in person',
  'POST /api/v1/me/passkeys': 'in person',
  'PATCH /api/v1/me/passkeys/{passkeyId}': 'in person',
  'POST /api/v1/me/passkeys/{passkeyId}/removal': 'in person',
  'GET /api/v1/me/studios/{studioId}/pin': 'in person',
  'PUT /api/v1/me/studios/{studioId}/pin': 'in person',
  'POST /api/v1/me/studios/{studioId}/pin/removal': 'in person',
};

const columns: Role[] = ['owner', 'manager', 'artist', 'auditor', 'chain manager'];

/** Look-ups whose question is too long for an address, and exports: an auditor may use them, and they change no record. */
const reading = ['POST /symbols/read', 'POST /trace', 'POST /audit-log/exports'];

function mayUse(name: string, role: Role): boolean {
  return studioRoutes[name]?.[columns.indexOf(role)] !== '.';
}

function onTablet(name: string): boolean {
  return studioRoutes[name]?.[columns.length] === 't';
}

describe.each(usualEngine)('who may use which route, on %s', (engine) => {
  let service: RunningService;
  let document: ApiDocument;
  let sql: PlainSql;
  let life: SentRequest[];
  const people = new Map<Role, SignedInPerson & { token: string }>();
  const random = SeededRandom.ofThisRun();

  beforeAll(async () => {
    process.stdout.write(`permissions on ${engine}: SEED=${random.seed}\n`);
    service = await startService(engine);
    sql = await PlainSql.connect(service, 'read');
    document = await ApiDocument.of(service);
    life = await liveWholeLife(service, markedTexts('Larkmoor', 'Quillona'));
    const [owner] = await service.seen<{ id: string }[]>('/people');
    people.set('owner', {
      personId: owner?.id ?? '',
      cookie: await signInOwner(service),
      token: service.token,
    });
    await Promise.all(
      columns.slice(1).map(async (role) => {
        const added = await personOfRole(service, role);
        people.set(role, { ...added, token: await tokenOfPerson(service, added.personId) });
      }),
    );
    await settled(sql);
  });
  afterAll(async () => {
    await sql.close();
    await service.dispose();
  });

  const person = (role: Role): SignedInPerson & { token: string } => {
    const found = people.get(role);
    if (!found) throw new Error(`There is no ${role}.`);
    return found;
  };
  const byToken = ({ token }: { token: string }) => ({ authorization: `Bearer ${token}` });
  const byCookie = ({ cookie }: { cookie: string }) => ({ cookie });
  const ofStudio = () => document.routes.filter(({ isOfStudio }) => isOfStudio);
  /** Some, chosen anew each time; in the soak all. */
  const someOf = (routes: readonly ApiRoute[]) =>
    process.env.SOAK ? [...routes] : random.pickSome(routes, Math.ceil(routes.length / 4));

  /** A request with ids that stand for nothing and an empty body: whoever is admitted is answered 400 or 404 by the rest. */
  const knock = (route: ApiRoute, headers: Record<string, string>): Promise<Answer<ProblemBody>> => {
    const values = Object.fromEntries(route.pathParameters.map((name) => [name, uuidv7()]));
    const address = addressOf(service, route, { ...values, studioId: service.studioId });
    return service.send(route.method, address, route.method === 'GET' ? undefined : {}, headers);
  };
  const admitted = ({ status, body }: Answer<ProblemBody>) =>
    status !== 403 && !(status === 401 && body.code === 'sign-in-needed');

  it('has an entry in the table for every route of the document, and a route for every entry', () => {
    const routes = document.routes.map(({ name }) => name).sort();
    expect(Object.keys({ ...studioRoutes, ...otherRoutes }).sort()).toEqual(routes);
    for (const { name, permission, security } of document.routes) {
      expect(permission, name).toEqual(expect.any(String));
      const presented = { anyone: [], tablet: [], 'in person': ['browser'] }[otherRoutes[name] as string];
      expect(security, name).toEqual(presented ?? ['token', 'browser']);
    }
  });

  it('hides no route from the document, and leaves none of them without an entry in the guard', () => {
    const { imports = [] } = AppModule.for(new ProcessRole(true));
    const modules = imports.map((each) =>
      typeof each === 'object' && 'module' in each ? each.module : each,
    );
    const controllers = modules.flatMap(
      (each) => (Reflect.getMetadata('controllers', each as object) as (new () => object)[]) ?? [],
    );
    const handlers = controllers.flatMap(({ prototype }) =>
      Object.getOwnPropertyNames(prototype)
        .filter((name) => name !== 'constructor')
        .map((name) => prototype[name] as object)
        .filter((handler) => typeof handler === 'function' && Reflect.hasMetadata('path', handler)),
    );
    expect(handlers.filter((handler) => !Reflect.hasMetadata(admissionKey, handler))).toEqual([]);
    expect(handlers).toHaveLength(document.routes.length);
  });

  it.each(columns)('admits the %s where the table says so and nowhere else', async (role) => {
    const before = await tableContents(sql, { written: true });
    const wrong: string[] = [];
    for (const [headers, routes] of [
      [byToken(person(role)), ofStudio()],
      // The guard knows by then who asks, and no longer by what.
      [byCookie(person(role)), someOf(ofStudio())],
    ] as const) {
      for (const route of routes) {
        const answer = await knock(route, headers);
        if (admitted(answer) === mayUse(route.name, role)) continue;
        wrong.push(`${route.name}: ${answer.status} ${answer.body.detail}`);
      }
    }
    expect(wrong).toEqual([]);
    expect(differences(before, await tableContents(sql, { written: true }))).toEqual([]);
  });

  it('lets everybody at what is open, those signed in at themselves, and only a browser at its account', async () => {
    for (const role of columns) {
      for (const route of document.routes.filter(({ name }) => name in otherRoutes)) {
        // Signing out would end what the other tests go by.
        if (route.name === 'POST /api/v1/sign-out') continue;
        const kind = otherRoutes[route.name];
        const [token, cookie] = [
          await knock(route, byToken(person(role))),
          await knock(route, byCookie(person(role))),
        ];
        if (kind === 'tablet') expect([token.status, cookie.status], route.name).toEqual(turnedAway(route));
        else expect([admitted(token), admitted(cookie)], route.name).toEqual([kind !== 'in person', true]);
      }
    }
  });

  /** How a browser that is no tablet is answered, by token and by cookie. */
  const turnedAway = ({ method }: ApiRoute) => (method === 'GET' ? [404, 404] : [403, 403]);

  it('lets no token make a tablet of whatever presents it', async () => {
    const refused = await service.post<ProblemBody>('/tablets', { name: 'Room 1' });
    expect([refused.status, refused.body.code]).toEqual([403, 'not-allowed']);
  });

  it('lets everybody do tray work and nothing else on a shared tablet', async () => {
    const enrolled = await fetch(`${service.studio}/tablets`, {
      method: 'POST',
      headers: { 'content-type': 'application/json', ...byCookie({ cookie: await signInOwner(service) }) },
      body: JSON.stringify({ id: uuidv7(), name: 'Room 2' }),
    });
    expect(enrolled.status).toBe(201);
    const tablet = cookiesOf(enrolled);
    const wrong: string[] = [];
    for (const role of columns) {
      const { personId, cookie } = person(role);
      const pin = await service.send(
        'PUT',
        `${service.url}/api/v1/me/studios/${service.studioId}/pin`,
        { pin: '7294' },
        { cookie },
      );
      if (role === 'auditor' || role === 'chain manager') {
        // Who does no tray work gets no PIN, and so no further than the tablet itself.
        expect(pin.status, role).toBe(409);
        continue;
      }
      expect(pin.status, role).toBe(200);
      const switched = await fetch(`${service.url}/api/v1/tablet/switch`, {
        method: 'POST',
        headers: { 'content-type': 'application/json', cookie: tablet },
        body: JSON.stringify({ personId, pin: '7294' }),
      });
      expect(switched.status).toBe(204);
      const headers = byCookie({ cookie: `${tablet}; ${cookiesOf(switched)}` });
      // The owner may do all that anybody may, so what the tablet refuses shows with them.
      const routes = role === 'owner' ? document.routes : someOf(document.routes);
      for (const route of routes) {
        if (route.name === 'POST /api/v1/sign-out') continue;
        const kind = otherRoutes[route.name];
        const may =
          kind === undefined ? mayUse(route.name, role) && onTablet(route.name) : kind !== 'in person';
        const answer = await knock(route, headers);
        if (admitted(answer) !== may)
          wrong.push(`${role}, ${route.name}: ${answer.status} ${answer.body.detail}`);
      }
    }
    expect(wrong).toEqual([]);
  });

  it('asks whoever is not signed in to do so, but for what is open', async () => {
    const before = await tableContents(sql, { written: true });
    for (const route of document.routes) {
      const { status, body } = await knock(route, { cookie: '' });
      const isOpen = otherRoutes[route.name] === 'anyone';
      if (isOpen) expect([401, 403], route.name).not.toContain(status);
      else if (otherRoutes[route.name] === 'tablet') expect(turnedAway(route), route.name).toContain(status);
      else expect([status, body.code], route.name).toEqual([401, 'sign-in-needed']);
    }
    expect(differences(before, await tableContents(sql, { written: true }))).toEqual([]);
  });

  it('lets a token do what its one scope says, which is the permission in the document, and nothing of any other', async () => {
    const tokens = new Map<string, string>();
    for (const scope of permissions) {
      tokens.set(scope, await tokenFor(service, person('owner').cookie, service.studioId, [scope]));
    }
    const wrong: string[] = [];
    for (const [index, route] of ofStudio().entries()) {
      const needed = route.permission as Permission;
      const others = permissions.filter((scope) => scope !== needed);
      const other = others[index % others.length] as Permission;
      for (const [scope, expected] of [
        [needed, true],
        [other, false],
      ] as const) {
        const answer = await knock(route, byToken({ token: tokens.get(scope) ?? '' }));
        if (admitted(answer) !== expected) wrong.push(`${route.name} with "${scope}": ${answer.status}`);
      }
    }
    expect(wrong).toEqual([]);
  });

  it('lets an auditor change nothing, whatever is sent', async () => {
    const before = await tableContents(sql, { written: true });
    const auditor = person('auditor');
    const answered: string[] = [];
    const triedByCookie = new Set<string>();
    for (const { method, address, body } of life.filter((sent) => sent.method !== 'GET')) {
      const route = document.routeOf(method, address);
      if (route?.isOfStudio !== true || route.name === 'POST /audit-log/exports') continue;
      // How somebody is told, and where, is their own affair.
      if (route.permission === 'be told of alerts') continue;
      const isWrite = body !== null && typeof body === 'object' && 'id' in body;
      const isFurther = triedByCookie.has(route.name) && !process.env.SOAK;
      triedByCookie.add(route.name);
      for (const headers of [byToken(auditor), ...(isFurther ? [] : [byCookie(auditor)])]) {
        const answer = await service.send(
          method,
          address,
          isWrite ? { ...body, id: uuidv7() } : body,
          headers,
        );
        if (answer.status !== 403) answered.push(route.name);
      }
    }
    expect([...new Set(answered)].sort()).toEqual(reading.filter((name) => !/exports/.test(name)).sort());
    expect(differences(before, await tableContents(sql, { written: true }))).toEqual([]);
    // What is left of an export is that it was made.
    const exported = await service.post('/audit-log/exports', {}, byToken(auditor));
    expect(exported.status).toBe(201);
    const changed = differences(before, await tableContents(sql, { written: true }));
    expect(changed.map((line) => line.split(':')[0])).toEqual(['accepted_request', 'audit_entry']);
  });

  /** An answer as text, that of a PDF too. */
  const textOf = async (
    method: string,
    address: string,
    body: unknown,
    headers: Record<string, string>,
  ): Promise<string> => {
    const response = await service.fetch(address, {
      method,
      headers: { 'content-type': 'application/json', ...headers },
      body: JSON.stringify(body),
    });
    const bytes = Buffer.from(await response.arrayBuffer());
    return response.headers.get('content-type') === 'application/pdf'
      ? pagesOf(bytes).map(textOn).join('\n')
      : bytes.toString('utf8');
  };

  it('shows neither the auditor nor the chain manager anything that is said of a client', {
    timeout: 180_000,
  }, async () => {
    // What is said of a client stands with the first as with the fortieth of a kind.
    const options = process.env.SOAK ? {} : { mostOfKind: 12 };
    const owner = await walkStudio(service, document, options);
    expect(owner.answers.filter(({ text }) => text.includes('Quillona')).length).toBeGreaterThan(10);
    for (const role of ['auditor', 'chain manager'] as const) {
      const { answers } = await walkStudio(service, document, { ...options, headers: byToken(person(role)) });
      const texts = answers.map(({ address, text }) => ({ address, text }));
      for (const name of [...reading, 'POST /labels', 'POST /clients/search']) {
        const sent = life.filter(({ method, address }) => document.routeOf(method, address)?.name === name);
        expect(sent.length, name).toBeGreaterThan(0);
        for (const { method, address, body } of sent) {
          const again = 'id' in (body as object) ? { ...(body as object), id: uuidv7() } : body;
          texts.push({ address, text: await textOf(method, address, again, byToken(person(role))) });
        }
      }
      expect(texts.filter(({ text }) => text.includes('Quillona')).map(({ address }) => address)).toEqual([]);
      expect(answers.filter(({ answer }) => answer.status < 300).length).toBeGreaterThan(50);
    }
  });

  it('lets a chain manager make nobody, not even themselves, somebody who is shown clients', async () => {
    const head = byToken(person('chain manager'));
    const { personId } = person('chain manager');
    const people = await service.seen<{ id: string; version: number }[]>('/people');
    const versionOf = (id: string) => people.find((each) => each.id === id)?.version;
    const before = await tableContents(sql, { written: true });
    const artistId = person('artist').personId;
    for (const [method, path, body] of [
      ['PATCH', `/people/${personId}`, { version: versionOf(personId), role: 'owner' }],
      [
        'PATCH',
        `/people/${artistId}`,
        { version: versionOf(artistId), role: 'auditor', until: '2099-12-31' },
      ],
      ['POST', '/people', { name: 'Somebody', role: 'artist' }],
      ['POST', `/people/${person('owner').personId}/invitation`, {}],
      ['POST', `/people/${artistId}/invitation`, {}],
    ] as const) {
      const answer = await service.send<ProblemBody>(method, path, { id: uuidv7(), ...body }, head);
      expect([answer.status, answer.body.code], `${method} ${path}`).toEqual([403, 'not-allowed']);
    }
    expect(differences(before, await tableContents(sql, { written: true }))).toEqual([]);
    const visitor = { name: 'Inspector', role: 'auditor', until: '2099-12-31' };
    const invited = await service.made<{ id: string }>('/people', visitor, head);
    await service.made(`/people/${invited.id}/invitation`, {}, head);
  });

  it('ends an auditor’s visit with the last day', async () => {
    const { personId, token, cookie } = person('auditor');
    const [seen] = (await service.seen<{ id: string; version: number }[]>('/people')).filter(
      ({ id }) => id === personId,
    );
    const ended = await service.patch(`/people/${personId}`, { version: seen?.version, until: '2020-01-31' });
    expect(ended.status).toBe(200);
    for (const headers of [byToken({ token }), byCookie({ cookie })]) {
      for (const route of someOf(ofStudio())) {
        const { status, body } = await knock(route, headers);
        expect([status, body.code], route.name).toEqual([404, 'not-found']);
      }
    }
  });
});
