import {
  boolean,
  child,
  children,
  kept,
  notNamed,
  number,
  oneOf,
  optional,
  someOf,
  text,
  tokens,
} from '../codec/index.js';
import { fullElement } from '../elements/base.js';
import { part } from '../elements/part.js';
import { resourceInfo, resourceScopes } from '../elements/resource-info.js';
import { misDetails } from '../elements/work.js';
import { resourceClasses, resourceStatuses, updateMethods, usages } from '../enumerations.js';
import { content, only, perhaps, signal } from '../jmf/content.js';

const query = fullElement('ResourceQuParams', {
  classes: optional('Classes', someOf(resourceClasses)),
  resourceNames: optional('ResourceName', tokens),
  resourceId: optional('ResourceID', text),
  productId: optional('ProductID', text),
  usage: optional('Usage', oneOf(usages)),
  processUsage: optional('ProcessUsage', text),
  /** Resources of the job, or those the device has for any job. */
  context: optional('Context', oneOf(['Job', 'Global'])),
  scope: optional('Scope', oneOf(resourceScopes)),
  resourceDetails: optional('ResourceDetails', oneOf(['Brief', 'Full'])),
  lotId: optional('LotID', text),
  lotDetails: optional('LotDetails', oneOf(['Brief', 'Full', 'Amount'])),
  location: optional('Location', text),
  exact: optional('Exact', boolean),
  jobId: optional('JobID', text),
  jobPartId: optional('JobPartID', text),
  queueEntryId: optional('QueueEntryID', text),
  parts: children(part),
});

const command = fullElement('ResourceCmdParams', {
  resourceName: optional('ResourceName', text),
  resourceId: optional('ResourceID', text),
  productId: optional('ProductID', text),
  usage: optional('Usage', oneOf(usages)),
  processUsage: optional('ProcessUsage', text),
  status: optional('Status', oneOf(resourceStatuses)),
  activation: optional('Activation', oneOf(['Held', 'Active', 'TestRun', 'TestRunAndGo'])),
  productionAmount: optional('ProductionAmount', number),
  updateMethod: optional('UpdateMethod', oneOf(updateMethods)),
  /** UpdateIDs of the resources that the command changes. */
  updateIds: optional('UpdateIDs', tokens),
  exact: optional('Exact', boolean),
  jobId: optional('JobID', text),
  jobPartId: optional('JobPartID', text),
  queueEntryId: optional('QueueEntryID', text),
  parts: children(part),
  misDetails: child(misDetails),
  /** The resources, as they stand in the message. */
  resources: kept(notNamed('Part', 'MISDetails', 'Comment', 'GeneralID', 'Preview', 'PreviewRef')),
});

const answered = content({ resources: children(resourceInfo) });

/** What a device uses, has or can make, with amounts: asked for, signalled, or changed by a command. */
export const resource = {
  QueryResource: perhaps(query, {}),
  CommandResource: only(command),
  SignalResource: signal({ resources: children(resourceInfo), query: child(query) }),
  ResponseResource: answered,
  AcknowledgeResource: answered,
  /** Commands that the receiver shall send when what the subscription says has come true. */
  RegistrationResource: only(command),
};
