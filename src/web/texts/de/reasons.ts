import type { ReasonFacts } from '../../../sessions/reason-facts.js';
import type { reasonsTexts as english } from '../en/reasons.js';
import { trayTexts } from './tray.js';

function described(label: string, lotCode: string | null | undefined): string {
  return `${label}, ${lotCode == null ? 'ohne Chargencode' : `Charge ${lotCode}`}`;
}

/** Was gezeigt wurde; nicht gesagt, wenn die Aufzeichnung älter ist als diese Angaben. */
function thing({ label, lotCode }: ReasonFacts): string | undefined {
  return label === undefined ? undefined : described(label, lotCode);
}

/** Ein Satz über das Gezeigte, und was stattdessen da ist. */
function refused({ insteadLabel, insteadLotCode }: ReasonFacts, seen: string): string {
  if (insteadLabel === undefined) return seen;
  return insteadLabel === null
    ? `${seen} Ein anderes, das verwendet werden darf, ist nicht da.`
    : `${seen} Nehmen Sie stattdessen ${described(insteadLabel, insteadLotCode)}.`;
}

function because({ on }: ReasonFacts): string {
  return on === 'parent lot' ? ', weil eine Charge, die hineingemischt wurde, es ist' : '';
}

export const reasonsTexts: typeof english = {
  reasons: {
    recalled: (facts) =>
      thing(facts) &&
      refused(
        facts,
        `${thing(facts)} ist zurückgerufen${because(facts)}. Legen Sie es beiseite; verwenden Sie es nicht.`,
      ),
    'on hold': (facts) =>
      thing(facts) &&
      refused(
        facts,
        `${thing(facts)} ist gesperrt (${facts.reason})${because(facts)}, bis die Sperre aufgehoben wird.`,
      ),
    expired: (facts) =>
      thing(facts) &&
      refused(
        facts,
        `${thing(facts)} ist abgelaufen: verwendbar bis ${facts.lastDay}.${
          facts.laterRecordedUseBy == null
            ? ''
            : ` Aufgezeichnet ist ${facts.laterRecordedUseBy}, aber das frühere Datum gilt; wurde die Aufzeichnung zu Recht berichtigt, scannen Sie das eigene Etikett von Lotward.`
        }`,
      ),
    'open too long': (facts) =>
      thing(facts) &&
      refused(
        facts,
        `${thing(facts)} ist zu lange angebrochen: nach ${trayTexts.whose[facts.openedLifeFrom ?? 'none']} verwendbar bis ${facts.lastDay}.`,
      ),
    'practice only': (facts) =>
      thing(facts) && refused(facts, `${thing(facts)} ist nur für Übungshaut bestimmt.`),
    'already used': (facts) =>
      facts.label &&
      refused(
        facts,
        `Genau dieses Stück ${facts.label} wurde schon gescannt: Seine Seriennummer gilt nur einmal.`,
      ),
    'none left': (facts) => {
      // Von einem Produkt, nicht von einer Flasche oder Packung.
      if (facts.lotCode === undefined && facts.label !== undefined) {
        return refused(facts, `Von ${facts.label} ist nichts da, was verwendet werden darf.`);
      }
      const what = thing(facts);
      if (what === undefined) return undefined;
      if (facts.state === 'finished' || facts.state === 'discarded') {
        const state = facts.state === 'finished' ? 'aufgebraucht' : 'ausgemustert';
        return refused(facts, `${what} ist als ${state} aufgezeichnet.`);
      }
      const elsewhere = facts.reservedPieces ? ` ${facts.reservedPieces} davon liegen auf Tabletts.` : '';
      return refused(facts, `Nach dem Buch ist von ${what} nichts mehr da.${elsewhere}`);
    },

    'no date known': ({ label }) =>
      label &&
      `${label}: Suchen Sie auf dem Etikett nach einem Datum und tragen Sie es vor der Verwendung ein.`,
    'date differs from the record': ({ symbolUseBy, recordedUseBy, counted }) => {
      if (symbolUseBy === undefined || counted === undefined) return undefined;
      return counted === 'record'
        ? `Auf dem Etikett steht „verwendbar bis“ ${symbolUseBy}, aufgezeichnet ist ${recordedUseBy}, und das gilt: Es wurde nach dem Druck berichtigt. Drucken Sie das Etikett neu.`
        : `Im Symbol steht „verwendbar bis“ ${symbolUseBy}, aufgezeichnet ist ${recordedUseBy}; das frühere gilt. Lassen Sie die Aufzeichnung berichtigen.`;
    },
    'out of date before the touch-up': (facts) =>
      thing(facts) &&
      `${thing(facts)} ist bis ${facts.lastDay} verwendbar, die Nachbehandlung kann aber noch am ${facts.touchUpBy} sein. Eine frischere Charge taugt für beide.`,
    'an earlier-expiring one is here': ({ otherLabel, otherLotCode, lastDay }) =>
      otherLabel &&
      `${described(otherLabel, otherLotCode)} läuft zuerst ab (${lastDay}). Nehmen Sie das, wenn nichts dagegen spricht.`,
    'another bottle is open': ({ otherLabel, otherLotCode }) =>
      otherLabel && `${described(otherLabel, otherLotCode)} ist schon angebrochen. Verbrauchen Sie erst das.`,
    "another artist's": (facts) =>
      thing(facts) && `${thing(facts)} gehört jemand anderem. Fragen Sie, bevor Sie es verwenden.`,
    'not on the kit list': ({ label }) =>
      label && `${label} steht nicht auf der Packliste dieser Behandlung.`,

    'another one?': (facts) =>
      thing(facts) &&
      `${thing(facts)} liegt schon auf diesem Tablett (${facts.linesOnTray}). Ist dies ein weiteres Stück? Sein Symbol hat keine Seriennummer, die es sagen würde.`,
    'which container?': () =>
      'Mehr als eine Flasche dieser Charge könnte gemeint sein. Scannen Sie das Etikett der Flasche in der Hand, oder wählen Sie sie.',
    'which lot?': () =>
      'Das nennt nicht eine einzige Charge. Wählen Sie die, die auf dem Stück in der Hand steht.',
  },

  refusedSince: {
    recalled: 'Es wurde zurückgerufen, nachdem es bereitgelegt war. Verwenden Sie es nicht.',
    'on hold':
      'Es wurde gesperrt, nachdem es bereitgelegt war. Verwenden Sie es nicht, bis die Sperre aufgehoben ist.',
    expired: 'Es ist abgelaufen, seit es bereitgelegt wurde.',
    'open too long': 'Seine Haltbarkeit nach dem Öffnen endete, seit es bereitgelegt wurde.',
    'practice only': 'Es wurde zum Üben beiseitegelegt.',
    'none left':
      'Es ist nach der Aufzeichnung nicht mehr da, seit es bereitgelegt wurde. Nehmen Sie es vom Tablett, oder sagen Sie beim Abschließen, was davon verwendet wurde.',
  },
};
