#!/usr/bin/env node
/*
 * Verifies an audit log that Lotward exported, alone: with Node.js 20.12 or later, no package, no network and nothing of
 * Lotward. It is short so that it can be read before it is trusted.
 *
 *   node verify-exported-log.mjs log.ndjson
 *   node verify-exported-log.mjs log.ndjson earlier-log.ndjson    and that this log continues that earlier one
 *   node verify-exported-log.mjs log.ndjson 812:3f9c...           or an earlier head, noted on paper: entry:hash
 *
 * The first line of an export names the studio, when it was exported, and its head: the last entry with its hash. Each
 * further line is one entry. It holds the hash of the entry before it, and a hash of all it says, that one included. So
 * nothing can be changed, left out or put in without changing every hash that follows. Whoever changed all of them would
 * make another log, with another head: a head that was kept elsewhere shows it, and so it shows a log cut short.
 *
 * Exit code: 0 when the log is whole, 2 when it is not, 1 when it could not be looked at.
 */
import { hash as digest } from 'node:crypto';
import { createReadStream } from 'node:fs';

const format = 'lotward-audit-log/1';
const beforeTheFirst = '0'.repeat(64);
/** What the hash of an entry covers. */
const covered =
  'action payload personId previousHash recordedAt sequence studioId subjectId subjectKind via'.split(' ');

class NotWhole extends Error {}

const named = ({ sequence, hash }) => `entry ${sequence} (hash ${hash})`;

/** SHA-256 of what it covers, written as JSON with the names in alphabetical order and no spaces (RFC 8785). */
const hashOf = (entry) => digest('sha256', JSON.stringify(entry, covered));

/** What is wrong with an entry that comes after another, or undefined. `earlier`: heads that must be in the log. */
function fault(entry, before, studioId, earlier) {
  const name = `entry ${entry.sequence}`;
  if (entry.sequence !== before.sequence + 1) return `${name} comes after entry ${before.sequence}`;
  if (entry.studioId !== studioId) return `${name} is of another studio`;
  if (entry.previousHash !== before.hash) return `${name} does not follow on from the one before it`;
  if (entry.hash !== hashOf(entry)) return `${name} is not what was written: its hash does not fit`;
  const known = earlier.find(({ sequence }) => sequence === entry.sequence);
  if (known && known.hash !== entry.hash) return `continues another log: ${named(known)} was known earlier`;
}

/** What is wrong with the end of a log, or undefined. */
function faultAtEnd({ head, exportedAt }, last, earlier) {
  if (last.sequence !== head.sequence || last.hash !== head.hash) {
    return `ends with ${named(last)}, but its head is ${named(head)}: its end is missing or is another`;
  }
  if (last.recordedAt !== exportedAt) return 'was exported at another time than its last entry says';
  const cut = earlier.find(({ sequence }) => sequence > last.sequence);
  if (cut) return `ends with ${named(last)}, but ${named(cut)} was known earlier: its end was cut off`;
}

/** The lines of a file. A line feed alone ends one: newer readline ends them at U+2028 as well, which a text may hold. */
async function* linesOf(file) {
  let begun = '';
  for await (const text of createReadStream(file, 'utf8')) {
    const lines = (begun + text).split('\n');
    begun = lines.pop();
    yield* lines;
  }
  if (begun) yield begun;
}

/** What a line holds; nothing when it cannot be read, which no check takes for an entry. */
function parsed(line) {
  try {
    return Object(JSON.parse(line));
  } catch {
    return {};
  }
}

/** Goes through a log from its first line to its last, and gives its opening line. */
async function verify(file, earlier) {
  let opening;
  let last = { sequence: 0, hash: beforeTheFirst };
  const refuse = (words) => {
    if (words) throw new NotWhole(`${file}: ${words}`);
  };
  for await (const line of linesOf(file)) {
    const value = parsed(line);
    if (opening === undefined) {
      if (value.format !== format || !value.head) refuse(`does not begin as a log of the format ${format}`);
      opening = value;
    } else {
      refuse(fault(value, last, opening.studioId, earlier));
      last = value;
    }
  }
  refuse(opening === undefined ? 'is empty' : faultAtEnd(opening, last, earlier));
  return opening;
}

try {
  const [file, known = '', tooMany] = process.argv.slice(2);
  if (!file || tooMany)
    throw new Error('Give a log, and if there is one an earlier log or head <entry>:<hash>.');
  const [isHead, sequence, hash] = /^(\d+):([0-9a-f]{64})$/.exec(known) ?? [];
  const earlier = isHead ? [{ sequence: Number(sequence), hash }] : [];
  if (known && !isHead) earlier.push((await verify(known, [])).head);
  const { studioId, exportedAt, head } = await verify(file, earlier);
  console.log(`Whole: the log of studio ${studioId} to ${named(head)}, exported at ${exportedAt}.`);
  if (known) console.log(`It continues ${named(earlier[0])}, which was known earlier.`);
} catch (error) {
  console.error(error.message);
  process.exitCode = error instanceof NotWhole ? 2 : 1;
}
