import { children, optional, required, shortString, text, time } from '../../codec/index.js';
import { employee } from '../../elements/device.js';

/** What every audit says: when, by which agent, by whom. */
export const auditFields = {
  id: optional('ID', text),
  timeStamp: required('TimeStamp', time),
  agentName: optional('AgentName', text),
  agentVersion: optional('AgentVersion', text),
  author: optional('Author', text),
  queueEntryId: optional('QueueEntryID', text),
  /** ID of the audit that this one corrects. */
  refId: optional('refID', text),
  /** Of the ticket in which it was written. */
  spawnId: optional('SpawnID', shortString),
  employees: children(employee),
};
