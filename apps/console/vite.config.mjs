/** Builds the console to dist/console. No plug-in is needed: the JSX of Preact is compiled by Vite itself. */
export default {
  root: import.meta.dirname,
  base: '/',
  oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
  build: {
    outDir: '../../dist/console',
    emptyOutDir: true,
    target: 'es2022',
    // The server's content security policy allows no data: address and no inline script.
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
  },
};
