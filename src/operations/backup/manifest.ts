/** Where a studio's audit chain ended. */
export interface ChainHead {
  studioId: string;
  sequence: number;
  /** SHA-256 of the last entry, 64 hexadecimal digits. */
  hash: string;
}

export interface BackedUpFile {
  /** Path below the folder of the backup, with forward slashes: `files/2026/letter.pdf`. */
  name: string;
  bytes: number;
  /** 64 hexadecimal digits. */
  sha256: string;
}

export const backupReasons = ['scheduled', 'by-command', 'before-migration'] as const;
export type BackupReason = (typeof backupReasons)[number];

export const databaseFiles = { sqlite: 'database.sqlite', postgres: 'database.dump' } as const;
export const manifestFile = 'manifest.json';
/** Below it lie the files that are kept beside the database. */
export const filesFolder = 'files';

/** What a backup holds, all of it read from the copy. Read from its folder by `readManifest` in `manifest.file.ts`. */
export interface Manifest {
  format: 1;
  /** The instant of which the copy shows the record. */
  madeAt: string;
  reason: BackupReason;
  engine: keyof typeof databaseFiles;
  /** Names of the migrations applied, in order. */
  migrations: string[];
  heads: ChainHead[];
  /** The master keys without which names and contacts in this backup cannot be read. */
  masterKeyIds: string[];
  files: BackedUpFile[];
}

export class ManifestFault extends Error {}

const members: Record<keyof Manifest, (value: unknown) => boolean> = {
  format: (value) => value === 1,
  madeAt: (value) => isText(value) && /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d\.\d{3}Z$/.test(value),
  reason: (value) => backupReasons.some((reason) => reason === value),
  engine: (value) => value === 'sqlite' || value === 'postgres',
  migrations: (value) => isListOf(value, isText),
  heads: (value) => isListOf(value, isHead),
  masterKeyIds: (value) => isListOf(value, isText),
  files: (value) => isListOf(value, isFile),
};

/**
 * The manifest that a text holds; members of later formats beside the known ones are passed over.
 * @throws ManifestFault saying what is wrong with it
 */
export function parseManifest(text: string): Manifest {
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    throw new ManifestFault('it is not readable as JSON');
  }
  if (!isObject(value)) throw new ManifestFault('it holds no JSON object');
  if (value.format !== 1) {
    throw new ManifestFault(
      `its format is ${JSON.stringify(value.format)}, and this version of Lotward reads format 1`,
    );
  }
  for (const [name, holds] of Object.entries(members)) {
    if (!holds(value[name])) throw new ManifestFault(`its member "${name}" is missing or damaged`);
  }
  const manifest = value as unknown as Manifest;
  if (!manifest.files.some(({ name }) => name === databaseFiles[manifest.engine])) {
    throw new ManifestFault(`it does not name ${databaseFiles[manifest.engine]}`);
  }
  return manifest;
}

/** Whether a name stays below the folder it is put into. */
export function isSafeName(name: string): boolean {
  const parts = name.split('/');
  return !/[\\\0]/.test(name) && parts.every((part) => part !== '' && part !== '.' && part !== '..');
}

function isObject(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function isText(value: unknown): value is string {
  return typeof value === 'string' && value !== '';
}

function isListOf(value: unknown, holds: (item: unknown) => boolean): boolean {
  return Array.isArray(value) && value.every(holds);
}

function isDigest(value: unknown): boolean {
  return isText(value) && /^[0-9a-f]{64}$/.test(value);
}

function isHead(value: unknown): boolean {
  return (
    isObject(value) &&
    isText(value.studioId) &&
    Number.isSafeInteger(value.sequence) &&
    Number(value.sequence) >= 0 &&
    isDigest(value.hash)
  );
}

function isFile(value: unknown): boolean {
  return (
    isObject(value) &&
    isText(value.name) &&
    isSafeName(value.name) &&
    Number.isSafeInteger(value.bytes) &&
    Number(value.bytes) >= 0 &&
    isDigest(value.sha256)
  );
}
