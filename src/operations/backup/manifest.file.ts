import { readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { digestOf } from '../../platform/canonical-json.js';
import { OperatorError } from '../../platform/operator-error.js';
import { writeForGood } from '../../platform/write-for-good.js';
import { type Manifest, ManifestFault, manifestFile, parseManifest } from './manifest.js';

/** Puts the manifest into a backup's folder; its own digest stands in it, so that a changed byte shows. */
export function writeManifest(folder: string, manifest: Manifest): void {
  const content = { ...manifest, digest: digestOf(manifest) };
  writeForGood(join(folder, manifestFile), `${JSON.stringify(content, null, 2)}\n`);
}

/**
 * Reads what a backup holds. The files it names are not looked at here: see `damageOf`.
 * @param folder the folder of one backup
 * @throws OperatorError when the folder holds no complete backup, or its manifest was damaged
 */
export function readManifest(folder: string): Manifest {
  let text: string;
  try {
    text = readFileSync(join(folder, manifestFile), 'utf8');
  } catch (error) {
    throw new OperatorError(
      `${folder} is no complete backup: its ${manifestFile} cannot be read (${(error as NodeJS.ErrnoException).code}). Name the folder of one backup, such as backups/20261125T081500Z-scheduled.`,
    );
  }
  try {
    const manifest = parseManifest(text);
    const { digest, ...content } = manifest as Manifest & { digest?: unknown };
    if (digest !== digestOf(content)) throw new ManifestFault('its digest is not that of its content');
    return manifest;
  } catch (error) {
    if (!(error instanceof ManifestFault)) throw error;
    throw new OperatorError(
      `The ${manifestFile} of the backup ${basename(folder)} cannot be used: ${error.message}. Use another backup, or another copy of this one.`,
    );
  }
}
