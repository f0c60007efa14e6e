import { Anchor, Button, TextInput } from '@mantine/core';
import { useEffect, useState } from 'react';
import {
  type LabelSheetName,
  labelPositions,
  labelSheetNames,
  labelSheets,
  labelsPerPage,
} from '../../../stock/label-sheets.js';
import { Choice } from '../../frame/choice.js';
import { Fields } from '../../frame/fields.js';
import { Note } from '../../frame/note.js';
import { ProblemNote } from '../../frame/problem-note.js';
import { saveFile } from '../../service/save-file.js';
import { useAction } from '../../service/use-action.js';
import { useTexts } from '../../texts/texts.js';
import styles from '../receiving.module.css';
import { printLabels } from '../receiving.requests.js';

/** As many as one file holds. */
const mostLabels = 500;

/** Prints a label for each of these bottles and boxes, on the sheet that is at hand. */
export function LabelPrinting({
  studioId,
  containerIds,
}: {
  studioId: string;
  containerIds: readonly string[];
}) {
  const texts = useTexts();
  const words = texts.labels;
  const [sheet, setSheet] = useState<LabelSheetName>('A4 sheet');
  const [startAt, setStartAt] = useState('1');
  const [address, setAddress] = useState<string>();
  useEffect(() => () => (address === undefined ? undefined : URL.revokeObjectURL(address)), [address]);
  const first = sheet === 'roll' ? 1 : Number(startAt);
  const perPage = labelsPerPage(labelSheets[sheet]);
  const isStart = Number.isInteger(first) && first >= 1 && first <= perPage;
  const printed = containerIds.slice(0, mostLabels);
  const positions = isStart ? labelPositions(labelSheets[sheet], printed.length, first) : [];
  const pages = (positions.at(-1)?.page ?? -1) + 1;
  const { run, busy, problem } = useAction(async () => {
    if (!isStart || printed.length === 0) return;
    const file = await printLabels(studioId, {
      containerIds: [...printed],
      sheet,
      ...(sheet === 'A4 sheet' && { startAt: first }),
    });
    setAddress(URL.createObjectURL(file));
    saveFile(file, 'labels.pdf');
  });
  return (
    <Fields onSubmit={() => void run()} label={words.print}>
      <Choice
        label={words.sheet}
        description={words.sheetHint}
        value={sheet}
        choices={labelSheetNames.map((name) => ({ value: name, label: words.sheets[name] }))}
        onChange={(name) => name !== '' && setSheet(name)}
      />
      {sheet === 'A4 sheet' && (
        <TextInput
          type="number"
          inputMode="numeric"
          min={1}
          max={perPage}
          step={1}
          label={words.startAt}
          description={words.startAtHint(perPage)}
          value={startAt}
          error={isStart ? problem?.faultOf('startAt') : words.noSuchStart(perPage)}
          onChange={(event) => setStartAt(event.currentTarget.value)}
        />
      )}
      {sheet === 'A4 sheet' && isStart && printed.length > 0 && (
        <FirstSheet perPage={perPage} from={first} count={printed.length} />
      )}
      {containerIds.length > mostLabels && (
        <Note kind="plain">
          <p>{words.tooMany(containerIds.length, mostLabels)}</p>
        </Note>
      )}
      <p className={styles.scanned} role="status">
        {sheet === 'roll' ? words.onRoll(printed.length) : words.onSheets(printed.length, pages)}
      </p>
      <ProblemNote problem={problem} />
      {address !== undefined && (
        <Note kind="good">
          <p>
            {words.made}{' '}
            <Anchor href={address} target="_blank">
              {words.open}
            </Anchor>
          </p>
        </Note>
      )}
      <div>
        <Button type="submit" loading={busy} disabled={printed.length === 0}>
          {words.submit(printed.length)}
        </Button>
      </div>
    </Fields>
  );
}

/** Which positions of the first sheet are printed on; what it shows is said in words beside it. */
function FirstSheet({ perPage, from, count }: { perPage: number; from: number; count: number }) {
  return (
    <div className={styles.sheet} aria-hidden="true">
      {Array.from({ length: perPage }, (_, index) => index + 1).map((position) => (
        <span key={position} data-printed={(position >= from && position < from + count) || undefined} />
      ))}
    </div>
  );
}
