'use strict';

/**
 * Runs a program that the build joined into few files, from the code that V8 had made of them by the end of the build: to
 * read and compile twelve megabytes anew takes about half of a start. The code of a file lies beside it; where it is
 * missing, or another Node made it, the file is compiled as ever.
 */
const { readFileSync, writeFileSync } = require('node:fs');
const { createRequire } = require('node:module');
const { basename, dirname, join } = require('node:path');
const { Script } = require('node:vm');

/** Set by the build alone: the process leaves the code behind when it ends. */
const isToLeaveCode = process.env.LOTWARD_LEAVE_COMPILED === '1';

const modules = new Map();

function codeOf(file) {
  try {
    return readFileSync(`${file}.compiled`);
  } catch {
    return undefined;
  }
}

/** As `require` of Node does it; packages are loaded by Node. */
function load(file) {
  const known = modules.get(file);
  if (known) return known.exports;
  const module = { exports: {} };
  modules.set(file, module);
  const cachedData = codeOf(file);
  const script = new Script(
    `(function (exports, require, module, __filename, __dirname) {${readFileSync(file, 'utf8')}\n})`,
    { filename: file, cachedData },
  );
  // Before it runs, since a command may end the process while it does.
  if (isToLeaveCode && cachedData === undefined) {
    process.on('exit', () => writeFileSync(`${file}.compiled`, script.createCachedData()));
  }
  const ofNode = createRequire(file);
  const requireOrLoad = (id) => (id.startsWith('./') ? load(join(dirname(file), id)) : ofNode(id));
  script.runInThisContext()(
    module.exports,
    Object.assign(requireOrLoad, ofNode),
    module,
    file,
    dirname(file),
  );
  return module.exports;
}

/** @param stub the file that was started: `main.js` runs `main.cjs` */
module.exports = (stub) => load(join(__dirname, basename(stub).replace(/\.js$/, '.cjs')));
