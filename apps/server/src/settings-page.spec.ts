import { readFileSync } from 'node:fs';
import { settingTypes } from './settings.js';
import { settingsPage } from './settings-page.js';

const page = readFileSync(new URL('../../../docs/settings.md', import.meta.url), 'utf8');

describe('the page of settings', () => {
  it('is what the table of settings says (node scripts/settings.mjs writes it)', () => {
    expect(page).toBe(settingsPage());
  });

  it('has a line for each setting, with what is so when it is not given', () => {
    const lines = page.split('\n').filter((line) => line.startsWith('| `SIDELAY_'));
    expect(lines.map((line) => line.split('`')[1])).toEqual(
      Object.keys(settingTypes).map((name) => `SIDELAY_${name}`),
    );
    expect(page).toContain('| `SIDELAY_PORT` | 7420 |');
    expect(page).toContain('| `SIDELAY_DATA_DIR` | `./.sidelay` |');
  });
});
