import { BaseSequencer, type TestSpecification } from 'vitest/node';

/** Files that take long though they are small: begun last, they would run alone while one processor waits. */
const long =
  /\/(bench|large-notices|stopping|tampering|erasure|backup(-drill|-postgres)?|passkeys|personal-data|hostile-(requests|texts)|other-studio|permissions|identity-commands|master-key-rotation|kill|tls|(stock|completion|recall|plan)-pages|access|alert-(redis|workers|receivers|(settings-)?pages))\.spec\.ts$/;

/**
 * Begins what takes long before what is soon done. Files of one project stay together: a worker that has loaded what they
 * share is kept only as long as the next file is of the same.
 */
export class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const sorted = await super.sort(files);
    const projects = [...new Set(sorted.map(({ project }) => project))];
    const isLong = ({ moduleId }: TestSpecification) => long.test(moduleId);
    return projects.flatMap((each) => {
      const own = sorted.filter(({ project }) => project === each);
      return [...own.filter(isLong), ...own.filter((file) => !isLong(file))];
    });
  }
}
