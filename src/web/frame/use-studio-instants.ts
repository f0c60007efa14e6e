import { useStudio } from '../service/studio-answers.js';
import { useTexts } from '../texts/texts.js';
import { writtenInstant } from '../texts/written-dates.js';

/** Writes instants as the clocks of the studio show them, wherever they are read; empty until its time zone is known. */
export function useStudioInstants(studioId: string): (instant: string) => string {
  const { language } = useTexts();
  const timeZone = useStudio(studioId).answer?.timeZone;
  return (instant) => (timeZone === undefined ? '' : writtenInstant(instant, language, timeZone));
}
