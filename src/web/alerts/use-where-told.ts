import type { StandingView } from '../../identity/sign-in/sign-in.views.js';
import { useAnswer } from '../service/use-answer.js';
import { listDestinations } from './alerts.requests.js';
import { useNameOf } from './use-name-of.js';

/** Where messages go, by what people call it: a webhook or browser by its name, mail by whom it reaches. */
export function useWhereTold({
  studioId,
  permissions,
}: StandingView): (delivery: { destinationId: string | null }) => string | undefined {
  const mayAsk = permissions.includes('be told of alerts');
  const { answer } = useAnswer(['alert destinations', studioId, 'by name'], async () =>
    mayAsk ? await listDestinations(studioId, 'all') : null,
  );
  const nameOf = useNameOf(studioId);
  return ({ destinationId }) => {
    const found = answer?.items.find(({ id }) => id === destinationId);
    if (!found) return undefined;
    const parts = [found.name ?? undefined, nameOf(found.personId)].filter((part) => part !== undefined);
    return parts.length === 0 ? undefined : parts.join(', ');
  };
}
