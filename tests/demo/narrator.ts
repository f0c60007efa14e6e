/** Tells the walk in plain words and keeps count of what did not come out as expected. */
export class Narrator {
  private number = 0;
  private failed = 0;

  /** Begins a step. */
  step(title: string): void {
    this.number += 1;
    process.stdout.write(`\n${this.number}. ${title}\n`);
  }

  /** Says one thing that happened. */
  say(text: string): void {
    process.stdout.write(`   ${text}\n`);
  }

  /** Says what was expected, and whether it came out so. */
  expect(cameOut: boolean, expectation: string): void {
    if (!cameOut) this.failed += 1;
    process.stdout.write(`   ${cameOut ? '✓' : '✗ NOT AS EXPECTED:'} ${expectation}\n`);
  }

  get failures(): number {
    return this.failed;
  }
}
