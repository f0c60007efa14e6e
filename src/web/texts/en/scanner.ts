export const scannerTexts = {
  scanner: {
    title: 'Camera and scanner',
    picture: 'What the camera sees',
    seen: {
      loading: 'The reader of symbols is being loaded …',
      nothing: 'Looking. Hold a symbol before the camera.',
      read: 'Read.',
      stays: 'Read already. One more? Take it away, then show it.',
    },
    start: 'Start the camera',
    startAgain: 'Start the camera again',
    stop: 'Stop the camera',
    torchOn: 'Lamp on',
    torchOff: 'Lamp off',
    photo: 'Take a photo',
    found: (count: number) => {
      if (count === 0) {
        return 'No symbol could be read in the photo. Take it closer and sharp, with more light and without glare, the whole symbol in it; or type the lot from the label.';
      }
      return `${count} ${count === 1 ? 'symbol' : 'symbols'} read in the photo.`;
    },
    'no picture': 'This file is no picture that can be opened here. Choose a photo, such as JPEG or PNG.',
    'no reader':
      'The part that reads symbols could not be loaded. Look whether the service can be reached and start again; if it stays so, load the page anew.',
    insecure:
      'Browsers give the camera only to pages that come by HTTPS or from this very machine. Whoever runs Lotward makes a certificate once with “make-local-certificate”; then open the address that begins with https.',
    refused:
      'The camera is not allowed here. Press the sign before the address of the page, allow the camera, and start again.',
    absent: 'No camera was found. Plug one in and start again.',
    'in use':
      'The camera is there but gives no picture: another program may be using it. Close that, and start again.',
    unplugged: 'The camera was unplugged or taken away. Plug it in again, and start again.',
    unknown: 'The camera could not be started. Start it again, or load the page anew.',
    stillWorks: 'A hand-held scanner, a photo and typing work all the same.',
    settings: 'Settings of this device',
    camera: 'Camera',
    sound: 'A short sound at each verdict',
    soundHint: 'Up: admitted. Down: take care, lower and longer: refused. Twice the same: a question.',
    substitute: 'Your scanner types this for the separator GS',
    substituteHint:
      'Left empty for a scanner that sends Ctrl+], F8 or Alt+029, and where it types nothing there. Else what it types, such as ~ or |.',
    substituteUnusable:
      'A sign that symbols hold themselves cannot stand for the separator. One to six signs without spaces are allowed, one of them such as ~ | ^ # @.',
  },
};
