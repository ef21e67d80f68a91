/**
 * Writes docs/settings.md from the table of settings (apps/server/src/settings.ts), as built: run `npm run build` before.
 * `apps/server/src/settings-page.spec.ts` compares the two.
 */
import { writeFileSync } from 'node:fs';
import { settingsPage } from '../dist/apps/server/src/settings-page.js';

writeFileSync(new URL('../docs/settings.md', import.meta.url), settingsPage());
