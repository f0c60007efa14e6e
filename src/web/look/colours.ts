/** Ink on paper, and by night the other way round. Every pair that is read keeps WCAG 2.2 AA: see the spec beside. */
export const light = {
  /** The page. */
  paper: '#f6f3ee',
  /** What is written on: fields, buttons, what is shown once. */
  sheet: '#fffdf9',
  ink: '#20272b',
  /** Explanations. */
  faint: '#5a6064',
  /** Between things. */
  line: '#ded7cb',
  /** Around what can be filled in or pressed. */
  edge: '#857f75',
  link: '#14585c',
  fault: '#9c3421',
  faultWash: '#f8e5df',
  /** A warning. */
  care: '#7a4a00',
  good: '#2c6438',
  goodWash: '#e3eee2',
  /** The band beside the pages that are open to anyone. */
  band: '#14494d',
  onBand: '#f6f3ee',
} as const;

export const dark: Record<keyof typeof light, string> = {
  paper: '#14181a',
  sheet: '#1c2224',
  ink: '#ebe6dd',
  faint: '#a8afae',
  line: '#343c3f',
  edge: '#7f898a',
  link: '#86c9c6',
  fault: '#f0a18d',
  faultWash: '#3a221c',
  care: '#e6bd74',
  good: '#9ccfa2',
  goodWash: '#1f3324',
  band: '#10292b',
  onBand: '#dfe9e6',
};

/** Ten shades each, from wash to deepest, as Mantine wants them; it takes the edges of fields from its greys. */
export const petrol = [
  '#eaf4f3',
  '#d3e6e4',
  '#a9d0cd',
  '#86c9c6',
  '#54a09f',
  '#358788',
  '#226f72',
  '#14585c',
  '#0f464a',
  '#0a3437',
] as const;

/** By day; 4 is the edge of a field, 6 an explanation. */
export const greys = [
  '#f8f5f0',
  '#f0ece4',
  '#e6e0d6',
  '#ded7cb',
  '#857f75',
  '#777268',
  '#5a6064',
  '#494f53',
  '#343a3e',
  '#20272b',
] as const;

/** By night; 0 is ink, 2 an explanation, 4 the edge of a field, 6 what is written on, 7 the page. */
export const nightGreys = [
  '#ebe6dd',
  '#cfcbc4',
  '#a8afae',
  '#7f898a',
  '#7f898a',
  '#343c3f',
  '#1c2224',
  '#14181a',
  '#0f1314',
  '#0a0d0e',
] as const;
