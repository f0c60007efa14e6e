import type { INestApplicationContext } from '@nestjs/common';
import type { Command } from 'commander';

export interface ProgramOptions {
  /** Whether the record is backed up before its schema is brought up to date; it is unless told otherwise. */
  backsUpBeforeMigrating: boolean;
}

/** Opens the program without serving, runs the work and closes it again. */
export type InProgram = <Result>(
  work: (program: INestApplicationContext) => Promise<Result>,
  options?: ProgramOptions,
) => Promise<Result>;

/** Adds a room's commands to the command line: each `*.commands.ts` gives one such function. */
export type AddCommands = (commands: Command, inProgram: InProgram) => void;
