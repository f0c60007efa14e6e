import { Button, Checkbox } from '@mantine/core';
import type { HandingOnView } from '../../../alerts/handing-on/handing-on.views.js';
import type { ToldPersonView } from '../../../alerts/preferences/alert-preferences.views.js';
import { Choice } from '../../frame/choice.js';
import { Entries, Entry } from '../../frame/entries.js';
import { useEdits } from '../../frame/use-edits.js';
import { useTexts } from '../../texts/texts.js';
import { ChangeForm } from '../change-form.js';
import { noteOf } from '../note-of-field.js';
import { TextField } from '../text-field.js';
import { setHandingOn } from './channels.requests.js';
import { choiceOf, draftOf, idsOf, movedUp } from './order-draft.js';

const fewestMinutes = 5;
const mostMinutes = 1_440;

/** Who is told of what is urgent, in which order, and after how long it goes on. */
export function OrderForm({
  studioId,
  handingOn,
  told,
  nameOf,
  hasLeft,
  reload,
}: {
  studioId: string;
  handingOn: HandingOnView;
  told: readonly ToldPersonView[];
  nameOf: (personId: string) => string;
  /** Whether somebody works here no more. */
  hasLeft: (personId: string) => boolean;
  reload: () => Promise<void>;
}) {
  const texts = useTexts();
  const words = texts.channels;
  const { version } = handingOn;
  const edits = useEdits(draftOf(handingOn));
  const { draft } = edits;
  const ids = idsOf(draft.people);
  const others = told.filter(({ personId }) => !ids.includes(personId));
  const isReached = (personId: string) =>
    told.some((one) => one.personId === personId && one.mailAddresses + one.browsers > 0);
  const setPeople = (changed: readonly string[]) => edits.set({ people: changed.join(' ') });
  return (
    <ChangeForm
      label={words.order}
      edits={edits}
      version={version ?? 0}
      save={(id) => setHandingOn(studioId, { id, ...choiceOf(draft, version) })}
      reload={reload}
    >
      {(problem) => (
        <>
          <Checkbox
            label={words.handsOn}
            checked={draft.handsOn}
            error={noteOf(texts, edits, 'handsOn', problem)}
            onChange={(event) => edits.set({ handsOn: event.currentTarget.checked })}
          />
          {draft.handsOn ? (
            <TextField
              edits={edits}
              field="minutes"
              problem={problem}
              label={words.minutes}
              description={words.minutesHint}
              type="number"
              inputMode="numeric"
              required
              step={1}
              min={fewestMinutes}
              max={mostMinutes}
            />
          ) : (
            <p>{words.notHandedOn}</p>
          )}
          {ids.length === 0 && !handingOn.isDefault && <p>{words.emptyOrder}</p>}
          {ids.length > 0 && (
            <Entries label={words.people}>
              {ids.map((personId, index) => {
                const name = nameOf(personId);
                return (
                  <Entry
                    key={personId}
                    name={`${index + 1}. ${name}`}
                    mark={hasLeft(personId) ? words.hasLeft : undefined}
                    actions={
                      <>
                        {index > 0 && (
                          <Button
                            variant="default"
                            aria-label={words.upOf(name)}
                            onClick={() => edits.set({ people: movedUp(draft.people, personId) })}
                          >
                            ↑
                          </Button>
                        )}
                        <Button
                          variant="default"
                          aria-label={words.takeOutOf(name)}
                          onClick={() => setPeople(ids.filter((id) => id !== personId))}
                        >
                          {words.takeOut}
                        </Button>
                      </>
                    }
                  >
                    {!hasLeft(personId) && !isReached(personId) && <p>{words.nothingLeads}</p>}
                  </Entry>
                );
              })}
            </Entries>
          )}
          {others.length > 0 && (
            <Choice
              label={words.addPerson}
              value=""
              none={words.choose}
              choices={others.map(({ personId }) => ({ value: personId, label: nameOf(personId) }))}
              onChange={(personId) => personId !== '' && setPeople([...ids, personId])}
            />
          )}
        </>
      )}
    </ChangeForm>
  );
}
