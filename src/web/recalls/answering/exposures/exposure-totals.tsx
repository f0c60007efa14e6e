import { Button, Group } from '@mantine/core';
import type { ExposureTotalsView } from '../../../../recalls/exposures/exposures.views.js';
import { ProblemNote } from '../../../frame/problem-note.js';
import { Section } from '../../../frame/section.js';
import { saveFile } from '../../../service/save-file.js';
import { useAction } from '../../../service/use-action.js';
import { useAnswer } from '../../../service/use-answer.js';
import { Figures } from '../../../stock/figures.js';
import { useTexts } from '../../../texts/texts.js';
import { exposuresAsCsv, exposuresAsSpreadsheet, listExposedClients } from './exposures.requests.js';

/** How many were touched, and all of it as a file. */
export function ExposureTotals({ studioId, recallId }: { studioId: string; recallId: string }) {
  const texts = useTexts();
  const words = texts.recallExposures;
  const { answer, problem } = useAnswer(['exposures of recall', studioId, recallId], () =>
    listExposedClients(studioId, recallId, undefined, undefined),
  );
  const csv = useAction(async () =>
    saveFile(await exposuresAsCsv(studioId, recallId), `exposures-${recallId}.csv`),
  );
  const spreadsheet = useAction(async () =>
    saveFile(await exposuresAsSpreadsheet(studioId, recallId), `exposures-${recallId}.xlsx`),
  );
  return (
    <Section title={words.totals} hint={words.totalsHint}>
      <ProblemNote problem={problem ?? csv.problem ?? spreadsheet.problem} />
      {!answer && !problem && <p role="status">{texts.app.loading}</p>}
      {answer && <Totals totals={answer.totals} />}
      <Group gap="sm">
        <Button variant="default" loading={spreadsheet.busy} onClick={() => void spreadsheet.run()}>
          {words.spreadsheet}
        </Button>
        <Button variant="default" loading={csv.busy} onClick={() => void csv.run()}>
          {words.csv}
        </Button>
      </Group>
    </Section>
  );
}

function Totals({ totals }: { totals: ExposureTotalsView }) {
  const texts = useTexts();
  const words = texts.recallExposures;
  const { byVisitKind, erasedClients, openLotUses, unknownAmountUses, reversedUses } = totals;
  return (
    <>
      <Figures
        figures={[
          { name: words.figures.certain, value: totals.certainClients, isMain: true },
          { name: words.figures.possible, value: totals.possibleClients },
          { name: words.figures.sessions, value: totals.sessions },
          { name: words.figures.uses, value: totals.uses },
        ]}
      />
      {byVisitKind.length > 0 && (
        <p>
          {byVisitKind
            .map(({ visitKind, sessions }) => words.ofKind(texts.visitKinds[visitKind], sessions))
            .join(', ')}
        </p>
      )}
      {openLotUses > 0 && <p>{words.openLotUses(openLotUses)}</p>}
      {unknownAmountUses > 0 && <p>{words.unknownAmounts(unknownAmountUses)}</p>}
      {reversedUses > 0 && <p>{words.reversedUses(reversedUses)}</p>}
      {erasedClients > 0 && <p>{words.erasedClients(erasedClients)}</p>}
    </>
  );
}
