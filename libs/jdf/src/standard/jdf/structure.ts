/** Facts of the open standard: nodes, pools, links, audits, spans and the envelope of messages. Notation: ../notation.ts. */
export const structure = `
Product : ProcessNode
  > AncestorPool* AuditPool* CustomerInfo*:CustomerInfo.old NodeInfo*:NodeInfo.old ResourcePool* StatusPool*
    ResourceLinkPool*:ProductResLinkPool JDF*
ProcessGroup : ProcessNode
  > AncestorPool* AuditPool* CustomerInfo*:CustomerInfo.old NodeInfo*:NodeInfo.old ResourcePool* StatusPool*
    ResourceLinkPool*:GeneralProcessResLinkPool JDF*
Combined : ProcessNode
  > AncestorPool* AuditPool* CustomerInfo*:CustomerInfo.old NodeInfo*:NodeInfo.old ResourcePool* StatusPool*
    ResourceLinkPool*:GeneralProcessResLinkPool JDF*
GeneralProcessResLinkPool : ResourceLinkPool
  > any:ResourceLink
ProductResLinkPool : ResourceLinkPool
  > ComponentLink* ArtDeliveryIntentLink* BindingIntentLink* ColorIntentLink* DeliveryIntentLink*
    EmbossingIntentLink* FoldingIntentLink* HoleMakingIntentLink* InsertingIntentLink* LaminatingIntentLink*
    LayoutIntentLink* MediaIntentLink* NumberingIntentLink* PackingIntentLink* ProductionIntentLink*
    ProofingIntentLink* ScreeningIntentLink* ShapeCuttingIntentLink* SizeIntentLink* VariableIntentLink*
    ApprovalSuccessLink* ColorPoolLink* DeviceLink* EmployeeLink* PreviewLink* PreflightReportLink*
    CustomerInfoLink* NodeInfoLink*
Comment : nothing text
  string: AgentName{1.3-} AgentVersion{1.3-} Author{1.3-}
  NMTOKEN: Attribute Name=Description PersonalID{1.6-}
  rectangle: Box
  ID: ID{1.3-}
  language: Language
  PDFPath: Path
  dateTime: TimeStamp{1.3-}
TextElement : nothing text no-foreign-attributes
AbstractSpan
  eIntentPriority_: Priority{-1.1}
DurationSpan : AbstractSpan
  SpanDataType: DataType!==DurationSpan
  duration: Actual Preferred
  DurationRange: OfferRange Range
EnumerationSpan : AbstractSpan
  SpanDataType: DataType!==EnumerationSpan
  NMTOKEN: Actual Preferred
  NMTOKENS: OfferRange Range
IntegerSpan : AbstractSpan
  SpanDataType: DataType!==IntegerSpan
  Integer: Actual Preferred
  IntegerRangeList: OfferRange Range
NameSpan : AbstractSpan
  SpanDataType: DataType!==NameSpan
  NMTOKEN: Actual Preferred
  NMTOKENS: OfferRange Range
NumberSpan : AbstractSpan
  SpanDataType: DataType!==NumberSpan
  double: Actual Preferred
  DoubleRangeList: OfferRange Range
OptionSpan : AbstractSpan
  SpanDataType: DataType!==OptionSpan
  boolean: Actual Preferred
  NMTOKENS: OfferRange Range
  string: Detail
ShapeSpan : AbstractSpan
  SpanDataType: DataType!==ShapeSpan
  shape: Actual Preferred
  ShapeRangeList: OfferRange Range
StringSpan : AbstractSpan
  SpanDataType: DataType!==StringSpan
  string: Actual Preferred
  > Range*:TextElement OfferRange*:TextElement
TimeSpan : AbstractSpan
  SpanDataType: DataType!==TimeSpan
  dateTime: Actual Preferred
  DateTimeRange: OfferRange Range
XYPairSpan : AbstractSpan
  SpanDataType: DataType!==XYPairSpan
  XYPair: Actual Preferred
  XYPairRangeList: OfferRange Range
ResourceRef
  IDREF: rRef! rSubRef{-1.1}
  > Part?
AuditElement no-generic
  string: AgentName{1.2-} AgentVersion{1.2-} Author{-1.3} QueueEntryID{1.4-}
  ID: ID{1.2-}
  IDREF: refID{1.2-}
  shortString: SpawnID
  dateTime: TimeStamp!
ProcessRunAudit : AuditElement
  duration: Duration
  dateTime: End! ReturnTime{1.4-} Start! SubmissionTime{1.4-}
  EndStatusOfNode: EndStatus!
  > Employee* Part*
NotificationAudit : AuditElement
  NotificationClass: Class!
  IntegerList: CombinedProcessIndex{1.4-}
  string: JobID{1.3-} JobPartID{1.3-} ModuleID{1.4-}
  IntegerRangeList: ModuleIndex{1.4-}
  NMTOKEN: ModuleType{1.4-} Type
  > CostCenter? Employee* any:NotificationDetails Part*
NotificationDetails no-generic
PhaseTimeAudit : AuditElement
  dateTime: End Start!
  NodePhaseTimeStatus: Status!
  shortString: StatusDetails
  > Device*& Employee*& Activity*{1.5-} MISDetails?{1.2-} ModulePhase* Part* any:ResourceLink
PhaseTimeAudit/Activity no-generic
  shortString: ActivityID ActivityName PersonalID
  dateTime: EndTime StartTime
PhaseTimeAudit/ModulePhase
  IntegerList: CombinedProcessIndex{1.3-}
  shortString: DeviceID! ModuleID StatusDetails
  DeviceStatus: DeviceStatus
  dateTime: End{-1.3} Start{-1.3}
  IntegerRangeList: ModuleIndex
  NMTOKEN: ModuleType!
  > Employee*&{-1.4}
CreatedAudit : AuditElement
  IDREF: ref
  shortString: TemplateID{1.2-}
  string: TemplateVersion{1.2-}
  XPath: XPath{1.2-}
  > Employee*&
DeletedAudit : AuditElement
  XPath: XPath
  > Employee*
ModifiedAudit : AuditElement
  IDREF: jRef{-1.1}
  XPath: XPath{1.2-}
  > Employee*
SpawnedAudit : AuditElement
  boolean: Independent{-1.4}
  IDREF: jRef!
  NMTOKEN: jRefDestination{-1.4} NewSpawnID!
  IDREFS: rRefsROCopied rRefsRWCopied
  NodeStatus: Status
  URL: URL
  > Employee* Part*
MergedAudit : AuditElement
  boolean: Independent{-1.4}
  IDREF: jRef!
  NMTOKEN: jRefSource{-1.4} MergeID!
  IDREFS: rRefsOverwritten
  URL: URL
  > Employee* Part*
ResourceAudit : AuditElement
  boolean: ContentsModified
  NodePhaseTimeStatus: NodeStatus{1.3-}
  Reason: Reason=ProcessResult
  > Employee* MISDetails?{1.3-} any:ResourceLink Part*{1.3-}
Part
  NMTOKEN: BinderySignatureName{1.2-} BlockName Condition{1.2-} DeliveryUnit0{1.3-} DeliveryUnit1{1.3-}
    DeliveryUnit2{1.3-} DeliveryUnit3{1.3-} DeliveryUnit4{1.3-} DeliveryUnit5{1.3-} DeliveryUnit6{1.3-}
    DeliveryUnit7{1.3-} DeliveryUnit8{1.3-} DeliveryUnit9{1.3-} Edition{1.3-} EditionVersion{1.3-} Location
    LotID{1.6-} Option PlateLayout{1.3-} PreflightRule{1.2-} PrintCondition{1.6-} Product{1.7-}
    ProductPart{1.5-1.6} RibbonName Run RunSet{1.3-} SubRun{1.3-} WebName WebProduct{1.3-} WebSetup{1.3-}
  IntegerRangeList: BinderySignaturePaginationIndex BundleItemIndex{1.2-} CellIndex{1.2-} DocCopies DocIndex
    DocRunIndex DocSheetIndex LayerIDs PageNumber RunIndex RunPageRange{1.4-} SectionIndex{1.2-}
    SetCopies{1.5-} SetDocIndex{1.2-} SetRunIndex{1.2-} SetSheetIndex{1.2-} SetIndex SheetIndex
    Sorting{-1.3}
  NameRangeList: DocTags{1.3-} Metadata0{1.4-} Metadata1{1.4-} Metadata2{1.4-} Metadata3{1.4-}
    Metadata4{1.4-} Metadata5{1.4-} Metadata6{1.4-} Metadata7{1.4-} Metadata8{1.4-} Metadata9{1.4-}
    PageTags{1.3-} RunTags SetTags{1.3-}
  Integer: FountainNumber RunPage
  NMTOKENS: ItemNames{1.2-} PartVersion
  PreviewType: PreviewType
  string: Separation SheetName SignatureName StationName
  Side: Side
  XYPair: TileID
  boolean: SortAmount{-1.3}
Identical{1.3-} counted
  > Part{1.3-}
ResourceLink
  double: ActualAmount Amount MaxAmount{1.3-} MinAmount{1.3-} PipePause PipeResume RemotePipeEndPause{-1.4}
    RemotePipeEndResume{-1.4}
  IntegerList: CombinedProcessIndex
  NMTOKEN: CombinedProcessType{-1.1} PipeProtocol{-1.4}
  boolean: DraftOK{-1.2} Recommendation{-1.1}
  duration: Duration{1.4-} StartOffset
  ResourceStatus: MinLateStatus{1.3-} MinStatus{1.3-}
  Orientation: Orientation
  PartitionKeys[]: PipePartIDKeys{-1.5}
  URL: PipeURL
  string: ProcessUsage
  IDREF: rRef! rSubRef{-1.1}
  dateTime: Start
  Usage: Usage!
  matrix: Transformation
  > AmountPool? Lot*{1.3-1.5} Part*
ResourceLink/AmountPool
  > PartAmount*
PartAmount
  double: ActualAmount{1.2-} Amount MaxAmount{1.3-} MinAmount{1.3-} PipePause PipeResume
    RemotePipeEndPause{-1.4} RemotePipeEndResume{-1.4}
  boolean: DraftOK{-1.2}
  duration: Duration StartOffset
  ResourceStatus: MinLateStatus{1.3-} MinStatus{1.3-}
  Orientation: Orientation
  URL: PipeURL
  dateTime: Start
  matrix: Transformation
  > Lot*{-1.5} Part+
PhysicalResourceLink/AmountPool
  > PartAmount*:PhysicalPartAmount
PhysicalPartAmount
  boolean: DraftOK
  URL: PipeURL
  > Part*
Lot
  double: ActualAmount Amount
  string: LotID!
  Consumption: Consumption
JMF
  string: AgentName{1.4-} AgentVersion{1.4-}
  shortString: DeviceID SenderID!
  NMTOKENS: ICSVersions{1.3-}
  JDFJMFVersion: MaxVersion{1.3-} Version!
  URL: ResponseURL{1.2-1.4}
  dateTime: TimeStamp!
  > Employee*:Employee.root{1.4-} Command* Acknowledge* Response* Signal* Query* Registration*
Message no-generic
  string: AgentName AgentVersion SenderID
  NMTOKENS: ICSVersions
  ID: ID!
  dateTime: Time
  NMTOKEN: Type!
  JDFJMFVersion: Version
Command : Message
  string: AcknowledgeFormat{1.2-1.4} AcknowledgeTemplate{1.2-} TransactionID{1.4-}
  URL: AcknowledgeURL
  AcknowledgeType[]: AcknowledgeType=Completed
  NMTOKENS: RelatedCommands{1.4-}
  > any:CommandTypeObj any:CommandOrQueryTypeObj Employee*:Employee.root
Command.typed : Command restricted no-generic
Acknowledge : Message
  NMTOKEN: refID!
  AcknowledgeType[]: AcknowledgeType=Completed
  Integer: ReturnCode=0
  > any:ResponseTypeObj Notification?:NotificationAudit Employee*:Employee.root
Acknowledge.typed : Acknowledge restricted no-generic
Registration : Message
  > any:CommandTypeObj any:CommandOrQueryTypeObj Employee*:Employee.root Subscription:SubscriptionElement
Registration.typed : Registration restricted no-generic
Response : Message
  boolean: Acknowledged=false Subscribed
  languages: Languages
  NMTOKEN: refID
  Integer: ReturnCode=0
  > any:ResponseTypeObj Notification*:NotificationAudit Employee*:Employee.root
Response.typed : Response restricted no-generic
Signal : Message
  ChannelMode: ChannelMode=FireAndForget{1.4-}
  boolean: LastRepeat=false
  NMTOKEN: refID
  dateTime: ReplaceAfter{1.7-} ReplaceBefore{1.7-}
  > any:QueryTypeObj any:ResponseTypeObj Employee*:Employee.root any:CommandOrQueryTypeObj
    Notification*:NotificationAudit Trigger?:TriggerElement
Signal.typed : Signal restricted no-generic
Query : Message
  string: AcknowledgeFormat{1.3-1.4} AcknowledgeTemplate{1.3-1.4}
  URL: AcknowledgeURL{1.3-}
  AcknowledgeType[]: AcknowledgeType=Completed{1.3-}
  languages: Languages{1.8-}
  > any:QueryTypeObj any:CommandOrQueryTypeObj Subscription?:SubscriptionElement Employee*:Employee.root
Query.typed : Query restricted no-generic
CommandTypeObj no-generic
QueryTypeObj no-generic
CommandOrQueryTypeObj no-generic
ResponseTypeObj no-generic
SubscriptionElement
  ChannelMode: ChannelMode{1.4-}
  string: Format{1.2-1.4} Template{1.2-1.4}
  languages: Languages{1.6-1.7}
  duration: MinDelayTime{1.3-}
  Integer: RepeatStep
  double: RepeatTime
  RetryPolicy: RetryPolicy{1.4-}
  URL: URL
  > ObservationTarget*:Subscription/ObservationTarget
Subscription/ObservationTarget
  NMTOKEN: ElementType{-1.1}
  NMTOKENS: Attributes{-1.1} ElementIDs{-1.1}
  XPath: ObservationPath{1.2-}
TriggerElement : nothing no-foreign-attributes
  Integer: RepeatStep
  double: RepeatTime
  > ChangedAttribute*:Trigger/ChangedAttribute{-1.1} Added?:Trigger/Added{-1.1}
    ChangedPath*:Trigger/ChangedPath{1.2-} Removed?:Trigger/Removed{-1.1}
Trigger/ChangedAttribute
  NMTOKEN: AttributeName! ElementID ElementType!
  string: OldValue! NewValue!
Trigger/Added
  > any:ResponseTypeObj
Trigger/Removed
  > any:ResponseTypeObj
Trigger/ChangedPath
  XPath: Path!
  Modification: Modification!
  string: OldValue NewValue
AncestorPool
  > Ancestor+ Part*
Ancestor
  Activation: Activation
  NMTOKENS: Category{1.2-} ICSVersions{1.2-} Types
  URL: FileName
  shortString: JobID JobPartID ProjectID RelatedJobID{1.2-} RelatedJobPartID{1.2-} RelatedProjectID{1.6-}
    SpawnID StatusDetails{1.2-} TemplateID{1.2-}
  JDFJMFVersion: MaxVersion{1.2-} Version
  NMTOKEN: NodeID! Type
  NodeStatus: Status
  boolean: Template=false
  string: TemplateVersion{1.2-}
  > CustomerInfo?:CustomerInfo.old NodeInfo?:NodeInfo.old
AuditPool
  IDREFS: rRefs{-1.1}
  > ProcessRun*:ProcessRunAudit Notification*:NotificationAudit PhaseTime*:PhaseTimeAudit ResourceAudit*
    Created*:CreatedAudit Deleted*:DeletedAudit{1.2-} Modified*:ModifiedAudit Spawned*:SpawnedAudit
    Merged*:MergedAudit
CustomerInfo.old
  string: BillingCode CustomerProjectID{1.2-}
  shortString: CustomerID CustomerOrderID
  longString: CustomerJobName
  IDREFS: rRefs{-1.1}
  > Company?&{-1.0} Contact*& CustomerMessage*{1.2-}
NodeInfo.old{-1.2}
  duration: CleanupDuration SetupDuration TotalDuration
  DueLevel: DueLevel
  dateTime: End FirstEnd FirstStart LastEnd LastStart Start
  XYPair: IPPVersion
  Integer0To100: JobPriority=50
  language: NaturalLang
  boolean: MergeTarget{-1.0}
  URL: Route TargetRoute
  IDREFS: rRefs{-1.1}
  > BusinessInfo?{-1.5} Employee?& JMF*{-1.4} MISDetails?{1.2-} NotificationFilter*{-1.5}
ResourceLinkPool no-generic
GenericResourceLinkPool : ResourceLinkPool
  > any:ResourceLink
ResourcePool
  > any:Resource
StatusPool{-1.2}
  PoolStatus: Status
  shortString: StatusDetails{1.2-}
  > PartStatus*
StatusPool/PartStatus{-1.2}
  NodeStatus: Status
  shortString: StatusDetails{1.2-}
  > Part
JDF
  Activation: Activation
  NMTOKEN: Category{1.2-} SpawnID Type!
  NMTOKENS: ICSVersions{1.2-} NamedFeatures{1.2-1.4} Types
  ID: ID!
  shortString: JobID JobPartID ProjectID RelatedJobID{1.2-} RelatedJobPartID{1.2-} RelatedProjectID{1.6-}
    StatusDetails{1.2-} TemplateID{1.2-}
  JDFJMFVersion: MaxVersion{1.2-} Version
  NodeStatus: Status!
  boolean: Template=false
  string: TemplateVersion{1.2-}
  > AncestorPool? AuditPool? CustomerInfo?:CustomerInfo.old{-1.2} NodeInfo?:NodeInfo.old{-1.2} ResourcePool?
    StatusPool?{-1.2} ResourceLinkPool?:GenericResourceLinkPool JDF*
ProcessNode : JDF restricted no-generic abstract
`;
