import type { MatchFacts } from '../../../stock/lot-matching/match-reasons.js';
import type { Texts } from '../../texts/en/english.js';
import { writtenDay } from '../../texts/written-dates.js';

interface Reason {
  code: string;
  /** The service's own sentence, English. */
  message: string;
  facts: MatchFacts;
}

/** Why a lot is met, or only possibly: in the language of the reader, else as the service says it. */
export function matchReasonText(texts: Texts, { code, message, facts }: Reason): string {
  return texts.matchReasons[code]?.(withWrittenDays(facts, texts.language)) ?? message;
}

const day = /^\d{4}-\d{2}-\d{2}$/;

function withWrittenDays(facts: MatchFacts, language: string): MatchFacts {
  return Object.fromEntries(
    Object.entries(facts).map(([name, value]) => [
      name,
      typeof value === 'string' && day.test(value) ? writtenDay(value, language) : value,
    ]),
  );
}
