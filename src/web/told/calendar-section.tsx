import { Button, Group } from '@mantine/core';
import { useRef, useState } from 'react';
import { ConfirmButton } from '../frame/confirm-button.js';
import { ProblemNote } from '../frame/problem-note.js';
import { Section } from '../frame/section.js';
import { ShownOnce } from '../frame/shown-once.js';
import { useStudioInstants } from '../frame/use-studio-instants.js';
import { RequestIds } from '../service/request-ids.js';
import { useAction } from '../service/use-action.js';
import { useAnswer } from '../service/use-answer.js';
import { useTexts } from '../texts/texts.js';
import { entriesAt } from './calendar-answer.js';
import { makeCalendarAddress, removeCalendarAddress, showCalendarAddress } from './told.requests.js';

/** The secret address at which one's calendar program reads what ends when. */
export function CalendarSection({ studioId }: { studioId: string }) {
  const texts = useTexts();
  const words = texts.told;
  const when = useStudioInstants(studioId);
  const { answer, problem, reload } = useAnswer(['calendar address', studioId], () =>
    showCalendarAddress(studioId),
  );
  const [url, setUrl] = useState<string>();
  const [tested, setTested] = useState<{ entries: number | undefined }>();
  const ids = useRef(new RequestIds()).current;
  const make = async () => {
    const made = await makeCalendarAddress(studioId, ids.for({ after: answer?.address?.id }));
    ids.renew();
    setUrl(made.url);
    setTested(undefined);
    await reload();
  };
  const remove = async () => {
    await removeCalendarAddress(studioId, ids.for({ remove: answer?.address?.id }));
    setUrl(undefined);
    await reload();
  };
  const making = useAction(make);
  const address = answer?.address;
  return (
    <Section title={words.calendar} hint={words.calendarHint}>
      <ProblemNote problem={problem ?? making.problem} />
      {!answer && !problem && <p role="status">{texts.app.loading}</p>}
      {url !== undefined && (
        <ShownOnce
          title={words.calendarMade}
          label={words.calendarLabel}
          value={url}
          onDone={() => setUrl(undefined)}
        >
          <p>{words.calendarMadeDetail}</p>
          <Group gap="sm">
            <Button
              variant="default"
              onClick={() => void entriesAt(url).then((entries) => setTested({ entries }))}
            >
              {words.testCalendar}
            </Button>
            <span role="status">
              {tested &&
                (tested.entries === undefined
                  ? words.noCalendarThere
                  : words.calendarAnswers(tested.entries))}
            </span>
          </Group>
        </ShownOnce>
      )}
      {answer && <p>{address ? words.calendarSince(when(address.createdAt)) : words.noCalendar}</p>}
      {address === null && (
        <Button loading={making.busy} onClick={() => void making.run()}>
          {words.makeCalendar}
        </Button>
      )}
      {address && (
        <Group gap="sm">
          <ConfirmButton question={words.makeAnotherQuestion} action={make}>
            {words.makeAnother}
          </ConfirmButton>
          <ConfirmButton question={words.removeCalendarQuestion} action={remove}>
            {words.removeCalendar}
          </ConfirmButton>
        </Group>
      )}
    </Section>
  );
}
