import type { MigrationInterface } from 'typeorm';
import { FirstTables } from './0001-first-tables.js';

/** In the order they run. The thirteen digits at the end of a migration's name are its number in this list. */
export const migrations: readonly (new () => MigrationInterface)[] = [FirstTables];
