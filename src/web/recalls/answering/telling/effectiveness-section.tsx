import { Button } from '@mantine/core';
import type { StandingView } from '../../../../identity/sign-in/sign-in.views.js';
import type { EffectivenessView } from '../../../../recalls/contacts/contacts.views.js';
import type { RecallView } from '../../../../recalls/recalls.views.js';
import { Note } from '../../../frame/note.js';
import { ProblemNote } from '../../../frame/problem-note.js';
import { Section } from '../../../frame/section.js';
import { saveFile } from '../../../service/save-file.js';
import { useAction } from '../../../service/use-action.js';
import { useAnswer } from '../../../service/use-answer.js';
import { useTexts } from '../../../texts/texts.js';
import styles from './telling.module.css';
import { contactListAsCsv, showEffectiveness } from './telling.requests.js';

/** How many of each audience were told, and which level of effectiveness checks that meets. */
export function EffectivenessSection({
  standing: { studioId, permissions },
  recall,
}: {
  standing: StandingView;
  recall: RecallView;
}) {
  const texts = useTexts();
  const words = texts.recallTelling;
  const { answer, problem } = useAnswer(['effectiveness of recall', studioId, recall.id], () =>
    showEffectiveness(studioId, recall.id),
  );
  const list = useAction(async () =>
    saveFile(await contactListAsCsv(studioId, recall.id), `contacts-${recall.id}.csv`),
  );
  return (
    <Section title={words.standing} hint={words.standingHint}>
      {recall.kind === 'drill' && (
        <Note kind="plain">
          <p>{words.drill}</p>
        </Note>
      )}
      <ProblemNote problem={problem ?? list.problem} />
      {!answer && !problem && <p role="status">{texts.app.loading}</p>}
      {answer && <Told effectiveness={answer} />}
      {permissions.includes('tell clients of recalls') && (
        <>
          <Button variant="default" loading={list.busy} onClick={() => void list.run()}>
            {words.contactList}
          </Button>
          <p className={styles.hint}>{words.contactListHint}</p>
        </>
      )}
    </Section>
  );
}

/** Level E asks for no check, so that nothing is met by it. */
function Told({ effectiveness }: { effectiveness: EffectivenessView }) {
  const texts = useTexts();
  const words = texts.recallTelling;
  const percent = new Intl.NumberFormat(texts.language, { style: 'percent', maximumFractionDigits: 1 });
  const { audiences, levels, met, source, caveat } = effectiveness;
  return (
    <>
      <table className={styles.told} aria-label={words.table}>
        <thead>
          <tr>
            <th scope="col">{words.audience}</th>
            <th scope="col">{words.toTell}</th>
            <th scope="col">{words.told}</th>
            <th scope="col">{words.outstanding}</th>
          </tr>
        </thead>
        <tbody>
          {audiences.map(({ audience, toTell, told, toldPercent, outstanding }) => (
            <tr key={audience}>
              <th scope="row">{words.audiences[audience]}</th>
              <td>{toTell === 0 ? words.nobody : toTell}</td>
              <td>{toldPercent === null ? '–' : `${told} (${percent.format(toldPercent / 100)})`}</td>
              <td>{toTell === 0 ? '–' : outstanding}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p>{met === null || met === 'E' ? words.noLevel : words.level(met)}</p>
      <details className={styles.details}>
        <summary className={styles.summary}>{words.levels}</summary>
        <ul>
          {levels.map(({ level, percent: asked, toCheck, met: isMet }) => (
            <li key={level}>
              {asked === null || toCheck === null
                ? words.levelAgreed(level)
                : `${words.levelAsks(level, percent.format(asked / 100), toCheck)}, ${isMet ? words.met : words.notMet}`}
            </li>
          ))}
        </ul>
        <p lang="en">{words.source(source, caveat)}</p>
      </details>
    </>
  );
}
