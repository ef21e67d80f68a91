export * from './xml/index.js';
