import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    projects: [
      {
        test: {
          name: 'rules and units',
          include: ['src/**/*.spec.ts'],
          exclude: ['src/web/**'],
          environment: 'node',
        },
      },
      {
        test: {
          name: 'web app',
          include: ['src/web/**/*.spec.ts'],
          environment: 'node',
        },
      },
      {
        test: {
          name: 'end to end',
          include: ['tests/**/*.spec.ts'],
          globalSetup: ['tests/support/global-set-up.ts'],
          environment: 'node',
          testTimeout: 60_000,
          hookTimeout: 120_000,
        },
      },
    ],
  },
});
