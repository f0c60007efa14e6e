import { useState } from 'react';
import { Fields } from '../frame/fields.js';
import { PasswordField } from '../frame/password-field.js';
import { ProblemNote } from '../frame/problem-note.js';
import { useAction } from '../service/use-action.js';
import { useTexts } from '../texts/texts.js';
import { switchTo } from './tablet.requests.js';

/** Takes what a scanner types when a badge is held before it; the scanner's Enter signs in. */
export function BadgeField({ onSignedIn }: { onSignedIn: () => Promise<void> }) {
  const texts = useTexts();
  const [badge, setBadge] = useState('');
  const { run, problem } = useAction(async () => {
    const shown = badge;
    setBadge('');
    await switchTo({ badge: shown });
    await onSignedIn();
  });
  return (
    <Fields onSubmit={() => void run()} label={texts.tablet.badge}>
      <PasswordField
        purpose="off"
        autoFocus
        label={texts.tablet.badge}
        description={texts.tablet.badgeHint}
        maxLength={100}
        value={badge}
        onChange={(event) => setBadge(event.currentTarget.value)}
      />
      <ProblemNote problem={problem} />
    </Fields>
  );
}
