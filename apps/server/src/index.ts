export { openTokens, type TokenDesk } from './access/open-tokens.js';
export { loadPlant, projectPath } from './plant-file.js';
export { type RunningServer, runServer } from './run-server.js';
export { version } from './version.js';
