import { usePeople } from '../service/studio-answers.js';

/** Names of people of a studio, also of who left; undefined as long as they are not known. */
export function useNameOf(studioId: string): (personId: string | null) => string | undefined {
  const people = usePeople(studioId).answer;
  return (personId) => people?.find(({ id }) => id === personId)?.name ?? undefined;
}
