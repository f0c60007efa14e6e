import { Radio, Stack } from '@mantine/core';
import { matchLot, type SameCodeDecision } from '../../../stock/lot-match.js';
import { readUseBy } from '../../../stock/use-by.js';
import { useAnswer } from '../../service/use-answer.js';
import { useTexts } from '../../texts/texts.js';
import { writtenDay } from '../../texts/written-dates.js';
import type { LineDraft, SameCodeQuestion as Question } from '../line-draft.js';
import type { LineSurroundings } from '../line-entry.js';
import styles from '../receiving.module.css';
import { listLotsOfCode } from '../receiving.requests.js';

/**
 * The code is known with another use-by date: a misprint, a misreading or two batches. It is asked by what is on record as
 * soon as both are said, and by what the service answered.
 */
export function SameCodeQuestion({ line, around }: { line: LineDraft; around: LineSurroundings }) {
  const { product } = line;
  const code = codeOf(line);
  const useBy = lastDayOf(line);
  if (product === null || code === null || useBy === undefined) return null;
  return <Asked line={line} around={around} productId={product.id} code={code} useBy={useBy} />;
}

function Asked({
  line,
  around: { studioId, delivery },
  productId,
  code,
  useBy,
}: {
  line: LineDraft;
  around: LineSurroundings;
  productId: string;
  code: string;
  useBy: string | null;
}) {
  const texts = useTexts();
  const words = texts.receiving;
  const { answer: lots = [] } = useAnswer(['lots of code', studioId, productId, code], () =>
    listLotsOfCode(studioId, productId, code),
  );
  const match = matchLot(
    { code, useBy },
    lots.map((lot) => ({ lotId: lot.id, code: lot.code, useBy: lot.useBy })),
    undefined,
  );
  if (match.kind === 'joins') return <p className={styles.explained}>{words.joins}</p>;
  const known: Question | null =
    match.kind === 'question'
      ? { recorded: match.recorded.map((lot) => lot.useBy), choices: match.choices }
      : null;
  const question = line.question ?? known;
  if (!question) return null;
  const written = (day: string | null) => (day === null ? words.noDate : writtenDay(day, texts.language));
  const recorded = question.recorded.map(written).join(', ');
  return (
    <div className={styles.question}>
      <Radio.Group
        label={words.sameCode(code, recorded, written(useBy))}
        description={words.sameCodeHint}
        value={line.decision}
        onChange={(decision) =>
          delivery.changeLine(line.key, { question, decision: decision as SameCodeDecision })
        }
      >
        <Stack gap="sm" mt="sm">
          {question.choices.map((choice) => (
            <Radio
              key={choice}
              value={choice}
              label={words.decisions[choice].label}
              description={words.decisions[choice].hint(recorded, written(useBy))}
            />
          ))}
        </Stack>
      </Radio.Group>
    </div>
  );
}

function codeOf({ scanned, codeState, lotCode, batchCode }: LineDraft): string | null {
  if (codeState !== 'printed') return null;
  const code = scanned?.lotCode ?? (lotCode.trim() || batchCode.trim());
  return code === '' ? null : code;
}

/** Undefined as long as it is not said. */
function lastDayOf({ scanned, useBy, noUseBy }: LineDraft): string | null | undefined {
  if (scanned !== null && scanned.useBy !== null) return scanned.useBy;
  if (noUseBy) return null;
  const read = readUseBy(useBy);
  return 'error' in read ? undefined : read.lastDay;
}
