export class StudioView {
  id: string;
  name: string;
  /** IANA name. */
  timeZone: string;
  /** ISO 4217 code. */
  currency: string;
  /** Local time of the daily sweep, HH:MM. */
  morning: string;
  useByNearDays: number;
  openedLifeEndingDays: number;
  /** ISO 8601 duration taken where a label gives no opened life, shown as an assumption; null: none is taken. */
  assumedOpenedLife: string | null;
  houseBlends: 'off' | 'allowed';
  version: number;
}

export class AddedStudioView {
  studioId: string;
}
