/** Facts of the open standard, second generation: resources, E to Z. Notation: ../notation.ts. */
export const resourcesEToZ = `
EmbossingParams : SpecificResource
  NMTOKEN: ModuleID
  > Emboss+
EndSheetGluingParams : SpecificResource
  > Glue
ExposedMedia : SpecificResource
  IDREF: MediaRef!
  PlateType: PlateType
  Polarity: Polarity
  NMTOKEN: PunchType
  XYPair: Resolution
  > IdentificationField*
FeedingParams : SpecificResource
  > CollatingItem* Feeder*
FoldingParams : SpecificResource
  FoldCatalog: FoldCatalog
  NMTOKEN: FoldingDetails
  SheetLay: SheetLay
  > FileSpec? Crease* Cut* Fold* Perforate*
FontPolicy : SpecificResource
  NMTOKEN: PreferredFont!
  boolean: UseDefaultFont! UseFontEmulation!
GluingParams : SpecificResource
  string: GluingProductionID
  > Glue*
HeadBandApplicationParams : SpecificResource
  float: Length Width
  > Glue*
HoleMakingParams : SpecificResource
  > HolePattern+
ImageCompressionParams : SpecificResource
  > ImageCompression+
ImageEnhancementParams : SpecificResource
  > ImageEnhancementOp+
ImageSetterParams : SpecificResource
  float: AdvanceDistance RollCut
  XYPair: BurnOutArea
  EnumDeviceAxis: CenterAcross MirrorAround
  boolean: CutMedia ManualFeed
  Polarity: Polarity
Ink : SpecificResource
  NMTOKENS: InkType
  float: SpecificYield
  > Certification* IdentificationField*
InkZoneCalculationParams : SpecificResource
  rectangle: PrintableArea
  float: ZoneHeight ZoneWidth
  int: Zones ZonesY
  > Device?
InkZoneProfile : SpecificResource
  float: ZoneHeight ZoneWidth!
  FloatList: ZoneSettingsX! ZoneSettingsY
InsertingParams : SpecificResource
  int: FinishedPage
  InsertLocation: InsertLocation!
  Method: Method
  > Glue*
InterpretingParams : SpecificResource
  boolean: Center
  IDREF: FilmRef PaperRef PlateRef ProofPaperRef
  EnumDeviceAxis: MirrorAround
  Polarity: Polarity
  PrintQuality: PrintQuality
  XYPair: Scaling ScalingOrigin
  > FitPolicy? InterpretingDetails? ObjectResolution* PDFInterpretingParams?
JacketingParams : SpecificResource
  float: FoldingDistance FoldingWidth!
LabelingParams : SpecificResource
  NMTOKEN: Application
  Face: Face
  XYPair: Offset
  > FileSpec?
LaminatingParams : SpecificResource
  FloatList: GapList
  rectangle: LaminatingBox
  LaminatingMethod: LaminatingMethod
  NMTOKEN: ModuleID
  float: NipWidth Temperature
Layout : SpecificResource
  Anchor: Anchor
  boolean: Automated
  rectangle: ExpansionBox SurfaceContentsBox
  FeedSheetLay: FeedSheetLay
  IDREF: FilmRef PaperRef PlateRef ProofPaperRef
  float: InnermostShingling OutermostShingling
  int: MaxCollect MinCollect
  SheetLay: SheetLay
  WorkStyle: WorkStyle
  > Device* FileSpec? FitPolicy? PlacedObject* Position* SheetActivation? StripMark*
LayoutElementProductionParams : SpecificResource
  IDREFS: ContentRefs
  IDREF: ShapeDefRef
  > FileSpec?
LayoutShift : SpecificResource
  > ShiftPoint+
LooseBindingParams : SpecificResource
  BindingType2: BindingType!
  NMTOKEN: CoverMaterial
  > ChannelBindingDetails? CoilBindingDetails? CombBindingDetails? HolePattern* RingBindingDetails?
    ScrewBindingDetails? StripBindingDetails?
ManualLaborParams : SpecificResource
  NMTOKEN: LaborType!
Media : SpecificResource
  float: BackBrightness BackCIETint BackCIEWhiteness BackGlossValue BackOpticalBrightening Brightness
    CIETint CIEWhiteness CoreWeight GlossValue InnerCoreDiameter InsideLoss OpacityLevel OpticalBrightening
    OuterCoreDiameter OutsideGain ReliefThickness RollDiameter Thickness Weight
  Coating: BackCoating Coating
  NMTOKEN: BackCoatingDetail CoatingDetail Flute MediaTypeDetails PrintingTechnology SleeveInterlock
    StockType Texture
  ISOPaperSubstrate: BackISOPaperSubstrate ISOPaperSubstrate
  LabColor: BackLabColorValue LabColorValue
  TransferFunction: BackSpectrum Spectrum
  XYPair: Dimension ShrinkIndex
  MediaDirection: FluteDirection GrainDirection
  ImagableSide: ImagableSide
  NamedColor: MediaColorName
  string: MediaColorNameDetails MediaQuality
  int: MediaSetCount
  MediaType: MediaType!
  MediaUnit: MediaUnit
  EnumOpacity: Opacity
  PlateTechnology: PlateTechnology
  Polarity: Polarity
  Percentage: RecycledPercentage
  > Certification* ColorMeasurementConditions? HolePattern* IdentificationField* MediaLayers? TabDimensions?
MiscConsumable : SpecificResource
  NamedColor: Color
  string: ColorDetails
  NMTOKEN: Type! TypeDetails
  > Certification* IdentificationField*
NodeInfo : SpecificResource
  duration: CleanupDuration SetupDuration TotalDuration
  DueLevel: DueLevel
  dateTime: End FirstEnd FirstStart LastEnd LastStart Start
  int: JobPriority
  language: NaturalLang
  NMTOKEN: PersonalID StatusDetails
  NodeStatus: Status
  > GangSource* MISDetails?
PDLCreationParams : SpecificResource
  string: MimeType!
  > FontParams? PDFCreationDetails? PSCreationDetails?
Pallet : SpecificResource
  NMTOKEN: PalletType!
  XYPair: Size
  > IdentificationField*
PalletizingParams : SpecificResource
  IntegerList: LayerAmount
  float: MaxHeight MaxWeight
  XYPair: Overhang OverhangOffset
  NMTOKEN: Pattern
PerforatingParams : SpecificResource
  > Perforate+
PreflightParams : SpecificResource
  > FileSpec? PreflightTest*
PreflightReport : SpecificResource
  int: ErrorCount WarningCount
  > FileSpec? PreflightCheck*
Preview : SpecificResource
  Compensation: Compensation
  matrix: CTM
  PreviewFileType: PreviewFileType
  XYPair: Resolution Size
  > FileSpec?
PreviewGenerationParams : SpecificResource
  AspectRatio: AspectRatio
  XYPair: Resolution Size
PrintCondition : SpecificResource
  NMTOKENS: ColorantOrder
  NMTOKEN: Name!
  PrintQuality: PrintQuality
QualityControlParams : SpecificResource
  rectangle: Box
  Face: Position
  QualityBase: QualityBase
  NMTOKENS: QualityControlMethods
  int: SampleInterval
  Score: Severity
  NMTOKEN: SourceDeviceID
  duration: TimeInterval
  > BindingQualityParams? BindingQuality? ColorMeasurement? FileSpec(0-2) RegistrationQuality?
QualityControlResult : SpecificResource
  rectangle: Box
  dateTime: End Start
  int: Failed Measurements Passed
  MeasurementUsage[]: MeasurementUsage
  Face: Position
  NMTOKENS: QualityControlMethods
  IntegerRange: Sample
  Score: Severity
  NMTOKEN: SourceDeviceID
  > BindingQualityMeasurement* BindingQuality? ColorMeasurement? FileSpec? Inspection? RegistrationQuality?
RasterReadingParams : SpecificResource
  boolean: Center
  IDREF: FilmRef PaperRef PlateRef ProofPaperRef
  EnumDeviceAxis: MirrorAround
  Polarity: Polarity
  XYPair: Scaling ScalingOrigin
  > FitPolicy?
RenderingParams : SpecificResource
  int: BandHeight BandWidth ColorantDepth
  BandOrdering: BandOrdering
  boolean: Interleaved
  string: MimeType
  > AutomatedOverPrintParams? ObjectResolution* TIFFFormatParams?
RunList : SpecificResource
  EnumAutomation: Automation
  PDFPath: ClipPath
  IDREFS: ContentRefs
  IntegerList: Docs DocPages
  boolean: EndOfDocument EndOfSet
  int: FinishedPages LogicalPage NPage
  OrdType: OrdType
  IntegerRange: Pages Sets
  rectangle: SourceBleedBox SourceClipBox SourceMediaBox SourceTrimBox
  > ByteMap? FileSpec? MetadataMap*
ScreeningParams : SpecificResource
  boolean: IgnoreSourceFile
  > ScreenSelector+
SeparationControlParams : SpecificResource
  > AutomatedOverPrintParams?
ShapeCuttingParams : SpecificResource
  DeliveryMode: DeliveryMode
  IDREF: DieLayoutRef
  NMTOKEN: ModuleID
  SheetLay: SheetLay
  > Shape*
ShapeDef : SpecificResource
  float: Area ResourceWeight
  rectangle: CutBox
  NMTOKENS: CutLines
  shape: Dimensions FlatDimensions
  MediaDirection: FluteDirection GrainDirection
  IDREF: MediaRef
  Side: MediaSide
  > FileSpec* RuleLength* Shape*
ShapeDefProductionParams : SpecificResource
  > ObjectModel* ShapeTemplate?
SheetOptimizingParams : SpecificResource
  Policy2: Policy
  > ConvertingConfig* GangElement+
SheetOptimizingReport : SpecificResource
  Use: AreaUse! BackUse PrintableArea PrintedWaste UniqueUse VolumeUse!
  duration: DateSpread
  int: OrderQuantity Positions UniquePositions WasteQuantity
  > FileSpec?
ShrinkingParams : SpecificResource
  ShrinkingMethod: ShrinkingMethod
  float: Temperature
SpinePreparationParams : SpecificResource
  float: MillingDepth NotchingDepth NotchingDistance StartPosition WorkingLength
  NMTOKENS: Operations
  int: SealingTemperature
SpineTapingParams : SpecificResource
  float: HorizontalExcess HorizontalExcessBack StripLength TopExcess
  > Glue*
StackingParams : SpecificResource
  BundleType: BundleType
  boolean: Compensate LayerCompression LayerLift StackCompression
  IntegerList: LayerAmount UnderLays
  int: MaxAmount MaxHeight MinAmount PreStackAmount StackAmount StandardAmount
  float: MaxWeight
  NMTOKENS: OutputBin
  PreStackMethod: PreStackMethod
  > Disjointing?
StitchingParams : SpecificResource
  float: Angle Offset StitchWidth WireGauge
  int: NumberOfStitches
  StapleShape: StapleShape
  StitchOrigin: StitchOrigin
  FloatList: StitchPositions
  StitchType: StitchType
  TightBacking: TightBacking
  > FileSpec?
StrappingParams : SpecificResource
  StrappingType: StrappingType!
  FloatList: StrapPositions
ThreadSealingParams : SpecificResource
  boolean: BlindStitch
  float: ThreadLength ThreadStitchWidth
  FloatList: ThreadPositions
ThreadSewingParams : SpecificResource
  boolean: BlindStitch
  FloatList: NeedlePositions
  int: NumberOfNeedles
  float: Offset ThreadThickness
  SewingPattern: SewingPattern
Tool : SpecificResource
  string: SerialNumber
  NMTOKEN: ToolType
  > IdentificationField*
TransferCurve : SpecificResource
  matrix: CTM
  TransferFunction: Curve
TrappingParams : SpecificResource
  boolean: ImageInternalTrapping ImageMaskTrapping ImageToImageTrapping ImageToObjectTrapping
  float: MinimumBlackWidth StepLimit TrapColorScaling
  XYPair: TrapWidth
TrimmingParams : SpecificResource
  float: Height TrimmingOffset Width
  TrimCover: TrimCover
UsageCounter : SpecificResource
  NMTOKENS: CounterTypes
  Scope2: Scope!
VarnishingParams : SpecificResource
  NMTOKEN: ModuleID
  ModuleType: ModuleType
  VarnishArea: VarnishArea
  VarnishMethod: VarnishMethod
VerificationParams : SpecificResource
  float: Tolerance
  > FileSpec?
VerificationResult : SpecificResource
  int: Accepted Rejected Unknown
  > FileSpec(0-4)
WebInlineFinishingParams : SpecificResource
  > FolderProduction* ProductionPath?
WindingParams : SpecificResource
  int: Copies
  float: Diameter Length
  NMTOKEN: Fixation
WrappingParams : SpecificResource
  WrappingKind: WrappingKind!
`;
