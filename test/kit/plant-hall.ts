import { JDF_TYPE, JMF_TYPE } from '../../apps/plant/src/device/media-types.js';
import {
  type SimulatedDevice,
  type SimulatedDeviceOptions,
  simulatedDevice,
} from '../../apps/plant/src/device/simulated-device.js';
import type { DeviceState } from '../../apps/plant/src/device/state.js';
import { isMultipart, readMultipart, writeMultipart } from '../../apps/plant/src/package/multipart.js';
import {
  descendants,
  entryFilter,
  type Message,
  type MessageKind,
  type NewMessage,
  readJmf,
  writeJmf,
} from '../../libs/jdf/src/index.js';
import { Fault, seededRandom, seedFrom, uuidV7Source, VirtualClock } from '../../libs/kernel/src/index.js';
import { parsedXml, valueIn } from './value-in.js';

export const MORNING = Date.UTC(2026, 2, 2, 8, 0, 0);
export const HUB = 'http://hub.test/jmf';

export interface Letter {
  readonly url: string;
  readonly contentType: string;
  readonly body: string;
  readonly at: number;
}

/** A device in virtual time with a hub that only listens, and may be away. */
export class Hall {
  readonly clock: VirtualClock;
  readonly letters: Letter[] = [];
  readonly answers: string[] = [];
  device: SimulatedDevice;
  kept: DeviceState | undefined;
  hubIsThere: (letter: Letter) => boolean = () => true;
  #asked = 0;
  #starts = 0;

  constructor(
    private readonly wish: Partial<SimulatedDeviceOptions> = {},
    start = MORNING,
    /** The plant clock jumped by so many seconds while it was off. */
    jumpS = 0,
  ) {
    this.clock = new VirtualClock(start);
    this.device = this.#make();
    if (jumpS !== 0) this.device.clockMoved(jumpS * 1000);
    this.device.start();
  }

  #make(): SimulatedDevice {
    const random = seededRandom(seedFrom(`test ${++this.#starts}`));
    return simulatedDevice({
      id: 'press-1',
      kind: 'press',
      name: 'First press',
      hubJmf: HUB,
      clock: this.clock,
      random,
      ids: uuidV7Source(this.clock, random),
      transport: async (url, body, contentType) => {
        const letter = { url, body, contentType, at: this.clock.now() };
        if (!this.hubIsThere(letter)) return { status: 0, body: '' };
        this.letters.push(letter);
        return { status: 200, body: '' };
      },
      keep: (state) => {
        // As a file would: what is kept is a copy.
        this.kept = JSON.parse(JSON.stringify(state)) as DeviceState;
      },
      state: this.kept,
      ...this.wish,
    });
  }

  /** As kill -9 would: nothing is said and nothing more is kept; then it is switched on again. */
  killAndStart(): void {
    const kept = this.kept;
    this.device.stop();
    this.kept = kept;
    this.device = this.#make();
    this.device.start();
  }

  async pass(seconds: number): Promise<void> {
    await this.clock.runUntil(this.clock.now() + seconds * 1000);
  }

  /** Sends a message and reads the one Response. */
  async say(
    message: Omit<NewMessage, 'id'>,
    enclosed: string | null = null,
    deviceId: string | undefined = 'press-1',
  ): Promise<Message> {
    const jmf = writeJmf({
      senderId: 'hub',
      deviceId,
      timeStamp: this.clock.now(),
      messages: [{ ...message, id: `q${++this.#asked}` } as NewMessage],
    });
    return this.sayText(jmf, enclosed);
  }

  async sayText(jmf: string, enclosed: string | null = null): Promise<Message> {
    const answer =
      enclosed === null ? await this.device.receive(jmf, JMF_TYPE) : await this.#withTicket(jmf, enclosed);
    this.answers.push(answer);
    return messagesIn(answer)[0]!;
  }

  #withTicket(jmf: string, enclosed: string): Promise<string> {
    const pack = writeMultipart(
      [
        { contentType: JMF_TYPE, contentId: null, bytes: Buffer.from(jmf) },
        { contentType: JDF_TYPE, contentId: 'ticket@hub.test', bytes: Buffer.from(enclosed) },
      ],
      'boundary-1',
    );
    return this.device.receive(Buffer.from(pack.body), pack.contentType);
  }

  submit(
    ticket: string,
    wish: { hold?: boolean; priority?: number; returnUrl?: string } = {},
  ): Promise<Message> {
    return this.say(
      { kind: 'CommandSubmitQueueEntry', body: { url: 'cid:ticket@hub.test', ...wish } } as NewMessage,
      ticket,
    );
  }

  /** Submits and answers the entry's ID. */
  async entry(ticket: string, wish: { hold?: boolean; priority?: number } = {}): Promise<string> {
    const answer = await this.submit(ticket, wish);
    if (answer.kind !== 'ResponseSubmitQueueEntry' || answer.body.entry === undefined) {
      throw new Fault('BROKEN', `not taken: ${answer.notification?.comment}`);
    }
    return answer.body.entry.queueEntryId;
  }

  async command(kind: MessageKind, entryId: string, more: object = {}): Promise<number> {
    const body = { filter: entryFilter(entryId), ...more };
    return (await this.say({ kind, body } as unknown as NewMessage)).returnCode ?? 0;
  }

  async statusOf(entryId: string): Promise<string> {
    const answer = await this.say({ kind: 'QueryQueueStatus', body: entryFilter(entryId) });
    if (answer.kind !== 'ResponseQueueStatus') throw new Fault('BROKEN', 'no queue');
    return answer.body.queue?.entries?.[0]?.status ?? 'not existing';
  }

  /** All messages that reached the hub, in order. */
  get heard(): Message[] {
    return this.letters.flatMap(({ body, contentType }) => messagesIn(rootOf(body, contentType)));
  }

  get phases() {
    return this.heard.flatMap((message) =>
      message.kind === 'SignalStatus'
        ? (message.body.devices ?? []).flatMap(({ jobPhases = [] }) => jobPhases)
        : [],
    );
  }
}

function rootOf(body: string, contentType: string): string {
  if (!isMultipart(contentType)) return body;
  return Buffer.from(readMultipart(Buffer.from(body), contentType)![0]!.bytes).toString('utf8');
}

export function messagesIn(text: string): Message[] {
  const doc = parsedXml(text);
  const jmf = valueIn(readJmf(doc));
  return [...jmf.messages];
}

/** The ticket in a letter that gives one back. */
export function ticketIn({ body, contentType }: Letter): string {
  return Buffer.from(readMultipart(Buffer.from(body), contentType)![1]!.bytes).toString('utf8');
}

/** Attributes of all elements of a name, in document order. */
export function elementsIn(text: string, name: string): Record<string, string>[] {
  const doc = parsedXml(text);
  return [...descendants(doc.root)]
    .filter(({ local }) => local === name)
    .map((el) => Object.fromEntries(el.attributes.map((attribute) => [attribute.name, attribute.value])));
}
