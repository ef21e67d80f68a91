/** Facts of the open standard: parameter resources, D to G. Notation: ../notation.ts. */
export const parametersDToG = `
DBMergeParams : Parameter{-1.4}
  Integer: SplitDocuments
  > FileSpec?&
DBRules : Parameter{-1.4}
DBSchema : Parameter{-1.4}
  DBSchemaType: DBSchemaType!
DBSelection : Parameter{-1.4}
  IntegerRangeList: Records
  string: Select
  URL: DataBase!
DeliveryParams : Parameter
  string: DeliveryID{1.6-} Method ServiceLevel{1.2-}
  dateTime: Earliest Required
  duration: EarliestDuration RequiredDuration
  boolean: Pickup{-1.1}
  DeliveryTransfer: Transfer{1.2-}
  > Company?&{-1.0} Contact*& Drop+ FileSpec(0-2)&
DeliveryParams/Drop/DropItem
  Integer: ActualAmount{1.3-} ActualTotalAmount{1.3-} Amount TotalAmount{1.3-}
  shape: TotalDimensions{1.3-}
  double: TotalVolume{1.3-} TotalWeight{1.3-}
  string: TrackingID{1.2-} Unit{-1.5}
  > Component*& ExposedMedia*& Ink*& Media*& Pallet*& RegisterRibbon*& Strap*& Bundle*& DigitalMedia*&
    RollStand*& Tool*&
DeliveryParams/Drop
  string: DropID{1.5-} Method ServiceLevel{1.2-} TrackingID{1.2-}
  dateTime: Earliest Required
  boolean: Pickup{-1.1}
  DeliveryTransfer: Transfer{1.2-}
  > Company?&{-1.0} Contact*& FileSpec?&{1.6-} DropItem+
DensityMeasuringField : Parameter
  string: Setup Screen! Separation!
  XYPair: Center! ToleranceCyan! ToleranceMagenta! ToleranceYellow! ToleranceBlack! ToleranceDotGain!
  DoubleList: Density!
  double: Diameter! DotGain! Percentage!
  > ColorMeasurementConditions?&
DevelopingParams : Parameter
  double: PreHeatTemp PostBakeTemp
  duration: PreHeatTime PostBakeTime PostExposeTime
DieLayout : Parameter{1.3-}
  rectangle: CutBox{1.5-}
  To: DieSide{1.4-}
  MediaSide: MediaSide{1.4-}
  boolean: Rotated{1.4-}
  double: Waste{1.4-}
  > Device*&[root]{1.4-} FileSpec*& Media?&{1.4-} RuleLength*{1.4-}
    Station* CutLines?:SeparationList{1.6-}
DieLayout/Station
  NMTOKENS: AssemblyIDs
  Integer: StationAmount=1
  string: StationName
  > ShapeDef*&
DieLayoutProductionParams : Parameter{1.4-} no-parts-in-root no-update
  boolean: Estimate
  Anchor: Position
  > ConvertingConfig+[root] RepeatDesc+[root] Contact*&[inline,part]
DieLayoutProductionParams/RepeatDesc
  AllowedRotate: AllowedRotate
  double: GutterX GutterX2 GutterY GutterY2
  NMTOKENS: LayoutStyle
  Integer: OrderQuantity
  boolean: UseBleed
DigitalDeliveryParams : Parameter{1.2-}
  DigitalDeliveryDirection: DigitalDeliveryDirection
  NMTOKEN: DigitalDeliveryProtocol Method
  > Contact*&
DigitalPrintingParams : Parameter
  DigitalPrintingCollate: Collate
  FeedSheetLay: FeedSheetLay{1.9-}
  double: NonPrintableMarginBottom{1.2-} NonPrintableMarginLeft{1.2-} NonPrintableMarginRight{1.2-}
    NonPrintableMarginTop{1.2-}
  NMTOKENS: OutputBin
  DigitalPrintingPageDelivery: PageDelivery
  PrintPass: PrintPass{1.5-}
  DigitalPrintingPrintingQuality: PrintQuality{-1.0}
  DigitalPrintingPrintingType: PrintingType
  DigitalPrintingSheetLay: SheetLay
  SidesDPParams: Sides{1.3-}
  Integer: StackAmount{1.5-} DirectProofAmount=0{1.2-}
  boolean: ManualFeed=false
  > Component?& ApprovalParams?&{1.2-} Disjointing?{-1.5}
    Ink?&{1.3-1.3} Media?& MediaSource?&{-1.0}
DividingParams : Parameter{-1.0}
  DoubleList: DividePositions
ElementColorParams : Parameter{1.2-}
  NMTOKEN: ColorManagementSystem
  ICCOutputProfileUsage: ICCOutputProfileUsage
  > AutomatedOverPrintParams? ColorantAlias*&
    ColorCorrectionOp*[root]{1.5-} ColorSpaceConversionOp? FileSpec*&
EmbossingParams : Parameter
  Integer: ModuleIndex{1.4-}
  > Emboss*
EmbossingParams/Emboss
  EmbossingDirection: Direction!
  double: EdgeAngle Height
  EmbossingEdgeShare: EdgeShape=Rounded
  EmbossingType: EmbossingType!
  Face: Face
  XYPair: ImageSize Position
  EmbossingLevel: Level
  > IdentificationField*& Media*& Tool*&
EndSheetGluingParams : Parameter
  > EndSheet*
EndSheetGluingParams/EndSheet
  XYPair: Offset
  Side: Side!
  > GlueLine*
ExternalImpositionTemplate : Parameter
  BindingEdge: BindingEdge[part]
  XYPair: NumberUp[part]
  > FileSpec*&
FeedingParams : Parameter{1.2-}
  > Feeder* CollatingItem*
FeedingParams/Feeder
  IntegerList: AlternatePositions
  Integer: Position
  FeederSynchronization: FeederSynchronization=Primary
  NMTOKEN: FeederType Loading
  Opening: Opening=None
  > Component*& FeederQualityParams* Media*&
FeedingParams/Feeder/FeederQualityParams
  IncorrectComponentQuality: IncorrectComponentQuality DoubleFeedQuality BadFeedQuality
  Integer: IncorrectComponents DoubleFeeds BadFeeds
FeedingParams/CollatingItem
  Integer: Amount=1 BundleDepth
  Orientation: Orientation
  matrix: Transformation
  TransformationContext: TransformationContext=StackItem
  > Component*& Media*&
FileSpec : Parameter
  NMTOKEN: Compression=None ResourceUsage
  string: Application AppOS{-1.5} AppVersion Encoding{1.4-} FileFormat FileTargetDeviceModel{1.2-}
    FileTemplate FileVersion MimeType MimeTypeVersion{1.2-} OSVersion{-1.5} Password{1.3-} UID UserFileName
  hexBinary: CheckSum
  Disposition: Disposition{-1.1}
  language: DocumentNaturalLang
  LongInteger: FileSize
  Integer: NPage{1.8-} SearchDepth{1.2-}
  OverwritePolicy: OverwritePolicy{1.2-}
  PageOrder: PageOrder
  double: RequestQuality{1.3-}
  URL: URL
  > Container?{1.2-} Disposition?{1.2-} FileAlias*
    NetworkHeader*{1.7-}
FileSpec/FileAlias
  string: Alias! MimeType{-1.1}
  Disposition: Disposition{-1.1}
  hexBinary: RawAlias{1.2-}
  URL: URL{-1.1}
  > FileSpec?&{1.2-}
FileSpec/Container{1.2-}
  > FileSpec&
FileSpec/NetworkHeader
  string: Name! Value!
FoldingParams : Parameter
  DescriptionType: DescriptionType{-1.1}
  string: FoldCatalog
  NMTOKEN: FoldingDetails{1.6-}
  XYPair: FoldSheetIn{-1.0}
  SheetLay1: SheetLay=Left
  > Fold* FoldOperation*{-1.0}
FontParams : Parameter
  NMTOKENS: AlwaysEmbed NeverEmbed
  Integer: MaxSubsetPct
  boolean: SubsetFonts EmbedAllFonts=false
  CannotEmbedFontPolicy: CannotEmbedFontPolicy=Warning
FontPolicy : Parameter
  NMTOKEN: PreferredFont!
  boolean: UseDefaultFont! UseFontEmulation!
FormatConversionParams : Parameter{-1.4}
  > FileSpec*&{-1.1} TIFFFormatParams?{1.2-}
    ImageCompressionParams?&{1.2-} ColorPool?&{1.2-}
FormatConversionParams/TIFFFormatParams
  ByteOrder: ByteOrder
  Integer: Interleaving=1 RowsPerStrip SeparationNameTag=270
  boolean: WhiteIsZero=true
  Segmentation: Segmentation
  XYPair: TileSize
  > TIFFtag* TIFFEmbeddedFile*
FormatConversionParams/TIFFFormatParams/TIFFtag
  Integer: TagNumber! TagType!
  IntegerList: IntegerValue
  DoubleList: NumberValue
  string: StringValue
  hexBinary: BinaryValue
FormatConversionParams/TIFFFormatParams/TIFFEmbeddedFile
  Integer: TagNumber! TagType!
  > FileSpec*&
GangPreparationParams : Parameter{1.7-}
  NMTOKEN: GangName
  NMTOKENS: JobIDs
  > Disjointing*
GatheringParams : Parameter
  > Disjointing?{-1.5}
GlueApplication : Parameter
  GluingTechnique: GluingTechnique!
  > GlueLine
GluingParams : Parameter
  string: GluingProductionID{1.3-}
  > Glue*
GluingParams/Glue
  WorkingDirection: WorkingDirection
  > GlueApplication?& GlueLine?{1.3-}
`;
