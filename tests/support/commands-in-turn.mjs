/**
 * Runs commands of the built command line one after another in this process, and answers each message
 * `{ parameters, environment }` with `{ code, out, err }`. Whatever would end the process of a command ends only the command.
 */
import { createRequire } from 'node:module';

const require = createRequire(import.meta.url);
// Loaded by Node itself, which keeps what commands share.
const program = require.resolve('../../dist/service/cli.cjs');
const usualEnvironment = { ...process.env };
let running;

for (const [stream, part] of [
  [process.stdout, 'out'],
  [process.stderr, 'err'],
]) {
  stream.write = (text) => {
    if (running !== undefined && running.code === null) running[part] += text;
    return true;
  };
}

process.exit = (code) => {
  if (running.code === null) running.code = Number(code ?? process.exitCode ?? 0);
  throw new Error('The command ended here.');
};

process.on('message', ({ parameters, environment }) => {
  running = { code: null, out: '', err: '' };
  process.exitCode = 0;
  for (const name of Object.keys(process.env)) delete process.env[name];
  Object.assign(process.env, usualEnvironment, environment);
  process.argv = [process.execPath, program, ...parameters];
  delete require.cache[program];
  require(program);
  process.channel.unref();
});

// A command is over when nothing is left to do, as is a process.
process.on('beforeExit', () => {
  if (running === undefined) return;
  const { code, out, err } = running;
  running = undefined;
  const answer = { code: code ?? Number(process.exitCode ?? 0), out, err };
  process.exitCode = 0;
  process.channel?.ref();
  process.send(answer);
});
