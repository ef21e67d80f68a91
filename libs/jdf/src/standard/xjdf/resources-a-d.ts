/** Facts of the open standard, second generation: resources, A to D. Notation: ../notation.ts. */
export const resourcesAToD = `
ApprovalDetails : SpecificResource
  ApprovalState: ApprovalState!
  string: ApprovalStateDetails
  > ApprovalPerson? Comment? FileSpec?
ApprovalParams : SpecificResource
  > ApprovalPerson+
Assembly : SpecificResource
  NMTOKENS: BinderySignatureIDs
  Order: Order!
  > AssemblySection*
BendingParams : SpecificResource
  boolean: Bend Punch
  NMTOKEN: PunchType
BinderySignature : SpecificResource
  XYPair: BinderySignatureSize NumberUp
  BinderySignatureType: BinderySignatureType!
  Orientation: BindingOrientation
  Bottling: Bottling
  IDREF: DieLayoutRef
  FoldCatalog: FoldCatalog
  float: Overfold
  OverfoldSide: OverfoldSide
  SpreadType: SpreadType
  FloatList: StaggerColumns StaggerRows
  boolean: StaggerContinuous
  > MultiPageFold* SignatureCell*
BlockPreparationParams : SpecificResource
  float: Backing Rounding
  TightBacking: TightBacking
  > RegisterRibbon*
BoxFoldingParams : SpecificResource
  FloatList: BlankDimensionsX BlankDimensionsY
  BoxFoldingType: BoxFoldingType!
  > (BoxFoldAction|Glue)*
BoxPackingParams : SpecificResource
  BoxType: BoxType!
  string: BoxTypeDetails
  int: Columns ComponentsPerRow Copies Layers Rows
  Face: FaceDown
  float: MaxWeight
  NMTOKEN: Pattern
  IntegerList: Ties UnderLays
Bundle : SpecificResource
  > BundleItem+
BundlingParams : SpecificResource
  int: Copies
  float: Length
CaseMakingParams : SpecificResource
  float: BottomFoldIn CoverWidth FrontFoldIn Height JointWidth SpineWidth TopFoldIn
  NMTOKEN: CornerType
  > Glue?
CasingInParams : SpecificResource
  float: CaseRadius CoverWidth SpineWidth
  > Glue*
Color : SpecificResource
  string: ActualColorName ColorBook ColorBookEntry ColorDetails ColorTypeDetails PrintStandard
  CMYKColor: CMYK
  NamedColor: ColorName
  ColorType2: ColorType
  float: Density Gray NeutralDensity
  LabColor: Lab
  NMTOKEN: PrintingTechnology
  hexBinary: RawName
  TransferFunction: Spectrum
  sRGBColor: sRGB
  > ColorMeasurementConditions? DeviceNColor*
ColorCorrectionParams : SpecificResource
  > ColorCorrectionOp*
ColorSpaceConversionParams : SpecificResource
  ICCProfileUsage: ICCProfileUsage
  > ColorSpaceConversionOp* FileSpec?
ColorantControl : SpecificResource
  NMTOKENS: ColorantConvertProcess ColorantOrder ColorantParams
  MappingSelection: MappingSelection
  ProcessColorModel: ProcessColorModel
  > ColorantAlias* DeviceNSpace?
Component : SpecificResource
  EnumAutomation: Automation
  XYPair: CartonTopFlaps
  int: Columns ReaderPageCount SurfaceCount WindingResult
  IDREFS: ContentRefs
  shape: Dimensions
  float: MaxHeat Overfold
  IDREF: MediaRef
  Side: OverfoldSide
  NMTOKEN: ProductType
  string: ProductTypeDetails
  > IdentificationField* SurfaceMark*
Contact : SpecificResource
  NMTOKENS: ContactTypeDetails
  NMTOKEN: CostCenterID
  string: UserID
  > Address? ComChannel* Company? Person?
Content : SpecificResource
  NMTOKENS: BinderySignatureIDs ContentStatus Separations
  NMTOKEN: ContentType
  boolean: HasBleeds IsBlank IsTrapped
  string: PageLabel
  rectangle: SourceBleedBox SourceClipBox SourceTrimBox
  > BarcodeProductionParams? ContentMetadata? FileSpec* ImageCompression? OCGControl* PositionObj*
    ScreenSelector?
ConventionalPrintingParams : SpecificResource
  EnumDrying: Drying ModuleDrying
  FeedSheetLay: FeedSheetLay
  Side: FirstSurface
  FountainSolution: FountainSolution
  Percentage: Powder
  SheetLay: SheetLay
  float: Speed
  WorkStyle: WorkStyle
CoverApplicationParams : SpecificResource
  > Glue* Score*
CreasingParams : SpecificResource
  > Crease+
CustomerInfo : SpecificResource
  NMTOKEN: CustomerID
  string: CustomerJobName CustomerOrderID CustomerProjectID
CuttingParams : SpecificResource
  SheetLay: SheetLay
  > (Cut*|CutBlock*|FileSpec?)
DeliveryParams : SpecificResource
  string: BuyerAccount TrackingID
  dateTime: Earliest Required
  duration: EarliestDuration RequiredDuration
  NMTOKEN: Method
  Ownership: Ownership
  Transfer: Transfer
  > DropItem* FileSpec(0-3)
DevelopingParams : SpecificResource
  float: PostBakeTemp PreHeatTemp
  duration: PostBakeTime PostExposeTime PreHeatTime
Device : SpecificResource
  NMTOKEN: CostCenterID DeviceID!
  string: DescriptiveName DeviceType Manufacturer Revision SerialNumber
  NMTOKENS: DeviceClass ICSVersions URLSchemes
  JDFVersions[]: JDFVersions
  languages: KnownLocalizations
  URL: ManufacturerURL PresentationURL RestApiBaseURL XJMFURL
  float: MaxRunSpeed
  Packaging[]: Packaging
  > FileSpec(0-2) IconList? IdentificationField* Module*
DieLayout : SpecificResource
  rectangle: CutBox
  NMTOKENS: CutLines
  DieSide: DieSide
  MediaSide: MediaSide
  boolean: Rotated
  Percentage: Waste
  > Device* FileSpec* Media? RuleLength* Station*
DieLayoutProductionParams : SpecificResource
  boolean: Estimate
  Anchor: Position
  > ConvertingConfig+ RepeatDesc+
DigitalPrintingParams : SpecificResource
  Collate: Collate
  FeedSheetLay: FeedSheetLay
  boolean: ManualFeed
  PageDelivery: PageDelivery
  SheetLay: SheetLay
  Sides2: Sides
`;
