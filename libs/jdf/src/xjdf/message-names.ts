/** Commands on queue entries: one message with an operation in the newer generation. */
export const ENTRY_OPERATIONS: Readonly<Record<string, string>> = {
  AbortQueueEntry: 'Abort',
  HoldQueueEntry: 'Hold',
  RemoveQueueEntry: 'Remove',
  ResumeQueueEntry: 'Resume',
  SuspendQueueEntry: 'Suspend',
  SetQueueEntryPosition: 'Move',
  SetQueueEntryPriority: 'Move',
};

/** Messages on pipes: the same. */
export const PIPE_OPERATIONS: Readonly<Record<string, string>> = {
  PipeClose: 'Close',
  PipePause: 'Pause',
  PipePull: 'Pull',
  PipePush: 'Push',
};

const FAMILIES = ['Query', 'Command', 'Signal', 'Response'] as const;

/** The type of a message in the newer generation, whose name says family and type. */
export function newerType(type: string): string {
  if (Object.hasOwn(ENTRY_OPERATIONS, type)) return 'ModifyQueueEntry';
  return Object.hasOwn(PIPE_OPERATIONS, type) ? 'PipeControl' : type;
}

/** Family and type of a message of the newer generation. */
export function familyOf(name: string): { readonly family: string; readonly type: string } | undefined {
  const family = FAMILIES.find((one) => name.startsWith(one));
  return family === undefined ? undefined : { family, type: name.slice(family.length) };
}

/** The message of the older generation for an operation on a pipe; undefined if there is none. */
export function olderPipe(operation: string): string | undefined {
  return Object.entries(PIPE_OPERATIONS).find(([, newer]) => newer === operation)?.[0];
}
