import { localDay } from '../../../../identity/local-day.js';
import { useStudio } from '../../../service/studio-answers.js';
import { writtenDay } from '../../../texts/written-dates.js';

/** The studio's day, written in a language; empty until its time zone is known. */
export function useStudioToday(studioId: string, language: string): string {
  const timeZone = useStudio(studioId).answer?.timeZone;
  if (timeZone === undefined) return '';
  return writtenDay(localDay(new Date().toISOString(), timeZone), language === 'en' ? 'en-GB' : language);
}
