import { useQueryClient } from '@tanstack/react-query';
import { useCallback } from 'react';

/** Asks anew for what is shown of the alerts of a studio, after one of them was changed here or elsewhere. */
export function useAlertsAnew(studioId: string): () => Promise<void> {
  const answers = useQueryClient();
  return useCallback(async () => {
    await Promise.all([
      answers.invalidateQueries({ queryKey: ['alerts', studioId] }),
      answers.invalidateQueries({ queryKey: ['pages', 'alerts', studioId] }),
    ]);
  }, [answers, studioId]);
}
