import { availableParallelism } from 'node:os';
import { defineConfig } from 'vitest/config';
import { LongestFirst } from './tests/support/longest-first.js';

const setupFiles = ['tests/support/property-seed.ts'];

export default defineConfig({
  test: {
    // More than there are processors, since a test often waits for a service or a browser of its own.
    maxWorkers: availableParallelism() + 2,
    sequence: { sequencer: LongestFirst },
    projects: [
      {
        test: {
          name: 'rules and units',
          include: ['src/**/*.spec.ts'],
          exclude: ['src/web/**'],
          environment: 'node',
          setupFiles,
          // Rules share nothing that could be left behind, nor do units of the pages.
          isolate: false,
          // A property that takes a second takes many while other tests keep the machine busy.
          testTimeout: 60_000,
        },
      },
      {
        test: {
          name: 'web app',
          include: ['src/web/**/*.spec.ts'],
          environment: 'node',
          setupFiles,
          isolate: false,
          testTimeout: 60_000,
        },
      },
      {
        test: {
          name: 'end to end',
          include: ['tests/**/*.spec.ts'],
          globalSetup: ['tests/support/global-set-up.ts'],
          environment: 'node',
          setupFiles,
          // Files share what they import; what they test runs in processes and browsers of its own.
          isolate: false,
          testTimeout: 60_000,
          hookTimeout: 120_000,
          // What is waited for takes longer while other tests keep the machine busy.
          expect: { poll: { timeout: 15_000 } },
        },
      },
    ],
  },
});
