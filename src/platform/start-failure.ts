import { ConfigError } from './config.js';
import { SchemaTooNewError, SchemaTooOldError } from './database/database.js';
import { MasterKeyError } from './encryption/master-keys.js';
import { OperatorError } from './operator-error.js';

const knownCauses: Record<string, string> = {
  EADDRINUSE: 'The port is used by another program, perhaps by Lotward itself. Stop that one, or set PORT.',
  EACCES: 'The address may not be listened on, or the data folder not written to. Set PORT or DATA_DIR.',
  SQLITE_CANTOPEN: 'The database file cannot be opened. Look at the rights of the folder in DATA_DIR.',
  ECONNREFUSED: 'PostgreSQL does not answer at the address in DATABASE_URL.',
};

/** Errors whose message is for whoever starts the program. */
const told = [ConfigError, SchemaTooNewError, SchemaTooOldError, MasterKeyError, OperatorError];

/** What the person at the console is told when a process cannot start; what they can act on, without a stack. */
export function tellStartFailure(error: unknown): string {
  if (!(error instanceof Error)) return String(error);
  if (told.some((kind) => error instanceof kind)) return error.message;
  const cause = 'code' in error ? knownCauses[String(error.code)] : undefined;
  return cause === undefined ? (error.stack ?? error.message) : `${cause} (${error.message})`;
}
