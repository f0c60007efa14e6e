import type { ReasonFacts } from '../../sessions/reason-facts.js';
import type { Texts } from './en/english.js';
import { writtenDay } from './written-dates.js';

interface Reason {
  code: string;
  /** The service's own sentence, English. */
  message: string;
  facts?: ReasonFacts;
}

/** Why something is refused, or admitted with care only: in the language of the reader, else as the service says it. */
export function reasonText(texts: Texts, { code, message, facts }: Reason): string {
  const say = texts.reasons[code as keyof Texts['reasons']];
  // Answers that were recorded before there were facts have none.
  return (facts && say?.(withWrittenDays(facts, texts.language))) ?? message;
}

/** Why what was admitted to a tray may not be used any more. */
export function refusedSinceText(texts: Texts, { code, message }: Reason): string {
  return texts.refusedSince[code as keyof Texts['refusedSince']] ?? message;
}

const days = ['lastDay', 'laterRecordedUseBy', 'symbolUseBy', 'recordedUseBy', 'touchUpBy'] as const;

function withWrittenDays(facts: ReasonFacts, language: string): ReasonFacts {
  const written = { ...facts };
  for (const name of days) {
    const day = facts[name];
    if (typeof day === 'string') written[name] = writtenDay(day, language);
  }
  return written;
}
