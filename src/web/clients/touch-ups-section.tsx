import { productLabel } from '../../catalogue/product-label.js';
import { localDay } from '../../identity/local-day.js';
import type { PigmentAtTouchUpView, TouchUpView } from '../../sessions/touch-up.views.js';
import { Entries, Entry } from '../frame/entries.js';
import { PageLink } from '../frame/navigation.js';
import { pathOf } from '../frame/places.js';
import { ProblemNote } from '../frame/problem-note.js';
import { Section } from '../frame/section.js';
import { useAnswer } from '../service/use-answer.js';
import type { Texts } from '../texts/en/english.js';
import { useTexts } from '../texts/texts.js';
import { writtenDay } from '../texts/written-dates.js';
import { listTouchUps } from './clients.requests.js';

/** When the touch-ups of a client are due, and which of the pigments will not last until then. */
export function TouchUpsSection({
  studioId,
  clientId,
  timeZone,
}: {
  studioId: string;
  clientId: string;
  timeZone: string;
}) {
  const texts = useTexts();
  const { answer, problem } = useAnswer(['touch-ups', studioId, clientId], () =>
    listTouchUps(studioId, clientId),
  );
  if (answer?.length === 0) return null;
  const today = localDay(new Date().toISOString(), timeZone);
  return (
    <Section title={texts.client.touchUps} hint={texts.client.touchUpsHint}>
      <ProblemNote problem={problem} />
      {!answer && !problem && <p role="status">{texts.app.loading}</p>}
      {answer && (
        <Entries label={texts.client.touchUps}>
          {answer.map((touchUp) => (
            <Entry
              key={touchUp.sessionId}
              name={texts.client.ofVisit(
                touchUp.procedureName,
                writtenDay(touchUp.completedOn, texts.language),
              )}
              mark={standingOf(touchUp, today, texts)}
              actions={
                <PageLink to={pathOf({ studioId, area: 'records' }, 'sessions', touchUp.sessionId)} alone>
                  {texts.session.title}
                </PageLink>
              }
            >
              <p>
                {texts.client.due(
                  writtenDay(touchUp.window.opensOn, texts.language),
                  writtenDay(touchUp.window.closesOn, texts.language),
                )}
              </p>
              {notLasting(touchUp).map((pigment) => (
                <p key={pigment.containerId}>
                  {texts.client.notUsable(productLabel(pigment), pigment.lotCode ?? texts.session.noLotCode)}
                </p>
              ))}
            </Entry>
          ))}
        </Entries>
      )}
    </Section>
  );
}

function standingOf({ window, visits }: TouchUpView, today: string, texts: Texts): string {
  const taken = visits.some(
    ({ state }) => state === 'completed' || state === 'in setup' || state === 'planned',
  );
  if (taken) return texts.client.dueDone;
  if (today < window.opensOn) return texts.client.dueLater;
  return today > window.closesOn ? texts.client.duePast : texts.client.dueNow;
}

/** One line a container, though it may stand in several mixes. */
function notLasting({ mixes, pigments }: TouchUpView): PigmentAtTouchUpView[] {
  const all = [...mixes.flatMap(({ parts }) => parts), ...pigments];
  return [...new Map(all.map((pigment) => [pigment.containerId, pigment])).values()].filter(
    ({ usableAtEnd, otherContainerIds }) => usableAtEnd === 'no' && otherContainerIds.length === 0,
  );
}
