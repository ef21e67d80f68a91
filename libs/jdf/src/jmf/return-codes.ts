/**
 * ReturnCodes of a Response, with what each says. Source: JDF 1.4 specification, appendix D; codes that it does not
 * list mean what their hundred means.
 */
export const returnCodes = {
  0: 'success',
  1: 'general error',
  2: 'internal error',
  3: 'the XML cannot be parsed, or a package was sent to who takes only XML',
  4: 'the message is not valid',
  5: 'messages of this type are not served',
  6: 'a parameter is wrong',
  7: 'a parameter is missing',
  8: 'the device is not available',
  9: 'the message is incomplete',
  10: 'the receiver is busy',
  11: 'an answer can only come later, and no address for it is given: nothing was done',
  12: 'done, and an Acknowledge can only come later',
  13: 'reliable signals are not served: not subscribed',
  100: 'the device is not running',
  101: 'the device cannot do it',
  102: 'no node of the ticket can be executed',
  103: 'the JobID is not known',
  104: 'the JobPartID is not known',
  105: 'the entry is not in the queue',
  106: 'the entry is already being executed',
  107: 'the entry is already being executed, and the change comes too late',
  108: 'nothing fits the filter',
  109: 'not all that fits the filter could be told',
  110: 'the wanted time cannot be kept',
  111: 'the subscription is denied',
  112: 'the queue is closed or blocked',
  113: 'the entry has that status already',
  114: 'the entry has ended and cannot be changed',
  115: 'the entry is not running',
  116: 'there is an entry for the same JobID, JobPartID and part',
  120: 'what the URL names cannot be read',
  121: 'the DeviceID is not known',
  130: 'gangs are not served',
  131: 'the GangName is not known',
  200: 'a resource or its parameters are wrong',
  201: 'a resource or parameters of one are missing',
  202: 'the PipeID is not known',
  203: 'a link leads nowhere',
  204: 'the new node could not be made',
  300: 'authentication is denied',
  301: 'secure channels are not served',
  302: 'a secure channel is needed',
  303: 'the certificate has expired',
  304: 'authentication has not been decided yet',
  305: 'the secure channel exists already',
  306: 'no request for authentication is open',
  307: 'the certificate is not valid',
} as const;

export type ReturnCode = keyof typeof returnCodes;

/** What a ReturnCode says; of a code that is not listed, what its range says. */
export function meaningOf(code: number): string {
  if (code in returnCodes) return returnCodes[code as ReturnCode];
  if (code > 0 && code < 100) return 'fault of the message';
  if (code >= 100 && code < 200) return 'fault at the device or its controller';
  if (code >= 200 && code < 300) return 'fault of the job or a pipe';
  return code >= 300 && code < 400 ? 'fault of the authentication' : 'unknown code';
}

/** Whether a code is in one of the standard's ranges; later versions than the list is of have added some. */
export function isReturnCode(code: number): boolean {
  return Number.isInteger(code) && code >= 0 && code < 400;
}
