/** Facts of the open standard, second generation: other elements, A to F. Notation: ../notation.ts. */
export const elementsAToF = `
Activity
  NMTOKEN: ActivityID PersonalID
  string: ActivityName
  dateTime: EndTime StartTime
  NMTOKENS: Roles
  > Comment?
Address
  NMTOKEN: AddressUsage
  string: City CivicNumber Country ExtendedAddress PostalCode PostBox Region Street
  CountryCode: CountryCode
  > AddressLine*:TextElement
AdhesiveNote
  > Glue?
AdvancedParams
  boolean: AllowPSXObjects AllowTransparency AutoPositionEPSInfo EmbedJobOptions EmitDSCWarnings
    LockDistillerParams ParseDSCCommentForDocInfo ParseDSCComments PassThroughJPEGImages PreserveCopyPage
    PreserveEPSInfo PreserveHalftoneInfo PreserveOPIComments PreserveOverprintSettings UsePrologue
  TransferFunctionInfo: TransferFunctionInfo
  UCRandBGInfo: UCRandBGInfo
AmountPool
  > PartAmount+
ApprovalPerson
  ApprovalRole: ApprovalRole
  string: ApprovalRoleDetails
  IDREF: ContactRef!
AssemblyItem
  IDREF: ChildRef!
AssemblySection
  NMTOKEN: BinderySignatureID! ExternalID
  CommonFolds: CommonFolds
  string: DescriptiveName
  > AssemblySection*
AuditPool
  > (AuditCreated|AuditNotification|AuditProcessRun|AuditResource|AuditStatus)*
AutomatedOverPrintParams
  boolean: KnockOutCMYKWhite OverPrintBlackLineArt OverPrintBlackText
  float: LineArtBlackLevel TextBlackLevel
  int: TextSizeThreshold
Band
  int: Height Width
BarcodeCompParams
  CompensationProcess: CompensationProcess!
  float: CompensationValue!
BarcodeDetails
  NMTOKEN: BarcodeVersion ErrorCorrectionLevel
  int: XCells YCells
BarcodeProductionParams
  > BarcodeReproParams? IdentificationField?
BarcodeReproParams
  BearerBars: BearerBars
  float: Height Magnification ModuleHeight ModuleWidth Ratio
  Masking: Masking
  > BarcodeCompParams*
BindIn
  IDREF: ChildRef!
  int: Folio
  Orientation: Orientation
  XYPair: Position
  > Glue?
BindingQuality
  float: FlexValue PullOutValue
BindingQualityMeasurement
  float: FlexValue PullOutValue
BindingQualityParams
  float: FlexValue PullOutValue
BlowIn
  IDREF: ChildRef!
  int: FolioFrom FolioTo
  Orientation: Orientation
BoxFoldAction
  Action: Action!
  XYPair: FoldIndex!
  > Glue?
BundleItem
  int: Amount! TotalAmount
  NMTOKEN: BundleItemName
  BundleType: BundleType
  IDREF: ItemRef
  shape: TotalDimensions
  float: TotalVolume TotalWeight
  > BundleItem*
ByteMap
  BandOrdering: BandOrdering
  int: FrameHeight FrameWidth PixelDepth PixelSkip
  boolean: Halftoned Interleaved
  NMTOKENS: PixelColorants
  XYPair: Resolution
  > Band?
CCITTFaxParams
  boolean: EncodedByteAlign EndOfBlock EndOfLine Uncompressed
  int: K
CIELABMeasuringField
  XYPair: Center!
  LabColor: CIELab!
  float: Diameter Tolerance
  FloatList: Percentages ScreenRuling
  string: ScreenShape
CellCondition
  Side: Side!
  > Condition+
Certification
  string: Claim Identifier
  NMTOKEN: Organization
ChannelBindingDetails
  float: ClampD
  shape: ClampSize
  boolean: Cover
CoilBinding
  NMTOKEN: CoilShape
  LooseBindMaterial: Material
CoilBindingDetails
  NMTOKEN: CoilShape
  float: Diameter
CollatingItem
  int: Amount
  IDREF: ComponentRef
  Orientation: Orientation
  matrix: Transformation
  TransformationContext: TransformationContext
ColorControlStrip
  XYPair: Center Size
  float: Rotation
  NMTOKENS: Separations
  string: StripType
  > CIELABMeasuringField* ColorMeasurementConditions? DensityMeasuringField* Patch*
ColorCorrectionOp
  float: AdjustContrast AdjustHue AdjustLightness AdjustSaturation
  SourceObjects[]: SourceObjects
ColorMeasurement
  > ColorControlStrip?
ColorMeasurementConditions
  float: Aperture SpectralResolution
  NMTOKEN: DensityStandard Illumination MeasurementMode
  int: IlluminationAngle MeasurementAngle Observer
  InkState: InkState
  MeasurementFilter: MeasurementFilter
  SampleBacking: SampleBacking
  WhiteBase: WhiteBase
ColorSpaceConversionOp
  boolean: BlackPointCompensation PreserveBlack RGBGray2Black
  NMTOKEN: BlackPointCompensationDetails
  Operation2: Operation!
  RenderingIntent: RenderingIntent SourceRenderingIntent
  float: RGBGray2BlackThreshold
  NMTOKENS: Separations
  SourceCS: SourceCS
  SourceObjects[]: SourceObjects
  > FileSpec(0-3) ScreenSelector?
ColorantAlias
  string: ColorantName!
  hexBinary: RawName
  NMTOKEN: ReplacementColorantName!
ComChannel
  NMTOKEN: ChannelType!
  NMTOKENS: ChannelUsage
  string: DescriptiveName Locator!
CombBinding
  NMTOKEN: CombShape
  LooseBindMaterial: Material
CombBindingDetails
  NMTOKEN: CombShape
  float: Diameter
  boolean: FlipBackCover
Comment text
  string: Author
  NMTOKEN: ExternalID PersonalID Type
  language: Language
  dateTime: TimeStamp
Company
  NMTOKEN: CompanyID
  string: DescriptiveName OrganizationName!
  > OrganizationalUnit*:TextElement
Condition
  NMTOKEN: PartContext
  > Part+
ContentMetadata
  IDREFS: ContactRefs
  NMTOKEN: ISBN Title
  > Comment? GeneralID*
ContentObject
ConvertingConfig
  float: MarginBottom MarginLeft MarginRight MarginTop SheetHeightMax SheetHeightMin SheetWidthMax
    SheetWidthMin
  > CutBlock* Device* Media*
Crease
  float: Depth
  XYPair: StartPosition WorkingPath
  EnumTopBottom: WorkingDirection
Cut
  float: CutWidth
  XYPair: StartPosition WorkingPath
  EnumTopBottom: WorkingDirection
CutBlock
  NMTOKENS: BinderySignatureIDs Operations
  NMTOKEN: BlockName! ExternalID
  rectangle: Box
  float: CutWidth
  string: DescriptiveName
CutMark
  MarkType: MarkType!
  XYPair: Position!
DCTParams
  ColorTransform: ColorTransform
  IntegerList: HSamples VSamples
  string: HuffTable QuantTable
  float: QFactor
Defect
  rectangle: Box
  NMTOKEN: DefectReason DefectTypeDetails
  DefectType[]: DefectType!
  Face: Face
  Score: Severity
  float: Size
  > Comment? FileSpec?
DensityMeasuringField
  XYPair: Center! ToleranceBlack ToleranceCyan ToleranceDotGain ToleranceMagenta ToleranceYellow
  FloatList: Density!
  float: Diameter! DotGain!
  NMTOKEN: Separation!
Dependent
  NMTOKEN: JobID! JobPartID PipeID PipeProtocol
  URL: XJMFURL
DeviceFilter
  DeviceDetails: DeviceDetails
DeviceInfo
  NMTOKEN: CounterUnit StatusDetails
  DeviceCondition: DeviceCondition
  dateTime: EndTime IdleStartTime PowerOnTime
  duration: HourCounter
  NMTOKENS: ModuleIDs ToolIDs
  float: ProductionCounter Speed TotalProductionCounter
  DeviceStatus: Status!
  > Activity* Device? Employee* Event* FileSpec(0-2) JobPhase* ModuleInfo*
DeviceNColor
  FloatList: ColorList!
  NMTOKEN: Name!
DeviceNSpace
  NMTOKEN: Name!
  NMTOKENS: Separations!
Disjointing
  int: Amount
  Direction: Direction
  XYPair: Offset
  NMTOKEN: Units
  > InsertSheet*
Disposition
  DispositionAction: DispositionAction
  duration: ExtraDuration MinDuration
  int: Priority
  dateTime: Until
DropItem
  int: Amount!
  IDREF: ItemRef!
  shape: TotalDimensions
  float: TotalVolume TotalWeight
EdgeGluing
  EnumGlue: EdgeGlue
Emboss
  EnumEmbossDirection: Direction!
  float: EdgeAngle Height
  EdgeShape: EdgeShape
  EmbossType: EmbossingType!
  Face: Face
  XYPair: ImageSize Position
  IDREF: ToolRef
  > IdentificationField?
EmbossingItem
  EnumEmbossDirection: Direction
  EmbossType: EmbossingType!
  Face: Face
  NamedColor: FoilColor
  string: FoilColorDetails
  float: Height
  XYPair: ImageSize Position
  NMTOKEN: Separation ToolName
Employee
  NMTOKEN: CostCenterID PersonalID Role
  > Person*
Event
  NMTOKEN: EventID!
  string: EventValue
Expr
  NMTOKEN: Name!
  XPath: Path!
ExtraValues
  NMTOKEN: Usage!
  string: Value!
Feeder
  IntegerList: AlternatePositions
  IDREF: ComponentRef
  FeederSynchronization: FeederSynchronization
  NMTOKEN: FeederType Loading
  Opening: Opening
  int: Position
  > FeederQualityParams?
FeederQualityParams
  EnumFeedQuality: BadFeedQuality DoubleFeedQuality IncorrectComponentQuality
  int: BadFeeds DoubleFeeds IncorrectComponents
FileSpec
  hexBinary: CheckSum
  NMTOKEN: Encoding ResourceUsage UID
  string: FileFormat MimeType Password UserFileName
  long: FileSize
  NMTOKENS: FileTemplate
  int: NPage SearchDepth
  OverwritePolicy: OverwritePolicy
  URL: URL
  > Disposition? NetworkHeader*
FillMark
  float: KnockoutBleed
  IDREFS: KnockoutRefs
  KnockoutSource: KnockoutSource!
  > MarkColor+
FitPolicy
  XYPair: ClipOffset MinGutter
  ExpansionPolicy: ExpansionPolicy
  GutterPolicy: GutterPolicy
  HorizontalGridDirection: HorizontalGridDirection
  RotatePolicy: RotatePolicy
  SizePolicy: SizePolicy
  VerticalGridDirection: VerticalGridDirection
FlateParams
  int: Predictor
Fold
  From: From!
  To: To!
  float: Travel
FolderProduction
  NMTOKEN: ModuleID
  ProductionType: ProductionType
FontParams
  NMTOKENS: AlwaysEmbed NeverEmbed
  boolean: EmbedAllFonts
  int: MaxSubsetPct
`;
