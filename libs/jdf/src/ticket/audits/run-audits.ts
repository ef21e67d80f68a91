import {
  boolean,
  children,
  duration,
  elementCodec,
  oneOf,
  optional,
  required,
  time,
} from '../../codec/index.js';
import { misDetails } from '../../elements/device.js';
import { part } from '../../elements/part.js';
import { phaseStatuses, runEndStatuses } from '../../enumerations.js';
import { resourceLinks } from '../views/resource-link.js';
import { auditFields } from './audit-fields.js';

/** The node was executed; comes after the phases of the run. */
export const processRun = elementCodec('ProcessRun', {
  ...auditFields,
  start: required('Start', time),
  end: required('End', time),
  endStatus: required('EndStatus', oneOf(runEndStatuses)),
  /** Working time without breaks. */
  durationS: optional('Duration', duration),
  submissionTime: optional('SubmissionTime', time),
  returnTime: optional('ReturnTime', time),
  parts: children(part),
});

/** A resource was used, or became another than planned. */
export const resourceAudit = elementCodec('ResourceAudit', {
  ...auditFields,
  reason: optional('Reason', oneOf(['OperatorInput', 'PlanChange', 'ProcessResult'])),
  contentsModified: optional('ContentsModified', boolean),
  nodeStatus: optional('NodeStatus', oneOf(phaseStatuses)),
  misDetails: children(misDetails),
  /** The first is how it is now, the second how it was planned. */
  links: resourceLinks,
  parts: children(part),
});
