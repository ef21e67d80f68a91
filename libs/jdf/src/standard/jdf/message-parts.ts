/** Facts of the open standard: what messages ask and tell. Notation: ../notation.ts. */
export const messageParts = `
NotificationDef : ResponseTypeObj
  NotificationClass[]: Classes
  NMTOKEN: SignalType=Notification{1.2-} Type
ControllerFilter : QueryTypeObj
  string: ControllerID
  URLType[]: URLTypes
JDFController : ResponseTypeObj
  string: ControllerID{1.2-}
  URL: URL!
  URLType: URLType{1.4-}
DeviceFilter : QueryTypeObj
  DeviceDetails: DeviceDetails=None
  LanguagesOrAll: Localization{1.2-}
  > Device*
DeviceList : ResponseTypeObj
  > DeviceInfo*:DeviceInfo.element
JDFService : ResponseTypeObj{-1.1}
  CombinedMethod: CombinedMethod
  NMTOKEN: Type!
  TypeOrder: TypeOrder
  NMTOKENS: Types
KnownMsgQuParams : QueryTypeObj
  ChannelMode[]: ChannelMode{1.4-}
  boolean: Exact=false ListCommands=true ListQueries=true ListRegistrations=true{1.3-} ListSignals=true
    Persistent=false
MessageService : ResponseTypeObj
  boolean: Acknowledge=false Command=false Persistent=false Query=false Registration=false{1.3-}
    Signal=false
  ChannelMode[]: ChannelMode{1.4-}
  NMTOKENS: GenericAttributes{1.3-} URLSchemes
  JMFRole: JMFRole{1.3-}
  NMTOKEN: Type!
  > ActionPool?{1.3-} DevCapPool?{1.3-} DevCaps*:DeviceCap/DevCaps ModulePool?{1.3-} any:AbstractStates
    TestPool?{1.3-}
SubscriptionFilter : QueryTypeObj
  NMTOKEN: ChannelID
  string: DeviceID JobID{-1.4} JobPartID{-1.4} QueueEntryID{-1.4}
  NMTOKENS: Families MessageTypes
  URL: URL
  > Part*{-1.4}
SubscriptionInfo : ResponseTypeObj
  NMTOKEN: ChannelID Family MessageType
  string: SenderID JobID{-1.4} JobPartID{-1.4} QueueEntryID{-1.4}
  languages: Languages{1.8-}
  > Part*{-1.4} Subscription:SubscriptionElement
MsgFilter : QueryTypeObj
  dateTime: After Before
  Integer: Count
  shortString: DeviceID JobID{1.2-} JobPartID{1.2-} QueueEntryID{1.2-}
  MessageFamily: Family
  NMTOKEN: MessageRefID MessageID MessageType
  URL: ReceiverURL
  > Part*{1.2-}
AuthenticationResp : ResponseTypeObj{1.4-}
  URL: SecureURL
  > Certificate*:TextElement
AuthenticationQuParams : QueryTypeObj{1.4-}
  AuthenticationType: AuthenticationType
AuthenticationCmdParams : CommandTypeObj
  AuthenticationType: AuthenticationType
  AuthenticationReason: Reason
  string: ReasonDetails
  URL: SecureURL
  > Part* Certificate*:TextElement
StopPersChParams : CommandTypeObj
  NMTOKEN: ChannelID MessageType
  shortString: DeviceID JobID JobPartID QueueEntryID{1.2-}
  URL: URL!
  > Part*{1.2-}
FlushResourceParams : CommandOrQueryTypeObj{1.2-}
  FlushPolicy: FlushPolicy=QueueEntry
  > QueueFilter?
FlushedResources : ResponseTypeObj{1.2-}
ModifyNodeCmdParams : CommandOrQueryTypeObj{1.3-}
  Activation: Activation
  string: JobID! JobPartID!
  > NewComment*:NewComment
NewJDFQuParams : QueryTypeObj{1.2-}
  shortString: JobID JobPartID QueueEntryID
NewJDFCmdParams : CommandTypeObj{1.2-}
  string: JDFDetails=Brief
  > IDInfo
IDInfo : ResponseTypeObj{1.2-}
  NMTOKEN: Category Type
  URL: JDFURL{1.5-}
  shortString: JobID JobPartID
  string: ParentJobID ParentJobPartID ProjectID{1.5-}
  NMTOKENS: Types
  > Device? JDF?
NodeInfoQuParams : QueryTypeObj{1.2-1.2}
  shortString: JobID! JobPartID QueueEntryID
  > Part*
NodeInfoCmdParams : CommandTypeObj{1.2-1.2}
  shortString: JobID! JobPartID QueueEntryID
  UpdateMethod: UpdateMethod=Complete
  > Part* NodeInfo?:NodeInfo.root
NodeInfoResp : ResponseTypeObj{1.2-1.2}
  shortString: JobID! JobPartID QueueEntryID
  > Part* NodeInfo?:NodeInfo.root
EmployeeDef : QueryTypeObj
  shortString: PersonalID
Occupation : ResponseTypeObj
  double: Busy=100
  shortString: JobID JobPartID QueueEntryID{1.2-}
  > Device* Employee Part*{1.2-}
ResourceQuParams : QueryTypeObj
  ResourceClass[]: Classes
  ContextQueriedResources: Context{1.5-}
  boolean: Exact=false
  shortString: JobID JobPartID ProductID{1.2-} QueueEntryID{1.2-}
  string: Location LotID{1.4-1.5} ProcessUsage
  LotDetails: LotDetails=Brief{1.4-1.5}
  ResourceDetails: ResourceDetails=Full{1.4-}
  NMTOKEN: ResourceID{1.3-1.5}
  NMTOKENS: ResourceName
  ValueUsage: Scope{1.4-}
  Usage: Usage
  > Part*{1.2-}
ResourceInfo : ResponseTypeObj
  double: ActualAmount{1.2-} Amount AvailableAmount Speed{1.6-} TotalAmount{1.6-}
  CommandResult: CommandResult{1.4-}
  string: DeviceID{1.5-} Location ModuleID{1.3-} Unit
  ResourceInfoLevel: Level
  boolean: LotControlled{1.4-}
  IntegerRangeList: ModuleIndex{1.3-}
  Orientation: Orientation{1.5-}
  NMTOKEN: ProcessUsage ResourceID{1.3-} ResourceName
  shortString: ProductID{1.2-}
  ValueUsage: Scope{1.5-}
  ResourceStatus: Status{1.2-}
  matrix: Transformation{1.6-}
  Usage: Usage{1.3-}
  > AmountPool?:ResourceLink/AmountPool{1.3-} CostCenter? Event*{1.7-} Lot*{1.4-} MISDetails?{1.2-}
    Part*{1.4-} any:Resource
ResourceCmdParams : CommandTypeObj
  Activation1: Activation=Active
  boolean: Exact=false
  shortString: JobID JobPartID ProductID{1.2-} QueueEntryID{1.2-}
  NMTOKEN: ProcessUsage ResourceName ResourceID{1.3-}
  double: ProductionAmount
  ResourceStatus: Status{1.2-}
  NMTOKENS: UpdateIDs{-1.2}
  UpdateMethod: UpdateMethod=Complete{1.3-}
  Usage: Usage{1.4-}
  > Part*{1.2-} MISDetails?{1.2-} any:Resource
ResourcePullParams : CommandTypeObj{1.2-}
  double: Amount
  boolean: Hold=false
  shortString: NextQueueEntryID PrevQueueEntryID JobID QueueEntryID ResourceID!
  Integer: Priority=1
  RepeatPolicy: RepeatPolicy
  URL: ReturnURL WatchURL
  > Part* Disposition? MISDetails?
ShutDownCmdParams : CommandTypeObj{1.2-}
  ShutDownType: ShutDownType=StandBy
  > FlushQueueParams?
StatusQuParams : QueryTypeObj
  StatusQuDeviceDetails: DeviceDetails=None
  boolean: EmployeeInfo=false QueueInfo{-1.5}
  StatusQuJobDetails: JobDetails=None
  shortString: JobID JobPartID QueueEntryID{1.2-}
  > Part*{1.2-}
DeviceInfo/ModuleStatus
  IntegerList: CombinedProcessIndex
  DeviceStatus: DeviceStatus!
  string: ModuleID
  IntegerRangeList: ModuleIndex
  NMTOKEN: ModuleType
  shortString: StatusDetails
  > Employee*
DeviceInfo : ResponseTypeObj
  string: CounterUnit DeviceID{1.3-}
  DeviceCondition: DeviceCondition{1.2-}
  DeviceOperationMode: DeviceOperationMode{1.2-}
  DeviceStatus: DeviceStatus!
  dateTime: EndTime{1.7-} IdleStartTime{1.4-} PowerOnTime
  duration: HourCounter
  double: ProductionCounter Speed TotalProductionCounter
  shortString: StatusDetails
  NMTOKENS: ToolIDs{1.7-}
  > Activity*:PhaseTimeAudit/Activity{1.5-} Device? Employee* Event*{1.7-} JobPhase* ModuleStatus*
DeviceInfo.element
  string: CounterUnit DeviceID
  DeviceCondition: DeviceCondition{1.2-}
  DeviceOperationMode: DeviceOperationMode{1.2-}
  DeviceStatus: DeviceStatus!
  dateTime: EndTime IdleStartTime PowerOnTime
  duration: HourCounter
  double: ProductionCounter Speed TotalProductionCounter
  shortString: StatusDetails
  NMTOKENS: ToolIDs
  > Activity*:PhaseTimeAudit/Activity{1.5-} Device? Employee* Event*{1.7-} JobPhase* ModuleStatus*
TrackFilter : QueryTypeObj
  shortString: JobID JobPartID ProjectID{1.2-} QueueEntryID{1.2-}
  NodeStatus[]: Status
  > Part*{1.2-}
TrackResult : ResponseTypeObj
  shortString: JobID JobPartID ProjectID{1.2-} QueueEntryID{1.2-}
  URL: URL!
  boolean: IsDevice!
  > Part*{1.2-}
UpdateJDFCmdParams : CommandOrQueryTypeObj
  string: ParentJobID! ParentJobPartID!
  > CreateLink*:CreateLink CreateResource*:CreateResource MoveResource*:MoveResource RemoveLink*:RemoveLink
    JDF*
WakeUpCmdParams : CommandTypeObj{1.2-}
PipeParams : CommandTypeObj
  shortString: JobID{1.2-} JobPartID{1.2-} PipeID! ProjectID{1.5-}
  NodeStatus: Status=InProgress
  ResourceStatus: UpdatedStatus
  > AmountPool?:ResourceLink/AmountPool{1.5-} any:Resource any:ResourceLink
JobPhase : ResponseTypeObj
  Activation: Activation
  double: Amount PercentCompleted PhaseAmount{1.2-} PhaseWaste{1.2-} Speed TotalAmount Waste
  DeadLine: DeadLine
  dateTime: EndTime{1.7-} PhaseStartTime{1.2-} StartTime
  shortString: JobID JobPartID QueueEntryID RelatedJobID{1.7-} RelatedJobPartID{1.7-} StatusDetails
    WorkStepID{1.7-}
  duration: RestTime
  NMTOKEN: SpawnID{1.5-}
  NodeStatus: Status!
  NMTOKENS: ToolIDs{1.7-}
  URL: URL{1.4-}
  > Activity*:PhaseTimeAudit/Activity{1.5-} CostCenter? GangSource*{1.6-} JDF?{-1.3} MISDetails?{1.2-}
    ModuleStatus*:DeviceInfo/ModuleStatus{1.3-} Part*
AbortQueueEntryParams : CommandTypeObj{1.5-}
  EndStatusOfQueue: EndStatus!
  > QueueFilter?
HoldQueueEntryParams : CommandTypeObj{1.5-}
  > QueueFilter?
RemoveQueueEntryParams : CommandTypeObj{1.5-}
  > QueueFilter?
RequestQueueEntryParams : CommandTypeObj{1.2-}
  Activation: Activation{1.4-}
  shortString: JobID JobPartID
  URL: QueueURL!
  SubmitPolicy: SubmitPolicy{1.3-}
  > Part* Queue?
ResubmissionParams : CommandTypeObj
  shortString: QueueEntryID!
  URL: URL!
ResumeQueueEntryParams : CommandTypeObj{1.5-}
  > QueueFilter*
QueueEntryDef : CommandTypeObj
  shortString: QueueEntryID!
ReturnQueueEntryParams : CommandTypeObj{1.2-}
  NMTOKENS: Aborted Completed
  Integer: Priority
  shortString: QueueEntryID!
  URL: URL!
QueueEntryPosParams : CommandTypeObj
  shortString: NextQueueEntryID QueueEntryID! PrevQueueEntryID
  Integer: Position
QueueEntryPriParams : CommandTypeObj
  Integer0To100: Priority!
  shortString: QueueEntryID{-1.4}
  > QueueFilter?{1.5-}
QueueEntry : ResponseTypeObj
  Activation: Activation{1.5-}
  shortString: DeviceID{1.2-} JobID JobPartID QueueEntryID! RelatedJobID{1.7-} RelatedJobPartID{1.7-}
    StatusDetails{1.5-}
  dateTime: EndTime{1.2-} StartTime SubmissionTime
  NMTOKEN: GangName{1.3-}
  GangPolicy: GangPolicy{1.3-}
  Integer0To100: Priority=1
  QueueEntryStatus: Status!
  > JobPhase*{1.2-} GangSource*{1.6-} Part*{1.2-}
QueueSubmissionParams : CommandTypeObj
  NMTOKEN: GangName{1.3-} refID{1.2-}
  GangPolicy: GangPolicy{1.3-}
  boolean: Hold=false
  shortString: NextQueueEntryID PrevQueueEntryID
  Integer0To100: Priority
  URL: ReturnJMF{1.2-} ReturnURL{1.2-} URL! WatchURL{-1.4}
  > Disposition?{1.2-}
SuspendQueueEntryParams : ResponseTypeObj{1.5-}
  > QueueFilter?
FlushQueueParams : CommandTypeObj{1.2-}
  > QueueFilter?
FlushQueueInfo : ResponseTypeObj{1.2-}
  > QueueFilter
QueueEntryDefList : QueryTypeObj{-1.1}
  > QueueEntryDef*
SubmissionMethods : ResponseTypeObj
  boolean: File{-1.1} HttpGet{-1.1} MIME{-1.1}
  URL: HotFolder{-1.3}
  Packaging[]: Packaging{1.2-}
  NMTOKENS: URLSchemes{1.2-}
Queue : ResponseTypeObj
  QueueStatus: Status!
  shortString: DeviceID!
  Integer: MaxQueueSize{1.6-} QueueSize{1.2-}
  > Device* QueueEntry*
QueueFilter : CommandOrQueryTypeObj{1.2-}
  Activation: Activation{1.5-}
  string: FirstEntry{1.6-} JobID{1.4-} JobPartID{1.4-} LastEntry{1.6-}
  NMTOKENS: GangNames{1.3-}
  Integer: MaxEntries MaxPriority{1.6-} MinPriority{1.6-}
  dateTime: OlderThan NewerThan
  PreviewUsage[]: PreviewUsages=Separation{1.4-}
  QueueEntryDetails: QueueEntryDetails=Brief
  QueueEntryStatus[]: StatusList
  UpdateGranularity: UpdateGranularity{1.4-}
  > QueueEntryDef* Device* GangSource*{1.6-} Part*{1.4-}
GangCmdFilter : CommandTypeObj
  NMTOKENS: GangNames
  ForceGangPolicy: Policy
GangQuFilter : QueryTypeObj no-generic
  NMTOKENS: GangNames
GangInfo : ResponseTypeObj no-generic
  double: Amount{1.6-}
  NMTOKEN: GangName!
Barcode : NotificationDetails
  string: Code!
FCNKey : NotificationDetails
  Integer: Key!
Milestone : NotificationDetails
  NMTOKEN: MilestoneType
  Integer: TypeAmount
SystemTimeSet : NotificationDetails
  dateTime: NewTime! OldTime
CounterReset : NotificationDetails
  string: CounterID
  Integer: LastCount
Error : NotificationDetails
  string: ErrorID!
  Resend: Resend
  Integer: ReturnCode
  > ErrorData*:ErrorData
Notification/Event : NotificationDetails
  string: EventID! EventValue
NewComment : nothing no-foreign-attributes
  CommentAction: Action!
  NMTOKEN: CommentID refID!
  > Part*
CreateLink : nothing no-foreign-attributes
  string: JobID! JobPartID!
  > any:ResourceLink
CreateResource : nothing no-foreign-attributes
  string: JobID! JobPartID!
  > any:Resource
MoveResource : nothing no-foreign-attributes
  string: JobID! JobPartID!
  NMTOKEN: ResourceID!
RemoveLink : nothing no-foreign-attributes
  string: JobID! JobPartID!
  > any:ResourceLink
ErrorData : nothing no-foreign-attributes
  ErrorDataType: ErrorType!
  URI: ErrorURL
  regExp: FixExpression
  XPath: Path
`;
