import { expect, it } from 'vitest';
import { deviceOf } from './device-name.js';

it.each([
  [
    'Mozilla/5.0 (X11; Linux x86_64) AppleWebKit/537.36 (KHTML, like Gecko) Chrome/150.0.0.0 Safari/537.36',
    { browser: 'Chrome', system: 'Linux' },
  ],
  [
    'Mozilla/5.0 (Windows NT 10.0; Win64; x64) AppleWebKit/537.36 (KHTML, like Gecko) Chrome/150.0.0.0 Safari/537.36 Edg/150.0.0.0',
    { browser: 'Edge', system: 'Windows' },
  ],
  [
    'Mozilla/5.0 (iPhone; CPU iPhone OS 18_5 like Mac OS X) AppleWebKit/605.1.15 (KHTML, like Gecko) Version/18.5 Mobile/15E148 Safari/604.1',
    { browser: 'Safari', system: 'iPhone' },
  ],
  [
    'Mozilla/5.0 (Macintosh; Intel Mac OS X 10.15; rv:140.0) Gecko/20100101 Firefox/140.0',
    { browser: 'Firefox', system: 'macOS' },
  ],
  [
    'Mozilla/5.0 (Linux; Android 15; Tablet) AppleWebKit/537.36 (KHTML, like Gecko) SamsungBrowser/28.0 Chrome/130.0.0.0 Safari/537.36',
    { browser: 'Samsung Internet', system: 'Android' },
  ],
])('makes out %s', (userAgent, device) => {
  expect(deviceOf(userAgent)).toEqual(device);
});

it.each(['', 'curl/8.5.0', '<img src=x onerror=alert(1)>'])('makes nothing out of "%s"', (userAgent) => {
  expect(deviceOf(userAgent)).toBeUndefined();
});
