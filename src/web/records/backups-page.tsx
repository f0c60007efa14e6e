import { Space } from '@mantine/core';
import type { StandingView } from '../../identity/sign-in/sign-in.views.js';
import { Facts } from '../frame/facts.js';
import { Note } from '../frame/note.js';
import { ProblemNote } from '../frame/problem-note.js';
import { useAnswer } from '../service/use-answer.js';
import { useTexts } from '../texts/texts.js';
import { writtenInstant } from '../texts/written-dates.js';
import { showBackups } from './records.requests.js';
import { StudioPage } from './studio-page.js';

/** Whether there is something to be brought back. */
export function BackupsPage({ standing }: { standing: StandingView }) {
  const texts = useTexts();
  const { studioId } = standing;
  const { answer, problem } = useAnswer(['backups', studioId], () => showBackups(studioId));
  return (
    <StudioPage standing={standing} title={texts.backups.title} lead={texts.backups.lead}>
      {(timeZone) => {
        const at = (instant: string) => writtenInstant(instant, texts.language, timeZone);
        return (
          <>
            <ProblemNote problem={problem} />
            {!answer && !problem && <p role="status">{texts.app.loading}</p>}
            {answer && (
              <Facts
                facts={[
                  [
                    texts.backups.last,
                    answer.lastGoodAt === null ? texts.backups.none : at(answer.lastGoodAt),
                  ],
                  [texts.backups.kept, texts.backups.keptOf(answer.kept, answer.keptAtMost)],
                  [
                    texts.backups.next,
                    answer.nextDueAt === null ? texts.backups.noNext : at(answer.nextDueAt),
                  ],
                  [
                    texts.backups.failure,
                    answer.lastFailure === null
                      ? texts.backups.noFailure
                      : texts.backups.failed(at(answer.lastFailure.at), answer.lastFailure.cause),
                  ],
                ]}
              />
            )}
            <Space h="lg" />
            <Note kind="plain">
              <p>{texts.backups.keys}</p>
            </Note>
          </>
        );
      }}
    </StudioPage>
  );
}
