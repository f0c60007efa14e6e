import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { MasterKeyError, MasterKeys } from './master-keys.js';

describe('the master keys', () => {
  let folder: string;
  let file: string;

  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), 'lotward-keys-'));
    file = join(folder, 'keys', 'master-keys.json');
  });

  afterEach(() => rmSync(folder, { recursive: true }));

  it('are made once, of 256 bits, and read again', () => {
    const made = MasterKeys.load(file, true);
    const read = MasterKeys.load(file, false);
    expect(read.currentId).toBe(made.currentId);
    expect(read.get(read.currentId)).toEqual(made.get(made.currentId));
    expect(read.get(read.currentId)).toHaveLength(32);
  });

  it('are not made where data depends on those that are missing', () => {
    expect(() => MasterKeys.load(file, false)).toThrow(MasterKeyError);
  });

  it('show another process a new current key at once, and the old one still', () => {
    const running = MasterKeys.load(file, true);
    const old = running.currentId;
    const oldKey = running.get(old);
    const added = MasterKeys.load(file, false).addCurrent();
    expect(added).not.toBe(old);
    expect(running.currentId).toBe(added);
    expect(running.get(added)).toHaveLength(32);
    expect(running.get(old)).toEqual(oldKey);
  });

  it('find a key that was added after they were read', () => {
    const running = MasterKeys.load(file, true);
    const added = MasterKeys.load(file, false).addCurrent();
    expect(running.get(added)).toHaveLength(32);
  });

  it('keep only the current one when the others are dropped', () => {
    const running = MasterKeys.load(file, true);
    const old = running.currentId;
    const rotation = MasterKeys.load(file, false);
    const added = rotation.addCurrent();
    expect(rotation.dropOthers()).toEqual([old]);
    expect(running.ids).toEqual([added]);
    expect(() => running.get(old)).toThrow(`no key ${old}`);
    expect(rotation.dropOthers()).toEqual([]);
  });

  it('keep those of two rotations, whichever came first', () => {
    const one = MasterKeys.load(file, true);
    const other = MasterKeys.load(file, false);
    const added = [one.addCurrent(), other.addCurrent()];
    expect(MasterKeys.load(file, false).ids).toEqual(expect.arrayContaining(added));
  });

  it('stay as they were when the file cannot be written', () => {
    const running = MasterKeys.load(file, true);
    const before = readFileSync(file, 'utf8');
    // A folder in the way of the new file, which also root cannot write to.
    mkdirSync(join(`${file}.unfinished`, 'x'), { recursive: true });
    expect(() => running.addCurrent()).toThrow('cannot be written, and was left as it is');
    expect(readFileSync(file, 'utf8')).toBe(before);
    expect(() => MasterKeys.load(join(file, 'below a file'), true)).toThrow(MasterKeyError);
  });

  it('are refused when the file is not whole', () => {
    MasterKeys.load(file, true);
    const text = readFileSync(file, 'utf8');
    writeFileSync(file, text.slice(0, -20));
    expect(() => MasterKeys.load(file, false)).toThrow('not readable as JSON');
    writeFileSync(file, text.replace(/"current": "\w+"/, '"current": "another"'));
    expect(() => MasterKeys.load(file, false)).toThrow('no 256-bit key named "another"');
  });
});
