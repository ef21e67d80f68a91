/** Messages of the kinds that are exchanged most, as the tests write them and read them back. Not used by the product. */
import { entryFilter, type NewMessage } from '#libs/jdf';

const at = Date.UTC(2024, 6, 25, 10, 0, 0);

const queue = { deviceId: 'press', status: 'Waiting', queueSize: 1, maxQueueSize: 20 } as const;

export const everyMessage: readonly NewMessage[] = [
  {
    kind: 'CommandSubmitQueueEntry',
    id: 'm1',
    body: { url: 'cid:ticket@example.org', hold: true, priority: 70, returnJmf: 'http://127.0.0.1:7420/jmf' },
  },
  {
    kind: 'ResponseSubmitQueueEntry',
    id: 'm2',
    refId: 'm1',
    returnCode: 112,
    notification: { class: 'Error', timeStamp: at, comment: 'The queue is closed.' },
    body: {
      entry: { queueEntryId: 'q1', status: 'Waiting', submissionTime: at, priority: 50 },
      queue: {
        deviceId: 'press',
        status: 'Closed',
        queueSize: 3,
        entries: [{ queueEntryId: 'q0', status: 'Running' }],
      },
    },
  },
  {
    kind: 'CommandReturnQueueEntry',
    id: 'm3',
    body: { queueEntryId: 'q1', url: 'cid:t', completed: ['n1', 'n2'] },
  },
  { kind: 'ResponseReturnQueueEntry', id: 'm4', refId: 'm3', body: {} },
  {
    kind: 'QueryStatus',
    id: 'm5',
    subscription: { url: 'http://127.0.0.1:7420/jmf', repeatTimeS: 30, channelMode: 'Reliable' },
    body: { deviceDetails: 'Brief', jobDetails: 'Full', queueInfo: true },
  },
  {
    kind: 'SignalStatus',
    id: 'm6',
    refId: 'm5',
    channelMode: 'Reliable',
    body: {
      devices: [
        {
          deviceStatus: 'Running',
          deviceId: 'press',
          counterUnit: 'sheets',
          productionCounter: 1234,
          speedPerHour: 9000,
          jobPhases: [
            {
              status: 'InProgress',
              statusDetails: 'Good',
              jobId: 'J1',
              jobPartId: 'P2',
              queueEntryId: 'q1',
              startTime: at - 60_000,
              phaseStartTime: at,
              amount: 120,
              waste: 30,
              phaseAmount: 120,
              phaseWaste: 0,
              totalAmount: 2500,
              percentCompleted: 4.8,
              restTimeS: 950,
              speedPerHour: 9000,
              parts: [{ SheetName: 'S1', Side: 'Front' }],
            },
          ],
          modules: [{ deviceStatus: 'Running', moduleIndex: '0 ~ 3', moduleType: 'PrintModule' }],
        },
      ],
    },
  },
  {
    kind: 'SignalResource',
    id: 'm7',
    body: {
      query: { jobId: 'J1', jobPartId: 'P2' },
      resources: [
        {
          resourceName: 'Media',
          actualAmount: 280,
          unit: 'sheets',
          partAmounts: [
            { actualAmount: 250, parts: [{ SheetName: 'S1', Condition: 'Good' }] },
            { actualAmount: 30, parts: [{ SheetName: 'S1', Condition: 'Waste' }] },
          ],
        },
      ],
    },
  },
  {
    kind: 'QueryResource',
    id: 'm8',
    body: { classes: ['Consumable'], exact: true, resourceNames: ['Media', 'Ink'] },
  },
  {
    kind: 'SignalNotification',
    id: 'm9',
    body: {
      notification: {
        class: 'Warning',
        timeStamp: at,
        jobId: 'J1',
        comment: 'Feeder stopped: double sheet.',
      },
    },
  },
  { kind: 'QueryQueueStatus', id: 'm10', body: { statusList: ['Waiting', 'Running'], maxEntries: 5 } },
  { kind: 'QueryKnownDevices', id: 'm11', body: { deviceDetails: 'Brief' } },
  {
    kind: 'ResponseKnownDevices',
    id: 'm12',
    refId: 'm11',
    body: { devices: [{ deviceStatus: 'Idle', device: { deviceId: 'press', descriptiveName: 'Press' } }] },
  },
  { kind: 'QueryKnownMessages', id: 'm13', body: { persistent: true } },
  {
    kind: 'ResponseKnownMessages',
    id: 'm14',
    refId: 'm13',
    body: {
      services: [{ type: 'Status', query: true, signal: true, persistent: true, urlSchemes: ['http'] }],
    },
  },
  { kind: 'QuerySubmissionMethods', id: 'm15', body: {} },
  {
    kind: 'ResponseSubmissionMethods',
    id: 'm16',
    refId: 'm15',
    body: { methods: { urlSchemes: ['http', 'cid'], packaging: ['MIME', 'None'] } },
  },
  { kind: 'CommandAbortQueueEntry', id: 'm17', body: { filter: entryFilter('q1'), endStatus: 'Aborted' } },
  { kind: 'CommandHoldQueueEntry', id: 'm18', body: { filter: entryFilter('q1') } },
  { kind: 'CommandResumeQueueEntry', id: 'm19', body: { filter: entryFilter('q1') } },
  { kind: 'CommandSuspendQueueEntry', id: 'm20', body: { filter: entryFilter('q1') } },
  { kind: 'CommandRemoveQueueEntry', id: 'm21', body: { filter: { statusList: ['Completed'] } } },
  { kind: 'ResponseAbortQueueEntry', id: 'm25', refId: 'm17', body: { queue } },
  { kind: 'ResponseHoldQueueEntry', id: 'm26', refId: 'm18', body: { queue } },
  { kind: 'ResponseResumeQueueEntry', id: 'm27', refId: 'm19', body: { queue } },
  { kind: 'ResponseSuspendQueueEntry', id: 'm28', refId: 'm20', returnCode: 115, body: {} },
  { kind: 'ResponseRemoveQueueEntry', id: 'm29', refId: 'm21', body: { queue } },
  { kind: 'ResponseSetQueueEntryPriority', id: 'm30', refId: 'm22', body: { queue } },
  { kind: 'ResponseQueueStatus', id: 'm31', refId: 'm10', subscribed: true, body: { queue } },
  { kind: 'SignalQueueStatus', id: 'm32', refId: 'm10', body: { queue, filter: { jobId: 'J1' } } },
  {
    kind: 'ResponseStatus',
    id: 'm33',
    refId: 'm5',
    body: { devices: [{ deviceStatus: 'Idle', idleStartTime: at, hourCounterS: 7200 }], queue },
  },
  {
    kind: 'ResponseResource',
    id: 'm34',
    refId: 'm8',
    body: { resources: [{ availableAmount: 0, level: 'Empty', location: 'Feeder', unit: 'sheets' }] },
  },
  {
    kind: 'CommandResource',
    id: 'm35',
    body: { jobId: 'J1', resourceName: 'Component', productionAmount: 7500, updateMethod: 'Incremental' },
  },
  {
    kind: 'QueryNotification',
    id: 'm36',
    body: { classes: ['Warning', 'Error'], signalTypes: ['Notification'] },
  },
  { kind: 'CommandSetQueueEntryPriority', id: 'm22', body: { priority: 90, queueEntryId: 'q1' } },
  {
    kind: 'CommandStopPersistentChannel',
    id: 'm23',
    body: { url: 'http://127.0.0.1:7420/jmf', channelId: 'm5' },
  },
  { kind: 'ResponseStopPersistentChannel', id: 'm24', refId: 'm23', body: {} },
  { kind: 'QueryGangStatus', id: 'm37', body: { gangNames: ['g1'] } },
  { kind: 'SignalGangStatus', id: 'm38', body: { gangs: [{ gangName: 'g1', amount: 3 }] } },
  { kind: 'ResponseGangStatus', id: 'm39', refId: 'm37', body: { gangs: [{ gangName: 'g1' }] } },
  {
    kind: 'QueryNotification',
    id: 'm40',
    subscription: { url: 'http://127.0.0.1:7420/jmf' },
    employees: [{ id: 'e7', class: 'Implementation', status: 'Available', personalId: 'p7' }],
    body: {},
  },
  { kind: 'QueryKnownControllers', id: 'm41', body: { filter: { urlTypes: ['JMF'] } } },
];
