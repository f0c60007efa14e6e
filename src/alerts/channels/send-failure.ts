/** A channel could not send. Whatever else it throws counts as a failure for now. */
export class SendFailure extends Error {
  /**
   * @param message what was seen, without secrets
   * @param isLasting trying again would end the same
   * @param retryAt ISO 8601 instant before which the receiver wants no other attempt; null: it said none
   * @param isGone the receiver said that the destination is no more: it is stopped
   */
  constructor(
    message: string,
    readonly isLasting = false,
    readonly retryAt: string | null = null,
    readonly isGone = false,
  ) {
    super(message);
  }
}
