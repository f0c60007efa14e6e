import { Button, Checkbox } from '@mantine/core';
import { useState } from 'react';
import { Choice } from '../../frame/choice.js';
import { useTexts } from '../../texts/texts.js';
import { type AlertChoice, orders, severities, states } from './alert-choice.js';
import styles from './alert-filters.module.css';

/** By what the list of alerts is narrowed: it says what was chosen, and is opened to choose otherwise. */
export function AlertFilters({
  choice,
  onShow,
}: {
  choice: AlertChoice;
  onShow: (choice: AlertChoice) => void;
}) {
  const texts = useTexts();
  const words = texts.alertPages;
  const [draft, setDraft] = useState(choice);
  const kinds = Object.entries(texts.alerts.kinds).map(([value, label = value]) => ({ value, label }));
  const chosen = [
    words.states[choice.state],
    choice.kind !== null && (texts.alerts.kinds[choice.kind] ?? choice.kind),
    choice.severity !== null && texts.alerts.severities[choice.severity],
    choice.isMine && words.givenToMe,
    words.orders[choice.order],
  ].filter((part) => part !== false);
  return (
    <details className={styles.choice}>
      <summary className={styles.chosen}>
        {words.filters}: {chosen.join(', ')}
      </summary>
      <form
        className={styles.filters}
        aria-label={words.filters}
        onSubmit={(event) => {
          event.preventDefault();
          onShow(draft);
        }}
      >
        <Choice
          label={words.which}
          value={draft.state}
          choices={states.map((value) => ({ value, label: words.states[value] }))}
          onChange={(state) => state !== '' && setDraft({ ...draft, state })}
        />
        <Choice
          label={words.kind}
          value={draft.kind ?? ''}
          none={words.anyKind}
          choices={kinds.sort((one, other) => one.label.localeCompare(other.label, texts.language))}
          onChange={(kind) => setDraft({ ...draft, kind: kind || null })}
        />
        <Choice
          label={words.severity}
          value={draft.severity ?? ''}
          none={words.anySeverity}
          choices={severities.map((value) => ({ value, label: texts.alerts.severities[value] }))}
          onChange={(severity) => setDraft({ ...draft, severity: severity || null })}
        />
        <Choice
          label={words.order}
          value={draft.order}
          choices={orders.map((value) => ({ value, label: words.orders[value] }))}
          onChange={(order) => order !== '' && setDraft({ ...draft, order })}
        />
        <Checkbox
          className={styles.mine ?? ''}
          label={words.givenToMe}
          checked={draft.isMine}
          onChange={(event) => setDraft({ ...draft, isMine: event.currentTarget.checked })}
        />
        <Button type="submit" variant="default">
          {words.show}
        </Button>
      </form>
    </details>
  );
}
