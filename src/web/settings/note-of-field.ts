import type { Edits } from '../frame/use-edits.js';
import type { ServiceProblem } from '../service/problem.js';
import type { Texts } from '../texts/en/english.js';

/** What stands at a field that is changed: what was wrong with it, or what somebody else made of it meanwhile. */
export function noteOf<Draft extends object>(
  texts: Texts,
  edits: Edits<Draft>,
  field: keyof Draft & string,
  problem: ServiceProblem | undefined,
): string | undefined {
  const theirs = edits.meanwhile(field);
  if (theirs === undefined) return problem?.faultOf(field);
  return texts.settings.meanwhile(
    typeof theirs === 'boolean' ? (theirs ? texts.settings.on : texts.settings.off) : String(theirs),
  );
}
