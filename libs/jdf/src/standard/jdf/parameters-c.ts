/** Facts of the open standard: parameter resources, C. Notation: ../notation.ts. */
export const parametersC = `
CIELABMeasuringField : Parameter
  DensityStandard: DensityStandard{-1.0}
  double: Diameter Tolerance
  NMTOKEN: Light{-1.0}
  Integer: Observer{-1.0}
  DoubleList: Percentages ScreenRuling
  string: ScreenShape Setup{-1.0}
  XYPair: Center!
  LabColor: CIELab!
  > ColorMeasurementConditions?&
CaseMakingParams : Parameter
  double: BottomFoldIn CoverWidth FrontFoldIn TopFoldIn Height JointWidth SpineWidth
  NMTOKEN: CornerType
  > GlueLine?
CasingInParams : Parameter
  double: CaseRadius CoverBoardWidth{1.5-} SpineBoardWidth{1.5-}
  > GlueApplication*&{1.4-} GlueLine*{-1.3}
ChannelBindingParams : Parameter
  string: Brand ClampColorDetails{1.4-}
  NamedColor: ClampColor
  double: ClampD
  shape: ClampSize
  boolean: ClampSystem=false
CoilBindingParams : Parameter
  string: Brand ColorDetails{1.4-}
  NamedColor: Color
  double: Diameter Shift{-1.1} Thickness
  Material: Material
  boolean: Tucked=false
  > HoleMakingParams?&{1.2-}
CollectingParams : Parameter
Color : Parameter
  string: ActualColorName{1.3-} ColorBook ColorBookEntry ColorBookPrefix ColorBookSuffix ColorDetails{1.4-}
    ColorTypeDetails{1.5-} MediaType Name!
  CMYKColor: CMYK
  NamedColor: ColorName
  ColorType: ColorType
  double: Density{1.2-} Gray{1.4-} NeutralDensity
  LabColor: Lab
  NMTOKEN: PrintingTechnology{1.5-}
  hexBinary: RawName{1.2-}
  TransferFunction: Spectrum{1.7-}
  sRGBColor: sRGB
  boolean: UsePDLAlternateCS{-1.1}
  MappingSelection: MappingSelection=UsePDLValues{1.2-}
  > ColorMeasurementConditions?& FileSpec*& DeviceNColor*
    PrintConditionColor*{1.2-} TransferCurve*&
Color/DeviceNColor
  DoubleList: ColorList!
  Integer: N!
  string: Name!
Color/PrintConditionColor
  CMYKColor: CMYK
  string: ColorBook ColorBookEntry ColorBookPrefix ColorBookSuffix
  double: Density NeutralDensity
  LabColor: Lab
  MappingSelection: MappingSelection
  MediaSide: MediaSide=Both
  NMTOKEN: PrintConditionName
  sRGBColor: sRGB
  > FileSpec*& DeviceNColor*:Color/DeviceNColor Media*& TransferCurve*&
ColorControlStrip : Parameter
  XYPair: Center Size
  double: Rotation
  string: StripType
  > CIELABMeasuringField* DensityMeasuringField*& Patch*{1.7-}
    SeparationSpec*{1.4-}
ColorControlStrip/Patch
  XYPair: Center Size
  double: Density NeutralDensity
  LabColor: Lab
  PatchUsage: PatchUsage!
  sRGBColor: RGB
  TransferFunction: Spectrum
  SpotType: SpotType
  > SeparationTint*
ColorControlStrip/Patch/SeparationTint
  NMTOKEN: Name!
  double: Tint!
ColorCorrectionParams : Parameter
  string: ColorManagementSystem
  > FileSpec(0-2)& ColorCorrectionOp*
ColorMeasurementConditions : Parameter
  double: Aperture SpectralResolution
  Integer: IlluminationAngle MeasurementAngle Observer=2
  InkState: InkState
  string: Instrumentation
  MeasurementFilter: MeasurementFilter
  NMTOKEN: MeasurementMode
  SampleBacking: SampleBacking
  WhiteBase: WhiteBase
  DensityStandard: DensityStandard=ANSIT
  Illumination: Illumination=D50
ColorPool : Parameter
  string: ColorantSetName
  > Color*
ColorSpaceConversionParams : Parameter
  string: ColorManagementSystem
  boolean: ConvertDevIndepColors{-1.0}
  ICCProfileUsage: ICCProfileUsage=UsePDL{1.2-}
  > FileSpec*& ColorSpaceConversionOp*
ColorantAlias : Parameter
  hexBinaryList: RawNames{1.4-}
  string: ReplacementColorantName!
  > SeparationSpec+
ColorantControl : Parameter
  InternalColorModel: InternalColorModel{1.5-}
  MappingSelection: MappingSelection{1.5-}
  NMTOKEN: ProcessColorModel
  boolean: ForceSeparations=false
  > ColorantAlias*& ColorantConvertProcess?:SeparationList{1.4-}
    ColorantOrder?:SeparationList ColorantParams?:SeparationList ColorPool?& ColorSpaceSubstitute*
    DeviceColorantOrder?:SeparationList DeviceNSpace*
ColorantControl/ColorSpaceSubstitute
  > PDLResourceAlias& SeparationSpec+
ComChannel : Parameter
  NMTOKEN: ChannelTypeDetails{1.2-}
  NMTOKENS: ChannelUsage{1.2-}
  ChannelType: ChannelType!
  string: Locator!
Company : Parameter
  string: OrganizationName!
  > Contact*&{-1.0} OrganizationalUnit*:TextElement
Contact : Parameter
  string: ContactTypeDetails{1.2-} UserID{1.5-}
  NMTOKENS: ContactTypes!
  > Address?& ComChannel*& Company?& Person?&
ContactCopyParams : Parameter
  Integer: Cycle
  Diffusion: Diffusion
  double: Vacuum
  boolean: ContactScreen=false PolarityChange=true
  XYPair: RepeatStep=1_1
  > ScreeningParams?&
ContentList : Parameter{1.3-}
  > ContentData+
ContentList/ContentData{1.3-}
  string: CatalogID{-1.5} CatalogDetails{-1.5} JobID ProductID
  IDREFS: ContentRefs{1.4-}
  NMTOKEN: ContentType
  boolean: HasBleeds IsBlank IsTrapped
  ID: ID{1.4-}
  > ContentMetadata?:ContentList/ContentMetadata{1.4-} ElementColorParams?& ImageCompressionParams?&
    OCGControl*{1.6-} ScreeningParams?& SeparationSpec*
ContentList/ContentMetadata{1.4-}
  NMTOKEN: ISBN{1.6-}
  string: ISBN10{-1.5} ISBN13{-1.5} Title
  > Contact*& Employee*& Part?
ConventionalPrintingParams : Parameter
  Drying: Drying ModuleDrying
  FeedSheetLay: FeedSheetLay{1.9-}
  FirstSurface: FirstSurface
  FountainSolution: FountainSolution
  string: MediaLocation
  IntegerRangeList: ModuleAvailableIndex{-1.3} ModuleIndex{-1.3}
  double: NonPrintableMarginBottom NonPrintableMarginLeft{1.3-} NonPrintableMarginRight{1.3-}
    NonPrintableMarginTop{1.3-} Powder Speed{-1.6}
  Integer: PerfectingModule
  PrintingType: PrintingType
  PrintingTechnology: PrintingTechnology{1.4-1.4}
  SheetLay: SheetLay
  WorkStyle: WorkStyle
  boolean: DirectProof=false
  > Ink*&{-1.3} ApprovalParams?&{1.2-}
CoverApplicationParams : Parameter
  XYPair: CoverOffset{-1.1}
  > GlueApplication*& Score*
CoverApplicationParams/Score
  Side2: Side=FromInside
  double: Offset
CreasingParams : Parameter
  > Crease*
CustomerInfo : Parameter
  string: BillingCode CustomerProjectID{1.2-}
  shortString: CustomerID CustomerOrderID
  longString: CustomerJobName
  > Company?&{-1.0} Contact*&
    CustomerMessage*:CustomerInfo/CustomerMessage.lr{1.2-1.4}
CustomerInfo/CustomerMessage
  language: Language
  NMTOKENS: MessageEvents! ShowList
  > ComChannel*&
CustomerInfo/CustomerMessage.lr
  language: Language
  NMTOKENS: MessageEvents! ShowList
  > ComChannel*&
CutBlock : Parameter
  NMTOKENS: AssemblyIDs{1.3-} Operations{1.7-}
  XYPair: BlockElementSize BlockSize! BlockSubdivision=1_1
  BlockElementType: BlockElementType
  double: CutWidth{1.4-}
  NMTOKEN: BlockName!
  matrix: BlockTrf=1_0_0_1_0_0
  BlockType: BlockType!
CutMark : Parameter
  NMTOKENS: Blocks
  CutMarkType: MarkType!
  XYPair: Position!
  > AssemblyRef* Assembly*&
CuttingParams : Parameter
  XYPair: NUpSeparation{1.4-}
  SheetLay1: SheetLay{1.5-}
  > CutBlock*& CutMark*&{-1.2} Cut*
CylinderLayout : Parameter{1.3-}
  NMTOKEN: DeviceID
  > Layout?& CylinderPosition+
CylinderLayout/CylinderPosition
  XYPairRangeList: PlatePosition!
  PlateType: PlateType=Exposed
  PlateUsage: PlateUsage=Original
  Integer: DeviceModuleIndex!
CylinderLayoutPreparationParams : Parameter{1.3-}
  > ProductionPath&
`;
