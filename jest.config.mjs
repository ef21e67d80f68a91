// One configuration for every lane; scripts/test.mjs chooses the files (see DEVELOPERS.md, "Lanes").
const swc = {
  jsc: {
    target: 'es2023',
    parser: { syntax: 'typescript', tsx: true, decorators: true },
    transform: {
      legacyDecorator: true,
      decoratorMetadata: true,
      useDefineForClassFields: true,
      react: { runtime: 'automatic', importSource: 'preact' },
    },
    keepClassNames: true,
  },
  module: { type: 'es6' },
  sourceMaps: 'inline',
  swcrc: false,
};

export default {
  rootDir: '.',
  testEnvironment: 'node',
  extensionsToTreatAsEsm: ['.ts', '.tsx'],
  moduleNameMapper: { '^(\\.{1,2}/.*)\\.js$': '$1' },
  transform: {
    '^.+\\.tsx?$': ['@swc/jest', swc],
    '/node_modules/(content-disposition|cookie)/.+\\.js$': '<rootDir>/test/kit/esm-to-cjs.cjs',
  },
  transformIgnorePatterns: ['/node_modules/(?!(.*/)?(content-disposition|cookie)/)'],
  testEnvironmentOptions: { customExportConditions: ['source', 'node', 'node-addons'] },
  modulePathIgnorePatterns: ['<rootDir>/dist/'],
  coverageProvider: 'v8',
};
