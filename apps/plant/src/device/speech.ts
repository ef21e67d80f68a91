import {
  type DeviceInfo,
  type DeviceStatus,
  type JobPhase,
  messageId,
  type NewMessage,
  type ResourceInfo,
  writeJmf,
} from '#libs/jdf';
import type { IdSource, Instant } from '#libs/kernel';
import type { Profile } from '../profiles/index.js';
import { usedOf, type WorkInput } from '../ticket/work.js';
import { JMF_TYPE } from './media-types.js';
import type { SaidPhase } from './progress.js';
import { saidNow, speedOf, totalsWith } from './progress.js';
import { runningEntry } from './queue.js';
import { resourceElement } from './resource-element.js';
import type { DeviceState, Entry, Notice, OutboxItem } from './state.js';
import type { Voice } from './voice.js';

export interface SpeechOptions {
  readonly id: string;
  readonly profile: Profile;
  readonly state: DeviceState;
  readonly ids: IdSource;
  /** Where signals go that nobody subscribed to. */
  readonly hubJmf: string;
  readonly push: (item: OutboxItem) => void;
  /** Makes the message that gives a ticket back. */
  readonly giveBack: (entry: Entry, at: Instant) => OutboxItem;
}

const AGENT = 'Sidelay simulated device';

/** A signal's type decides which subscriptions it serves. */
type SignalType = 'Status' | 'Resource' | 'Notification';

/** Puts what the machine does into JMF, and the JMF into the outbox. */
export class Speech implements Voice {
  constructor(private readonly options: SpeechOptions) {}

