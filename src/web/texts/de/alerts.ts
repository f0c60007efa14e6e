import type { alertsTexts as english } from '../en/alerts.js';

export const alertsTexts: typeof english = {
  alertPages: {
    title: 'Hinweise',
    lead: 'Worum man sich kümmern muss, das Schlimmste zuerst. Was anhält, schließt sich von selbst, wenn es behoben ist; was einmal geschah, wenn es jemand gesehen hat.',
    pages: { all: 'Was offen ist', notSent: 'Nicht zugestellt', morning: 'Heute Morgen' },
    urgentInMenu: (count) => `${count} dringend`,
    filters: 'Welche Hinweise',
    show: 'Zeigen',
    which: 'Welche',
    states: {
      open: 'jetzt offen',
      'put off': 'aufgeschoben',
      closed: 'geschlossen',
      all: 'alle, auch geschlossene',
    },
    givenToMe: 'mir gegeben',
    kind: 'Was nicht stimmt',
    anyKind: 'irgendetwas',
    severity: 'Wie dringend',
    anySeverity: 'egal',
    order: 'Reihenfolge',
    orders: { worst: 'das Schlimmste zuerst', latest: 'das Neueste zuerst' },
    parts: { urgent: 'Dringend', warning: 'Bald', notice: 'Zur Kenntnis' },
    partHints: {
      urgent: 'Vor allem anderen.',
      warning: 'In den nächsten Tagen.',
      notice: 'Es geht nichts verloren, wenn es wartet.',
    },
    noneOfSeverity: 'Keine.',
    noneFound: 'Kein Hinweis ist so.',
    openedAt: (when) => `Offen seit ${when}`,
    closedAt: (when) => `Offen bis ${when}`,
    givenTo: (name) => `gegeben an ${name}`,
    putOffUntil: (day) => `aufgeschoben bis ${day}`,
    me: 'Sie selbst',
    toMe: 'Sie',
    nextStep: 'Was als Nächstes zu tun ist',
    act: 'Dorthin, wo es geschieht',
    details: (alert, what) => `${alert}: ${what}`,

    nextSteps: {
      'low stock':
        'Nachbestellen, oder aufnehmen, was gekommen ist. Wie wenig wenig ist, wird unter Bestand festgelegt.',
      'use-by near': 'Zuerst verwenden. Was nach diesem Tag übrig ist, wird weggeworfen.',
      'opened life ending': 'Zuerst verwenden, und nach dem letzten Tag wegwerfen, was übrig ist.',
      'expired on the shelf': 'Heute aus dem Regal nehmen und als weggeworfen eintragen.',
      'backup failed': 'Die Ursache lesen, beheben, und jetzt eine Sicherung machen.',
      'notice source failing':
        'Nachsehen, ob dieses Gerät die Adresse erreicht. Bis dahin auf den Seiten der Behörde selbst nachsehen.',
      'backup overdue': 'Jetzt eine Sicherung machen und nachsehen, warum von selbst keine entstand.',
      'use against a refusal':
        'Die Sitzung ansehen und fachlich beurteilen, was folgt. Das Etikett und örtliche Vorschriften gehen vor.',
      'same code, other use-by':
        'Die Etiketten in der Hand vergleichen und die Charge berichtigen, die falsch eingetragen wurde.',
      'in transit too long':
        'Das andere Studio fragen, wo es ist. Dann wird es dort eingeräumt oder hier zurückgezogen.',
      'held where it came from':
        'Beiseitestellen, damit es niemand nimmt, und das andere Studio nach dem Grund fragen.',
      'recall open':
        'Den Rückruf beantworten: entscheiden, was möglich ist, finden, was hier ist, und allen sagen, die es bekamen. Örtliche Vorschriften gehen vor.',
      'recall notice found': 'Die Meldung lesen. Beantworten, oder sagen, warum sie Sie nicht betrifft.',
      'drill due': 'Einen Rückruf üben; das dauert, so lange Sie wollen, und sperrt nichts.',
      'held stock on hand':
        'Beiseitestellen, damit es niemand nimmt. Zurückgerufenes wird zurückgegeben oder vernichtet, wie der Rückruf es sagt; was nur beiseitegestellt war, wird freigegeben oder weggeworfen.',
      'kit cannot be filled':
        'Rechtzeitig bestellen, was fehlt, oder die Sitzung auf einen anderen Tag legen.',
      'touch-up mix out of date':
        'Die Nachbehandlung vor diesen Tag legen, oder den gleichen Ton aus einer Charge mischen, die dann in der Zeit ist.',
      'order due': 'Den Plan ansehen und aus seinem Korb die Bestellung entwerfen.',
      'order not sent': 'Die Ursache beheben und die Bestellung nochmals senden, oder von Hand senden.',
      'no plan made':
        'Nochmals einen Plan erstellen lassen. Misslingt auch das, es der Person sagen, die den Dienst betreibt; bis dahin gelten die Mindestmengen des Bestands.',
      'delivery late':
        'Beim Lieferanten nachfragen. Dann den neuen Tag eintragen, sie absagen, oder sie aufnehmen, wenn sie doch kommt.',
      'queue unhealthy':
        'Lesen, was gesehen wurde, und es beheben. Verloren geht nichts: Was versprochen ist, wird gesendet, sobald es wieder geht.',
    },
    nextStepElse: 'Ansehen, worum es geht, und entscheiden.',

    one: {
      facts: 'Wie es steht',
      about: 'Was nicht stimmt',
      since: 'Offen seit',
      until: 'Geschlossen',
      closedByItself: (when) => `${when}, von selbst`,
      closedBy: (when, who) => `${when}, von ${who}`,
      taken: 'Übernommen von',
      seen: 'Gesehen von',
      takenAt: (who, when) => `${who}, ${when}`,
      given: 'Gegeben an',
      putOff: 'Aufgeschoben bis',
      answer: 'Was Sie tun können',
      answerHint: 'Jeder Schritt bleibt im Verlauf; keiner wird zurückgenommen.',
      isOver: 'Er ist vorbei. Was geschah, bleibt unten stehen.',
      putOffIt: 'Aufschieben',
      putOffHint:
        'Bis zum Morgen dieses Tages wird niemand daran erinnert; wird es schlimmer, wird es sofort gesagt.',
      putOffUntil: 'Bis zum Morgen des',
      giveIt: 'Jemandem geben',
      giveHint: 'Die Person erfährt es, und es steht bei dem, was sie zu tun hat.',
      giveTo: 'Wem',
      choose: 'wählen',
      noteIt: 'Eine Notiz hinzufügen',
      note: 'Notiz',
      noteHint: 'Wer hier arbeitet, liest die Notiz. Nichts über Kundinnen oder Kunden gehört hierher.',
      closeIt: 'Schließen',
      closeNote: 'Warum er geschlossen wird',
      closeHint:
        'Er ist damit endgültig geschlossen und öffnet sich nur neu, wenn es schlimmer wird oder wieder geschieht. Behobenes schließt sich von selbst.',
      history: 'Was geschah',
      historyHint: 'Wer was wann tat. Nichts davon wird geändert oder zurückgenommen.',
      earlierSteps: (count) =>
        count === 1
          ? 'Ein früherer Schritt wird nicht gezeigt.'
          : `${count} frühere Schritte werden nicht gezeigt.`,
      hiddenNote: 'Eine Notiz, die Ihrer Rolle nicht gezeigt wird, da sie von Kundschaft handeln kann.',
      service: 'Lotward selbst',
      deliveries: 'Wer es erfuhr',
      deliveriesHint: 'Jede Nachricht nach ihrem Ziel, und was daraus wurde.',
      noDeliveries:
        'Niemand erfuhr es durch eine eigene Nachricht. Eine Übersicht des Morgens kann ihn nennen.',
      gone: 'Diesen Hinweis gibt es nicht',
      toAll: 'Zu allen Hinweisen',
    },

    events: {
      opened: 'Geöffnet',
      worse: 'Schlimmer geworden',
      milder: 'Milder geworden',
      acknowledged: 'Übernommen',
      'put off': 'Aufgeschoben',
      'due again': 'Wieder fällig',
      given: 'Jemandem gegeben',
      'handed on': 'Weitergegeben',
      noted: 'Notiz',
      closed: 'Geschlossen',
      ended: 'Was nicht stimmte, ist behoben',
    },
    wasSeen: 'Gesehen und erledigt',
    nobodyTookIt: 'Niemand übernahm ihn; alle, die an der Reihe sind, erfuhren es noch einmal',
    wasGivenTo: (name) => `Gegeben an ${name}`,
    handedOnTo: (name) => `Weitergegeben an ${name}`,
    wasPutOffUntil: (day) => `Aufgeschoben bis ${day}`,
    nowOf: (event, severity) => `${event}: ${severity}`,

    channels: { log: 'Protokoll des Dienstes', mail: 'E-Mail', webhook: 'Webhook', push: 'Browser' },
    told: {
      opened: 'Er öffnete sich',
      worse: 'Es wurde schlimmer',
      'due again': 'Er ist wieder fällig',
      'handed on': 'Niemand übernahm ihn',
      given: 'Er wurde jemandem gegeben',
      closed: 'Er ist geschlossen',
      summary: 'Übersicht des Morgens',
      test: 'Ein Test',
    },
    deliveryStates: { pending: 'unterwegs', sent: 'gesendet', undeliverable: 'nicht zugestellt' },
    promisedAt: (when) => `versprochen ${when}`,
    settledAt: (when) => `entschieden ${when}`,
    nextTry: (when) => `nächster Versuch ${when}`,
    attempts: (count) => (count === 1 ? 'ein Versuch' : `${count} Versuche`),
    unknownAttempts: (count) =>
      `Vielleicht kam sie noch ${count === 1 ? 'einmal' : `${count}-mal`} an: So viele Versuche brachen ab, bevor eine Antwort kam. Jeder trägt dieselbe Kennung.`,
    cause: 'Weil:',
    sendAgain: 'Erneut senden',
    sendAgainOf: (what) => `Erneut senden: ${what}`,

    notSent: {
      title: 'Nicht zugestellt',
      lead: 'Nachrichten, die aufgegeben wurden, jede mit ihrer Ursache. Beheben Sie die Ursache und senden Sie erneut; wer eine schon bekam, erkennt sie an ihrer Kennung.',
      list: 'Nachrichten, die nicht zugestellt wurden',
      some: 'Einige Nachrichten wurden nicht zugestellt.',
      toThem: 'Ansehen, welche',
      none: 'Alles, was versprochen war, wurde gesendet oder wird noch versucht.',
      waiting: 'Wird noch versucht',
      waitingHint:
        'Jede wird zur genannten Zeit von selbst wieder versucht. Was nicht dringend ist, wartet das Ende der Ruhezeit ab.',
      noneWaiting: 'Nichts wartet.',
      toAlert: (alert) => `Es geht um: ${alert}`,
      nowhere: {
        removed: 'Ihr Ziel wurde entfernt. Sie wird nirgendwohin mehr gesendet.',
        stopped: 'Ihr Ziel nimmt nichts mehr an. Richten Sie es unter Einstellungen oder Mein Konto neu ein.',
        paused: 'Ihr Ziel ist pausiert. Sie wartet, bis das vorbei ist.',
      },
    },

    morning: {
      title: 'Heute Morgen',
      lead: 'Einmal am Morgen: was zuerst verwendet, was weggeworfen, was bestellt wird, und was eine Antwort braucht.',
      now: 'Wie es jetzt hieße',
      nowHint: 'An Sie, in diesem Augenblick. Durch das Ansehen wird nichts gesendet.',
      nothing: 'Nichts zu sagen. Alles, wonach gesehen wurde, ist in Ordnung.',
      earlier: 'Frühere Morgen',
      earlierHint: 'Wie sie an Sie gesendet wurden.',
      noneEarlier: 'Für Sie wurde noch keine geschrieben.',
      nothingSent: 'Es gab nichts zu sagen, also wurde nichts gesendet.',
      show: 'Was darin stand',
      showOf: (day) => `Was am ${day} darin stand`,
      nextAt: (when) => `Die nächste Übersicht geht an Sie ${when}.`,
      whyNone: {
        'not wanted': 'An Sie geht zurzeit keine Übersicht.',
        'no mail address and no browser that is told':
          'An Sie geht keine Übersicht: Lotward kennt keine E-Mail-Adresse von Ihnen, und keiner Ihrer Browser wird benachrichtigt.',
      },
      choose: 'Wie Sie es erfahren',
      parts: {
        'answer today': 'Heute zu beantworten',
        'use first': 'Zuerst zu verwenden',
        discard: 'Wegzuwerfen',
        order: 'Zu bestellen',
        'orders due': 'Nach Plan fällige Bestellungen',
        'touch-ups at risk': 'Gefährdete Nachbehandlungen',
      },
      leftOut: (count) => (count === 1 ? 'und eine weitere Zeile' : `und ${count} weitere Zeilen`),
    },

    live: {
      region: 'Dringende Hinweise',
      urgent: 'Dringend',
      look: 'Ansehen',
      lookAt: (what) => `Ansehen, dringend: ${what}`,
      seen: 'Gesehen',
      seenOf: (what) => `Gesehen: ${what}`,
      more: (count) => (count === 1 ? 'Ein weiterer ist dringend.' : `${count} weitere sind dringend.`),
      toAll: 'Zu allen Hinweisen',
    },
  },

  pushObstacles: {
    'insecure address':
      'Browser werden nur an einer Adresse benachrichtigt, der sie trauen: HTTPS mit einem Zertifikat, dem dieses Gerät traut, oder localhost. Fragen Sie nach einer solchen Adresse bei denen, die Lotward betreiben.',
    'not in this browser':
      'Dieser Browser kann nicht benachrichtigt werden, solange Lotward geschlossen ist. Nehmen Sie einen anderen, oder E-Mail.',
    'home screen first':
      'Auf diesem Gerät werden nur Apps des Home-Bildschirms benachrichtigt. Wählen Sie Teilen, Zum Home-Bildschirm, öffnen Sie Lotward von dort, und kommen Sie auf diese Seite zurück.',
    'app not kept':
      'Dieser Browser behält die App nicht, etwa in einem privaten Fenster oder ohne vertrautes Zertifikat. Laden Sie die Seite neu, oder öffnen Sie sie in einem gewöhnlichen Fenster.',
    'not allowed':
      'Dieser Browser lässt Lotward keine Nachrichten zeigen. Erlauben Sie sie in seinen Einstellungen für diese Adresse, und versuchen Sie es erneut.',
    'not answered':
      'Der Browser fragte und bekam keine Antwort. Versuchen Sie es erneut, und erlauben Sie es, wenn er fragt.',
    'not reached':
      'Der Nachrichtendienst des Browser-Herstellers gab keine Adresse. Sehen Sie nach, ob dieses Gerät das Internet erreicht, und versuchen Sie es erneut.',
  },
};
