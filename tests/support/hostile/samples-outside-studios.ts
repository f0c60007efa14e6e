import { randomBytes } from 'node:crypto';
import { v7 as uuidv7 } from 'uuid';
import { type ApiDocument, addressOf } from '../api-document.js';
import type { SeededRandom } from '../random.js';
import { type RunningService, testOwner } from '../service.js';
import { cookiesOf, personOfRole, signInOwner } from '../signing-in.js';
import type { Sample } from './hostile-requests.js';
import { awkwardTexts } from './hostile-values.js';
import { StolenPasskey } from './stolen-passkey.js';

/** How somebody gets in, or changes how they do: what a stranger reaches, and a browser that somebody else sits at. */
export async function samplesOutsideStudios(
  service: RunningService,
  document: ApiDocument,
): Promise<Sample[]> {
  const owner = { cookie: await signInOwner(service) };
  const tablet = { cookie: await enrolTablet(service) };
  const manager = await personOfRole(service, 'manager');
  const passkey = await StolenPasskey.of(service, manager);
  const invited = await service.made<{ id: string }>('/people', { name: 'Some guest', role: 'artist' });
  const { link } = await service.made<{ link: string }>(`/people/${invited.id}/invitation`);
  const secretOfLink = link.split('#')[1] ?? '';
  const calendar = await service.made<{ url: string }>('/calendar-address', {}, owner);

  const sample = (name: string, given: Partial<Sample> = {}): Sample => {
    const route = document.routes.find((each) => each.name === name);
    if (!route) throw new Error(`There is no ${name} any more.`);
    const values = {
      studioId: service.studioId,
      passkeyId: uuidv7(),
      file: calendar.url.split('/').at(-1) ?? '',
    };
    const target = addressOf({ url: '' }, route, values);
    return { route, target, body: undefined, headers: { cookie: '' }, ...given };
  };
  const freshly =
    (
      body: (random: SeededRandom) => unknown,
      headers: Record<string, string> = { cookie: '' },
    ): Sample['fresh'] =>
    async (random) => ({
      body: body(random),
      // From everywhere, so that few have to wait for the wrong attempts of the others.
      headers: { ...headers, 'x-forwarded-for': someAddress(random) },
    });
  const newAccount = (random: SeededRandom) => ({
    signInName: random.pick(awkwardTexts),
    // Refused, so that the link stays good.
    password: random.pick(['short', '111111111111', 'passwordpassword']),
  });

  return [
    sample('GET /health/live'),
    sample('GET /health/ready'),
    sample('GET /api/v1/set-up'),
    sample('POST /api/v1/set-up', {
      fresh: freshly((random) => ({
        ...newAccount(random),
        secret: someSecret(random),
        studioName: random.pick(awkwardTexts),
        timeZone: 'Europe/Vienna',
        ownerName: random.pick(awkwardTexts),
      })),
    }),
    sample('POST /api/v1/sign-in', {
      fresh: freshly((random) => ({
        signInName: random.pick([testOwner.signInName, ...awkwardTexts]),
        password: random.pick([`${testOwner.password}\u0000`, '\ud800', ...awkwardTexts]),
      })),
    }),
    sample('POST /api/v1/sign-in/passkey/options', { changesNothing: true }),
    sample('POST /api/v1/sign-in/passkey', { fresh: (random) => passkey.wrongAnswer(random) }),
    sample('POST /api/v1/sign-out', { changesNothing: true }),
    sample('POST /api/v1/invitation/look', { fresh: freshly((random) => ({ secret: someSecret(random) })) }),
    sample('POST /api/v1/invitation/look', {
      changesNothing: true,
      fresh: freshly(() => ({ secret: secretOfLink })),
    }),
    sample('POST /api/v1/invitation/accept', {
      fresh: freshly((random) => ({ ...newAccount(random), secret: someSecret(random) })),
    }),
    sample('POST /api/v1/invitation/accept', {
      fresh: freshly((random) => ({ ...newAccount(random), secret: secretOfLink })),
    }),
    sample('GET /api/v1/calendars/{file}'),
    sample('GET /api/v1/tablet', { headers: tablet }),
    sample('POST /api/v1/tablet/switch', {
      fresh: freshly((random) => {
        const badge = `LB${randomBytes(20).toString('hex')}`;
        return { badge: random.pick([badge, badge.toUpperCase(), ...awkwardTexts]) };
      }, tablet),
    }),
    sample('POST /api/v1/tablet/switch', {
      fresh: freshly((random) => {
        const personId = random.pick([manager.personId, uuidv7()]);
        return { personId, pin: random.pick(['7294', '0000', '٧٢٩٤', "' OR 1", '-1', '1e3']) };
      }, tablet),
    }),
    sample('GET /api/v1/studios', { headers: {} }),
    sample('GET /api/v1/me', { headers: {} }),
    sample('GET /api/v1/me', { headers: owner }),
    sample('GET /api/v1/me/sign-ins', { headers: owner }),
    sample('POST /api/v1/me/sign-ins/end', { fresh: freshly(() => ({ signInId: uuidv7() }), owner) }),
    sample('POST /api/v1/me/password', {
      fresh: freshly(
        (random) => ({ currentPassword: random.pick(awkwardTexts), newPassword: random.pick(awkwardTexts) }),
        owner,
      ),
    }),
    // It is the only way in that the owner has.
    sample('POST /api/v1/me/password/removal', { headers: owner }),
    sample('GET /api/v1/me/passkeys', { headers: owner }),
    sample('POST /api/v1/me/passkeys/options', { headers: owner, changesNothing: true }),
    sample('POST /api/v1/me/passkeys', {
      fresh: (random) => passkey.wrongRegistration(random, owner.cookie),
    }),
    sample('PATCH /api/v1/me/passkeys/{passkeyId}', {
      fresh: freshly((random) => ({ name: random.pick(awkwardTexts), version: 1 }), owner),
    }),
    sample('POST /api/v1/me/passkeys/{passkeyId}/removal', { headers: owner }),
    sample('GET /api/v1/me/studios/{studioId}/pin', { headers: owner }),
    sample('PUT /api/v1/me/studios/{studioId}/pin', {
      fresh: freshly(
        (random) => ({ pin: random.pick(['1234', '0000', '٧٢٩٤', '-729', '7e4', '🜂🜂🜂🜂']) }),
        owner,
      ),
    }),
    // There is none.
    sample('POST /api/v1/me/studios/{studioId}/pin/removal', { headers: owner }),
  ];
}

