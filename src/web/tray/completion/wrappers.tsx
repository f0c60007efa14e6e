import { Button } from '@mantine/core';
import { type RefObject, useState } from 'react';
import type { TrayLineView } from '../../../sessions/tray.views.js';
import type { ContainerView } from '../../../stock/container-list.views.js';
import { Note } from '../../frame/note.js';
import { ProblemNote } from '../../frame/problem-note.js';
import { Scanner } from '../../scanner/scanner.js';
import { useAction } from '../../service/use-action.js';
import { useTexts } from '../../texts/texts.js';
import { ScanField } from '../scan-field.js';
import styles from './completion.module.css';
import { containersOf, readWrapper } from './completion.requests.js';
import type { Besides } from './completion-draft.js';
import { linesOfWrapper } from './lines-of-wrapper.js';

/**
 * Wrappers can be shown while finishing: one of the tray marks its line, one that is not is offered as used besides.
 * Nothing is put on the tray any more.
 */
export function Wrappers({
  studioId,
  lines,
  field,
  onLines,
  onBesides,
}: {
  studioId: string;
  lines: readonly TrayLineView[];
  field: RefObject<HTMLInputElement | null>;
  /** Every line the wrapper can belong to. @returns whether it was the wrapper of one */
  onLines: (lines: TrayLineView[]) => boolean;
  onBesides: (besides: Besides) => void;
}) {
  const texts = useTexts();
  /** What a wrapper that is not of the tray can have come from. */
  const [offered, setOffered] = useState<ContainerView[]>();
  /** Whether more wrappers were shown than pieces lay on the tray. */
  const [isOneMore, setOneMore] = useState(false);
  const reading = useAction(async (symbol: string) => {
    setOffered(undefined);
    const wrapper = await readWrapper(studioId, symbol);
    const found = linesOfWrapper(lines, wrapper);
    if (found.length > 0 && onLines(found)) return;
    const containers = await containersOf(studioId, wrapper);
    // By a code that stands on the label besides the lot, such as a batch.
    const laid = lines.filter((line) => containers.some(({ id }) => id === line.containerId));
    if (found.length === 0 && laid.length > 0 && onLines(laid)) return;
    setOneMore(laid.length > 0);
    setOffered(containers);
  });
  const show = (symbol: string) => void reading.run(symbol);
  const labelOf = ({ makerName, productName, shade }: ContainerView) =>
    [makerName, productName, shade].filter((word) => word !== null).join(' ');
  return (
    <div className={styles.wrappers}>
      <Scanner field={field} scan={undefined} onShown={show} />
      <ScanField field={field} action={texts.completion.lookUp} onShown={show} />
      <ProblemNote problem={reading.problem} />
      {offered?.length === 0 && (
        <Note kind="fault">
          <p>{texts.completion.unknownWrapper}</p>
        </Note>
      )}
      {offered && offered.length > 0 && (
        <Note kind="plain">
          <p>{isOneMore ? texts.completion.oneMoreThanLaid : texts.completion.notOnTray}</p>
          <div className={styles.offers}>
            {offered.map((container) => (
              <Button
                key={container.id}
                size="xl"
                variant="default"
                onClick={() => {
                  setOffered(undefined);
                  onBesides({
                    containerId: container.id,
                    label: labelOf(container),
                    lotCode: container.lotCode,
                    isCounted: container.form === 'box',
                    amount: container.form === 'box' ? 1 : 0,
                  });
                }}
              >
                {texts.completion.usedBesidesOf(
                  labelOf(container),
                  container.lotCode ?? container.labelCode,
                  texts.containerStates[container.state],
                )}
              </Button>
            ))}
            <Button size="xl" variant="default" onClick={() => setOffered(undefined)}>
              {texts.completion.notUsed}
            </Button>
          </div>
        </Note>
      )}
    </div>
  );
}
