/** Facts of the open standard: elements inside resources, A to L. Notation: ../notation.ts. */
export const subElementsAToL = `
AutomatedOverPrintParams
  boolean: KnockOutCMYKWhite=false OverPrintBlackLineArt=false OverPrintBlackText=false
  double: LineArtBlackLevel TextBlackLevel=1
  Integer: TextSizeThreshold
BarcodeCompParams
  CompensationProcess: CompensationProcess!
  double: CompensationValue
BarcodeReproParams
  BearerBars: BearerBars
  double: Height Magnification ModuleHeight ModuleWidth Ratio
  Masking: Masking
  > BarcodeCompParams*
BindingIntentAdhesiveBinding{-1.0}
  > Scoring?:EnumerationSpan SpineGlue?:EnumerationSpan TapeBinding?:OptionSpan
BindingIntentAdhesiveNote{1.6-}
  > GlueLine?
BindingIntentBookCase{-1.0}
  > HeadBands?:OptionSpan Shape?:EnumerationSpan Thickness?:NumberSpan
BindingIntentChannelBinding
  > ChannelBrand?:StringSpan{1.3-} Cover?:OptionSpan Thickness?:NumberSpan
BindingIntentCoilBinding
  > CoilBrand?:StringSpan{1.3-} CoilMaterial?:EnumerationSpan HoleList?{1.2-}
    HoleType?:EnumerationSpan{1.6-}
BindingIntentEdgeGluing
  > EdgeGlue?:EnumerationSpan
BindingIntentHardCoverBinding
  > BlockThreadSewing?:OptionSpan CoverStyle?:NameSpan{1.3-} EndSheets?:OptionSpan HeadBands?:OptionSpan
    HeadBandColor?:EnumerationSpan HeadBandColorDetails*:StringSpan{1.4-} Jacket?:EnumerationSpan
    JacketFoldingWidth?:NumberSpan{1.3-} JapanBind?:OptionSpan SpineBrushing?:OptionSpan
    SpineFiberRoughing?:OptionSpan SpineGlue?:EnumerationSpan SpineLevelling?:OptionSpan
    SpineMilling?:OptionSpan SpineNotching?:OptionSpan SpineSanding?:OptionSpan SpineShredding?:OptionSpan
    StripMaterial?:EnumerationSpan TightBacking?:EnumerationSpan Thickness?:NumberSpan RegisterRibbon*&
BindingIntentPlasticCombBinding
  > CombBrand?:StringSpan{1.3-} PlasticCombType?:NameSpan HoleList?{1.2-} HoleType?:EnumerationSpan{1.6-}
BindingIntentRingBinding
  > BinderBrand?:StringSpan{1.3-} BinderMaterial?:NameSpan HoleType?:EnumerationSpan
    RingDiameter?:NumberSpan RingMechanic?:OptionSpan RingShape?:NameSpan RingSystem?:NameSpan{-1.0}
    RivetsExposed?:OptionSpan ViewBinder?:NameSpan
BindingIntentSaddleStitching
  > StapleShape?:EnumerationSpan{1.6-} StitchNumber?:IntegerSpan
BindingIntentSideSewing
BindingIntentSideStitching
  > StapleShape?:EnumerationSpan{1.6-} StitchNumber?:IntegerSpan{1.2-}
BindingIntentSoftCoverBinding
  > BlockThreadSewing?:OptionSpan EndSheets?:OptionSpan{1.3-} FoldingWidth?:NumberSpan{1.3-}
    FoldingWidthBack?:NumberSpan{1.3-} GlueProcedure?:EnumerationSpan Scoring?:EnumerationSpan
    SpineBrushing?:OptionSpan SpineFiberRoughing?:OptionSpan SpineGlue?:EnumerationSpan
    SpineLevelling?:OptionSpan SpineMilling?:OptionSpan SpineNotching?:OptionSpan SpineSanding?:OptionSpan
    SpineShredding?:OptionSpan
BindingIntentStripBinding
  > HoleList?{1.2-} HoleType?:EnumerationSpan{1.6-}
BindingIntentTabs
  Integer: TabBanks=1 TabCount{1.4-} TabsPerBank
  > TabBrand?:StringSpan{1.3-} TabExtensionDistance?:NumberSpan TabExtensionMylar?:OptionSpan
    TabBindMylar?:OptionSpan TabBodyCopy?:OptionSpan TabMylarColor?:EnumerationSpan
    TabMylarColorDetails*:StringSpan{1.4-}
BindingIntentTape
  > TapeColor?:EnumerationSpan{-1.3}
BindingIntentThreadSealing
BindingIntentThreadSewing
  > Sealing?:OptionSpan
BindingIntentWireCombBinding
  > WireCombBrand?:StringSpan{1.3-} WireCombMaterial?:EnumerationSpan WireCombShape?:NameSpan
    HoleList?{1.2-} HoleType?:EnumerationSpan{1.6-}
Certification{1.6-}
  string: Claim Identifier
  NMTOKEN: Organization
ColorCorrectionOp
  double: AdjustContrast{1.2-} AdjustCyanRed{1.2-} AdjustHue{1.2-} AdjustLightness{1.2-}
    AdjustMagentaGreen{1.2-} AdjustSaturation{1.2-} AdjustYellowBlue{1.2-}
  NMTOKENS: ObjectTags{1.4-}
  SourceObject[]: SourceObjects=All
  > FileSpec*&{1.2-}
ColorMeasurement
  > ColorControlStrip?
ColorSpaceConversionOp
  boolean: BlackPointCompensation{1.8-} IgnoreEmbeddedICC{-1.3} PreserveBlack=false RGBGray2Black=false
  NMTOKEN: BlackPointCompensationDetails{1.8-}
  NMTOKENS: ObjectTags{1.4-}
  Operation: Operation
  RenderingIntent1: RenderingIntent=ColorSpaceDependent SourceRenderingIntent{1.2-}
  double: RGBGray2BlackThreshold=1{1.2-}
  SourceCSs: SourceCS!
  SourceObject[]: SourceObjects=All
  > DeviceNSpace?{1.2-} FileSpec*& ScreenSelector* SeparationSpec*{1.2-}
ConvertingConfig{1.4-}
  double: MarginBottom MarginLeft MarginRight MarginTop
  DoubleRange: SheetHeight SheetWidth
  > CutBlock*{1.7-} Device?& Media?&{1.5-}
CostCenter
  string: CostCenterID! Name
Crease : Resource.inline
  double: Depth{1.2-} Travel{1.2-1.5}
  XYPair: RelativeStartPosition{1.2-} RelativeWorkingPath{1.2-} StartPosition WorkingPath
  RelativeTravel: RelativeTravel{1.2-1.5}
  WorkingDirection: WorkingDirection
Cut : Resource.inline
  double: CutWidth{1.4-}
  NMTOKEN: LowerRibbonName{1.5-} UpperRibbonName{1.5-}
  XYPair: RelativeStartPosition{1.2-} RelativeWorkingPath{1.2-} StartPosition WorkingPath
  WorkingDirection: WorkingDirection
DeviceMark
  Anchor: Anchor{1.4-}
  NMTOKEN: Font
  double: FontSize
  HorizontalFitPolicy: HorizontalFitPolicy{1.4-}
  MarkJustification: MarkJustification{-1.3}
  XYPair: MarkOffset{-1.3}
  MarkOrientation: MarkOrientation
  MarkPosition: MarkPosition{-1.3}
  VerticalFitPolicy: VerticalFitPolicy{1.4-}
  > BarcodeReproParams*{1.4-}
DeviceNSpace
  Integer: N!
  string: Name
  > SeparationSpec*
Disjointing
  Integer: Number OffsetAmount
  XYPair: Offset
  DisjointingOffsetDirection: OffsetDirection
  NMTOKEN: OffsetUnits{1.5-}
  double: Overfold{-1.0}
  > IdentificationField* InsertSheet?&
Disposition{1.2-}
  DispositionAction: DispositionAction=Delete
  Usage: DispositionUsage
  duration: ExtraDuration MinDuration
  Integer: Priority=0
  dateTime: Until
Event{1.2-}
  NMTOKEN: EventID!
  string: EventValue
FitPolicy
  XYPair: ClipOffset MinGutter
  FitPolicyGutterPolicy: GutterPolicy=Fixed
  FitPolicyRotatePolicy: RotatePolicy
  FitPolicySizePolicy: SizePolicy
Fold
  From: From!
  RelativeTravel: RelativeTravel
  To: To!
  double: Travel
FoldOperation restricted no-generic
GangSource{1.6-}
  NMTOKEN: AssemblyID
  Integer: Copies!
  string: JobID!
GeneralID{1.3-}
  GeneralIDDataType: DataType{1.4-}
  NMTOKEN: IDUsage!
  string: IDValue!
GlueLine
  boolean: AreaGlue=false
  string: GlueBrand
  double: GlueLineWidth
  GlueType: GlueType
  XYPair: GluingPattern RelativeStartPosition RelativeWorkingPath StartPosition WorkingPath
  Integer: MeltingTemperature
Hole
  XYPair: Center! Extent!
  NMTOKEN: Reinforcement
  HoleShape: Shape!
HoleLine
  double: Pitch!
  > Hole*
JobField
  string: JobFormat JobTemplate OperatorText UserText
  NMTOKENS: ShowList
  > DeviceMark*
Location : Resource.inline
  string: LocationName
  shortString: LocID
  > SourceResource* QualityControlResult*& Address*&
`;
