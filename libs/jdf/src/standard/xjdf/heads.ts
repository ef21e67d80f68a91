/** Facts of the open standard, second generation: which elements may stand where a general one is named */
export const heads = `
Message : Command Query Response Signal
ProductIntent : AssemblingIntent BindingIntent ColorIntent ContentCheckIntent EmbossingIntent FoldingIntent
    HoleMakingIntent IntentResource LaminatingIntent LayoutIntent MediaIntent ProductionIntent
    ShapeCuttingIntent VariableIntent
Command : CommandForceGang CommandModifyQueueEntry CommandPipeControl CommandRequestQueueEntry
    CommandResource CommandResubmitQueueEntry CommandReturnQueueEntry CommandShutDown
    CommandStopPersistentChannel CommandSubmitQueueEntry CommandWakeUp
Response : ResponseForceGang ResponseGangStatus ResponseKnownDevices ResponseKnownMessages
    ResponseKnownSubscriptions ResponseModifyQueueEntry ResponseNotification ResponsePipeControl
    ResponseQueueStatus ResponseRequestQueueEntry ResponseResource ResponseResubmitQueueEntry
    ResponseReturnQueueEntry ResponseShutDown ResponseStatus ResponseStopPersistentChannel
    ResponseSubmitQueueEntry ResponseWakeUp
Query : QueryGangStatus QueryKnownDevices QueryKnownMessages QueryKnownSubscriptions QueryNotification
    QueryQueueStatus QueryResource QueryStatus
Signal : SignalGangStatus SignalKnownDevices SignalKnownSubscriptions SignalNotification SignalQueueStatus
    SignalResource SignalStatus
`;
