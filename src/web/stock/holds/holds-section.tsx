import type { StandingView } from '../../../identity/sign-in/sign-in.views.js';
import type { LotHoldView } from '../../../stock/lot-list.views.js';
import { Entries } from '../../frame/entries.js';
import { Note } from '../../frame/note.js';
import { Section } from '../../frame/section.js';
import { useTexts } from '../../texts/texts.js';
import { HoldEntry } from './hold-entry.js';
import type { Holdable } from './holds.requests.js';
import { PlaceHold } from './place-hold-form.js';

/** The holds on a lot or a container, those that are over too. */
export function HoldsSection({
  standing,
  on,
  holds,
  inherited,
  onChanged,
}: {
  standing: StandingView;
  on: Holdable;
  holds: readonly LotHoldView[];
  /** How many holds stand on what it was blended of. */
  inherited: number;
  onChanged: () => Promise<void>;
}) {
  const texts = useTexts();
  return (
    <Section title={texts.holds.title} hint={texts.holds.hint}>
      {inherited > 0 && (
        <Note kind="fault">
          <p>{texts.holds.inherited(inherited)}</p>
        </Note>
      )}
      {holds.length === 0 && inherited === 0 && <p>{texts.holds.noneHere}</p>}
      {holds.length > 0 && (
        <Entries label={texts.holds.title}>
          {holds.map((hold) => (
            <HoldEntry
              key={hold.id}
              standing={standing}
              hold={hold}
              about={hold.containerId === null ? texts.holds.ofWholeLot : texts.holds.ofContainer}
              onReleased={onChanged}
            />
          ))}
        </Entries>
      )}
      {standing.permissions.includes('place holds') && (
        <PlaceHold studioId={standing.studioId} on={on} onPlaced={onChanged} />
      )}
    </Section>
  );
}
