import { v7 as uuidv7 } from 'uuid';
import type { AddCommands } from '../platform/commands.js';
import { Administration } from './administration.service.js';
import { roles } from './permissions.js';

/** People and tokens from the shell, for when nobody can sign in. Whoever may read the data folder may do this. */
export const addIdentityCommands: AddCommands = (commands, inProgram) => {
  commands
    .command('people')
    .description('list the studios and who works in them')
    .action(() =>
      inProgram(async (program) => {
        for (const { studio, people } of await program.get(Administration).list()) {
          print(`${studio.name}  ${studio.id}`);
          for (const { id, name, role, state, until, hasAccount } of people) {
            const end = until === null ? '' : `, until ${until}`;
            print(
              `  ${id}  ${role}, ${state}${end}, ${hasAccount ? 'signs in' : 'never signed in'}: ${name}`,
            );
          }
        }
      }),
    );

  commands
    .command('add-person')
    .description('add a person to a studio and print the link by which they come in')
    .requiredOption('--name <name>', 'what the person is called in the record')
    .requiredOption('--role <role>', `one of: ${roles.join(', ')}`)
    .option('--studio <id>', 'the studio; needed when there are several')
    .option('--until <day>', 'the last day, YYYY-MM-DD; an auditor has one')
    .action((options: { name: string; role: string; studio?: string; until?: string }) =>
      inProgram(async (program) => {
        tellLink(await program.get(Administration).addPerson(options));
      }),
    );

  commands
    .command('sign-in-link')
    .description('print a one-time link by which a person comes in, or chooses a new password')
    .option('--person <id>', 'the person; left out: the owner')
    .option('--studio <id>', 'the studio; needed when there are several')
    .action((options: { person?: string; studio?: string }) =>
      inProgram(async (program) => {
        tellLink(await program.get(Administration).signInLink(options));
      }),
    );

  commands
    .command('make-token')
    .description('print a token by which a program acts as a person')
    .requiredOption('--name <name>', 'what the token is for')
    .requiredOption('--days <number>', 'whole days until it expires, 1 to 366', Number)
    .option('--person <id>', 'the person it acts as; left out: the owner')
    .option('--studio <id>', 'the studio; needed when there are several')
    .option('--scope <permission...>', 'what it may be used for; left out: all the person may')
    .action((options: { name: string; days: number; person?: string; studio?: string; scope?: string[] }) =>
      inProgram(async (program) => {
        const made = await program.get(Administration).makeToken(uuidv7(), options);
        print(`Shown once; it expires ${made.expiresAt}:`);
        print(made.token);
      }),
    );
};

function tellLink({ link, expiresAt }: { link: string; expiresAt: string }): void {
  print(`It works once, until ${expiresAt}. Open it in the browser of that person:`);
  print(link);
}

function print(line: string): void {
  process.stdout.write(`${line}\n`);
}
