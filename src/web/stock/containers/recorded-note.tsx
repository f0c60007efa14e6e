import { useEffect, useRef } from 'react';
import type { ContainerChangeView } from '../../../stock/container-operations.views.js';
import { PageLink } from '../../frame/navigation.js';
import { Note } from '../../frame/note.js';
import { pathOf } from '../../frame/places.js';
import { useTexts } from '../../texts/texts.js';
import { writtenAmount } from '../amounts.js';
import type { Amount } from '../lots/running-totals.js';
import type { Operation } from './allowed-operations.js';

/** What was recorded just now, what is left by the book, and what the person should know; it comes into view by itself. */
export function RecordedNote({
  studioId,
  operation,
  change,
  ofLot,
}: {
  studioId: string;
  operation: Operation;
  change: ContainerChangeView;
  /** On hand of the whole lot; undefined until it is known. */
  ofLot: Amount | undefined;
}) {
  const texts = useTexts();
  const { container, warnings, movementIds } = change;
  const note = useRef<HTMLDivElement>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: for each change anew.
  useEffect(() => {
    note.current?.scrollIntoView({ block: 'center' });
  }, [change]);
  return (
    <div ref={note}>
      <Note kind="good">
        <p>{texts.recorded[operation]}</p>
        <p>
          {texts.container.nowInIt(writtenAmount(container, texts))}{' '}
          {ofLot && texts.container.nowOfLot(writtenAmount(ofLot, texts))}
        </p>
        {movementIds.length > 0 && (
          <PageLink alone to={pathOf({ studioId, area: 'stock' }, 'lots', container.lotId)}>
            {texts.container.toHistory}
          </PageLink>
        )}
      </Note>
      {warnings.length > 0 && (
        <Note kind="fault">
          {warnings.map((warning) => (
            <p key={warning}>{warning}</p>
          ))}
        </Note>
      )}
    </div>
  );
}
