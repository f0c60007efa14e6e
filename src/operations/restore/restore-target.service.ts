import { existsSync, mkdirSync, readdirSync, readFileSync, renameSync, rmdirSync, rmSync } from 'node:fs';
import { basename, join, resolve } from 'node:path';
import { OperatorError } from '../../platform/operator-error.js';
import { syncFolder } from '../../platform/write-for-good.js';

const workFolder = '.lotward-restoring';
const keyFileName = 'master-keys.json';

/**
 * The data folder that is being filled. Guarantees: until everything is restored, erased anew and verified, all of it
 * lies in a folder of its own, where no service looks for it; what fails leaves the data folder as it was.
 */
export class RestoreTarget {
  readonly folder: string;

  /** @throws OperatorError when the folder holds more than a key file */
  constructor(into: string) {
    this.folder = resolve(into);
    this.requireEmpty();
  }

  get work(): string {
    return join(this.folder, workFolder);
  }

  get keyFile(): string {
    return join(this.folder, keyFileName);
  }

  /**
   * The key file that lies in the folder may hold keys that no copy of it has, so it is never replaced by another.
   * @param file the key file to restore with
   * @throws OperatorError
   */
  requireNoOtherKeys(file: string): void {
    if (!existsSync(this.keyFile) || readFileSync(this.keyFile).equals(readFileSync(file))) return;
    throw new OperatorError(
      `${this.folder} holds a key file already, and it differs from ${file}. A key file is never replaced, for what its keys protect can be read with no other. Leave --keys out to restore with the one that lies there, or name a fresh folder.`,
    );
  }

  begin(): void {
    // Left by a restore that was killed.
    this.abandon();
    mkdirSync(this.work, { recursive: true, mode: 0o700 });
  }

  abandon(): void {
    rmSync(this.work, { recursive: true, force: true });
  }

  /** Moves everything to where a service looks for it, the database last. */
  complete(databaseFile: string): void {
    // A service may have been started on it meanwhile.
    this.requireEmpty();
    const keys = join(this.work, keyFileName);
    if (existsSync(keys)) this.requireNoOtherKeys(keys);
    const last = basename(databaseFile);
    const names = readdirSync(this.work).sort((one, other) => Number(one === last) - Number(other === last));
    for (const name of names) renameSync(join(this.work, name), join(this.folder, name));
    rmdirSync(this.work);
    syncFolder(this.folder);
  }

  private requireEmpty(): void {
    const [first] = this.names().filter((name) => name !== keyFileName && name !== workFolder);
    if (first === undefined) return;
    throw new OperatorError(
      `${this.folder} is not empty: there is ${first}. A record is restored only into a fresh folder; name another one.`,
    );
  }

  private names(): string[] {
    try {
      return readdirSync(this.folder);
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code === 'ENOENT') return [];
      throw error;
    }
  }
}
