/**
 * Every code that a refusal or a fault can carry: one row says what it means, how HTTP and JMF answer, and what to do.
 * JMF return codes are the standard's own (JDF 1.4 specification, appendix D). docs/errors.md is generated from this table.
 */
export type LogLevel = 'debug' | 'info' | 'warn' | 'error';

export interface CodeRow {
  readonly title: string;
  /** HTTP status of an answer whose first error is this one. */
  readonly http: number;
  /** ReturnCode of a JMF Response. */
  readonly jmf: number;
  readonly level: LogLevel;
  /** What the reader can do about it. */
  readonly remedy: string;
}

const row = (title: string, http: number, jmf: number, level: LogLevel, remedy: string): CodeRow => ({
  title,
  http,
  jmf,
  level,
  remedy,
});

export const codes = {
  // Reading bytes
  NOT_TEXT: row(
    'The bytes are not text in the encoding they claim',
    422,
    3,
    'info',
    'Save the file as UTF-8 and send it again.',
  ),
  XML_NOT_WELL_FORMED: row(
    'Not well-formed XML',
    422,
    3,
    'info',
    'Mend the markup at the line named; any XML editor shows it.',
  ),
  XML_DOCTYPE: row(
    'A document type declaration is not accepted',
    422,
    3,
    'info',
    'Remove the <!DOCTYPE …> and its entities; tickets need none.',
  ),
  XML_INCLUDE: row(
    'Inclusion of other files is not accepted',
    422,
    3,
    'info',
    'Write what is to be included into the document, and remove the XInclude namespace.',
  ),
  XML_LIMIT: row(
    'The document is larger or deeper than is accepted',
    422,
    3,
    'warn',
    'Split the document, or raise the limit if it is a real ticket.',
  ),
  XML_NAMESPACE: row(
    'The root element is not in a namespace of the standard',
    422,
    4,
    'info',
    'Use xmlns="http://www.CIP4.org/JDFSchema_1_1" (JDF, JMF) or …JDFSchema_2_0 (XJDF, XJMF).',
  ),
  JSON_NOT_WELL_FORMED: row('Not well-formed JSON', 422, 3, 'info', 'Mend the text at the place named.'),
  KIND_UNKNOWN: row(
    'Neither a ticket, a message, an order nor a package',
    422,
    4,
    'info',
    'Send JDF, XJDF, a JSON order, or a package that starts with one.',
  ),
  PACKAGE_BROKEN: row(
    'The package cannot be unpacked',
    422,
    3,
    'info',
    'Pack it again; the message names the part.',
  ),
  PACKAGE_LIMIT: row(
    'The package is larger than is accepted',
    422,
    3,
    'warn',
    'Send fewer or smaller parts.',
  ),
  PACKAGE_PART_MISSING: row(
    'An address in the package has no part there',
    422,
    120,
    'info',
    'Add the part or correct the address.',
  ),
  PACKAGE_PART_UNUSED: row(
    'Nothing in the package refers to a part',
    422,
    3,
    'info',
    'Leave the part out, or refer to it by cid: (in a ZIP by its path).',
  ),
  PACKAGE_FORM: row(
    'A part is not quite in the form of the standard',
    422,
    3,
    'info',
    'Nothing is lost; the message says what the sender should mend.',
  ),
  CHECK_PARTIAL: row(
    'Only part of the document was checked',
    200,
    0,
    'info',
    'Check it against the standard\'s schema too; README, "What it does not do yet", says what is left out.',
  ),
  FILE_UNREADABLE: row('The file could not be read', 422, 3, 'info', 'Check its name and who may read it.'),
  // The ticket
  JDF_VALUE: row(
    'An attribute has a value that the standard does not allow',
    422,
    4,
    'info',
    'Correct the value; the message names what is possible.',
  ),
  JDF_MISSING: row('Something required is missing', 422, 4, 'info', 'Add what the message names.'),
  JDF_DANGLING: row(
    'A reference leads nowhere',
    422,
    203,
    'info',
    'Add the resource with that ID, or correct the reference.',
  ),
  JDF_ID_DOUBLE: row('An ID occurs twice', 422, 4, 'info', 'Give one of the elements another ID.'),
  JDF_LINK: row(
    'A resource link does not fit its resource or process',
    422,
    200,
    'info',
    'Correct the link; the message says what it should be.',
  ),
  JDF_PARTITION: row(
    'A partition is not built as the standard asks',
    422,
    200,
    'info',
    'One key a level, in the order of PartIDKeys.',
  ),
  JDF_STRUCTURE: row(
    'A node is not built as the standard asks',
    422,
    102,
    'info',
    'Correct the node; the message says how.',
  ),
  JDF_TEMPLATE: row(
    'The ticket is a template',
    422,
    101,
    'info',
    'Send the job itself: Template="true" must not be executed.',
  ),
  JDF_NO_PRODUCT: row(
    'There is nothing in the ticket that can be planned',
    422,
    102,
    'info',
    'Send a product node with its intent, or executable process nodes.',
  ),
  JDF_AMOUNT: row(
    'The ticket does not say how many',
    422,
    201,
    'info',
    'Give the product Component an Amount.',
  ),
  DEFAULT_TAKEN: row(
    "The ticket leaves something open; the plant's default was taken",
    200,
    0,
    'info',
    'Name it in the ticket if the default is not what is wanted.',
  ),
  // The order and the plan
  ORDER_FIELD: row(
    'A field of the order is missing, unknown or impossible',
    422,
    6,
    'info',
    'Correct the field; the message says what is possible.',
  ),
  PLANT_DEFINITION: row(
    'The plant definition has a fault',
    422,
    6,
    'error',
    'Correct the plant file at the place named.',
  ),
  PLAN_IMPOSSIBLE: row(
    'The job cannot be made on this plant as it is ordered',
    422,
    200,
    'info',
    'The message names what stands in the way and what would do.',
  ),
  PLAN_NOT_YET: row(
    'This version cannot plan this kind of work yet',
    422,
    101,
    'info',
    'See README, "What it does not do yet".',
  ),
  PLAN_CAUTION: row(
    'The plan works, but somebody should look',
    200,
    0,
    'info',
    'Read the message before releasing the job.',
  ),
  PLAN_TOO_LONG: row(
    'The document costs more time than one may take',
    422,
    3,
    'warn',
    'Make the job simpler, or split it.',
  ),
  PLAN_MISSING: row('There is no plan for this ticket', 409, 201, 'info', 'See the problems listed with it.'),
  // Requests
  NOT_FOUND: row('There is no such thing', 404, 103, 'info', 'Check the identifier; list what there is.'),
  JOB_UNKNOWN: row(
    'No ticket with this JobID',
    404,
    103,
    'info',
    'Check JobID; the device may hold work of another server.',
  ),
  STEP_UNKNOWN: row('No step with this JobPartID', 404, 104, 'info', 'Check JobPartID.'),
  DEVICE_UNKNOWN: row(
    'No device with this DeviceID',
    404,
    121,
    'info',
    'Register the device, or correct DeviceID.',
  ),
  ENTRY_UNKNOWN: row('No such entry in the queue', 404, 105, 'info', 'List the queue for its entries.'),
  STATE_FORBIDS: row(
    'The present status forbids it',
    409,
    107,
    'info',
    'The message names the status and what is possible in it.',
  ),
  ENTRY_RUNNING: row(
    'The queue entry is already executing',
    409,
    106,
    'info',
    'Abort it, or wait for its end.',
  ),
  ENTRY_SAME_STATE: row('The queue entry already has that status', 409, 113, 'info', 'Nothing to do.'),
  ENTRY_FINAL: row(
    'The queue entry has ended',
    409,
    114,
    'info',
    'Submit the job again if it is to be made again.',
  ),
  REVISION_STALE: row(
    'Somebody changed it meanwhile',
    412,
    6,
    'info',
    'Read it again and repeat the change.',
  ),
  KEY_REUSED: row(
    'The Idempotency-Key was used with another body',
    409,
    6,
    'info',
    'Use a new key for a new request.',
  ),
  REQUEST_INVALID: row(
    'The request is not as described',
    400,
    6,
    'info',
    'See the API description under /api/openapi.json.',
  ),
  BODY_TOO_LARGE: row(
    'The body is larger than is accepted',
    413,
    3,
    'warn',
    'Send less, or raise SIDELAY_BODY_LIMIT_MB.',
  ),
  MEDIA_TYPE: row(
    'The media type is not accepted here',
    415,
    3,
    'info',
    'The message names what is accepted.',
  ),
  UNAUTHENTICATED: row(
    'A token is needed',
    401,
    300,
    'info',
    'Send Authorization: Bearer …; `sidelay token create` makes one.',
  ),
  FORBIDDEN: row(
    'The token does not allow this',
    403,
    300,
    'warn',
    'Use a token with the scope that the message names.',
  ),
  TOO_MANY: row('Too many requests', 429, 10, 'warn', 'Wait as Retry-After says.'),
  // Messages
  JMF_TYPE: row('The message type is not known', 200, 5, 'info', 'KnownMessages lists what is.'),
  JMF_CONTENT: row(
    'The message lacks something or is wrong',
    200,
    4,
    'info',
    'Correct the message; the path names the place.',
  ),
  JMF_PARAMETER: row('A parameter of the message is wrong', 200, 6, 'info', 'Correct the parameter.'),
  JMF_PARAMETER_MISSING: row('A parameter of the message is missing', 200, 7, 'info', 'Add the parameter.'),
  URL_REFUSED: row(
    'The address must not be reached from here',
    422,
    120,
    'warn',
    'Allow it with SIDELAY_ALLOWED_HOSTS or SIDELAY_FILE_ROOTS, or send the document itself.',
  ),
  URL_UNREADABLE: row(
    'The address could not be read',
    422,
    120,
    'info',
    'Check that it can be reached from the server.',
  ),
  // Devices
  DEVICE_SILENT: row(
    'The device does not answer',
    503,
    8,
    'warn',
    'Is it switched on, and its address right? The step waits and is tried again.',
  ),
  DEVICE_REFUSED: row(
    'The device refused the job',
    409,
    101,
    'warn',
    'Its reason stands beside it; mend it and resume the step.',
  ),
  // Settings and the installation
  SETTING: row('A setting is wrong', 500, 2, 'error', 'Correct the environment variable named.'),
  DATABASE: row(
    'The database does not answer',
    503,
    2,
    'error',
    'Is it running, and SIDELAY_DATABASE_URL right? Nothing acknowledged is lost.',
  ),
  BROKEN: row(
    'Something broke that should not',
    500,
    2,
    'error',
    'Look in the log at this time and report it.',
  ),
} as const satisfies Record<string, CodeRow>;

export type Code = keyof typeof codes;
