import type { ReasonFacts } from '../../../sessions/reason-facts.js';
import type { QuestionCode, RefusalCode, WarningCode } from '../../../sessions/tray-rules.js';

type ReasonCode = RefusalCode | WarningCode | QuestionCode;

export const reasonsTexts = {
  /** The sentence of a reason by its code, where the service's own English one does not do. Undefined: the facts do not suffice for one. */
  reasons: {} as Partial<Record<ReasonCode, (facts: ReasonFacts) => string | undefined>>,
  /** The same for what was admitted and may not be used any more. */
  refusedSince: {} as Partial<Record<ReasonCode, string>>,
};
