export { type OpenStore, openStore, type StoreOptions } from './open-store.js';
