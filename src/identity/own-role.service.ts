import type { Transaction } from '../platform/database/transaction.js';
import { Problem } from '../platform/problem.js';
import { localDay } from './local-day.js';
import { covers, type Role } from './permissions.js';

/**
 * Keeps whoever manages people within what they may do themselves: else a chain manager, who is not shown who clients are,
 * would be an owner by one change of a role, or by a new link for somebody who is.
 *
 * @param personId who makes, changes or lets in; null: it is done from the shell, where all can be done anyway
 * @throws Problem not-allowed when somebody of one of the roles may do more than they, or when they work here no more
 */
export async function refuseBeyondOwnRole(
  transaction: Transaction,
  personId: string | null,
  roles: readonly Role[],
): Promise<void> {
  if (personId === null) return;
  const [own] = await transaction.query<{ role: Role; until: string | null; timeZone: string }>(
    `SELECT person.role, person.until, studio.time_zone AS "timeZone"
     FROM person JOIN studio ON studio.id = person.studio_id
     WHERE person.studio_id = $1 AND person.id = $2 AND person.state = 'active'`,
    [transaction.studioId, personId],
  );
  if (!own || (own.until !== null && localDay(transaction.recordedAt, own.timeZone) > own.until)) {
    throw new Problem(403, 'not-allowed', 'Who did this works here no more. Ask an owner.');
  }
  const beyond = roles.find((role) => !covers(own.role, role));
  if (beyond === undefined) return;
  throw new Problem(
    403,
    'not-allowed',
    `The role ${beyond} may do things here that yours, ${own.role}, may not, so you neither give it, nor change or let in who has it. Ask an owner.`,
  );
}
