export type { AbortSelection } from './abort-queue-entry.message.js';
export type { Content } from './content.js';
export { content, nothing, only, perhaps } from './content.js';
export { type EntrySelection, entryFilter } from './entry-command.js';
export type { MessageService } from './known-messages.message.js';
export * from './message.js';
export { readJmf, returnCodeOf } from './read-jmf.js';
export {
  type MessageBody,
  type MessageContents,
  type MessageKind,
  standardMessages,
} from './standard-messages.js';
export type { QueueSubmission } from './submit-queue-entry.message.js';
export { JMF_VERSION, messageId, writeJmf } from './write-jmf.js';
