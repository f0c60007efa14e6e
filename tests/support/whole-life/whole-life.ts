import type { RunningService } from '../service.js';
import { liveAccess } from './access.js';
import { liveAlerts } from './alerts.js';
import { liveDestinations } from './destinations.js';
import { liveOrders } from './orders.js';
import { livePlans } from './plans.js';
import { liveRecalls } from './recalls.js';
import { RecordingService, type SentRequest } from './recording-service.js';
import { liveRegister } from './register.js';
import { liveRights } from './rights.js';
import { liveStock } from './stock.js';
import { liveSupply } from './supply.js';
import type { Texts } from './texts.js';
import { liveTransfers } from './transfers.js';
import { liveVisits } from './visits.js';

/**
 * Lives a whole life in a studio: every write of the API succeeds at least once, with every field that holds a text or an
 * id. What tests attack is made here, so a new route is attacked as soon as its use stands here; the tests say when one is
 * missing.
 * @param texts makes what a person would write
 * @returns every request in the order in which it was made
 */
export async function liveWholeLife(service: RunningService, texts: Texts): Promise<SentRequest[]> {
  const recording = service instanceof RecordingService ? service : RecordingService.on(service);
  const people = await liveAccess(recording, texts);
  const register = await liveRegister(recording, texts);
  const stock = await liveStock(recording, texts, people, register);
  await liveTransfers(recording, texts, people, register, stock);
  const clients = await liveVisits(recording, texts, people, register, stock);
  const offers = await liveSupply(recording, texts, people, register);
  await liveOrders(recording, texts, register, offers, stock.placeId);
  await livePlans(recording);
  await liveRights(recording, texts, clients);
  await liveRecalls(recording, texts, people, register, clients);
  await liveAlerts(recording, texts, people);
  await liveDestinations(recording, texts, people);
  await recording.made('/audit-log/exports');
  return recording.sent;
}
