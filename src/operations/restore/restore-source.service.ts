import { existsSync } from 'node:fs';
import { resolve } from 'node:path';
import { migrations } from '../../../migrations/list.js';
import { MasterKeys } from '../../platform/encryption/master-keys.js';
import { OperatorError } from '../../platform/operator-error.js';
import { damageOf } from '../backup/file-copies.service.js';
import { readManifest } from '../backup/manifest.file.js';
import type { Manifest } from '../backup/manifest.js';

export interface RestoreSource {
  folder: string;
  manifest: Manifest;
  keyFile: string;
}

/**
 * Looks at everything a restore needs before anything is written.
 * @param keyFile where the master keys should be
 * @throws OperatorError naming what is damaged, too new or missing
 */
export async function openSource(
  backup: string,
  engine: Manifest['engine'],
  keyFile: string,
): Promise<RestoreSource> {
  const folder = resolve(backup);
  const manifest = readManifest(folder);
  requireEngine(manifest, engine);
  requireKnownSchema(manifest);
  const damage = await damageOf(folder, manifest);
  if (damage.length > 0) {
    throw new OperatorError(
      `The backup ${folder} is damaged: ${damage.join('; ')}. Nothing was restored. Use another backup, or another copy of this one.`,
    );
  }
  requireKeys(manifest, keyFile);
  return { folder, manifest, keyFile };
}

function requireEngine(manifest: Manifest, engine: Manifest['engine']): void {
  if (manifest.engine === engine) return;
  throw new OperatorError(
    manifest.engine === 'postgres'
      ? 'This is a backup of a PostgreSQL database. Set DATABASE_URL to an empty PostgreSQL database to restore it into.'
      : 'This is a backup of an SQLite database. Leave DATABASE_URL unset to restore it.',
  );
}

function requireKnownSchema(manifest: Manifest): void {
  const known = new Set(migrations.map(({ name }) => name));
  const unknown = manifest.migrations.filter((name) => !known.has(name));
  if (unknown.length === 0) return;
  throw new OperatorError(
    `The backup was made by a newer version of Lotward (it has ${unknown.join(', ')}). Restore it with that version or a later one, or use an older backup.`,
  );
}

function requireKeys({ madeAt, masterKeyIds }: Manifest, keyFile: string): void {
  const needed = `This backup needs the master keys ${masterKeyIds.join(', ')}`;
  if (!existsSync(keyFile)) {
    throw new OperatorError(
      `${needed}, and there is no key file ${keyFile}. Name your copy of it with --keys; without it names and contacts could never be read again.`,
    );
  }
  const held = MasterKeys.load(keyFile, false).ids;
  const missing = masterKeyIds.filter((id) => !held.includes(id));
  if (missing.length === 0) return;
  throw new OperatorError(
    `${needed}, and the key file ${keyFile} lacks ${missing.join(', ')}. Name a copy that was made when the backup was, at ${madeAt}, with --keys. A key that was dropped on purpose does not come back: use a later backup.`,
  );
}
