import {
  boolean,
  child,
  children,
  elementCodec,
  type Field,
  number,
  oneOf,
  optional,
  someOf,
  text,
  tokens,
} from '../codec/index.js';
import { part } from '../elements/part.js';
import { resourceInfo } from '../elements/resource-info.js';
import { resourceClasses, resourceStatuses, usages } from '../enumerations.js';
import { content, only, perhaps } from '../jmf/content.js';
import { childElements, type XmlElement } from '../xml/index.js';

const query = elementCodec('ResourceQuParams', {
  classes: optional('Classes', someOf(resourceClasses)),
  resourceNames: optional('ResourceName', tokens),
  resourceId: optional('ResourceID', text),
  productId: optional('ProductID', text),
  usage: optional('Usage', oneOf(usages)),
  processUsage: optional('ProcessUsage', text),
  scope: optional('Scope', oneOf(['Allowed', 'Device', 'Present', 'Job', 'Estimate'])),
  resourceDetails: optional('ResourceDetails', oneOf(['Brief', 'Full'])),
  lotId: optional('LotID', text),
  location: optional('Location', text),
  exact: optional('Exact', boolean),
  jobId: optional('JobID', text),
  jobPartId: optional('JobPartID', text),
  queueEntryId: optional('QueueEntryID', text),
  parts: children(part),
});

const resources: Field<readonly XmlElement[], false> = {
  required: false,
  read(el) {
    const found = childElements(el).filter(({ local }) => !['Part', 'MISDetails', 'Comment'].includes(local));
    return found.length === 0 ? undefined : found;
  },
  write: (found) => ({ children: found }),
};

const command = elementCodec('ResourceCmdParams', {
  resourceName: optional('ResourceName', text),
  resourceId: optional('ResourceID', text),
  productId: optional('ProductID', text),
  usage: optional('Usage', oneOf(usages)),
  processUsage: optional('ProcessUsage', text),
  status: optional('Status', oneOf(resourceStatuses)),
  productionAmount: optional('ProductionAmount', number),
  updateMethod: optional('UpdateMethod', oneOf(['Complete', 'Incremental', 'Remove'])),
  exact: optional('Exact', boolean),
  jobId: optional('JobID', text),
  jobPartId: optional('JobPartID', text),
  queueEntryId: optional('QueueEntryID', text),
  parts: children(part),
  resources,
});

export const resource = {
  QueryResource: perhaps(query, {}),
  CommandResource: only(command),
  SignalResource: content({ resources: children(resourceInfo), query: child(query) }),
  ResponseResource: content({ resources: children(resourceInfo) }),
};
