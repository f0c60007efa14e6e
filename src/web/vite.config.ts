import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';
import { appFiles, compressedFiles, serviceWorkerName } from './offline/app-files.js';

/** The web app. `npx vite src/web` serves it while it is written, on top of a service that runs on port 3000. */
export default defineConfig({
  plugins: [react(), appFiles(), compressedFiles()],
  build: {
    outDir: '../../dist/web',
    emptyOutDir: true,
    // Everything is a file of its own, which the content policy lets pass.
    assetsInlineLimit: 0,
    target: 'es2022',
    // kB as they lie on the disk; less than a third of it goes over the network.
    chunkSizeWarningLimit: 750,
    rolldownOptions: {
      // How long the parts of a build take is nothing to be told at a start.
      checks: { bundlerTimings: false },
      input: {
        index: fileURLToPath(new URL('index.html', import.meta.url)),
        [serviceWorkerName]: fileURLToPath(new URL('offline/service-worker.ts', import.meta.url)),
      },
      output: {
        entryFileNames: ({ name }) => (name === serviceWorkerName ? '[name].js' : 'assets/[name]-[hash].js'),
      },
    },
  },
  // Named after its file, `….worker-….js`: the service gives it a content policy of its own.
  worker: { format: 'es' },
  server: {
    proxy: { '/api': 'http://127.0.0.1:3000' },
  },
});
