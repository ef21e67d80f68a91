/** Facts of the open standard, second generation: other elements, P to R. Notation: ../notation.ts. */
export const elementsPToR = `
PDFCreationDetails
  boolean: AllowJBIG2Globals ASCII85EncodePages CompressPages DetectBlend DoThumbnails Optimize
  AutoRotatePages: AutoRotatePages
  Binding: Binding
  RenderingIntent: DefaultRenderingIntent
  XYPair: InitialPageSize InitialResolution
  int: OverPrintMode
  NMTOKEN: PDFVersion
  > AdvancedParams? PDFXParams? ThinPDFParams?
PDFInterpretingParams
  boolean: EmitPDFBG EmitPDFHalftones EmitPDFTransfers EmitPDFUCR HonorPDFOverprint ICCColorAsDeviceColor
    PrintPDFAnnotations PrintTrapAnnotations
  NMTOKEN: OCGIntent OCGProcess
  float: OCGZoom TransparencyRenderingQuality
  > OCGControl* ReferenceXObjParams?
PDFXParams
  rectangle: PDFXBleedBoxtoTrimBoxOffset PDFXTrimBoxToMediaBoxOffset
  NMTOKENS: PDFXCheck
  boolean: PDFXCompliantPDFOnly PDFXNoTrimBoxError PDFXSetBleedBoxToMediaBox
  PDFXTrapped: PDFXTrapped
  > FileSpec?
PSCreationDetails
  boolean: BinaryOK CenterCropBox GeneratePageStreams IgnoreAnnotForms IgnoreBG IgnoreColorSeps IgnoreDSC
    IgnoreExternStreamRef IgnoreHalftones IgnoreOverprint IgnorePageRotation IgnoreRawData
    IgnoreSeparableImagesOnly IgnoreShowPage IgnoreTransfers IgnoreTTFontsFirst IgnoreUCR SetPageSize
    SetupProcsets ShrinkToFit SuppressCenter SuppressRotate TTasT42 UseFontAliasNames
  rectangle: BoundingBox
  EnumIncludeResources: IncludeBaseFonts IncludeCIDFonts IncludeEmbeddedFonts IncludeOtherResources
    IncludeProcSets IncludeTrueTypeFonts IncludeType1Fonts
  IncludeType3Fonts: IncludeType3Fonts
  OutputType: OutputType
  int: PSLevel
  float: Scale
PageActivation
  > Condition+
PageCondition
  > Condition+
Part
  NMTOKEN: BinderySignatureID BlockName BundleItemName ContactType DropID Location LotID Option PartVersion
    PrintCondition Product ProductPart QualityMeasurement Run Separation SheetName StationName WebName
  IntegerRange: DocIndex PageNumber RunIndex SetIndex SheetIndex
  regExp: Metadata
  PreviewType: PreviewType
  Side: Side
  XYPair: TileID
  TransferCurveName: TransferCurveName
PartAmount
  float: Amount MaxAmount MinAmount Waste
  > Part* PartWaste*
PartWaste
  NMTOKENS: ModuleIDs
  float: Waste!
  NMTOKEN: WasteDetails
Patch
  XYPair: Center Size
  float: Density NeutralDensity
  NMTOKEN: ExternalID
  LabColor: Lab
  PatchUsage: PatchUsage!
  sRGBColor: RGB
  TransferFunction: Spectrum
  SpotType: SpotType
  > SeparationTint*
Perforate
  float: Depth TeethPerDimension
  XYPair: StartPosition WorkingPath
  EnumTopBottom: WorkingDirection
Person
  string: AdditionalNames DescriptiveName FamilyName FirstName JobTitle NamePrefix NameSuffix
    PhoneticFirstName PhoneticLastName
  languages: Languages
PipeParams
  NMTOKEN: JobID! JobPartID PipeID!
  Operation: Operation!
  > MISDetails? ResourceSet?
PlacedObject
  Anchor: Anchor
  rectangle: ClipBox
  PDFPath: ClipPath SourceClipPath
  matrix: CTM! TrimCTM
  XYPair: HalfTonePhaseOrigin TrimSize
  ID: ID
  int: Ord
  IDREF: PositionRef
  > (ContentObject|MarkObject) PageActivation? PageCondition?
Position
  rectangle: AbsoluteBox RelativeBox
  Anchor: Anchor
  NMTOKEN: BinderySignatureID BlockName GangElementID
  ID: ID
  float: MarginBottom MarginLeft MarginRight MarginTop
  Orientation: Orientation
  int: PositionOrd StackDepth StackOrd
PositionObj
  Anchor: Anchor
  matrix: CTM
  IntegerRange: PageRange
  PositionPolicy: PositionPolicy RotationPolicy SizePolicy
  XYPair: RelativeSize Size
  > RefAnchor?
PreflightCheck
  EnumPreflightAction: Action
  int: Count
  IntegerList: Pages
  Severity: Severity
  NMTOKEN: TestClass TestID
  > Comment? GeneralID*
PreflightItem
  PreflightLevel: PreflightLevel
PreflightTest
  EnumPreflightAction: Action
  string: DescriptiveName
  Severity: Severity
  NMTOKEN: TestClass TestID
  > GeneralID*
ProcessRun
  duration: Duration
  dateTime: End! ReturnTime Start! SubmissionTime
  EndStatus: EndStatus!
  NMTOKEN: QueueEntryID
  > Part*
Product
  int: Amount MaxAmount MinAmount
  URL: CommentURL
  string: DescriptiveName ProductTypeDetails
  NMTOKEN: ExternalID PartVersion ProductType
  ID: ID
  boolean: IsRoot
  > Comment* GeneralID* Intent*
ProductIntent abstract
  > any*
ProductList
  > Product+
ProductionPath
  NMTOKEN: ProductionPathID
ProofItem
  int: Amount
  ColorType: ColorType
  boolean: Contract HalfTone
  ID: ID
  IntegerRange: PageIndex
  URL: ProofTarget
  > FileSpec?
Queue
  int: MaxQueueSize QueueSize
  UpdateGranularity: UpdateGranularity
  > QueueEntry*
QueueEntry
  Activation: Activation
  dateTime: EndTime StartTime SubmissionTime
  NMTOKEN: GangName JobID JobPartID QueueEntryID! RelatedJobID RelatedJobPartID StatusDetails
  EnumGangPolicy: GangPolicy
  int: Priority
  NodeStatus: Status!
  > FileSpec? GangSource* Part*
QueueFilter
  NMTOKEN: FirstEntry JobID JobPartID LastEntry
  NMTOKENS: GangNames QueueEntryIDs
  int: MaxEntries MaxPriority MinPriority
  dateTime: NewerThan OlderThan
  NodeStatus[]: StatusList
  > GangSource* Part*
QueueStatusParams
  UpdateGranularity: UpdateGranularity
  > QueueFilter?
QueueSubmissionParams
  Activation: Activation
  NMTOKEN: GangName NextQueueEntryID PrevQueueEntryID
  EnumGangPolicy: GangPolicy
  int: Priority
  URL: ReturnJMF URL!
RefAnchor
  Anchor: Anchor!
  AnchorType: AnchorType!
  IDREF: rRef!
ReferenceXObjParams
  NMTOKEN: Mode!
  > FileSpec*
RegisterMark
  XYPair: Center Size
  NMTOKEN: MarkName
  NMTOKENS: MarkType Separations
  MarkUsage[]: MarkUsage
  float: Rotation
  > MarkElement*
RegisterRibbon
  float: LengthOverall VisibleLength
  string: Material RibbonColorDetails
  NamedColor: RibbonColor
  NMTOKEN: RibbonEnd
RegistrationQuality
  XYPair: Offset!
  NMTOKEN: Reference!
RepeatDesc
  AllowedRotate: AllowedRotate
  float: GutterX GutterX2 GutterY GutterY2
  NMTOKENS: LayoutStyle
  int: OrderQuantity
  IDREF: ShapeDefRef!
  boolean: UseBleed
RequestQueueEntryParams
  Activation: Activation
  NMTOKEN: JobID JobPartID
  URL: QueueURL!
  > Part*
Resource
  string: Brand DescriptiveName
  URL: CommentURL
  duration: Duration StartOffset
  dateTime: Expires Start
  NMTOKEN: ExternalID
  float: GrossWeight ResourceWeight
  ID: ID
  Orientation: Orientation
  Status: Status
  matrix: Transformation
  > AmountPool? Comment* GeneralID* Part* any:SpecificResource? any*
ResourceCmdParams
  UpdateMethod: UpdateMethod!
  > ResourceSet
ResourceInfo
  CommandResult: CommandResult
  NMTOKEN: JobID JobPartID ModuleID QueueEntryID
  Level: Level
  Scope: Scope
  float: Speed TotalAmount
  NMTOKENS: Types
  > Event* MISDetails? ResourceSet
ResourceQuParams
  NMTOKEN: ExternalID JobID JobPartID QueueEntryID ResourceName
  ResourceDetails: ResourceDetails
  Scope: Scope!
  NMTOKENS: Types
  > Part*
ResourceSet
  IntegerList: CombinedProcessIndex
  URL: CommentURL
  string: DescriptiveName
  ID: ID
  NMTOKEN: Name! ProcessUsage Unit
  Usage: Usage
  > Comment* Dependent* GeneralID* Resource*
ResubmissionParams
  NMTOKEN: QueueEntryID!
  UpdateMethod2: UpdateMethod!
  URL: URL!
ReturnQueueEntryParams
  NMTOKEN: QueueEntryID!
  URL: URL!
RingBinding
  NMTOKEN: BinderMaterial RingShape ViewBinder
  boolean: RivetsExposed
RingBindingDetails
  float: Diameter SpineWidth
  boolean: RingMechanic RivetsExposed
  NMTOKEN: RingShape ViewBinder
RuleLength
  int: DDESCutType!
  float: Length!
`;
