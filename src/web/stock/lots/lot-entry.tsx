import type { LotSummaryView } from '../../../stock/lot-list.views.js';
import { Entry } from '../../frame/entries.js';
import { PageLink } from '../../frame/navigation.js';
import { pathOf } from '../../frame/places.js';
import { useTexts } from '../../texts/texts.js';
import { nameOf, writtenVolume } from '../amounts.js';
import { type Figure, Figures } from '../figures.js';
import { Sign } from '../sign.js';
import { writtenUseBy } from './written-use-by.js';

/** One lot in a list, with what is here of it. */
export function LotEntry({ studioId, lot }: { studioId: string; lot: LotSummaryView }) {
  const texts = useTexts();
  const { quantities } = lot;
  const isEmpty = quantities.onHandPieces === 0;
  const code = lot.code ?? texts.codeStates[lot.codeState];
  return (
    <Entry
      name={
        <PageLink to={pathOf({ studioId, area: 'stock' }, 'lots', lot.id)} alone>
          {`${nameOf(lot)}, ${code}`}
        </PageLink>
      }
    >
      <p>
        {lot.makerName}, {writtenUseBy(lot, texts)}
      </p>
      {(isEmpty || quantities.heldPieces + quantities.expiredPieces + quantities.endingSoonPieces > 0) && (
        <p>
          {isEmpty && <Sign standing="over">{texts.lot.empty}</Sign>}
          {quantities.heldPieces > 0 && <Sign standing="fault">{texts.conditions['on hold']}</Sign>}
          {quantities.endingSoonPieces > 0 && (
            <Sign standing="care">{texts.levels.endingSoon(quantities.endingSoonPieces)}</Sign>
          )}
          {quantities.expiredPieces > 0 && <Sign standing="fault">{texts.levels.past}</Sign>}
        </p>
      )}
      {!isEmpty && <LotFigures lot={lot} />}
    </Entry>
  );
}

/** What is here of a lot; each piece counts once among usable, on hold, past and for practice. */
export function LotFigures({ lot: { quantities } }: { lot: Pick<LotSummaryView, 'quantities'> }) {
  const texts = useTexts();
  const figures: (Figure | false)[] = [
    { name: texts.levels.usable, value: quantities.usablePieces, isMain: true },
    { name: texts.levels.opened, value: quantities.openedContainers },
    quantities.heldPieces > 0 && { name: texts.levels.held, value: quantities.heldPieces },
    quantities.expiredPieces > 0 && { name: texts.levels.past, value: quantities.expiredPieces },
    quantities.practicePieces > 0 && { name: texts.levels.practice, value: quantities.practicePieces },
    quantities.onHandMicrolitres > 0 && {
      name: texts.lot.byTheBook,
      value: writtenVolume(quantities.onHandMicrolitres, texts.language),
    },
  ];
  return <Figures figures={figures.filter((figure) => figure !== false)} />;
}
