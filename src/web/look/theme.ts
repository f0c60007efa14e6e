import { type CSSVariablesResolver, createTheme, type MantineColorsTuple } from '@mantine/core';
import { dark, greys, light, nightGreys, petrol } from './colours.js';

const body = 'system-ui, -apple-system, "Segoe UI", Roboto, "Noto Sans", "Helvetica Neue", Arial, sans-serif';
const book =
  '"Iowan Old Style", "Palatino Linotype", Palatino, "URW Palladio L", P052, "Book Antiqua", Georgia, serif';

const shades = (tuple: readonly string[]) => [...tuple] as unknown as MantineColorsTuple;

/** Everything that is pressed or filled in is at least 44 px high, for hands in gloves. */
const touchSize = 'lg';
/** Fields are needed unless they say otherwise, so a mark on nearly all of them would say nothing. */
const field = {
  defaultProps: {
    size: touchSize,
    withAsterisk: false,
    inputWrapperOrder: ['label', 'description', 'error', 'input'],
  },
};

export const theme = createTheme({
  colors: { petrol: shades(petrol), gray: shades(greys), dark: shades(nightGreys) },
  primaryColor: 'petrol',
  primaryShade: { light: 7, dark: 6 },
  white: light.sheet,
  black: light.ink,
  fontFamily: body,
  headings: {
    fontFamily: book,
    fontWeight: '500',
    sizes: {
      h1: { fontSize: '2.125rem', lineHeight: '1.2' },
      h2: { fontSize: '1.375rem', lineHeight: '1.3' },
      h3: { fontSize: '1.125rem', lineHeight: '1.35' },
    },
  },
  fontSizes: { xs: '0.875rem', sm: '0.9375rem', md: '1.0625rem', lg: '1.0625rem', xl: '1.25rem' },
  lineHeights: { xs: '1.45', sm: '1.5', md: '1.6', lg: '1.6', xl: '1.5' },
  defaultRadius: 'sm',
  radius: { sm: '0.375rem' },
  cursorType: 'pointer',
  respectReducedMotion: true,
  components: {
    TextInput: field,
    Textarea: field,
    NumberInput: field,
    PasswordInput: field,
    Select: field,
    NativeSelect: field,
    Checkbox: { defaultProps: { size: 'md' } },
    CheckboxGroup: { defaultProps: { size: touchSize } },
    Radio: { defaultProps: { size: 'md' } },
    RadioGroup: { defaultProps: { size: touchSize } },
    Button: { defaultProps: { size: touchSize } },
    Anchor: { defaultProps: { underline: 'always' } },
  },
});

function variables(colours: typeof light | typeof dark): Record<string, string> {
  return {
    ...Object.fromEntries(Object.entries(colours).map(([name, value]) => [`--lotward-${name}`, value])),
    '--mantine-color-body': colours.paper,
    '--mantine-color-text': colours.ink,
    '--mantine-color-bright': colours.ink,
    '--mantine-color-dimmed': colours.faint,
    '--mantine-color-placeholder': colours.faint,
    '--mantine-color-anchor': colours.link,
    '--mantine-color-error': colours.fault,
    '--mantine-color-default': colours.sheet,
    '--mantine-color-default-hover': colours.paper,
    '--mantine-color-default-color': colours.ink,
    '--mantine-color-default-border': colours.edge,
  };
}

/** The colours as CSS variables, `--lotward-ink` and so on, and in the places of Mantine's own. */
export const cssVariables: CSSVariablesResolver = () => ({
  variables: {},
  light: variables(light),
  dark: variables(dark),
});
