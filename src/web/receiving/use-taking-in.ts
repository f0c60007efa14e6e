import { useState } from 'react';
import { ServiceProblem } from '../service/problem.js';
import { useAction } from '../service/use-action.js';
import type { DeliveryDraft, KeptDelivery } from './delivery-draft.js';
import { handedInLine, lacksOfLine } from './handed-in-line.js';
import type { LineDraft, SameCodeQuestion } from './line-draft.js';
import { receiveDelivery } from './receiving.requests.js';

/**
 * Hands a delivery in, once however often it is pressed. What is lacking, and what the service says against it, comes to
 * stand at its line; nothing that was typed is lost.
 */
export function useTakingIn(
  studioId: string,
  delivery: KeptDelivery,
  studio: { usualPlaceId: string; currency: string; timeZone: string },
) {
  const [reviewed, setReviewed] = useState(false);
  const { run, busy, problem } = useAction(async () => {
    const draft = delivery.read();
    const { usualPlaceId, currency } = studio;
    setReviewed(true);
    // As they were scanned, the first first.
    const sent = [...draft.lines].reverse();
    if (sent.length === 0 || sent.some((line) => lacksOfLine(line, usualPlaceId, currency).length > 0)) {
      for (const { key } of sent.filter((line) => lacksOfLine(line, usualPlaceId, currency).length > 0)) {
        delivery.changeLine(key, { open: true });
      }
      return;
    }
    const content = {
      ...deliveryFacts(draft),
      lines: sent.map((line) => handedInLine(line, studio)),
    };
    try {
      const receipt = await receiveDelivery(studioId, { ...delivery.events.of(content), ...content });
      delivery.change({ receipt });
      setReviewed(false);
    } catch (error) {
      if (error instanceof ServiceProblem) placeAtLines(delivery, sent, error);
      throw error;
    }
  });
  return { run, busy, problem, reviewed };
}

function deliveryFacts({ origin, supplierId, orderedOn, reference, expectedDeliveryId }: DeliveryDraft) {
  const isPurchase = origin === 'purchase';
  return {
    origin,
    ...(isPurchase && supplierId !== '' && { supplierId }),
    ...(isPurchase && orderedOn !== '' && { orderedOn }),
    ...(reference.trim() !== '' && { reference: reference.trim() }),
    ...(isPurchase && expectedDeliveryId !== '' && { expectedDeliveryId }),
  };
}

/** What the service adds to the problem `same-code-other-use-by`. */
interface AskedLine {
  lineNumber: number;
  recorded: { useBy: string | null }[];
  choices: SameCodeQuestion['choices'];
}

function placeAtLines(delivery: KeptDelivery, sent: readonly LineDraft[], problem: ServiceProblem): void {
  const faults = (problem.document.faults ?? []).map(({ field, message }) => {
    const [, index, name = ''] = /^lines\.(\d+)\.(\w+)/.exec(field) ?? [];
    return { index: index === undefined ? -1 : Number(index), field: name, message };
  });
  const asked = ((problem.document as { lines?: AskedLine[] }).lines ?? []).filter(
    () => problem.code === 'same-code-other-use-by',
  );
  sent.forEach(({ key }, index) => {
    const ofLine = faults.filter((fault) => fault.index === index);
    const question = asked.find(({ lineNumber }) => lineNumber === index + 1);
    delivery.changeLine(key, {
      faults: ofLine.map(({ field, message }) => ({ field, message })),
      ...(ofLine.length > 0 && { open: true }),
      ...(question && {
        question: { recorded: question.recorded.map(({ useBy }) => useBy), choices: question.choices },
        decision: '' as const,
      }),
    });
  });
}
