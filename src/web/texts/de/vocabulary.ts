import type { vocabularyTexts as english } from '../en/vocabulary.js';

export const vocabularyTexts: typeof english = {
  visitKinds: {
    'patch test': 'Verträglichkeitstest',
    'first session': 'Erstbehandlung',
    'touch-up': 'Nachbehandlung',
    refresh: 'Auffrischung',
    correction: 'Korrektur',
    lightening: 'Aufhellung',
    training: 'Übung',
  },

  sessionStates: {
    planned: 'geplant',
    'in setup': 'in Vorbereitung',
    completed: 'abgeschlossen',
    cancelled: 'abgesagt',
    'not attended': 'nicht erschienen',
  },

  verdicts: {
    admitted: 'Zugelassen',
    warned: 'Zugelassen, mit Vorsicht',
    refused: 'Abgelehnt',
    question: 'Welches ist es?',
  },

  knownBy: {
    'own label': 'erkannt am eigenen Etikett',
    "maker's symbol": 'erkannt am Symbol des Herstellers',
    typed: 'eingetippt',
    'picked from a list': 'aus einer Liste gewählt',
  },

  containerStates: {
    sealed: 'ungeöffnet',
    opened: 'angebrochen',
    finished: 'aufgebraucht',
    discarded: 'ausgemustert',
    'practice only': 'nur zum Üben',
  },
};
