import type { scannerTexts } from '../en/scanner.js';

export const scannerTextsGerman: typeof scannerTexts = {
  scanner: {
    title: 'Kamera und Scanner',
    picture: 'Was die Kamera sieht',
    seen: {
      loading: 'Der Symbolleser wird geladen …',
      nothing: 'Sucht. Ein Symbol vor die Kamera halten.',
      read: 'Gelesen.',
      stays: 'Schon gelesen. Noch eines? Wegnehmen, dann zeigen.',
    },
    start: 'Kamera einschalten',
    startAgain: 'Kamera noch einmal einschalten',
    stop: 'Kamera ausschalten',
    torchOn: 'Licht an',
    torchOff: 'Licht aus',
    photo: 'Foto machen',
    found: (count: number) => {
      if (count === 0) {
        return 'Im Foto war kein Symbol zu lesen. Näher heran, scharf, mit mehr Licht und ohne Spiegelung, das ganze Symbol im Bild; oder die Charge vom Etikett eintippen.';
      }
      return count === 1 ? '1 Symbol im Foto gelesen.' : `${count} Symbole im Foto gelesen.`;
    },
    'no picture':
      'Diese Datei ist kein Bild, das sich hier öffnen lässt. Ein Foto wählen, etwa JPEG oder PNG.',
    'no reader':
      'Der Teil, der Symbole liest, ließ sich nicht laden. Prüfen, ob der Dienst erreichbar ist, und noch einmal einschalten; hilft das nicht, die Seite neu laden.',
    insecure:
      'Browser geben die Kamera nur Seiten, die über HTTPS oder von diesem Rechner selbst kommen. Wer Lotward betreibt, erstellt einmal ein Zertifikat mit „make-local-certificate“; dann die Adresse öffnen, die mit https beginnt.',
    refused:
      'Die Kamera ist hier nicht erlaubt. Auf das Zeichen vor der Adresse der Seite drücken, die Kamera erlauben und noch einmal einschalten.',
    absent: 'Es wurde keine Kamera gefunden. Eine anschließen und noch einmal einschalten.',
    'in use':
      'Die Kamera ist da, liefert aber kein Bild: Vielleicht benutzt sie ein anderes Programm. Dieses schließen und noch einmal einschalten.',
    unplugged: 'Die Kamera wurde abgezogen oder entzogen. Wieder anschließen und noch einmal einschalten.',
    unknown: 'Die Kamera ließ sich nicht einschalten. Noch einmal versuchen oder die Seite neu laden.',
    stillWorks: 'Handscanner, Foto und Eintippen gehen trotzdem.',
    settings: 'Einstellungen dieses Geräts',
    camera: 'Kamera',
    sound: 'Kurzer Ton bei jedem Urteil',
    soundHint:
      'Aufwärts: zugelassen. Abwärts: Vorsicht, tiefer und länger: abgelehnt. Zweimal gleich: eine Frage.',
    substitute: 'Das tippt der Scanner anstelle des Trennzeichens GS',
    substituteHint:
      'Leer lassen, wenn er Strg+], F8 oder Alt+029 sendet oder dort nichts tippt. Sonst das, was er tippt, etwa ~ oder |.',
    substituteUnusable:
      'Ein Zeichen, das in Symbolen selbst vorkommt, kann nicht für das Trennzeichen stehen. Erlaubt sind ein bis sechs Zeichen ohne Leerzeichen, darunter eines wie ~ | ^ # @.',
  },
};
