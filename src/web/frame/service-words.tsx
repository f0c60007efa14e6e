/** What the service says in its own words, in English whatever language the page has: read aloud as such. */
export function ServiceWords({ children }: { children: string }) {
  return <span lang="en">{children}</span>;
}
