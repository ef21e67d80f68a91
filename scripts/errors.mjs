/**
 * Writes docs/errors.md from the code table (libs/kernel/src/codes.ts). `--check` writes nothing and exits 1 when
 * the page is not what it would write.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import ts from 'typescript';

const table = new URL('../libs/kernel/src/codes.ts', import.meta.url);
const page = new URL('../docs/errors.md', import.meta.url);

// The table imports nothing, so that it can be read here without a build.
const source = ts.transpileModule(readFileSync(table, 'utf8'), {
  compilerOptions: { module: ts.ModuleKind.ESNext, target: ts.ScriptTarget.ES2023 },
}).outputText;
const { codes } = await import(`data:text/javascript,${encodeURIComponent(source)}`);

const cell = (text) => text.replaceAll('|', '\\|').replaceAll('<', '&lt;');
const section = ([code, row]) => `
## ${code}

${cell(row.title)}.

| HTTP status | JMF ReturnCode | log level |
|---|---|---|
| ${row.http} | ${row.jmf} | ${row.level} |

What to do: ${cell(row.remedy)}
`;

const text = `# Codes of refusals and faults

Made from \`libs/kernel/src/codes.ts\` by \`node scripts/errors.mjs\`; change the table, not this page.

Each problem that Sidelay reports carries one of these codes. A refusal has the HTTP status and the JMF ReturnCode of
its first error; the ReturnCodes are the standard's own (JDF 1.4 specification, appendix D).
${Object.entries(codes).map(section).join('')}`;

if (process.argv.includes('--check')) {
  const current = readFileSync(page, 'utf8');
  if (current !== text) {
    process.stderr.write('docs/errors.md is not current: run node scripts/errors.mjs\n');
    process.exitCode = 1;
  }
} else {
  writeFileSync(page, text);
}
