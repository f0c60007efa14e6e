import { OperatorError } from '../../platform/operator-error.js';

const causes: Record<string, string> = {
  ENOSPC: 'no space is left on the disk',
  EDQUOT: 'the space allowed on the disk is used up',
  EFBIG: 'the disk takes no larger file',
  SQLITE_FULL: 'no space is left on the disk',
  SQLITE_IOERR: 'the disk does not take more',
  SQLITE_IOERR_WRITE: 'the disk does not take more',
  EACCES: 'the folder may not be written to',
  EPERM: 'the folder may not be written to',
  EROFS: 'the folder is on a disk that may only be read',
  EEXIST: 'a file is in the way of the folder',
  ENOTDIR: 'a part of its path is no folder',
  EIO: 'the disk failed',
  DAMAGED_RECORD: 'the record itself is damaged',
  SQLITE_CORRUPT: 'the database itself is damaged',
  SQLITE_NOTADB: 'the database itself is damaged',
  ECONNREFUSED: 'PostgreSQL does not answer',
};

/** Why no backup came about. Nothing of it stays behind, and no other backup was touched. */
export class BackupFailure extends OperatorError {
  constructor(
    /** In a few words without paths, for an alert. */
    readonly words: string,
    detail: string,
  ) {
    super(`The backup could not be made: ${words}. ${detail}`);
  }
}

/** @param what was being done, such as `The folder /backups was being written.` */
export function backupFailure(error: unknown, what: string): BackupFailure {
  if (error instanceof BackupFailure) return error;
  if (error instanceof Error && error.name === 'AbortError')
    return new BackupFailure('it was broken off', what);
  const { code, message } =
    error instanceof Error ? (error as NodeJS.ErrnoException) : { message: String(error) };
  const words = (code === undefined ? undefined : causes[code]) ?? 'something unforeseen happened';
  return new BackupFailure(words, `${what} (${code === undefined ? '' : `${code}: `}${message})`);
}
