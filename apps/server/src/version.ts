import { readFileSync } from 'node:fs';
import { projectPath } from './plant-file.js';

/** The one number, from package.json. */
export const version: string = (
  JSON.parse(readFileSync(projectPath('package.json'), 'utf8')) as { version: string }
).version;
