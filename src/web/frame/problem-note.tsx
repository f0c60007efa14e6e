import { Code } from '@mantine/core';
import type { ServiceProblem } from '../service/problem.js';
import { useTexts } from '../texts/texts.js';
import { Note } from './note.js';

/** Why something failed, by its code or in the service's own words, and how long to wait where it says so. */
export function ProblemNote({
  problem,
  secondsToWait = 0,
}: {
  problem: ServiceProblem | undefined;
  secondsToWait?: number;
}) {
  const texts = useTexts();
  if (!problem) return null;
  const { faults = [], detail, code } = problem.document;
  const own = texts.problems[code];
  const brief = texts.problemsInBrief[code];
  return (
    <Note kind="fault">
      {brief !== undefined && <p>{brief}</p>}
      {faults.length > 1 ? (
        <ul lang="en">
          {faults.map(({ field, message }) => (
            <li key={`${field} ${message}`}>{message}</li>
          ))}
        </ul>
      ) : (
        <p {...(own === undefined && { lang: 'en' })}>{own ?? withCommands(detail)}</p>
      )}
      {secondsToWait > 0 && <p aria-live="off">{texts.app.waiting(secondsToWait)}</p>}
    </Note>
  );
}

/** The service writes commands as `npm run cli -- people`. */
function withCommands(detail: string) {
  return detail.split('`').map((part, index) => {
    // biome-ignore lint/suspicious/noArrayIndexKey: the parts of one text keep their order.
    return index % 2 === 1 ? <Code key={index}>{part}</Code> : part;
  });
}
