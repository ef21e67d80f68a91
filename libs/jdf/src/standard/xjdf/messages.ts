/** Facts of the open standard, second generation: messages and audits. Notation: ../notation.ts. */
export const messages = `
Audit abstract
  > Header any*
Command : Message abstract
Header
  string: AgentName AgentVersion Author DescriptiveName
  NMTOKEN: DeviceID! PersonalID refID
  NMTOKENS: ICSVersions
  ID: ID
  dateTime: Time!
Message abstract
  > Header any*
Query : Message abstract
  > Subscription?
Response : Message abstract
  int: ReturnCode
  > Notification?
Signal : Message abstract
  EnumChannelMode: ChannelMode
XJMF
  Version: Version
  > Header (any:Message|any)+
AuditCreated : Audit
AuditNotification : Audit
  > Notification
AuditProcessRun : Audit
  > ProcessRun
AuditResource : Audit
  > ResourceInfo
AuditStatus : Audit
  > DeviceInfo
CommandForceGang : Command
  > GangCmdFilter
CommandModifyQueueEntry : Command
  > ModifyQueueEntryParams
CommandPipeControl : Command
  > PipeParams
CommandRequestQueueEntry : Command
  > RequestQueueEntryParams?
CommandResource : Command
  > ResourceCmdParams
CommandResubmitQueueEntry : Command
  > ResubmissionParams
CommandReturnQueueEntry : Command
  > ReturnQueueEntryParams
CommandShutDown : Command
  > ShutDownCmdParams
CommandStopPersistentChannel : Command
  > StopPersChParams
CommandSubmitQueueEntry : Command
  > QueueSubmissionParams
CommandWakeUp : Command
QueryGangStatus : Query
  > GangQuFilter?
QueryKnownDevices : Query
  languages: Languages
  > DeviceFilter?
QueryKnownMessages : Query
QueryKnownSubscriptions : Query
  > SubscriptionFilter?
QueryNotification : Query
  languages: Languages
  > NotificationFilter?
QueryQueueStatus : Query
  > QueueStatusParams?
QueryResource : Query
  languages: Languages
  > ResourceQuParams
QueryStatus : Query
  languages: Languages
  > StatusQuParams?
ResponseForceGang : Response
ResponseGangStatus : Response
  > GangInfo*
ResponseKnownDevices : Response
  > Device*
ResponseKnownMessages : Response
  > MessageService*
ResponseKnownSubscriptions : Response
  > SubscriptionInfo*
ResponseModifyQueueEntry : Response
  > QueueEntry*
ResponseNotification : Response
ResponsePipeControl : Response
ResponseQueueStatus : Response
  > Queue?
ResponseRequestQueueEntry : Response
ResponseResource : Response
  > ResourceInfo*
ResponseResubmitQueueEntry : Response
ResponseReturnQueueEntry : Response
ResponseShutDown : Response
ResponseStatus : Response
  > DeviceInfo?
ResponseStopPersistentChannel : Response
  > SubscriptionInfo*
ResponseSubmitQueueEntry : Response
  > QueueEntry?
ResponseWakeUp : Response
SignalGangStatus : Signal
  > GangInfo*
SignalKnownDevices : Signal
  > Device*
SignalKnownSubscriptions : Signal
  > SubscriptionInfo*
SignalNotification : Signal
  > Notification
SignalQueueStatus : Signal
  > Queue
SignalResource : Signal
  > ResourceInfo*
SignalStatus : Signal
  > DeviceInfo
`;
