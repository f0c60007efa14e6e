import { BaseSequencer, type TestSpecification } from 'vitest/node';

/** Files that take long though they are small: begun last, they would run alone while one processor waits. */
const long =
  /\/(bench|large-notices|stopping|backup(-drill|-postgres)?|passkeys|personal-data|hostile-(requests|texts)|other-studio|identity-commands|master-key-rotation|kill|tls|stock-pages|alert-(redis|workers|receivers|pages))\.spec\.ts$/;

/** Begins what takes long before what is soon done. */
export class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const sorted = await super.sort(files);
    const isLong = ({ moduleId }: TestSpecification) => long.test(moduleId);
    return [...sorted.filter(isLong), ...sorted.filter((file) => !isLong(file))];
  }
}
