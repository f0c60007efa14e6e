import { isPast, type ShelfLifeStatus } from './shelf-life.js';

export type ContainerCondition = 'sealed' | 'opened' | 'finished' | 'discarded' | 'practice only';

export type ContainerAction =
  | 'open'
  | 'correct opened date'
  | 'finish'
  | 'discard'
  | 'waste pieces'
  | 'count'
  | 'return'
  | 'move'
  | 'keep for practice';

export interface ContainerFacts {
  form: 'bottle' | 'box';
  state: ContainerCondition;
  openedAt: string | null;
  lifeStatus: ShelfLifeStatus;
  /** Kinds of the open holds on it, its lot and any lot blended into it. */
  holdKinds: readonly ('quarantine' | 'recall' | 'compliance')[];
}

/** Whether it is gone by the record: emptied, or discarded, returned or missing. */
export function hasEnded(state: ContainerCondition): state is 'finished' | 'discarded' {
  return state === 'finished' || state === 'discarded';
}

export type Transition = { allowed: true; state: ContainerCondition } | { allowed: false; message: string };

/**
 * Whether something may be recorded of a container, and the state it has afterwards. What happened is recorded even
 * against a hold or past a date; refused is only what contradicts the record, with what to do about the record, and
 * keeping for practice what is recalled or still good.
 */
export function transition(container: ContainerFacts, action: ContainerAction): Transition {
  const { form, state } = container;
  if (action === 'correct opened date') return correctOpenedDate(container);
  if (hasEnded(state)) {
    return refused(
      `This ${form} is recorded as ${state}. If it is still here, reverse the movement that ended it first.`,
    );
  }
  switch (action) {
    case 'open':
      return open(container);
    case 'finish':
      return finish(container);
    case 'waste pieces':
      return form === 'box'
        ? { allowed: true, state }
        : refused('A bottle is one piece. Record it as discarded instead.');
    case 'keep for practice':
      return keepForPractice(container);
    case 'discard':
    case 'return':
      return { allowed: true, state: 'discarded' };
    case 'count':
    case 'move':
      return { allowed: true, state };
  }
}

/** What is judged before a recorded opening is taken back. */
export interface OpeningFacts extends Pick<ContainerFacts, 'form' | 'state'> {
  /** Poured by the studio: it never was sealed. */
  isBlend: boolean;
  /** Whether anything was used or poured of it, and not reversed since. */
  wasUsed: boolean;
  /** By the book, and with what it arrived. */
  microlitres: number;
  arrivedMicrolitres: number;
  /** Trays on which it lies. */
  trays: number;
}

/**
 * Whether a bottle that was recorded as opened by mistake is sealed again. Judged by the ledger: nothing of it was used
 * or poured into a blend, and it holds as much as it arrived with. What was mixed in a session that is not completed is
 * not in the ledger yet, so it may lie on no tray either.
 */
export function undoOpening(opening: OpeningFacts): Transition {
  const { form, state, isBlend, wasUsed, microlitres, arrivedMicrolitres, trays } = opening;
  if (hasEnded(state)) {
    return refused(
      `This ${form} is recorded as ${state}. If it is still here, reverse the movement that ended it first.`,
    );
  }
  if (state !== 'opened') return refused(`This ${form} is not recorded as opened, but as ${state}.`);
  if (isBlend) {
    return refused(
      'A house blend was poured and never was sealed. If the day is wrong, correct the opened date.',
    );
  }
  if (wasUsed || microlitres < arrivedMicrolitres) {
    return refused(
      'Something was taken of this bottle since, so it was opened. If the day is wrong, correct the opened date.',
    );
  }
  if (trays > 0) return refused('This bottle lies on a tray. If it is sealed, take it off the tray first.');
  return { allowed: true, state: 'sealed' };
}

/** What a person who opens a container should know; opening is a fact all the same. */
export function openingWarnings({ lifeStatus, holdKinds }: ContainerFacts): string[] {
  const warnings: string[] = [];
  if (holdKinds.includes('recall')) warnings.push('This is recalled: put it aside and do not use it.');
  else if (holdKinds.length > 0) warnings.push('This is on hold: do not use it until it is released.');
  if (lifeStatus === 'expired') warnings.push('This is past its use-by date: put it aside and take another.');
  if (lifeStatus === 'open too long') {
    warnings.push('Opened on that day it is open too long by now: put it aside and take another.');
  }
  if (lifeStatus === 'no date known') {
    warnings.push('No use-by date and no opened life are known: look for them on the label and record them.');
  }
  return warnings;
}

/**
 * The state of a container once a movement was reversed: what the movement ended comes back as what it was; a receipt that never was takes the container with it.
 *
 * @param pieces what the book holds after the reversal
 */
export function stateAfterReversal(
  container: { state: ContainerCondition; endedFrom: ContainerCondition | null },
  reversedKind: string,
  pieces: number,
): ContainerCondition {
  const ended = hasEnded(container.state);
  if (ended && pieces > 0) return container.endedFrom ?? container.state;
  const arrival = reversedKind === 'received' || reversedKind === 'produced';
  if (!ended && arrival && pieces === 0) return 'discarded';
  return container.state;
}

function open({ form, state }: ContainerFacts): Transition {
  if (form === 'box') {
    return refused(
      'A box is not opened: its pieces are sealed one by one and each is recorded when it is used.',
    );
  }
  if (state === 'opened') {
    return refused(
      'This bottle is recorded as opened already. If the day is wrong, correct the opened date.',
    );
  }
  if (state === 'practice only') {
    return refused('This bottle is kept for practice only; its opening counts for nothing.');
  }
  return { allowed: true, state: 'opened' };
}

function correctOpenedDate({ state, openedAt }: ContainerFacts): Transition {
  if (openedAt === null) return refused('This was never recorded as opened. Record its opening instead.');
  return { allowed: true, state };
}

function finish({ form, state }: ContainerFacts): Transition {
  if (form === 'box') {
    return refused('A box is empty when its last piece is used. If the book shows more, count it.');
  }
  if (state === 'sealed') {
    return refused(
      'This bottle is recorded as sealed. Record first when it was opened, then that it is empty.',
    );
  }
  return { allowed: true, state: 'finished' };
}

function keepForPractice({ state, lifeStatus, holdKinds }: ContainerFacts): Transition {
  if (state === 'practice only') return refused('This is kept for practice already.');
  if (holdKinds.includes('recall')) {
    return refused(
      'What is recalled is never kept for practice. Leave it set aside, return it or discard it.',
    );
  }
  if (!isPast(lifeStatus)) {
    return refused(
      'Only expired stock is kept for practice, and this may still be used. Use it, or discard it.',
    );
  }
  return { allowed: true, state: 'practice only' };
}

function refused(message: string): Transition {
  return { allowed: false, message };
}
