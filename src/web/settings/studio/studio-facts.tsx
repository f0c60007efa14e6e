import type { StudioView } from '../../../identity/studios.views.js';
import { Entries, Entry } from '../../frame/entries.js';
import { Section } from '../../frame/section.js';
import { useTexts } from '../../texts/texts.js';
import { currencyName } from './currencies.js';

/** The settings of a studio, to be read. */
export function StudioFacts({ studio }: { studio: StudioView }) {
  const texts = useTexts();
  const words = texts.studioSettings;
  const { retention } = studio;
  const onOrOff = (is: boolean) => (is ? texts.settings.on : texts.settings.off);
  const facts = [
    [words.name, studio.name],
    [words.timeZone, studio.timeZone],
    [words.currency, currencyName(studio.currency, texts.language)],
    [words.houseBlends, onOrOff(studio.houseBlends === 'allowed')],
    [words.passkeysRequired, onOrOff(studio.passkeysRequired)],
    [
      words.retention,
      retention === null ? words.retentionNotChosen : words.retentionNow(retention.years, retention.law),
    ],
  ] as const;
  return (
    <Section title={words.general} hint={words.generalHint}>
      <Entries label={words.general}>
        {facts.map(([name, value]) => (
          <Entry key={name} name={name}>
            <p>{value}</p>
          </Entry>
        ))}
      </Entries>
    </Section>
  );
}
