import type {
  Device,
  NewEvent,
  Phase,
  QueueEntry,
  Resource,
  Step,
  StockMove,
  StoredDocument,
  Ticket,
  TicketFile,
  Use,
} from '#libs/flow';

/** Rows of a theatre festival's print work, each with everything filled in that a test does not care about. */
export const NOON = Date.UTC(2026, 5, 1, 12);

export const aDocument = (id: string, text = '<JDF/>'): StoredDocument => ({
  id,
  sha256: `sha-of-${id}`,
  mediaType: 'application/vnd.cip4-jdf+xml',
  name: 'programme.jdf',
  bytes: Buffer.from(text),
  receivedAt: NOON,
});

export const aTicket = (id: string, more: Partial<Ticket> = {}): Ticket => ({
  id,
  jobId: `job-${id}`,
  jobPartId: null,
  name: 'Festival programme',
  customer: null,
  status: 'Waiting',
  statusDetails: null,
  activation: 'Active',
  quantity: 300,
  due: null,
  priority: 50,
  kind: 'jdf',
  documentId: `doc-${id}`,
  documentPart: null,
  intake: 'http',
  returnUrl: null,
  plan: null,
  problems: [],
  createdAt: NOON,
  updatedAt: NOON,
  revision: 0,
  ...more,
});

export const aStep = (ticketId: string, id: string, more: Partial<Step> = {}): Step => ({
  ticketId,
  id,
  ordinal: 1,
  types: ['ConventionalPrinting'],
  deviceId: 'press-1',
  status: 'Waiting',
  statusDetails: null,
  activation: 'Active',
  after: [],
  inputs: ['plates'],
  outputs: ['sheets'],
  setupS: 600,
  runS: 180.5,
  waitAfterS: 0,
  inAmount: 420,
  inUnit: 'sheets',
  outAmount: 300,
  unit: 'sheets',
  plannedStart: null,
  plannedEnd: null,
  start: null,
  end: null,
  good: 0,
  waste: 0,
  samples: 0,
  ...more,
});

export const aResource = (ticketId: string, id: string, more: Partial<Resource> = {}): Resource => ({
  ticketId,
  id,
  name: 'Component',
  status: 'Unavailable',
  unit: 'sheets',
  planned: 300,
  produced: 0,
  usableFrom: null,
  ...more,
});

export const anEntry = (
  ticketId: string,
  stepId: string,
  id: string,
  more: Partial<QueueEntry> = {},
): QueueEntry => ({
  id,
  ticketId,
  stepId,
  deviceId: 'press-1',
  status: 'Waiting',
  delivery: 'pending',
  deviceEntryId: null,
  attempt: 1,
  notBefore: null,
  lastError: null,
  returned: false,
  wanted: null,
  priority: 50,
  submitted: NOON,
  start: null,
  end: null,
  ...more,
});

export const aPhase = (
  ticketId: string,
  stepId: string,
  start: number,
  more: Partial<Phase> = {},
): Phase => ({
  ticketId,
  stepId,
  deviceId: 'press-1',
  start,
  end: null,
  status: 'InProgress',
  statusDetails: null,
  good: 0,
  waste: 0,
  source: 'machine',
  ...more,
});

export const aUse = (ticketId: string, stepId: string, item: string, more: Partial<Use> = {}): Use => ({
  ticketId,
  stepId,
  deviceId: 'press-1',
  item,
  unit: 'sheets',
  planned: 420,
  reserved: 0,
  actual: 0,
  waste: 0,
  source: 'assumed',
  ...more,
});

export const aFile = (ticket: Ticket, rows: Partial<Omit<TicketFile, 'ticket'>> = {}): TicketFile => ({
  ticket,
  steps: [],
  resources: [],
  entries: [],
  phases: [],
  uses: [],
  ...rows,
});

export const aDevice = (id: string, more: Partial<Device> = {}): Device => ({
  id,
  kind: 'press',
  name: 'Press one',
  driver: 'jmf',
  url: 'http://127.0.0.1:9000/jmf',
  status: 'Idle',
  statusDetails: null,
  job: null,
  ticketId: null,
  stepId: null,
  speed: null,
  since: NOON,
  source: 'machine',
  lastSeen: null,
  silentBecause: null,
  ...more,
});

export const aMove = (id: string, item: string, more: Partial<StockMove> = {}): StockMove => ({
  id,
  time: NOON,
  item,
  lot: '',
  unit: 'sheets',
  amount: 1,
  from: 'supplier',
  to: 'store',
  reason: 'delivered',
  ticketId: null,
  stepId: null,
  ...more,
});

export const anEvent = (ticketId: string | null, more: Partial<NewEvent> = {}): NewEvent => ({
  type: 'ticket.accepted',
  time: NOON,
  ticketId,
  stepId: null,
  deviceId: null,
  data: {},
  ...more,
});
