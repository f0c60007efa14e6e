import { type MantineColorScheme, NativeSelect, useMantineColorScheme } from '@mantine/core';
import { useLanguage } from '../texts/language.js';
import { isLanguage, languages } from '../texts/languages.js';
import { useTexts } from '../texts/texts.js';
import styles from './display-choices.module.css';

const brightnesses = ['auto', 'light', 'dark'] as const satisfies MantineColorScheme[];

/** In which language this device speaks, and whether it is light or dark: a stand in a dim room wants dark. */
export function DisplayChoices() {
  const texts = useTexts();
  const { language, choose } = useLanguage();
  const { colorScheme, setColorScheme } = useMantineColorScheme();
  return (
    <div className={styles.choices}>
      <NativeSelect
        label={texts.app.language}
        value={language}
        data={Object.entries(languages).map(([value, label]) => ({ value, label }))}
        onChange={({ currentTarget: { value } }) => isLanguage(value) && choose(value)}
      />
      <NativeSelect
        label={texts.app.brightness}
        value={colorScheme}
        data={brightnesses.map((value) => ({ value, label: texts.app.brightnesses[value] }))}
        onChange={({ currentTarget: { value } }) => setColorScheme(value as MantineColorScheme)}
      />
    </div>
  );
}
