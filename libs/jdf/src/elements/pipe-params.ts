import { kept, type Of, oneOf, optional, required, text } from '../codec/index.js';
import { nodeStatuses, resourceStatuses } from '../enumerations.js';
import { amountPool } from './amounts.js';
import { fullElement } from './base.js';

const GENERIC = ['AmountPool', 'Comment', 'GeneralID', 'Preview', 'PreviewRef'];
const isLink = (local: string): boolean => local.endsWith('Link');

/** What is to be pulled or pushed through a pipe, or that it pauses or ends. */
export const pipeParams = fullElement('PipeParams', {
  pipeId: required('PipeID', text),
  jobId: optional('JobID', text),
  jobPartId: optional('JobPartID', text),
  projectId: optional('ProjectID', text),
  status: optional('Status', oneOf(nodeStatuses)),
  /** What the resource's status becomes. */
  updatedStatus: optional('UpdatedStatus', oneOf(resourceStatuses)),
  partAmounts: amountPool,
  /** The resource and its link, as they stand in the message. */
  resources: kept((local) => !GENERIC.includes(local) && !isLink(local)),
  links: kept(isLink),
});
export type PipeParams = Of<typeof pipeParams>;
