import type { TrayThingView } from '../../../sessions/tray.views.js';
import type { KnownBy, SessionState, Verdict, VisitKind } from '../../../sessions/vocabulary.js';

export const vocabularyTexts = {
  visitKinds: {
    'patch test': 'patch test',
    'first session': 'first session',
    'touch-up': 'touch-up',
    refresh: 'refresh',
    correction: 'correction',
    lightening: 'lightening',
    training: 'training',
  } satisfies Record<VisitKind, string>,

  sessionStates: {
    planned: 'planned',
    'in setup': 'in setup',
    completed: 'completed',
    cancelled: 'cancelled',
    'not attended': 'not attended',
  } satisfies Record<SessionState, string>,

  verdicts: {
    admitted: 'Admitted',
    warned: 'Admitted, with care',
    refused: 'Refused',
    question: 'Which one?',
  } satisfies Record<Verdict, string>,

  knownBy: {
    'own label': 'known by our label',
    "maker's symbol": 'known by the maker’s symbol',
    typed: 'typed',
    'picked from a list': 'picked from a list',
  } satisfies Record<KnownBy, string>,

  containerStates: {
    sealed: 'sealed',
    opened: 'opened',
    finished: 'finished',
    discarded: 'discarded',
    'practice only': 'practice only',
  } satisfies Record<TrayThingView['state'], string>,
};
