/** Facts of the open standard, second generation: other elements, S to Z. Notation: ../notation.ts. */
export const elementsSToZ = `
SaddleStitching
  StapleShape: StapleShape
  int: StitchNumber
ScavengerArea
  XYPair: Center! Size
  NMTOKENS: Separations
Score
  float: Offset!
  Side2: Side!
ScreenSelector
  float: Angle DotSize Frequency SourceFrequencyMax SourceFrequencyMin
  string: ScreeningFamily
  ScreeningType: ScreeningType
  NMTOKEN: Separation SpotFunction
  SourceObjects[]: SourceObjects
ScrewBinding
  LooseBindMaterial: Material
ScrewBindingDetails
  float: Length
SeparationTint
  NMTOKEN: Name!
  float: Tint!
Shape
  rectangle: CutBox
  boolean: CutOut
  PDFPath: CutPath
  int: DDESCutType
  float: ShapeDepth TeethPerDimension
  ShapeType: ShapeType!
ShapeCut
  rectangle: CutBox
  CutDepth: CutDepth
  boolean: CutOut
  PDFPath: CutPath
  CutType: CutType
  ShapeType2: ShapeType!
  string: ShapeTypeDetails
ShapeDimension
  string: Usage!
  float: Value!
ShapeTemplate
  shape: InnerDimensions
  NMTOKEN: Name Standard
  > FileSpec* ShapeDimension*
SheetActivation
  int: Amount
  > Condition+
ShiftPoint
  matrix: CTM!
  XYPair: Position!
ShutDownCmdParams
  ShutDownType: ShutDownType
SideStitching
  StapleShape: StapleShape
  int: StitchNumber
SignatureCell
  IntegerList: BackPages BackSpread FaceCells FrontPages FrontSpread
  float: BleedFace BleedFoot BleedHead BleedSpine MaskBleed TrimFace TrimFoot TrimHead
  Mask: Mask
  NMTOKEN: MaskSeparation StationName
  Orientation2: Orientation
  Sides: Sides
  XYPair: TrimSize
  > CellCondition*
SoftCoverBinding
  boolean: BlockThreadSewing EndSheets
  float: FoldingWidth FoldingWidthBack
  GlueProcedure: GlueProcedure
  Scoring: Scoring
  EnumGlue: SpineGlue
  NMTOKENS: SpineOperations
SpecificResource abstract
Station
  NMTOKENS: BinderySignatureIDs
  IDREF: ShapeDefRef
  NMTOKEN: StationName!
StatusQuParams
  NMTOKEN: JobID JobPartID QueueEntryID
  NMTOKENS: Types
  > Part*
StickOn
  IDREF: ChildRef!
  Face: Face
  int: Folio
  Orientation: Orientation
  XYPair: Position
  > Glue?
StopPersChParams
  NMTOKEN: ChannelID MessageType
  URL: URL
StripBindingDetails
  float: Length
StripMark
  float: AbsoluteHeight AbsoluteWidth FontSize RelativeHeight RelativeWidth
  Anchor: Anchor
  NMTOKEN: Font MarkName
  EnumFitPolicy: HorizontalFitPolicy VerticalFitPolicy
  ID: ID
  XYPair: Offset
  Orientation: Orientation
  IDREF: PositionRef
  string: StripMarkDetails
  > BarcodeReproParams? ColorControlStrip* CutMark* FillMark* IdentificationField* JobField? RefAnchor?
    RegisterMark* ScavengerArea*
Subscription
  EnumChannelMode[]: ChannelMode
  languages: Languages
  float: RepeatTime
  URL: URL!
SubscriptionFilter
  NMTOKEN: DeviceID
  URL: URL
SubscriptionInfo
  NMTOKEN: ChannelID! DeviceID MessageType!
  languages: Languages
  > Subscription
SurfaceColor
  NMTOKENS: Coatings ColorsUsed
  float: Coverage
  NMTOKEN: PrintStandard
  Side: Surface!
  > Certification*
SurfaceMark
  Face: Surface!
  > ColorControlStrip* CutMark* RegisterMark* ScavengerArea*
TIFFEmbeddedFile
  int: TagNumber! TagType!
  > FileSpec
TIFFFormatParams
  ByteOrder: ByteOrder
  int: Interleaving RowsPerStrip SeparationNameTag
  Segmentation: Segmentation
  XYPair: TileSize
  boolean: WhiteIsZero
  > TIFFEmbeddedFile* TIFFtag*
TIFFtag
  hexBinary: BinaryValue
  IntegerList: IntegerValue
  FloatList: NumberValue
  string: StringValue
  int: TagNumber! TagType!
TabDimensions
  Edge: TabEdge
  float: TabExtensionDistance TabOffset TabWidth
  TabSetCollationOrder: TabSetCollationOrder
  int: TabsPerBank
Tabs
  boolean: ReinforceTabs ReinforceBind TabBodyCopy
  NamedColor: ReinforceColor
  string: ReinforceColorDetails TabBrand
  int: TabCount TabsPerBank
  float: TabExtensionDistance
TextElement text no-foreign-attributes
ThinPDFParams
  boolean: FilePerPage SidelineEPS SidelineFonts SidelineImages
XJDF
  NMTOKEN: Category JobID! JobPartID ProjectID RelatedJobID RelatedJobPartID RelatedProjectID
  URL: CommentURL
  string: DescriptiveName
  NMTOKENS: ICSVersions Types!
  Version: Version
  > AuditPool? Comment* GeneralID* ProductList? ResourceSet*
`;
