/**
 * Whether what was ordered is late: from the day after the one it is expected on, until it is received or called off.
 *
 * @param expectedOn the last day on which it is in time, ISO `YYYY-MM-DD`
 * @param today the studio's local day
 */
export function isLateDelivery(expectedOn: string, endedAs: string | null, today: string): boolean {
  return endedAs === null && today > expectedOn;
}
