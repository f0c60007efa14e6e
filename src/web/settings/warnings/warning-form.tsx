import type { DateThresholdView } from '../../../stock/date-thresholds/date-thresholds.views.js';
import { useEdits } from '../../frame/use-edits.js';
import { useTexts } from '../../texts/texts.js';
import { ChangeForm } from '../change-form.js';
import { TextField } from '../text-field.js';
import { daysOf, draftOf } from './warning-draft.js';
import { setWarning } from './warnings.requests.js';

const days = { type: 'number', inputMode: 'numeric', min: 0, step: 1 } as const;

/** How many days before the end of one product the studio is told. */
export function WarningForm({
  studioId,
  productId,
  title,
  present,
  reload,
  onClose,
}: {
  studioId: string;
  productId: string;
  /** Names the form by its product. */
  title: string;
  /** What is set by now; undefined: nothing. */
  present: DateThresholdView | undefined;
  /** Looks up what is set by now. */
  reload: () => Promise<void>;
  onClose: () => void;
}) {
  const words = useTexts().productDays;
  const edits = useEdits(draftOf(present));
  const version = present?.version;
  return (
    <ChangeForm
      label={title}
      edits={edits}
      version={version ?? 0}
      save={(id) => setWarning(studioId, productId, id, daysOf(edits.draft, version))}
      reload={reload}
      onClose={onClose}
    >
      {(problem) => (
        <>
          <TextField
            {...days}
            edits={edits}
            field="useByNearDays"
            problem={problem}
            label={words.useByNear}
            description={words.useByNearHint}
            max={730}
          />
          <TextField
            {...days}
            edits={edits}
            field="openedLifeEndingDays"
            problem={problem}
            label={words.openedLifeEnding}
            description={words.openedLifeEndingHint}
            max={365}
          />
        </>
      )}
    </ChangeForm>
  );
}
