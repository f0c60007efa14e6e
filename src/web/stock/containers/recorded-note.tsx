import type { ContainerChangeView } from '../../../stock/container-operations.views.js';
import { Note } from '../../frame/note.js';
import { useTexts } from '../../texts/texts.js';
import { writtenAmount } from '../amounts.js';
import { type Amount } from '../lots/running-totals.js';
import type { Operation } from './allowed-operations.js';

/** What was recorded just now, what is left by the book, and what the person should know. */
export function RecordedNote({
  operation,
  change: { container, warnings },
  ofLot,
}: {
  operation: Operation;
  change: ContainerChangeView;
  /** On hand of the whole lot; undefined until it is known. */
  ofLot: Amount | undefined;
}) {
  const texts = useTexts();
  return (
    <>
      <Note kind="good">
        <p>{texts.recorded[operation]}</p>
        <p>
          {texts.container.nowInIt(writtenAmount(container, texts))}{' '}
          {ofLot && texts.container.nowOfLot(writtenAmount(ofLot, texts))}
        </p>
      </Note>
      {warnings.length > 0 && (
        <Note kind="fault">
          {warnings.map((warning) => (
            <p key={warning}>{warning}</p>
          ))}
        </Note>
      )}
    </>
  );
}
