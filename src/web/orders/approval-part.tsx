import { Button, Checkbox } from '@mantine/core';
import { useRef, useState } from 'react';
import type { PurchaseOrderView } from '../../reorder/purchase-orders/purchase-orders.views.js';
import { Fields } from '../frame/fields.js';
import { Section } from '../frame/section.js';
import { readAnewIfStale } from '../service/read-anew-if-stale.js';
import { RequestIds } from '../service/request-ids.js';
import { useAction } from '../service/use-action.js';
import { ProblemOrSignInAgain } from '../sign-in/sign-in-again.js';
import { Sign } from '../stock/sign.js';
import { useTexts } from '../texts/texts.js';
import { lineName } from './line-name.js';
import styles from './orders.module.css';
import { approveOrder } from './orders.requests.js';

/** What should be looked at first, and the approval. */
export function ApprovalPart({
  studioId,
  order: { id, version, warnings, lines },
  isEdited,
  onChanged,
}: {
  studioId: string;
  order: PurchaseOrderView;
  /** Whether something is written that was not saved: it would not be approved. */
  isEdited: boolean;
  onChanged: () => Promise<void>;
}) {
  const words = useTexts().orders;
  // What was read are the warnings of one version; another one has its own.
  const [readVersion, setReadVersion] = useState<number>();
  const isRead = readVersion === version;
  const nameOf = (lineNumber: number) => {
    const line = lines.find((each) => each.lineNumber === lineNumber);
    return line ? lineName(line) : words.ofLine(lineNumber);
  };
  const ids = useRef(new RequestIds()).current;
  const { run, busy, problem } = useAction(async () => {
    const approval = { version, confirmed: [...new Set(warnings.map(({ code }) => code))] };
    await readAnewIfStale(
      () => approveOrder(studioId, id, { id: ids.for(approval), ...approval }),
      onChanged,
    );
    await onChanged();
  });
  return (
    <Section title={warnings.length > 0 ? words.warnings : words.approve} hint={words.approveHint}>
      <Fields onSubmit={() => void run()} label={words.approve}>
        {warnings.length > 0 && (
          <>
            <ul className={styles.warnings}>
              {warnings.map(({ code, lineNumber }) => (
                <li key={`${code} ${lineNumber}`}>
                  <Sign standing="care">
                    {lineNumber !== null && `${nameOf(lineNumber)}: `}
                    {words.warningCodes[code]}
                  </Sign>
                </li>
              ))}
            </ul>
            <Checkbox
              label={words.approveAll}
              checked={isRead}
              onChange={(event) => setReadVersion(event.currentTarget.checked ? version : undefined)}
            />
          </>
        )}
        {isEdited && <p>{words.saveFirst}</p>}
        <ProblemOrSignInAgain problem={problem} onSignedIn={run} />
        <div>
          <Button
            type="submit"
            loading={busy}
            disabled={isEdited || lines.length === 0 || (warnings.length > 0 && !isRead)}
          >
            {words.approve}
          </Button>
        </div>
      </Fields>
    </Section>
  );
}
