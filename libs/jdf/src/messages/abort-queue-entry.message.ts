import { queueFilter } from '../elements/queue.js';
import type { Content } from '../jmf/content.js';
import { type EntrySelection, queueAnswer, readSelection } from '../jmf/entry-command.js';
import { attributeOf, element, firstChild } from '../xml/index.js';

const PARAMS = 'AbortQueueEntryParams';

/** `endStatus`: what the entry and its node shall be afterwards. */
export interface AbortSelection extends EntrySelection {
  readonly endStatus: 'Aborted' | 'Completed';
}

const abort: Content<AbortSelection> = {
  read(message, findings) {
    const filter = readSelection(message, PARAMS, findings);
    const params = firstChild(message, PARAMS);
    // The form until 1.4 has no parameters and always meant Aborted.
    const endStatus = params === undefined ? 'Aborted' : attributeOf(params, 'EndStatus');
    if (endStatus === 'Aborted' || endStatus === 'Completed') return filter && { filter, endStatus };
    if (endStatus === undefined) findings.missing(params!, 'attribute EndStatus');
    else findings.wrong(params!, 'EndStatus', endStatus, 'one of Aborted, Completed');
    return undefined;
  },
  write: ({ filter, endStatus }) => [element(PARAMS, { EndStatus: endStatus }, [queueFilter.write(filter)])],
};

export const abortQueueEntry = { CommandAbortQueueEntry: abort, ResponseAbortQueueEntry: queueAnswer };
