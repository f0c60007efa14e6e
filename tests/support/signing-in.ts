import { v7 as uuidv7 } from 'uuid';
import type { PersonView } from '../../src/identity/people.views.js';
import { type Permission, permissionsOf, type Role } from '../../src/identity/permissions.js';
import { systemActor } from '../../src/platform/actor.js';
import { commandLine } from './commands.js';
import { type RunningService, testOwner } from './service.js';
import { Store } from './store.js';

/** A password that may be used. */
export const testPassword = 'seven slow kites under glass';

/** The cookies that an answer sets, as they are sent back. */
export function cookiesOf(response: Response): string {
  return response.headers
    .getSetCookie()
    .map((each) => each.split(';')[0] ?? '')
    .filter((each) => !each.endsWith('='))
    .join('; ');
}

async function signedIn(service: RunningService, step: string, body: object): Promise<string> {
  const response = await fetch(`${service.url}/api/v1/${step}`, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify(body),
  });
  if (response.status !== 204) {
    throw new Error(`${step} was answered ${response.status}: ${await response.text()}`);
  }
  return cookiesOf(response);
}

/** Accepts an invitation with a new account. @returns cookies of whoever came in */
export function acceptInvitation(service: RunningService, link: string, signInName: string): Promise<string> {
  const secret = link.split('#')[1] ?? '';
  return signedIn(service, 'invitation/accept', { secret, signInName, password: testPassword });
}

/** Signs the owner of the tests in. @returns cookies */
export function signInOwner(service: RunningService): Promise<string> {
  return signedIn(service, 'sign-in', testOwner);
}

/** A token of whoever the cookies belong to, with all they may do. */
export async function tokenFor(
  service: RunningService,
  cookie: string,
  studioId: string,
  scopes: readonly Permission[],
): Promise<string> {
  const answer = await service.send<{ token: string }>(
    'POST',
    `${service.url}/api/v1/studios/${studioId}/tokens`,
    { id: uuidv7(), name: 'tests', scopes, days: 30 },
    { cookie },
  );
  if (answer.status !== 201) throw new Error(`No token: ${JSON.stringify(answer.body)}`);
  return answer.body.token;
}

/** Somebody of a studio who signed in at a browser. */
export interface SignedInPerson {
  personId: string;
  cookie: string;
}

/** Adds a person of a role who accepted their invitation. */
export async function personOfRole(service: RunningService, role: Role): Promise<SignedInPerson> {
  const person = await service.made<PersonView>('/people', {
    name: `Some ${role}`,
    role,
    ...(role === 'auditor' && { until: '2099-12-31' }),
  });
  const { link } = await service.made<{ link: string }>(`/people/${person.id}/invitation`);
  const cookie = await acceptInvitation(service, link, `${uuidv7()}@studio.example`);
  return { personId: person.id, cookie };
}

/** A token of a person, with every scope there is: what they may do is up to their role. Made past the service. */
export async function tokenOfPerson(service: RunningService, personId: string): Promise<string> {
  const store = await Store.open(service.dataFolder, service.databaseUrl);
  try {
    const { studioId } = service;
    const actor = { ...systemActor({ id: studioId, chainId: '', timeZone: 'UTC' }), personId };
    return (await store.seenBy(service, actor)).token;
  } finally {
    await store.close();
  }
}

/** A studio beside the one of the tests, with a token of its owner. */
export interface FurtherStudio {
  studioId: string;
  token: string;
}

/** Adds a studio to the chain; its owner is the same. */
export async function studioOfSameChain(service: RunningService): Promise<FurtherStudio> {
  const { studioId } = await service.made<{ studioId: string }>('/chain/studios', {
    name: 'Sister studio',
    timeZone: 'Europe/Vienna',
  });
  const cookie = await signInOwner(service);
  return { studioId, token: await tokenFor(service, cookie, studioId, permissionsOf('owner')) };
}

/** Makes a studio of other people in the same service, in a chain of its own. */
export async function studioOfOtherChain(
  service: RunningService,
): Promise<FurtherStudio & { cookie: string; personId: string }> {
  const store = await Store.open(service.dataFolder, service.databaseUrl);
  const { studioId, personId } = await store.makeStudio().finally(() => store.close());
  const printed = await commandLine(
    service,
    ...['sign-in-link', '--studio', studioId, '--person', personId ?? ''],
  );
  const link = printed.trim().split('\n').at(-1) ?? '';
  const cookie = await acceptInvitation(service, link, `${uuidv7()}@other.example`);
  const token = await tokenFor(service, cookie, studioId, permissionsOf('owner'));
  return { studioId, token, cookie, personId: personId ?? '' };
}
