import { useQueryClient } from '@tanstack/react-query';
import { useCallback } from 'react';
import type { AlertDestinationPageView } from '../../alerts/destinations/alert-destinations.views.js';
import { listDestinations } from '../alerts/alerts.requests.js';
import type { ServiceProblem } from '../service/problem.js';
import { useAnswer } from '../service/use-answer.js';

/** Where alerts go, and how to ask anew after one of them was changed. */
export interface DestinationsSeen {
  answer: Pick<AlertDestinationPageView, 'items' | 'mailServerSet'> | undefined;
  problem: ServiceProblem | undefined;
  reload(): Promise<void>;
}

/** @param whose one's own, or all that one may see */
export function useDestinations(studioId: string, whose: 'own' | 'all'): DestinationsSeen {
  const answers = useQueryClient();
  const { answer, problem } = useAnswer(['alert destinations', studioId, whose], () =>
    listAll(studioId, whose),
  );
  const reload = useCallback(
    () => answers.invalidateQueries({ queryKey: ['alert destinations', studioId] }),
    [answers, studioId],
  );
  return { answer, problem, reload };
}

/** A large studio has more than one page of them: each person a few. */
async function listAll(
  studioId: string,
  whose: 'own' | 'all',
): Promise<Pick<AlertDestinationPageView, 'items' | 'mailServerSet'>> {
  const items: AlertDestinationPageView['items'] = [];
  let after: string | undefined;
  for (;;) {
    const page = await listDestinations(studioId, whose, after);
    items.push(...page.items);
    if (page.next === null) return { items, mailServerSet: page.mailServerSet };
    after = page.next;
  }
}
