/** The requests that were accepted and whose answers have not gone out whole. */
export class OpenRequests {
  private count = 0;
  private readonly waiting: (() => void)[] = [];

  begin(): void {
    this.count += 1;
  }

  end(): void {
    this.count -= 1;
    if (this.count === 0) for (const tell of this.waiting.splice(0)) tell();
  }

  /** Waits until there is none. */
  async allAnswered(): Promise<void> {
    if (this.count > 0) await new Promise<void>((resolve) => this.waiting.push(resolve));
  }
}
