export {
  type EmbeddedOptions,
  type EmbeddedPostgres,
  startEmbeddedPostgres,
} from './start-embedded-postgres.js';
