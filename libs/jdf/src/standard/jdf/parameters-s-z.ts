/** Facts of the open standard: parameter resources, S to Z. Notation: ../notation.ts. */
export const parametersSToZ = `
SaddleStitchingParams : Parameter{-1.0}
  DoubleList: StitchPositions
  StapleShape: StapleShape
  double: StitchWidth WireGauge
  string: WireBrand
  Integer: NumberOfStitches!
ScanParams : Parameter
  CompressionFilter: CompressionFilter
  double: DCTQuality
  rectangle: InputBox
  shortString: MountID
  Mounting: Mounting
  XYPair: OutputResolution OutputSize Magnification=1_1
  Integer: SplitDocuments BitDepth!
  OutputColorSpace: OutputColorSpace!
  > FileSpec*&
ScavengerArea : Parameter
  double: Rotation
  XYPair: Center! Size!
  > SeparationSpec*
ScreeningParams : Parameter
  boolean: AbortJobWhenScreenMatchingFails{-1.1} IgnoreSourceFile=true
  > ScreenSelector*
SeparationControlParams : Parameter
  > AutomatedOverPrintParams* TransferFunctionControl*&
Shape : Parameter
  rectangle: CutBox
  boolean: CutOut=false LockOrigins=false
  PDFPath: CutPath
  CutType: CutType
  Integer: DDESCutType=101
  string: Material
  double: ShapeDepth TeethPerDimension
  ShapeType: ShapeType!!
ShapeCuttingParams : Parameter
  DeliveryMode: DeliveryMode{1.3-}
  Integer: ModuleIndex{1.4-}
  SheetLay: SheetLay{1.3-}
  > DieLayout?&{1.3-} Shape*
ShapeCuttingParams/Shape
  rectangle: CutBox
  boolean: CutOut=false
  PDFPath: CutPath
  CutType: CutType=Cut
  string: Material
  double: ShapeDepth TeethPerDimension
  ShapeType: ShapeType!
ShapeDef : Parameter{1.4-} no-parts-in-root no-update
  double: Area ResourceWeight
  rectangle: CutBox
  shape: Dimensions FlatDimensions{1.5-}
  MediaDirection: FluteDirection GrainDirection
  MediaSide: MediaSide
  > ColorPool?&{1.5-} CutLines?:SeparationList{1.5-} FileSpec*&
    Media?& RuleLength*[root]{1.8-} Shape?&
ShapeDefProductionParams : Parameter{1.4-} no-parts-in-root no-update
  > ObjectModel*:ShapeDefProdParams/ObjectModel
    ShapeTemplate?:ShapeDefProdParams/ShapeTemplate
Sheet : Parameter{-1.2}
  string: Name
  rectangle: SurfaceContentsBox
  boolean: LockOrigins=false
  > InsertSheet*& Media?& MediaSource?&{-1.0} Surface*&
SheetOptimizingParams : Parameter{1.5-}
  GangPolicy: Policy{1.7-}
  > ConvertingConfig* GangElement+
SheetOptimizingParams/GangElement
  NMTOKENS: AssemblyIDs Operations
  boolean: CollapseBleeds
  string: CustomerID GroupCode JobID ProductID
  XYPair: Dimension NumColors NumberUp PageDimension
  dateTime: DueDate
  Integer: FillPriority MaxQuantity MinQuantity NPage OrderQuantity! PlacedQuantity Priority
  ID: GangElementID!
  MediaDirection: GrainDirection
  NMTOKEN: OneSheet
  > Media*& RunList*& SeparationListBack*:SeparationList SeparationListFront*:SeparationList
    StrippingParams*&
ShrinkingParams : Parameter
  duration: Duration
  double: Temperature
  ShrinkingMethod: ShrinkingMethod=ShrinkHot
SideSewingParams : Parameter{-1.0}
  DoubleList: NeedlePositions
  SewingPattern: SewingPattern
  ThreadMaterial: ThreadMaterial
  double: ThreadThickness Offset!
  string: ThreadBrand
  Integer: NumberOfNeedles!
SpinePreparationParams : Parameter
  double: FlexValue{-1.1} MillingDepth NotchingDepth NotchingDistance PullOutValue{-1.1} WorkingLength
    StartPosition=0
  NMTOKENS: Operations
  Integer: SealingTemperature{1.6-}
SpineTapingParams : Parameter
  double: HorizontalExcess HorizontalExcessBack{1.4-} StripLength TopExcess=0.0
  string: StripBrand StripColorDetails{1.4-}
  NamedColor: StripColor
  StripMaterial: StripMaterial
  > GlueApplication*&
StackingParams : Parameter
  IntegerList: LayerAmount UnderLays{1.3-}
  boolean: LayerLift{1.4-} LayerCompression{1.4-} Offset{-1.1} StackCompression{1.4-} Compensate=true
  Integer: MaxAmount MaxHeight{1.4-} MinAmount PreStackAmount{1.4-} StackAmount{1.7-} StandardAmount
    BundleDepth=0{1.4-}
  double: MaxWeight
  NMTOKENS: OutputBin{1.7-}
  PreStackMethod: PreStackMethod{1.4-}
  > Disjointing?{1.2-}
StaticBlockingParams : Parameter{1.4-} no-parts-in-root no-update no-identical
StitchingParams : Parameter
  double: Angle Offset StitchWidth WireGauge
  Integer: NumberOfStitches
  ReferenceEdge: ReferenceEdge{-1.1}
  StapleShape: StapleShape
  boolean: StitchFromFront{-1.1}
  DoubleList: StitchPositions
  StitchType: StitchType
  TightBackingStitchingParams: TightBacking{1.5-}
  string: WireBrand
  StitchOrigin: StitchOrigin=UntrimmedJogSide{1.4-}
StrappingParams : Parameter
  DoubleList: StrapPositions{1.3-}
  StrappingType: StrappingType!
StripBindingParams : Parameter
  string: Brand StripColorDetails{1.4-}
  double: Distance{-1.1} Length
  NamedColor: StripColor
  > HoleMakingParams?&{1.2-}
StrippingParams : Parameter{1.2-}
  string: AssemblyID{-1.2} SheetNameFormat{1.4-} SheetNameTemplate{1.4-}
  NMTOKENS: AssemblyIDs{1.3-}
  boolean: Automated{1.5-}
  NMTOKEN: GangElementID{1.5-}
  double: InnermostShingling{1.4-} OutermostShingling{1.4-}
  shortString: JobID
  IntegerList: SectionList
  SheetLay: SheetLay{1.7-}
  FeedSheetLay: FeedSheetLay{1.9-}
  Integer: StackDepth{1.4-}
  WorkStyle: WorkStyle
  > BinderySignature?& Device*& ExternalImpositionTemplate?&{1.3-}
    FitPolicy*{1.7-} Media*& Position* StripCellParams? StripMark*{1.3-}
StrippingParams/Position{1.2-}
  rectangle: AbsoluteBox{1.3-} RelativeBox
  NMTOKEN: BlockName{1.3-}
  double: MarginBottom MarginTop MarginLeft MarginRight
  Orientation: Orientation
StrippingParams/StripCellParams{1.2-}
  double: BleedFace BleedSpine BleedHead BleedFoot TrimFace Spine TrimHead TrimFoot FrontOverfold
    BackOverfold MillingDepth CutWidthHead CutWidthFoot MaskBleed{1.3-}
  XYPair: TrimSize Creep
  Sides: Sides
  string: MaskSeparation{1.3-}
  Mask: Mask{1.3-}
  > FitPolicy*{1.7-}
StrippingParams/StripMark{1.3-}
  double: AbsoluteHeight AbsoluteWidth FontSize RelativeHeight RelativeWidth
  Anchor: Anchor
  NMTOKEN: Font ID MarkName
  HorizontalFitPolicy: HorizontalFitPolicy
  MarkContext: MarkContext
  MarkSideName: MarkSide
  XYPair: Offset
  Integer: Ord
  Orientation: Orientation
  string: StripMarkDetails
  VerticalFitPolicy: VerticalFitPolicy
  > MarkColor* Position?:StrippingParams/Position JobField? RefAnchor*
Surface : Parameter{-1.2}
  rectangle: SurfaceContentsBox
  Side: Side!
  > ContentObject* MarkObject*
Surface/PlacedObject no-generic
  rectangle: ClipBox
  matrix: CTM! TrimCTM
  XYPair: HalfTonePhaseOrigin=0_0 TrimSize
  Integer: LayerID OrdID
  PDFPath: SourceClipPath
  PlacedObjType: Type
Surface/ContentObject : Surface/PlacedObject
  Integer: DocOrd Ord SetOrd
  string: OrdExpression
Surface/MarkObject : Surface/PlacedObject
  Integer: LayoutElementPageNum=0 Ord
  > CIELABMeasuringField*& ColorControlStrip*& CutMark*& DensityMeasuringField*& DeviceMark*
    DynamicField*:Surface/DynamicField IdentificationField*& JobField* LayoutElement*& RegisterMark*&
    ScavengerArea*&
Surface/DynamicField
  string: Format! InputField OrdExpression ReplaceField Template!
  Integer: Ord
  > DeviceMark*
ThreadSealingParams : Parameter
  boolean: BlindStitch
  ThreadMaterial: ThreadMaterial
  DoubleList: ThreadPositions
  double: ThreadLength ThreadStitchWidth
  Integer: SealingTemperature{-1.5}
ThreadSewingParams : Parameter
  ThreadMaterial: CastingMaterial CoreMaterial
  IntegerList: GlueLineRefSheets
  double: Offset ThreadThickness
  DoubleList: NeedlePositions
  Integer: NumberOfNeedles
  boolean: Sealing{-1.5} BlindStitch=false
  SewingPattern1: SewingPattern
  string: ThreadBrand
  > GlueLine*
Tile : Parameter
  rectangle: TrimBox{1.5-} ClipBox!
  matrix: CTM!
  > MarkObject*:Layout/MarkObject{1.4-} Media?&{1.2-}
    MediaSource?&{-1.1}
TransferCurve : Parameter
  string: Separation
  TransferFunction: Curve!
TransferCurvePool : Parameter
  > TransferCurveSet*
TransferCurvePool/TransferCurveSet
  matrix: CTM
  NMTOKEN: Name!
  > TransferCurve*&
TransferFunctionControl : Parameter
  TransferFunctionSource: TransferFunctionSource!
  > TransferCurvePool?&
TrapRegion : Parameter
  PDFPath: TrapZone
  IntegerRangeList: Pages!
  > TrappingParams?&
TrappingDetails : Parameter
  boolean: IgnoreFileParams{-1.3} Trapping{-1.1} DefaultTrapping=false
  Integer: TrappingType{-1.1}
  > TrappingOrder? TrappingParams?& ObjectResolution* TrapRegion*&
TrappingDetails/TrappingOrder
  > SeparationSpec*
TrappingParams : Parameter
  double: BlackColorLimit BlackDensityLimit BlackWidth ImageTrapWidth{1.2-} ImageTrapWidthY{1.2-}
    SlidingTrapLimit StepLimit TrapColorScaling TrapWidth TrapWidthY{1.2-} MinimumBlackWidth=0
  boolean: Enabled{-1.1} ImageInternalTrapping ImageMaskTrapping ImageToImageTrapping ImageToObjectTrapping
  string: HalftoneName
  Integer: ImageResolution
  ImageTrapPlacement: ImageTrapPlacement
  NMTOKEN: TrapEndStyle=Miter[root,inline] TrapJoinStyle=Miter[root,inline]
  TrapEndStyle: TrapEndStyle[part]
  TrapJoinStyle: TrapJoinStyle[part]
  > ColorantZoneDetails*
TrappingParams/ColorantZoneDetails
  string: Colorant!
  double: StepLimit TrapColorScaling
TrimmingParams : Parameter
  double: Width Height TrimmingOffset
  TrimmingType: TrimmingType{-1.1}
  ImagableSide: TrimCover=Both{1.3-}
VarnishingParams : Parameter{1.4-} no-identical
  Integer: ModuleIndex
  NMTOKEN: ModuleType
  VarnishArea: VarnishArea
  VarnishMethod: VarnishMethod
VerificationParams : Parameter
  IntegerRangeList: FieldRange{-1.4}
  string: InsertError{-1.4} InsertOK{-1.4}
  double: Tolerance
WebInlineFinishingParams : Parameter{1.3-}
  > FolderProduction*
WebInlineFinishingParams/FolderProduction
  Integer: FolderModuleIndex!
  ProductionType: ProductionType=NonCollect
WindingParams : Parameter{1.5-}
  NMTOKEN: Fixation
  Integer: Copies
  double: Diameter Length
WireCombBindingParams : Parameter
  string: Brand ColorDetails{1.4-}
  NamedColor: Color
  double: Diameter Distance{-1.1} Thickness
  WireCombMaterial: Material
  boolean: FlipBackCover=false
  WireCombShape: Shape=Single
  > HoleMakingParams?&{1.2-}
WrappingParams : Parameter
  WrappingKind: WrappingKind
`;
