import { listPeople } from '../service/studio-answers.js';
import { useAnswer } from '../service/use-answer.js';
import { useRequester } from '../sign-in/requester.js';

/** The name of whoever is signed in on a shared tablet, so that they see whether it is them; null elsewhere. */
export function useNameOnTablet(): string | null {
  const { signInName, studios } = useRequester();
  const [studio] = signInName === null ? studios : [];
  const { answer } = useAnswer(['people', studio?.studioId ?? ''], async () =>
    studio === undefined ? [] : listPeople(studio.studioId),
  );
  return answer?.find((person) => person.id === studio?.personId)?.name ?? null;
}
