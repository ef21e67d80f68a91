/**
 * The lanes of `npm test`, in the order they run. `scripts/test.mjs` reads this table and nothing else about them.
 *
 * - `owns`: which spec files belong to the lane (paths from the root, forward slashes); each file is in one lane only.
 * - `needs`: services (scripts/services.mjs) without which the lane is left out as a whole.
 * - `wants`: services that part of the lane uses; without one the lane runs and that part is named as left out.
 * - `builds`: the lane starts the product as processes, so it is built first.
 */
const SPEC = /\.spec\.tsx?$/;
const under = (folder) => (file) => file.startsWith(`${folder}/`) && SPEC.test(file);
const beside = (file) => /^(libs|apps)\//.test(file) && SPEC.test(file);
const withData = (file) => /\.data\.spec\.tsx?$/.test(file);

const lane = (name, why, owns, more = {}) => ({
  name,
  why,
  owns,
  needs: [],
  wants: [],
  workers: 2,
  timeoutS: 30,
  builds: false,
  ...more,
});

export const lanes = [
  lane('rules', 'layers, sizes, names, generated pages: the shape of the code', under('test/rules')),
  lane('unit', 'one rule a test, plain numbers, nothing outside', (file) => beside(file) && !withData(file)),
  lane('data', 'computation against published values', (file) => beside(file) && withData(file), {
    needs: ['checkdata'],
  }),
  lane('standards', "the standard's own schemas and samples", under('test/standards'), {
    needs: ['standards', 'xmllint'],
    timeoutS: 120,
  }),
  // Its files share one database server and one Redis: each keeps to a schema and a key prefix of its own.
  lane('store', 'one suite over every store and queue back end', under('test/contract'), {
    needs: ['embedded'],
    wants: ['postgres', 'redis'],
    timeoutS: 120,
  }),
  lane('e2e', 'the product and the simulated plant as processes', under('test/e2e'), {
    needs: ['embedded'],
    wants: ['standards', 'xmllint', 'redis'],
    workers: 1,
    timeoutS: 300,
    builds: true,
  }),
  lane('browser', 'the screens in a real browser', under('test/browser'), {
    needs: ['embedded', 'chromium'],
    workers: 1,
    timeoutS: 120,
    builds: true,
  }),
];

/** Every spec file there is, for `--list` and for the rule that each is in one lane. */
export const isSpec = (file) => SPEC.test(file);
