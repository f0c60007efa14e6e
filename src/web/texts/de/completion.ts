import type { Outcome } from '../../../sessions/completion-rules.js';
import type { completionTexts as english } from '../en/completion.js';

const counted: Record<Outcome, string> = {
  used: 'verwendet',
  'opened unused': 'geöffnet, nicht verwendet',
  'back unopened': 'zurück',
};

export const completionTexts: typeof english = {
  completion: {
    title: 'Sitzung abschließen',
    doneTitle: 'Sitzung abgeschlossen',
    lead: 'Handschuhe aus. Was vermutlich geschah, ist eingetragen; ändern Sie, was anders war.',
    outcomes: {
      used: 'Verwendet',
      'opened unused': 'Geöffnet, nicht verwendet',
      'back unopened': 'Ungeöffnet zurück',
    },
    things: 'Was aus allem wurde',
    thingsHint:
      'Stücke wurden verwendet, Flaschen in einer Mischung auch, andere Flaschen gehen zurück: Ändern Sie, was anders war. Eine geöffnete Verpackung ist nie „zurück“.',
    nothing:
      'Auf dem Tablett liegt nichts. Was trotzdem verwendet wurde, lässt sich über seine Verpackung hinzufügen.',
    inMix: (amount, mix) => `${amount} in ${mix}`,
    wrapperShown: 'Die Verpackung wurde gezeigt.',
    heldQuestion: 'Wurde es verwendet oder nicht?',
    reason: 'Warum es verwendet wurde',
    reasonHint: 'Kann wegbleiben. Wird verschlossen bei der Kundenakte aufbewahrt.',
    dropsOutside: (label) => `Tropfen ${label} außerhalb einer Mischung`,
    dropsUnknown: 'Menge nicht bekannt',
    wrappers: 'Verpackungen',
    wrappersHint:
      'Nicht nötig. Eine Verpackung vom Tablett markiert ihre Zeile; eine, die nie darauf lag, lässt sich als verwendet hinzufügen.',
    lookUp: 'Nachsehen',
    unknownWrapper:
      'Nichts in diesem Studio hat dieses Symbol oder diesen Code. Sehen Sie noch einmal auf das Etikett, oder tragen Sie es später in der Akte der Sitzung nach.',
    notOnTray:
      'Das lag nicht auf dem Tablett. Wurde es verwendet? Es wird in jedem Fall aufgezeichnet, gleich welches Datum es trägt.',
    oneMoreThanLaid:
      'Alle Verpackungen dieser Stücke wurden schon gezeigt. Wurde eines mehr verwendet, als auf dem Tablett lag? Wenn diese zweimal gezeigt wurde, dann nicht.',
    usedBesidesOf: (label, code, state) => `Verwendet: ${label}, ${code}, ${state}`,
    notUsed: 'Es wurde nicht verwendet',
    besides: 'Außerdem verwendet',
    besidesFact: 'Verwendet, obwohl es nicht auf dem Tablett lag.',
    amountOf: (label) => `Wie viel ${label}`,
    lessOf: (label) => `−1: eins weniger, ${label}`,
    moreOf: (label) => `+1: eins mehr, ${label}`,
    remove: 'Weglassen',
    removeOf: (label) => `Weglassen: ${label}`,
    signing: 'Unterschrift',
    signingHint: 'Wer unterschreibt, sagt, dass es so war.',
    complications: 'Komplikationen',
    none: 'Keine',
    some: 'Es gab welche',
    which: 'Welche',
    whichHint: 'Wird verschlossen bei der Kundenakte aufbewahrt.',
    signedBy: 'Unterschrieben von',
    me: 'Wer angemeldet ist',
    waiting: (count) =>
      `${count} ${count === 1 ? 'Eingabe wartet' : 'Eingaben warten'} noch darauf, gesendet zu werden. Die Sitzung lässt sich abschließen, sobald alles angekommen ist.`,
    ofOthers: (count) =>
      `${count} ${count === 1 ? 'Eingabe, die jemand anderes an diesem Tablett machte, wartet' : 'Eingaben, die jemand anderes an diesem Tablett machte, warten'} noch auf diesem Gerät. Die Person soll sich hier anmelden, bevor die Sitzung abgeschlossen wird.`,
    undecided: (count) =>
      `${count === 1 ? 'Eines ist' : `${count} sind`} gesperrt: Sagen Sie, ob es verwendet wurde.`,
    counted: (count, outcome) => `${count} ${counted[outcome]}`,
    backToTray: 'Zurück zum Tablett',
    complete: 'Abschließen und unterschreiben',
    done: 'Abgeschlossen und unterschrieben. Alles hier ist gebucht.',
    booked: 'Was gebucht wurde',
    bookedHint: 'Was sich als anders herausstellt, wird in der Akte berichtigt; nichts wird überschrieben.',
    toRecord: 'Zur Akte der Sitzung',
    toToday: 'Zurück zu heute',
  },
};
