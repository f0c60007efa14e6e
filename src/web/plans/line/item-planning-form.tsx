import { rangeChoices } from '../../../reorder/decision/range-choice.js';
import type { PlannedItemView } from '../../../reorder/plan/plans.views.js';
import type { ItemPlanningView } from '../../../reorder/settings/planning-settings.views.js';
import { Choice } from '../../frame/choice.js';
import { useEdits } from '../../frame/use-edits.js';
import { ServiceProblem } from '../../service/problem.js';
import { ChangeForm } from '../../settings/change-form.js';
import { noteOf } from '../../settings/note-of-field.js';
import { TextField } from '../../settings/text-field.js';
import { useTexts } from '../../texts/texts.js';
import { removeItemPlanning, setItemPlanning } from './item-planning.requests.js';
import { draftOfPlanning, type ItemPlanningDraft, planningOfDraft } from './item-planning-draft.js';

/** Changes how one item is planned: its target, what it costs when it is missing, and whether it is kept. */
export function ItemPlanningForm({
  studioId,
  item: { kind: itemKind, key: itemKey },
  planning,
  currency,
  reload,
  onClose,
}: {
  studioId: string;
  item: Pick<PlannedItemView, 'kind' | 'key'>;
  /** Null: it is planned as the studio plans. */
  planning: ItemPlanningView | null;
  currency: string;
  reload: () => Promise<void>;
  /** Left out: the form stays. */
  onClose?: () => void;
}) {
  const texts = useTexts();
  const words = texts.planLine;
  const edits = useEdits<ItemPlanningDraft>(draftOfPlanning(planning, currency, texts.language));
  const meant = planningOfDraft(edits.draft, currency);
  const save = async (id: string) => {
    if (!meant) {
      const document = { status: 400, code: 'invalid-fields', title: '', detail: words.notAllowed };
      throw new ServiceProblem(document);
    }
    const replacesProductId = planning?.replacesProductId ?? null;
    const isNothing = [...Object.values(meant), replacesProductId].every((value) => value === null);
    const named = { id, itemKind, itemKey };
    if (!isNothing) {
      await setItemPlanning(studioId, {
        ...named,
        ...meant,
        replacesProductId,
        ...(planning && { version: planning.version }),
      });
    } else if (planning) {
      await removeItemPlanning(studioId, { ...named, version: planning.version });
    }
  };
  return (
    <ChangeForm
      label={words.planning}
      edits={edits}
      version={planning?.version ?? 0}
      save={save}
      reload={reload}
      onClose={onClose}
    >
      {(problem) => (
        <>
          <TextField
            edits={edits}
            field="serviceTarget"
            problem={problem}
            label={words.target}
            description={words.targetHint}
            type="number"
            inputMode="decimal"
            min={0}
            max={100}
            step={0.1}
            error={
              problem?.faultOf('serviceTargetPerMille') ?? noteOf(texts, edits, 'serviceTarget', problem)
            }
          />
          <TextField
            edits={edits}
            field="shortageCost"
            problem={problem}
            label={words.shortageCost(currency)}
            description={words.shortageCostHint}
            inputMode="decimal"
            error={problem?.faultOf('shortageCostMinor') ?? noteOf(texts, edits, 'shortageCost', problem)}
          />
          <Choice
            label={words.range}
            description={words.rangeChoiceHint}
            value={edits.draft.rangeChoice}
            none={words.planDecides}
            error={problem?.faultOf('rangeChoice') ?? noteOf(texts, edits, 'rangeChoice', problem)}
            choices={rangeChoices.map((choice) => ({ value: choice, label: texts.rangeChoices[choice] }))}
            onChange={(rangeChoice) => edits.set({ rangeChoice })}
          />
        </>
      )}
    </ChangeForm>
  );
}
