import { attributeOf, type Content, firstChild, nothing, standardMessages, type XmlElement } from '#libs/jdf';

/** The URL and entry that ResubmitQueueEntry names. */
export interface Resubmission {
  readonly queueEntryId: string;
  readonly url: string;
}

/** Where SetQueueEntryPosition wants an entry: a position, or a neighbour. */
export interface Position {
  readonly queueEntryId: string;
  readonly position: number | null;
  /** The entry before it. */
  readonly previous: string | null;
  readonly next: string | null;
}

/** A command whose parameters are attributes of one element; a device only reads it. */
function attributesOf<B>(params: string, read: (el: XmlElement) => B | string): Content<B> {
  return {
    read(message, findings) {
      const el = firstChild(message, params);
      const body = el === undefined ? params : read(el);
      if (typeof body !== 'string') return body;
      findings.missing(el ?? message, body);
      return undefined;
    },
    write: () => [],
  };
}

const resubmission = attributesOf<Resubmission>('ResubmissionParams', (el) => {
  const queueEntryId = attributeOf(el, 'QueueEntryID');
  const url = attributeOf(el, 'URL');
  if (queueEntryId === undefined) return 'attribute QueueEntryID';
  return url === undefined ? 'attribute URL' : { queueEntryId, url };
});

const position = attributesOf<Position>('QueueEntryPosParams', (el) => {
  const queueEntryId = attributeOf(el, 'QueueEntryID');
  if (queueEntryId === undefined) return 'attribute QueueEntryID';
  const at = attributeOf(el, 'Position');
  const previous = attributeOf(el, 'PrevQueueEntryID') ?? null;
  const next = attributeOf(el, 'NextQueueEntryID') ?? null;
  const given = at !== undefined && /^\d+$/.test(at) ? Number(at) : null;
  if (given === null && previous === null && next === null) return 'Position or neighbour';
  return { queueEntryId, position: given, previous, next };
});

const queue = standardMessages.ResponseQueueStatus;

/** The messages of the standard that a device knows beyond those that the server exchanges. */
export const deviceContents = {
  ...standardMessages,
  CommandOpenQueue: nothing,
  ResponseOpenQueue: queue,
  CommandCloseQueue: nothing,
  ResponseCloseQueue: queue,
  CommandHoldQueue: nothing,
  ResponseHoldQueue: queue,
  CommandResumeQueue: nothing,
  ResponseResumeQueue: queue,
  CommandResubmitQueueEntry: resubmission,
  ResponseResubmitQueueEntry: queue,
  CommandSetQueueEntryPosition: position,
  ResponseSetQueueEntryPosition: queue,
};

export type DeviceMessageKind = keyof typeof deviceContents;
