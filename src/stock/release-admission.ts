export interface ReleaseRequestFact {
  /** Who asked; null: the service itself. */
  personId: string | null;
  hasPhoto: boolean;
}

export interface ReleaseFacts<Request = ReleaseRequestFact> {
  kind: 'quarantine' | 'recall' | 'compliance';
  /** Who releases; null: the service itself. */
  personId: string | null;
  /** Everything asked of this hold. */
  requests: readonly Request[];
  /** Active people besides that one who may release holds here. */
  others: number;
}

export type ReleaseAdmission<Request> =
  /** `seenBy`: what stands for the second pair of eyes; null: none is asked. */
  | { allowed: true; seenBy: 'second person' | 'photo' | null; request: Request | null }
  | { allowed: false; message: string };

/**
 * Whether somebody may release a hold now. What is recalled needs two: one asks and says why, another releases. Where
 * nobody else may release holds, a photo on the request stands for the other.
 */
export function admitRelease<Request extends ReleaseRequestFact>(
  facts: ReleaseFacts<Request>,
): ReleaseAdmission<Request> {
  const { kind, personId, requests, others } = facts;
  if (kind !== 'recall') return { allowed: true, seenBy: null, request: null };
  if (requests.length === 0) {
    return refused(
      others > 0
        ? 'This is recalled: one person asks for its release and says why, then another releases it. Nobody has asked yet; ask for the release first.'
        : 'This is recalled, and nobody else here may release holds: ask for the release with a reason and a photo of the thing, then release it.',
    );
  }
  const another = requests.find((request) => request.personId !== personId);
  if (another) return { allowed: true, seenBy: 'second person', request: another };
  if (others > 0) {
    return refused(
      'You asked for this release yourself, and what is recalled needs a second pair of eyes. Have another person release it who may.',
    );
  }
  const pictured = requests.find(({ hasPhoto }) => hasPhoto);
  if (pictured) return { allowed: true, seenBy: 'photo', request: pictured };
  return refused(
    'You asked for this release without a photo, and nobody else here may release holds. Ask again with a photo of the thing.',
  );
}

function refused(message: string): { allowed: false; message: string } {
  return { allowed: false, message };
}
