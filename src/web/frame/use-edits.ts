import { useState } from 'react';

type Value = string | boolean;

/** What is being changed of something that others may change meanwhile. */
export interface Edits<Draft> {
  /** As it would be saved: what was edited here, else what is saved. */
  draft: Draft;
  set(change: Partial<Draft>): void;
  /** Only what would be changed, so that what others changed beside it stays. */
  changes: Partial<Draft>;
  isChanged: boolean;
  /** What somebody else made of a field since it was edited here; undefined when nobody did. */
  meanwhile<Field extends keyof Draft>(field: Field): Draft[Field] | undefined;
  forget(): void;
}

/** Each field that was edited, with what it was edited from. */
export type Edited<Draft> = { [Name in keyof Draft]?: { value: Draft[Name]; from: Draft[Name] } };

/**
 * Keeps only the fields that were edited, each with what it was edited from: read anew after somebody else's change, nothing
 * that was written here is lost, and nothing of theirs is overwritten unseen.
 */
export function useEdits<Draft extends Record<keyof Draft, Value>>(saved: Draft): Edits<Draft> {
  const [edited, setEdited] = useState<Edited<Draft>>({});
  return editsOf(saved, edited, setEdited);
}

/** @param change makes what was edited of what was edited before */
export function editsOf<Draft extends Record<keyof Draft, Value>>(
  saved: Draft,
  edited: Edited<Draft>,
  change: (made: (before: Edited<Draft>) => Edited<Draft>) => void,
): Edits<Draft> {
  type Field = keyof Draft;
  const names = (Object.keys(edited) as Field[]).filter((name) => edited[name] !== undefined);
  const written = Object.fromEntries(names.map((name) => [name, edited[name]?.value])) as Partial<Draft>;
  const changed = names.filter((name) => edited[name]?.value !== saved[name]);
  return {
    draft: { ...saved, ...written },
    set: (fields) =>
      change((before) => {
        const after = { ...before };
        for (const name of Object.keys(fields) as Field[]) {
          const value = fields[name] as Draft[Field];
          // What is given beside it, as it is, was not edited.
          if (value === (before[name]?.value ?? saved[name])) continue;
          after[name] = { value, from: before[name]?.from ?? saved[name] };
        }
        return after;
      }),
    changes: Object.fromEntries(changed.map((name) => [name, written[name]])) as Partial<Draft>,
    isChanged: changed.length > 0,
    meanwhile: (field) => {
      const edit = edited[field];
      return edit && edit.from !== saved[field] && edit.value !== saved[field] ? saved[field] : undefined;
    },
    forget: () => change(() => ({})),
  };
}
