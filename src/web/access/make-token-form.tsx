import { Button, Checkbox, TextInput } from '@mantine/core';
import { useRef, useState } from 'react';
import type { Permission } from '../../identity/permissions.js';
import type { MadeApiTokenView } from '../../identity/sign-in/api-tokens.views.js';
import { Fields } from '../frame/fields.js';
import { Note } from '../frame/note.js';
import { RequestIds } from '../service/request-ids.js';
import { useAction } from '../service/use-action.js';
import { ProblemOrSignInAgain } from '../sign-in/sign-in-again.js';
import { useTexts } from '../texts/texts.js';
import { makeToken } from './access.requests.js';
import styles from './make-token-form.module.css';

/** Makes a token that may do some of what its maker may. */
export function MakeTokenForm({
  studioId,
  mine,
  onMade,
}: {
  studioId: string;
  mine: readonly Permission[];
  onMade: (token: MadeApiTokenView & { name: string }) => Promise<void>;
}) {
  const texts = useTexts();
  const [name, setName] = useState('');
  const [days, setDays] = useState('90');
  const [scopes, setScopes] = useState<Permission[]>([]);
  const [lacksScopes, setLacksScopes] = useState(false);
  const ids = useRef(new RequestIds()).current;
  const { run, busy, problem } = useAction(async () => {
    const content = { name, scopes, days: Number(days) };
    const made = await makeToken(studioId, { id: ids.for(content), ...content });
    ids.renew();
    setName('');
    setScopes([]);
    await onMade({ ...made, name });
  });
  const submit = () => {
    setLacksScopes(scopes.length === 0);
    if (scopes.length > 0) void run();
  };
  return (
    <Fields onSubmit={submit} label={texts.programs.make}>
      <TextInput
        label={texts.programs.name}
        required
        maxLength={100}
        autoComplete="off"
        value={name}
        error={problem?.faultOf('name')}
        onChange={(event) => setName(event.currentTarget.value)}
      />
      <TextInput
        type="number"
        inputMode="numeric"
        min={1}
        max={366}
        step={1}
        label={texts.programs.days}
        description={texts.programs.daysHint}
        required
        value={days}
        error={problem?.faultOf('days')}
        onChange={(event) => setDays(event.currentTarget.value)}
      />
      <Checkbox.Group
        label={texts.programs.permissions}
        value={scopes}
        onChange={(chosen) => setScopes(mine.filter((permission) => chosen.includes(permission)))}
      >
        <div className={styles.permissions}>
          {mine.map((permission) => (
            <Checkbox
              key={permission}
              value={permission}
              label={texts.permissions[permission] ?? permission}
            />
          ))}
        </div>
      </Checkbox.Group>
      {lacksScopes && scopes.length === 0 && (
        <Note kind="fault">
          <p>{texts.programs.tickSome}</p>
        </Note>
      )}
      <ProblemOrSignInAgain problem={problem} onSignedIn={run} />
      <div>
        <Button type="submit" loading={busy}>
          {texts.programs.submit}
        </Button>
      </div>
    </Fields>
  );
}
