import type { toldTexts as english } from '../en/told.js';

export const toldTexts: typeof english = {
  told: {
    title: 'Wie Sie es erfahren',
    lead: 'Was Sie erreicht, während Lotward zu ist, wann und auf welchem Weg. Das wählen alle für sich selbst.',
    inAccount: 'Wie Sie von Hinweisen erfahren',
    inAccountHint: 'Per E-Mail, im Browser, in Ihrem Kalender; und was Sie wecken darf.',
    ofStudio: (studio) => `Wie ${studio} Ihnen Bescheid gibt`,

    what: 'Was Ihnen gesagt wird',
    whatHint: 'Unter Hinweise steht ohnehin alles. Hier geht es darum, was Ihnen geschickt wird.',
    isAssumed:
      'Sie haben noch nichts gewählt: Dies wird nach Ihrer Rolle angenommen. Ändern Sie etwas, um zu wählen.',
    nothingLeads:
      'So wie es steht, wird Ihnen nichts geschickt: Unten steht keine Adresse und kein Browser, der Bescheid bekommt.',
    toldFrom: 'Einzeln geschickt',
    toldFromHint: 'Was weniger dringend ist, steht in der Übersicht am Morgen.',
    toldFroms: {
      urgent: 'nur was dringend ist',
      warning: 'was dringend ist und worum man sich bald kümmern muss',
      notice: 'alles',
      never: 'nichts',
    },
    urgentTurn: 'Dringendes',
    urgentTurnHint: 'Niemand kümmert sich? Dann erfährt es die nächste Person in der Reihenfolge.',
    urgentTurns: {
      'in turn': 'wenn ich an der Reihe bin',
      'at once': 'sofort, wer auch an der Reihe ist',
    },
    summary: 'Übersicht am Morgen',
    summaryHint:
      'Was zuerst zu verwenden, wegzuwerfen und nachzubestellen ist. Gibt es nichts zu sagen, kommt keine.',
    summaries: {
      daily: 'jeden Morgen, an dem es etwas zu sagen gibt',
      never: 'nicht an mich',
    },
    summaryAt: 'Um welche Zeit',
    summaryAtHint: (morning) => `Nach der Uhr des Studios. Leer: ${morning}, der Morgen des Studios.`,
    quietFrom: 'Ruhe ab',
    quietHint: 'Zwischen diesen Zeiten wird nur Dringendes geschickt; anderes wartet. Beide leer: nie Ruhe.',
    quietUntil: 'Ruhe bis',
    kinds: (count) =>
      count === 0
        ? 'Arten, von denen Sie nichts erfahren: keine'
        : `Arten, von denen Sie nichts erfahren: ${count === 1 ? 'eine' : count}`,
    kindsLeftOut: 'Davon erfahre ich nichts',
    kindsHint: 'Außer es ist dringend.',

    mail: 'E-Mail',
    mailHint: 'Nachrichten nennen Produkte, Chargen und Orte; nie, wer behandelt wurde.',
    noMail: 'Hier ist keine Adresse von Ihnen bekannt.',
    address: 'E-Mail-Adresse',
    addressHint: 'Etwa desk@studio.example. Höchstens drei.',
    addMail: 'Adresse hinzufügen',
    noMailServer:
      'Es ist kein Mailserver eingestellt, deshalb geht keine E-Mail hinaus: Sie wartet. Wer Lotward betreibt, setzt SMTP_URL und MAIL_FROM.',

    browsers: 'Browser',
    browsersHint:
      'Ein Browser zeigt Nachrichten von Lotward, auch wenn es zu ist. Jedes Gerät wird für sich gefragt.',
    noBrowser: 'Keiner Ihrer Browser bekommt Bescheid.',
    thisBrowser: 'dieser Browser',
    tellThis: 'Diesem Browser Bescheid geben',
    tellThisHint: 'Der Browser fragt, ob Sie es erlauben.',
    unknownDevice: 'Ein Browser',
    device: (browser, system) => `${browser} auf ${system}`,

    calendar: 'Kalender',
    calendarHint:
      'Eine geheime Adresse, die ein Kalenderprogramm liest: letzte Tage dessen, was da ist, Zeiten für Nachbehandlungen, Lieferungen. Ohne Namen von Kundinnen und Kunden.',
    noCalendar: 'Sie haben keine solche Adresse.',
    calendarSince: (when) =>
      `Sie haben eine Adresse, gemacht ${when}. Sie wird nicht noch einmal gezeigt; wer sie hat, kann den Kalender lesen.`,
    makeCalendar: 'Adresse machen',
    makeAnother: 'Andere Adresse machen',
    makeAnotherQuestion:
      'Die bisherige Adresse endet sofort: Tragen Sie die neue in Ihr Kalenderprogramm ein.',
    removeCalendar: 'Adresse entfernen',
    removeCalendarQuestion: 'Wer die Adresse hat, liest nichts mehr.',
    calendarMade: 'Ihre Kalenderadresse',
    calendarMadeDetail:
      'Kopieren Sie sie jetzt, sie wird nicht noch einmal gezeigt. Wählen Sie im Kalenderprogramm, eine Adresse zu abonnieren, und fügen Sie sie dort ein.',
    calendarLabel: 'Kalenderadresse',
    testCalendar: 'Kalender testen',
    calendarAnswers: (entries) =>
      `Die Adresse antwortet mit ${entries === 0 ? 'noch keinem Eintrag' : entries === 1 ? 'einem Eintrag' : `${entries} Einträgen`}.`,
    noCalendarThere:
      'Es kam kein Kalender. Sehen Sie nach, ob Lotward erreichbar ist, und erstellen Sie sonst eine neue Adresse.',

    openPages: 'Offene Seiten',
    openPagesHint:
      'Jede offene Seite erfährt binnen etwa einer Sekunde von Hinweisen. Einzustellen gibt es nichts.',
    testLive: 'Offene Seite testen',
    tellsLive: 'Diese Seite erfährt sofort davon.',
    tellsNothingLive:
      'Diese Seite erfährt nicht sofort davon: Etwas zwischen hier und Lotward hält es auf, oder es sind zu viele Seiten offen. Sie erfährt davon, sobald Sie sie ansehen.',
  },

  destination: {
    states: { active: 'bekommt Bescheid', paused: 'pausiert', stopped: 'beendet', removed: 'entfernt' },
    erased: 'eine Adresse, die gelöscht wurde',
    addedAt: (when) => `hinzugefügt ${when}`,
    stoppedBecause: 'Beendet:',
    pausedHint: 'Pausiert: Was ihm versprochen ist, wartet.',
    pause: 'Pausieren',
    pauseOf: (name) => `Pausieren: ${name}`,
    resume: 'Weiter',
    resumeOf: (name) => `Weiter Bescheid geben: ${name}`,
    remove: 'Entfernen',
    removeOf: (name) => `Entfernen: ${name}`,
    removeQuestion: (name) =>
      `${name} erfährt nichts mehr. Die Adresse wird gelöscht, und was noch versprochen ist, wird nicht geschickt.`,
    test: 'Testen',
    testOf: (name) => `Testen: ${name}`,
    testing: 'Der Test ist unterwegs …',
    testSent: 'Der Test wurde geschickt und angenommen. Sehen Sie nach, ob er da ist.',
    testNotSent: 'Der Test ließ sich nicht zustellen:',
    testLater: (when) => `Noch nicht, der nächste Versuch ist ${when}. Weil:`,
  },
};
