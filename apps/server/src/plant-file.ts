import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Plant } from '#libs/craft';
import { readPlantDefinition } from '#libs/flow';
import { error, type Result, refuse } from '#libs/kernel';
import { readYaml } from '#libs/wire';

/** Top of the project, seen from the sources as from the build. */
export function projectPath(...parts: readonly string[]): string {
  const up = import.meta.url.includes('/dist/apps/') ? '../../../../' : '../../../';
  return fileURLToPath(new URL(up + parts.join('/'), import.meta.url));
}

/** Reads and checks a plant definition file. */
export function loadPlant(path: string): Result<Plant> {
  let text: string;
  try {
    text = readFileSync(path, 'utf8');
  } catch {
    return refuse(
      error('PLANT_DEFINITION', `${path} can't be read.`, { hint: 'Name the plant file in SIDELAY_PLANT.' }),
    );
  }
  const yaml = readYaml(text);
  return yaml.ok ? readPlantDefinition(yaml.value) : yaml;
}
