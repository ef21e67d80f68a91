/** JMF return codes as far as a delivery depends on them. Source: JDF 1.4 specification, appendix D. */
export const RETURN = {
  success: 0,
  /** Also sent when a receiver of plain XML was given a package. */
  xmlParse: 3,
  processedLate: 12,
  unknownEntry: 105,
  sameStatus: 113,
  duplicate: 116,
} as const;

/** Nothing is wrong with the job: the device cannot take it now. */
const TRY_LATER: ReadonlySet<number> = new Set([8, 10, 100, 112]);

/** Whether a ReturnCode says that it was done, be it late. */
export function isSuccess(code: number): boolean {
  return code === RETURN.success || code === RETURN.processedLate;
}

/** Whether what stands in the way by a ReturnCode may pass by itself. */
export function mayPass(code: number): boolean {
  return TRY_LATER.has(code);
}

/** Our own words for the codes that devices give to queue commands, for a device that adds none of its own. */
const MEANING: Readonly<Record<number, string>> = {
  1: 'it met an error',
  2: 'it met an error of its own',
  3: 'it cannot read the XML',
  4: 'it finds the XML faulty',
  5: 'it does not know this kind of message',
  6: 'a parameter is wrong for it',
  7: 'it misses a parameter',
  8: 'the machine behind it is not available',
  10: 'it is busy',
  100: 'it is not running',
  101: 'it is not able to do this',
  102: 'it finds nothing to execute in the ticket',
  105: 'it has no such queue entry',
  106: 'the entry is being executed',
  107: 'it is too late for a change',
  110: 'it cannot be ready in time',
  112: 'its queue is closed',
  113: 'the entry has that status already',
  114: 'the entry has ended',
  115: 'the entry is not running',
  116: 'it has this job already',
  120: 'it cannot read the address of the ticket',
  121: 'it does not answer to this DeviceID',
  200: 'it finds wrong values among the resources',
  201: 'it misses values among the resources',
};

/** The device's own words if there are any, always with the code. */
export function inWords(code: number, text: string | undefined): string {
  const said = text?.replace(/\s+/g, ' ').trim().slice(0, 500);
  return `${said === undefined || said === '' ? (MEANING[code] ?? 'it refused') : said} (ReturnCode ${code})`;
}
