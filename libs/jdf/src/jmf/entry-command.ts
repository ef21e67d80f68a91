import { child, type Findings, required, text } from '../codec/index.js';
import { type QueueFilter, queue, queueEntryDef, queueFilter } from '../elements/queue.js';
import { element, firstChild, type XmlElement } from '../xml/index.js';
import { type Content, content } from './content.js';

/** Which entries of the queue a command is about. */
export interface EntrySelection {
  readonly filter: QueueFilter;
}

/** Every queue-entry command is answered with the queue as far as it was asked for. */
export const queueAnswer = content({ queue: child(queue) });

/** The filter that means one entry. */
export function entryFilter(queueEntryId: string): QueueFilter {
  return { entries: [{ queueEntryId }] };
}

/**
 * Reads the selection in either form: since 1.5 a QueueFilter inside the command's own parameters, until 1.4 a
 * QueueEntryDef in the message. Undefined (and a finding) when neither is there.
 */
export function readSelection(
  message: XmlElement,
  paramsName: string,
  findings: Findings,
): QueueFilter | undefined {
  const params = firstChild(message, paramsName);
  const filter = params && firstChild(params, queueFilter.name);
  if (filter !== undefined) return queueFilter.read(filter, findings);
  const def = firstChild(message, queueEntryDef.name);
  if (def !== undefined) {
    const id = required('QueueEntryID', text).read(def, findings);
    return id === undefined ? undefined : entryFilter(id);
  }
  findings.missing(message, `${paramsName} with a QueueFilter`);
  return undefined;
}

/** A command whose only parameter is the selection; written in the form of 1.5 and later. */
export function entryCommand(paramsName: string): Content<EntrySelection> {
  return {
    read(message, findings) {
      const filter = readSelection(message, paramsName, findings);
      return filter && { filter };
    },
    write: ({ filter }) => [element(paramsName, {}, [queueFilter.write(filter)])],
  };
}
