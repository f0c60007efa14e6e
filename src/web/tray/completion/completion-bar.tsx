import { Button } from '@mantine/core';
import { outcomes as allOutcomes, type Outcome } from '../../../sessions/completion-rules.js';
import { useTexts } from '../../texts/texts.js';
import bar from '../tray-page.module.css';

/** What will be booked in a few words, and the one press that does it. */
export function CompletionBar({
  undecided,
  outcomes,
  besides,
  busy,
  ready,
  onComplete,
}: {
  /** How many things it has still to be said of. */
  undecided: number;
  outcomes: readonly (Outcome | null)[];
  besides: number;
  busy: boolean;
  ready: boolean;
  onComplete: () => void;
}) {
  const texts = useTexts();
  const told = allOutcomes.map((outcome) => {
    const count = outcomes.filter((each) => each === outcome).length;
    return texts.completion.counted(count + (outcome === 'used' ? besides : 0), outcome);
  });
  return (
    <div className={bar.bar}>
      <p className={bar.lacking} role="status">
        {undecided > 0 ? <strong>{texts.completion.undecided(undecided)}</strong> : told.join(' · ')}
      </p>
      <Button size="xl" loading={busy} disabled={!ready} onClick={onComplete}>
        {texts.completion.complete}
      </Button>
    </div>
  );
}
