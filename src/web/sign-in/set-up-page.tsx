import { Button, Code, Select, TextInput, Title } from '@mantine/core';
import { useState } from 'react';
import { useNavigate } from 'react-router';
import { Fields } from '../frame/fields.js';
import { PageLink } from '../frame/navigation.js';
import { Note } from '../frame/note.js';
import { ProblemNote } from '../frame/problem-note.js';
import { Threshold } from '../frame/threshold.js';
import { useAction } from '../service/use-action.js';
import { useAnswer } from '../service/use-answer.js';
import { useTexts } from '../texts/texts.js';
import { isToldAtField, NewAccountFields } from './account-fields.js';
import { leavingIsOver } from './leave.js';
import { forgetOneTimeSecret, useOneTimeSecret } from './one-time-secret.js';
import { askWhetherSetUpIsOpen, setUp } from './sign-in.requests.js';
import { ownTimeZone, timeZones } from './time-zones.js';

/** Where the first owner comes in, by the link on the console. */
export function SetUpPage() {
  const texts = useTexts();
  const secret = useOneTimeSecret();
  const { answer, problem } = useAnswer(['set-up'], askWhetherSetUpIsOpen);
  if (answer?.isOpen === false) {
    return (
      <Threshold title={texts.setUp.done} lead={texts.setUp.doneDetail}>
        <PageLink to="/" alone>
          {texts.setUp.toSignIn}
        </PageLink>
      </Threshold>
    );
  }
  if (secret === '') {
    return (
      <Threshold title={texts.setUp.noSecret} lead={texts.setUp.noSecretDetail}>
        <p>
          {texts.setUp.newLink} <Code>npm run cli -- sign-in-link</Code>
        </p>
      </Threshold>
    );
  }
  return (
    <Threshold title={texts.setUp.title} lead={texts.setUp.lead}>
      <ProblemNote problem={problem} />
      {answer && <SetUpForm key={secret} secret={secret} />}
    </Threshold>
  );
}

function SetUpForm({ secret }: { secret: string }) {
  const texts = useTexts();
  const open = useNavigate();
  const [studioName, setStudioName] = useState('');
  const [timeZone, setTimeZone] = useState(ownTimeZone);
  const [ownerName, setOwnerName] = useState('');
  const [account, setAccount] = useState({ signInName: '', password: '' });
  const { run, busy, problem } = useAction(async () => {
    await setUp({ secret, studioName, timeZone, ownerName, ...account });
    leavingIsOver();
    forgetOneTimeSecret();
    await open('/', { replace: true });
  });
  return (
    <Fields onSubmit={() => void run()}>
      <Title order={2}>{texts.setUp.studio}</Title>
      <TextInput
        label={texts.setUp.studioName}
        required
        maxLength={100}
        autoComplete="organization"
        value={studioName}
        error={problem?.faultOf('studioName')}
        onChange={(event) => setStudioName(event.currentTarget.value)}
      />
      <Select
        label={texts.setUp.timeZone}
        description={texts.setUp.timeZoneHint}
        required
        searchable
        allowDeselect={false}
        data={timeZones()}
        value={timeZone}
        error={problem?.faultOf('timeZone')}
        onChange={(zone) => zone !== null && setTimeZone(zone)}
      />
      <Title order={2} mt="md">
        {texts.setUp.you}
      </Title>
      <TextInput
        label={texts.setUp.yourName}
        description={texts.setUp.yourNameHint}
        required
        maxLength={100}
        autoComplete="name"
        value={ownerName}
        error={problem?.faultOf('ownerName')}
        onChange={(event) => setOwnerName(event.currentTarget.value)}
      />
      <NewAccountFields
        account={account}
        onChange={setAccount}
        passwordLabel={texts.setUp.password}
        problem={problem}
      />
      {problem && isToldAtField(problem) ? (
        <Note kind="fault">{problem.document.title}</Note>
      ) : (
        <ProblemNote problem={problem} />
      )}
      <Button type="submit" loading={busy}>
        {texts.setUp.submit}
      </Button>
    </Fields>
  );
}
