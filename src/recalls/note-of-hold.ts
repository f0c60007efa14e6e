const longest = 500;

/** What is said on a hold of a recall, so that whoever finds it knows which one it is. */
export function noteOfHold(title: string, reference: string | null): string {
  const note = reference === null || title.includes(reference) ? title : `${title} (${reference})`;
  return note.length > longest ? `${note.slice(0, longest - 1)}…` : note;
}
