import type { PlanningSettingsView } from '../../../reorder/settings/planning-settings.views.js';
import { useEdits } from '../../frame/use-edits.js';
import { unreadableAmounts } from '../../suppliers/unreadable-amounts.js';
import { useTexts } from '../../texts/texts.js';
import { ChangeForm } from '../change-form.js';
import { TextField } from '../text-field.js';
import { setPlanning } from './planning.requests.js';
import { contentOfPlanning, draftOfPlanning, type PlanningDraft } from './planning-draft.js';
import { writtenSetting } from './written-setting.js';

/** Sets how the studio plans; what is left empty is assumed. */
export function StudioPlanningForm({
  studioId,
  settings,
  reload,
}: {
  studioId: string;
  settings: PlanningSettingsView;
  reload: () => Promise<void>;
}) {
  const texts = useTexts();
  const words = texts.planning;
  const { currency, version, assumptions } = settings;
  const edits = useEdits<PlanningDraft>(draftOfPlanning(settings, texts.language));
  const assumed = (field: keyof PlanningDraft, hint: string) => {
    const assumption = assumptions.find(({ code }) => code === field);
    if (!assumption) return hint;
    return `${hint} ${words.leftEmpty(writtenSetting(assumption, currency, texts), words.bases[assumption.basis])}`;
  };
  const save = async (id: string) => {
    const content = contentOfPlanning(edits.draft, currency, version);
    if (!content) throw unreadableAmounts(['orderCostMinor'], texts.suppliers.noAmount(currency));
    await setPlanning(studioId, id, content);
  };
  const percent = { type: 'number', inputMode: 'decimal', min: 0, step: 0.1 } as const;
  return (
    <ChangeForm label={words.studio} edits={edits} version={version ?? 0} save={save} reload={reload}>
      {(problem) => (
        <>
          <TextField
            {...percent}
            max={100}
            edits={edits}
            field="serviceTargetPerMille"
            problem={problem}
            label={words.target}
            description={assumed('serviceTargetPerMille', words.targetHint)}
          />
          <TextField
            edits={edits}
            field="orderCostMinor"
            problem={problem}
            inputMode="decimal"
            label={words.orderCost(currency)}
            description={assumed('orderCostMinor', words.orderCostHint)}
          />
          <TextField
            {...percent}
            max={1000}
            edits={edits}
            field="holdingPerYearPerMille"
            problem={problem}
            label={words.holding}
            description={assumed('holdingPerYearPerMille', words.holdingHint)}
          />
          <TextField
            {...percent}
            max={100}
            edits={edits}
            field="returnPerMille"
            problem={problem}
            label={words.returning}
            description={assumed('returnPerMille', words.returningHint)}
          />
        </>
      )}
    </ChangeForm>
  );
}
