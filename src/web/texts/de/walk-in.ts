import type { walkInTexts as english } from '../en/walk-in.js';

export const walkInTexts: typeof english = {
  walkIn: {
    title: 'Ohne Termin',
    hint: 'Jemand ist ohne Buchung da. Der Name steht nur in diesem Formular.',
    open: 'Jemand kommt ohne Termin',
    who: 'Wer ist es?',
    known: 'Jemand, der schon hier war',
    fresh: 'Jemand Neues',
    search: 'Name, Kontakt oder Kennung',
    searchHint: 'Vollständig, wie es aufgeschrieben wurde.',
    find: 'Suchen',
    found: 'Gefunden',
    noneFound:
      'Darunter ist niemand aufgezeichnet. Prüfen Sie die Schreibweise, oder nehmen Sie die Person neu auf.',
    notHere: 'Wer schon hier war, wird an einem eigenen Gerät gesucht, nicht auf einem gemeinsamen Tablet.',
    name: 'Name',
    contact: 'Kontakt',
    contactHint:
      'Telefonnummer oder Mailadresse. Kann wegbleiben, aber ein Rückruf muss die Person erreichen.',
    artist: 'Wer behandelt',
    procedure: 'Behandlung',
    visitKind: 'Art des Besuchs',
    noProcedures:
      'Noch ist keine Behandlung angelegt. Wer das Studio leitet, legt sie in den Einstellungen an.',
    begin: 'Beginnen und das Tablett legen',
  },
};
