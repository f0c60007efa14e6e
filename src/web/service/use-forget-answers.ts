import { useQueryClient } from '@tanstack/react-query';
import { useCallback } from 'react';

/** Forgets every answer that is not shown and asks anew for those that are: after something is gone that stood in many. */
export function useForgetAnswers(): () => Promise<void> {
  const answers = useQueryClient();
  return useCallback(async () => {
    answers.removeQueries({ type: 'inactive' });
    await answers.invalidateQueries();
  }, [answers]);
}
