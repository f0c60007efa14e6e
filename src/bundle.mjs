/**
 * Joins the built service and what it needs into few files in dist/service: one start reads some three thousand files
 * otherwise, which takes longer than all else it does. Nothing is shortened, so that stacks stay readable; what is not
 * joined is taken from node_modules as ever.
 */
import { fileURLToPath } from 'node:url';
import { rolldown } from 'rolldown';

/** Threads are files of their own, which the service finds beside itself. */
const programs = {
  main: 'src/main.js',
  cli: 'src/cli.js',
  worker: 'src/worker.js',
  'backup.worker': 'src/operations/backup/backup.worker.js',
  'verify.worker': 'src/operations/verify/verify.worker.js',
  'spreadsheet.worker': 'src/platform/spreadsheet.worker.js',
  'plan.worker': 'src/reorder/plan/plan.worker.js',
};

const left = [
  // TypeORM loads these by name, and there may be no second copy of what is set in them.
  'better-sqlite3',
  'pg',
  // Compiled code.
  'argon2',
  // These find files of their own.
  'pdfkit',
  'pino',
  'swagger-ui-dist',
  // Loaded when they are needed.
  'bullmq',
  'ioredis',
  '@simplewebauthn/server',
  '@peculiar/x509',
];

/** Nest and TypeORM use some packages where they are installed; a file is never missing for good reason. */
const isMissingPackage = ({ code, message }) =>
  code === 'UNRESOLVED_IMPORT' && /resolve '[^./]/.test(message);

const dist = fileURLToPath(new URL('../dist/', import.meta.url));
const bundle = await rolldown({
  input: Object.fromEntries(Object.entries(programs).map(([name, file]) => [name, dist + file])),
  platform: 'node',
  external: (id) => left.some((name) => id === name || id.startsWith(`${name}/`)),
  onLog(level, log, otherwise) {
    if (!isMissingPackage(log)) otherwise(level, log);
  },
});
// Nest and TypeORM go by the names of classes.
await bundle.write({ dir: `${dist}service`, cleanDir: true, format: 'esm', keepNames: true });
