/** Facts of the open standard, second generation: other elements, G to O. Notation: ../notation.ts. */
export const elementsGToO = `
GangCmdFilter
  NMTOKENS: GangNames
  Policy: Policy
GangElement
  NMTOKENS: BinderySignatureIDs Operations SeparationListBack SeparationListFront
  boolean: CollapseBleeds
  NMTOKEN: CustomerID ExternalID GangElementID! GroupCode JobID OneSheet
  dateTime: DeliveryDate DueDate
  XYPair: Dimension NumberUp PageDimension
  int: FillPriority MaxQuantity MinQuantity NPage OrderQuantity! PlacedQuantity Priority
  MediaDirection: GrainDirection
  IDREF: MediaRef RunListRef
  PositionPolicy: RotationPolicy
  > GeneralID* Media? RunList*
GangInfo
  float: Amount
  NMTOKEN: GangName!
GangQuFilter
  NMTOKENS: GangNames
GangSource
  NMTOKEN: BinderySignatureID JobID!
  int: Copies!
GeneralID
  DataType: DataType
  NMTOKEN: IDUsage!
  string: IDValue!
Glue
  boolean: AreaGlue
  float: GlueLineWidth
  IDREF: GlueRef
  GlueType: GlueType
  FloatList: GluingPattern
  GluingTechnique: GluingTechnique
  int: MeltingTemperature
  XYPair: StartPosition WorkingPath
  Face: WorkingDirection
HardCoverBinding
  boolean: BlockThreadSewing EndSheets HeadBands JapanBind
  NMTOKEN: CoverStyle
  NamedColor: HeadBandColor
  string: HeadBandColorDetails
  Jacket: Jacket
  float: JacketFoldingWidth Thickness
  EnumGlue: SpineGlue
  NMTOKENS: SpineOperations
  TightBacking: TightBacking
  > RegisterRibbon*
HolePattern
  XYPair: Center Extent Pitch
  CenterReference: CenterReference
  IntegerList: HoleCount
  Pattern: Pattern
  ReferenceEdge: ReferenceEdge
  NMTOKEN: Reinforcement
  Shape: Shape
Icon
  int: BitDepth!
  DeviceStatus[]: IconUsage
  XYPair: Size!
  > FileSpec?
IconList
  > Icon+
IdentificationField
  rectangle: BoundingBox
  Encoding: Encoding
  NMTOKEN: EncodingDetails PurposeDetails
  regExp: Format
  matrix: Orientation
  Face: Position
  Purpose: Purpose
  string: Value ValueFormat
  NMTOKENS: ValueTemplate
  > BarcodeDetails? ExtraValues? MetadataMap*
ImageCompression
  boolean: AntiAliasImages AutoFilterImages ConvertImagesToIndexed DownsampleImages EncodeImages
  float: DCTQuality ImageDownsampleThreshold ImageResolution
  NMTOKEN: ImageAutoFilterStrategy ImageFilter
  int: ImageDepth JPXQuality
  ImageDownsampleType: ImageDownsampleType
  ImageType: ImageType
  > CCITTFaxParams? DCTParams? FlateParams? JBIG2Params? JPEG2000Params? LZWParams?
ImageEnhancementOp
  NMTOKEN: Operation!
  string: OperationDetails
  SourceObjects[]: SourceObjects
InsertSheet
  boolean: IsWaste
  IDREF: MediaRef
  NMTOKEN: SheetFormat
  SheetType: SheetType!
  SheetUsage: SheetUsage!
  > StripMark*
Inspection
  > Defect* FileSpec?
Intent
  string: DescriptiveName
  NMTOKEN: ExternalID Name!
  > any:ProductIntent? any*
InterpretingDetails
  float: MinLineWidth
JBIG2Params
  boolean: JBIG2Lossless
JPEG2000Params
  int: CodeBlockSize LayersPerTile NumResolutions
  FloatList: LayerRates
  ProgressionOrder: ProgressionOrder
  XYPair: TileSize
JobField
  string: JobFormat
  NMTOKENS: JobTemplate
JobPhase
  float: Amount TotalAmount Waste
  NMTOKEN: CostCenterID JobID! JobPartID QueueEntryID RelatedJobID RelatedJobPartID StatusDetails WorkStepID
  DeadLine: DeadLine
  dateTime: EndTime StartTime
  NMTOKENS: ModuleIDs ToolIDs
  Percentage: PercentCompleted
  duration: RestTime
  NodeStatus: Status!
  > Activity* GangSource* MISDetails? Part*
LZWParams
  int: EarlyChange Predictor
LooseBinding
  string: Brand
  float: Diameter
  > HolePattern? CoilBinding? CombBinding? RingBinding? ScrewBinding?
MISDetails
  float: Complexity
  CostType: CostType
  WorkType: WorkType
  NMTOKEN: WorkTypeDetails
MarkColor
  string: Name!
  float: Tint!
MarkElement
  XYPair: Center! Size
  NMTOKEN: MarkType! Separation!
  float: Rotation
MarkObject
  IDREF: ContentRef
  > ColorControlStrip* CutMark* RegisterMark* ScavengerArea*
MediaLayers
  > (Glue|Media)*
MessageService
  ResponseModes[]: ResponseModes
  NMTOKEN: Type!
  URLSchemes[]: URLSchemes
MetadataMap
  NMTOKEN: Name!
  string: ValueFormat!
  NMTOKENS: ValueTemplate!
  > Expr*
Milestone
  NMTOKEN: MilestoneType!
  int: TypeAmount
ModifyQueueEntryParams
  NMTOKEN: GangName NextQueueEntryID PrevQueueEntryID
  Operation3: Operation!
  int: Position Priority
  > QueueFilter
Module
  string: DescriptiveName Manufacturer Revision SerialNumber
  URL: ManufacturerURL
  NMTOKEN: ModuleID!
  NMTOKENS: ModuleType
  > IdentificationField*
ModuleInfo
  duration: HourCounter
  DeviceCondition: ModuleCondition
  NMTOKEN: ModuleID! ModuleType
  DeviceStatus: ModuleStatus!
  float: ProductionCounter TotalProductionCounter
  string: StatusDetails
  > Part*
MultiPageFold
  NMTOKEN: BinderySignatureID!
  Orientation: Orientation!
NetworkHeader
  string: Name! Value!
Notification
  Severity: Class!
  NMTOKEN: JobID JobPartID ModuleID QueueEntryID
  > Comment* Event? Milestone? Part* any*
NotificationFilter
  Classes[]: Classes
  NMTOKENS: MilestoneTypes
OCGControl
  boolean: IncludeOCG!
  string: OCGName
  NMTOKEN: ProcStepsGroup ProcStepsType
ObjectModel
  shape: Dimensions
  > FileSpec?
ObjectResolution
  NMTOKEN: AntiAliasing
  XYPair: Resolution!
  SourceObjects[]: SourceObjects
`;
