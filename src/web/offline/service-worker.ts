/// <reference lib="webworker" />
/**
 * Lets the app open without network: its files are kept on the device, its one page as it was last served. Nothing that
 * the API answers is ever kept here. Files of the version before stay one version longer, for pages that are still open.
 * What is sent to this device is shown, and leads to a page of this app only.
 */
import { addressOf, pushedNotice } from './pushed-notice.js';

/** Put in by the build: every file of the app, and a digest of all of them. */
declare const __FILES__: string[];
declare const __VERSION__: string;

const worker = globalThis as unknown as ServiceWorkerGlobalScope;

const prefix = 'lotward-app-';
const cacheName = `${prefix}${__VERSION__}`;
const page = '/';
/** A page that does not come in this time is taken from the device. */
const pageMilliseconds = 3_000;

worker.addEventListener('install', (event) => {
  event.waitUntil(
    (async () => {
      const cache = await caches.open(cacheName);
      try {
        await cache.addAll([page, ...__FILES__]);
      } catch (error) {
        // Half a version must not count as the one before.
        await caches.delete(cacheName);
        throw error;
      }
      await worker.skipWaiting();
    })(),
  );
});

worker.addEventListener('activate', (event) => {
  event.waitUntil(
    (async () => {
      // In the order in which they were made.
      const ours = (await caches.keys()).filter((name) => name.startsWith(prefix) && name !== cacheName);
      await Promise.all(ours.slice(0, -1).map((name) => caches.delete(name)));
      await worker.clients.claim();
    })(),
  );
});

worker.addEventListener('fetch', (event) => {
  const { request } = event;
  const { origin, pathname } = new URL(request.url);
  if (request.method !== 'GET' || origin !== worker.location.origin) return;
  if (pathname.startsWith('/api/') || pathname.startsWith('/health/')) return;
  if (request.mode === 'navigate') event.respondWith(pageOf(request));
  else if (pathname.startsWith('/assets/')) event.respondWith(fileOf(request));
});

worker.addEventListener('push', (event) => {
  const { title, path, tag, body } = pushedNotice(event.data?.text(), worker.location.origin);
  // What takes the place of another is said aloud too: it got worse, or nobody took it on.
  const again = tag !== undefined && { tag, renotify: true };
  const options = { body, icon: '/icons/mark-192.png', data: path, ...again };
  event.waitUntil(worker.registration.showNotification(title, options));
});

worker.addEventListener('notificationclick', (event) => {
  event.notification.close();
  // In a window of its own: what somebody does in another, such as laying a tray, is not taken away.
  const address = addressOf(event.notification.data, worker.location.origin);
  event.waitUntil(worker.clients.openWindow(address));
});

/**
 * From the service when it answers in time, so that an upgrade is seen at once. A fault is no page: it is answered while
 * the service starts or stops, or by something before it.
 */
async function pageOf(request: Request): Promise<Response> {
  const answer = await fetch(request, { signal: AbortSignal.timeout(pageMilliseconds) }).catch(() =>
    Response.error(),
  );
  const isFault = answer.type === 'error' || answer.status >= 500;
  return isFault ? ((await caches.match(page, { cacheName })) ?? answer) : answer;
}

/** A file never changes: another content has another name. */
async function fileOf(request: Request): Promise<Response> {
  return (await caches.match(request)) ?? fetch(request);
}
