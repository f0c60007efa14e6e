import { randomBytes } from 'node:crypto';
import { existsSync, readFileSync, statSync } from 'node:fs';
import { writeForGood } from '../write-for-good.js';
import { open, seal } from './sealing.js';

interface KeyFile {
  current: string;
  keys: Record<string, string>;
}

export class MasterKeyError extends Error {}

/** A key as a row holds it. */
export interface WrappedKey {
  masterKeyId: string;
  wrappedKey: string;
}

/**
 * The master keys, kept in a file outside the database. They wrap the data keys; without them every personal field is
 * lost for good, and that is also how a stolen database is worth nothing. The file may be changed by a rotation beside
 * a running service: whoever asks for the current key, or for one that is not known yet, gets what the file holds now.
 */
export class MasterKeys {
  private keys: ReadonlyMap<string, Buffer> = new Map();
  private current = '';
  /** Tells whether the file is still the one that was read: a changed one is always put in its place anew. */
  private seen = '';

  private constructor(readonly file: string) {
    this.read();
  }

  /** Reads the key file; makes one when there is none and `mayCreate` says that no data depends on it yet. */
  static load(file: string, mayCreate: boolean): MasterKeys {
    if (!existsSync(file)) {
      if (!mayCreate) {
        throw new MasterKeyError(
          `The key file ${file} is missing, and the database holds fields sealed under it. Put the key file back; without it names and contacts cannot be read.`,
        );
      }
      write(file, newKeyFile());
    }
    return new MasterKeys(file);
  }

  /** The key under which new keys are to be wrapped. */
  get currentId(): string {
    this.readIfChanged();
    return this.current;
  }

  /** Every key in the file, the current one included. */
  get ids(): string[] {
    this.readIfChanged();
    return [...this.keys.keys()];
  }

  get(id: string): Buffer {
    if (!this.keys.has(id)) this.readIfChanged();
    const key = this.keys.get(id);
    if (!key) {
      throw new MasterKeyError(
        `The key file has no key ${id}, under which this field was sealed. Restore the key file from its backup.`,
      );
    }
    return key;
  }

  /**
   * Wraps by the current key what another one wrapped.
   * @param place where the wrapped key belongs, as in `seal`
   */
  rewrap({ masterKeyId, wrappedKey }: WrappedKey, place: string): WrappedKey {
    const key = open(this.get(masterKeyId), wrappedKey, place);
    const { currentId } = this;
    return { masterKeyId: currentId, wrappedKey: seal(this.get(currentId), key, place) };
  }

  /**
   * Makes a new key the current one; the others stay. Nothing may be wrapped by it before this has returned, and no
   * other process may change the file meanwhile.
   */
  addCurrent(): string {
    const { current, keys } = newKeyFile();
    write(this.file, { current, keys: { ...parse(this.file).keys, ...keys } });
    this.read();
    return current;
  }

  /**
   * Drops all keys but the current one, under which everything must be wrapped by now.
   * @returns the ids of those dropped
   */
  dropOthers(): string[] {
    const { current, keys } = parse(this.file);
    const dropped = Object.keys(keys).filter((id) => id !== current);
    if (dropped.length > 0) write(this.file, { current, keys: { [current]: keys[current] ?? '' } });
    this.read();
    return dropped;
  }

  private readIfChanged(): void {
    const state = stateOf(this.file);
    if (state === undefined || state === this.seen) return;
    try {
      this.read();
    } catch (error) {
      // What was damaged by hand does not stop what runs on the keys it knows; the next start tells.
      if (!(error instanceof MasterKeyError)) throw error;
    }
  }

  private read(): void {
    const seen = stateOf(this.file) ?? '';
    const { current, keys } = parse(this.file);
    this.keys = new Map(Object.entries(keys).map(([id, key]) => [id, Buffer.from(key, 'base64')]));
    this.current = current;
    this.seen = seen;
  }
}

function newKeyFile(): KeyFile {
  const id = randomBytes(6).toString('hex');
  return { current: id, keys: { [id]: randomBytes(32).toString('base64') } };
}

/** @throws MasterKeyError when the file cannot be written; it is then as it was */
function write(file: string, content: KeyFile): void {
  try {
    writeForGood(file, `${JSON.stringify(content, null, 2)}\n`);
  } catch (error) {
    throw new MasterKeyError(
      `The key file ${file} cannot be written, and was left as it is: ${(error as Error).message}. Its folder must be one that Lotward may write to.`,
    );
  }
}

function stateOf(file: string): string | undefined {
  const state = statSync(file, { throwIfNoEntry: false });
  return state && `${state.ino} ${state.mtimeMs} ${state.size}`;
}

/** @throws MasterKeyError when the file does not hold its current key */
function parse(file: string): KeyFile {
  let content: Partial<KeyFile>;
  try {
    content = JSON.parse(readFileSync(file, 'utf8')) as Partial<KeyFile>;
  } catch {
    throw new MasterKeyError(`The key file ${file} is not readable as JSON. Restore it from its backup.`);
  }
  const { current = '', keys = {} } = content;
  if (Buffer.from(keys[current] ?? '', 'base64').length !== 32) {
    throw new MasterKeyError(
      `The key file ${file} has no 256-bit key named "${current}". Restore it from its backup.`,
    );
  }
  return { current, keys };
}
