/** The arrows of the house. Each room names what it may import of ours; all else is an error. */
const rooms = {
  science: { may: [], because: 'a formula knows nothing of this program' },
  greenhouse: { may: [], because: 'the words of the domain stand on their own' },
  estimation: { may: ['science'], because: 'filters are numbers in, numbers out' },
  logbook: {
    may: ['greenhouse', 'estimation'],
    because: 'the fold from entries to estimates is pure and knows no use-case',
  },
  planning: {
    may: ['greenhouse', 'logbook', 'estimation', 'science'],
    because: 'a plan follows from the log and the sums, not from who asks',
  },
  understanding: {
    may: ['greenhouse'],
    because: 'reading a message is pure: text and context in, statements out',
  },
  assistant: {
    may: ['greenhouse', 'logbook', 'estimation', 'planning', 'science', 'understanding'],
    because: 'use-cases meet the world through ports only',
  },
  wording: {
    may: ['assistant', 'greenhouse', 'planning', 'understanding'],
    because: 'sentences are made from reply data and the words of the domain',
  },
  storage: {
    may: ['assistant', 'greenhouse', 'understanding'],
    because: 'the database is behind the port; it decides nothing',
  },
  channels: {
    may: ['assistant', 'wording', 'greenhouse', 'planning', 'logbook'],
    because: 'a channel turns a platform into incoming and outgoing; it knows no horticulture',
  },
  pictures: {
    may: ['assistant', 'wording', 'greenhouse'],
    because: 'a picture is drawn from reply data and the words of a language',
  },
  config: { may: [], because: 'configuration is read once, from the environment alone' },
};

const channels = ['page', 'terminal', 'rehearsal', 'telegram', 'sensors'];

module.exports = {
  forbidden: [
    ...Object.entries(rooms).map(([room, { may, because }]) => ({
      name: `${room}-arrows`,
      severity: 'error',
      comment: because,
      from: { path: `^src/${room}/` },
      to: { path: '^src/', pathNot: `^src/(${[room, ...may].join('|')})/` },
    })),
    {
      name: 'ports-only',
      severity: 'error',
      comment: 'storage fills the ports and keeps reply data; it calls no use-case',
      from: { path: '^src/storage/' },
      to: { path: '^src/assistant/(use-cases|answers|desk)' },
    },
    ...channels.map((channel) => ({
      name: `${channel}-is-a-stranger`,
      severity: 'error',
      comment: 'channels do not know each other, so that one can be dropped or added alone',
      from: { path: `^src/channels/${channel}/` },
      to: { path: '^src/channels/', pathNot: `^src/channels/${channel}/` },
    })),
    {
      name: 'main-is-the-end',
      severity: 'error',
      comment: 'wiring is imported by nobody',
      from: { pathNot: '^src/main/' },
      to: { path: '^src/main/' },
    },
    {
      name: 'core-has-no-world',
      severity: 'error',
      comment: 'the core has no clock, disk, network or logger: what it needs is an argument',
      from: {
        path: '^src/(science|greenhouse|estimation|logbook|planning|understanding|assistant|wording)/',
      },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'drizzle-stays-in-storage',
      severity: 'error',
      comment: 'no drizzle type leaves storage',
      from: { path: '^src/', pathNot: '^src/storage/' },
      to: { path: 'node_modules/(drizzle-orm|postgres|@electric-sql)/' },
    },
    {
      name: 'grammy-stays-in-telegram',
      severity: 'error',
      comment: 'no grammY type leaves its channel',
      from: { path: '^src/', pathNot: '^src/channels/telegram/' },
      to: { path: 'node_modules/(grammy|@grammyjs)/' },
    },
    {
      name: 'charts-stay-in-pictures',
      severity: 'error',
      comment:
        'the charting library is loaded when the first picture is drawn, in a thread of its own, and by nobody else',
      from: { path: '^src/', pathNot: '^src/pictures/' },
      to: { path: 'node_modules/(@observablehq|linkedom|@resvg)/' },
    },
    {
      name: 'no-circles',
      severity: 'error',
      comment: 'files that need each other at run time are one file or have a third between them',
      from: { path: '^src/' },
      to: { circular: true, viaOnly: { dependencyTypesNot: ['type-only'] } },
    },
    {
      name: 'resolvable',
      severity: 'error',
      comment: 'an import that nothing answers breaks at run time',
      from: {},
      to: { couldNotResolve: true },
    },
    {
      name: 'no-test-in-source',
      severity: 'error',
      comment: 'what ships does not lean on tests or development packages',
      from: { path: '^src/' },
      to: { path: '^test/|node_modules/(vitest|fast-check|playwright-core|vega-datasets)/' },
    },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    enhancedResolveOptions: {
      extensions: ['.ts', '.js', '.json'],
      exportsFields: ['exports'],
      conditionNames: ['import', 'node', 'types'],
    },
  },
};
