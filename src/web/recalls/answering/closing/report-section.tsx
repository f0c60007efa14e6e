import { Button, Group } from '@mantine/core';
import type { RecallView } from '../../../../recalls/recalls.views.js';
import { ProblemNote } from '../../../frame/problem-note.js';
import { Section } from '../../../frame/section.js';
import { saveFile } from '../../../service/save-file.js';
import { useAction } from '../../../service/use-action.js';
import { useTexts } from '../../../texts/texts.js';
import { reportAsData, reportAsDocument } from './closing.requests.js';

/** The whole answer as a document to hand out, and as data. */
export function ReportSection({ studioId, recall }: { studioId: string; recall: RecallView }) {
  const words = useTexts().recallClosing;
  const drawing = useAction(async () =>
    saveFile(await reportAsDocument(studioId, recall.id), `recall-report-${recall.id}.pdf`),
  );
  const data = useAction(async () =>
    saveFile(await reportAsData(studioId, recall.id), `recall-report-${recall.id}.json`),
  );
  return (
    <Section title={words.report} hint={recall.state === 'open' ? words.reportOpen : words.reportHint}>
      <ProblemNote problem={drawing.problem ?? data.problem} />
      <Group gap="sm">
        <Button variant="default" loading={drawing.busy} onClick={() => void drawing.run()}>
          {words.pdf}
        </Button>
        <Button variant="default" loading={data.busy} onClick={() => void data.run()}>
          {words.json}
        </Button>
      </Group>
    </Section>
  );
}
