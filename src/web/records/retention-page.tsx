import { Checkbox } from '@mantine/core';
import { useRef, useState } from 'react';
import type { StandingView } from '../../identity/sign-in/sign-in.views.js';
import type { ClientRetentionView } from '../../operations/retention/retention.views.js';
import { ConfirmButton } from '../frame/confirm-button.js';
import { Entry } from '../frame/entries.js';
import { Note } from '../frame/note.js';
import { Page } from '../frame/page.js';
import { PagedEntries } from '../frame/paged-entries.js';
import { Section } from '../frame/section.js';
import { RequestIds } from '../service/request-ids.js';
import { useForgetAnswers } from '../service/use-forget-answers.js';
import { usePages } from '../service/use-pages.js';
import { useTexts } from '../texts/texts.js';
import { writtenDay } from '../texts/written-dates.js';
import { carryOutRetention, listRetention } from './records.requests.js';

/** One request erases no more; whoever has more goes on with the next. */
const mostAtOnce = 100;

/** How each client stands to the end of retention; who is erased is said by a person, one by one. */
export function RetentionPage({ standing: { studioId, studioName } }: { standing: StandingView }) {
  const texts = useTexts();
  const list = usePages(['retention', studioId], (after) => listRetention(studioId, after));
  const forget = useForgetAnswers();
  const [chosen, setChosen] = useState<string[]>([]);
  const [came, setCame] = useState<{ erased: number; kept: number }>();
  const ids = useRef(new RequestIds()).current;
  const references = (list.items ?? [])
    .filter(({ clientId }) => chosen.includes(clientId))
    .map(({ clientReference }) => clientReference);
  const carryOut = async () => {
    const { answers } = await carryOutRetention(studioId, ids.for({ chosen }), chosen);
    ids.renew();
    const erased = answers.filter(({ answer }) => answer === 'erased').length;
    setCame({ erased, kept: answers.length - erased });
    setChosen([]);
    await forget();
  };
  return (
    <Page above={studioName} title={texts.retention.title} lead={texts.retention.lead}>
      {came && came.erased > 0 && (
        <Note kind="good">
          <p>{texts.retention.done(came.erased)}</p>
        </Note>
      )}
      {came && came.kept > 0 && (
        <Note kind="fault">
          <p>{texts.retention.notDone(came.kept)}</p>
        </Note>
      )}
      <Section title={texts.retention.list} hint={texts.retention.listHint}>
        <PagedEntries
          label={texts.retention.list}
          list={list}
          none={texts.retention.none}
          entry={(client) => (
            <RetentionEntry
              key={client.clientId}
              client={client}
              isChosen={chosen.includes(client.clientId)}
              mayBeChosen={client.erasable && chosen.length < mostAtOnce}
              onChoose={(isChosen) =>
                setChosen(
                  isChosen
                    ? [...chosen, client.clientId]
                    : chosen.filter((clientId) => clientId !== client.clientId),
                )
              }
            />
          )}
        />
        {list.items !== undefined &&
          list.items.length > 0 &&
          !list.items.some(({ erasable }) => erasable) && <p>{texts.retention.nobody}</p>}
        {chosen.length > 0 && (
          <ConfirmButton mt="md" question={texts.retention.question(references.join(', '))} action={carryOut}>
            {texts.retention.carryOut(chosen.length)}
          </ConfirmButton>
        )}
      </Section>
    </Page>
  );
}

function RetentionEntry({
  client,
  isChosen,
  mayBeChosen,
  onChoose,
}: {
  client: ClientRetentionView;
  isChosen: boolean;
  mayBeChosen: boolean;
  onChoose: (isChosen: boolean) => void;
}) {
  const texts = useTexts();
  const { clientReference, erasable, lastRecordOn, keptThrough, obstacles, openSessionIds } = client;
  return (
    <Entry
      name={clientReference}
      mark={erasable ? texts.retention.may : texts.retention.mayNot}
      actions={
        erasable && (
          <Checkbox
            label={texts.retention.choose(clientReference)}
            checked={isChosen}
            disabled={!mayBeChosen && !isChosen}
            onChange={(event) => onChoose(event.currentTarget.checked)}
          />
        )
      }
    >
      <p>
        {[
          lastRecordOn === null
            ? texts.retention.neverTreated
            : texts.retention.last(writtenDay(lastRecordOn, texts.language)),
          keptThrough !== null && texts.retention.through(writtenDay(keptThrough, texts.language)),
          openSessionIds.length > 0 && texts.retention.open(openSessionIds.length),
        ]
          .filter(Boolean)
          .join(' ')}
      </p>
      {obstacles.map(({ kind, message }) => (
        <p key={kind}>{message}</p>
      ))}
    </Entry>
  );
}
