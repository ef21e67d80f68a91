import {
  children,
  elementCodec,
  type Field,
  number,
  type Of,
  oneOf,
  optional,
  text,
} from '../codec/index.js';
import { resourceStatuses, usages } from '../enumerations.js';
import { childElements, type XmlElement } from '../xml/index.js';
import { amountPool } from './amounts.js';
import { part } from './part.js';

const NOT_RESOURCES = new Set([
  'AmountPool',
  'Comment',
  'CostCenter',
  'Event',
  'GeneralID',
  'Lot',
  'MISDetails',
  'Part',
]);

/** The resource itself, as it stands in the message. */
const resource: Field<XmlElement, false> = {
  required: false,
  read: (el) => childElements(el).find((found) => !NOT_RESOURCES.has(found.local)),
  write: (found) => ({ children: [found] }),
};

/** How much of a resource there is, was planned or was used. Amounts are in `unit`, or the unit of the resource. */
export const resourceInfo = elementCodec('ResourceInfo', {
  resourceName: optional('ResourceName', text),
  resourceId: optional('ResourceID', text),
  productId: optional('ProductID', text),
  usage: optional('Usage', oneOf(usages)),
  processUsage: optional('ProcessUsage', text),
  status: optional('Status', oneOf(resourceStatuses)),
  scope: optional('Scope', oneOf(['Allowed', 'Device', 'Present', 'Job', 'Estimate'])),
  level: optional('Level', oneOf(['Empty', 'Low', 'OK', 'High', 'Full'])),
  location: optional('Location', text),
  deviceId: optional('DeviceID', text),
  moduleId: optional('ModuleID', text),
  unit: optional('Unit', text),
  /** Planned. */
  amount: optional('Amount', number),
  actualAmount: optional('ActualAmount', number),
  availableAmount: optional('AvailableAmount', number),
  totalAmount: optional('TotalAmount', number),
  speedPerHour: optional('Speed', number),
  commandResult: optional('CommandResult', oneOf(['Rejected', 'Removed', 'New', 'Merged', 'Replaced'])),
  partAmounts: amountPool,
  parts: children(part),
  resource,
});
export type ResourceInfo = Of<typeof resourceInfo>;
