import { createHash } from 'node:crypto';
import type { Plugin } from 'vite';

/** The service worker is the one script whose name never changes, since browsers look for another version under it. */
export const serviceWorkerName = 'service-worker';

/** Tells the service worker every file of the build, so that a device can keep the whole app. */
export function appFiles(): Plugin {
  return {
    name: 'lotward-app-files',
    generateBundle(_, bundle) {
      const files = Object.keys(bundle)
        .filter((file) => file.startsWith('assets/'))
        .map((file) => `/${file}`)
        .sort();
      const version = createHash('sha256').update(files.join('\n')).digest('hex').slice(0, 16);
      const worker = bundle[`${serviceWorkerName}.js`];
      if (worker?.type !== 'chunk') throw new Error('The build has no service worker.');
      worker.code = worker.code
        .replaceAll('__FILES__', JSON.stringify(files))
        .replaceAll('__VERSION__', JSON.stringify(version));
    },
  };
}
