/**
 * Lets the app open without network from now on. Browsers do that only where the address is to be trusted (HTTPS with a
 * certificate they accept, or localhost); elsewhere the app works as long as the service is reached.
 */
export function keepAppOnDevice(): void {
  if (!import.meta.env.PROD || !('serviceWorker' in navigator)) return;
  navigator.serviceWorker.register('/service-worker.js').catch(() => undefined);
}
