import type { StandingView } from '../../../identity/sign-in/sign-in.views.js';
import type { DeliveryLineView } from '../../../stock/deliveries.views.js';
import { wordsOfProduct } from '../../catalogue/product-words.js';
import { Entries, Entry } from '../../frame/entries.js';
import { PageLink } from '../../frame/navigation.js';
import { NoSuchPage } from '../../frame/no-such-page.js';
import { Page } from '../../frame/page.js';
import { pathOf } from '../../frame/places.js';
import { ProblemNote } from '../../frame/problem-note.js';
import { Section } from '../../frame/section.js';
import { useStudioInstants } from '../../frame/use-studio-instants.js';
import { isProblem } from '../../service/problem.js';
import { useAnswer } from '../../service/use-answer.js';
import type { Texts } from '../../texts/en/english.js';
import { useTexts } from '../../texts/texts.js';
import { writtenDay } from '../../texts/written-dates.js';
import { showDelivery } from '../receiving.requests.js';
import { factsOfDelivery } from './delivery-words.js';

/** One delivery with its lines; lots are shown as they stand now. */
export function DeliveryPage({
  standing: { studioId, studioName, permissions },
  id,
}: {
  standing: StandingView;
  id: string;
}) {
  const texts = useTexts();
  const words = texts.deliveries;
  const { answer, problem } = useAnswer(['delivery', studioId, id], () => showDelivery(studioId, id));
  const at = useStudioInstants(studioId);
  if (isProblem(problem, 'not-found')) return <NoSuchPage />;
  const place = { studioId, area: 'stock' } as const;
  return (
    <Page
      above={studioName}
      title={words.one}
      {...(answer && {
        lead: [at(answer.occurredAt), ...factsOfDelivery(answer, texts)].filter(Boolean).join(', '),
      })}
    >
      <ProblemNote problem={problem} />
      {!answer && !problem && <p role="status">{texts.app.loading}</p>}
      {answer && (
        <Section title={words.arrived} hint={words.arrivedHint}>
          <Entries label={words.arrived}>
            {answer.lines.map((line) => (
              <Entry
                key={line.id}
                name={wordsOfProduct({ ...line, name: line.productName, notation: null })}
                mark={texts.receiving.pieces(line.quantityPieces)}
                actions={
                  <PageLink to={pathOf(place, 'lots', line.lotId)} alone>
                    {words.toLot(line.code ?? line.productName)}
                  </PageLink>
                }
              >
                <p>{factsOfLine(line, texts).join(', ')}</p>
              </Entry>
            ))}
          </Entries>
          {permissions.includes('print labels') && (
            <PageLink to={`${pathOf(place, 'labels')}?delivery=${id}`} alone>
              {words.printLabels}
            </PageLink>
          )}
        </Section>
      )}
    </Page>
  );
}

function factsOfLine({ code, useBy, unitCostMinor, currency }: DeliveryLineView, texts: Texts): string[] {
  const { receiving: words, language } = texts;
  return [
    code === null ? texts.deliveries.noCode : words.lot(code),
    useBy === null ? words.noUseBy : words.usableThrough(writtenDay(useBy, language)),
    unitCostMinor !== null &&
      currency !== null &&
      words.priceOfPiece(money(unitCostMinor, currency, language)),
  ].filter((fact) => fact !== false);
}

function money(minor: number, currency: string, language: string): string {
  const format = new Intl.NumberFormat(language, { style: 'currency', currency });
  return format.format(minor / 10 ** (format.resolvedOptions().maximumFractionDigits ?? 2));
}
