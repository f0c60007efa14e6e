import { randomBytes } from 'node:crypto';
import { existsSync, readFileSync } from 'node:fs';
import { writeForGood } from '../write-for-good.js';

interface KeyFile {
  current: string;
  keys: Record<string, string>;
}

export class MasterKeyError extends Error {}

/**
 * The master keys, kept in a file outside the database. They wrap the data keys; without them every personal field is
 * lost for good, and that is also how a stolen database is worth nothing.
 */
export class MasterKeys {
  private constructor(
    readonly currentId: string,
    private readonly keys: ReadonlyMap<string, Buffer>,
  ) {}

  /** Reads the key file; makes one when there is none and `mayCreate` says that no data depends on it yet. */
  static load(file: string, mayCreate: boolean): MasterKeys {
    if (!existsSync(file)) {
      if (!mayCreate) {
        throw new MasterKeyError(
          `The key file ${file} is missing, and the database holds fields sealed under it. Put the key file back; without it names and contacts cannot be read.`,
        );
      }
      const id = randomBytes(6).toString('hex');
      const content: KeyFile = { current: id, keys: { [id]: randomBytes(32).toString('base64') } };
      writeForGood(file, `${JSON.stringify(content, null, 2)}\n`);
    }
    let content: KeyFile;
    try {
      content = JSON.parse(readFileSync(file, 'utf8')) as KeyFile;
    } catch {
      throw new MasterKeyError(`The key file ${file} is not readable as JSON. Restore it from its backup.`);
    }
    const keys = new Map(
      Object.entries(content.keys ?? {}).map(([id, key]) => [id, Buffer.from(key, 'base64')]),
    );
    if (keys.get(content.current)?.length !== 32) {
      throw new MasterKeyError(
        `The key file ${file} has no 256-bit key named "${content.current}". Restore it from its backup.`,
      );
    }
    return new MasterKeys(content.current, keys);
  }

  get(id: string): Buffer {
    const key = this.keys.get(id);
    if (!key) {
      throw new MasterKeyError(
        `The key file has no key ${id}, under which this field was sealed. Restore the key file from its backup.`,
      );
    }
    return key;
  }
}
