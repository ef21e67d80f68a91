// Two packages ship ES modules that CommonJS packages require; Jest on Node 20 cannot do that, so they are turned back.
const { transformSync } = require('@swc/core');

module.exports = {
  process(source, filename) {
    const { code } = transformSync(source, { filename, module: { type: 'commonjs' }, swcrc: false });
    return { code };
  },
};
