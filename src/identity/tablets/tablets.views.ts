export class TabletView {
  id: string;
  name: string;
  createdAt: string;
  revokedAt: string | null;
  /** To the minute; null: never used, and in the answer to a write. */
  lastUsedAt: string | null;
  version: number;
}

export class TabletPersonView {
  personId: string;
  name: string;
}

/** What an enrolled tablet shows while nobody is signed in on it. */
export class EnrolledTabletView {
  id: string;
  name: string;
  studioId: string;
  studioName: string;
  /** Those who chose a PIN; others show their badge. */
  people: TabletPersonView[];
}

export class BadgeView {
  id: string;
  personId: string;
  createdAt: string;
  /** To the minute; null: never used. */
  lastUsedAt: string | null;
}

export class WithdrawnBadgeView {
  id: string;
}

export class OwnPinView {
  /** When the PIN was chosen; null: there is none. */
  chosenAt: string | null;
}
