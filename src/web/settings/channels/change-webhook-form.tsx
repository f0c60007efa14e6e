import type { AlertDestinationView } from '../../../alerts/destinations/alert-destinations.views.js';
import { useEdits } from '../../frame/use-edits.js';
import { useTexts } from '../../texts/texts.js';
import { changeDestination } from '../../told/told.requests.js';
import { ChangeForm } from '../change-form.js';
import { TextField } from '../text-field.js';
import { type Severity, SeverityChoice } from './severity-choice.js';

interface WebhookDraft {
  name: string;
  minimumSeverity: Severity;
}

/** Gives a webhook another name, or another severity from which on it is told. */
export function ChangeWebhookForm({
  studioId,
  webhook: { id: webhookId, version, name, minimumSeverity },
  onChanged,
  onClose,
}: {
  studioId: string;
  webhook: AlertDestinationView;
  onChanged: () => Promise<void>;
  onClose: () => void;
}) {
  const texts = useTexts();
  const words = texts.channels;
  const edits = useEdits<WebhookDraft>({ name: name ?? '', minimumSeverity });
  const theirs = edits.meanwhile('minimumSeverity');
  return (
    <ChangeForm
      label={words.changeOf(name ?? '')}
      edits={edits}
      version={version}
      save={(id) => changeDestination(studioId, webhookId, { id, version, ...edits.changes })}
      reload={onChanged}
      onClose={onClose}
    >
      {(problem) => (
        <>
          <TextField
            edits={edits}
            field="name"
            problem={problem}
            label={words.name}
            required
            maxLength={100}
          />
          <SeverityChoice
            value={edits.draft.minimumSeverity}
            error={
              theirs === undefined
                ? problem?.faultOf('minimumSeverity')
                : texts.settings.meanwhile(texts.alerts.severities[theirs])
            }
            onChange={(chosen) => edits.set({ minimumSeverity: chosen })}
          />
        </>
      )}
    </ChangeForm>
  );
}
