import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { isFinal, machines } from '../../libs/flow/src/machines/index.js';

const path = fileURLToPath(new URL('../../docs/states.md', import.meta.url));

/** The tables as pictures: the same table that decides draws them. */
function page(): string {
  const drawn = machines.map((machine) => {
    const statuses = Object.keys(machine.moves);
    const arrows = statuses.flatMap((from) => machine.moves[from]!.map((to) => `  ${from} --> ${to}`));
    const ends = statuses.filter((status) => isFinal(machine, status)).map((status) => `  ${status} --> [*]`);
    return [
      `## ${machine.name}`,
      '',
      '```mermaid',
      'stateDiagram-v2',
      `  [*] --> ${machine.initial}`,
      ...arrows,
      ...ends,
      '```',
    ].join('\n');
  });
  return `# States\n\nMade from the tables in \`libs/flow/src/machines\`; a test compares. To draw anew: \`SIDELAY_UPDATE_DOCS=1 npm test -- rules\`.\n\n${drawn.join('\n\n')}\n`;
}

describe('the pictures of the state machines', () => {
  it('are drawn from the tables that decide', () => {
    if (process.env.SIDELAY_UPDATE_DOCS === '1') writeFileSync(path, page());
    expect(existsSync(path)).toBe(true);
    expect(readFileSync(path, 'utf8')).toBe(page());
  });
});
