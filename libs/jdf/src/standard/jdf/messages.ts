/** Facts of the open standard: the messages, by family and type. Notation: ../notation.ts. */
export const messages = `
AcknowledgeAbortQueueEntry : Acknowledge.typed
  > Queue Notification?:NotificationAudit
CommandAbortQueueEntry : Command.typed
  > AbortQueueEntryParams?{1.5-} QueueEntryDef?{-1.4} QueueFilter?{1.2-1.4}
ResponseAbortQueueEntry : Response.typed
  > Queue{-1.4} Notification?:NotificationAudit
AcknowledgeCloseQueue : Acknowledge.typed
  > Queue Notification?:NotificationAudit
CommandCloseQueue : Command.typed
  > QueueFilter?{1.2-1.4}
ResponseCloseQueue : Response.typed
  > Queue?{1.2-1.4} Notification?:NotificationAudit
QueryEvents : Query.typed{-1.4}
  > NotificationFilter? Subscription?:SubscriptionElement
ResponseEvents : Response.typed{-1.4}
  > NotificationDef* Notification?:NotificationAudit
SignalEvents : Signal.typed{-1.4}
  > NotificationFilter? NotificationDef* Notification?:NotificationAudit Trigger?:TriggerElement
AcknowledgeFlushQueue : Acknowledge.typed
  > Queue FlushQueueInfo?{1.2-} Notification?:NotificationAudit
CommandFlushQueue : Command.typed
  > QueueFilter?{1.2-1.4} FlushQueueParams?{1.2-}
QueryFlushQueue : Query.typed{1.2-}
  > FlushQueueParams?{1.5-} QueueFilter?{-1.4} Subscription?:SubscriptionElement
ResponseFlushQueue : Response.typed
  > Queue?{1.2-1.4} FlushQueueInfo?{1.2-} Notification?:NotificationAudit
SignalFlushQueue : Signal.typed
  > QueueFilter?{1.2-} Queue FlushQueueInfo?{1.2-} Notification?:NotificationAudit Trigger?:TriggerElement
AcknowledgeFlushResources : Acknowledge.typed{1.2-}
  > FlushedResources? Notification?:NotificationAudit
CommandFlushResources : Command.typed{1.2-}
  > QueueFilter?{-1.4} FlushResourceParams?
QueryFlushResources : Query.typed{1.2-}
  > QueueFilter?{-1.4} FlushResourceParams?
ResponseFlushResources : Response.typed{1.2-}
  > FlushedResources? Notification?:NotificationAudit
SignalFlushResources : Signal.typed{1.2-}
  > QueueFilter* FlushResourceParams* FlushedResources? Notification?:NotificationAudit
    Trigger?:TriggerElement
CommandForceGang : Command.typed
  > GangCmdFilter*
QueryForceGang : Query.typed
  > GangQuFilter*
ResponseForceGang : Response.typed
  > GangInfo* Notification?:NotificationAudit
AcknowledgeHoldQueue : Acknowledge.typed
  > Queue Notification?:NotificationAudit
CommandHoldQueue : Command.typed
  > QueueFilter?{1.2-1.4}
ResponseHoldQueue : Response.typed
  > Queue?{-1.4} Notification?:NotificationAudit
AcknowledgeHoldQueueEntry : Acknowledge.typed
  > Queue Notification?:NotificationAudit
CommandHoldQueueEntry : Command.typed
  > HoldQueueEntryParams?{1.5-} QueueEntryDef?{-1.4} QueueFilter?{1.2-1.4}
ResponseHoldQueueEntry : Response.typed
  > Queue?{-1.4} Notification?:NotificationAudit
QueryKnownControllers : Query.typed{-1.4}
  > Subscription?:SubscriptionElement
ResponseKnownControllers : Response.typed{-1.4}
  > JDFController* Notification?:NotificationAudit
SignalKnownControllers : Signal.typed{-1.4}
  > JDFController* Notification?:NotificationAudit Trigger?:TriggerElement
QueryKnownDevices : Query.typed
  > DeviceFilter? Subscription?:SubscriptionElement
ResponseKnownDevices : Response.typed
  > DeviceList? Notification?:NotificationAudit
SignalKnownDevices : Signal.typed
  > DeviceFilter? DeviceList? Notification?:NotificationAudit Trigger?:TriggerElement
QueryKnownJDFServices : Query.typed{-1.1}
  > Subscription?:SubscriptionElement
ResponseKnownJDFServices : Response.typed{-1.1}
  > JDFService* Notification?:NotificationAudit
SignalKnownJDFServices : Signal.typed{-1.1}
  > JDFService* Notification?:NotificationAudit Trigger?:TriggerElement
QueryKnownMessages : Query.typed
  > KnownMsgQuParams? Subscription?:SubscriptionElement
ResponseKnownMessages : Response.typed
  > MessageService* Notification?:NotificationAudit
SignalKnownMessages : Signal.typed
  > KnownMsgQuParams? MessageService* Notification?:NotificationAudit Trigger?:TriggerElement
QueryKnownSubscriptions : Query.typed
  > SubscriptionFilter? Subscription?:SubscriptionElement
ResponseKnownSubscriptions : Response.typed
  > SubscriptionInfo* Notification?:NotificationAudit
SignalKnownSubscriptions : Signal.typed
  > SubscriptionInfo? Notification?:NotificationAudit Trigger?:TriggerElement
AcknowledgeModifyNode : Acknowledge.typed{1.3-}
  > ModifyNodeCmdParams? Notification?:NotificationAudit
CommandModifyNode : Command.typed{1.3-}
  > ModifyNodeCmdParams?
ResponseModifyNode : Response.typed{1.3-}
  > ModifyNodeCmdParams? Notification?:NotificationAudit
SignalModifyNode : Signal.typed{1.3-}
  > ModifyNodeCmdParams? Notification?:NotificationAudit Trigger?:TriggerElement
AcknowledgeNewJDF : Acknowledge.typed{1.2-}
  > IDInfo? Notification?:NotificationAudit
CommandNewJDF : Command.typed{1.2-}
  > NewJDFCmdParams
QueryNewJDF : Query.typed{1.2-}
  > NewJDFQuParams Subscription?:SubscriptionElement
ResponseNewJDF : Response.typed{1.2-}
  > IDInfo* Notification?:NotificationAudit
SignalNewJDF : Signal.typed{1.2-}
  > NewJDFQuParams IDInfo* Notification?:NotificationAudit Trigger?:TriggerElement
AcknowledgeNodeInfo : Acknowledge.typed{1.2-1.2}
  > NodeInfoResp* Notification?:NotificationAudit
CommandNodeInfo : Command.typed{1.2-1.2}
  > NodeInfoCmdParams
QueryNodeInfo : Query.typed{1.2-1.2}
  > NodeInfoQuParams Subscription?:SubscriptionElement
ResponseNodeInfo : Response.typed{1.2-1.2}
  > NodeInfoResp* Notification?:NotificationAudit
SignalNodeInfo : Signal.typed{1.2-1.2}
  > NodeInfoQuParams NodeInfoResp* Notification?:NotificationAudit Trigger?:TriggerElement
QueryNotification : Query.typed no-generic
  > NotificationFilter?
SignalNotification : Signal.typed no-generic
  > NotificationFilter? Notification:NotificationAudit Trigger?:TriggerElement
QueryOccupation : Query.typed{-1.4}
  > EmployeeDef* Subscription?:SubscriptionElement
ResponseOccupation : Response.typed{-1.4}
  > Occupation* Notification?:NotificationAudit
SignalOccupation : Signal.typed{-1.4}
  > EmployeeDef* Occupation* Notification?:NotificationAudit Trigger?:TriggerElement
AcknowledgeOpenQueue : Acknowledge.typed
  > Queue Notification?:NotificationAudit
CommandOpenQueue : Command.typed
  > QueueFilter?{1.2-1.4}
ResponseOpenQueue : Response.typed
  > Queue?{-1.4} Notification?:NotificationAudit
AcknowledgePipeClose : Acknowledge.typed
  > JobPhase Notification?:NotificationAudit
CommandPipeClose : Command.typed
  > PipeParams
ResponsePipeClose : Response.typed
  > JobPhase?{-1.4} Notification?:NotificationAudit
AcknowledgePipePause : Acknowledge.typed
  > JobPhase Notification?:NotificationAudit
CommandPipePause : Command.typed
  > PipeParams
ResponsePipePause : Response.typed
  > JobPhase{-1.4} Notification?:NotificationAudit
AcknowledgePipePull : Acknowledge.typed
  > JobPhase Notification?:NotificationAudit
CommandPipePull : Command.typed
  > PipeParams
RegistrationPipePull : Registration.typed
  > PipeParams Subscription?:SubscriptionElement
ResponsePipePull : Response.typed
  > JobPhase{-1.4} Notification?:NotificationAudit
AcknowledgePipePush : Acknowledge.typed
  > JobPhase Notification?:NotificationAudit
CommandPipePush : Command.typed
  > PipeParams
RegistrationPipePush : Registration.typed
  > PipeParams Subscription?:SubscriptionElement
ResponsePipePush : Response.typed
  > JobPhase{-1.4} Notification?:NotificationAudit
QueryQueueEntryStatus : Query.typed{-1.1}
  > QueueEntryDefList Subscription?:SubscriptionElement
ResponseQueueEntryStatus : Response.typed{-1.1}
  > QueueEntry* Notification?:NotificationAudit
SignalQueueEntryStatus : Signal.typed{-1.1}
  > QueueEntryDefList QueueEntry* Notification?:NotificationAudit Trigger?:TriggerElement
QueryQueueStatus : Query.typed
  > QueueFilter? Subscription?:SubscriptionElement
ResponseQueueStatus : Response.typed
  > Queue Notification?:NotificationAudit
SignalQueueStatus : Signal.typed
  > Queue QueueFilter? Notification?:NotificationAudit Trigger?:TriggerElement
AcknowledgeRemoveQueueEntry : Acknowledge.typed
  > Queue Notification?:NotificationAudit
CommandRemoveQueueEntry : Command.typed
  > QueueEntryDef?{-1.4} QueueFilter?{1.2-1.4} RemoveQueueEntryParams?{1.5-}
ResponseRemoveQueueEntry : Response.typed
  > Queue?{-1.4} Notification?:NotificationAudit
QueryRepeatMessages : Query.typed{-1.4}
  > MsgFilter? Subscription?:SubscriptionElement
ResponseRepeatMessages : Response.typed{-1.4}
  > any:QueryTypeObj any:ResponseTypeObj Notification?:NotificationAudit
CommandRequestForAuthentication : Command.typed{1.4-}
  > AuthenticationCmdParams
QueryRequestForAuthentication : Query.typed{1.4-}
  > AuthenticationQuParams
ResponseRequestForAuthentication : Response.typed{1.4-}
  > Notification*:NotificationAudit AuthenticationResp*
SignalRequestForAuthentication : Signal.typed{1.4-}
  > AuthenticationResp* AuthenticationQuParams* Notification*:NotificationAudit Trigger*:TriggerElement
AcknowledgeRequestQueueEntry : Acknowledge.typed{1.2-}
  > Notification?:NotificationAudit
CommandRequestQueueEntry : Command.typed{1.2-}
  > RequestQueueEntryParams
ResponseRequestQueueEntry : Response.typed{1.2-}
  > Notification?:NotificationAudit
AcknowledgeResource : Acknowledge.typed
  > ResourceInfo* Notification?:NotificationAudit
CommandResource : Command.typed
  > ResourceCmdParams
QueryResource : Query.typed
  > ResourceQuParams? Subscription?:SubscriptionElement
RegistrationResource : Registration.typed
  > ResourceCmdParams Subscription?:SubscriptionElement
ResponseResource : Response.typed
  > ResourceInfo* Notification?:NotificationAudit
SignalResource : Signal.typed
  > ResourceQuParams? ResourceInfo* Notification?:NotificationAudit Trigger?:TriggerElement
AcknowledgeResourcePull : Acknowledge.typed{1.2-}
  > QueueEntry Queue Notification?:NotificationAudit
CommandResourcePull : Command.typed{1.2-}
  > ResourcePullParams QueueFilter?{-1.4}
RegistrationResourcePull : Registration.typed
  > ResourcePullParams QueueFilter Subscription?:SubscriptionElement
ResponseResourcePull : Response.typed{1.2-}
  > QueueEntry Queue?{-1.4} Notification?:NotificationAudit
AcknowledgeResubmitQueueEntry : Acknowledge.typed
  > Queue Notification?:NotificationAudit
CommandResubmitQueueEntry : Command.typed
  > ResubmissionParams QueueFilter?{1.2-1.4}
ResponseResubmitQueueEntry : Response.typed
  > Queue?{-1.4} Notification?:NotificationAudit
AcknowledgeResumeQueue : Acknowledge.typed
  > Queue Notification?:NotificationAudit
CommandResumeQueue : Command.typed
  > QueueFilter?{1.2-1.4}
ResponseResumeQueue : Response.typed
  > Queue?{-1.4} Notification?:NotificationAudit
AcknowledgeResumeQueueEntry : Acknowledge.typed
  > Queue Notification?:NotificationAudit
CommandResumeQueueEntry : Command.typed
  > QueueEntryDef?{-1.4} QueueFilter?{1.2-1.4} ResumeQueueEntryParams?{1.5-}
ResponseResumeQueueEntry : Response.typed
  > Queue?{-1.4} Notification?:NotificationAudit
AcknowledgeReturnQueueEntry : Acknowledge.typed
  > Notification?:NotificationAudit
CommandReturnQueueEntry : Command.typed
  > ReturnQueueEntryParams
ResponseReturnQueueEntry : Response.typed
  > Notification?:NotificationAudit
AcknowledgeSetQueueEntryPosition : Acknowledge.typed
  > Queue Notification?:NotificationAudit
CommandSetQueueEntryPosition : Command.typed
  > QueueEntryPosParams QueueFilter?{1.2-}
ResponseSetQueueEntryPosition : Response.typed
  > Queue Notification?:NotificationAudit
AcknowledgeSetQueueEntryPriority : Acknowledge.typed
  > Queue Notification?:NotificationAudit
CommandSetQueueEntryPriority : Command.typed
  > QueueEntryPriParams QueueFilter?{1.2-1.4}
ResponseSetQueueEntryPriority : Response.typed
  > Queue?{-1.4} Notification?:NotificationAudit
AcknowledgeShutDown : Acknowledge.typed{1.2-}
  > DeviceInfo Queue Notification?:NotificationAudit
CommandShutDown : Command.typed{1.2-}
  > ShutDownCmdParams QueueFilter?{-1.4}
ResponseShutDown : Response.typed{1.2-}
  > DeviceInfo Queue?{-1.4} Notification?:NotificationAudit
QueryStatus : Query.typed
  > StatusQuParams Subscription?:SubscriptionElement
ResponseStatus : Response.typed
  > DeviceInfo+ Queue*{-1.5} Notification?:NotificationAudit
SignalStatus : Signal.typed
  > StatusQuParams DeviceInfo+ Queue*{-1.5} Notification?:NotificationAudit Trigger?:TriggerElement
AcknowledgeStopPersistentChannel : Acknowledge.typed
  > Notification?:NotificationAudit
CommandStopPersistentChannel : Command.typed
  > StopPersChParams
ResponseStopPersistentChannel : Response.typed
  > Notification?:NotificationAudit
QuerySubmissionMethods : Query.typed
  > Subscription?:SubscriptionElement
ResponseSubmissionMethods : Response.typed
  > SubmissionMethods? Notification?:NotificationAudit
AcknowledgeSubmitQueueEntry : Acknowledge.typed
  > QueueEntry? Queue Notification?:NotificationAudit
CommandSubmitQueueEntry : Command.typed
  > QueueSubmissionParams QueueFilter?{1.2-1.4}
ResponseSubmitQueueEntry : Response.typed
  > QueueEntry? Queue?{-1.4} Notification?:NotificationAudit
AcknowledgeSuspendQueueEntry : Acknowledge.typed{1.2-}
  > Queue Notification?:NotificationAudit
CommandSuspendQueueEntry : Command.typed{1.2-}
  > QueueEntryDef?{-1.4} QueueFilter?{-1.4} SuspendQueueEntryParams?{1.5-}
ResponseSuspendQueueEntry : Response.typed{1.2-}
  > Queue?{-1.4} Notification?:NotificationAudit
QueryTrack : Query.typed{-1.4}
  > TrackFilter? Subscription?:SubscriptionElement
ResponseTrack : Response.typed{-1.4}
  > TrackResult* Notification?:NotificationAudit
SignalTrack : Signal.typed{-1.4}
  > TrackFilter? TrackResult* Notification?:NotificationAudit Trigger?:TriggerElement
AcknowledgeUpdateJDF : Acknowledge.typed{1.3-}
  > UpdateJDFCmdParams? Notification?:NotificationAudit
CommandUpdateJDF : Command.typed{1.3-}
  > UpdateJDFCmdParams?
ResponseUpdateJDF : Response.typed{1.3-}
  > UpdateJDFCmdParams? Notification?:NotificationAudit
SignalUpdateJDF : Signal.typed{1.3-}
  > UpdateJDFCmdParams? Notification?:NotificationAudit Trigger?:TriggerElement
AcknowledgeWakeUp : Acknowledge.typed{1.2-}
  > DeviceInfo Notification?:NotificationAudit
CommandWakeUp : Command.typed{1.2-}
  > WakeUpCmdParams?
ResponseWakeUp : Response.typed{1.2-}
  > DeviceInfo Notification?:NotificationAudit
SignalWakeUp : Signal.typed{1.2-}
  > WakeUpCmdParams? DeviceInfo Notification?:NotificationAudit Trigger?:TriggerElement
`;
