export { exportDatabase } from './export-database.js';
export { importDatabase } from './import-database.js';
export { type OpenStore, openStore, type StoreOptions } from './open-store.js';
