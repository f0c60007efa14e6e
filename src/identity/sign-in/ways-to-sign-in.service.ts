import { Injectable } from '@nestjs/common';
import { Database, type Read } from '../../platform/database/database.js';
import type { Transaction } from '../../platform/database/transaction.js';
import { Problem } from '../../platform/problem.js';

/** By what an account can sign in. Links come on top; somebody else makes them. */
@Injectable()
export class WaysToSignIn {
  constructor(private readonly database: Database) {}

  /** Whether the account has a passkey that works. */
  async hasPasskey(accountId: string, read: Read = this.database.read): Promise<boolean> {
    const found = await read(
      'SELECT id FROM passkey WHERE account_id = $1 AND removed_at IS NULL AND suspected_at IS NULL LIMIT 1',
      [accountId],
    );
    return found.length > 0;
  }

  /**
   * Refuses to take away what an account signs in with, when nothing else is left. Call after `Accounts.lock`.
   * @throws Problem wrong-state
   */
  async refuseToLeaveNone(
    transaction: Transaction,
    accountId: string,
    without: { password: true } | { passkeyId: string },
  ): Promise<void> {
    const [left] = await transaction.query<{ passwords: number; passkeys: number }>(
      `SELECT (SELECT count(*) FROM account WHERE id = $1 AND password_hash IS NOT NULL) AS passwords,
         (SELECT count(*) FROM passkey WHERE account_id = $1 AND removed_at IS NULL AND suspected_at IS NULL
            AND id <> $2) AS passkeys`,
      [accountId, 'passkeyId' in without ? without.passkeyId : ''],
    );
    const passwords = 'password' in without ? 0 : (left?.passwords ?? 0);
    if (passwords + (left?.passkeys ?? 0) > 0) return;
    throw new Problem(
      409,
      'wrong-state',
      'password' in without
        ? 'You have no passkey, so without the password you could not sign in any more. Add a passkey first.'
        : 'This is the last way you can sign in. Add another passkey or a password first.',
    );
  }
}
