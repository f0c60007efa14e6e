export const commonTexts = {
  app: {
    name: 'Lotward',
    motto: 'Which lots arrived, what is in date, what was used on whom.',
    toContent: 'To the content',
    pages: 'Pages',
    loading: 'Loading …',
    tryAgain: 'Try again',
    more: 'Show more',
    pageFailed: 'This page could not be shown',
    pageFailedDetail:
      'Perhaps Lotward was upgraded while the page was open, or this device has no network. Nothing that was recorded is lost. Load the page anew.',
    loadAnew: 'Load the page anew',
    cancel: 'Leave it',
    save: 'Save',
    close: 'Close',
    waiting: (seconds: number) => `You can try again in ${seconds} ${seconds === 1 ? 'second' : 'seconds'}.`,
    noSuchPage: 'There is no such page',
    noSuchPageDetail: 'Look at the address again, or go to the start.',
    toStart: 'To the start',
    notYours: 'Not for your role',
    notYoursDetail: 'In this studio your role has no part in this page. The owner can change what you are.',
    language: 'Language',
    brightness: 'Brightness',
    brightnesses: { auto: 'as the device', light: 'light', dark: 'dark' },
  },

  /** What is said of a problem by its code, where the service's own words do not do. */
  problems: {
    unreachable:
      'The service did not answer, so it is not known whether anything was changed. Look whether it runs and this device has a network, then try again.',
    'passkey-not-used':
      'No passkey was used: it was cancelled, took too long, or this device has none for this address. Try again, or sign in with the password.',
    'passkey-not-made':
      'No passkey was made: it was cancelled, took too long, or this device has one for you already.',
  } as Record<string, string | undefined>,

  /** What is said of a problem before the service's own words, which are English. */
  problemsInBrief: {} as Record<string, string | undefined>,

  shownOnce: {
    copy: 'Copy',
    copied: 'Copied',
    copyFailed: 'Copying did not work: it is marked now, copy it by hand.',
    done: 'I have it',
  },

  password: {
    show: 'Show the password',
    hint: 'At least 12 characters. A few words that do not belong together are easy to keep in mind.',
  },

  signInName: {
    label: 'Sign-in name',
    hint: 'By this you sign in. An e-mail address is easy to remember; nothing is ever sent to it.',
  },
};
