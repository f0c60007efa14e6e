import type { Texts } from '../en/english.js';
import { accessTexts } from './access.js';
import { accountTexts } from './account.js';
import { alertsTexts } from './alerts.js';
import { catalogueTexts } from './catalogue.js';
import { channelsTexts } from './channels.js';
import { clientsTexts } from './clients.js';
import { commonTexts } from './common.js';
import { expectedTexts } from './expected.js';
import { frameTexts } from './frame.js';
import { offlineTexts } from './offline.js';
import { ordersTexts } from './orders.js';
import { photosTexts } from './photos.js';
import { planLineTexts } from './plan-line.js';
import { planReplayTexts } from './plan-replay.js';
import { planWhatIfTexts } from './plan-what-if.js';
import { planningTexts } from './planning.js';
import { plansTexts } from './plans.js';
import { reasonsTexts } from './reasons.js';
import { recallClosingTexts } from './recall-closing.js';
import { recallPeopleTexts } from './recall-people.js';
import { recallStockTexts } from './recall-stock.js';
import { recallsTexts } from './recalls.js';
import { receivingTexts } from './receiving.js';
import { recordsTexts } from './records.js';
import { scannerTextsGerman } from './scanner.js';
import { settingsTexts } from './settings.js';
import { signInTexts } from './sign-in.js';
import { stockTexts } from './stock.js';
import { supplierClaimsTexts } from './supplier-claims.js';
import { suppliersTexts } from './suppliers.js';
import { takingInTexts } from './taking-in.js';
import { todayTexts } from './today.js';
import { toldTexts } from './told.js';
import { trayTexts } from './tray.js';
import { vocabularyTexts } from './vocabulary.js';

/** Alles, was die Seiten sagen, auf Deutsch. Fehlt etwas, so lässt sich die App nicht bauen. */
export const german: Texts = {
  language: 'de-DE',
  ...accessTexts,
  ...accountTexts,
  ...alertsTexts,
  ...toldTexts,
  ...channelsTexts,
  ...expectedTexts,
  ...commonTexts,
  ...frameTexts,
  ...reasonsTexts,
  ...settingsTexts,
  ...signInTexts,
  ...todayTexts,
  ...vocabularyTexts,
  ...scannerTextsGerman,
  ...photosTexts,
  ...catalogueTexts,
  ...receivingTexts,
  ...plansTexts,
  ...planLineTexts,
  ...planWhatIfTexts,
  ...planReplayTexts,
  ...ordersTexts,
  ...supplierClaimsTexts,
  ...suppliersTexts,
  ...planningTexts,
  ...stockTexts,
  ...trayTexts,
  ...offlineTexts,
  ...recallsTexts,
  ...recallStockTexts,
  ...recallPeopleTexts,
  ...recallClosingTexts,
  ...recordsTexts,
  ...clientsTexts,
  ...takingInTexts,
};
