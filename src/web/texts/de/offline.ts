import type { offlineTexts as english } from '../en/offline.js';

export const offlineTexts: typeof english = {
  offline: {
    notReached: (since) => `Der Dienst ist seit ${since} nicht erreichbar.`,
    goesOn:
      'Legen Sie weiter auf: Was Sie scannen, beurteilt dieses Gerät nach dem, was es zuletzt wusste. Es bleibt hier und wird gesendet, sobald der Dienst wieder erreichbar ist. Zum Abschließen einer Sitzung wird der Dienst gebraucht.',
    knownAsOf: (time) => `Dieses Gerät kennt den Tag mit Stand ${time}.`,
    lookingUp: 'Dieses Gerät schlägt den Tag nach …',
    nothingKnown: 'Dieses Gerät weiß noch nichts vom Tag und kann ohne Netz nichts beurteilen.',
    leftOut: (count) => `${count} Behälter sind ausgelassen, weil es so viele sind.`,
    waiting: (count) =>
      `${count} ${count === 1 ? 'Eintrag wartet' : 'Einträge warten'} hier auf das Senden; jeder zählt einmal.`,
    othersWaiting: (count) =>
      `${count} ${count === 1 ? 'Eintrag' : 'Einträge'} von jemand anderem ${count === 1 ? 'wartet' : 'warten'} hier und ${count === 1 ? 'wird' : 'werden'} gesendet, wenn sich diese Person an diesem Gerät anmeldet.`,
    notKept:
      'Dieser Browser behält nichts für Lotward: Sein Speicher ist voll, oder es ist ein privates Fenster. Was wartet, ginge mit dieser Seite verloren. Lassen Sie sie offen, bis der Dienst erreichbar ist.',
    judgedHere:
      'Auf diesem Gerät beurteilt, nach dem, was es zuletzt wusste; der Dienst hat es noch nicht gesehen.',
    notKnownHere:
      'Dieses Gerät kennt nicht, was gezeigt wurde, und der Dienst ist nicht erreichbar. Es bleibt hier und wird später beurteilt. Legen Sie es so lange beiseite, oder nehmen Sie etwas Bekanntes.',
    judgedOtherwise: (label, when, here, there) =>
      `${label ?? 'Ein Scan'} von ${when}: ${here === null ? '' : `hier als „${here}“ beurteilt, `}vom Dienst als „${there}“.`,
    refusedThere: (label, when) => `${label ?? 'Ein Eintrag'} von ${when} wurde vom Dienst nicht angenommen.`,
    doTakeOff:
      'Nach der Aufzeichnung liegt es nicht auf. Nehmen Sie es weg; hat es die Kundin oder den Kunden berührt, sagen Sie es beim Abschließen: Das wird in jedem Fall aufgezeichnet.',
    doLay: 'Nach der Aufzeichnung liegt es jetzt auf. Wenn nicht, nehmen Sie es auf der Seite weg.',
    seen: 'Ich habe es gesehen',
  },
};
