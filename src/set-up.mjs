/**
 * Makes a clone ready to run: installs the packages and builds the service when either is missing or out of date, then
 * runs what it was asked to run in this same process, so that a signal reaches the service itself.
 *
 *   node src/set-up.mjs [built file [arguments]]
 *
 * Guarantees: needs nothing but Node and npm; when all is in place it touches nothing and calls no npm, so it also works
 * without network; a set-up that was interrupted is repaired by the next; two at once do the work once.
 */
import { spawn } from 'node:child_process';
import { createHash } from 'node:crypto';
import {
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  realpathSync,
  renameSync,
  rmSync,
  statSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { constants } from 'node:os';
import { basename, dirname, join, resolve } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';

const root = dirname(dirname(fileURLToPath(import.meta.url)));
const buildMark = join(root, 'dist', '.built-from');
const lock = join(root, '.set-up.lock');

/** What the build reads; specs are left out, since they are not built. */
const buildInputs = [
  'src',
  'migrations',
  'tests/demo',
  'tests/bench',
  'tests/support',
  'tsconfig.json',
  'tsconfig.build.json',
  'nest-cli.json',
  'package-lock.json',
];

const heartbeatMilliseconds = 1_000;
/** A lock whose holder gave no sign for so long was left by a set-up that was killed. */
const lockStaleMilliseconds = 12_000;
const tellEverySeconds = 15;

/** A failure that is told to the reader as it is, without a stack. */
export class SetUpError extends Error {}

function say(text) {
  process.stdout.write(`${text}\n`);
}

/** Node 20.19 and 22.12 are the first that can load ES modules from CommonJS ones, which the packages rely on. */
function checkNode() {
  const [major, minor] = process.versions.node.split('.').map(Number);
  const fits = (major === 20 && minor >= 19) || (major === 22 && minor >= 12) || major >= 23;
  if (fits) return;
  throw new SetUpError(
    `This is Node ${process.versions.node}. Lotward needs Node 20.19 or later in the 20 series, 22.12 or later in the 22 series, or a newer series. Install one from https://nodejs.org and run the command again.`,
  );
}

/**
 * Runs a program in the clone with this terminal and waits for it. Being told to stop, it stops the program first.
 * @returns {Promise<number>} its exit code
 */
export function run(command, parameters, { quiet = false, environment = {} } = {}) {
  return new Promise((settle, fail) => {
    const child = spawn(command, parameters, {
      cwd: root,
      stdio: quiet ? 'ignore' : ['ignore', 'inherit', 'inherit'],
      env: { ...process.env, ...environment },
      shell: process.platform === 'win32' && !command.endsWith('.exe'),
    });
    let stopping;
    const stop = (signal) => {
      stopping = signal;
      child.kill(signal);
    };
    process.on('SIGINT', stop);
    process.on('SIGTERM', stop);
    const forget = () => {
      process.off('SIGINT', stop);
      process.off('SIGTERM', stop);
    };
    child.once('error', (error) => {
      forget();
      fail(error);
    });
    child.once('exit', (code, signal) => {
      forget();
      if (stopping) {
        releaseLock();
        process.exit(128 + constants.signals[stopping]);
      }
      settle(code ?? 128 + (constants.signals[signal] ?? 0));
    });
  });
}

/** Runs the command-line program of an installed package. */
export function runTool(file, parameters, options) {
  return run(process.execPath, [join('node_modules', file), ...parameters], options);
}

function readJson(file) {
  try {
    return JSON.parse(readFileSync(file, 'utf8'));
  } catch {
    return undefined;
  }
}

/**
 * Why the packages have to be installed, or undefined when all are there. npm writes `node_modules/.package-lock.json`
 * when an installation is complete, so an interrupted one shows by its absence.
 */
async function installationFault() {
  const wanted = readJson(join(root, 'package-lock.json'))?.packages;
  if (!wanted) throw new SetUpError('package-lock.json is missing or damaged. Take it from a fresh clone.');
  if (!existsSync(join(root, 'node_modules'))) return 'node_modules is missing';
  const present = readJson(join(root, 'node_modules', '.package-lock.json'))?.packages;
  if (!present) return 'the last installation was not finished';
  for (const [path, { version, optional, devOptional }] of Object.entries(wanted)) {
    if (path === '' || (present[path] === undefined && (optional || devOptional))) continue;
    if (present[path]?.version !== version || !existsSync(join(root, path, 'package.json'))) {
      return `${path} is not the one that package-lock.json names`;
    }
  }
  return (await sqliteLoads()) ? undefined : `the SQLite binding does not load in Node ${process.version}`;
}

/** In a process of its own, since a damaged binding may end the process that loads it. */
async function sqliteLoads() {
  const script = "new (require('better-sqlite3'))(':memory:').close()";
  return (await run(process.execPath, ['-e', script], { quiet: true })) === 0;
}

/** Most installations of Node bring its headers along: with those the binding compiles without fetching them. */
function headersBesideNode() {
  const folder = dirname(dirname(realpathSync(process.execPath)));
  const known = process.env.npm_config_nodedir !== undefined;
  const beside = existsSync(join(folder, 'include', 'node', 'node_version.h'));
  return beside && !known ? { npm_config_nodedir: folder } : {};
}

async function install(reason) {
  say(`Installing packages, since ${reason}.`);
  say(
    'Where no ready-made SQLite binding fits it is compiled, which takes a minute or two. Nothing is asked meanwhile.',
  );
  const started = Date.now();
  const telling = setInterval(() => {
    say(`  still installing, ${Math.round((Date.now() - started) / 1000)} s so far`);
  }, tellEverySeconds * 1000);
  // Warnings of packages about Node 20 are known and say nothing to whoever starts Lotward.
  const parameters = ['ci', '--include=dev', '--no-audit', '--no-fund', '--loglevel=error'];
  const ownNpm = process.env.npm_execpath;
  const options = { environment: headersBesideNode() };
  let code;
  try {
    code =
      ownNpm && basename(ownNpm) === 'npm-cli.js'
        ? await run(process.execPath, [ownNpm, ...parameters], options)
        : await run('npm', parameters, options);
  } catch (error) {
    if (error.code !== 'ENOENT') throw error;
    throw new SetUpError(
      'npm was not found. It comes with Node (on Debian: apt-get install npm). Install it and run the command again.',
    );
  } finally {
    clearInterval(telling);
  }
  if (code !== 0) {
    throw new SetUpError(
      `The packages could not be installed: npm ci ended with ${code}; its own words stand above.
  - When they speak of gyp, make, g++ or Python, the SQLite binding had to be compiled: install Python 3, make and a
    C++ compiler (on Debian: apt-get install python3 make g++).
  - When they speak of the network, the package registry could not be reached.
Then run the command again.`,
    );
  }
  if (!(await sqliteLoads())) {
    throw new SetUpError(
      `The packages are installed, but better-sqlite3 does not load in Node ${process.version}. When npm is set to ignore-scripts, its binding was not built: run \`npm rebuild better-sqlite3 --ignore-scripts=false\`, with Python 3, make and a C++ compiler at hand (on Debian: apt-get install python3 make g++).`,
    );
  }
  say(`Installed in ${Math.round((Date.now() - started) / 1000)} s.`);
}

function filesBelow(path) {
  const whole = join(root, path);
  if (!existsSync(whole)) return [];
  if (statSync(whole).isFile()) return [path];
  return readdirSync(whole)
    .sort()
    .flatMap((name) => filesBelow(`${path}/${name}`));
}

function digestOfBuildInputs() {
  const hash = createHash('sha256');
  for (const path of buildInputs.flatMap(filesBelow)) {
    if (!/[.]spec[.]tsx?$/.test(path))
      hash
        .update(`${path}\0`)
        .update(readFileSync(join(root, path)))
        .update('\0');
  }
  return hash.digest('hex');
}

function isBuilt() {
  return existsSync(buildMark) && readFileSync(buildMark, 'utf8') === digestOfBuildInputs();
}

async function build() {
  say('Building.');
  // Taken first: what is edited while the build runs is then built again next time.
  const digest = digestOfBuildInputs();
  rmSync(buildMark, { force: true });
  // The service first: its build empties the folder that both are built into.
  if ((await runTool('@nestjs/cli/bin/nest.js', ['build'])) !== 0) {
    throw new SetUpError(`The service could not be built; the compiler's words stand above.`);
  }
  if ((await runTool('vite/bin/vite.js', ['build', 'src/web', '--logLevel', 'warn'])) !== 0) {
    throw new SetUpError('The pages for browsers could not be built; the words of the bundler stand above.');
  }
  if ((await run(process.execPath, ['src/bundle.mjs'])) !== 0) {
    throw new SetUpError(
      'The service could not be joined into few files; the words of the bundler stand above.',
    );
  }
  writeFileSync(buildMark, digest);
}

let heartbeat;

function releaseLock() {
  if (heartbeat === undefined) return;
  clearInterval(heartbeat);
  heartbeat = undefined;
  rmSync(lock, { recursive: true, force: true });
}

/** Waits until no other set-up works in this clone. A holder touches the lock as long as it lives. */
async function takeLock() {
  let seen;
  for (let told = false; ; ) {
    try {
      mkdirSync(lock);
      heartbeat = setInterval(() => utimesSync(lock, new Date(), new Date()), heartbeatMilliseconds);
      return;
    } catch (error) {
      if (error.code !== 'EEXIST') throw error;
    }
    const state = statSync(lock, { throwIfNoEntry: false });
    if (!state) continue;
    if (seen?.ino !== state.ino || seen.mtimeMs !== state.mtimeMs) {
      seen = { ino: state.ino, mtimeMs: state.mtimeMs, since: Date.now() };
    } else if (Date.now() - seen.since > lockStaleMilliseconds) {
      removeStaleLock(seen.ino);
      continue;
    }
    if (!told) say('Another set-up is at work in this folder; waiting for it.');
    told = true;
    await new Promise((wake) => setTimeout(wake, heartbeatMilliseconds / 4));
  }
}

/** Moved aside before it is removed, so that of two who wait one at most takes a lock that is alive – and gives it back. */
function removeStaleLock(inode) {
  const aside = `${lock}.${process.pid}`;
  try {
    renameSync(lock, aside);
    if (statSync(aside).ino === inode) rmSync(aside, { recursive: true, force: true });
    else renameSync(aside, lock);
  } catch (error) {
    if (error.code !== 'ENOENT' && error.code !== 'EEXIST' && error.code !== 'ENOTEMPTY') throw error;
  }
}

/** @throws SetUpError saying what is missing and how to get it */
export async function setUp() {
  checkNode();
  process.chdir(root);
  if (isBuilt() && (await installationFault()) === undefined) return;
  await takeLock();
  try {
    const reason = await installationFault();
    if (reason !== undefined) await install(reason);
    if (!isBuilt()) await build();
  } finally {
    releaseLock();
  }
}

/** npm passes on what ends it politely; when it is killed outright, what it started must not stay behind. */
export function endWithNpm() {
  if (process.env.npm_lifecycle_event === undefined) return;
  const npm = process.ppid;
  const watch = setInterval(() => {
    if (process.ppid === npm) return;
    // Once: a second signal would cut off what the first lets come to its end.
    clearInterval(watch);
    process.kill(process.pid, 'SIGTERM');
  }, heartbeatMilliseconds);
  watch.unref();
}

async function main() {
  const [file, ...parameters] = process.argv.slice(2);
  endWithNpm();
  await setUp();
  if (file === undefined) return;
  const built = resolve(file);
  if (!existsSync(built)) throw new SetUpError(`${file} was not built; it is not part of this version.`);
  process.argv = [process.execPath, built, ...parameters];
  await import(pathToFileURL(built).href);
}

if (process.argv[1] && resolve(process.argv[1]) === fileURLToPath(import.meta.url)) {
  main().catch((error) => {
    process.stderr.write(`${error instanceof SetUpError ? error.message : error.stack}\n`);
    process.exitCode = 1;
  });
}
