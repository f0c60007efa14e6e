import { createHash } from 'node:crypto';
import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { brotliCompress, constants, gzip } from 'node:zlib';
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

/** Beside its last steps a better quality takes ten times as long, for two hundredths of the size. */
const brotliQuality = 9;

/** Writes each file compressed beside it, so that the service compresses nothing while it serves. */
export function compressedFiles(): Plugin {
  return {
    name: 'lotward-compressed-files',
    async writeBundle({ dir = '' }, bundle) {
      const files = Object.keys(bundle).filter((file) => /^assets\/.*\.(js|css|svg|wasm)$/.test(file));
      await Promise.all(
        files.map(async (file) => {
          const path = join(dir, file);
          const content = await readFile(path);
          const params = { [constants.BROTLI_PARAM_QUALITY]: brotliQuality };
          await writeFile(`${path}.br`, await promisify(brotliCompress)(content, { params }));
          await writeFile(`${path}.gz`, await promisify(gzip)(content, { level: 9 }));
        }),
      );
    },
  };
}
