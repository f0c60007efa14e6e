/**
 * Joins the built service and what it needs into few files in dist/service: one start reads some three thousand files
 * otherwise, which takes longer than all else it does. Nothing is shortened, so that stacks stay readable; what is not
 * joined is taken from node_modules as ever. Then the service is started once, so that the code that V8 makes of the files
 * is kept beside them: CommonJS, since Node can keep only that of modules of its old kind.
 */
import { spawn } from 'node:child_process';
import { copyFileSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
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
  'replay.worker': 'src/reorder/plan/replay.worker.js',
  'plan-items.worker': 'src/reorder/plan/plan-items.worker.js',
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
const service = `${dist}service/`;
await bundle.write({
  dir: service,
  cleanDir: true,
  format: 'cjs',
  entryFileNames: '[name].cjs',
  chunkFileNames: '[name]-[hash].cjs',
  // What runs from kept code has no way to call Node's `import()`.
  dynamicImportInCjs: false,
  // Nest and TypeORM go by the names of classes.
  keepNames: true,
});
writeFileSync(`${service}package.json`, '{ "type": "commonjs" }\n');
copyFileSync(new URL('joined-program.cjs', import.meta.url), `${service}joined-program.cjs`);
for (const name of Object.keys(programs)) {
  writeFileSync(`${service}${name}.js`, "require('./joined-program.cjs')(__filename);\n");
}

/** Runs a program once for its code, and ends it when it is ready. */
function leaveCode(program, parameters, dataFolder) {
  const child = spawn(process.execPath, [service + program, ...parameters], {
    env: { PATH: process.env.PATH, PORT: '0', DATA_DIR: dataFolder, LOTWARD_LEAVE_COMPILED: '1' },
    stdio: ['ignore', 'pipe', 'ignore'],
  });
  let said = '';
  child.stdout.setEncoding('utf8').on('data', (text) => {
    said += text;
    if (said.includes('is ready')) child.kill('SIGTERM');
  });
  return new Promise((resolve) => child.once('close', resolve));
}

const dataFolder = mkdtempSync(join(tmpdir(), 'lotward-build-'));
try {
  const codes = [
    await leaveCode('main.js', [], dataFolder),
    await leaveCode('cli.js', ['--help'], dataFolder),
  ];
  if (codes.some((code) => code !== 0)) {
    process.stderr.write('The service could not be started here once; its starts will take longer.\n');
  }
} finally {
  rmSync(dataFolder, { recursive: true, force: true });
}
