import type { StandingView } from '../../identity/sign-in/sign-in.views.js';
import type { ItemUnit } from '../../reorder/item.js';
import type { PlanAssumptionView } from '../../reorder/plan/plans.views.js';
import { PageLink } from '../frame/navigation.js';
import { pathOf } from '../frame/places.js';
import { Section } from '../frame/section.js';
import { useTexts } from '../texts/texts.js';
import { reasonWords } from './reason-words.js';

/** What was taken for want of something better, and where it is set. */
export function AssumptionsSection({
  standing: { studioId, permissions },
  assumptions,
  currency,
  unit = null,
  title,
  hint,
}: {
  standing: StandingView;
  assumptions: readonly PlanAssumptionView[];
  currency: string | null;
  /** Of the one item they are of; left out: they are of several. */
  unit?: ItemUnit | null;
  title: string;
  hint: string;
}) {
  const texts = useTexts();
  const words = texts.plans;
  return (
    <Section title={title} hint={hint}>
      {assumptions.length === 0 ? (
        <p>{words.noAssumptions}</p>
      ) : (
        <ul>
          {assumptions.map((assumption) => (
            <li key={`${assumption.code} ${assumption.message}`}>
              {reasonWords(texts, assumption, { unit, currency })}
              {assumption.items !== null && ` ${words.forItems(assumption.items)}`}
            </li>
          ))}
        </ul>
      )}
      {permissions.includes('plan orders') && (
        <PageLink to={pathOf({ studioId, area: 'settings' }, 'planning')} alone>
          {words.toSettings}
        </PageLink>
      )}
    </Section>
  );
}
