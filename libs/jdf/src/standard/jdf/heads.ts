/** Facts of the open standard: which elements may stand where a general one is named */
export const heads = `
AbstractStates : BooleanState DateTimeState DurationState EnumerationState IntegerState MatrixState
    NameState NumberState PDFPathState RectangleState ShapeState StringState XYPairState
AbstractTerms : TestRef BooleanEvaluation DateTimeEvaluation DurationEvaluation EnumerationEvaluation
    IntegerEvaluation IsPresentEvaluation MatrixEvaluation NameEvaluation NumberEvaluation PDFPathEvaluation
    RectangleEvaluation ShapeEvaluation StringEvaluation XYPairEvaluation and or not xor
NotificationDetails : Barcode FCNKey Milestone SystemTimeSet CounterReset Error Event
QueryTypeObj : NotificationFilter ControllerFilter DeviceFilter KnownMsgQuParams SubscriptionFilter
    MsgFilter AuthenticationQuParams NewJDFQuParams NodeInfoQuParams EmployeeDef ResourceQuParams
    StatusQuParams TrackFilter QueueEntryDefList GangQuFilter
ResponseTypeObj : NotificationDef JDFController DeviceList JDFService MessageService SubscriptionInfo
    AuthenticationResp FlushedResources IDInfo NodeInfoResp Occupation ResourceInfo DeviceInfo TrackResult
    JobPhase QueueEntry SuspendQueueEntryParams FlushQueueInfo SubmissionMethods Queue GangInfo
CommandTypeObj : AuthenticationCmdParams StopPersChParams NewJDFCmdParams NodeInfoCmdParams
    ResourceCmdParams ResourcePullParams ShutDownCmdParams WakeUpCmdParams PipeParams AbortQueueEntryParams
    HoldQueueEntryParams RemoveQueueEntryParams RequestQueueEntryParams ResubmissionParams
    ResumeQueueEntryParams QueueEntryDef ReturnQueueEntryParams QueueEntryPosParams QueueEntryPriParams
    QueueSubmissionParams FlushQueueParams GangCmdFilter
CommandOrQueryTypeObj : FlushResourceParams ModifyNodeCmdParams UpdateJDFCmdParams QueueFilter
`;
