import type { PushObstacle } from './push-obstacles.js';

/** Where the maker of the browser takes in what is sent to it, and the keys by which only this browser reads it, base64url. */
export interface PushAddress {
  endpoint: string;
  p256dh: string;
  auth: string;
}

/** What stands in the way before anybody is asked; undefined: nothing that is known of. */
export async function pushObstacle(): Promise<PushObstacle | undefined> {
  if (!window.isSecureContext) return 'insecure address';
  if (!('serviceWorker' in navigator)) return 'not in this browser';
  if (!('PushManager' in window) || !('Notification' in window)) {
    // Safari on a phone lets only apps of the home screen be told of anything.
    return isOnApplePhone() && !isAppOfItsOwn() ? 'home screen first' : 'not in this browser';
  }
  if (Notification.permission === 'denied') return 'not allowed';
  return (await registration()) === undefined ? 'app not kept' : undefined;
}

/** The address this browser has by now; undefined: none. */
export async function currentPushAddress(): Promise<PushAddress | undefined> {
  const subscription = await currentSubscription();
  return subscription && addressOf(subscription);
}

/**
 * Makes an address for this browser, which asks its owner whether they allow it: only to be called when they press
 * something. One that was made for another key is given up for it.
 * @param publicKey of the service, P-256 uncompressed, base64url (RFC 8292)
 */
export async function subscribeToPush(publicKey: string): Promise<PushAddress | PushObstacle> {
  const obstacle = await pushObstacle();
  if (obstacle !== undefined) return obstacle;
  const answer = await Notification.requestPermission();
  // Whoever only closes the question may be asked again; its settings say nothing of it.
  if (answer !== 'granted') return answer === 'denied' ? 'not allowed' : 'not answered';
  const own = await registration();
  if (own === undefined) return 'app not kept';
  const key = bytesOf(publicKey);
  const former = await own.pushManager.getSubscription();
  if (former && !isMadeFor(former, key)) await former.unsubscribe();
  try {
    return addressOf(await own.pushManager.subscribe({ userVisibleOnly: true, applicationServerKey: key }));
  } catch (error) {
    // A refusal apart, browsers say only that the service of their maker did not give them an address.
    return error instanceof DOMException && error.name === 'NotAllowedError' ? 'not allowed' : 'not reached';
  }
}

/** Gives the address up: whatever is still sent to it reaches nobody. */
export async function unsubscribeFromPush(): Promise<void> {
  await (await currentSubscription())?.unsubscribe();
}

async function currentSubscription(): Promise<PushSubscription | undefined> {
  if (!('PushManager' in window)) return undefined;
  return (await (await registration())?.pushManager.getSubscription()) ?? undefined;
}

/** Not `ready`, which would wait for ever where the app is not kept. */
async function registration(): Promise<ServiceWorkerRegistration | undefined> {
  if (!('serviceWorker' in navigator)) return undefined;
  return navigator.serviceWorker.getRegistration('/');
}

function addressOf(subscription: PushSubscription): PushAddress {
  const { endpoint, keys } = subscription.toJSON();
  return { endpoint: endpoint ?? '', p256dh: keys?.p256dh ?? '', auth: keys?.auth ?? '' };
}

function isMadeFor({ options }: PushSubscription, key: Uint8Array): boolean {
  const made = options.applicationServerKey;
  if (made === null) return false;
  const bytes = new Uint8Array(made);
  return bytes.length === key.length && bytes.every((byte, index) => byte === key[index]);
}

function bytesOf(base64url: string): Uint8Array<ArrayBuffer> {
  const binary = atob(base64url.replaceAll('-', '+').replaceAll('_', '/'));
  return Uint8Array.from(binary, (character) => character.charCodeAt(0));
}

/** Newer tablets call themselves computers, but are touched. */
function isOnApplePhone(): boolean {
  const { userAgent, maxTouchPoints } = navigator;
  return /iPhone|iPad/.test(userAgent) || (userAgent.includes('Macintosh') && maxTouchPoints > 1);
}

function isAppOfItsOwn(): boolean {
  return window.matchMedia('(display-mode: standalone)').matches;
}
