export class PasskeyView {
  id: string;
  name: string;
  /** The host name it belongs to; browsers offer it nowhere else. */
  worksAt: string;
  createdAt: string;
  lastUsedAt: string;
  /** When it turned out that two devices hold it: it works no more, and is best removed. */
  suspectedAt: string | null;
  version: number;
}

export class AddedPasskeyView {
  id: string;
}
