import { Button } from '@mantine/core';
import { useState } from 'react';
import type { AlertDestinationView } from '../../../alerts/destinations/alert-destinations.views.js';
import type { ToldPersonView } from '../../../alerts/preferences/alert-preferences.views.js';
import { Entries, Entry } from '../../frame/entries.js';
import type { Texts } from '../../texts/en/english.js';
import { useTexts } from '../../texts/texts.js';
import { AddMailForm } from '../../told/add-mail-form.js';
import { DestinationEntry } from '../../told/destination-entry.js';

/** One person: how they chose to be told, and what leads to them. */
export function ToldPersonEntry({
  studioId,
  person,
  name,
  destinations,
  waitsBecause,
  onChanged,
}: {
  studioId: string;
  person: ToldPersonView;
  name: string;
  /** Theirs. */
  destinations: readonly AlertDestinationView[];
  /** Why nothing can be mailed just now. */
  waitsBecause: string | undefined;
  onChanged: () => Promise<void>;
}) {
  const texts = useTexts();
  const words = texts.channels;
  const [isAdding, setIsAdding] = useState(false);
  const { personId, role, mailAddresses, browsers } = person;
  return (
    <Entry
      name={name}
      mark={texts.roles[role]}
      actions={
        !isAdding && (
          <Button variant="default" aria-label={words.giveAddressOf(name)} onClick={() => setIsAdding(true)}>
            {words.giveAddress}
          </Button>
        )
      }
      below={
        <>
          {destinations.length > 0 && (
            <Entries label={words.addressesOf(name)}>
              {destinations.map((destination) => (
                <DestinationEntry
                  key={destination.id}
                  studioId={studioId}
                  destination={destination}
                  mark={words.kinds[destination.kind]}
                  waitsBecause={destination.kind === 'mail' ? waitsBecause : undefined}
                  onChanged={onChanged}
                />
              ))}
            </Entries>
          )}
          {isAdding && (
            <AddMailForm
              studioId={studioId}
              personId={personId}
              label={words.giveAddressOf(name)}
              onCancel={() => setIsAdding(false)}
              onAdded={async () => {
                await onChanged();
                setIsAdding(false);
              }}
            />
          )}
        </>
      }
    >
      <p>{chosenBy(person, texts).join(', ')}</p>
      {mailAddresses + browsers === 0 && <p>{words.nothing}</p>}
    </Entry>
  );
}

function chosenBy({ preference, mailAddresses, browsers }: ToldPersonView, texts: Texts): string[] {
  const words = texts.channels;
  const { toldFrom, urgentTurn, summary, isDefault } = preference;
  return [
    words.toldFrom[toldFrom],
    toldFrom !== 'never' && urgentTurn === 'at once' && words.atOnce,
    summary === 'daily' ? words.daily : words.noSummary,
    isDefault && words.isAssumed,
    mailAddresses > 0 && words.addresses(mailAddresses),
    browsers > 0 && words.browsers(browsers),
  ].filter((part) => part !== false);
}
