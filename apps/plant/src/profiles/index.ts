import { binder } from './binder.profile.js';
import { folder } from './folder.profile.js';
import { guillotine } from './guillotine.profile.js';
import { platesetter } from './platesetter.profile.js';
import { prepress } from './prepress.profile.js';
import { press } from './press.profile.js';
import type { DeviceKind, Profile } from './profile.js';
import { stitcher } from './stitcher.profile.js';

export { type DeviceKind, kinds, type Profile } from './profile.js';

/** One line a kind of machine. */
export const profiles: Readonly<Record<DeviceKind, Profile>> = {
  press,
  platesetter,
  guillotine,
  folder,
  stitcher,
  binder,
  prepress,
};
