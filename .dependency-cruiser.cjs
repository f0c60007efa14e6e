// Imports point one way only: a room may import the rooms before it in this list, never those after it.
const rooms = [
  'platform',
  'identity',
  'alerts',
  'catalogue',
  'compliance',
  'stock',
  'clients',
  'sessions',
  'care',
  'reorder',
  'recalls',
  'inspection',
  'operations',
];

// In a room, a file without a role in its name (shelf-life.ts, not lot.entity.ts) is a rule: pure, and also
// bundled for the browser. Platform is plumbing and holds no rules.
const ruleFile = '^src/(?!platform/|web/)[a-z-]+/[a-z0-9/-]+[.]ts$';

module.exports = {
  forbidden: [
    ...rooms.slice(0, -1).map((room, index) => ({
      name: `${room}-imports-only-leftwards`,
      severity: 'error',
      from: { path: `^src/${room}/`, pathNot: '[.]spec[.]ts$' },
      to: { path: `^src/(${rooms.slice(index + 1).join('|')})/` },
    })),
    {
      name: 'rooms-import-no-entry-point',
      severity: 'error',
      from: { path: `^src/(${rooms.join('|')})/` },
      to: { path: '^src/[^/]+[.]ts$' },
    },
    {
      name: 'rules-import-only-rules',
      severity: 'error',
      comment: 'A rule takes facts and gives a decision; it must also run in the browser.',
      from: { path: ruleFile, pathNot: '^src/reorder/' },
      to: { pathNot: [ruleFile, '^node_modules/temporal-polyfill/'] },
    },
    {
      name: 'rules-of-planning-import-only-rules-and-statistics',
      severity: 'error',
      comment:
        'Distributions and random numbers come from libraries that were checked, and are pure as well.',
      from: { path: '^src/reorder/[a-z0-9/-]+[.]ts$' },
      to: { pathNot: [ruleFile, '^node_modules/(temporal-polyfill|@stdlib)/'] },
    },
    {
      name: 'web-imports-only-views-and-rules',
      severity: 'error',
      from: { path: '^src/web/' },
      to: { path: '^src/(?!web/)', pathNot: ['[.]views[.]ts$', ruleFile] },
    },
    {
      name: 'service-does-not-import-web-or-tests',
      severity: 'error',
      from: { path: '^src/(?!web/)', pathNot: '[.]spec[.]ts$' },
      to: { path: '^(src/web|tests)/' },
    },
    {
      name: 'no-circular',
      severity: 'error',
      from: {},
      to: { circular: true, viaOnly: { dependencyTypesNot: ['type-only'] } },
    },
    // `?url` asks the bundler for the address of a file.
    {
      name: 'not-to-unresolvable',
      severity: 'error',
      from: {},
      to: { couldNotResolve: true, pathNot: '[?]url$' },
    },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    exclude: { path: '^(dist|data)/' },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['import', 'require', 'node', 'default', 'types'],
    },
  },
};
