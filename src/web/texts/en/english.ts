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
import { scannerTexts } from './scanner.js';
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

/** Everything the app says, in English: one file for each feature. Another language is a folder like this one. */
export const english = {
  /** BCP 47; dates and numbers are written by it. */
  language: 'en-GB',
  ...commonTexts,
  ...frameTexts,
  ...signInTexts,
  ...accountTexts,
  ...alertsTexts,
  ...toldTexts,
  ...channelsTexts,
  ...expectedTexts,
  ...accessTexts,
  ...settingsTexts,
  ...todayTexts,
  ...trayTexts,
  ...offlineTexts,
  ...scannerTexts,
  ...photosTexts,
  ...stockTexts,
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
  ...recallsTexts,
  ...recallStockTexts,
  ...recallPeopleTexts,
  ...recallClosingTexts,
  ...recordsTexts,
  ...clientsTexts,
  ...takingInTexts,
  ...reasonsTexts,
  ...vocabularyTexts,
};

export type Texts = typeof english;
