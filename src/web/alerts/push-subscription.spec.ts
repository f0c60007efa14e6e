import { afterEach, expect, it, vi } from 'vitest';
import { subscribeToPush } from './push-subscription.js';

afterEach(() => vi.unstubAllGlobals());

/** A browser that may be told of alerts, and whose owner says this when they are asked. */
function browserWhoseOwnerSays(answer: NotificationPermission) {
  const Notification = { permission: 'default', requestPermission: async () => answer };
  const registration = { pushManager: { getSubscription: async () => null } };
  vi.stubGlobal('window', { isSecureContext: true, PushManager: {}, Notification });
  vi.stubGlobal('Notification', Notification);
  vi.stubGlobal('navigator', { serviceWorker: { getRegistration: async () => registration } });
}

it.each([
  ['denied', 'not allowed'],
  // Nothing in the settings of the browser would have to be changed.
  ['default', 'not answered'],
] as const)('says of a question that was answered %s that it is %s', async (answer, obstacle) => {
  browserWhoseOwnerSays(answer);
  expect(await subscribeToPush('')).toBe(obstacle);
});
