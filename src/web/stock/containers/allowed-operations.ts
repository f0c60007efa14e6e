import type { Permission } from '../../../identity/permissions.js';
import type { ShownContainerView } from '../../../stock/container-list.views.js';
import { type ContainerAction, transition } from '../../../stock/container-transitions.js';

/** What can be recorded of a container, in the order in which it is offered. */
export const operations = [
  'open',
  'count',
  'move',
  'finish',
  'waste pieces',
  'discard',
  'return',
  'keep for practice',
  'correct opened date',
  'undo opening',
] as const satisfies (ContainerAction | 'undo opening')[];
export type Operation = (typeof operations)[number];

/**
 * What may be recorded of a container in its state, by somebody who may do this. Judged by the service's own rule; what only
 * the ledger knows, such as whether something was taken of a bottle, the service says when it is asked.
 */
export function allowedOperations(
  container: Pick<ShownContainerView, 'form' | 'state' | 'openedAt' | 'life' | 'holds' | 'onTrays'>,
  may: readonly Permission[],
): Operation[] {
  const { form, state, openedAt, life, holds, onTrays } = container;
  const facts = {
    ...{ form, state, openedAt },
    lifeStatus: life.status,
    holdKinds: holds.map(({ kind }) => kind),
  };
  return operations.filter((operation) => {
    if (!may.includes(operation === 'open' ? 'open containers' : 'handle stock')) return false;
    if (operation === 'undo opening') return state === 'opened' && onTrays.lines === 0;
    return transition(facts, operation).allowed;
  });
}
