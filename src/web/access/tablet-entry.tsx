import { Button } from '@mantine/core';
import { useRef, useState } from 'react';
import type { TabletView } from '../../identity/tablets/tablets.views.js';
import { ConfirmButton } from '../frame/confirm-button.js';
import { Entry } from '../frame/entries.js';
import { RenameForm } from '../frame/rename-form.js';
import { readAnewIfStale } from '../service/read-anew-if-stale.js';
import { RequestIds } from '../service/request-ids.js';
import { useTexts } from '../texts/texts.js';
import { writtenInstantHere } from '../texts/written-dates.js';
import { renameTablet, revokeTablet } from './access.requests.js';

/** One tablet, to be renamed or revoked. */
export function TabletEntry({
  studioId,
  tablet,
  onChanged,
}: {
  studioId: string;
  tablet: TabletView;
  onChanged: () => Promise<void>;
}) {
  const texts = useTexts();
  const [isRenaming, setIsRenaming] = useState(false);
  const ids = useRef(new RequestIds()).current;
  const { id, name, createdAt, revokedAt, lastUsedAt, version } = tablet;
  const when = (instant: string) => writtenInstantHere(instant, texts.language);
  const facts = [
    texts.tablets.since(when(createdAt)),
    lastUsedAt === null ? texts.tablets.neverUsed : texts.tablets.used(when(lastUsedAt)),
    ...(revokedAt === null ? [] : [texts.tablets.revoked(when(revokedAt))]),
  ];
  const rename = async (newName: string) => {
    const change = { version, name: newName };
    await readAnewIfStale(() => renameTablet(studioId, id, { id: ids.for(change), ...change }), onChanged);
    await onChanged();
    setIsRenaming(false);
  };
  const revoke = async () => {
    await revokeTablet(studioId, id, ids.for({ revoked: id }));
    await onChanged();
  };
  return (
    <Entry
      name={name}
      isOver={revokedAt !== null}
      actions={
        revokedAt === null &&
        !isRenaming && (
          <>
            <Button
              variant="default"
              aria-label={texts.tablets.renameOf(name)}
              onClick={() => setIsRenaming(true)}
            >
              {texts.tablets.rename}
            </Button>
            <ConfirmButton
              label={texts.tablets.revokeOf(name)}
              question={texts.tablets.revokeQuestion(name)}
              action={revoke}
            >
              {texts.tablets.revoke}
            </ConfirmButton>
          </>
        )
      }
      below={
        isRenaming && (
          <RenameForm
            title={texts.tablets.renameOf(name)}
            label={texts.tablets.name}
            name={name}
            rename={rename}
            onCancel={() => setIsRenaming(false)}
          />
        )
      }
    >
      <p>{facts.join(', ')}</p>
    </Entry>
  );
}
