import {
  boolean,
  child,
  children,
  keptOne,
  notNamed,
  number,
  numbers,
  type Of,
  oneOf,
  optional,
  text,
} from '../codec/index.js';
import { orientations, resourceStatuses, usages } from '../enumerations.js';
import { amountPool, lot } from './amounts.js';
import { fullElement } from './base.js';
import { part } from './part.js';
import { costCenter, event, misDetails } from './work.js';

/** Whether resources are meant that a device may use, has, has loaded, needs for a job, or would need. */
export const resourceScopes = ['Allowed', 'Device', 'Present', 'Job', 'Estimate'] as const;

const isResource = notNamed(
  'AmountPool',
  'Comment',
  'CostCenter',
  'Event',
  'GeneralID',
  'Lot',
  'MISDetails',
  'Part',
  'Preview',
  'PreviewRef',
);

/** How much of a resource there is, was planned or was used. Amounts are in `unit`, or the unit of the resource. */
export const resourceInfo = fullElement('ResourceInfo', {
  resourceName: optional('ResourceName', text),
  resourceId: optional('ResourceID', text),
  productId: optional('ProductID', text),
  usage: optional('Usage', oneOf(usages)),
  processUsage: optional('ProcessUsage', text),
  status: optional('Status', oneOf(resourceStatuses)),
  scope: optional('Scope', oneOf(resourceScopes)),
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
  lotControlled: optional('LotControlled', boolean),
  moduleIndex: optional('ModuleIndex', text),
  orientation: optional('Orientation', oneOf(orientations)),
  transformation: optional('Transformation', numbers),
  partAmounts: amountPool,
  lots: children(lot),
  parts: children(part),
  costCenter: child(costCenter),
  misDetails: child(misDetails),
  events: children(event),
  /** The resource itself, as it stands in the message. */
  resource: keptOne(isResource),
});
export type ResourceInfo = Of<typeof resourceInfo>;