/** What the work behind each route answers; a code, or the status where there is none. Before it stand forms and sign-ins. */
export const answersOutsideStudios: Readonly<Record<string, string>> = {
  'GET /health/live': '200',
  'GET /health/ready': '200',
  'GET /api/v1/set-up': '200',
  'POST /api/v1/set-up': 'unusable-link',
  'POST /api/v1/sign-in': 'sign-in-failed',
  'POST /api/v1/sign-in/passkey/options': '200',
  'POST /api/v1/sign-in/passkey': 'sign-in-failed',
  'POST /api/v1/sign-out': '204',
  'POST /api/v1/invitation/look': 'unusable-link',
  'POST /api/v1/invitation/accept': 'unusable-password',
  'GET /api/v1/calendars/{file}': '200',
  'GET /api/v1/tablet': '200',
  'POST /api/v1/tablet/switch': 'sign-in-failed',
  'GET /api/v1/studios': '200',
  'GET /api/v1/me': '200',
  'GET /api/v1/me/sign-ins': '200',
  'POST /api/v1/me/sign-ins/end': 'not-found',
  'POST /api/v1/me/password': 'sign-in-failed',
  'POST /api/v1/me/password/removal': 'wrong-state',
  'GET /api/v1/me/passkeys': '200',
  'POST /api/v1/me/passkeys/options': '200',
  'POST /api/v1/me/passkeys': 'unusable-passkey',
  'PATCH /api/v1/me/passkeys/{passkeyId}': 'not-found',
  'POST /api/v1/me/passkeys/{passkeyId}/removal': 'not-found',
  'GET /api/v1/me/studios/{studioId}/pin': '200',
  'PUT /api/v1/me/studios/{studioId}/pin': 'unusable-pin',
  'POST /api/v1/me/studios/{studioId}/pin/removal': 'wrong-state',
};

/** The cookie of a browser that is one. */
async function enrolTablet(service: RunningService): Promise<string> {
  const enrolled = await service.fetch(`${service.studio}/tablets`, {
    method: 'POST',
    headers: { 'content-type': 'application/json', cookie: await signInOwner(service) },
    body: JSON.stringify({ id: uuidv7(), name: 'Attacked' }),
  });
  if (enrolled.status !== 201) throw new Error(`No tablet: ${await enrolled.text()}`);
  return cookiesOf(enrolled);
}

function someSecret(random: SeededRandom): string {
  return random.pick([randomBytes(32).toString('base64url'), ...awkwardTexts]);
}

function someAddress(random: SeededRandom): string {
  const part = () => random.below(256);
  return random.pick([
    () => `10.${part()}.${part()}.${part()}`,
    () => `2001:db8:${part().toString(16)}:${part().toString(16)}::1`,
    () => `${part()}' OR '1'='1`,
    () => `::ffff:${part()}.${part()}`,
    () => `${part()}%eth0::${':'.repeat(part())}`,
  ])();
}
