import type { AlertDestinationView } from '../../../alerts/destinations/alert-destinations.views.js';
import { Choice } from '../../frame/choice.js';
import { useTexts } from '../../texts/texts.js';

export type Severity = AlertDestinationView['minimumSeverity'];

const severities = ['urgent', 'warning', 'notice'] as const satisfies Severity[];

/** From which severity on alerts are sent somewhere. */
export function SeverityChoice({
  value,
  error,
  onChange,
}: {
  value: Severity;
  error: string | undefined;
  onChange: (severity: Severity) => void;
}) {
  const texts = useTexts();
  return (
    <Choice
      label={texts.channels.minimum}
      value={value}
      error={error}
      choices={severities.map((severity) => ({
        value: severity,
        label: texts.alerts.severities[severity],
      }))}
      onChange={(severity) => severity !== '' && onChange(severity)}
    />
  );
}
