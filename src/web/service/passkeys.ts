import {
  browserSupportsWebAuthn,
  type PublicKeyCredentialCreationOptionsJSON,
  type PublicKeyCredentialRequestOptionsJSON,
  startAuthentication,
  startRegistration,
} from '@simplewebauthn/browser';
import { relyingPartyOf } from '../../identity/passkeys/relying-party.js';
import { ServiceProblem } from './problem.js';
import { request } from './request.js';

/** Whether this browser uses passkeys at the address it is at. */
export function passkeysWorkHere(): boolean {
  const { origin } = window.location;
  return browserSupportsWebAuthn() && relyingPartyOf(origin, origin, origin) !== undefined;
}

/** This page as localhost, where passkeys work, when it is open under the bare address of the same machine. */
export function asLocalhost(): string | undefined {
  const { hostname, href } = window.location;
  if (hostname !== '127.0.0.1' && hostname !== '[::1]') return undefined;
  const there = new URL(href);
  there.hostname = 'localhost';
  return there.href;
}

/**
 * Signs in with a passkey; the browser asks which.
 * @throws ServiceProblem also when the browser or the person gave it up: `passkey-not-used`
 */
export async function signInWithPasskey(): Promise<void> {
  const optionsJSON = (await request(
    'POST',
    '/sign-in/passkey/options',
    {},
  )) as unknown as PublicKeyCredentialRequestOptionsJSON;
  const credential = await unlessGivenUp('passkey-not-used', startAuthentication({ optionsJSON }));
  await request('POST', '/sign-in/passkey', {}, { credential: asDescribed(credential) });
}

/**
 * Makes a passkey for whoever is signed in, and adds it to their account.
 * @throws ServiceProblem also when the browser or the person gave it up: `passkey-not-made`
 */
export async function addPasskey(name: string): Promise<void> {
  const optionsJSON = (await request(
    'POST',
    '/me/passkeys/options',
    {},
  )) as unknown as PublicKeyCredentialCreationOptionsJSON;
  const credential = await unlessGivenUp('passkey-not-made', startRegistration({ optionsJSON }));
  await request('POST', '/me/passkeys', {}, { name, credential: asDescribed(credential) });
}

/** Which extensions an authenticator answers to is open, and so an object of any names to the service. */
function asDescribed<Credential extends { clientExtensionResults: object }>(credential: Credential) {
  return {
    ...credential,
    clientExtensionResults: { ...credential.clientExtensionResults } as Record<string, unknown>,
  };
}

async function unlessGivenUp<Credential>(code: string, ceremony: Promise<Credential>): Promise<Credential> {
  try {
    return await ceremony;
  } catch {
    // Browsers do not tell a page why, so that it learns nothing of other passkeys.
    throw new ServiceProblem({ status: 0, code, title: '', detail: '' });
  }
}
