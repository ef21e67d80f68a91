export type { AbortSelection } from '../messages/abort-queue-entry.message.js';
export {
  type MessageBody,
  type MessageContents,
  type MessageKind,
  standardMessages,
} from '../messages/index.js';
export type { MessageService } from '../messages/known-messages.message.js';
export type { QueueSubmission } from '../messages/submit-queue-entry.message.js';
export { type MessageType, messageTypes, partsOfKind, typesOf } from '../messages/table.js';
export { checkSent } from './checks/index.js';
export type { Content } from './content.js';
export { content, nothing, only, perhaps, signal, together } from './content.js';
export { type EntrySelection, entryFilter } from './entry-command.js';
export * from './message.js';
export { readJmf, returnCodeOf } from './read-jmf.js';
export { meaningOf, type ReturnCode, returnCodes } from './return-codes.js';
export { JMF_VERSION, messageId, writeJmf } from './write-jmf.js';
