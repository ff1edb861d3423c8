/**
 * The order of rooms: api -> models -> curves, and within models and api one way between their rooms.
 *
 * A room is a folder. It imports only from itself and from rooms of earlier lines; rooms of one line do not know each other.
 */
const ORDER = [
  ['curves'],
  ['models/physics', 'models/calendar', 'models/upgrade-plan', 'models/model-version.ts'],
  ['models/components', 'models/tariff'],
  ['models/loop'],
  ['models/network', 'models/pump', 'models/hazards'],
  ['models/duty', 'models/readings', 'models/money'],
  ['models/intake', 'models/condition', 'models/calibration'],
  ['models/selection'],
  ['models/assurance', 'models/schedule', 'models/cautions', 'models/designs'],
  ['models/losses', 'models/maintenance', 'models/site-summary'],
  ['api/caches'],
  ['api/units', 'api/store', 'api/threads', 'api/clock'],
  ['api/fields', 'api/wording'],
  ['api/http', 'api/drawing'],
  ['api/access', 'api/records/*.ts'],
  ['api/records/tariff'],
  ['api/records/site', 'api/records/schedule'],
  ['api/records/task', 'api/records/baseline'],
  ['api/records/pump', 'api/records/completion'],
  ['api/records/loop'],
  ['api/records/reading', 'api/records/inline'],
  ['api/question'],
  [
    ...['duty-point', 'pump-curves', 'schedule', 'condition', 'calibration', 'maintenance', 'site-summary'],
    ...['upgrade-plan', 'bill-of-materials', 'spares', 'screen-size', 'leak-exposure', 'reference', 'docs'],
  ].map((feature) => `api/features/${feature}`),
  ['api/features/recommendation', 'api/features/system-curve'],
  ['api/features/comparison', 'api/features/loop-chart', 'api/features/design'],
  ['api/features/loop-report', 'api/features/site-copy'],
  ['api/*.ts'],
  ['api/cli'],
];

/** A folder counts with its folders; a name with an ending is one file, with a star every file of a folder but not of its folders. */
const pathOf = (room) =>
  room.endsWith('.ts') ? `^${room.replaceAll('.', '\\.').replace('*', '[^/]+')}$` : `^${room}/`;

const OURS = '^(curves|models|api)/';

const orderRules = ORDER.flatMap((line, index) =>
  line.map((room) => ({
    name: `order-of-${room.replaceAll('/', '-')}`,
    severity: 'error',
    from: { path: pathOf(room) },
    to: { path: OURS, pathNot: [room, ...ORDER.slice(0, index).flat()].map(pathOf) },
  })),
);

/** A file that lies in no room of the order has no rule, so that it is refused by itself. */
const roomless = {
  name: 'every-file-in-a-room',
  severity: 'error',
  from: {},
  to: { path: OURS, pathNot: ORDER.flat().map(pathOf) },
};

module.exports = {
  forbidden: [
    ...orderRules,
    roomless,
    { name: 'no-circle', severity: 'error', from: {}, to: { circular: true } },
    {
      name: 'curves-import-nothing-of-ours',
      severity: 'error',
      from: { path: '^curves/' },
      to: { path: '^(models|api|test|openapi)/' },
    },
    {
      name: 'models-import-curves-only',
      severity: 'error',
      from: { path: '^models/' },
      to: { path: '^(api|test|openapi)/' },
    },
    {
      name: 'models-use-no-package',
      severity: 'error',
      from: { path: '^models/' },
      to: { dependencyTypes: ['npm', 'npm-dev', 'core'] },
    },
    {
      name: 'curves-use-no-core-module',
      severity: 'error',
      from: { path: '^curves/' },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'one-importer-of-the-fitting-packages',
      severity: 'error',
      from: { path: '^(api|models|curves)/', pathNot: '^curves/least-squares\\.ts$' },
      to: { path: 'node_modules/(ml-regression|ml-matrix)' },
    },
    {
      name: 'one-importer-of-the-non-linear-fitting-package',
      severity: 'error',
      from: { path: '^(api|models|curves)/', pathNot: '^curves/levenberg-marquardt\\.ts$' },
      to: { path: 'node_modules/ml-levenberg-marquardt' },
    },
    {
      name: 'nothing-imports-tests',
      severity: 'error',
      from: { path: '^(api|models|curves)/' },
      to: { path: '^test/' },
    },
    {
      name: 'clients-stand-alone',
      severity: 'error',
      from: { pathNot: '^(openapi/clients|test)/' },
      to: { path: '^openapi/clients/' },
    },
    {
      name: 'no-dev-package-in-the-service',
      severity: 'error',
      from: { path: '^(api|models|curves)/' },
      to: { dependencyTypes: ['npm-dev'] },
    },
    { name: 'resolvable', severity: 'error', from: {}, to: { couldNotResolve: true } },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['import', 'node', 'default', 'types'],
    },
  },
};
