import type { StandingView } from '../../../identity/sign-in/sign-in.views.js';
import type { OpeningStockRowView } from '../../../stock/opening-stock/opening-stock.views.js';
import {
  openingStockColumns,
  openingStockExample,
} from '../../../stock/opening-stock/opening-stock-columns.js';
import { PageLink } from '../../frame/navigation.js';
import { Note } from '../../frame/note.js';
import { Page } from '../../frame/page.js';
import { pathOf } from '../../frame/places.js';
import { ProblemNote } from '../../frame/problem-note.js';
import { Section } from '../../frame/section.js';
import { writtenVolume } from '../../stock/amounts.js';
import type { Texts } from '../../texts/en/english.js';
import { useTexts } from '../../texts/texts.js';
import { writtenDay } from '../../texts/written-dates.js';
import { ColumnsHelp } from '../columns-help.js';
import { FileSource } from '../file-source.js';
import { JudgedRows } from '../judged-rows.js';
import { Judgement } from '../judgement.js';
import styles from '../taking-in.module.css';
import { previewOpeningStock, takeInOpeningStock } from '../taking-in.requests.js';
import { useTakingIn } from '../use-taking-in.js';

/** What lies on the shelf at the start, from a spreadsheet. */
export function OpeningStockPage({
  standing: { studioId, studioName, permissions },
}: {
  standing: StandingView;
}) {
  const texts = useTexts();
  const words = texts.openingStock;
  const file = useTakingIn(
    (text) => previewOpeningStock(studioId, text),
    (id, text) => takeInOpeningStock(studioId, { id, text }),
    (text) => ({ text }),
  );
  const { preview, taken } = file;
  const place = { studioId, area: 'stock' } as const;
  return (
    <Page above={studioName} title={words.title} lead={words.lead}>
      <Section title={texts.takingIn.begin} hint={words.beginHint}>
        <ColumnsHelp
          columns={openingStockColumns}
          example={openingStockExample}
          said={words.columns}
          fileName="opening-stock"
        />
      </Section>
      <Section title={texts.takingIn.bring} hint={texts.takingIn.bringHint}>
        <FileSource
          accept=".csv,.tsv,.txt,text/csv"
          text={file.text}
          onBrought={file.bring}
          onLook={file.look}
          busy={file.isLooking}
        />
        <div className={styles.outcome}>
          <ProblemNote problem={file.problem} />
          {taken && (
            <Note kind="good">
              <p>{words.taken(taken.counts)}</p>
              <p className={styles.links}>
                <PageLink to={pathOf(place, 'deliveries', taken.deliveryId)}>{words.toDelivery}</PageLink>
                {permissions.includes('print labels') && (
                  <PageLink to={`${pathOf(place, 'labels')}?delivery=${taken.deliveryId}`}>
                    {words.toLabels}
                  </PageLink>
                )}
                <PageLink to={pathOf(place, 'holds')}>{words.toHolds}</PageLink>
              </p>
            </Note>
          )}
        </div>
      </Section>
      {preview && (
        <Section title={texts.takingIn.preview} hint={texts.takingIn.previewHint}>
          <Judgement
            preview={preview}
            made={words.made(preview.counts)}
            changed={file.changed}
            nothingNew={false}
            busy={file.isTakingIn}
            onTakeIn={file.takeIn}
          />
          <JudgedRows
            rows={preview.rows}
            nameOf={nameOf}
            markOf={({ effects }) => effects.map((effect) => words.effects[effect]).join(', ')}
            factsOf={(row) => <p>{factsOf(row, texts).join(', ')}</p>}
          />
        </Section>
      )}
    </Page>
  );
}

function nameOf({ maker, product, shade }: OpeningStockRowView): string {
  return [maker, product, shade].filter((part) => part !== null).join(' ');
}

function factsOf(row: OpeningStockRowView, texts: Texts): string[] {
  const { receiving, openingStock: words, holdReasons, language } = texts;
  return [
    row.code === null ? '' : receiving.lot(row.code),
    row.useBy === null ? '' : receiving.usableThrough(writtenDay(row.useBy, language)),
    row.pieces === 0 ? '' : words.amount(row.pieces, row.containers),
    row.openedOn === null ? '' : words.opened(writtenDay(row.openedOn, language)),
    row.remainingMicrolitres === null ? '' : words.left(writtenVolume(row.remainingMicrolitres, language)),
    row.place ?? '',
    row.setAside.length === 0 ? '' : words.setAside(row.setAside.map((reason) => holdReasons[reason])),
  ].filter((fact) => fact !== '');
}
