export type { PartAmount } from './amounts.js';
export type { Device, Employee } from './device.js';
export type { DeviceInfo, JobPhase, ModuleStatus } from './device-info.js';
export type { Notification } from './notification.js';
export type { PartKeys } from './part.js';
export type { Queue, QueueEntry, QueueFilter } from './queue.js';
export type { ResourceInfo } from './resource-info.js';
export type { Subscription } from './subscription.js';
