import { child, type ElementCodec, type Findings, requiredChild, type ValueOf } from '../codec/index.js';
import { fullElement } from '../elements/base.js';
import { type QueueFilter, queue, queueEntryDef, queueFilter } from '../elements/queue.js';
import { firstChild, type XmlElement } from '../xml/index.js';
import { type Content, content } from './content.js';
import { isBefore } from './version.js';

/** Which entries of the queue a command is about. */
export interface EntrySelection {
  readonly filter: QueueFilter;
  /** How much of the queue the answer shall tell; until 1.4. */
  readonly answerFilter?: QueueFilter;
}

/** Every queue-entry command is answered with the queue as far as it was asked for. */
export const queueAnswer = content({ queue: child(queue) });

/** The filter that means one entry. */
export function entryFilter(queueEntryId: string): QueueFilter {
  return { entries: [{ queueEntryId }] };
}

/** The entry that the form until 1.4 can name, if the filter says nothing else. */
function onlyEntry({ entries, ...rest }: QueueFilter) {
  return entries?.length === 1 && Object.keys(rest).length === 0 ? entries[0] : undefined;
}

/**
 * A command about entries. Read in either form: since 1.5 a QueueFilter inside the command's own parameters, until 1.4
 * a QueueEntryDef in the message, with a QueueFilter for the answer. Written in the older form for a receiver of an
 * older version, if it can say what is meant: `fitsOldForm` tells of the command's own fields.
 */
export function selectingCommand<F>(
  paramsName: string,
  own: F,
  inOldForm: ValueOf<F>,
  fitsOldForm: (body: ValueOf<F>) => boolean,
): Content<EntrySelection & ValueOf<F>> {
  const params = fullElement(paramsName, { ...own, filter: requiredChild(queueFilter) }) as ElementCodec<
    EntrySelection & ValueOf<F>
  >;
  const fields = {
    params: child(params),
    entry: child(queueEntryDef),
    answerFilter: child(queueFilter),
  };
  const readOld = (message: XmlElement, findings: Findings) => {
    const def = firstChild(message, queueEntryDef.name);
    if (def === undefined) {
      findings.missing(message, `${paramsName} with a QueueFilter`);
      return undefined;
    }
    const entry = queueEntryDef.read(def, findings);
    return entry && { ...inOldForm, filter: { entries: [entry] } };
  };
  return {
    fields,
    read(message, findings) {
      const found = firstChild(message, paramsName);
      const old =
        found === undefined || (!firstChild(found, 'QueueFilter') && firstChild(message, 'QueueEntryDef'));
      const body = old ? readOld(message, findings) : params.read(found, findings);
      const answer = fields.answerFilter.read(message, findings);
      return body && (answer === undefined ? body : { ...body, answerFilter: answer });
    },
    write({ answerFilter, ...body }, version) {
      const entry = isBefore(version, '1.5') ? onlyEntry(body.filter) : undefined;
      const main =
        entry !== undefined && fitsOldForm(body as unknown as ValueOf<F>)
          ? queueEntryDef.write(entry)
          : params.write(body as unknown as EntrySelection & ValueOf<F>);
      return answerFilter === undefined ? [main] : [main, queueFilter.write(answerFilter)];
    },
  };
}

/** A command whose only parameter is the selection. */
export function entryCommand(paramsName: string): Content<EntrySelection> {
  return selectingCommand(paramsName, {}, {}, () => true);
}
