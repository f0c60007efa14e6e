import type { Transaction } from '../platform/database/transaction.js';
import { Problem } from '../platform/problem.js';
import { covers, type Role } from './permissions.js';

/**
 * Keeps whoever manages people within what they may do themselves: else a chain manager, who is not shown who clients are,
 * would be an owner by one change of a role, or by a new link for somebody who is.
 *
 * @param personId who makes, changes or lets in; null: it is done from the shell, where all can be done anyway
 * @throws Problem not-allowed when somebody of one of the roles may do more than they
 */
export async function refuseBeyondOwnRole(
  transaction: Transaction,
  personId: string | null,
  roles: readonly Role[],
): Promise<void> {
  if (personId === null) return;
  const [own] = await transaction.query<{ role: Role }>(
    'SELECT role FROM person WHERE studio_id = $1 AND id = $2',
    [transaction.studioId, personId],
  );
  const beyond = own && roles.find((role) => !covers(own.role, role));
  if (beyond === undefined) return;
  throw new Problem(
    403,
    'not-allowed',
    `The role ${beyond} may do things here that yours, ${own?.role}, may not, so you neither give it, nor change or let in who has it. Ask an owner.`,
  );
}
