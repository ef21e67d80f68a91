/** Closed lists of the standard that several views use. Source: the official JDF 1.9 schema (JDFTypes). */
export const versions = ['1.0', '1.1', '1.2', '1.3', '1.4', '1.5', '1.6', '1.7', '1.8', '1.9'] as const;

/** JDF/@Status. */
export const nodeStatuses = [
  'Waiting',
  'TestRunInProgress',
  'Ready',
  'FailedTestRun',
  'Setup',
  'InProgress',
  'Cleanup',
  'Spawned',
  'Suspended',
  'Stopped',
  'Completed',
  'Aborted',
  'Part',
  'Pool',
] as const;
export type NodeStatus = (typeof nodeStatuses)[number];

/** PhaseTime/@Status. */
export const phaseStatuses = [
  'TestRunInProgress',
  'Setup',
  'InProgress',
  'Cleanup',
  'Spawned',
  'Suspended',
  'Stopped',
] as const;

/** ProcessRun/@EndStatus. */
export const runEndStatuses = ['Aborted', 'Completed', 'FailedTestRun', 'Ready', 'Stopped'] as const;

/** JDF/@Activation. */
export const activations = ['Inactive', 'Informative', 'Held', 'Active', 'TestRun', 'TestRunAndGo'] as const;
export type Activation = (typeof activations)[number];

/** From the least to the most that can be done with the resource. */
export const resourceStatuses = [
  'Incomplete',
  'Rejected',
  'Unavailable',
  'InUse',
  'Draft',
  'Complete',
  'Available',
] as const;
export type ResourceStatus = (typeof resourceStatuses)[number];

/** Resource/@Class. */
export const resourceClasses = [
  'Consumable',
  'Handling',
  'Implementation',
  'Intent',
  'Parameter',
  'PlaceHolder',
  'Quantity',
] as const;

/** The classes of which there is an amount. */
export const physicalClasses = ['Consumable', 'Handling', 'Quantity'] as const;

/** ResourceLink/@Usage. */
export const usages = ['Input', 'Output'] as const;

/** DeviceInfo/@DeviceStatus. */
export const deviceStatuses = ['Unknown', 'Idle', 'Down', 'Setup', 'Running', 'Cleanup', 'Stopped'] as const;
export type DeviceStatus = (typeof deviceStatuses)[number];

/** Queue/@Status. */
export const queueStatuses = ['Blocked', 'Closed', 'Full', 'Running', 'Waiting', 'Held'] as const;
export type QueueStatus = (typeof queueStatuses)[number];

/** QueueEntry/@Status. */
export const queueEntryStatuses = [
  'Running',
  'Waiting',
  'Held',
  'Removed',
  'Suspended',
  'PendingReturn',
  'Completed',
  'Aborted',
] as const;
export type QueueEntryStatus = (typeof queueEntryStatuses)[number];

/** Notification/@Class, from the least to the most serious. */
export const notificationClasses = ['Event', 'Information', 'Warning', 'Error', 'Fatal'] as const;
export type NotificationClass = (typeof notificationClasses)[number];

/** How what is sent changes what is there. */
export const updateMethods = ['Complete', 'Incremental', 'Remove'] as const;

/** How a component lies: turned in its plane, or flipped over first. */
export const orientations = [
  'Rotate0',
  'Rotate90',
  'Rotate180',
  'Rotate270',
  'Flip0',
  'Flip90',
  'Flip180',
  'Flip270',
] as const;

/** Resource/@PartUsage. */
export const partUsages = ['Explicit', 'Implicit', 'Sparse'] as const;
