import type { INestApplicationContext } from '@nestjs/common';
import type { Command } from 'commander';

/** Opens the program without serving, runs the work and closes it again. */
export type InProgram = <Result>(
  work: (program: INestApplicationContext) => Promise<Result>,
) => Promise<Result>;

/** Adds a room's commands to the command line: each `*.commands.ts` gives one such function. */
export type AddCommands = (commands: Command, inProgram: InProgram) => void;
