/** Facts of the open standard: parameter resources, H to L. Notation: ../notation.ts. */
export const parametersHToL = `
HeadBandApplicationParams : Parameter
  string: BottomBrand BottomColorDetails TopBrand TopColorDetails
  NamedColor: BottomColor TopColor
  double: BottomLength TopLength Width
  StripMaterial: StripMaterial
  > GlueLine*
HoleList : Parameter{1.2-}
  > Hole+ HoleLine+[root]
HoleMakingParams : Parameter
  XYPair: Center Extent
  IntegerList: HoleCount{1.2-}
  HoleReferenceEdge: HoleReferenceEdge{-1.1}
  HoleShape: Shape
  CenterReference: CenterReference=TrailingEdge
  HoleType[]: HoleType!
  > Hole* HoleLine* RegisterMark?&
IDPrintingParams : Parameter{-1.0}
  XYPair: IPPVersion
  NMTOKEN: OutputBin
  PageDelivery: PageDelivery
  PrintQuality: PrintQuality
  boolean: SheetCollate IDPAttributeFidelity=false
  language: AttributesNaturalLang=US
  Integer: IPPJobPriority=50
  > Cover* IDPFinishing?:IDPrintingParams/Finishing
    IDPLayout?:IDPrintingParams/Layout JobSheet* MediaIntent?& MediaSource?&
IDPrintingParams/Cover
  boolean: BackSide=false FrontSide=false
  CoverType: CoverType=Front
  > IDPFinishing*:IDPrintingParams/Finishing IDPLayout*:IDPrintingParams/Layout MediaIntent*& MediaSource*&
IDPrintingParams/Finishing
  IntegerList: Finishings
  > IDPFolding*:IDPrintingParams/Folding IDPHoleMaking*:IDPrintingParams/HoleMaking
    IDPStitching*:IDPrintingParams/Stitching IDPTrimming*:IDPrintingParams/Trimming
IDPrintingParams/JobSheet
  NMTOKEN: SheetFormat=Standard
  IDPParamsJobSheetOccurrence: SheetOccurrence
  IDPParamsJobSheetType: SheetType
  > IDPFinishing*:IDPrintingParams/Finishing IDPLayout*:IDPrintingParams/Layout MediaIntent*& MediaSource*&
IDPrintingParams/Layout
  double: Border=0 Rotate=0
  PortraitOrLandscape: FinishedPageOrientation=Portrait
  DoubleRangeList: ForceFrontSide
  XYPair: NumberUp
  PresentationDirection: PresentationDirection
  Sides4: Sides=OneSided
  > ImageShift*:IDPrintingParams/ImageShift
IDPrintingParams/Folding
  > FoldingParams*&
IDPrintingParams/HoleMaking
  > HoleMakingParams*&
IDPrintingParams/ImageShift
  PositionX: PositionX=None
  PositionY: PositionY=None
  Integer: ShiftX ShiftY ShiftXSide1 ShiftXSide2 ShiftYSide1 ShiftYSide2
IDPrintingParams/Stitching
  IDPParamsStitchingPosition: StitchingPosition
  IDPParamsStitchingRefEdge: StitchingReferenceEdge
  > StitchingParams*&
IDPrintingParams/Trimming
  > TrimmingParams*&
IdentificationField : Parameter
  rectangle: BoundingBox
  Encoding: Encoding
  NMTOKEN: EncodingDetails PurposeDetails{1.3-}
  regExp: Format
  matrix: Orientation
  Integer: Page
  Position: Position
  Purpose: Purpose
  string: Value ValueFormat{1.3-} ValueTemplate{1.3-}
  > BarcodeDetails?{1.3-} ExtraValues?{1.3-} MetadataMap*[root]{1.5-}
IdentificationField/BarcodeDetails
  NMTOKEN: BarcodeVersion ErrorCorrectionLevel
  Integer: XCells YCells
IdentificationField/ExtraValues
  NMTOKEN: Usage!{1.3-}
  string: Value!{1.3-}
ImageCompressionParams : Parameter
  > ImageCompression*
ImageCompressionParams/ImageCompression
  boolean: AntiAliasImages=false AutoFilterImages=true ConvertImagesToIndexed DownsampleImages=false
    EncodeColorImages EncodeImages=false
  double: DCTQuality=0 ImageDownsampleThreshold=2.0 ImageResolution
  NMTOKEN: ImageAutoFilterStrategy ImageFilter
  Integer: ImageDepth JPXQuality
  ImageDownsampleType: ImageDownsampleType
  ImageType: ImageType!
  > CCITTFaxParams* DCTParams* JBIG2Params* JPEG2000Params* LZWParams*
ImageCompressionParams/ImageCompression/CCITTFaxParams
  boolean: Uncompressed=false EndOfLine EncodedByteAlign EndOfBlock
  Integer: K=0
ImageCompressionParams/ImageCompression/DCTParams
  SourceCSs[]: SourceCSs
  IntegerList: HSamples VSamples
  double: QFactor=1.0
  DoubleList: QuantTable HuffTable
  ColorTransform: ColorTransform=Automatic
ImageCompressionParams/ImageCompression/JBIG2Params
  boolean: JBIG2Lossless
ImageCompressionParams/ImageCompression/JPEG2000Params
  Integer: CodeBlockSize LayersPerTile=1 NumResolutions
  DoubleList: LayerRates
  ProgressionOrder: ProgressionOrder
  XYPair: TileSize
ImageCompressionParams/ImageCompression/FlateParams
  Integer: Effort Predictor=1
ImageCompressionParams/ImageCompression/LZWParams
  Integer: EarlyChange=1 Predictor=1
ImageEnhancementParams : Parameter{1.5-}
  double: AdvanceDistance[part] NonPrintableMarginBottom[part] NonPrintableMarginLeft[part]
    NonPrintableMarginRight[part] NonPrintableMarginTop[part] RollCut[part]
  XYPair: BurnOutArea[part] Resolution[part]
  CenterAcross: CenterAcross[part] MirrorAround[part]
  boolean: CutMedia[part] ManualFeed[part] Punch[part]
  string: PunchType[part]
  WorkStyle: SourceWorkStyle[part]
  TransferFunction: TransferCurve[part]
  Polarity: Polarity[part]
  Sides2: Sides[part]
  > ImageEnhancementOp*[root,inline]
ImageEnhancementParams/ImageEnhancementOp
  NMTOKENS: ObjectTags
  NMTOKEN: Operation!
  string: OperationDetails
  SourceObject[]: SourceObjects
ImageReplacementParams : Parameter
  NMTOKEN: ImagePreScanStrategy{1.2-}
  double: MaxResolution{-1.0} MinResolution
  ResolutionReductionStrategy: ResolutionReductionStrategy{-1.0}
  NMTOKENS: IgnoreExtensions
  Integer: MaxSearchRecursion
  ImageReplacementStrategy: ImageReplacementStrategy!
  > FileSpec*& SearchPath*:TextElement{-1.0}
ImageSetterParams : Parameter
  double: AdvanceDistance NonPrintableMarginBottom{1.3-} NonPrintableMarginLeft{1.3-}
    NonPrintableMarginRight{1.3-} NonPrintableMarginTop{1.3-} RollCut
  XYPair: BurnOutArea Resolution
  CenterAcross: CenterAcross MirrorAround=None
  boolean: CutMedia ManualFeed{1.2-} Punch{-1.2}
  string: PunchType{-1.2}
  WorkStyle: SourceWorkStyle{1.2-}
  TransferFunction: TransferCurve
  Polarity: Polarity=Positive
  Sides2: Sides=OneSidedFront{1.2-}
  > Media?& FitPolicy?{1.2-}
InkZoneCalculationParams : Parameter
  DoubleList: FountainPositions
  rectangle: PrintableArea
  double: ZoneWidth ZoneHeight
  Integer: Zones ZonesY
  > Device?&{1.2-}
InkZoneProfile : Parameter
  double: ZoneHeight ZoneWidth!
  DoubleList: ZoneSettingsY ZoneSettingsX!
InsertSheet : Parameter
  IncludeInBundleItem: IncludeInBundleItem{1.2-}
  boolean: IsWaste
  NMTOKENS: MarkList
  NMTOKEN: SheetFormat
  SheetUsage: Usage{-1.0} SheetUsage!
  SheetType: SheetType!
  > RunList?& Layout?&{1.3-} Sheet?&{-1.2}
InsertingParams : Parameter
  XYPair: SheetOffset{-1.0}
  Integer: FinishedPage{1.2-}
  Location: InsertLocation!
  Method: Method=BlowIn
  > GlueLine*
InterpretedPDLData : Parameter
InterpretingParams : Parameter
  boolean: FitToPage{-1.0} Center=false
  XYPair: Poster{-1.4} PosterOverlap{-1.4} Scaling ScalingOrigin
  MirrorAround: MirrorAround=None
  Polarity: Polarity=Positive
  PrintQuality: PrintQuality=Normal
  > ObjectResolution* FitPolicy? InterpretingDetails* Media*&
    PDFInterpretingParams?
InterpretingParams/InterpretingDetails{1.5-}
  double: MinLineWidth=1.0
InterpretingParams/PDFInterpretingParams
  boolean: EmitPDFBG=true EmitPDFHalftones=true EmitPDFTransfers=true EmitPDFUCR=true HonorPDFOverprint=true
    ICCColorAsDeviceColor=false PrintPDFAnnotations=false PrintTrapAnnotations=false{1.3-}
  OCGDefault: OCGDefault=FromPDF{1.3-}
  NMTOKEN: OCGIntent{1.3-} OCGProcess{1.3-}
  double: OCGZoom=1.0{1.3-} TransparencyRenderingQuality
  > OCGControl*{1.3-} ReferenceXObjParams?{1.4-}
InterpretingParams/PDFInterpretingParams/ReferenceXObjParams
  NMTOKEN: Mode!
  > FileSpec*&
JacketingParams : Parameter
  double: FoldingDistance{1.4-} FoldingWidth!
LabelingParams : Parameter
  NMTOKEN: Application
  matrix: CTM{-1.5}
  XYPair: Offset{1.6-}
  Face: Position
  > FileSpec*{1.5-}
LaminatingParams : Parameter
  string: AdhesiveType HardenerType
  DoubleList: GapList
  rectangle: LaminatingBox
  LaminatingMethod: LaminatingMethod
  double: NipWidth{1.3-} Temperature
  Integer: ModuleIndex{1.4-}
Layout : Parameter
  string: Name{-1.3} SheetNameFormat{1.4-} SheetNameTemplate{1.4-}
  BaseOrdReset: BaseOrdReset{1.4-}
  Integer: MaxCollect{1.4-} MaxOrd{-1.3} MinCollect{1.4-} MaxDocOrd{-1.3} MaxSetOrd{-1.3}
  IntegerRangeList: OrdsConsumed{1.4-}
  WorkStyle: SourceWorkStyle{1.3-}
  rectangle: SurfaceContentsBox{1.3-}
  TemplateType: TemplateType
  boolean: Automated=false LockOrigins=false{1.3-}
  OrdReset: OrdReset=Continue{1.4-} SheetCountReset=Continue{1.4-}
  > ContentObject* InsertSheet*& LayerList?
    LogicalStackParams?[root]{1.4-} MarkObject* Media*& MediaSource?&{-1.0} PageCondition*{1.4-}
    SheetCondition*[root,part]{1.4-} Signature*{-1.2} TransferCurvePool?&
Layout/LayerList
  > LayerDetails*:Layout/LayerDetails
Layout/LayerDetails
  string: Name
Layout/Signature
  string: Name
  > InsertSheet*& Media*& MediaSource*& Sheet*&
Layout/PageCondition
  IntegerList: RestrictedContentObjects!
  Condition: Condition
  > RunList*& Part*
Layout/PlacedObject no-generic
  Anchor: Anchor
  NMTOKENS: AssemblyIDs
  rectangle: ClipBox
  string: ClipBoxFormat ClipBoxTemplate CompensationCTMFormat CompensationCTMTemplate
  PDFPath: ClipPath SourceClipPath TrimClipPath
  matrix: CTM! TrimCTM
  XYPair: HalfTonePhaseOrigin=0_0 TrimSize
  Integer: LayerID LogicalStackOrd OrdID
  PlacedObjType: Type
Layout/ContentObject : Layout/PlacedObject
  Integer: DocOrd Ord SetOrd
  ID: ID
  string: OrdExpression
Layout/MarkObject : Layout/PlacedObject
  IDREF: ContentRef
  Integer: LayoutElementPageNum Ord
  > CIELABMeasuringField*& ColorControlStrip*& CutMark*& DensityMeasuringField*& DeviceMark*
    DynamicField*:Layout/DynamicField FillMark*:Layout/FillMark IdentificationField*& JobField*
    LayoutElement*& MarkActivation* RefAnchor* RegisterMark*& ScavengerArea*&
Layout/DynamicField
  string: Format! InputField OrdExpression ReplaceField Template!
  Integer: Ord
  > DeviceMark*
Layout/FillMark
  double: KnockoutBleed
  IDREFS: KnockoutRefs
  KnockoutSource: KnockoutSource!
  > MarkColor*
Layout/FillMark/FillColor
  string: Name!
  double: Tint! KnockoutBleed
Layout/MarkObject/MarkActivation
  MarkActivationContext: Context!
  IntegerRangeList: Index!
Layout/LogicalStackParams
  Integer: MaxStackDepth
  Restrictions: Restrictions=None
  > Stack*
Layout/LogicalStackParams/Stack
  Integer: LogicalStackOrd!
  LogicalStackSequence: LogicalStackSequence=SheetIndex
Layout/SheetCondition
  SheetCondition: Condition
  > RunList*&
LayoutElement : Parameter
  PDFPath: ClipPath
  IDREFS: ContentDataRefs{1.4-}
  ElementType: ElementType
  boolean: HasBleeds IsBlank{1.2-} IsPrintable IsTrapped Template IgnorePDLCopies=false
    IgnorePDLImposition=true
  IntegerRangeList: PageListIndex{1.2-}
  XPath: SetLevel{1.4-}
  rectangle: SourceBleedBox SourceClipBox SourceMediaBox{1.4-} SourceTrimBox
  > ColorPool?&{1.2-} ContentList*&{1.4-} Dependencies?{1.2-}
    ElementColorParams?&{1.2-} FileSpec?& ImageCompressionParams?&{1.2-} PageList?&{1.2-}
    ScreeningParams?&{1.2-} SeparationSpec*
LayoutElement/Dependencies
  > LayoutElement*&
LayoutElementProductionParams : Parameter{1.3-}
  > ActionPool?{1.4-} FileSpec?&{1.5-} LayoutElementPart*
    ShapeDef?&{1.4-} TestPool?{1.4-}
LayoutElementProductionParams/LayoutElementPart{1.3-}
  ID: ID{1.4-}
  > BarcodeProductionParams? ColorCorrectionParams*&{1.5-} ImageCompressionParams*&{1.5-}
    ImageEnhancementParams*&{1.5-} LayoutElement?&{1.4-} PositionObj?{1.4-}
LayoutElementProductionParams/LayoutElementPart/BarcodeProductionParams{1.3-}
  > BarcodeReproParams? IdentificationField&
LayoutElementProductionParams/LayoutElementPart/PositionObj{1.4-}
  Anchor: Anchor
  matrix: CTM
  IntegerRangeList: PageRange
  PositionPolicy: PositionPolicy RotationPolicy SizePolicy
  XYPair: RelativeSize Size
  > RefAnchor?
LayoutPreparationParams : Parameter
  BindingEdge: BindingEdge{1.3-}
  NMTOKENS: BackMarkList FrontMarkList
  XYPair: CreepValue Gutter GutterMinimumLimit{1.3-} ImplicitGutter{1.3-} ImplicitGutterMinimumLimit{1.3-}
    NumberUp StepDocs
  string: FoldCatalog
  IntegerList: HorizontalCreep VerticalCreep
  ePresentationDirection1_: PresentationDirection
  Integer: StackDepth
  StepRepeat: StepRepeat
  rectangle: SurfaceContentsBox
  FinishingOrder: FinishingOrder=GatherFold
  Orientation: FoldCatalogOrientation=Rotate0{1.3-}
  NMTOKEN: PageDistributionScheme=Sequential PageOrder=Reader
  Rotate: Rotate=Rotate0
  Sides2: Sides=OneSidedFront
  > ImageShift? InsertSheet*& DeviceMark?
    ExternalImpositionTemplate?&{1.3-} FitPolicy? JobField* Media?& PageCell?
LayoutPreparationParams/PageCell
  double: Border
  rectangle: ClipBox
  NMTOKENS: MarkList
  Rotate: Rotate=Rotate0
  XYPair: TrimSize
  > Color?& DeviceMark? FitPolicy? ImageShift?:LayoutPreparationParams/ImageShift
LayoutPreparationParams/ImageShift
  ImageShiftPosition1: PositionX
  ImageShiftPosition2: PositionY
  XYPair: ShiftBack ShiftFront=0_0
LayoutShift : Parameter{1.4-}
  > ShiftPoint+
LayoutShift/ShiftPoint
  matrix: CTM!
  XYPair: Position!
LongitudinalRibbonOperationParams : Parameter{-1.0}
  > LongFold* LongGlue* LongPerforate* LongSlit*
LongitudinalRibbonOperationParams/LongFold
  DoubleList: WorkingList=0_1000000000
  double: XOffset!
LongitudinalRibbonOperationParams/LongGlue
  string: GlueBrand
  GlueType: GlueType
  double: LineWidth XOffset!
  Integer: MeltingTemperature
  DoubleList: WorkingList=0_1000000000
LongitudinalRibbonOperationParams/LongPerforate
  Integer: TeethPerDimension
  DoubleList: WorkingList=0_1000000000
  double: XOffset!
LongitudinalRibbonOperationParams/LongSlit
  DoubleList: WorkingList=0_1000000000
  double: XOffset!
`;
