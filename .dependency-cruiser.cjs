/** Layer rules: api -> models -> curves, no circle. */
module.exports = {
  forbidden: [
    // Types alone may refer to each other until each stored kind is opened by its own name.
    {
      name: 'no-circle',
      severity: 'error',
      from: {},
      to: { circular: true, viaOnly: { dependencyTypesNot: ['type-only'] } },
    },
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
