import { Button } from '@mantine/core';
import type { StandingView } from '../../identity/sign-in/sign-in.views.js';
import { Note } from '../frame/note.js';
import { useConnection } from '../service/connection.js';
import { useRequester } from '../sign-in/requester.js';
import { useTexts } from '../texts/texts.js';
import { writtenTime } from '../texts/written-dates.js';
import type { Difference } from './difference.js';
import styles from './network-note.module.css';
import { outgoing, useOutgoing } from './outgoing.js';
import { useWhatIsKnown } from './use-day-facts.js';

/**
 * What somebody has to know who works with bad Wi-Fi: whether the service is reached, how old what this device knows is,
 * what waits to be sent, and what turned out otherwise.
 */
export function NetworkNote({ standing }: { standing: StandingView | undefined }) {
  const texts = useTexts();
  const { studios } = useRequester();
  const connection = useConnection();
  const { waiting, differences, isKept, problem } = useOutgoing();
  const mine = new Set(studios.map(({ personId }) => personId));
  const own = waiting.filter(({ personId }) => mine.has(personId)).length;
  const others = waiting.length - own;
  return (
    <>
      {!connection.isReached && (
        <Note kind="fault">
          <p>{texts.offline.notReached(timeHere(connection.since, texts.language))}</p>
          {standing?.permissions.includes('work the tray') && <p>{texts.offline.goesOn}</p>}
        </Note>
      )}
      {own > 0 && (!connection.isReached || problem) && (
        <p className={styles.line}>{texts.offline.waiting(own)}</p>
      )}
      {others > 0 && <p className={styles.line}>{texts.offline.othersWaiting(others)}</p>}
      {!isKept && waiting.length > 0 && (
        <Note kind="fault">
          <p>{texts.offline.notKept}</p>
        </Note>
      )}
      {standing?.permissions.includes('work the tray') && <FactsAge standing={standing} />}
      {differences
        .filter(({ personId }) => mine.has(personId))
        .map((difference) => (
          <DifferenceNote key={difference.id} difference={difference} />
        ))}
    </>
  );
}

/** How old the facts are by which trays are judged without network. */
function FactsAge({ standing }: { standing: StandingView }) {
  const texts = useTexts();
  const facts = useWhatIsKnown(standing);
  return (
    <p className={styles.line}>
      {facts
        ? texts.offline.knownAsOf(writtenTime(facts.asOf, texts.language, facts.timeZone))
        : facts === null
          ? texts.offline.nothingKnown
          : texts.offline.lookingUp}
      {facts && facts.containersLeftOut > 0 && ` ${texts.offline.leftOut(facts.containersLeftOut)}`}
    </p>
  );
}

function DifferenceNote({ difference }: { difference: Difference }) {
  const texts = useTexts();
  const { id, label, judgedHere, judgedThere, reasons, occurredAt } = difference;
  const when = timeHere(occurredAt, texts.language);
  return (
    <Note kind="fault">
      <p>
        <strong>
          {judgedThere === null
            ? texts.offline.refusedThere(label, when)
            : texts.offline.judgedOtherwise(
                label,
                when,
                judgedHere === null ? null : texts.verdicts[judgedHere],
                texts.verdicts[judgedThere],
              )}
        </strong>
      </p>
      {reasons.length > 0 && (
        <ul>
          {reasons.map((reason) => (
            <li key={reason}>{reason}</li>
          ))}
        </ul>
      )}
      {label !== null && (
        <p>
          {judgedThere === 'admitted' || judgedThere === 'warned'
            ? texts.offline.doLay
            : texts.offline.doTakeOff}
        </p>
      )}
      <Button variant="default" mt="sm" onClick={() => outgoing.seen(id)}>
        {texts.offline.seen}
      </Button>
    </Note>
  );
}

/** By the clock of this device, as its owner reads it. */
function timeHere(instant: string, language: string): string {
  return writtenTime(instant, language, Intl.DateTimeFormat().resolvedOptions().timeZone);
}
