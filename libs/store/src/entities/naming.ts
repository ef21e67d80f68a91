import { DefaultNamingStrategy } from 'typeorm';

/** `plannedStart` is `planned_start` in the database, as everybody who writes SQL by hand expects. */
export class SnakeCase extends DefaultNamingStrategy {
  override columnName(propertyName: string, customName: string | undefined): string {
    return customName ?? propertyName.replace(/[A-Z]/g, (letter) => `_${letter.toLowerCase()}`);
  }
}
