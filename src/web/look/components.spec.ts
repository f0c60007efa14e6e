import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { basename, dirname, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';

const web = fileURLToPath(new URL('..', import.meta.url));
const library = dirname(fileURLToPath(import.meta.resolve('@mantine/core/styles.css')));

/** Components of the library that the pages name. */
function named(): string[] {
  const sources = readdirSync(web, { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('.tsx'))
    .map((file) => readFileSync(resolve(web, file), 'utf8'));
  const lists = sources.flatMap((source) =>
    [...source.matchAll(/import \{([^}]*)\} from '@mantine\/core'/g)].map(([, list]) => list ?? ''),
  );
  const names = lists.flatMap((list) => list.split(',').map((name) => name.trim()));
  return [...new Set(names)].filter((name) => /^[A-Z]/.test(name));
}

/** Those and what they are made of, by what their files import. */
function used(): Set<string> {
  const files = new Set<string>();
  const follow = (file: string) => {
    if (files.has(file) || !existsSync(file)) return;
    files.add(file);
    for (const [, path = ''] of readFileSync(file, 'utf8').matchAll(/from "(\.[^"]+)"/g)) {
      follow(resolve(dirname(file), path));
    }
  };
  for (const name of named()) follow(resolve(library, 'esm/components', name, `${name}.mjs`));
  return new Set([...files].map((file) => basename(file, '.mjs')));
}

/** Kinds of a component that come with it and that no page names, such as `Checkbox.Card`. */
const neverShown = /^(Checkbox|Radio)(Card|Indicator)$/;

it('has the styles of every component that is used, and of what it is made of', () => {
  const listed = readFileSync(resolve(web, 'look/components.css'), 'utf8');
  const missing = [...used()].filter(
    (name) =>
      !neverShown.test(name) &&
      existsSync(resolve(library, 'styles', `${name}.css`)) &&
      !listed.includes(`styles/${name}.css`),
  );
  expect(named().length).toBeGreaterThan(5);
  expect(missing).toEqual([]);
});