  phase(entry: Entry, phase: SaidPhase, at: Instant, occasion: 'begins' | 'goes on' | 'ends'): void {
    const key = occasion === 'goes on' ? `phase ${entry.id} ${phase.start}` : null;
    const open = occasion === 'ends' ? null : phase;
    const info = this.#infoWith(entry, this.jobPhase(entry, phase, open), at, {
      open,
      status: deviceStatusOf(phase),
      statusDetails: phase.statusDetails,
    });
    this.#signal('Status', { kind: 'SignalStatus', body: { devices: [info] } }, at, key);
  }

  ended(entry: Entry, status: 'Completed' | 'Aborted', last: SaidPhase | null, at: Instant): void {
    const final: JobPhase = {
      ...this.jobPhase(entry, { ...(last ?? NOTHING_DONE), status, statusDetails: null }, null),
      phaseStartTime: last?.start,
      endTime: at,
    };
    const devices = [this.#infoWith(entry, final, at, {})];
    this.#signal('Status', { kind: 'SignalStatus', body: { devices } }, at, null);
  }

  /** An entry that is not on the machine says nothing of it, for it may be at work on another. */
  #infoWith(entry: Entry, jobPhase: JobPhase, at: Instant, now: DeviceNow): DeviceInfo {
    const running = runningEntry(this.options.state);
    if (running === null || running === entry) {
      return this.deviceInfo({ ...now, entry, jobPhases: [jobPhase] });
    }
    const present = this.presentInfo(at);
    return { ...present, jobPhases: [...(present.jobPhases ?? []), jobPhase] };
  }

  idle(at: Instant, occasion: 'begins' | 'goes on'): void {
    const key = occasion === 'goes on' ? 'idle' : null;
    this.#signal('Status', { kind: 'SignalStatus', body: { devices: [this.deviceInfo({})] } }, at, key);
  }

  used(entry: Entry, open: SaidPhase | null, at: Instant): void {
    const { work, run } = entry;
    if (run === null) return;
    const totals = totalsWith(run, open);
    const pieces = totals.good + totals.waste;
    if (run.usedSaid === pieces) return;
    run.usedSaid = pieces;
    const resources = work.inputs.flatMap((input) => this.#resourceInfo(input, usedOf(input, totals)));
    if (resources.length === 0) return;
    const query = {
      jobId: work.jobId,
      jobPartId: work.jobPartId,
      queueEntryId: entry.id,
      usage: 'Input' as const,
    };
    this.#signal(
      'Resource',
      { kind: 'SignalResource', body: { resources, query } },
      at,
      `resource ${entry.id}`,
    );
  }

  notice(entry: Entry | null, notice: Notice, at: Instant): void {
    const body = {
      notification: {
        class: notice.class,
        timeStamp: at,
        type: notice.class === 'Event' ? 'Event' : 'Error',
        jobId: entry?.work.jobId,
        jobPartId: entry?.work.jobPartId,
        queueEntryId: entry?.id,
        comment: notice.text,
      },
    };
    this.#signal('Notification', { kind: 'SignalNotification', body }, at, null);
  }

  returns(entry: Entry, at: Instant): void {
    this.options.push(this.options.giveBack(entry, at));
  }

  /** The device at this instant, with what is on it. */
  presentInfo(at: Instant): DeviceInfo {
    const entry = runningEntry(this.options.state);
    const open = entry?.run ? saidNow(entry.run, at) : null;
    if (entry === null || open === null) return this.deviceInfo({});
    const jobPhases = [this.jobPhase(entry, open, open)];
    const status = deviceStatusOf(open);
    return this.deviceInfo({ entry, open, status, statusDetails: open.statusDetails, jobPhases });
  }

  deviceInfo(now: DeviceNow): DeviceInfo {
    const { id, profile, state } = this.options;
    const { entry = null, open = null, status = 'Idle', statusDetails = null, jobPhases = [] } = now;
    const counter = state.counter + (open?.good ?? 0) + (open?.waste ?? 0);
    return {
      deviceId: id,
      deviceStatus: status,
      statusDetails: statusDetails ?? undefined,
      deviceCondition: statusDetails === 'BreakDown' ? 'Failure' : 'OK',
      counterUnit: entry?.work.outUnit ?? profile.counterUnit,
      productionCounter: counter,
      totalProductionCounter: counter,
      speedPerHour: profile.reports.speed ? speedOf(entry?.run?.current ?? null) : undefined,
      idleStartTime: status === 'Idle' ? (state.idleSince ?? undefined) : undefined,
      jobPhases,
    };
  }

  /** `open` is the phase that is not among the closed ones of the run yet. */
  jobPhase(entry: Entry, phase: SaidPhase, open: SaidPhase | null): JobPhase {
    const { work, run } = entry;
    const { reports } = this.options.profile;
    const counted = work.outAmount !== null;
    const totals = run === null ? NOTHING_DONE : totalsWith(run, open);
    const planned = Math.floor(work.outAmount ?? 0);
    return {
      status: phase.status,
      statusDetails: phase.statusDetails ?? undefined,
      jobId: work.jobId,
      jobPartId: work.jobPartId,
      queueEntryId: entry.id,
      startTime: run?.start,
      phaseStartTime: phase.start,
      amount: counted ? totals.good : undefined,
      waste: counted && reports.waste ? totals.waste : undefined,
      phaseAmount: counted && reports.phaseCounts ? phase.good : undefined,
      phaseWaste: counted && reports.phaseCounts && reports.waste ? phase.waste : undefined,
      totalAmount: counted ? planned : undefined,
      percentCompleted:
        planned > 0 ? Math.min(100, Math.floor((totals.good / planned) * 1000) / 10) : undefined,
      speedPerHour: reports.speed ? speedOf(run?.current ?? null) : undefined,
    };
  }

  #resourceInfo(
    input: WorkInput,
    used: { readonly actual: number; readonly waste: number },
  ): readonly ResourceInfo[] {
    if (input.amount === null && !input.fed) return [];
    const { waste: tellsWaste } = this.options.profile.reports;
    return [
      {
        resourceName: input.name,
        resourceId: input.resourceId,
        usage: 'Input',
        processUsage: input.processUsage ?? undefined,
        unit: input.unit ?? undefined,
        amount: input.amount ?? undefined,
        actualAmount: used.actual,
        deviceId: this.options.id,
        partAmounts: tellsWaste
          ? [
              { actualAmount: used.actual - used.waste, parts: [{ Condition: 'Good' }] },
              { actualAmount: used.waste, parts: [{ Condition: 'Waste' }] },
            ]
          : undefined,
        resource: resourceElement(input),
      },
    ];
  }

  #signal(
    type: SignalType,
    message: Pick<NewMessage, 'kind' | 'body'>,
    at: Instant,
    key: string | null,
  ): void {
    const { state, hubJmf, push } = this.options;
    const channels = state.channels.filter((channel) => channel.type === type);
    const hub = channels.filter(({ url }) => url === hubJmf);
    const others = channels.filter(({ url }) => url !== hubJmf);
    const targets = [
      { url: hubJmf, refId: hub[0]?.id },
      ...others.map(({ url, id }) => ({ url, refId: id })),
    ];
    for (const { url, refId } of targets) {
      const body = this.write([{ ...message, refId } as Omit<NewMessage, 'id'>], at);
      const own = key === null ? null : `${key} ${url}`;
      push({ url, contentType: JMF_TYPE, body, kind: 'signal', key: own, entryId: null });
    }
  }

  /** A JMF document from this device; every message gets its ID and time. */
  write(messages: readonly Omit<NewMessage, 'id'>[], at: Instant): string {
    const { id, ids } = this.options;
    return writeJmf({
      senderId: id,
      timeStamp: at,
      agentName: AGENT,
      messages: messages.map(
        (message) => ({ ...message, id: messageId(ids.next()), time: at }) as NewMessage,
      ),
    });
  }
}

/** What there is to say of the device; left out: it stands idle. */
interface DeviceNow {
  readonly entry?: Entry | null;
  readonly open?: SaidPhase | null;
  readonly status?: DeviceStatus;
  readonly statusDetails?: string | null;
  readonly jobPhases?: readonly JobPhase[];
}

const NOTHING_DONE = { start: 0, good: 0, waste: 0 };

/** Standard, device status and node status (own mapping): a machine that is broken is Down, any other stop is Stopped. */
export function deviceStatusOf(phase: Pick<SaidPhase, 'status' | 'statusDetails'>): DeviceStatus {
  switch (phase.status) {
    case 'Setup':
      return 'Setup';
    case 'InProgress':
      return 'Running';
    case 'Cleanup':
      return 'Cleanup';
    case 'Stopped':
      return phase.statusDetails === 'BreakDown' ? 'Down' : 'Stopped';
    default:
      return 'Idle';
  }
}
