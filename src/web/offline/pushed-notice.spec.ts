import { expect, it } from 'vitest';
import { addressOf, pushedNotice } from './pushed-notice.js';

const origin = 'https://lotward.example';

it('shows title and text, and leads to a page of the app', () => {
  const sent = { title: 'Recall open', body: 'Umber', link: `${origin}/studios/s/alerts/a?x=1`, tag: 'a' };
  expect(pushedNotice(JSON.stringify(sent), origin)).toEqual({
    title: 'Recall open',
    body: 'Umber',
    tag: 'a',
    path: '/studios/s/alerts/a?x=1',
  });
});

it.each([
  'https://elsewhere.example/x',
  '//elsewhere.example/x',
  'javascript:alert(1)',
  'https://lotward.example.elsewhere.example/',
  'https://lotward.example:444/',
  7,
  undefined,
])('leads to the first page and never to %s', (link) => {
  expect(pushedNotice(JSON.stringify({ title: 'x', link }), origin).path).toBe('/');
});

it.each([
  `${origin}//elsewhere.example/x`,
  `${origin}/\\elsewhere.example/x`,
  `${origin}///elsewhere.example/x`,
])('takes no host from the path of %s', (link) => {
  const { path } = pushedNotice(JSON.stringify({ title: 'x', link }), origin);
  expect(path).toBe('/elsewhere.example/x');
  expect(addressOf(path, origin)).toBe(`${origin}/elsewhere.example/x`);
});

it.each([
  ['/studios/s?x=1', `${origin}/studios/s?x=1`],
  ['//elsewhere.example/x', `${origin}/`],
  ['https://elsewhere.example/x', `${origin}/`],
  [undefined, `${origin}/`],
])('looks again, when it is pressed, whether %s leads out of the app', (kept, address) => {
  expect(addressOf(kept, origin)).toBe(address);
});

it.each([undefined, '', 'no JSON', 'null', '[]', '{"title":7,"body":{}}'])(
  'shows something also for %s, since browsers ask for it',
  (sent) => {
    expect(pushedNotice(sent, origin)).toEqual({ title: 'Lotward', body: '', tag: undefined, path: '/' });
  },
);

it('cuts what is too long to be read', () => {
  const { title, body } = pushedNotice(
    JSON.stringify({ title: 'x'.repeat(900), body: 'y'.repeat(900) }),
    origin,
  );
  expect([title.length, body.length]).toEqual([120, 400]);
});
