import type { DeviceDefinition, DeviceKind } from '#libs/craft';

/** Processes of the standard that a kind of device can run; a bench is asked by its own words. */
const byKind: Readonly<Record<DeviceKind, readonly string[]>> = {
  prepress: ['Stripping', 'Imposition', 'Interpreting', 'Rendering', 'Screening'],
  platesetter: ['ImageSetting'],
  press: ['ConventionalPrinting'],
  guillotine: ['Cutting', 'Trimming'],
  folder: ['Creasing', 'Folding'],
  stitcher: ['Collecting', 'Stitching', 'Trimming'],
  binder: ['Gathering', 'SpinePreparation', 'Gluing', 'CoverApplication'],
  bench: [],
};

/** What people do or what only organises work: no plant needs a device for it. */
const withoutDevice: ReadonlySet<string> = new Set([
  'Approval',
  'Buffer',
  'Combine',
  'Delivery',
  'ManualLabor',
  'Ordering',
  'QualityControl',
  'ResourceDefinition',
  'Split',
  'Verification',
]);

/** Whether a process is a device's work at all. */
export const needsDevice = (process: string): boolean => !withoutDevice.has(process);

/** Whether a device can run a process. A bench can where its description has the process as a word. */
export function canRun(device: DeviceDefinition, process: string): boolean {
  if (device.kind !== 'bench') return byKind[device.kind].includes(process);
  const words = device.does.flatMap((work) => work.toLowerCase().split(/\s+/));
  return words.includes(process.toLowerCase());
}
