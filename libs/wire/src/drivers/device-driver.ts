import type { Device, DispatchOutcome, Parcel } from '#libs/flow';
import type { QueueEntry } from '#libs/jdf';
import type { Clock, IdSource } from '#libs/kernel';
import type { AddressGuard } from '../address-guard/address-guard.js';
import type { postXml } from '../http/post-xml.js';

/** What can be asked of a device that is spoken to in this way. What is missing is refused in words, never pretended. */
export interface DriverAbilities {
  readonly hold: boolean;
  readonly abort: boolean;
  readonly queueStatus: boolean;
}

/** `unknown`: this way of speaking has no such question. */
export type QueueAnswer =
  | { readonly kind: 'entries'; readonly entries: readonly QueueEntry[] }
  | { readonly kind: 'silent'; readonly reason: string }
  | { readonly kind: 'unknown' };

/**
 * One way of speaking to devices. Never throws for what a device does or fails to do: that is an outcome. `taken` means
 * that the device has the job and will keep it; loading a job never starts a machine.
 */
export interface DeviceDriver {
  /** As `Device.driver` names it. */
  readonly name: string;
  readonly abilities: DriverAbilities;
  /** May be called again with the same parcel when the answer to an earlier call was lost. */
  submit(device: Device, parcel: Parcel): Promise<DispatchOutcome>;
  instruct(
    device: Device,
    deviceEntryId: string,
    wanted: 'Held' | 'Waiting' | 'Aborted',
  ): Promise<DispatchOutcome>;
  queueStatus(device: Device): Promise<QueueAnswer>;
}

/** What drivers need of the rest of the server. */
export interface DriverPorts {
  readonly guard: AddressGuard;
  readonly clock: Clock;
  readonly ids: IdSource;
  /** SIDELAY_DEVICE_ID: who we are in a message. */
  readonly senderId: string;
  /** An http address under which a device can fetch the ticket, for devices that take no packages; null: there is none. */
  readonly documentUrl?: (parcel: Parcel) => string | null;
  /** How a message is carried; HTTP where left out. A run in virtual time carries it by hand. */
  readonly post?: typeof postXml;
  /** Real milliseconds for one exchange with a device (10,000). */
  readonly timeoutMs?: number;
  /** Largest answer that is read, in bytes (4,000,000). */
  readonly maxAnswerBytes?: number;
}

/** A kind of driver: the entry of the registry. */
export interface DriverKind {
  readonly name: string;
  make(ports: DriverPorts): DeviceDriver;
}

/** The device has the entry, under its own id. */
export function taken(deviceEntryId: string): DispatchOutcome {
  return { outcome: 'taken', deviceEntryId };
}

/** To be tried again; `silent` where the device said nothing at all. */
export function later(reason: string, silent: boolean): DispatchOutcome {
  return { outcome: 'later', reason, silent };
}

/** The device will not have it: a person has to look. */
export function refused(reason: string): DispatchOutcome {
  return { outcome: 'refused', reason };
}
